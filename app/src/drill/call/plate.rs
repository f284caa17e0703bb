//! The rating plate, once it was read.

use std::rc::Rc;

use bench::{Action, Writing};
use plant::{Layout, Level};
use yew::prelude::*;

use crate::drill::known::Known;
use crate::glossary::Marked;
use crate::route::Route;
use crate::said::use_units;
use crate::said::use_voice;
use crate::shell::Act;
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
    let shown = use_units();
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
    let both = if plate.layout.at_once() > 1 { text::YES } else { text::NO };
    let mut rows = vec![
        (text::PLATE_STORAGE, units::size(plate.nominal, shown)),
        (text::PLATE_VOLTS, text::supply(&plate)),
        (text::PLATE_ELEMENTS, text::elements(&plate)),
        (text::PLATE_MOUNT, voice.element_fit(plate.element, plate.length, plate.mount)),
    ];
    if plate.has(Level::Lower) {
        rows.push((text::PLATE_BOTH, both.to_string()));
    }
    if plate.layout == Layout::OffPeak {
        rows.push((text::PLATE_CIRCUITS, text::TWO_CIRCUITS.to_string()));
    }
    if !plate.layout.has_thermostats() {
        rows.push((text::PLATE_CONTROL, text::ELECTRONIC.to_string()));
    }
    rows.push((text::PLATE_PRESSURE, shown.words().pressure(plate.working_pressure)));
    html! {
        <>
            <h2>{ text::PLATE }</h2>
            <table class="card">
                <tbody>
                    { for rows.into_iter().map(|(name, value)| html! { <tr><th scope="row"><Marked text={name} /></th><td>{ value }</td></tr> }) }
                </tbody>
            </table>
            <a class="source-link" href={format!("{}/heater", Route::Sources.href())}>{ voice.text("sources-plate") }</a>
        </>
    }
}
