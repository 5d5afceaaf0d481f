//! Version 1 of the job in a link. Frozen: links of this form are in other people's letters.
//!
//! The order of the fields and of the variants is the form; `postcard` writes them one after another without
//! names. Numbers are laid out by [`super::number`], choices by [`super::choice`].

use core::fmt;
use core::marker::PhantomData;

use serde::de::{Error, SeqAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::choice;
use super::number::{filled, optional};
use crate::job::{self, BoreBottom, CentreOrder, CutOffMethod, FormVersion};
use crate::quantity::{Entered, Feed, Length, RotationalSpeed, Speed, Time};
use crate::tables::{CentreDrillSize, ShaftClass, TaperSize, ThreadSize, ToolKind, WorkMaterial};

/// Most characters of a title.
const MOST_TITLE: usize = 80;
/// Most outer sections.
const MOST_SECTIONS: usize = 12;
/// Most holes.
const MOST_BORES: usize = 6;

#[derive(Serialize, Deserialize)]
pub(super) struct Job {
    title: String,
    part: Part,
    wanted: Wanted,
    shop: Shop,
}

#[derive(Serialize, Deserialize)]
struct Part {
    #[serde(with = "choice")]
    material: WorkMaterial,
    #[serde(with = "filled")]
    head_diameter: Entered<Length>,
    #[serde(with = "filled")]
    head_length: Entered<Length>,
    #[serde(with = "filled")]
    runout: Entered<Length>,
    sections: List<Section, MOST_SECTIONS>,
    bores: List<Bore, MOST_BORES>,
}

#[derive(Serialize, Deserialize)]
enum Section {
    Cylinder {
        #[serde(with = "filled")]
        diameter: Entered<Length>,
        #[serde(with = "filled")]
        length: Entered<Length>,
    },
    Taper {
        #[serde(with = "filled")]
        shoulder_diameter: Entered<Length>,
        #[serde(with = "filled")]
        end_diameter: Entered<Length>,
        #[serde(with = "filled")]
        length: Entered<Length>,
    },
    StandardTaper {
        #[serde(with = "choice")]
        taper: TaperSize,
        #[serde(with = "filled")]
        past_gauge: Entered<Length>,
        #[serde(with = "optional")]
        length: Option<Entered<Length>>,
    },
}

#[derive(Serialize, Deserialize)]
enum Bore {
    Drilled {
        #[serde(with = "filled")]
        diameter: Entered<Length>,
        #[serde(with = "filled")]
        depth: Entered<Length>,
        #[serde(with = "choice")]
        bottom: BoreBottom,
    },
    Tapped {
        #[serde(with = "choice")]
        thread: ThreadSize,
        #[serde(with = "filled")]
        thread_depth: Entered<Length>,
        #[serde(with = "filled")]
        drill_depth: Entered<Length>,
    },
    CentreHole {
        #[serde(with = "choice")]
        centre_drill: CentreDrillSize,
    },
}

#[derive(Serialize, Deserialize)]
struct Wanted {
    #[serde(with = "filled")]
    diameter: Entered<Length>,
    tolerance: Tolerance,
    #[serde(with = "filled")]
    length: Entered<Length>,
    #[serde(with = "filled")]
    shoulder_radius: Entered<Length>,
    #[serde(with = "filled")]
    end_chamfer: Entered<Length>,
    #[serde(with = "optional")]
    countersink: Option<Entered<Length>>,
    #[serde(with = "optional")]
    receiver_depth: Option<Entered<Length>>,
    #[serde(with = "optional")]
    least_grip: Option<Entered<Length>>,
}

#[derive(Serialize, Deserialize)]
enum Tolerance {
    Class(#[serde(with = "choice")] ShaftClass),
    Limits {
        #[serde(with = "filled")]
        upper: Entered<Length>,
        #[serde(with = "filled")]
        lower: Entered<Length>,
    },
}

#[derive(Serialize, Deserialize)]
struct Shop {
    #[serde(with = "choice")]
    tool: ToolKind,
    #[serde(with = "choice")]
    cut_off_method: CutOffMethod,
    #[serde(with = "optional")]
    kerf: Option<Entered<Length>>,
    #[serde(with = "filled")]
    facing_stock: Entered<Length>,
    #[serde(with = "choice")]
    centre_order: CentreOrder,
    #[serde(with = "optional")]
    rough_infeed: Option<Entered<Length>>,
    #[serde(with = "filled")]
    last_cut: Entered<Length>,
    #[serde(with = "filled")]
    polishing_stock: Entered<Length>,
    #[serde(with = "optional")]
    cutting_speed: Option<Entered<Speed>>,
    #[serde(with = "optional")]
    rough_feed: Option<Entered<Feed>>,
    #[serde(with = "optional")]
    finish_feed: Option<Entered<Feed>>,
    #[serde(with = "filled")]
    top_speed: Entered<RotationalSpeed>,
    #[serde(with = "filled")]
    approach: Entered<Length>,
    #[serde(with = "filled")]
    set_time: Entered<Time>,
    #[serde(with = "filled")]
    return_time: Entered<Time>,
    #[serde(with = "filled")]
    measure_time: Entered<Time>,
    #[serde(with = "filled")]
    polish_time: Entered<Time>,
}

/// The job in these bytes; `None` when they are not exactly one job within its limits.
pub(super) fn read(bytes: &[u8]) -> Option<job::Job> {
    let (form, rest) = postcard::take_from_bytes::<Job>(bytes).ok()?;
    let sound = rest.is_empty() && form.title.chars().count() <= MOST_TITLE;
    sound.then(|| form.into())
}

impl Job {
    /// A job in this form; `None` when its title or a list is too long.
    pub(super) fn from_job(job: &job::Job) -> Option<Self> {
        let (part, wanted, shop) = (&job.part, &job.wanted, &job.shop);
        if job.title.chars().count() > MOST_TITLE {
            return None;
        }
        Some(Self {
            title: job.title.clone(),
            part: Part {
                material: part.material,
                head_diameter: part.head_diameter.clone(),
                head_length: part.head_length.clone(),
                runout: part.runout.clone(),
                sections: List::new(&part.sections)?,
                bores: List::new(&part.bores)?,
            },
            wanted: wanted.clone().into(),
            shop: shop.clone().into(),
        })
    }
}

impl From<Job> for job::Job {
    fn from(form: Job) -> Self {
        let part = form.part;
        Self {
            version: FormVersion,
            title: form.title,
            part: job::Part {
                material: part.material,
                head_diameter: part.head_diameter,
                head_length: part.head_length,
                runout: part.runout,
                sections: part.sections.0.into_iter().map(Into::into).collect(),
                bores: part.bores.0.into_iter().map(Into::into).collect(),
            },
            wanted: form.wanted.into(),
            shop: form.shop.into(),
        }
    }
}

/// The step to and from the job for a type with the same fields.
macro_rules! mirror_struct {
    ($($name:ident { $($field:ident),* $(,)? })*) => {$(
        impl From<job::$name> for $name {
            fn from(job: job::$name) -> Self {
                Self { $($field: job.$field.into()),* }
            }
        }

        impl From<$name> for job::$name {
            fn from(form: $name) -> Self {
                Self { $($field: form.$field.into()),* }
            }
        }
    )*};
}
mirror_struct! {
    Wanted {
        diameter, tolerance, length, shoulder_radius, end_chamfer, countersink, receiver_depth, least_grip,
    }
    Shop {
        tool, cut_off_method, kerf, facing_stock, centre_order, rough_infeed, last_cut, polishing_stock,
        cutting_speed, rough_feed, finish_feed, top_speed, approach, set_time, return_time, measure_time,
        polish_time,
    }
}

/// The same for a type with the same variants.
macro_rules! mirror_enum {
    ($($name:ident { $($variant:ident { $($field:ident),* })* })*) => {$(
        impl From<job::$name> for $name {
            fn from(job: job::$name) -> Self {
                match job {
                    $(job::$name::$variant { $($field),* } => Self::$variant { $($field),* },)*
                }
            }
        }

        impl From<$name> for job::$name {
            fn from(form: $name) -> Self {
                match form {
                    $($name::$variant { $($field),* } => Self::$variant { $($field),* },)*
                }
            }
        }
    )*};
}
mirror_enum! {
    Section {
        Cylinder { diameter, length }
        Taper { shoulder_diameter, end_diameter, length }
        StandardTaper { taper, past_gauge, length }
    }
    Bore {
        Drilled { diameter, depth, bottom }
        Tapped { thread, thread_depth, drill_depth }
        CentreHole { centre_drill }
    }
}

impl From<job::Tolerance> for Tolerance {
    fn from(job: job::Tolerance) -> Self {
        match job {
            job::Tolerance::Class(class) => Self::Class(class),
            job::Tolerance::Limits { upper, lower } => Self::Limits { upper, lower },
        }
    }
}

impl From<Tolerance> for job::Tolerance {
    fn from(form: Tolerance) -> Self {
        match form {
            Tolerance::Class(class) => Self::Class(class),
            Tolerance::Limits { upper, lower } => Self::Limits { upper, lower },
        }
    }
}

/// A list of at most `MOST`, which takes no memory for more than it has read.
struct List<T, const MOST: usize>(Vec<T>);

impl<T, const MOST: usize> List<T, MOST> {
    fn new<J: Clone + Into<T>>(items: &[J]) -> Option<Self> {
        let fits = items.len() <= MOST;
        fits.then(|| Self(items.iter().cloned().map(Into::into).collect()))
    }
}

impl<T: Serialize, const MOST: usize> Serialize for List<T, MOST> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.0.serialize(serializer)
    }
}

impl<'de, T: Deserialize<'de>, const MOST: usize> Deserialize<'de> for List<T, MOST> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_seq(ListVisitor(PhantomData))
    }
}

struct ListVisitor<T, const MOST: usize>(PhantomData<T>);

impl<'de, T: Deserialize<'de>, const MOST: usize> Visitor<'de> for ListVisitor<T, MOST> {
    type Value = List<T, MOST>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "at most {MOST} items")
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Self::Value, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element()? {
            if list.len() == MOST {
                return Err(A::Error::invalid_length(list.len() + 1, &self));
            }
            list.push(item);
        }
        Ok(List(list))
    }
}
