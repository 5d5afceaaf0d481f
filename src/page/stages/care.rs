//! The usual cautions, one line each, at the step that they belong to.

use skimwright::cutting::{ChipVerdict, PassCut, is_hard};
use skimwright::holding::{Caution, HoldingPlan};
use skimwright::job::{CutOffMethod, Support};
use skimwright::rework::CutKind;
use skimwright::tables::{ToolKind, WorkMaterial};
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
    let cut = store
        .plan
        .cut_off
        .as_ref()
        .is_some_and(|cut| cut.kind == CutKind::CutAndFace);
    let disc = matches!(
        store.job.shop.cut_off_method,
        CutOffMethod::HandDisc | CutOffMethod::ChopWheel
    );
    if !(cut && disc) {
        return Html::default();
    }
    let say = |text| AttrValue::Static(words(store).say(text));
    lines([Text::CareDisc, Text::CareDiscSpeed].map(say))
}

/// Below the passes: what their chips and knocks ask for.
pub(crate) fn care_at_passes(store: &Store) -> Html {
    let words = words(store);
    let (material, tool) = (store.job.part.material, store.job.shop.tool);
    let passes = store.plan.stock_off.iter().flat_map(|it| &it.passes);
    let cuts: Vec<&PassCut> = passes.filter_map(|pass| pass.cut.as_ref()).collect();
    let long = |cut: &&PassCut| matches!(cut.chip, ChipVerdict::MayBeLong | ChipVerdict::Stringy);
    let grinds = tool == ToolKind::Grinding;
    let of_metal = match material {
        WorkMaterial::GreyIron | WorkMaterial::DuctileIron => Some(Text::CareDust),
        WorkMaterial::TitaniumAlloy => Some(Text::CareFire),
        _ if is_hard(material) => Some(Text::CareHard),
        _ => None,
    };
    let knocks = tool != ToolKind::HighSpeedSteel && cuts.iter().any(|cut| cut.interrupted);
    let said = [
        of_metal.filter(|_| !grinds),
        (!grinds && cuts.iter().any(long)).then_some(Text::CareChips),
        (!grinds && knocks).then_some(Text::Cut(OfCut::CareKnocks)),
        grinds.then_some(Text::Cut(OfCut::CareGrinding)),
    ];
    let said = said.into_iter().flatten();
    lines(said.map(|text| AttrValue::Static(words.say(text))))
}

/// Where the part is held: the key, the speed of the chuck, and length that nothing supports.
pub(crate) fn care_at_holding(store: &Store, holding: &HoldingPlan) -> Html {
    let words = words(store);
    let say = |text| AttrValue::Static(words.say(text));
    let in_chuck = matches!(holding.support, Support::Chuck | Support::ChuckAndCentre);
    let marked = store.job.shop.machine.chuck_top_speed.as_ref();
    let chuck = in_chuck.then(|| match marked {
        Some(speed) => words.chuck_speed(speed.value()).into(),
        None => say(Text::Cut(OfCut::CareChuck)),
    });
    let long = holding
        .slender
        .is_some_and(|it| it.caution != Caution::None);
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
