//! How a test reads a row of passes. A test takes this file in with `#[path = "support/passes.rs"] mod passes;`.
#![allow(dead_code, reason = "each test uses a part of it")]

use skimwright::cutting::{Load, Pass, StockOff};

/// The passes that a tool cuts, without the polishing.
pub(crate) fn cuts(stock: &StockOff) -> Vec<&Pass> {
    stock.passes.iter().filter(|it| it.cut.is_some()).collect()
}

/// How much of each limit a pass with the tool uses.
pub(crate) fn loads(pass: &Pass) -> &[Load] {
    &pass.cut.as_ref().unwrap().loads
}

/// How long all passes with the tool take, in seconds.
pub(crate) fn time(stock: &StockOff) -> f64 {
    cuts(stock).iter().map(|it| it.time.to_seconds()).sum()
}

/// How much of cutting edges is used up by all passes with the tool.
pub(crate) fn edges(stock: &StockOff) -> f64 {
    cuts(stock)
        .iter()
        .map(|it| it.cut.as_ref().unwrap().edge_used)
        .sum()
}
