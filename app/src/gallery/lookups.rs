//! The pages to look something up in: atlas, terms, sources; whole, searched in, and in the states that a fault's page
//! goes through while its houses are walked.

use std::rc::Rc;

use bench::Mode;
use diagnosis::atlas::Page;
use plant::fault::FaultId;
use plant::{HeaterModel, Location};
use yew::prelude::*;

use super::stand::{Opened, Stand, calls_in, frame, house, wide};
use super::worked::Worked;
use crate::atlas::Atlas;
use crate::atlas::entry::{Progress, told};
use crate::atlas::walked::Walked;
use crate::glossary::held::{Explained, use_terms};
use crate::glossary::{Glossary, Marked};
use crate::said::use_voice;
use crate::shell::{Reference, use_dialog};
use crate::sources::Sources;
use crate::sources::entry::read;
use crate::sources::group::group;
use crate::store::World;

/// The fault whose page is shown, and those that are walked beside it.
const FAULT: FaultId = FaultId::F24;
const OTHERS: [FaultId; 2] = [FaultId::F23, FaultId::F14];

/// How a fault's page comes about: nothing yet, the fault beside a sound house, its stages, others on the way and there.
fn walked() -> Vec<(&'static str, Progress)> {
    let mut all = vec![("being walked", Progress::default())];
    let Some(mut walked) = Walked::begin(FAULT) else { return all };
    let beside = Progress {
        page: walked.page().map(Rc::new),
        heater: Some(walked.drill.setting.heater),
        cut: walked.cut().map(Rc::new),
        ..Progress::default()
    };
    all.push(("beside a sound house", beside.clone()));
    let signs = (0..FaultId::ALL.len()).find_map(|_| walked.further()).map(Rc::new);
    let staged = Progress { signs, ..beside };
    all.push(("its stages", staged.clone()));
    all.push(("others on the way", Progress { others: Some(OTHERS.len()), ..staged.clone() }));
    OTHERS.into_iter().for_each(|other| walked.add(other));
    let others = Some(FaultId::ALL.len());
    all.push(("others walked", Progress { page: walked.page().map(Rc::new), others, ..staged.clone() }));
    let nothing = Page { rows: Vec::new(), twins: Vec::new() };
    all.push(("nothing differs", Progress { page: Some(Rc::new(nothing)), ..staged }));
    all
}

/// The houses are walked once a page.
fn stages() -> &'static [(&'static str, Progress)] {
    thread_local! { static KEPT: &'static [(&'static str, Progress)] = Vec::leak(walked()); }
    KEPT.with(|kept| *kept)
}

/// A sheet under way on the device: beside a page there is the way back.
fn under_way(mode: Mode) -> Option<World> {
    let home = house(HeaterModel::Plain40, None, Location::Basement);
    Some(calls_in(mode, home, "[]")?.pop()?.into())
}

/// A page that is searched in.
fn asked(caption: &str, words: &str, page: Html) -> Html {
    wide(
        caption.to_owned(),
        html! { <Worked write={Some(("[data-field=search]", words.to_owned().into()))}>{ page }</Worked> },
    )
}

/// The atlas.
#[component]
pub fn Faults() -> Html {
    let voice = use_voice();
    let entry = |(how, progress): &(&str, Progress)| {
        let inside = told(&voice, FAULT, progress, &Callback::noop());
        wide(format!("a fault, {how}"), html! { <Reference class="atlas">{ inside }</Reference> })
    };
    let beside = |caption: &str, mode: Mode| {
        under_way(mode).map(|session| wide(caption.to_owned(), html! { <Stand {session}><Atlas /></Stand> }))
    };
    html! {
        <>
            { beside("a job under way", Mode::Solo).unwrap_or_default() }
            { beside("an exam under way", Mode::Exam).unwrap_or_default() }
            { asked("searched in", "element", html! { <Atlas /> }) }
            { asked("nothing found", "no such words", html! { <Atlas /> }) }
            { for stages().iter().map(entry) }
        </>
    }
}

/// Terms and sources.
#[component]
pub fn Lookups() -> Html {
    let voice = use_voice();
    let terms = use_terms().and_then(|held| held.terms);
    let explained = use_dialog();
    let list = read(&words::sources::list());
    let name = list.first().map(|one| one.group.clone()).unwrap_or_default();
    let first: Vec<_> = list.iter().filter(|one| one.group == name).collect();
    let term = terms.as_ref().and_then(|terms| terms.all.iter().find(|one| one.id == "dip-tube").cloned());
    html! {
        <>
            { asked("terms, searched in", "anode", html! { <Glossary /> }) }
            { asked("terms, nothing found", "no such words", html! { <Glossary /> }) }
            { frame("a text with its terms", html! { <p><Marked text={voice.text("remedy-F23")} /></p> }) }
            if terms.is_some() {
                { frame("a term explained", html! { <Opened><Explained {term} dialog={explained} /></Opened> }) }
            }
            { asked("sources, searched in", "shower", html! { <Sources /> }) }
            { asked("sources, nothing found", "no such words", html! { <Sources /> }) }
            { wide("sources, a group", html! { <div class="doors sources">{ group(&voice, &name, &first, true) }</div> }) }
        </>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Each state is another one, and what it is called is so.
    #[test]
    fn the_houses_are_walked() {
        let all: Vec<Progress> = stages().iter().map(|(_, one)| one.clone()).collect();
        let [nothing, beside, staged, _, others, same] = all.as_slice() else { panic!("six") };
        assert!(nothing.page.is_none());
        assert!(beside.page.as_ref().is_some_and(|page| !page.rows.is_empty() && page.twins.is_empty()));
        assert!(staged.signs.as_ref().is_some_and(|signs| !signs.is_empty()));
        assert_eq!(others.page.as_ref().unwrap().twins.len(), OTHERS.len());
        assert!(same.page.as_ref().is_some_and(|page| page.rows.is_empty()));
    }
}
