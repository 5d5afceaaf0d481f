//! What the part could become, as it is offered: one group a standard shank, of those that were asked for.

use skimwright::job::ReceiverKind;
use skimwright::receiver::Becomes;
use skimwright::tables::{Shank, ShankSize};

/// Which are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Filter {
    /// Those for this kind of receiver; `None` is all.
    pub(crate) receiver: Option<ReceiverKind>,
    /// Only those that are as long as their standard says.
    pub(crate) full_length: bool,
    /// The standards that are counted.
    pub(crate) standard: Standard,
}

/// In which unit a standard is written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Standard {
    #[default]
    Any,
    Metric,
    Inch,
}

impl Standard {
    pub(crate) const ALL: [Self; 3] = [Self::Any, Self::Metric, Self::Inch];
}

/// The receivers that a shank can be made for.
pub(crate) const RECEIVERS: [ReceiverKind; 3] = [
    ReceiverKind::Hydraulic,
    ReceiverKind::SideLock,
    ReceiverKind::Collet,
];

/// One standard shank and all that it could go into, the best first.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Group<'a> {
    pub(crate) shank: ShankSize,
    pub(crate) best: &'a Becomes,
    pub(crate) all: Vec<&'a Becomes>,
}

impl Filter {
    fn takes(self, one: &Becomes) -> bool {
        let inch = one.shank.get().is_some_and(Shank::is_inch);
        self.receiver
            .is_none_or(|kind| one.wanted.receiver.kind() == kind)
            && (one.full_length || !self.full_length)
            && match self.standard {
                Standard::Any => true,
                Standard::Metric => !inch,
                Standard::Inch => inch,
            }
    }
}

impl Group<'_> {
    /// The standard to name it by where another of the groups reads the same but for it.
    pub(crate) fn told_apart(&self, among: &[Self]) -> Option<&'static str> {
        let shank = self.shank.get()?;
        let alike = |other: &Self| {
            other.shank != self.shank
                && other.shank.get().is_some_and(|it| {
                    (it.form(), it.diameter, it.length)
                        == (shank.form(), shank.diameter, shank.length)
                })
        };
        let first = shank.standards.split(", ").next();
        first.filter(|_| among.iter().any(alike))
    }
}

/// The groups in the order of their best.
pub(crate) fn groups(found: &[Becomes], filter: Filter) -> Vec<Group<'_>> {
    let mut groups: Vec<Group> = Vec::new();
    for one in found.iter().filter(|one| filter.takes(one)) {
        match groups.iter_mut().find(|group| group.shank == one.shank) {
            Some(group) => group.all.push(one),
            None => groups.push(Group {
                shank: one.shank,
                best: one,
                all: vec![one],
            }),
        }
    }
    groups
}
