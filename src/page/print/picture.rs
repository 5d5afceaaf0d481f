//! The drawing as a picture: nothing on it can be tapped.

use skimwright::sheet::{Drawing, Geometry, short};
use yew::prelude::*;

use crate::page::drawing::{arrow_path, line_class, numbered};
use crate::page::words::Words;

/// A drawing with its dimensions, and what readers call it.
pub(super) fn picture(words: Words, drawing: &Drawing, label: String) -> Html {
    let dimensions = drawing.dimensions.iter().map(|mark| {
        let lines = Geometry::Segments(mark.lines.clone()).path();
        let arrows: String = mark.arrows.iter().map(|arrow| arrow_path(arrow)).collect();
        html! {
            <g>
                <path class="dimension-line" d={lines} />
                <path class="dimension-arrow" d={arrows} />
                <text class="dimension-text" x={short(mark.text_at.x)} y={short(mark.text_at.y)}>{ words.marked(mark.text.clone()) }</text>
            </g>
        }
    });
    html! {
        <svg class="part-drawing part-picture" role="img" aria-label={label}
            width={short(drawing.width)} height={short(drawing.height)}
            font-size={short(drawing.text_height)}
            viewBox={format!("0 0 {} {}", short(drawing.width), short(drawing.height))}>
            { for drawing.shapes.iter().map(|shape| html! {
                <path class={line_class(shape.role)} d={shape.geometry.path()} />
            }) }
            { for drawing.marks.iter().map(|mark| numbered(mark, drawing.text_height)) }
            { for dimensions }
        </svg>
    }
}
