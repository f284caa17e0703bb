//! The hand that the guide lends: what is next is marked on the page, and takes the focus when it is asked for.

use std::cell::Cell;
use std::rc::Rc;

use bench::{Action, Clamped};
use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use gloo::utils::document;
use plant::Place;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};

use super::Next;
use crate::shell::act_slug;
use crate::store::{Desk, Lead, Setting};

/// Until the place that was gone to is drawn.
const DRAWN_MS: u32 = 60;
/// Looks for it after the first.
const TRIES: u32 = 50;
/// Marks what is next on the page.
const MARK: &str = "data-next";

/// Where the hand goes next on the page: a selector, and what to choose there if it is a list.
pub type Target = (String, String);

/// What is marked as next: the place where that is not at hand, before the lists in which a point stands too.
pub fn marks(next: &Next, desk: &Desk) -> Vec<Target> {
    let mut all = targets(next, desk);
    let away = next.at.filter(|place| desk.at != Some(*place) && *place != Place::Customer);
    if let Some(place) = away {
        let at = if matches!(next.action, Some(Action::Meter { .. })) { 0 } else { all.len() };
        all.insert(at, (format!("[data-go='{place}']"), String::new()));
    }
    all
}

/// What the hand goes to next, the nearest first: for a reading the dial, then each point, then the button.
pub fn targets(next: &Next, desk: &Desk) -> Vec<Target> {
    let Some(action) = &next.action else { return Vec::new() };
    let slug = act_slug(action);
    let to = |selector: String| (selector, String::new());
    let take = to("[data-act=take-reading]".to_owned());
    let dial = |setting: Setting| {
        (desk.setting != setting).then(|| to(format!("[data-setting='{}']", setting.name())))
    };
    match action {
        Action::Meter { function, red, black } => {
            let mut all: Vec<Target> = dial(Setting::Leads(*function)).into_iter().collect();
            for (lead, point, at) in [(Lead::Red, red, desk.red), (Lead::Black, black, desk.black)] {
                if at == Some(*point) {
                    continue;
                }
                if desk.lead_for(*point) != Some(lead) {
                    all.push(to(format!("[data-act='arm-{}']", lead.name())));
                }
                all.push(to(format!(".detail [data-point='{point}']")));
                all.push((format!("[data-choice=lead-{}]", lead.name()), point.to_string()));
            }
            all.push(take);
            all
        }
        Action::Clamp { around } => {
            let mut all: Vec<Target> = dial(Setting::Clamp).into_iter().collect();
            if let (true, Clamped::Wire { wire }) = (desk.clamped != Some(*around), around) {
                all.push(("[data-choice=clamp]".to_owned(), wire.name().to_owned()));
            }
            all.push(take);
            all
        }
        Action::Finding { fault, evidence } => {
            let missing = evidence.iter().filter(|step| !desk.ticks.contains(step));
            let mut all: Vec<Target> = missing.map(|step| to(format!("[data-step='{step}']"))).collect();
            if let Some(fault) = fault {
                all.push(to(format!("[data-act^='finding'][data-act*='fault={fault}']")));
                all.push(("[data-choice=finding]".to_owned(), fault.name().to_owned()));
            }
            all
        }
        // All the covers in one go, where there is more than one.
        Action::Cover { .. } => {
            vec![to(format!("[data-act='all {slug}']")), to(format!("[data-act='{slug}']"))]
        }
        Action::HandOver => vec![to("[data-act=hand-over-asked]".to_owned())],
        Action::Lift { end } | Action::Label { end } | Action::Land { end, .. } => vec![
            to(format!("[data-act='{slug}']")),
            to(format!(".detail [data-point='{end}']")),
            ("[data-choice=point]".to_owned(), end.to_string()),
        ],
        _ => vec![to(format!("[data-act='{slug}']")), (format!("select:has(option[value='{slug}'])"), slug)],
    }
}

fn found(selector: &str) -> Option<Element> {
    document().query_selector(selector).ok().flatten()
}

/// Marks what is next, now or once it is drawn, and again whenever something is chosen in a list, which shows what to
/// press next though nothing is drawn again for it. What comes back ends it.
pub fn mark(marks: Vec<Target>) -> impl FnOnce() + 'static {
    let wanted = Rc::new(Cell::new(true));
    if marked(&marks).is_none() && !marks.is_empty() {
        when_drawn(marks.clone(), wanted.clone(), |_| {}, TRIES);
    }
    let again = wanted.clone();
    let chosen = EventListener::new(&document(), "change", move |_| {
        when_drawn(marks.clone(), again.clone(), |_| {}, TRIES);
    });
    move || {
        wanted.set(false);
        drop(chosen);
    }
}

/// Gives the focus to the first of them, once it is drawn.
pub fn lend(targets: Vec<Target>) {
    when_drawn(targets, Rc::new(Cell::new(true)), point, TRIES);
}

/// Marks the first of them that is on the page, and nothing else; none while a detail is being drawn, for a point that
/// is not there yet may be nearer.
fn marked(targets: &[Target]) -> Option<Element> {
    let targets = if found(".detail.filling").is_some() { &[] } else { targets };
    let first = targets.iter().find_map(|(selector, value)| Some((found(selector)?, value)));
    while let Some(old) = found(&format!("[{MARK}]")) {
        if old.remove_attribute(MARK).is_err() {
            break;
        }
    }
    let (element, value) = first?;
    // Fails only for a name that is no attribute's.
    let _ = element.set_attribute(MARK, value);
    Some(element)
}

/// Marks the first of them once it is drawn, which takes a slow device several looks, and gives it a hand.
fn when_drawn(targets: Vec<Target>, wanted: Rc<Cell<bool>>, hand: fn(&Element), tries: u32) {
    let again = move || {
        if !wanted.get() {
            return;
        }
        match marked(&targets) {
            Some(element) => hand(&element),
            None if tries > 0 => when_drawn(targets, wanted, hand, tries - 1),
            None => {}
        }
    };
    Timeout::new(DRAWN_MS, again).forget();
}

/// Gives the focus to it, which brings it into view.
fn point(element: &Element) {
    // A point of the drawing takes the focus as a button does; it fails only for what is not in the page.
    let _ = element.unchecked_ref::<HtmlElement>().focus();
}
