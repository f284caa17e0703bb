//! The gallery's page: one group at a time, so that a picture of it stays of a size to look at.

use yew::prelude::*;

use super::circuits::Circuits;
use super::tanks::{Jobs, Tanks};
use super::{desks, drawings, entries, helps, judged, lookups, panels, states, whole};
use crate::said::use_language;
use crate::shell::Top;

/// The groups by name.
const GROUPS: [&str; 22] = [
    "sheets",
    "found",
    "states",
    "exchange",
    "details",
    "stickers",
    "places",
    "panels",
    "small",
    "guide",
    "dialogs",
    "doors",
    "ladders",
    "tanks",
    "plots",
    "debrief",
    "show",
    "exam",
    "instructor",
    "atlas",
    "lookups",
    "pages",
];

/// The group that the address asks for, if it asks for the gallery at all; empty for the list.
pub fn asked() -> Option<String> {
    let hash = gloo::utils::window().location().hash().unwrap_or_default();
    let rest = hash.strip_prefix("#/gallery")?;
    Some(rest.trim_start_matches('/').to_owned())
}

/// Which group.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Its name.
    pub group: String,
}

/// The page.
#[component]
pub fn Gallery(props: &Props) -> Html {
    use_language();
    let group = match props.group.as_str() {
        "sheets" => drawings::sheets(),
        "found" => drawings::found(),
        "details" => drawings::details(),
        "places" => panels::places(),
        "panels" => panels::panels(),
        "small" => html! { <panels::Small /> },
        "states" => states::states(),
        "exchange" => states::exchange(),
        "stickers" => drawings::stickers(),
        "pages" => whole::pages(),
        "exam" => desks::exam(),
        "instructor" => desks::instructor(),
        "atlas" => html! { <lookups::Faults /> },
        "lookups" => html! { <lookups::Lookups /> },
        "guide" => helps::guide(),
        "dialogs" => helps::dialogs(),
        "doors" => entries::doors(),
        "debrief" => judged::debriefs(),
        "show" => entries::show(),
        "ladders" => html! { <Circuits /> },
        "tanks" => html! { <Tanks /> },
        "plots" => html! { <Jobs /> },
        _ => html! {},
    };
    html! {
        <div class="page gallery">
            <Top tag="Gallery" />
            <main id="main">
                <h1 class="unseen">{ "Gallery" }</h1>
                <nav>{ for GROUPS.iter().map(|one| html! { <a class="button" href={format!("#/gallery/{one}")}>{ *one }</a> }) }</nav>
                // Each group is made anew: nothing of another one is left in it.
                <div key={props.group.clone()} class="frames" data-group={props.group.clone()}>{ group }</div>
            </main>
        </div>
    }
}
