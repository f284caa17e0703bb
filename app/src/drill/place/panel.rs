//! The place where the technician stands.

use std::rc::Rc;

use plant::Place;
use yew::prelude::*;

use super::acts::{Group, groups};
use super::go::turn;
use super::offer::{Offer, Offers};
use super::point_card::PointCard;
use super::seen::Seen;
use crate::drill::detail::{Detail, has_detail};
use crate::drill::kit::VanShelves;
use crate::drill::known::Known;
use crate::drill::sticker::Sticker;
use crate::glossary::{Marked, WordsHere};
use crate::said::use_units;
use crate::shell::use_share;
use crate::store::{Msg, Tab, World, use_work};
use crate::text;

/// Groups of acts drawn in one turn.
const EACH_TURN: usize = 2;

/// The world and what is known of it.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// What was perceived.
    pub known: Rc<Known>,
}

/// The panel beside the drawing; on small screens in its place.
#[component]
pub fn PlacePanel(props: &Props) -> Html {
    let work = use_work();
    let Props { session, known } = props;
    let Some(place) = work.desk.at else {
        return html! { <section class="place empty"><p>{ text::CHOOSE_PLACE }</p></section> };
    };
    let to_meter = {
        let work = work.clone();
        Callback::from(move |event: MouseEvent| {
            event.prevent_default();
            turn(&work, Tab::Meter, "meter");
        })
    };
    let back = Callback::from(move |_| work.dispatch(Msg::Go(None)));
    html! {
        <section class="place" aria-label={text::place(place)} data-at={place.name()}>
            <header class="place-head">
                <h2 id="at-hand" tabindex="-1"><Marked text={text::place(place)} /></h2>
                <button type="button" class="back" onclick={back} data-act="whole-drawing">
                    { text::WHOLE_DRAWING }
                </button>
            </header>
            if has_detail(place) {
                <Detail key={place.name()} session={session.clone()} known={known.clone()} {place} />
                <a class="skip" href="#meter" onclick={to_meter}>{ text::TO_METER }</a>
                <PointCard session={session.clone()} {place} />
            }
            <Doing key={place.name()} session={session.clone()} known={known.clone()} {place} />
        </section>
    }
}

/// What is done at a place.
#[derive(Properties, PartialEq)]
struct DoingProps {
    session: World,
    known: Rc<Known>,
    place: Place,
}

/// What was seen there, and everything that can be done there, a few groups a turn. Each keeps its
/// key, so that none turns into another under a finger when more are drawn.
#[component]
fn Doing(props: &DoingProps) -> Html {
    let DoingProps { session, known, place } = props;
    let wiring = &session.home.plant.wiring;
    let groups = groups(*place, session, known, use_units());
    let share = use_share(groups.len() + 1, EACH_TURN);
    // The terms among the buttons come last, and the shelves of the van.
    let last = share > groups.len();
    let texts =
        last.then(|| groups.iter().flat_map(|group| &group.offers).map(Offer::label).collect::<Vec<_>>());
    // A list of its own: among other things beside it the keys would count for nothing.
    let group = |(at, group): (usize, Group)| {
        html! { <Offers key={at} title={group.title} offers={group.offers} caution={group.caution} pairs={group.pairs} /> }
    };
    let groups: Html = groups.into_iter().take(share).enumerate().map(group).collect();
    html! {
        <div class="doing">
            <Seen known={known.clone()} place={*place} starts={session.job.starts_at} />
            if known.diagram && *place == Place::UpperCompartment {
                <Sticker layout={wiring.layout} hot_neutral={wiring.hot_neutral} />
            }
            { groups }
            if let Some(texts) = texts {
                <WordsHere {texts} />
            }
            if last && *place == Place::Van {
                <VanShelves session={session.clone()} />
            }
        </div>
    }
}
