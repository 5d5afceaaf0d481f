//! Fields with a short list of choices.

use std::rc::Rc;

use skimwright::job::{
    Bore, BoreBottom, BoreField, CentreOrder, CutOffMethod, Field, Section, SectionField, Tolerance,
};
use skimwright::tables::{
    CentreDrillSize, CentreDrillStandard, ShaftClass, TaperSeries, TaperSize, ThreadSeries,
    ThreadSize, ToolKind, WorkMaterial,
};
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use super::edit::{BoreKind, Edit, SectionKind};
use super::hooks::focus::use_focus;
use super::state::Action;
use super::store::{Store, use_store, words};
use super::words::{Text, Words};

/// One choice of a list.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Item {
    label: AttrValue,
    edit: Edit,
    chosen: bool,
}

/// A list of choices, in groups where there are many.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Choices {
    groups: Rc<Vec<(Option<&'static str>, Vec<Item>)>>,
}

impl Choices {
    fn plain(items: impl IntoIterator<Item = Item>) -> Self {
        Self {
            groups: Rc::new(vec![(None, items.into_iter().collect())]),
        }
    }

    fn grouped(groups: impl IntoIterator<Item = (&'static str, Vec<Item>)>) -> Self {
        let groups = groups.into_iter().map(|(name, items)| (Some(name), items));
        Self {
            groups: Rc::new(groups.collect()),
        }
    }

    fn edit_at(&self, index: i32) -> Option<Edit> {
        let index = usize::try_from(index).ok()?;
        let mut items = self.groups.iter().flat_map(|(_, items)| items);
        items.nth(index).map(|item| item.edit.clone())
    }
}

fn item(label: impl Into<AttrValue>, edit: Edit, chosen: bool) -> Item {
    Item {
        label: label.into(),
        edit,
        chosen,
    }
}

/// The choices of a field; `None` for fields of numbers and for choices that this job has no place for.
pub(crate) fn choice_of(store: &Store, field: Field) -> Option<Choices> {
    let (words, job) = (words(store), &store.job);
    let say = |text| AttrValue::Static(words.say(text));
    Some(match field {
        Field::Material => Choices::plain(WorkMaterial::ALL.map(|material| {
            let chosen = material == job.part.material;
            item(
                say(Text::Material(material)),
                Edit::Material(material),
                chosen,
            )
        })),
        Field::Section(index, field) => section_choice(
            words,
            job.part.sections.get(usize::from(index))?,
            index,
            field,
        )?,
        Field::Bore(index, field) => {
            bore_choice(words, job.part.bores.get(usize::from(index))?, index, field)?
        }
        Field::Tolerance => tolerance_choice(words, &job.wanted.tolerance),
        Field::Tool => Choices::plain(ToolKind::ALL.map(|tool| {
            item(
                say(Text::Tool(tool)),
                Edit::Tool(tool),
                tool == job.shop.tool,
            )
        })),
        Field::CutOffMethod => Choices::plain(CutOffMethod::ALL.map(|method| {
            let chosen = method == job.shop.cut_off_method;
            item(
                say(Text::CutOffMethod(method)),
                Edit::CutOffMethod(method),
                chosen,
            )
        })),
        Field::CentreOrder => Choices::plain(CentreOrder::ALL.map(|order| {
            let chosen = order == job.shop.centre_order;
            item(
                say(Text::CentreOrder(order)),
                Edit::CentreOrder(order),
                chosen,
            )
        })),
        _ => return None,
    })
}

fn section_choice(
    words: Words,
    section: &Section,
    index: u8,
    field: SectionField,
) -> Option<Choices> {
    match (field, section) {
        (SectionField::Kind, _) => Some(Choices::plain(SectionKind::ALL.map(|kind| {
            let chosen = SectionKind::of(section) == kind;
            let label = words.say(Text::SectionKind(kind));
            item(label, Edit::SectionKind(index, kind), chosen)
        }))),
        (SectionField::Taper, Section::StandardTaper { taper, .. }) => {
            let series_group = |series: TaperSeries| {
                let name = words.say(Text::TaperSeries(series));
                let of_series = TaperSize::all()
                    .filter_map(|size| Some((size, size.get()?)))
                    .filter(|(_, row)| row.series == series)
                    .map(|(size, row)| {
                        let label = format!("{name} {}", row.size);
                        item(label, Edit::Taper(index, size), size == *taper)
                    });
                (name, of_series.collect())
            };
            Some(Choices::grouped(TaperSeries::ALL.map(series_group)))
        }
        _ => None,
    }
}

fn bore_choice(words: Words, bore: &Bore, index: u8, field: BoreField) -> Option<Choices> {
    Some(match (field, bore) {
        (BoreField::Kind, _) => Choices::plain(BoreKind::ALL.map(|kind| {
            let chosen = BoreKind::of(bore) == kind;
            item(
                words.say(Text::BoreKind(kind)),
                Edit::BoreKind(index, kind),
                chosen,
            )
        })),
        (BoreField::Bottom, Bore::Drilled { bottom, .. }) => {
            Choices::plain(BoreBottom::ALL.map(|choice| {
                let edit = Edit::Bottom(index, choice);
                item(words.say(Text::Bottom(choice)), edit, choice == *bottom)
            }))
        }
        (BoreField::Thread, Bore::Tapped { thread, .. }) => {
            let series = [
                ThreadSeries::MetricCoarse,
                ThreadSeries::MetricFine,
                ThreadSeries::Unc,
                ThreadSeries::Unf,
                ThreadSeries::Bsw,
            ];
            Choices::grouped(series.map(|series| {
                let sizes = ThreadSize::of(series)
                    .map(|size| item(size.code(), Edit::Thread(index, size), size == *thread));
                (words.say(Text::ThreadSeries(series)), sizes.collect())
            }))
        }
        (BoreField::CentreDrill, Bore::CentreHole { centre_drill }) => {
            let sizes = CentreDrillSize::of(CentreDrillStandard::Iso).map(|size| {
                item(
                    size.code(),
                    Edit::CentreDrill(index, size),
                    size == *centre_drill,
                )
            });
            Choices::plain(sizes)
        }
        _ => return None,
    })
}

fn tolerance_choice(words: Words, tolerance: &Tolerance) -> Choices {
    let classes = ShaftClass::ALL.map(|class| {
        let chosen = *tolerance == Tolerance::Class(class);
        let label = words.say(Text::ToleranceClass(class));
        item(label, Edit::ToleranceClass(class), chosen)
    });
    let own = item(
        words.say(Text::ToleranceLimits),
        Edit::ToleranceLimits,
        matches!(tolerance, Tolerance::Limits { .. }),
    );
    Choices::plain(classes.into_iter().chain([own]))
}

#[derive(PartialEq, Properties)]
pub(crate) struct ChoiceProps {
    pub(crate) id: AttrValue,
    pub(crate) label: AttrValue,
    pub(crate) hint: Option<AttrValue>,
    pub(crate) choice: Choices,
    pub(crate) focus: bool,
}

/// A labelled list to choose from.
#[component]
pub(crate) fn Choice(props: &ChoiceProps) -> Html {
    let store = use_store();
    let select = use_node_ref();
    use_focus(&select, props.focus);
    let Some(store) = store else {
        return Html::default();
    };
    let onchange = {
        let (choice, dispatcher) = (props.choice.clone(), store.dispatcher());
        Callback::from(move |event: Event| {
            let select: HtmlSelectElement = event.target_unchecked_into();
            if let Some(edit) = choice.edit_at(select.selected_index()) {
                dispatcher.dispatch(Action::Edit(edit));
            }
        })
    };
    let option = |item: &Item| html! { <option selected={item.chosen}>{ &item.label }</option> };
    let group = |(name, items): &(Option<&'static str>, Vec<Item>)| match name {
        Some(name) => html! { <optgroup label={*name}>{ for items.iter().map(option) }</optgroup> },
        None => html! { <>{ for items.iter().map(option) }</> },
    };
    let id = props.id.clone();
    html! {
        <div class="field field-choice">
            <label for={id.clone()}>{ &props.label }</label>
            <select ref={select} {id} class="field-select" {onchange}>
                { for props.choice.groups.iter().map(group) }
            </select>
            if let Some(hint) = &props.hint {
                <p class="field-note"><span class="field-said">{ hint }</span></p>
            }
        </div>
    }
}
