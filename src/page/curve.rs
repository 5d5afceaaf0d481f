//! The most that can be had, as a line to drag along: each length gives the largest diameter over it.

use std::rc::Rc;

use skimwright::quantity::Length;
use skimwright::rework::{CleanUp, Offer, Take, nearest_stop, offer};
use skimwright::sheet::short;
use web_sys::Element;
use yew::prelude::*;

use super::becomes::entered;
use super::chart::{Chart, LEFT, TOP};
use super::edit::{Edit, WantedEdit};
use super::hooks::width::use_room;
use super::markup::{all, button, element, hint, paragraph, text};
use super::panel::panel;
use super::state::{Action, Panel};
use super::store::{Store, on, use_store, words};
use super::words::{OfBecoming, Text};

/// The narrowest chart that is still of use.
const LEAST_WIDTH: i32 = 240;

/// How many stops the keys for large steps move.
const PAGE: usize = 10;

pub(crate) fn most_panel(store: &Store) -> Html {
    let words = words(store);
    let title = words.say(Text::Becoming(OfBecoming::MostTitle));
    let found = store.plan.clean_up.as_ref();
    let wanted = store.job.wanted.length.value();
    let line = found
        .and_then(|found| offer(&store.job, found, wanted, store.units))
        .map(|offer| words.offer(&offer));
    panel(store, Panel::Most, title, line, || html! { <Most /> })
}

/// What is inside the panel while it is open: the chart measures its frame when it appears, so that it is there only
/// with something to be had.
#[component]
fn Most() -> Html {
    let store = use_store();
    let sources = store
        .as_ref()
        .map(|store| (Rc::clone(&store.job), store.units));
    let stops = use_memo(sources, |_| {
        let store = store.as_ref()?;
        let found = store.plan.clean_up.as_ref()?;
        Some(found.stops(store.units))
    });
    let Some(store) = store else {
        return Html::default();
    };
    let some = stops
        .as_ref()
        .as_ref()
        .is_some_and(|stops| !stops.is_empty());
    if some {
        html! { <MostCurve {stops} /> }
    } else {
        paragraph(words(&store).say(Text::Becoming(OfBecoming::NothingToHave)))
    }
}

#[derive(PartialEq, Properties)]
struct MostCurveProps {
    /// The lengths at which the handle stops.
    stops: Rc<Option<Vec<Length>>>,
}

#[component]
fn MostCurve(props: &MostCurveProps) -> Html {
    let store = use_store();
    let frame = use_node_ref();
    let (width, _) = use_room(&frame);
    let held = use_state_eq(|| None::<Length>);
    let drag = use_mut_ref(|| None::<Drag>);
    let Some(store) = store else {
        return Html::default();
    };
    let words = words(&store);
    let say = |text| words.say(Text::Becoming(text));
    let nothing = paragraph(say(OfBecoming::NothingToHave));
    let Some(found) = &store.plan.clean_up else {
        return nothing;
    };
    let stops = props.stops.as_deref().unwrap_or_default();
    let at = held.unwrap_or(store.job.wanted.length.value());
    let place = nearest_stop(stops, at);
    let (Some(length), Some(last)) = (stops.get(place).copied(), stops.len().checked_sub(1)) else {
        return nothing;
    };
    let Some(most) = offer(&store.job, found, length, store.units) else {
        return nothing;
    };
    let wanted = &store.job.wanted;
    let wanted = (wanted.length.value(), wanted.diameter.value());
    let chart = Chart::new(f64::from(width.max(LEAST_WIDTH)), &found.most, wanted);
    let go = {
        let (held, stops) = (held.clone(), Rc::clone(&props.stops));
        Callback::from(move |place: usize| {
            let stops = stops.as_deref().unwrap_or_default();
            held.set(stops.get(place.min(last)).copied());
        })
    };
    let onkeydown = {
        let go = go.clone();
        Callback::from(move |event: KeyboardEvent| {
            let to = match event.key().as_str() {
                "ArrowRight" | "ArrowUp" => place.saturating_add(1),
                "ArrowLeft" | "ArrowDown" => place.saturating_sub(1),
                "PageUp" => place.saturating_add(PAGE),
                "PageDown" => place.saturating_sub(PAGE),
                "Home" => 0,
                "End" => last,
                _ => return,
            };
            // The same keys would scroll the page.
            event.prevent_default();
            go.emit(to);
        })
    };
    // Where the pointer is, as a place along the line.
    let set = {
        let stops = Rc::clone(&props.stops);
        Callback::from(move |event: PointerEvent| {
            if let (Some(chart), Some(stops)) = (chart, stops.as_deref()) {
                let length = chart.length_at(f64::from(event.offset_x()));
                go.emit(nearest_stop(stops, length));
            }
        })
    };
    let onpointerdown = {
        let (drag, set) = (Rc::clone(&drag), set.clone());
        Callback::from(move |event: PointerEvent| {
            // A finger that slips off the chart still drags.
            if let Some(element) = event.target_dyn_into::<Element>() {
                let _ = element.set_pointer_capture(event.pointer_id());
            }
            let began = Drag::begin(&event);
            *drag.borrow_mut() = Some(began);
            if began.is_meant {
                set.emit(event);
            }
        })
    };
    let onpointermove = {
        let (drag, set) = (Rc::clone(&drag), set.clone());
        Callback::from(move |event: PointerEvent| {
            let now = drag.borrow().map(|drag| drag.moved(&event));
            *drag.borrow_mut() = now;
            if now.is_some_and(|drag| drag.is_meant) {
                set.emit(event);
            }
        })
    };
    let onpointerup = {
        let drag = Rc::clone(&drag);
        Callback::from(move |event: PointerEvent| {
            if drag.borrow_mut().take().is_some() {
                set.emit(event);
            }
        })
    };
    // The browser scrolls with the finger: it meant the page.
    let onpointercancel = Callback::from(move |_: PointerEvent| *drag.borrow_mut() = None);
    let slider = |chart| {
        html! {
            <>
                { picture(&store, chart, found, (length, &most)) }
                <div
                    class="chart-slider"
                    role="slider"
                    tabindex="0"
                    aria-label={say(OfBecoming::MostSlider)}
                    aria-valuemin="0"
                    aria-valuemax={last.to_string()}
                    aria-valuenow={place.to_string()}
                    aria-valuetext={words.offer(&most)}
                    {onkeydown}
                    {onpointerdown} {onpointermove} {onpointerup} {onpointercancel}
                />
            </>
        }
    };
    let chart = chart.filter(|_| width > 0).map(slider);
    let takes = Take::ALL.map(|take| take_button(&store, &most, take));
    let is_wanted = most.taken(&store.job.wanted, Take::Both) == store.job.wanted;
    let parts = vec![
        hint(say(OfBecoming::MostLead)),
        html! { <div class="chart" ref={frame}>{ chart.unwrap_or_default() }</div> },
        element("p", "most-value", text(words.offer(&most))),
        element("p", "row-tools", all(takes.to_vec())),
        entered(&store, is_wanted, say(OfBecoming::Entered)),
    ];
    element("div", "most", all(parts))
}

/// A pointer that is down on the chart.
#[derive(Clone, Copy)]
struct Drag {
    began: (i32, i32),
    /// Whether it moves the handle: a mouse or pen at once, a finger once it goes across more than up or down.
    is_meant: bool,
}

impl Drag {
    /// How far a finger goes before it is known where to, in CSS pixels: what browsers call a tap stays below.
    const SLACK: i32 = 6;

    fn begin(event: &PointerEvent) -> Self {
        Self {
            began: (event.client_x(), event.client_y()),
            is_meant: event.pointer_type() != "touch",
        }
    }

    fn moved(self, event: &PointerEvent) -> Self {
        let across = (event.client_x() - self.began.0).abs();
        let along = (event.client_y() - self.began.1).abs();
        Self {
            is_meant: self.is_meant || (Self::SLACK < across && along < across),
            ..self
        }
    }
}

fn take_button(store: &Store, most: &Offer, take: Take) -> Html {
    let most = most.clone();
    let edit = move || Action::Edit(Edit::Wanted(WantedEdit::Most(most.clone(), take)));
    let label = words(store).say(Text::Becoming(OfBecoming::Take(take)));
    button(label, on(store, edit))
}

/// The curve, what cannot be had, the point that is wanted, and the handle.
fn picture(store: &Store, chart: Chart, found: &CleanUp, at: (Length, &Offer)) -> Html {
    let words = words(store);
    let say = |text| words.say(Text::Becoming(text));
    let (length, most) = at;
    let diameter = most.diameter.value();
    let wanted = &store.job.wanted;
    let (wanted_x, wanted_y) = (
        chart.x(wanted.length.value()),
        chart.y(wanted.diameter.value()),
    );
    let (x, y) = (chart.x(length), chart.y(diameter));
    let (left, top) = (LEFT, TOP);
    let (right, bottom) = (chart.right(), chart.bottom());
    let path = |parts: [(&str, f64); 4]| {
        let parts = parts.map(|(letter, number)| letter.to_owned() + &short(number));
        parts.concat()
    };
    let axes = path([("M", left), (" ", top), ("V", bottom), ("H", right)]);
    let guides = path([("M", left), (" ", y), ("H", x), ("V", bottom)]);
    let cross = path([
        ("M", wanted_x - 8.0),
        (" ", wanted_y),
        ("h16M", wanted_x),
        (" ", wanted_y - 8.0),
    ]) + "v16";
    // Beside its point, on the side where there is room.
    let (label_x, anchor) = if wanted_x + 90.0 < right {
        (wanted_x + 12.0, "start")
    } else {
        (wanted_x - 12.0, "end")
    };
    let line = |class: &'static str, d: String| html! { <path {class} {d} /> };
    let label = |x: f64, y: f64, anchor: &'static str, text: String| {
        html! {
            <text class="chart-text" x={short(x)} y={short(y)} text-anchor={anchor}>{ text }</text>
        }
    };
    let name_axis = |name| format!("{}, {}", say(name), words.length_unit());
    html! {
        <svg class="chart-picture" width={short(chart.width)} height={short(chart.height)}
            viewBox={format!("0 0 {} {}", short(chart.width), short(chart.height))} aria-hidden="true">
            <defs>
                <pattern id="no-metal" width="8" height="8" patternUnits="userSpaceOnUse">
                    { line("chart-hatch", "M-2 2L2 -2M0 8L8 0M6 10L10 6".to_owned()) }
                </pattern>
            </defs>
            <path fill="url(#no-metal)" d={chart.beyond(&found.most)} />
            { line("chart-curve", chart.curve(&found.most)) }
            { line("chart-axis", axes) }
            { line("chart-guide", guides) }
            { line("chart-wanted", cross) }
            { label(label_x, wanted_y + 18.0, anchor, say(OfBecoming::WantedPoint).to_owned()) }
            <circle class="chart-handle" cx={short(x)} cy={short(y)} r="9" />
            { label(left, top - 10.0, "start", name_axis(OfBecoming::AxisDiameter)) }
            { label(right, bottom + 36.0, "end", name_axis(OfBecoming::AxisLength)) }
            { label(x, bottom + 18.0, "middle", words.length_bare(length)) }
        </svg>
    }
}
