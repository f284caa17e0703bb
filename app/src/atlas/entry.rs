//! One fault: its remedy, what differs from a sound house, and on asking what looks most like it.

use std::rc::Rc;

use diagnosis::atlas::Page;
use diagnosis::course::Sign;
use gloo::timers::callback::Timeout;
use plant::HeaterModel;
use plant::fault::FaultId;
use words::Voice;
use yew::prelude::*;

use super::cut::Cut;
use super::rows::{course, differences, twins};
use super::walked::Walked;
use crate::glossary::Marked;
use crate::route::Route;
use crate::said::use_voice;

/// The page is drawn before a house is walked, and again between two houses.
const BREATH_MS: u32 = 30;

/// Which fault.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Which.
    pub fault: FaultId,
}

/// How far the houses are walked.
#[derive(Clone, PartialEq, Default)]
pub struct Progress {
    /// What has come of it.
    pub page: Option<Rc<Page>>,
    /// The heater of the house.
    pub heater: Option<HeaterModel>,
    /// Both heaters cut open, where that shows the fault.
    pub cut: Option<Rc<Cut>>,
    /// Stages walked so far.
    pub stages: usize,
    /// What tells the stages apart, once all are walked.
    pub signs: Option<Rc<Vec<Sign>>>,
    /// Others walked so far, once asked for.
    pub others: Option<usize>,
}

/// The fault.
#[component]
pub fn Entry(props: &Props) -> Html {
    let voice = use_voice();
    let fault = props.fault;
    let walked = use_mut_ref(|| None::<Walked>);
    let progress = use_state(Progress::default);
    {
        let (walked, progress) = (walked.clone(), progress.clone());
        let next = (progress.page.is_some(), progress.stages, progress.signs.is_some(), progress.others);
        use_effect_with(next, move |(begun, _, told, others)| {
            let more = !begun || !told || others.is_some_and(|count| count < FaultId::ALL.len());
            let timer = more.then(|| {
                Timeout::new(BREATH_MS, move || {
                    progress.set(step(&mut walked.borrow_mut(), fault, &progress));
                })
            });
            move || drop(timer)
        });
    }
    let onask = {
        let progress = progress.clone();
        Callback::from(move |others| progress.set(Progress { others, ..(*progress).clone() }))
    };
    told(&voice, fault, &progress, &onask)
}

/// The fault as far as its houses are walked; told how many others shall count as walked: none at all, or to begin.
pub fn told(voice: &Voice, fault: FaultId, progress: &Progress, onask: &Callback<Option<usize>>) -> Html {
    let ask = |others: Option<usize>| onask.reform(move |_: MouseEvent| others);
    let total = FaultId::ALL.len();
    html! {
        <>
            <p class="atlas-back"><a href={Route::Atlas.href()}>{ voice.text("atlas-all") }</a></p>
            <h1>{ format!("{fault} {}", voice.fault(fault)) }</h1>
            <p class="lead"><Marked text={voice.text(&format!("remedy-{fault}"))} /></p>
            <p class="note">
                { voice.filled("atlas-in-error", &[
                    ("part", voice.text(&format!("part-{}", fault.fault().tempting)).into()),
                ]) }
                { " " }{ voice.text("atlas-caution") }
            </p>
            <h2>{ voice.text("atlas-beside") }</h2>
            if let Some(heater) = progress.heater {
                <p class="note">
                    { voice.filled("atlas-house", &[("heater", voice.heater(heater).into())]) }
                    { " " }{ for progress.cut.iter().map(|cut| cut.after(voice)) }
                </p>
            }
            { for progress.cut.iter().map(|cut| cut.drawn(voice)) }
            <p><a class="button" href={format!("{}/{fault}", Route::Show.href())} data-act="show">{ voice.text("show-link") }</a></p>
            if let Some(page) = &progress.page {
                { differences(voice, page) }
                if let Some(signs) = &progress.signs {
                    { course(voice, signs) }
                }
                <h2>{ voice.text("atlas-alike") }</h2>
                if let Some(done) = progress.others {
                    if done < total {
                        <p role="status">
                            <progress max={total.to_string()} value={done.to_string()} aria-label={voice.text("atlas-alike")} />
                            { " " }{ voice.filled("atlas-progress", &[
                                ("done", (done as u32).into()), ("total", (total as u32).into()),
                            ]) }
                        </p>
                        <button type="button" class="quiet" onclick={ask(None)}>{ voice.text("atlas-stop") }</button>
                    } else {
                        { twins(voice, page) }
                    }
                } else {
                    <p>{ voice.text("atlas-alike-about") }</p>
                    <button type="button" onclick={ask(Some(0))} data-act="alike">{ voice.text("atlas-find") }</button>
                }
            } else {
                <p class="muted" role="status">{ voice.text("atlas-walking") }</p>
            }
        </>
    }
}

/// Walks one house more.
fn step(walked: &mut Option<Walked>, fault: FaultId, before: &Progress) -> Progress {
    let Some(begun) = walked else {
        *walked = Walked::begin(fault);
        if let Some(begun) = walked {
            crate::text::about(&begun.drill.job.home.plant);
        }
        let page =
            walked.as_ref().and_then(Walked::page).unwrap_or(Page { rows: Vec::new(), twins: Vec::new() });
        return Progress {
            page: Some(Rc::new(page)),
            heater: walked.as_ref().map(|one| one.drill.setting.heater),
            cut: walked.as_ref().and_then(Walked::cut).map(Rc::new),
            signs: walked.is_none().then(Rc::default),
            ..before.clone()
        };
    };
    if before.signs.is_none() {
        let signs = begun.further().map(Rc::new);
        return Progress { stages: before.stages + 1, signs, ..before.clone() };
    }
    let Some(done) = before.others else { return before.clone() };
    if let Some(other) = FaultId::ALL.get(done) {
        begun.add(*other);
    }
    let last = done + 1 >= FaultId::ALL.len();
    let page = if last { begun.page().map(Rc::new) } else { before.page.clone() };
    Progress { page, others: Some(done + 1), ..before.clone() }
}
