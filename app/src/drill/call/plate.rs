//! The rating plate, once it was read.

use std::rc::Rc;

use bench::{Action, Writing};
use yew::prelude::*;

use crate::drill::known::Known;
use crate::route::Route;
use crate::said::use_voice;
use crate::shell::Act;
use crate::store::use_work;
use crate::{text, units};

/// What is known.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was perceived.
    pub known: Rc<Known>,
}

/// The plate, or the act of reading it.
#[component]
pub fn PlateCard(props: &Props) -> Html {
    let shown = use_work().desk.units;
    let voice = use_voice();
    let Some(plate) = props.known.plate else {
        let action = Action::Read { what: Writing::Plate };
        return html! {
            <>
                <h2>{ text::PLATE }</h2>
                <Act {action} label={text::READ_PLATE} />
            </>
        };
    };
    let watts = format!("{0:.0} / {0:.0} W", plate.element.watts.get());
    let rows = [
        (text::PLATE_STORAGE, units::size(plate.nominal, shown)),
        (text::PLATE_VOLTS, format!("{:.0} V 1Ø", plate.element.volts.get())),
        (text::PLATE_ELEMENTS, watts),
        (text::PLATE_BOTH, text::NO.to_owned()),
        (text::PLATE_PRESSURE, shown.words().pressure(plate.working_pressure)),
    ];
    html! {
        <>
            <h2>{ text::PLATE }</h2>
            <table class="card">
                <tbody>
                    { for rows.map(|(name, value)| html! { <tr><th scope="row">{ name }</th><td>{ value }</td></tr> }) }
                </tbody>
            </table>
            <a class="source-link" href={format!("{}/heater", Route::Sources.href())}>{ voice.text("sources-plate") }</a>
        </>
    }
}
