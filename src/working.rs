//! A result that can show its working: the value, the formula, the numbers in it, its source and its range.
//!
//! A formula is kept in the symbols of its source. The same symbols name the inputs, so that the line with
//! numbers is made from the line with symbols and cannot drift away from it.

use serde::Serialize;

use crate::job::Field;
use crate::letter::is_letter;
use crate::quantity::{
    Angle, Area, Density, Expansion, Feed, Force, Grade, Hardness, Length, Mass, Money, Power,
    RotationalSpeed, SecondMoment, Speed, Stiffness, Stress, TaperRatio, TemperatureStep, Time,
    Torque, Volume,
};
use crate::tables::Confirmed;

/// A value with its working.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Figure<Q> {
    /// The value; the likely one where it is an estimate.
    pub value: Q,
    /// Lowest and highest to expect; `None` where the value is exact but for what was measured.
    pub range: Option<Range<Q>>,
    /// How it came about.
    pub working: Working,
}

/// Lowest and highest to expect of an estimate.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Range<Q> {
    /// The lowest.
    pub low: Q,
    /// The highest.
    pub high: Q,
}

/// How a value came about.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Working {
    /// The symbol of the result.
    pub symbol: &'static str,
    /// What stands right of the equals sign, in symbols.
    pub formula: &'static str,
    /// What its parts are in turn, each a line in symbols.
    pub parts: &'static [&'static str],
    /// What each symbol is and was.
    pub inputs: Vec<Input>,
    /// Where the formula comes from.
    pub source: Source,
}

/// One symbol of a formula.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Input {
    /// The symbol.
    pub symbol: &'static str,
    /// What it stands for.
    pub meaning: Meaning,
    /// Its value here.
    pub value: Value,
}

impl Input {
    /// A symbol with what it stands for and its value here.
    pub(crate) const fn new(symbol: &'static str, meaning: Meaning, value: Value) -> Self {
        Self {
            symbol,
            meaning,
            value,
        }
    }
}

/// A number of any kind that a formula takes or a table shows.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", content = "value", rename_all = "kebab-case")]
#[expect(missing_docs, reason = "each name is the quantity itself")]
pub enum Value {
    #[serde(serialize_with = "without_grade")]
    Length(Grade, Length),
    /// A length far finer than a size: ridges, chips.
    Fine(Length),
    Angle(Angle),
    Time(Time),
    Speed(Speed),
    Feed(Feed),
    Rotation(RotationalSpeed),
    Mass(Mass),
    Volume(Volume),
    Density(Density),
    Area(Area),
    SecondMoment(SecondMoment),
    Force(Force),
    Torque(Torque),
    Power(Power),
    Stress(Stress),
    Stiffness(Stiffness),
    TemperatureStep(TemperatureStep),
    Expansion(Expansion),
    Hardness(Hardness),
    Taper(TaperRatio),
    Ratio(f64),
    Share(f64),
    Count(u32),
    Money(Money),
}

impl Value {
    /// A length that is marked or sawn.
    pub const fn length(length: Length) -> Self {
        Self::Length(Grade::Length, length)
    }

    /// A diameter or infeed that is measured or dialled.
    pub const fn size(length: Length) -> Self {
        Self::Length(Grade::Size, length)
    }
}

/// Writes a length as a bare number, like every other quantity: how it is shown is the page's concern.
#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "the form that serde calls a variant's function with"
)]
fn without_grade<S: serde::Serializer>(
    _: &Grade,
    length: &Length,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    length.serialize(serializer)
}

/// What a symbol stands for: an entered field, or something found on the way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Meaning {
    /// An entered figure; the page leads back to its field.
    Field(Field),
    /// The shank as received, shoulder to free end.
    ShankReceived,
    /// Where the cut is marked, from the shoulder.
    CutFromShoulder,
    /// The shank after cutting and facing.
    ShankFinished,
    /// Facing stock really taken, which is all the rest where there is no room for a cut.
    FacingTaken,
    /// The largest diameter that the first pass meets, runout counted.
    LargestDiameter,
    /// The diameter aimed at, the middle of the tolerance.
    AimedDiameter,
    /// What is to be turned off the diameter, the polishing stock left on.
    ToTurn,
    /// The diameter of the hole at the finished face.
    BoreAtFace,
    /// The diameter of the hole where the cone runs out into it, further down.
    BoreAtCone,
    /// Pilot diameter of the centre drill.
    PilotDiameter,
    /// Pilot length of the centre drill.
    PilotLength,
    /// Half the included angle of the centre, 30°.
    HalfAngle,
    /// Depth of the cone.
    ConeDepth,
    /// Facing stock still on when the centre is drilled.
    FacingStillOn,
    /// Volume of the offcut.
    OffcutVolume,
    /// The head's diameter over the shank's.
    StepAtShoulder,
    /// How long the receiver itself is.
    ReceiverLength,
    /// The fillet that there is metal for, or the nose radius of a tool where that is larger.
    FilletThatCounts,
    /// The peak of the stress where safety is least.
    PeakStress,
    /// The fillet over the shank's diameter.
    FilletShare,
    /// Diameter of the head at the shoulder.
    HeadAtShoulder,
    /// Yield strength, the likely one.
    YieldStrength,
    /// Tensile strength, the likely one.
    TensileStrength,
    /// Equivalent stress where safety is least.
    EquivalentStress,
    /// The part of the stress that changes sign with each turn.
    StressAmplitude,
    /// The part of the stress that stays.
    MeanStress,
    /// The amplitude that the steel stands for ever.
    EnduranceLimit,
    /// How much larger the shank is than the hole, in the middle of its limits.
    Interference,
    /// Pressure between sleeve and shank.
    Pressure,
    /// Friction between sleeve and shank.
    Friction,
    /// How long the sleeve sits on the shank.
    SeatLength,
    /// Room for the sleeve to slip on.
    RoomToAssemble,
    /// What the weakest section had before.
    SectionBefore,
    /// What the weakest section has when finished.
    SectionAfter,
    /// Volume of the whole part.
    PartVolume,
    /// First moment of the whole part's volume about the shoulder.
    VolumeMoment,
    /// Volume of all chips.
    ChipVolume,
    /// Density of the material.
    MaterialDensity,
    /// Number of roughing passes.
    PassCount,
    /// Sum of the cutting times.
    CuttingTime,
    /// Sum of the times for setting, returning and measuring.
    HandlingTime,
    /// Time for polishing.
    PolishingTime,
    /// Smallest diameter of the stock where the finished shank will be.
    SmallestStock,
    /// The diameter that sets the speed.
    EngagedDiameter,
    /// The major diameter of the hole where the wall is least.
    BoreDiameter,
    /// The diameter over the wall.
    OuterDiameter,
    /// Half the runout there, and what the hole itself is off: how far the axes may lie apart.
    AxisOffset,
    /// Total indicated runout at the place that counts.
    RunoutThere,
    /// Power that reaches the spindle.
    SpindlePower,
    /// Tangential force, the high end of its range.
    HighForce,
    /// Specific cutting force of a chip one millimetre thick and one wide, the likely one.
    SpecificForce,
    /// Mean thickness of the chip.
    ChipThickness,
    /// How steeply the specific force falls with the chip's thickness.
    ForceExponent,
    /// Infeed of the pass, on radius.
    PassInfeed,
    /// Feed of the pass.
    PassFeed,
    /// Cutting speed of the pass.
    PassSpeed,
    /// The factor for the rake.
    RakeFactor,
    /// What a chip too thin for the law takes on top.
    SlowFactor,
    /// Force across the work in the last cut, at most.
    AcrossForce,
    /// Stiffness between work and tool where they part most.
    StiffnessThere,
    /// Length out of the chuck, or between the centres.
    Overhang,
    /// Diameter of a plain bar that gives way as the stepped one does.
    EqualDiameter,
    /// Mean of all time under feed.
    FeedingMean,
    /// Mean of all other time.
    StepsMean,
    /// Standard deviation of the total time.
    TimeDeviation,
    /// Skewness of the total time.
    TimeSkewness,
    /// How much quicker or slower than usual a person may work.
    PaceSpread,
    /// The whole time of the rework.
    TotalTime,
    /// What the work measures now.
    MeasuredNow,
    /// What comes off whatever is dialled.
    TakesOffset,
    /// The share of what is dialled that comes off.
    TakesShare,
    /// What is dialled in, on diameter.
    DialledOnDiameter,
    /// What was dialled in and has not come off yet.
    LeftStanding,
    /// What an hour costs.
    HourlyRate,
    /// Edges that are paid for.
    EdgesCharged,
    /// Price of one edge.
    EdgePrice,
    /// Cut-off discs used up.
    DiscsUsed,
    /// Price of one disc.
    DiscPrice,
    /// Sum for oil, cloth, abrasive, packing.
    Consumables,
    /// The least that is charged, postage apart.
    MinimumCharge,
    /// What it costs to send back.
    Postage,
    /// What the instrument showed.
    ReadingShown,
    /// How many readings were taken.
    ReadingCount,
    /// Expansion of the work.
    WorkExpansion,
    /// How much warmer than 20 °C the work is.
    WorkAboveReference,
    /// Expansion of the instrument.
    InstrumentExpansion,
    /// How much warmer than 20 °C the instrument is.
    InstrumentAboveReference,
    /// Standard uncertainty that each reading has by itself.
    OwnUncertainty,
    /// Standard uncertainty that the readings share.
    CommonUncertainty,
    /// Growth of the diameter for each millimetre along the shank.
    TaperSlope,
    /// Its standard uncertainty over the length.
    TaperUncertainty,
    /// The straight part of the shank.
    StraightPart,
    /// Chuck to live centre, or centre to centre.
    BetweenSupports,
}

/// Where a formula, a figure or a default comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Source {
    /// Plain geometry or arithmetic; nothing to look up.
    Geometry,
    /// A rule of the trade that no standard gives.
    CommonPractice,
    /// A standard or a handbook, by title, and how far its figures were confirmed.
    Published {
        /// Title, number, table.
        title: &'static str,
        /// How far the figures were confirmed.
        confirmed: Confirmed,
    },
}

impl Working {
    /// The formula with a number in the place of each symbol that is an input.
    pub fn with_numbers(&self, mut show: impl FnMut(Value) -> String) -> String {
        let mut line = String::with_capacity(self.formula.len() * 2);
        let mut word = String::new();
        // A space behind the end closes the last word.
        for character in self.formula.chars().chain([' ']) {
            if character.is_ascii_digit() || is_letter(character) || is_small_figure(character) {
                word.push(character);
                continue;
            }
            match self.inputs.iter().find(|input| input.symbol == word) {
                Some(input) => line.push_str(&show(input.value)),
                None => line.push_str(&word),
            }
            word.clear();
            line.push(character);
        }
        line.truncate(line.trim_end().len());
        line
    }
}

/// Whether a character belongs to a symbol as its subscript or its power.
const fn is_small_figure(character: char) -> bool {
    matches!(character, '₀'..='₉' | 'ₐ'..='ₜ' | '_' | '²' | '³' | '¹' | '⁰'..='⁹')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_take_the_place_of_whole_symbols_only() {
        let working = Working {
            symbol: "x",
            formula: "S − L₁ − (k + f)/tan α",
            parts: &[],
            inputs: vec![
                Input::new("S", Meaning::ShankReceived, Value::Count(80)),
                Input::new("L₁", Meaning::ShankFinished, Value::Count(60)),
                Input::new("k", Meaning::Field(Field::Kerf), Value::Count(2)),
                Input::new("α", Meaning::HalfAngle, Value::Count(30)),
            ],
            source: Source::Geometry,
        };
        let line = working.with_numbers(|value| match value {
            Value::Count(count) => count.to_string(),
            _ => String::new(),
        });
        assert_eq!(line, "80 − 60 − (2 + f)/tan 30");
    }
}
