//! The usual cautions, one line each, at the step that they belong to.

use skimwright::work::{StepWarning, cut_off_warnings, holding_warnings, pass_warnings};
use yew::prelude::*;

use crate::page::markup::{all, element, text};
use crate::page::store::{Store, words};
use crate::page::words::{OfCut, Text};

/// One line for each caution that applies.
fn lines(lines: impl IntoIterator<Item = AttrValue>) -> Html {
    let lines = lines.into_iter();
    all(lines
        .map(|line| element("p", "care-step", text(line)))
        .collect())
}

/// Above how the part is cut off: what an abrasive disc asks for.
pub(crate) fn care_at_cut(store: &Store) -> Html {
    if !cut_off_warnings(&store.job, &store.plan).contains(&StepWarning::Disc) {
        return Html::default();
    }
    let say = |text| AttrValue::Static(words(store).say(text));
    lines([Text::CareDisc, Text::CareDiscSpeed].map(say))
}

/// Below the passes: what their chips and knocks ask for.
pub(crate) fn care_at_passes(store: &Store) -> Html {
    let words = words(store);
    let said = pass_warnings(&store.job, &store.plan, None).into_iter();
    lines(said.filter_map(|warning| {
        let text = match warning {
            StepWarning::DustOfCastIron => Text::CareDust,
            StepWarning::TitaniumFire => Text::CareFire,
            StepWarning::ChipsHard => Text::CareHard,
            StepWarning::ChipsLong => Text::CareChips,
            StepWarning::Knocks => Text::Cut(OfCut::CareKnocks),
            StepWarning::Grinding => Text::Cut(OfCut::CareGrinding),
            _ => return None,
        };
        Some(AttrValue::Static(words.say(text)))
    }))
}

/// Where the part is held: the key, the speed of the chuck, and length that nothing supports.
pub(crate) fn care_at_holding(store: &Store) -> Html {
    let words = words(store);
    let say = |text| AttrValue::Static(words.say(text));
    let warnings = holding_warnings(&store.job, &store.plan);
    let in_chuck = warnings.contains(&StepWarning::ChuckSpeed);
    let marked = store.job.shop.machine.chuck_top_speed.as_ref();
    let chuck = in_chuck.then(|| match marked {
        Some(speed) => words.chuck_speed(speed.value()).into(),
        None => say(Text::Cut(OfCut::CareChuck)),
    });
    let long = warnings.contains(&StepWarning::LongOverhang);
    let said = [
        Some(say(Text::CareSetUp)),
        chuck,
        long.then(|| say(Text::Cut(OfCut::CareLong))),
    ];
    lines(said.into_iter().flatten())
}

/// What holds for all of it.
pub(crate) fn care(store: &Store) -> Html {
    let words = words(store);
    let no_holding = store.plan.holding.is_none();
    let said = [
        no_holding.then_some(Text::CareSetUp),
        Some(Text::CareLives),
        Some(Text::CareEstimates),
    ];
    html! {
        <section class="group care">
            <h2>{ words.say(Text::CareLabel) }</h2>
            <ul>{ for said.into_iter().flatten().map(|line| html! { <li>{ words.say(line) }</li> }) }</ul>
        </section>
    }
}
