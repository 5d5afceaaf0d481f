//! The part as pictures: on the screen as wide as there is room, on paper at true scale.

use std::rc::Rc;

use skimwright::offer::Offer;
use skimwright::plan::Plan;
use skimwright::quantity::Length;
use skimwright::sheet::{Canvas, Stage, drawing, picture, scale_of, svg, true_scale};
use yew::prelude::*;

use crate::page::hooks::language::use_reader_tongue;
use crate::page::hooks::share::image_of;
use crate::page::hooks::width::use_room;
use crate::page::markup::{hint, paragraph};
use crate::page::words::{OfOwner, Text, Words};

/// The narrowest drawing that is still of use.
const LEAST_WIDTH: i32 = 240;

/// Drawn no wider: more would only be larger.
const MOST_WIDTH: i32 = 720;

/// Between the margins of A4 and of Letter, as the print style sets them.
const PAPER_WIDTH: Length = Length::mm(180.0);

#[derive(PartialEq, Properties)]
pub(super) struct PictureProps {
    pub(super) offer: Rc<Offer>,
    pub(super) plan: Rc<Plan>,
    pub(super) stage: OwnerStage,
    /// What the picture is called.
    pub(super) label: &'static str,
}

/// Which of the two states of the part is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum OwnerStage {
    Before,
    After,
}

/// The part in one of its two states.
#[component]
pub(super) fn Picture(props: &PictureProps) -> Html {
    let frame = use_node_ref();
    let (width, _) = use_room(&frame);
    let PictureProps {
        offer, plan, label, ..
    } = props;
    let units = offer.units();
    let words = Words::new(units, &offer.job).in_tongue(use_reader_tongue());
    let say = |text| words.say(Text::Owner(text));
    let stage = match props.stage {
        OwnerStage::Before => Stage::Received,
        OwnerStage::After => Stage::Wanted,
    };
    let canvas = Canvas {
        width: f64::from(width.clamp(LEAST_WIDTH, MOST_WIDTH)),
        ..Canvas::default()
    };
    // As it is now, nothing of what is planned is seen.
    let now = plan.as_received();
    let plan = match props.stage {
        OwnerStage::Before => &now,
        OwnerStage::After => &**plan,
    };
    let mut screen = drawing(&offer.job, plan, stage, canvas, units);
    if screen.shapes.is_empty() {
        return paragraph(say(OfOwner::NoDrawing));
    }
    let mut paper = true_scale(&offer.job, plan, stage, units, PAPER_WIDTH);
    for mark in screen.dimensions.iter_mut().chain(&mut paper.dimensions) {
        mark.text = words.marked(core::mem::take(&mut mark.text));
    }
    let broken = 0 < screen.breaks.max(paper.breaks);
    html! {
        <div ref={frame} class="owner-picture">
            if 0 < width {
                <img class="owner-on-screen" alt={*label} src={image_of(&picture(&screen))} />
            }
            <div class="owner-on-paper">
                <img alt="" src={image_of(&svg(&paper, "", words.length_unit()))} />
                { paragraph(words.printed_at(scale_of(&paper))) }
            </div>
            if props.stage == OwnerStage::After {
                { hint(say(OfOwner::Key)) }
            }
            if broken {
                { hint(say(OfOwner::Broken)) }
            }
        </div>
    }
}
