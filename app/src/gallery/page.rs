//! The gallery's page: one group at a time, so that a picture of it stays of a size to look at.

use yew::prelude::*;

use super::circuits::Circuits;
use super::tanks::{Jobs, Tanks};
use super::{desks, drawings, entries, helps, judged, lookups, panels, states, whole};
use crate::said::use_language;
use crate::shell::Top;

/// A group's name, and what is in it.
type Group = (&'static str, fn() -> Html);

/// The groups, in the order of the list.
const GROUPS: [Group; 22] = [
    ("sheets", drawings::sheets),
    ("found", drawings::found),
    ("states", states::states),
    ("exchange", states::exchange),
    ("details", drawings::details),
    ("stickers", drawings::stickers),
    ("places", panels::places),
    ("panels", panels::panels),
    ("small", || html! { <panels::Small /> }),
    ("guide", helps::guide),
    ("dialogs", helps::dialogs),
    ("doors", entries::doors),
    ("ladders", || html! { <Circuits /> }),
    ("tanks", || html! { <Tanks /> }),
    ("plots", || html! { <Jobs /> }),
    ("debrief", judged::debriefs),
    ("show", entries::show),
    ("exam", desks::exam),
    ("instructor", desks::instructor),
    ("atlas", || html! { <lookups::Faults /> }),
    ("lookups", || html! { <lookups::Lookups /> }),
    ("pages", whole::pages),
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
    let group = GROUPS.iter().find(|(name, _)| *name == props.group).map(|(_, drawn)| drawn());
    html! {
        <div class="page gallery">
            <Top tag="Gallery" />
            <main id="main">
                <h1 class="unseen">{ "Gallery" }</h1>
                <nav>{ for GROUPS.iter().map(|(one, _)| html! { <a class="button" href={format!("#/gallery/{one}")}>{ *one }</a> }) }</nav>
                // Each group is made anew: nothing of another one is left in it.
                <div key={props.group.clone()} class="frames" data-group={props.group.clone()}>{ group.unwrap_or_default() }</div>
            </main>
        </div>
    }
}
