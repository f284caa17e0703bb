//! Where the leads are, and what the clamp is around. The lists do the same as the points on the drawing.

use std::rc::Rc;

use bench::Clamped;
use plant::{Place, Point, Wire};
use yew::prelude::*;

use super::points::{named, points_of};
use crate::said::use_speech;
use crate::shell::{Choice, Choices};
use crate::store::{Lead, Msg, WorkHandle, World, use_steady, use_work};
use crate::text;

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// Both leads.
#[component]
pub fn Leads(props: &Props) -> Html {
    let work = use_work();
    let speech = use_speech();
    let choices = use_memo((props.session.clone(), speech), |(session, _)| choices(session));
    let one = |lead, at| html! { <OneLead {lead} {at} armed={work.desk.armed == Some(lead)} choices={choices.clone()} /> };
    html! {
        <div class="probe">
            { one(Lead::Red, work.desk.red) }
            { one(Lead::Black, work.desk.black) }
        </div>
    }
}

/// Every point there is, by place.
fn choices(session: &World) -> Vec<Choice> {
    let wiring = &session.home.plant.wiring;
    Place::ALL
        .iter()
        .flat_map(|&place| {
            let group = AttrValue::from(text::place(place));
            points_of(session, place).into_iter().filter(move |point| point.place() == place).map(
                move |point| Choice {
                    value: point.to_string().into(),
                    label: text::point(point, wiring).into(),
                    group: group.clone(),
                },
            )
        })
        .collect()
}

/// One lead.
#[derive(Properties, PartialEq)]
struct OneProps {
    lead: Lead,
    at: Option<Point>,
    armed: bool,
    choices: Rc<Vec<Choice>>,
}

#[component]
fn OneLead(props: &OneProps) -> Html {
    let OneProps { lead, at, armed, choices } = props;
    let (lead, at, armed) = (*lead, *at, *armed);
    let changes = use_steady().changes;
    let onchange = use_callback((lead, changes.clone()), |value: String, (lead, changes)| {
        if let Ok(point) = value.parse() {
            changes.dispatch(Msg::Put(*lead, point));
        }
    });
    let arm = Callback::from(move |_| changes.dispatch(Msg::Arm((!armed).then_some(lead))));
    let dot = match lead {
        Lead::Red => "dot red-dot",
        Lead::Black => "dot black-dot",
    };
    let chosen = at.map(|point| point.to_string()).unwrap_or_default();
    let name = lead.name();
    html! {
        <div class={classes!("lead-box", armed.then_some("armed"))}>
            <button type="button" class="arm" aria-pressed={armed.to_string()} onclick={arm} data-act={format!("arm-{name}")}>
                <span class={dot}></span>{ text::lead_at(lead, at) }
            </button>
            <Choices
                label={text::lead_on(lead)}
                choices={choices.to_vec()}
                {chosen}
                none={Some(AttrValue::from(text::NOWHERE))}
                {onchange}
                hook={format!("lead-{name}")}
            />
        </div>
    }
}

/// What the clamp is around.
#[component]
pub fn ClampAround(props: &Props) -> Html {
    let work = use_work();
    let both = Choice::new("both", text::clamped(Clamped::BothLegs));
    let named = named(&props.session);
    let there = |wire: &Wire| named.iter().any(|end| end.wire == *wire);
    let wires: Vec<Choice> = Wire::ALL
        .iter()
        .filter(|wire| there(wire))
        .map(|&wire| Choice::new(wire.name(), text::wire(wire)))
        .collect();
    let choices: Vec<Choice> = std::iter::once(both).chain(wires.iter().cloned()).collect();
    let (chosen, first, second) = match work.desk.clamped {
        None => (AttrValue::default(), None, None),
        Some(Clamped::BothLegs) => ("both".into(), None, None),
        Some(Clamped::Wire { wire }) => (wire.name().into(), Some(wire), None),
        Some(Clamped::Pair { first, second }) => (first.name().into(), Some(first), Some(second)),
    };
    let onchange = {
        let work = work.clone();
        Callback::from(move |value: String| {
            let around = value.parse().map_or(Clamped::BothLegs, |wire| Clamped::Wire { wire });
            work.dispatch(Msg::Clamp(around));
        })
    };
    html! {
        <div class="probe one">
            <Choices
                label={text::AROUND}
                {choices}
                {chosen}
                none={Some(AttrValue::from(text::NOWHERE))}
                {onchange}
                hook="clamp"
            />
            if let Some(first) = first {
                { with(&work, first, second, wires) }
            }
        </div>
    }
}

/// A second wire in the jaws: the clamp shows the difference of what they carry.
fn with(work: &WorkHandle, first: Wire, second: Option<Wire>, wires: Vec<Choice>) -> Html {
    let others: Vec<Choice> = wires.into_iter().filter(|one| one.value != first.name()).collect();
    let onchange = {
        let work = work.clone();
        Callback::from(move |value: String| {
            let around =
                value.parse().map_or(Clamped::Wire { wire: first }, |second| Clamped::Pair { first, second });
            work.dispatch(Msg::Clamp(around));
        })
    };
    html! {
        <Choices
            label={text::AROUND_TOO}
            choices={others}
            chosen={second.map_or_else(AttrValue::default, |wire| wire.name().into())}
            none={Some(AttrValue::from(text::NO_OTHER))}
            {onchange}
            hook="clamp-too"
        />
    }
}
