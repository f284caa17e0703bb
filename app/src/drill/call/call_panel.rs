//! The customer's column.

use std::rc::Rc;

use plant::Place;
use yew::prelude::*;

use super::plate::PlateCard;
use super::questions::Questions;
use super::said::Said;
use super::tell::Tell;
use crate::drill::known::Known;
use crate::said::use_speech;
use crate::store::{Rest, World};
use crate::text;

/// The world and what is known of it.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// What was perceived.
    pub known: Rc<Known>,
}

/// The column.
#[component]
pub fn Call(props: &Props) -> Html {
    // What there is to tell is in the rest of the book.
    let telling = use_speech().rest != Rest::Coming;
    html! {
        <section class="call" id="customer" tabindex="-1" aria-label={text::place(Place::Customer)}>
            <Said session={props.session.clone()} />
            <Questions session={props.session.clone()} />
            <PlateCard known={props.known.clone()} />
            if telling {
                <Tell session={props.session.clone()} />
            }
        </section>
    }
}
