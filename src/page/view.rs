//! What can be looked at, and how: stages, looks, panels, notices.

use skimwright::link::LinkError;

/// The stages of a job that the page has.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Stage {
    #[default]
    Received,
    Wanted,
    Plan,
}

impl Stage {
    pub(crate) const ALL: [Self; 3] = [Self::Received, Self::Wanted, Self::Plan];
}

/// How the page looks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Look {
    #[default]
    System,
    Light,
    Dark,
    Sunlight,
}

impl Look {
    pub(crate) const ALL: [Self; 4] = [Self::System, Self::Light, Self::Dark, Self::Sunlight];
}

/// Whether what was typed is safe in the browser's storage.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Saved {
    /// Not tried since the last change.
    #[default]
    Pending,
    /// Written.
    Yes,
    /// The browser refused.
    Refused,
    /// A visitor's job is looked at, which is not kept unless asked.
    Visiting,
}

/// Something to tell once, above everything else.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Notice {
    /// The link in the address could not be opened.
    BadLink(LinkError),
    /// What was stored could not be read; it is put aside.
    BadStore,
    /// The link was copied.
    Copied,
    /// The link could not be shared or copied; here it is.
    ShareFailed(String),
    /// The job was replaced by the default or an example; undo brings it back.
    Replaced,
}

/// A figure whose working is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Shown {
    CutFromFreeEnd,
    CutFromShoulder,
    OffcutLength,
    OffcutMass,
    ShankAfterCut,
    ShankFinished,
    Grip,
    StockOff,
    RoughEach,
    SpindleSpeed,
    ConeDepth,
    CentreDepth,
    Time,
    LargestDiameter,
    Wall(u8),
}

/// What covers the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Cover {
    Working(Shown),
    Menu,
    Reset,
}
