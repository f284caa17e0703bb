//! What is found behind a cover: an element's stamp, browned controls, light between a control and the shell.

use plant::{ContactAt, Level, Place, Plant};
use quantity::{Constant, Tag};

use super::reach;
use crate::session::Session;
use crate::shown::Shown;
use crate::sight::Sight;

quantity::constants! {
    /// A control that touches with less of its plate is seen to stand off.
    const FLAT: Constant = Constant::new("share of its plate with which a control is seen to stand off", 0.5, "1", Tag::Model("judged by eye"));
}

/// Where a contact is.
pub(super) const fn contact_place(at: ContactAt) -> Place {
    match at {
        ContactAt::LowerCold => Place::LowerCompartment,
        ContactAt::UpperCold | ContactAt::UpperHot | ContactAt::LimitOne | ContactAt::LimitTwo => {
            Place::UpperCompartment
        }
    }
}

/// The stamp on an element's head, and how that is held.
pub(super) fn stamp(plant: &Plant, level: Level) -> Shown {
    let [upper, lower] = plant.elements;
    let of = if level == Level::Upper { upper } else { lower };
    Shown::Stamp { level, rating: of.stamp, length: of.length, mount: plant.plate.mount }
}

/// What is seen of the controls of one compartment.
pub(super) fn controls(session: &Session, level: Level) -> Vec<Sight> {
    let mut sights = browned(session, level);
    sights.extend(off_the_shell(session, level));
    sights
}

/// Controls browned over a contact that ran hot. A board's relays are closed in.
fn browned(session: &Session, level: Level) -> Vec<Sight> {
    let plant = &session.home.plant;
    let place = match level {
        Level::Upper => Place::UpperCompartment,
        Level::Lower => Place::LowerCompartment,
    };
    let limit = |at: ContactAt| matches!(at, ContactAt::LimitOne | ContactAt::LimitTwo);
    let there =
        |at: &ContactAt| contact_place(*at) == place && (limit(*at) || plant.plate.layout.has_thermostats());
    let hot = ContactAt::ALL.iter().copied().filter(there).filter(|at| plant.contact(*at).1.charred);
    hot.map(|at| Sight::Browned { at }).collect()
}

/// Light shows between a control and the shell. A board has sensors in the thermostats' place.
fn off_the_shell(session: &Session, level: Level) -> Vec<Sight> {
    let plant = &session.home.plant;
    let mut sights = Vec::new();
    if !plant.plate.has(level) || reach::control(session, level).is_err() {
        return sights;
    }
    let flat = plant.thermostats.get(level.index()).is_none_or(|t| t.seated && t.grip >= FLAT.get());
    if plant.plate.layout.has_thermostats() && !flat {
        sights.push(Sight::OffTheShell { level });
    }
    let limit = match level {
        Level::Upper => Some(&plant.limit),
        Level::Lower => plant.lower_limit.as_ref(),
    };
    if limit.is_some_and(|l| !l.seated || l.grip < FLAT.get()) {
        sights.push(Sight::LimitOffTheShell { level });
    }
    sights
}
