//! A place to stand a component in: a house, what was done there, a desk, and the frame with its caption.

use std::rc::Rc;

use bench::{Action, Job, Mode, Session};
use drill::Drill;
use plant::climate::Climate;
use plant::household::HouseholdKind;
use plant::{BoxKind, HeaterModel, Home, Location, Setting};
use wasm_bindgen::JsCast;
use yew::prelude::*;

use crate::compose::read_drill;
use crate::drill::known::Known;
use crate::store::{Desk, Head, Held, Keeping, Running, Work, WorkHandle, World, use_work};

/// The drill that every house of the gallery stands in for.
const EXAMPLE: &str = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "solo"}"#;

thread_local! {
    static DRILL: Option<Rc<Drill>> = read_drill(EXAMPLE).ok().and_then(|order| ::drill::make(&order).ok()).map(Rc::new);
}

/// The drill.
pub fn drill() -> Option<Rc<Drill>> {
    DRILL.with(Clone::clone)
}

/// A sound house with a heater, what stands in the line before it, and where it is.
pub fn house(heater: HeaterModel, in_line: Option<BoxKind>, location: Location) -> Home {
    let (household, climate) = (HouseholdKind::ALL[0], Climate::ALL[0]);
    Home::sound(Setting { heater, household, climate, day: 100, in_line, location })
}

/// A call at a house, after acts written as an attempt file writes them. `None` where they cannot be read.
pub fn call(home: Home, acts: &str) -> Option<World> {
    calls(home, acts)?.pop().map(World::from)
}

/// The same with every state on the way.
pub fn calls(home: Home, acts: &str) -> Option<Vec<Session>> {
    calls_in(Mode::Solo, home, acts)
}

/// The same in another mode.
pub fn calls_in(mode: Mode, home: Home, acts: &str) -> Option<Vec<Session>> {
    let actions: Vec<Action> = serde_json::from_str(acts).ok()?;
    let job = Job { home, mode, ..drill()?.job.clone() };
    let mut states = vec![Session::begin(job)];
    for action in &actions {
        let next = bench::reduce(states.last()?, action).0;
        states.push(next);
    }
    Some(states)
}

/// What is known of it.
pub fn known(session: &Session) -> Rc<Known> {
    Rc::new(Known::of(session))
}

/// A component with its caption.
pub fn frame(caption: impl Into<AttrValue>, inside: Html) -> Html {
    html! { <figure><figcaption>{ caption.into() }</figcaption>{ inside }</figure> }
}

/// The same across the whole page.
pub fn wide(caption: impl Into<AttrValue>, inside: Html) -> Html {
    html! { <figure class="wide-frame"><figcaption>{ caption.into() }</figcaption>{ inside }</figure> }
}

/// A job under way for what stands inside: nothing of it is kept on the device.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// The desk.
    #[prop_or_default]
    pub desk: Desk,
    /// Whether the device keeps it.
    #[prop_or_default]
    pub keeping: Keeping,
    /// The step whose entry could not be read.
    #[prop_or_default]
    pub broken: Option<u32>,
    /// What the device knows of the attempt, where that shows.
    #[prop_or_default]
    pub head: Option<Head>,
    /// What stands there.
    pub children: Html,
}

/// The job as the page holds it, its drill run as the session is.
pub fn running(session: World) -> Option<Running> {
    let head = Head { attempt: "1".into(), drill: EXAMPLE.into(), ..Head::default() };
    let mut drill = drill()?;
    if drill.order.mode != session.job.mode {
        Rc::make_mut(&mut drill).order.mode = session.job.mode;
    }
    Some(Running { head, drill, session, restored: 0, found: true })
}

/// The stand. It is set up anew in another language, and once all words are here.
#[component]
pub fn Stand(props: &Props) -> Html {
    let Work { language, rest, .. } = (*use_work()).clone();
    let Props { session, desk, keeping, broken, head, children } = props;
    let (mut running, desk) = (running(session.clone()), desk.clone());
    if let (Some(running), Some(head)) = (&mut running, head) {
        running.head = head.clone();
    }
    let (keeping, broken) = (*keeping, *broken);
    let work = Work { running, desk, language, rest, keeping, broken, ..Work::default() };
    html! { <Standing key={format!("{language:?} {rest:?}")} {work}>{ children.clone() }</Standing> }
}

#[derive(Properties, PartialEq)]
struct StandingProps {
    work: Work,
    children: Html,
}

#[component]
fn Standing(props: &StandingProps) -> Html {
    let begun = props.work.clone();
    let work: WorkHandle = use_reducer(move || begun);
    html! { <Held {work}>{ props.children.clone() }</Held> }
}

/// What stands inside with every fold and dialog of it open.
#[component]
pub fn Opened(props: &yew::html::ChildrenProps) -> Html {
    let node = use_node_ref();
    {
        let node = node.clone();
        use_effect(move || {
            let root = node.cast::<web_sys::Element>();
            let all = root.and_then(|root| root.query_selector_all("details, dialog:not(.top dialog)").ok());
            let count = all.as_ref().map_or(0, web_sys::NodeList::length);
            for one in (0..count).filter_map(|at| all.as_ref()?.item(at)?.dyn_into::<web_sys::Element>().ok())
            {
                // Setting a plain attribute cannot fail.
                let _ = one.set_attribute("open", "");
            }
        });
    }
    html! { <div ref={node} class="opened">{ props.children.clone() }</div> }
}
