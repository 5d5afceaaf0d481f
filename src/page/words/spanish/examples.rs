//! Spanish: the names of the examples, in their order.

pub(in crate::page::words) const fn name(example: usize) -> &'static str {
    match example {
        0 => "Árbol de fresa, de 32 mm a 25 mm",
        1 => "Árbol de sierra, cono n.º 9 a 3/4 in",
        _ => "Muñón de rodillo para rodamiento de 17 mm",
    }
}
