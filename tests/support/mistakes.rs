//! A table of mistakes and what each is answered with. A test takes this file in with
//! `#[path = "support/mistakes.rs"] mod mistakes;`.

use std::collections::BTreeSet;

use skimwright::job::{Field, Job};
use skimwright::plan::{Finding, Level, plan};

use crate::sound::{code, sound};

/// One mistake, made in a job that nothing stands against.
pub(crate) struct Row {
    what: &'static str,
    change: fn(&mut Job),
    code: &'static str,
    field: Field,
    level: Level,
}

/// What is wrong, how it comes about, and the code, field and level that it must be answered with.
pub(crate) const fn row(
    what: &'static str,
    change: fn(&mut Job),
    code: &'static str,
    field: Field,
    level: Level,
) -> Row {
    Row {
        what,
        change,
        code,
        field,
        level,
    }
}

/// Nothing is planned on.
pub(crate) const STOP: Level = Level::Stop;
/// The plan goes on.
pub(crate) const CAUTION: Level = Level::Caution;

/// Fails with every row that is answered otherwise.
#[track_caller]
pub(crate) fn check(rows: &[Row]) {
    let mut wrong = Vec::new();
    for row in rows {
        let mut job = sound();
        (row.change)(&mut job);
        let plan = plan(&job);
        let said = |it: &&Finding| code(it) == row.code && it.field == row.field;
        match plan.findings.iter().find(said) {
            Some(found) if found.level == row.level && found.code.level() == row.level => {}
            found => wrong.push(format!("{}: {found:?} of {:?}", row.what, plan.findings)),
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// The codes that a table brings about.
pub(crate) fn codes_of(rows: &[Row]) -> BTreeSet<&'static str> {
    rows.iter().map(|row| row.code).collect()
}
