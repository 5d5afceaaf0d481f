//! Plan: the passes, the further figures, what it is done with, and where to take care.

use skimwright::job::Field;
use yew::prelude::*;

use super::care::{care, care_at_cut};
use super::{fields_of, group};
use crate::page::compared::chart_panels;
use crate::page::figures::more_figures;
use crate::page::finish::finish;
use crate::page::holding::{dialling_in, holding};
use crate::page::passes::pass_table;
use crate::page::print::{exports, print_tools};
use crate::page::shop::shop_panels;
use crate::page::spending::spending;
use crate::page::store::{Store, words};
use crate::page::strength::strength;
use crate::page::words::Text;

pub(crate) fn plan_stage(store: &Store) -> Html {
    let words = words(store);
    html! {
        <>
            { print_tools(store) }
            { pass_table(store) }
            { holding(store) }
            { dialling_in(store) }
            { finish(store) }
            { chart_panels(store) }
            { spending(store) }
            { care(store) }
            <section class="group">
                <h2>{ words.say(Text::GroupCuttingOff) }</h2>
                { care_at_cut(store) }
                { fields_of(store, &[
                    Field::CutOffMethod, Field::Kerf, Field::FacingStock, Field::CentreOrder,
                ]) }
            </section>
            { group(store, words.say(Text::GroupTurning), &[
                Field::Aim,
                Field::RoughInfeed,
                Field::LastCut,
                Field::PolishingStock,
                Field::CuttingSpeed,
                Field::RoughFeed,
                Field::FinishFeed,
                Field::TopSpeed,
            ]) }
            { group(store, words.say(Text::GroupTimes), &[
                Field::Approach,
                Field::SetTime,
                Field::ReturnTime,
                Field::MeasureTime,
                Field::PolishTime,
            ]) }
            { shop_panels(store) }
            { strength(store) }
            { more_figures(store) }
            { exports(store) }
        </>
    }
}
