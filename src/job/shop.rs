//! What the job is done with: tool, machine, how the offcut comes off, times and rates.
//!
//! An empty optional field means the usual value for the material, the tool or the class of machine.

use core::fmt;
use core::marker::PhantomData;

use serde::de::value::{MapAccessDeserializer, SeqAccessDeserializer};
use serde::de::{MapAccess, SeqAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize};

use super::choice::{Aim, CentreOrder, CutOffMethod, DialReads, Rigidity};
use super::instrument::Instrument;
use super::learned::Learned;
use super::mm;
use super::times::StepTimes;
use crate::quantity::{
    Angle, Count, Entered, Feed, Length, Money, Power, RotationalSpeed, Share, Speed, Stiffness,
    Time, Torque, Typed, Unit,
};
use crate::tables::ToolKind;

/// What the job is done with.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Shop {
    /// The turning tool.
    pub tool: ToolKind,
    /// The turning tool in its figures.
    pub edge: Edge,
    /// The lathe.
    pub machine: Machine,
    /// What the passes are chosen for.
    pub aim: Aim,
    /// How the offcut is taken off.
    pub cut_off_method: CutOffMethod,
    /// Width of the cut.
    pub kerf: Option<Entered<Length>>,
    /// Left on the end for facing.
    pub facing_stock: Entered<Length>,
    /// Whether the centre is made before or after facing.
    pub centre_order: CentreOrder,
    /// Most infeed of a roughing pass, on radius.
    pub rough_infeed: Option<Entered<Length>>,
    /// What each of the two equal last cuts takes off the diameter.
    pub last_cut: Entered<Length>,
    /// Left on the diameter for polishing.
    pub polishing_stock: Entered<Length>,
    /// Highest cutting speed.
    pub cutting_speed: Option<Entered<Speed>>,
    /// Highest feed of the roughing passes.
    pub rough_feed: Option<Entered<Feed>>,
    /// Highest feed of the two last cuts.
    pub finish_feed: Option<Entered<Feed>>,
    /// The highest spindle speed that the work allows.
    pub top_speed: Entered<RotationalSpeed>,
    /// Travel before the tool meets metal.
    pub approach: Entered<Length>,
    /// Setting the depth and engaging the feed, each pass.
    pub set_time: Entered<Time>,
    /// Bringing the carriage back, each pass.
    pub return_time: Entered<Time>,
    /// Measuring, each pass.
    pub measure_time: Entered<Time>,
    /// Polishing to size, once.
    pub polish_time: Entered<Time>,
    /// How long the steps take, where it is not the usual.
    pub times: StepTimes,
    /// What the job costs beside its time.
    pub rates: Rates,
    /// What the work is measured with; at most [`Job::MOST_INSTRUMENTS`](super::Job).
    pub instruments: Vec<Instrument>,
}

/// The turning tool, beyond what its edge is made of. Depths are on radius.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Edge {
    /// What the person calls it; at most [`Job::MOST_NAME_CHARACTERS`](super::Job) characters.
    pub name: String,
    /// Nose radius.
    pub nose_radius: Option<Entered<Length>>,
    /// Between the cutting edge and the direction of feed: 90° turns a square shoulder.
    pub cutting_edge_angle: Option<Entered<Angle>>,
    /// Rake; negative where the face leans forward, against the chip.
    pub rake: Option<Entered<Angle>>,
    /// Least feed that it is made for.
    pub least_feed: Option<Entered<Feed>>,
    /// Most feed that it is made for.
    pub most_feed: Option<Entered<Feed>>,
    /// Least depth that it is made for.
    pub least_depth: Option<Entered<Length>>,
    /// Most depth that it is made for.
    pub most_depth: Option<Entered<Length>>,
    /// Price of an insert, or of a tip.
    pub price: Option<Entered<Money>>,
    /// Cutting edges on it.
    pub edges: Option<Entered<Count>>,
    /// Time to grind it again, where it is ground.
    pub regrind_time: Option<Entered<Time>>,
}

/// The lathe.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Machine {
    /// What the person calls it; at most [`Job::MOST_NAME_CHARACTERS`](super::Job) characters.
    pub name: String,
    /// How stiff it is where nothing was measured.
    pub rigidity: Rigidity,
    /// Its spindle speeds.
    pub speeds: Gears<RotationalSpeed>,
    /// Its feeds along the work.
    pub feeds: Gears<Feed>,
    /// Power of the motor.
    pub power: Option<Entered<Power>>,
    /// The share of it that reaches the spindle.
    pub efficiency: Option<Entered<Share>>,
    /// Torque that the spindle drive holds; `None`: only the power limits it.
    pub torque: Option<Entered<Torque>>,
    /// The largest diameter that swings over the cross-slide.
    pub swing: Option<Entered<Length>>,
    /// The speed marked on the chuck.
    pub chuck_top_speed: Option<Entered<RotationalSpeed>>,
    /// One division of the cross-slide's dial, as it is marked.
    pub graduation: Option<Entered<Length>>,
    /// What that division means.
    pub dial_reads: DialReads,
    /// One division of the compound slide's dial: what the slide moves.
    pub compound_graduation: Option<Entered<Length>>,
    /// The infeed on radius that one division of the compound slide should give, set over.
    pub fine_infeed: Option<Entered<Length>>,
    /// Measured across the spindle, chuck and all.
    pub head_stiffness: Option<Entered<Stiffness>>,
    /// Measured across the live centre.
    pub tail_stiffness: Option<Entered<Stiffness>>,
    /// Measured across the tool post.
    pub post_stiffness: Option<Entered<Stiffness>>,
    /// What was learned of it.
    pub learned: Learned,
}

/// The speeds or feeds that a machine has.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(untagged)]
pub enum Gears<Q> {
    /// These alone, in any order; at most [`Job::MOST_GEARS`](super::Job).
    Listed(Vec<Entered<Q>>),
    /// Every one between two ends.
    Stepless {
        /// The lowest; `None` is the usual.
        from: Option<Entered<Q>>,
        /// The highest; `None` is the usual.
        to: Option<Entered<Q>>,
    },
}

/// What the job costs beside its time. All sums are in the one currency that is named.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Rates {
    /// The currency, as the person writes it; at most [`Job::MOST_CURRENCY_CHARACTERS`](super::Job) characters.
    pub currency: String,
    /// What an hour costs.
    pub per_hour: Option<Entered<Money>>,
    /// The least that is charged for a job.
    pub least: Option<Entered<Money>>,
    /// Discs, abrasive, oil and the like.
    pub consumables: Option<Entered<Money>>,
    /// Postage and packing material.
    pub postage: Option<Entered<Money>>,
}

impl<Q> Gears<Q> {
    /// How many are listed; none of a free range.
    pub const fn count(&self) -> usize {
        match self {
            Self::Listed(list) => list.len(),
            Self::Stepless { .. } => 0,
        }
    }
}

impl<Q> Default for Gears<Q> {
    fn default() -> Self {
        Self::Stepless {
            from: None,
            to: None,
        }
    }
}

/// Reads what stands there, a list or an object, so that an error is reported under its item or its field.
impl<'de, Q: Typed> Deserialize<'de> for Gears<Q> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(ListOrEnds(PhantomData))
    }
}

struct ListOrEnds<Q>(PhantomData<Q>);

/// The ends of a free range in files.
#[derive(Deserialize)]
#[serde(deny_unknown_fields, bound(deserialize = "Q: Typed"))]
struct Ends<Q> {
    from: Option<Entered<Q>>,
    to: Option<Entered<Q>>,
}

impl<'de, Q: Typed> Visitor<'de> for ListOrEnds<Q> {
    type Value = Gears<Q>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a list, or an object with `from` and `to`")
    }

    fn visit_seq<A: SeqAccess<'de>>(self, list: A) -> Result<Gears<Q>, A::Error> {
        Vec::deserialize(SeqAccessDeserializer::new(list)).map(Gears::Listed)
    }

    fn visit_map<A: MapAccess<'de>>(self, ends: A) -> Result<Gears<Q>, A::Error> {
        let Ends { from, to } = Ends::deserialize(MapAccessDeserializer::new(ends))?;
        Ok(Gears::Stepless { from, to })
    }
}

impl Default for Machine {
    fn default() -> Self {
        Self {
            name: String::new(),
            rigidity: Rigidity::Light,
            speeds: Gears::default(),
            feeds: Gears::default(),
            power: None,
            efficiency: None,
            torque: None,
            swing: None,
            chuck_top_speed: None,
            graduation: None,
            dial_reads: DialReads::Diameter,
            compound_graduation: None,
            fine_infeed: None,
            head_stiffness: None,
            tail_stiffness: None,
            post_stiffness: None,
            learned: Learned::default(),
        }
    }
}

impl Default for Shop {
    /// Depths and times by common practice: two equal last cuts of 0.25 mm on diameter, 0.02 mm for polishing.
    fn default() -> Self {
        Self {
            tool: ToolKind::IndexableCarbide,
            edge: Edge::default(),
            machine: Machine::default(),
            aim: Aim::LeastTime,
            cut_off_method: CutOffMethod::Saw,
            kerf: None,
            facing_stock: mm(1, 0),
            centre_order: CentreOrder::AfterFacing,
            rough_infeed: None,
            last_cut: mm(25, 2),
            polishing_stock: mm(2, 2),
            cutting_speed: None,
            rough_feed: None,
            finish_feed: None,
            top_speed: Entered::plain(2000, 0, Unit::RevolutionPerMinute),
            approach: mm(2, 0),
            set_time: Entered::plain(13, 0, Unit::Second),
            return_time: Entered::plain(9, 0, Unit::Second),
            measure_time: Entered::plain(24, 0, Unit::Second),
            polish_time: Entered::plain(120, 0, Unit::Second),
            times: StepTimes::default(),
            rates: Rates::default(),
            instruments: Vec::new(),
        }
    }
}
