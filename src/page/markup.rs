//! Plain pieces of markup that stand in many places: made by one function each, where `html!` would write the making
//! out anew at every place.

use skimwright::sheet::short;
use yew::prelude::*;
use yew::virtual_dom::{VTag, VText};

/// An element with a class, empty where it needs none.
#[inline(never)]
pub(crate) fn element(name: &'static str, class: &'static str, inside: Html) -> Html {
    let mut tag = VTag::new(name);
    if !class.is_empty() {
        tag.add_attribute("class", class);
    }
    tag.add_child(inside);
    tag.into()
}

/// Several pieces one after the other.
#[inline(never)]
pub(crate) fn all(pieces: Vec<Html>) -> Html {
    pieces.into_iter().collect()
}

#[inline(never)]
pub(crate) fn text(text: impl Into<AttrValue>) -> Html {
    VText::new(text.into()).into()
}

pub(crate) fn paragraph(says: impl Into<AttrValue>) -> Html {
    element("p", "", text(says))
}

/// A paragraph that is read when there is time for it.
pub(crate) fn hint(says: impl Into<AttrValue>) -> Html {
    element("p", "field-hint", text(says))
}

/// A paragraph whose change is read out.
#[inline(never)]
pub(crate) fn status(says: AttrValue) -> Html {
    html! { <p role="status">{ says }</p> }
}

/// A name and what belongs to it, for a list of such pairs.
#[inline(never)]
pub(crate) fn pair(name: &'static str, says: String) -> Html {
    html! { <div><dt>{ name }</dt><dd>{ says }</dd></div> }
}

pub(crate) fn button(label: impl Into<AttrValue>, onclick: Callback<MouseEvent>) -> Html {
    any_button("button", text(label), None, onclick)
}

/// One of several, of which some are chosen.
pub(crate) fn option(
    label: impl Into<AttrValue>,
    chosen: bool,
    onclick: Callback<MouseEvent>,
) -> Html {
    let pressed = if chosen { "true" } else { "false" };
    any_button("option", text(label), Some(pressed), onclick)
}

#[inline(never)]
pub(crate) fn any_button(
    class: &'static str,
    inside: Html,
    pressed: Option<&'static str>,
    onclick: Callback<MouseEvent>,
) -> Html {
    html! { <button type="button" {class} aria-pressed={pressed} {onclick}>{ inside }</button> }
}

/// A share as a bar: told by its figure already, so that readers pass it.
#[inline(never)]
pub(crate) fn bar(share: f64) -> Html {
    let width = short(share.clamp(0.0, 1.0) * 100.0);
    html! {
        <svg class="bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
            <rect class="bar-whole" width="100" height="8" />
            <rect class="bar-share" {width} height="8" />
        </svg>
    }
}
