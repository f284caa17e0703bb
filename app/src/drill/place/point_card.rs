//! The point under the hand: put a lead there, touch it, or see to the wires on it. The list of points does
//! the same as the drawing.

use bench::{Action, Clamped, Probe, Session, Touchable};
use plant::{End, Place, Point, Screw, Wiring};
use yew::prelude::*;

use super::offer::{Offer, Offers};
use crate::drill::detail::{bare, colour_of};
use crate::drill::meter::ends;
use crate::shell::{Choice, Choices};
use crate::store::{Lead, Msg, World, use_work};
use crate::text;

/// The world and the place.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// Where.
    pub place: Place,
}

/// The card.
#[component]
pub fn PointCard(props: &Props) -> Html {
    let work = use_work();
    let picked = work.desk.point;
    let choices: Vec<Choice> = crate::drill::meter::points_of(&props.session, props.place)
        .into_iter()
        .map(|point| Choice::new(point.to_string(), text::point(point, &props.session.home.plant.wiring)))
        .collect();
    let onchange = use_callback(work.dispatcher(), |value: String, work| {
        if let Ok(point) = value.parse() {
            work.dispatch(Msg::Pick(point));
        }
    });
    let chosen = picked.map(|point| point.to_string()).unwrap_or_default();
    html! {
        <div class="point-card">
            <Choices
                label={text::POINT}
                {choices}
                {chosen}
                none={Some(AttrValue::from(text::PICK_POINT))}
                {onchange}
                hook="point"
            />
            if let Some(point) = picked {
                { holds(&props.session, props.place, point) }
                <Offers name={text::point(point, &props.session.home.plant.wiring)} offers={offers(&props.session, point)}>
                    { lead(&work, Lead::Red, point) }
                    { lead(&work, Lead::Black, point) }
                </Offers>
            }
        </div>
    }
}

fn lead(work: &crate::store::WorkHandle, lead: Lead, point: Point) -> Html {
    let onclick = {
        let work = work.clone();
        Callback::from(move |_| work.dispatch(Msg::Put(lead, point)))
    };
    let (class, at) = match lead {
        Lead::Red => ("dot red-dot", work.desk.red),
        Lead::Black => ("dot black-dot", work.desk.black),
    };
    html! {
        <button
            type="button"
            data-act={format!("put-{}", lead.name())}
            aria-pressed={(at == Some(point)).to_string()}
            {onclick}
        >
            <span {class}></span>{ text::lead_here(lead) }
        </button>
    }
}

/// What is wired to a point, once nothing stands before it: the wires on a screw, or the screw that an end is on.
fn holds(session: &Session, place: Place, point: Point) -> Html {
    if !bare(session, place) {
        return html! {};
    }
    let wiring = &session.home.plant.wiring;
    let on = |end: End| wiring.joint(end).on;
    let said: Vec<String> = match point {
        Point::Screw(screw) => ends(session)
            .into_iter()
            .filter(|end| on(*end) == Some(screw))
            .map(|end| text::wire_on(end, colour_of(place, end.wire, wiring)))
            .collect(),
        Point::End(end) => {
            let at = on(end)
                .map_or_else(|| text::POINT_LIFTED.to_string(), |screw| text::landed_on(screw, wiring));
            // No name says its colour: the eye does.
            let lost = text::letter(end).into_iter();
            let lost = lost.flat_map(|_| {
                [text::wire_on(end, colour_of(place, end.wire, wiring)), text::POINT_LOOSE.to_string()]
            });
            std::iter::once(at).chain(lost).collect()
        }
    };
    if said.is_empty() {
        return html! { <p class="holds">{ text::POINT_EMPTY }</p> };
    }
    html! { <ul class="holds">{ for said.into_iter().map(|one| html! { <li>{ one }</li> }) }</ul> }
}

/// What can be done with a point.
pub fn offers(session: &Session, point: Point) -> Vec<Offer> {
    let mut offers = vec![
        Offer::plain(Action::Touch { at: Touchable::Metal { point } }, text::TOUCH),
        Offer::plain(Action::NonContact { at: point }, text::NON_CONTACT),
        Offer::plain(Action::Thermometer { at: Probe::Metal { point } }, text::THERMOMETER_POINT),
    ];
    let wiring = &session.home.plant.wiring;
    match point {
        Point::Screw(screw) => {
            let all = ends(session);
            for end in all.iter().filter(|end| wiring.joint(**end).on == Some(screw)) {
                offers.extend(landed(*end));
            }
            let near = |end: &&End| end.home().place() == screw.place();
            for end in all.iter().filter(near).filter(|end| wiring.joint(**end).on.is_none()) {
                offers.extend(land(*end, screw));
            }
        }
        Point::End(end) => {
            let lost = session.loose(end).is_some();
            if wiring.joint(end).on.is_some() {
                offers.extend(landed(end));
            } else {
                // Nobody knows the screw of one that lost its name.
                if !lost {
                    offers.extend(land(end, end.home()));
                }
                offers.push(Offer::plain(Action::Label { end }, text::label_end(end)));
                offers.push(Offer::choose(
                    if lost { text::LAND } else { text::LAND_ELSEWHERE },
                    text::LAND,
                    text::LAND_ON_ANOTHER,
                    elsewhere(end, wiring),
                ));
            }
            // Which of the wires it is a clamp would tell; its other end can be clamped where that is known.
            if !lost {
                let around = Clamped::Wire { wire: end.wire };
                offers.push(Offer::plain(Action::Clamp { around }, text::CLAMP_WIRE));
            }
        }
    }
    offers
}

fn landed(end: End) -> [Offer; 4] {
    [
        Offer::plain(Action::Lift { end }, text::lift(end)),
        Offer::plain(Action::Label { end }, text::label_end(end)),
        Offer::plain(Action::Remake { end, torqued: true }, text::remake(end, true)),
        Offer::plain(Action::Remake { end, torqued: false }, text::remake(end, false)),
    ]
}

fn land(end: End, screw: Screw) -> [Offer; 2] {
    [
        Offer::plain(Action::Land { end, screw, torqued: true }, text::land(end, screw, true)),
        Offer::plain(Action::Land { end, screw, torqued: false }, text::land(end, screw, false)),
    ]
}

/// Every screw of this house: the wrong one can be chosen, and the world answers.
fn elsewhere(end: End, wiring: &Wiring) -> Vec<(String, Action)> {
    let near = |screw: &Screw| screw.place() == end.home().place();
    let mut all: Vec<Screw> = Screw::ALL.iter().copied().filter(|one| wiring.has_screw(*one)).collect();
    quantity::sort::sort_by_key(&mut all, |screw| !near(screw));
    all.into_iter()
        .flat_map(|screw| {
            [true, false]
                .map(|torqued| (text::screw_torqued(screw, torqued), Action::Land { end, screw, torqued }))
        })
        .collect()
}
