//! The page of sources: a search, the kinds, and the groups.

use std::rc::Rc;

use quantity::Kind;
use words::Voice;
use yew::platform::spawn_local;
use yew::prelude::*;

use super::entry::{self, Entry};
use super::filter::{Filter, kind_named};
use super::group::group;
use crate::compose::radios;
use crate::route::use_address;
use crate::said::use_voice;
use crate::shell::{Reference, coming, search};
use crate::text;

/// The page. What follows `#/sources/` is searched for at once.
#[component]
pub fn Sources() -> Html {
    let voice = use_voice();
    let asked = use_address().rest;
    let all = use_state(|| None::<Rc<[Entry]>>);
    let failed = use_state(|| false);
    {
        let (all, failed) = (all.setter(), failed.setter());
        use_effect_with((), move |()| {
            spawn_local(async move {
                match text::beside("assets/asked/sources.txt").await {
                    Some(list) => all.set(Some(entry::read(&list).into())),
                    None => failed.set(true),
                }
            });
        });
    }
    let filter = use_state(Filter::default);
    {
        let filter = filter.setter();
        use_effect_with(asked, move |asked| {
            filter.set(Filter { words: asked.replace(['+', '-'], " "), kind: kind_named(asked) }.tidied());
        });
    }
    let onwords = {
        let filter = filter.clone();
        Callback::from(move |words| filter.set(Filter { words, ..(*filter).clone() }))
    };
    let onkind = {
        let filter = filter.clone();
        Callback::from(move |name: AttrValue| {
            filter.set(Filter { kind: kind_named(&name), ..(*filter).clone() });
        })
    };
    let Some(all) = (*all).clone() else {
        return html! {
            <Reference tag={voice.text("sources-tag")} class="sources">
                <h1>{ voice.text("sources-title") }</h1>
                { coming(*failed) }
            </Reference>
        };
    };
    let kind = radios(
        voice.text("sources-kind"),
        "kind",
        kinds(&voice, &all, &filter),
        filter.kind.map_or("", Kind::name),
        &onkind,
    );
    let shown: Vec<&Entry> = all.iter().filter(|entry| filter.shows(entry)).collect();
    html! {
        <Reference tag={voice.text("sources-tag")} class="sources">
            <h1>{ voice.text("sources-title") }</h1>
            <p class="lead">{ voice.filled("sources-lead", &[("count", (all.len() as u32).into())]) }</p>
            <p class="note">{ voice.text("sources-caution") }</p>
            { search(voice.text("sources-search"), filter.words.clone(), onwords, Some(voice.text("sources-search-example")), kind) }
            <p class="found" role="status">
                { voice.filled("sources-found", &[("count", (shown.len() as u32).into())]) }
                if shown.is_empty() { { " " }{ voice.text("sources-none") } }
            </p>
            { groups(&voice, &shown, filter.narrows()) }
        </Reference>
    }
}

impl Filter {
    /// A kind asked for by its name is not looked for as a word too.
    fn tidied(self) -> Self {
        if self.kind.is_some() { Self { words: String::new(), ..self } } else { self }
    }
}

/// The kinds with how many constants of each have the words looked for.
fn kinds(voice: &Voice, all: &[Entry], filter: &Filter) -> Vec<(AttrValue, AttrValue, AttrValue)> {
    let count = |kind: Option<Kind>| {
        all.iter()
            .filter(|entry| filter.has_words(entry) && kind.is_none_or(|kind| kind == entry.kind))
            .count()
    };
    let one = |name: &str, text: &str, kind| {
        let label = format!("{} ({})", voice.text(&format!("sources-kind-{text}")), count(kind));
        let about = voice.text(&format!("sources-kind-{text}-about"));
        (AttrValue::from(name.to_owned()), label.into(), about.into())
    };
    let each = Kind::ALL.into_iter().map(|kind| one(kind.name(), kind.name(), Some(kind)));
    std::iter::once(one("", "all", None)).chain(each).collect()
}

/// The groups in the order of the code; open while something narrows the list.
fn groups(voice: &Voice, shown: &[&Entry], open: bool) -> Html {
    let mut all: Vec<(&str, Vec<&Entry>)> = Vec::new();
    for &entry in shown {
        match all.iter_mut().find(|(name, _)| *name == entry.group) {
            Some((_, entries)) => entries.push(entry),
            None => all.push((&entry.group, vec![entry])),
        }
    }
    all.iter().map(|(name, entries)| group(voice, name, entries, open)).collect()
}
