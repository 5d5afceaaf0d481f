//! German: the names of the examples, in their order.

pub(in crate::page::words) const fn name(example: usize) -> &'static str {
    match example {
        0 => "Fräsdorn, 32 mm auf 25 mm",
        1 => "Sägedorn, Kegel Nr. 9 auf 3/4 in",
        _ => "Rollenzapfen für ein 17-mm-Lager",
    }
}
