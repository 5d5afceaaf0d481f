//! English: the names of the examples, in their order.

pub(super) const fn name(example: usize) -> &'static str {
    match example {
        0 => "Milling arbor, 32 mm to 25 mm",
        1 => "Saw arbor, taper no. 9 to 3/4 in",
        _ => "Roller stub for a 17 mm bearing",
    }
}
