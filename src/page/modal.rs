//! A panel over the page: the browser's own dialog, which keeps the focus inside and gives it back.

use web_sys::HtmlDialogElement;
use yew::prelude::*;

use super::markup::{all, any_button, button, element, paragraph, text};
use super::state::Action;
use super::store::{Store, on, use_store, words};
use super::words::Text;

/// A panel over the page.
#[inline(never)]
pub(crate) fn modal(title: AttrValue, inside: Html) -> Html {
    modal_closing(title, Action::Show(None), inside)
}

/// The same, with what is done when it is closed.
#[inline(never)]
pub(crate) fn modal_closing(title: AttrValue, closes: Action, inside: Html) -> Html {
    html! { <Modal {title} {closes}>{ inside }</Modal> }
}

/// Asks before something is done: what is asked, what says no, what says yes, and what that does.
pub(crate) fn question(
    store: &Store,
    title: &'static str,
    says: String,
    (no, yes): (&'static str, &'static str),
    action: Action,
) -> Html {
    let no = button(no, on(store, || Action::Show(None)));
    let act = on(store, move || action.clone());
    let yes = any_button("button button-decide", text(yes), None, act);
    let choices = element("p", "choices", all(vec![no, yes]));
    modal(title.into(), all(vec![paragraph(says), choices]))
}

#[derive(PartialEq, Properties)]
struct ModalProps {
    title: AttrValue,
    closes: Action,
    children: Html,
}

/// Closed by its button, by Escape, or by a tap beside it.
#[component]
fn Modal(props: &ModalProps) -> Html {
    let store = use_store();
    let dialog = use_node_ref();
    {
        let dialog = dialog.clone();
        use_effect_with((), move |()| {
            let dialog = dialog.cast::<HtmlDialogElement>();
            if let Some(dialog) = &dialog {
                // An older browser without modal dialogs still shows it.
                if dialog.show_modal().is_err() {
                    dialog.set_open(true);
                }
            }
            // Gone for another reason than being closed, it must give the focus back all the same.
            move || {
                if let Some(dialog) = dialog {
                    dialog.close();
                }
            }
        });
    }
    let Some(store) = store else {
        return Html::default();
    };
    let close = {
        let dialog = dialog.clone();
        Callback::from(move |_: MouseEvent| {
            if let Some(dialog) = dialog.cast::<HtmlDialogElement>() {
                dialog.close();
            }
        })
    };
    // Only a tap on the dialog itself is beside its content.
    let beside = {
        let dialog = dialog.clone();
        Callback::from(move |event: MouseEvent| {
            if let Some(dialog) = dialog.cast::<HtmlDialogElement>()
                && event.target().as_ref() == Some(dialog.as_ref())
            {
                dialog.close();
            }
        })
    };
    let closes = props.closes.clone();
    let onclose = on(&store, move || closes.clone());
    html! {
        <dialog ref={dialog} class="modal" aria-labelledby="modal-title" {onclose} onclick={beside}>
            <div class="modal-sheet">
                <div class="modal-head">
                    <h2 id="modal-title">{ &props.title }</h2>
                    { button(words(&store).say(Text::Close), close) }
                </div>
                { props.children.clone() }
            </div>
        </dialog>
    }
}
