//! A place to stand a component in: a house, what was done there, a desk, and the frame with its caption.

use std::rc::Rc;

use bench::{Action, Job, Session};
use drill::Drill;
use plant::climate::Climate;
use plant::household::HouseholdKind;
use plant::{BoxKind, HeaterModel, Home, Location, Setting};
use yew::prelude::*;

use crate::compose::read_drill;
use crate::drill::known::Known;
use crate::store::{Desk, Head, Held, Running, Work, WorkHandle, World, use_work};

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
    let actions: Vec<Action> = serde_json::from_str(acts).ok()?;
    let job = Job { home, ..drill()?.job.clone() };
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

/// A job under way for what stands inside: nothing of it is kept on the device.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// The desk.
    #[prop_or_default]
    pub desk: Desk,
    /// What stands there.
    pub children: Html,
}

/// The stand.
#[component]
pub fn Stand(props: &Props) -> Html {
    let page = use_work();
    let running = drill().map(|drill| Running {
        head: Head { attempt: "1".into(), drill: EXAMPLE.into(), learner: String::new(), ..Head::default() },
        drill,
        session: props.session.clone(),
        restored: 0,
        found: true,
    });
    let desk = props.desk.clone();
    let language = page.language;
    let work: WorkHandle = use_reducer(move || Work { running, desk, language, ..Work::default() });
    html! { <Held {work}>{ props.children.clone() }</Held> }
}
