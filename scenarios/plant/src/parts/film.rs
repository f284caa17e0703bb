//! Water on a track of char between a live screw and the shell.

use quantity::{Constant, Ohms, Tag};
use serde::{Deserialize, Serialize};

use crate::parts::Level;
use crate::points::Screw;
use crate::state::Plant;

quantity::constants! {
    /// The same track dry.
    const DRY_TRACK: Constant<Ohms> =
        Constant::of("dry track of char", Ohms(5e6), Tag::Model("megohms, risen once dried"));
}

/// The track of one compartment, where there is one.
#[derive(Clone, Copy, PartialEq, Debug, Default, Serialize, Deserialize)]
pub struct Film {
    /// Its resistance while wet.
    pub track: Option<Ohms>,
    /// It was wiped dry, and nothing has wetted it since.
    pub dried: bool,
}

impl Film {
    /// The screw that the track of a compartment leads from.
    pub const fn screw(level: Level) -> Screw {
        match level {
            Level::Upper => Screw::H4,
            Level::Lower => Screw::D1,
        }
    }
}

impl Plant {
    /// The wet track of a compartment, while it conducts: the gasket beside it leaks, or nobody dried it.
    pub fn film(&self, level: Level) -> Option<Ohms> {
        let film = self.films.get(level.index())?;
        let leaks = self.elements.get(level.index()).is_some_and(|e| e.gasket.leak_diameter > 0.0);
        film.track.filter(|_| !film.dried || (leaks && self.wetted(level)))
    }

    /// What the track lets through as it is, wet or dry.
    pub(crate) fn track(&self, level: Level) -> Option<Ohms> {
        let there = self.films.get(level.index())?.track.is_some();
        there.then(|| self.film(level).unwrap_or(DRY_TRACK.get()))
    }

    /// Wipes a compartment dry. What still leaks wets it again.
    pub fn dry(&mut self, level: Level) {
        if let Some(film) = self.films.get_mut(level.index()) {
            film.dried = true;
        }
    }
}
