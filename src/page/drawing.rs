//! The drawing of the part: lines, and every dimension a button that opens its field.

use std::rc::Rc;

use skimwright::job::Field;
use skimwright::sheet::{DimensionMark, Drawing, Geometry, Mark, Role, short};
use yew::prelude::*;

/// What the drawing is given.
#[derive(Clone, PartialEq, Properties)]
pub(crate) struct PartDrawingProps {
    /// The drawing.
    pub(crate) drawing: Rc<Drawing>,
    /// What the drawing is called.
    pub(crate) label: AttrValue,
    /// What each dimension is called, in the order of the drawing's dimensions.
    pub(crate) names: Rc<[AttrValue]>,
    /// The field that is open.
    #[prop_or_default]
    pub(crate) picked: Option<Field>,
    /// Told the field of the dimension that was tapped.
    pub(crate) on_pick: Callback<Field>,
}

/// The part to scale, with its dimensions.
#[component]
pub(crate) fn PartDrawing(props: &PartDrawingProps) -> Html {
    let drawing = &props.drawing;
    let names = props
        .names
        .iter()
        .cloned()
        .map(Some)
        .chain(core::iter::repeat(None));
    let marks = drawing.dimensions.iter().zip(names).enumerate();
    let dimensions = marks.map(|(place, (mark, name))| {
        let picked = props.picked == Some(mark.field);
        // One field can stand at several dimensions; the first has its id.
        let before = drawing.dimensions.iter().take(place);
        let first = before.into_iter().all(|other| other.field != mark.field);
        let id = first.then(|| dimension_id(mark.field));
        dimension(mark, id, name, picked, &props.on_pick)
    });
    html! {
        <svg class="part-drawing" role="group" aria-label={props.label.clone()}
            width={short(drawing.width)} height={short(drawing.height)}
            font-size={short(drawing.text_height)}
            viewBox={format!("0 0 {} {}", short(drawing.width), short(drawing.height))}>
            <g aria-hidden="true">
                { for drawing.shapes.iter().map(|shape| html! {
                    <path class={line_class(shape.role)} d={shape.geometry.path()} />
                }) }
                { for drawing.marks.iter().map(|mark| numbered(mark, drawing.text_height)) }
            </g>
            { for dimensions }
        </svg>
    }
}

/// A marked place: a line across it and its number; what it is stands in words below the drawing.
pub(crate) fn numbered(mark: &Mark, text_height: f64) -> Html {
    let radius = text_height * Mark::RADIUS;
    let line = Geometry::Segments(vec![mark.line]).path();
    // The foot of a figure stands about a third of its height below the middle.
    let foot = mark.at.y + text_height * 0.35;
    html! {
        <g class="mark">
            <path class="mark-line" d={line} />
            <circle cx={short(mark.at.x)} cy={short(mark.at.y)} r={short(radius)} />
            <text x={short(mark.at.x)} y={short(foot)}>{ mark.number }</text>
        </g>
    }
}

/// One dimension: its lines, its text, and the area that a finger meets.
fn dimension(
    mark: &DimensionMark,
    id: Option<String>,
    name: Option<AttrValue>,
    picked: bool,
    on_pick: &Callback<Field>,
) -> Html {
    let field = mark.field;
    let onclick = on_pick.reform(move |_: MouseEvent| field);
    let onkeydown = {
        let on_pick = on_pick.clone();
        Callback::from(move |event: KeyboardEvent| {
            if matches!(event.key().as_str(), "Enter" | " ") {
                // Space would scroll the page.
                event.prevent_default();
                on_pick.emit(field);
            }
        })
    };
    let lines = Geometry::Segments(mark.lines.clone()).path();
    let arrows: String = mark.arrows.iter().map(|arrow| arrow_path(arrow)).collect();
    let name = name.unwrap_or_else(|| mark.text.clone().into());
    html! {
        <g {id} class={classes!("dimension", picked.then_some("is-picked"))}
            role="button" tabindex="0" aria-label={name}
            aria-current={picked.then_some("true")} {onclick} {onkeydown}>
            <rect class="dimension-target" x={short(mark.hit.x)} y={short(mark.hit.y)}
                width={short(mark.hit.width)} height={short(mark.hit.height)} />
            <path class="dimension-line" d={lines} />
            <path class="dimension-arrow" d={arrows} />
            <text class="dimension-text" x={short(mark.text_at.x)} y={short(mark.text_at.y)}>
                { &mark.text }
            </text>
        </g>
    }
}

/// The id of a field's dimension.
pub(crate) fn dimension_id(field: Field) -> String {
    format!("dimension-{field}")
}

pub(crate) fn arrow_path(points: &[skimwright::sheet::Point]) -> String {
    let (points, closed) = (points.to_vec(), true);
    Geometry::Polyline { points, closed }.path()
}

pub(crate) const fn line_class(role: Role) -> &'static str {
    match role {
        Role::RemovedArea => "area-removed",
        Role::KerfArea => "area-kerf",
        Role::OpenArea => "area-open",
        Role::RemovedHatch => "hatch-removed",
        Role::SectionHatch => "hatch-section",
        Role::ThinOutline => "line-thin",
        Role::ThreadThin | Role::FlatMark | Role::BreakLine => "line-thread",
        Role::RoughLayer => "layer-rough",
        Role::LastLayer => "layer-last",
        Role::PickedLayer => "layer-picked",
        Role::ThickOutline => "line-thick",
        Role::CutLine => "line-cut",
        Role::Axis => "line-axis",
    }
}
