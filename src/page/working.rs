//! The working of a figure: formula, numbers, what went in, source and range.

use std::borrow::Cow;

use skimwright::job::Field;
use skimwright::measuring::{Next, VerdictOf};
use skimwright::plan::Plan;
use skimwright::strength::Load;
use skimwright::working::{Figure, Input, Meaning, Range, Value, Working};
use yew::prelude::*;

use super::figures::in_currency;
use super::hooks::focus::scroll_to_top;
use super::markup::button;
use super::modal::modal;
use super::state::{Action, Share, Shown, Stage, State};
use super::store::{Store, on, words};
use super::words::Text;

impl State {
    /// A figure of the plan, or of the advice at the lathe.
    pub(crate) fn figure(&self, shown: Shown) -> Option<ShownFigure<'_>> {
        figure_of(&self.plan, shown).or_else(|| advised(self, shown))
    }
}

/// Those of the advice at the lathe.
fn advised(state: &State, shown: Shown) -> Option<ShownFigure<'_>> {
    let of = || state.advice();
    match shown {
        Shown::SizeNow => Some(figure(&of().size.as_ref()?.diameter, Value::size)),
        Shown::AfterNext => match &of().next {
            Next::Cut(next) => Some(figure(&next.diameter_after, Value::size)),
            _ => None,
        },
        Shown::PolishNext => match &of().next {
            Next::Polish { off } => Some(figure(off, Value::size)),
            _ => None,
        },
        Shown::TaperFound => Some(figure(&of().taper.as_ref()?.over_length, Value::size)),
        Shown::TailShift => Some(figure(of().taper.as_ref()?.shift.as_ref()?, Value::size)),
        Shown::Measured(at) => {
            let verdict = of().verdicts.get(usize::from(at))?;
            let value = match verdict.of {
                VerdictOf::Diameter(_) => Value::size,
                VerdictOf::Roughness => Value::Fine,
            };
            Some(figure(verdict.measured.as_ref()?, value))
        }
        _ => None,
    }
}

/// A figure of the plan, ready to be shown with its working.
pub(crate) struct ShownFigure<'a> {
    pub(crate) value: Value,
    pub(crate) range: Option<(Value, Value)>,
    pub(crate) working: Cow<'a, Working>,
}

/// Finds a figure in the plan.
pub(crate) fn figure_of(plan: &Plan, shown: Shown) -> Option<ShownFigure<'_>> {
    let cut = plan.cut_off.as_ref();
    let stock = plan.stock_off.as_ref();
    let centre = plan.centre.as_ref();
    match shown {
        Shown::CutFromFreeEnd => cut.map(|cut| figure(&cut.from_free_end, Value::length)),
        Shown::CutFromShoulder => cut.map(|cut| figure(&cut.from_shoulder, Value::length)),
        Shown::OffcutLength => cut.map(|cut| figure(&cut.offcut_length, Value::length)),
        Shown::OffcutMass => cut.map(|cut| figure(&cut.offcut_mass, Value::Mass)),
        Shown::ShankAfterCut => cut.map(|cut| figure(&cut.shank_after_cut, Value::length)),
        Shown::ShankFinished => cut.map(|cut| figure(&cut.shank_finished, Value::length)),
        Shown::Grip => plan.grip.as_ref().map(|grip| figure(grip, Value::length)),
        Shown::StockOff => stock.map(|stock| figure(&stock.most, Value::size)),
        Shown::RoughEach => stock?
            .rough_each
            .as_ref()
            .map(|each| figure(each, Value::size)),
        Shown::SpindleSpeed => stock?
            .spindle_speed
            .as_ref()
            .map(|speed| figure(speed, Value::Rotation)),
        Shown::ConeDepth => centre.map(|centre| figure(&centre.cone_depth, Value::length)),
        Shown::CentreDepth => centre.map(|centre| figure(&centre.feed_depth, Value::length)),
        Shown::Time => plan
            .time
            .as_ref()
            .map(|time| figure(&time.total, Value::Time)),
        Shown::Cost => plan.cost.as_ref().map(|cost| ShownFigure {
            value: Value::Money(cost.likely),
            range: Some((Value::Money(cost.low), Value::Money(cost.high))),
            working: Cow::Borrowed(&cost.working),
        }),
        Shown::LargestDiameter => plan
            .clean_up
            .as_ref()
            .map(|clean| figure(&clean.largest_diameter, Value::size)),
        Shown::Wall(bore) => plan
            .walls
            .iter()
            .find(|wall| wall.bore == bore)
            .map(|wall| figure(&wall.least, Value::length)),
        _ => further_figure(plan, shown),
    }
}

/// Those of the receiver, of strength and of mass.
fn further_figure(plan: &Plan, shown: Shown) -> Option<ShownFigure<'_>> {
    let sleeve = || plan.receiver.as_ref()?.sleeve.as_ref();
    let bears = || plan.bears.as_ref();
    let duty = || plan.bears.as_ref()?.duty.as_ref();
    let masses = || plan.masses.as_ref();
    match shown {
        Shown::SleevePressure => Some(figure(&sleeve()?.pressure, Value::Stress)),
        Shown::SleeveStress => Some(figure(&sleeve()?.sleeve_stress, Value::Stress)),
        Shown::ShaftStress => Some(figure(&sleeve()?.shaft_stress, Value::Stress)),
        Shown::SleeveHolds => Some(figure(&sleeve()?.holds, Value::Torque)),
        Shown::WarmerBy => Some(figure(&sleeve()?.warmer_by, Value::TemperatureStep)),
        Shown::Kept(share) => {
            let kept = plan.kept.as_ref()?;
            let share = match share {
                Share::Bending => &kept.bending,
                Share::Torsion => &kept.torsion,
                Share::Stiffness => &kept.stiffness,
                Share::Twist => &kept.twist,
            };
            Some(figure(share, Value::Share))
        }
        Shown::Shoulder(load) => {
            let shoulder = bears()?.shoulder.as_ref()?;
            let factor = match load {
                Load::Bending => &shoulder.bending,
                Load::Torsion => &shoulder.torsion,
                Load::Tension => &shoulder.tension,
            };
            Some(figure(factor, Value::Ratio))
        }
        Shown::AgainstYield => Some(figure(duty()?.against_yield.as_ref()?, Value::Ratio)),
        Shown::AgainstFatigue => Some(figure(duty()?.against_fatigue.as_ref()?, Value::Ratio)),
        Shown::MassBefore => Some(figure(&masses()?.before, Value::Mass)),
        Shown::MassChips => Some(figure(&masses()?.chips, Value::Mass)),
        Shown::MassAfter => Some(figure(&masses()?.after, Value::Mass)),
        Shown::BalanceBefore => Some(figure(&masses()?.balance_before, Value::length)),
        Shown::BalanceAfter => Some(figure(&masses()?.balance_after, Value::length)),
        _ => cut_figure(plan, shown),
    }
}

/// Those of one pass, of holding and of finishing.
fn cut_figure(plan: &Plan, shown: Shown) -> Option<ShownFigure<'_>> {
    let stock = || plan.stock_off.as_ref();
    let pass = |index: u8| stock()?.passes.get(usize::from(index));
    let holding = || plan.holding.as_ref();
    let finish = || plan.finish.as_ref();
    match shown {
        Shown::PassForce(index) => Some(own(pass(index)?.force_figure()?, Value::Force)),
        Shown::PassPower(index) => Some(own(pass(index)?.power_figure()?, Value::Power)),
        Shown::PassSpeed(index) => {
            let stock = stock()?;
            let figure = pass(index)?.speed_figure(stock.cutting_speed, stock.spindle);
            Some(own(figure, Value::Rotation))
        }
        Shown::Slender => Some(figure(holding()?.slender_ratio.as_ref()?, Value::Ratio)),
        Shown::Deflection => Some(figure(holding()?.deflection.as_ref()?, Value::Fine)),
        Shown::Ridge => Some(figure(
            finish()?.polish.as_ref()?.ridge.as_ref()?,
            Value::Fine,
        )),
        Shown::CompoundAngle => Some(figure(
            finish()?.fine_infeed.as_ref()?.angle.as_ref()?,
            Value::Angle,
        )),
        _ => None,
    }
}

fn figure<Q: Copy>(figure: &Figure<Q>, value: impl Fn(Q) -> Value) -> ShownFigure<'_> {
    let working = Cow::Borrowed(&figure.working);
    shown(figure.value, figure.range, &value, working)
}

/// The same of a figure that is made when it is asked for.
fn own<'a, Q: Copy>(figure: Figure<Q>, value: impl Fn(Q) -> Value) -> ShownFigure<'a> {
    let Figure {
        value: likely,
        range,
        working,
    } = figure;
    shown(likely, range, &value, Cow::Owned(working))
}

fn shown<'a, Q: Copy>(
    likely: Q,
    range: Option<Range<Q>>,
    value: &impl Fn(Q) -> Value,
    working: Cow<'a, Working>,
) -> ShownFigure<'a> {
    ShownFigure {
        value: value(likely),
        range: range.map(|Range { low, high }| (value(low), value(high))),
        working,
    }
}

/// The panel that shows how a figure came about.
pub(crate) fn working_panel(store: &Store, shown: Shown) -> Html {
    let words = words(store);
    let Some(figure) = store.figure(shown) else {
        return Html::default();
    };
    let working = figure.working;
    let numbers = words.marked(working.with_numbers(|value| words.value(value)));
    let range = figure.range.and_then(|range| words.figure_range(range));
    let inside = html! {
        <>
            <p class="working-value">{ in_currency(store, figure.value) }</p>
            if let Some(range) = range {
                <p class="working-range">
                    { words.say(Text::WorkingEstimate) }{ ": " }{ range }
                </p>
            }
            if shown == Shown::RoughEach {
                <p>{ words.say(Text::WorkingInfeed) }</p>
            }
            <h3>{ words.say(Text::WorkingFormula) }</h3>
            <p class="formula">{ working.symbol }{ " = " }{ words.marked(working.formula.to_owned()) }</p>
            { for working.parts.iter().map(|part| html! { <p class="formula">{ words.marked((*part).to_owned()) }</p> }) }
            <h3>{ words.say(Text::WorkingNumbers) }</h3>
            <p class="formula">
                { working.symbol }{ " = " }{ numbers }{ " = " }{ words.value(figure.value) }
            </p>
            <h3>{ words.say(Text::WorkingInputs) }</h3>
            <ul class="inputs">
                { for working.inputs.iter().map(|input| input_row(store, input)) }
            </ul>
            <h3>{ words.say(Text::WorkingSource) }</h3>
            <p>{ words.source(working.source) }</p>
        </>
    };
    modal(words.figure_name(shown).into(), inside)
}

fn input_row(store: &Store, input: &Input) -> Html {
    let words = words(store);
    let (name, value) = words.input(input);
    let change = match input.meaning {
        Meaning::Field(field) => html! {
            { button(words.say(Text::ToField), go_to(store, field)) }
        },
        _ => Html::default(),
    };
    html! {
        <li class="input">
            <span class="input-symbol">{ input.symbol }</span>
            <span class="input-name">{ name }</span>
            <span class="input-value">{ value }</span>
            { change }
        </li>
    }
}

/// Leads to a field: its stage, with the field open.
pub(crate) fn go_to(store: &Store, field: Field) -> Callback<MouseEvent> {
    let close = on::<MouseEvent>(store, || Action::Show(None));
    let turn = on::<MouseEvent>(store, move || Action::GoTo(stage_of(field)));
    let pick = on::<MouseEvent>(store, move || Action::Pick(Some(field)));
    Callback::from(move |event: MouseEvent| {
        // From there the field is scrolled to, with the drawing above it.
        scroll_to_top();
        close.emit(event.clone());
        turn.emit(event.clone());
        pick.emit(event);
    })
}

/// The stage that a field stands on.
const fn stage_of(field: Field) -> Stage {
    match field {
        Field::Title
        | Field::Material
        | Field::HeadDiameter
        | Field::HeadLength
        | Field::HeadBeyond
        | Field::Head(..)
        | Field::Runout
        | Field::EndRunout
        | Field::SurfaceHardness
        | Field::CaseDepth
        | Field::CoreHardness
        | Field::ShankLength
        | Field::Sections
        | Field::Section(..)
        | Field::Features
        | Field::Feature(..)
        | Field::Bores
        | Field::Bore(..) => Stage::Received,
        Field::WantedDiameter
        | Field::Tolerance
        | Field::UpperDeviation
        | Field::LowerDeviation
        | Field::WantedLength
        | Field::ShoulderRadius
        | Field::EndChamfer
        | Field::Countersink
        | Field::Roughness
        | Field::Receiver(_)
        | Field::ReceiverDepth
        | Field::LeastGrip
        | Field::DutyTorque
        | Field::DutyForce
        | Field::DutyOverhang
        | Field::DutyPower
        | Field::DutySpeed => Stage::Wanted,
        Field::MeasuredBy => Stage::HandBack,
        _ => Stage::Plan,
    }
}
