//! The page's start.

fn main() {}
