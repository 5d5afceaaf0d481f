//! Fields with a short list of choices.

use std::rc::Rc;

use skimwright::job::{
    BoreBottom, BoreEnd, BoreField, CentreOrder, Cut, CutOffMethod, Datum, FeatureField, Field,
    Flats, Hole, Job, SectionField, Tolerance, Turned,
};
use skimwright::tables::{
    CentreDrillSize, CentreDrillStandard, FileBite, FitKind, ShaftClass, TaperSeries, TaperSize,
    ThreadSeries, ThreadSize, ToolKind, WorkMaterial,
};
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use super::edit::{Edit, Kind};
use super::hooks::focus::use_focus;
use super::receiver::receiver_choice;
use super::shop::shop_choice;
use super::state::Action;
use super::store::{Store, use_store, words};
use super::words::{OfReceiver, Text, Words};

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
    pub(super) fn plain(items: impl IntoIterator<Item = Item>) -> Self {
        Self {
            groups: Rc::new(vec![(None, items.into_iter().collect())]),
        }
    }

    pub(super) fn grouped(groups: impl IntoIterator<Item = (&'static str, Vec<Item>)>) -> Self {
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

pub(super) fn item(label: impl Into<AttrValue>, edit: Edit, chosen: bool) -> Item {
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
        Field::CuttingGroup => {
            let groups = job.part.material.cutting_groups();
            let all = [None].into_iter().chain(groups.iter().copied().map(Some));
            Choices::plain(all.map(|group| {
                let chosen = group == job.part.cutting_group;
                item(
                    words.cutting_group(group),
                    Edit::CuttingGroup(group),
                    chosen,
                )
            }))
        }
        Field::FileBite => {
            let all = [None].into_iter().chain(FileBite::ALL.map(Some));
            Choices::plain(all.map(|bite| {
                let chosen = bite == job.part.file_bite;
                item(words.file_bite(bite), Edit::FileBite(bite), chosen)
            }))
        }
        Field::Section(index, field) => section_choice(words, job, index, field)?,
        Field::Feature(index, field) => feature_choice(words, job, index, field)?,
        Field::Bore(index, field) => bore_choice(words, job, index, field)?,
        Field::Tolerance => tolerance_choice(words, &job.wanted.tolerance),
        Field::Receiver(field) => receiver_choice(words, &job.wanted.receiver, field)?,
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
        other => shop_choice(words, job, other)?,
    })
}

/// Every kind of a list.
fn kinds(words: Words, index: u8, chosen: Kind) -> Choices {
    Choices::plain(chosen.list().kinds().into_iter().map(|kind| {
        let label = words.say(Text::Kind(kind));
        item(label, Edit::Kind(index, kind), kind == chosen)
    }))
}

/// Every thread, by series.
fn threads(words: Words, chosen: ThreadSize, edit: impl Fn(ThreadSize) -> Edit) -> Choices {
    let series = [
        ThreadSeries::MetricCoarse,
        ThreadSeries::MetricFine,
        ThreadSeries::Unc,
        ThreadSeries::Unf,
        ThreadSeries::Bsw,
    ];
    Choices::grouped(series.map(|series| {
        let sizes =
            ThreadSize::of(series).map(|size| item(size.code(), edit(size), size == chosen));
        (words.say(Text::ThreadSeries(series)), sizes.collect())
    }))
}

fn section_choice(words: Words, job: &Job, index: u8, field: SectionField) -> Option<Choices> {
    let section = job.part.sections.get(usize::from(index))?;
    Some(match (field, &section.turned) {
        (SectionField::Kind, turned) => kinds(words, index, Kind::Section(turned.kind())),
        (SectionField::Taper, Turned::StandardTaper { taper, .. }) => tapers(words, index, *taper),
        (SectionField::Thread, Turned::Thread { thread, .. }) => {
            threads(words, *thread, |size| Edit::OuterThread(index, size))
        }
        (SectionField::From, _) => {
            let chosen = section.place.as_ref().map(|place| place.from);
            let behind = match index {
                0 => Text::AtShoulder,
                _ => Text::BehindOneBefore,
            };
            let places = [None].into_iter().chain(Datum::ALL.map(Some));
            Choices::plain(places.map(|from| {
                let text = from.map_or(behind, Text::From);
                item(
                    words.say(text),
                    Edit::SectionFrom(index, from),
                    from == chosen,
                )
            }))
        }
        _ => return None,
    })
}

fn tapers(words: Words, index: u8, chosen: TaperSize) -> Choices {
    Choices::grouped(TaperSeries::ALL.map(|series| {
        let name = words.say(Text::TaperSeries(series));
        let of_series = TaperSize::all()
            .filter_map(|size| Some((size, size.get()?)))
            .filter(|(_, row)| row.series == series)
            .map(|(size, row)| {
                let label = words.marked(format!("{name} {}", row.size));
                item(label, Edit::Taper(index, size), size == chosen)
            });
        (name, of_series.collect())
    }))
}

fn feature_choice(words: Words, job: &Job, index: u8, field: FeatureField) -> Option<Choices> {
    let feature = job.part.features.get(usize::from(index))?;
    Some(match (field, &feature.cut) {
        (FeatureField::Kind, cut) => kinds(words, index, Kind::Feature(cut.kind())),
        (FeatureField::Flats, Cut::Flat { flats, .. }) => {
            Choices::plain(Flats::ALL.map(|choice| {
                let label = words.say(Text::Flats(choice));
                item(label, Edit::Flats(index, choice), choice == *flats)
            }))
        }
        (FeatureField::From, _) => {
            let chosen = feature.place.as_ref()?.from;
            Choices::plain(Datum::ALL.map(|from| {
                let label = words.say(Text::From(from));
                item(label, Edit::FeatureFrom(index, from), from == chosen)
            }))
        }
        _ => return None,
    })
}

fn bore_choice(words: Words, job: &Job, index: u8, field: BoreField) -> Option<Choices> {
    let bore = job.part.bores.get(usize::from(index))?;
    Some(match (field, &bore.hole) {
        (BoreField::Kind, hole) => kinds(words, index, Kind::Bore(hole.kind())),
        // What goes right through was made from both.
        (BoreField::End, Hole::Through { .. }) => return None,
        (BoreField::End, _) => Choices::plain(BoreEnd::ALL.map(|end| {
            let label = words.say(Text::End(end));
            item(label, Edit::End(index, end), end == bore.end)
        })),
        (BoreField::Bottom, Hole::Drilled { bottom, .. } | Hole::Stepped { bottom, .. }) => {
            Choices::plain(BoreBottom::ALL.map(|choice| {
                let edit = Edit::Bottom(index, choice);
                item(words.say(Text::Bottom(choice)), edit, choice == *bottom)
            }))
        }
        (BoreField::Thread, Hole::Tapped { thread, .. }) => {
            threads(words, *thread, |size| Edit::Thread(index, size))
        }
        (BoreField::CentreDrill, Hole::CentreHole { centre_drill }) => {
            let sizes = CentreDrillSize::of(CentreDrillStandard::Iso).map(|size| {
                let edit = Edit::CentreDrill(index, size);
                item(size.code(), edit, size == *centre_drill)
            });
            Choices::plain(sizes)
        }
        _ => return None,
    })
}

fn tolerance_choice(words: Words, tolerance: &Tolerance) -> Choices {
    let class = |class: &ShaftClass| {
        let chosen = *tolerance == Tolerance::Class(*class);
        let label = words.say(Text::ToleranceClass(*class));
        item(label, Edit::ToleranceClass(*class), chosen)
    };
    let groups = FitKind::ALL.map(|kind| {
        let name = words.say(Text::Receiver(OfReceiver::Fit(kind)));
        (name, kind.classes().iter().map(class).collect())
    });
    let own = item(
        words.say(Text::ToleranceLimits),
        Edit::ToleranceLimits,
        matches!(tolerance, Tolerance::Limits { .. }),
    );
    let own = (words.say(Text::Receiver(OfReceiver::OwnLimits)), vec![own]);
    Choices::grouped(groups.into_iter().chain([own]))
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
