//! The place where the technician stands.

use std::rc::Rc;

use bench::Session;
use plant::Place;
use yew::prelude::*;

use super::acts::groups;
use super::offer::{Offer, Offers};
use super::point_card::PointCard;
use super::seen::Seen;
use crate::drill::detail::{Detail, has_detail};
use crate::drill::kit::VanShelves;
use crate::drill::known::Known;
use crate::glossary::{Marked, WordsHere};
use crate::store::{Msg, use_work};
use crate::text;

/// The world and what is known of it.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: Rc<Session>,
    /// What was perceived.
    pub known: Rc<Known>,
}

/// The panel beside the drawing; on small screens in its place.
#[component]
pub fn PlacePanel(props: &Props) -> Html {
    let work = use_work();
    let Props { session, known } = props;
    let units = work.desk.units;
    let Some(place) = work.desk.at else {
        return html! { <section class="place empty"><p>{ text::CHOOSE_PLACE }</p></section> };
    };
    let layout = session.home.plant.wiring.layout;
    let all = groups(place, session, known, units);
    let texts: Vec<AttrValue> = all.iter().flat_map(|group| &group.offers).map(Offer::label).collect();
    let back = Callback::from(move |_| work.dispatch(Msg::Go(None)));
    html! {
        <section class="place" aria-label={text::place_of(place, layout)} data-at={place.name()}>
            <header class="place-head">
                <h2 id="at-hand" tabindex="-1"><Marked text={text::place_of(place, layout)} /></h2>
                <button type="button" class="back" onclick={back} data-act="whole-drawing">
                    { text::WHOLE_DRAWING }
                </button>
            </header>
            if has_detail(place) {
                <Detail session={session.clone()} known={known.clone()} {place} />
                <PointCard session={session.clone()} {place} />
            }
            <div class="doing" key={place.name()}>
                <Seen known={known.clone()} {place} starts={session.job.starts_at} />
                { for all.into_iter().map(|group| html! {
                    <Offers title={group.title} offers={group.offers} caution={group.caution} pairs={group.pairs} />
                }) }
                <WordsHere {texts} />
                if place == Place::Van {
                    <VanShelves session={session.clone()} />
                }
            </div>
        </section>
    }
}
