//! How shoulder, end and surface are finished.

use skimwright::cutting::{FilletPlan, FilletWay};
use yew::prelude::*;

use super::figures::figure_list;
use super::markup::{all, element, paragraph, text};
use super::state::Shown;
use super::store::{Store, words};
use super::words::{OfCut, Text};

pub(crate) fn finish(store: &Store) -> Html {
    let Some(finish) = &store.plan.finish else {
        return Html::default();
    };
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    let title = |what| element("h3", "", text(say(what)));
    let mut parts = vec![element("h2", "", text(say(OfCut::FinishTitle)))];
    if let Some(fillet) = &finish.fillet {
        parts.extend([
            title(OfCut::FilletTitle),
            paragraph(words.fillet(fillet)),
            steps(store, fillet),
        ]);
    }
    if let Some(chamfer) = &finish.chamfer {
        parts.extend([
            title(OfCut::ChamferTitle),
            paragraph(words.chamfer(chamfer)),
        ]);
    }
    if let Some(polish) = &finish.polish {
        parts.extend([
            title(OfCut::PolishTitle),
            paragraph(words.polish(polish)),
            figure_list(store, &[Shown::Ridge]),
            element("p", "care-step", text(words.say(Text::CarePolish))),
        ]);
    }
    if let Some(fine) = &finish.fine_infeed {
        parts.extend([
            title(OfCut::FineTitle),
            paragraph(words.fine_infeed(fine)),
            figure_list(store, &[Shown::CompoundAngle]),
        ]);
    }
    element("section", "group", all(parts))
}

/// The steps of a fillet that is larger than the nose.
fn steps(store: &Store, plan: &FilletPlan) -> Html {
    let FilletWay::Steps(found) = &plan.way else {
        return Html::default();
    };
    let words = words(store);
    let say = |text| words.say(Text::Cut(text));
    let unit = words.length_unit();
    let rows = found.steps.iter().map(|step| {
        html! {
            <tr>
                <td>{ words.size_bare(step.from_face) }</td>
                <td>{ words.size_bare(step.infeed_left) }</td>
                <td>{ plan.divisions(step).to_string() }</td>
            </tr>
        }
    });
    html! {
        <table class="graduations">
            <thead><tr>
                <th scope="col">{ say(OfCut::FromFace) }<small>{ " " }{ unit }</small></th>
                <th scope="col">{ say(OfCut::InfeedLeft) }<small>{ " " }{ unit }</small></th>
                <th scope="col">
                    { say(OfCut::Divisions) }<small>{ " " }{ words.size(plan.graduations.radial) }</small>
                </th>
            </tr></thead>
            <tbody>{ for rows }</tbody>
        </table>
    }
}
