//! A box in the line between breaker and heater: a fused switch, a timer's contacts, a utility's relay. An off-peak
//! heater has a relay of the utility in its second cable besides, sealed, with no screws that anybody reaches.

use quantity::{Amps, Constant, Metres, Seconds, Tag};
use serde::{Deserialize, Serialize};

use crate::named::named;
use crate::parts::Contact;
use crate::{Plant, Wire};

quantity::constants! {
    /// Hours in which a timer keeps a heater off: from, and for how long.
    const NIGHT: Constant<(Seconds, Seconds)> = Constant::of(
        "hours in which a timer keeps a heater off: from, for",
        (Seconds::hours(21.0), Seconds::hours(8.0)),
        Tag::Invented("off while people sleep"),
    );
    /// Hours in which a utility's relay keeps a heater off.
    const PEAK: Constant<(Seconds, Seconds)> = Constant::of(
        "hours in which a utility keeps a heater off: from, for",
        (Seconds::hours(17.0), Seconds::hours(3.0)),
        Tag::Invented("the early evening, when all the street cooks"),
    );
    /// Hours in which a utility keeps an off-peak circuit off.
    const DEAR: Constant<(Seconds, Seconds)> = Constant::of(
        "hours in which a utility keeps an off-peak circuit off: from, for",
        (Seconds::hours(14.0), Seconds::hours(6.0)),
        Tag::Invented("afternoon and early evening, when current is dear"),
    );
    /// A day.
    const DAY: Constant<Seconds> = Constant::of("a day", Seconds::days(1.0), Tag::Published("SI brochure, 9th edition, table 8"));
}

named! {
    /// What stands in the line.
    BoxKind {
        /// A switch with two blades and two fuses; its handle can be locked off.
        FusedSwitch = "fused-switch",
        /// Contacts of a time switch: a control, never an isolation.
        Timer = "timer",
        /// Contacts of the utility's load control: a control, never an isolation.
        UtilityRelay = "utility-relay",
    }
}

/// The hours a timer or a utility's relay keeps.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Hours {
    /// Off from this time of day.
    pub off_from: Seconds,
    /// For so long.
    pub off_for: Seconds,
    /// How far its clock runs ahead of the true time.
    pub ahead: Seconds,
    /// What the hours said last: on.
    pub on: bool,
}

impl Hours {
    const fn of((off_from, off_for): (Seconds, Seconds)) -> Self {
        Self { off_from, off_for, ahead: Seconds(0.0), on: true }
    }

    /// Time since the hours last went off, by its own clock.
    fn since_off(&self, now: Seconds) -> f64 {
        let day = DAY.get().get();
        let past = (now.get() + self.ahead.get() - self.off_from.get()) % day;
        if past < 0.0 { past + day } else { past }
    }

    /// Whether they say on at a time: seconds since some midnight.
    pub fn say(&self, now: Seconds) -> bool {
        self.since_off(now) >= self.off_for.get()
    }

    /// What its clock shows.
    pub fn shows(&self, now: Seconds) -> Seconds {
        let day = DAY.get().get();
        let shown = (now.get() + self.ahead.get()) % day;
        Seconds(if shown < 0.0 { shown + day } else { shown })
    }

    /// How long until they next change.
    pub fn until(&self, now: Seconds) -> Seconds {
        let past = self.since_off(now);
        let off_for = self.off_for.get();
        Seconds(if past < off_for { off_for - past } else { DAY.get().get() - past })
    }
}

/// The box and its contacts, X1 to X3 and X2 to X4.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct InLineBox {
    /// What it is.
    pub kind: BoxKind,
    /// Handle or contacts closed.
    pub closed: bool,
    /// Blades or contacts, one to a leg.
    pub poles: [Contact; 2],
    /// Links of its fuses, in series with the blades; always whole where it has none.
    pub fuses: [Contact; 2],
    /// Rating of its fuses.
    pub rating: Amps,
    /// Heat stored in each link, as a fraction of what melts it.
    pub heat: [f64; 2],
    /// Fuses pulled out of their clips.
    pub pulled: [bool; 2],
    /// The hours it keeps, where it keeps any.
    pub hours: Option<Hours>,
    /// Somebody's lock holds it open.
    pub locked: bool,
    /// A tag hangs on it.
    pub tagged: bool,
    /// Its coil no longer pulls the contacts in.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub idle: bool,
}

impl InLineBox {
    /// A sound one, closed.
    pub const fn sound(kind: BoxKind, rating: Amps) -> Self {
        let hours = match kind {
            BoxKind::FusedSwitch => None,
            BoxKind::Timer => Some(Hours::of(NIGHT.get())),
            BoxKind::UtilityRelay => Some(Hours::of(PEAK.get())),
        };
        Self {
            kind,
            closed: true,
            poles: [Contact::Sound; 2],
            fuses: [Contact::Sound; 2],
            rating,
            heat: [0.0; 2],
            pulled: [false; 2],
            hours,
            locked: false,
            tagged: false,
            idle: false,
        }
    }

    /// A sound relay of the utility in an off-peak cable.
    pub const fn off_peak(rating: Amps) -> Self {
        Self { hours: Some(Hours::of(DEAR.get())), ..Self::sound(BoxKind::UtilityRelay, rating) }
    }

    /// Whether it has fuses.
    pub const fn is_fused(&self) -> bool {
        matches!(self.kind, BoxKind::FusedSwitch)
    }

    /// Whether it isolates what lies behind it: an open switch under lock and tag (trade sheet 6.8: control devices
    /// are never isolation, published).
    pub fn isolates(&self) -> bool {
        self.is_fused() && !self.closed && self.locked && self.tagged
    }

    /// The link of a leg as the circuit meets it: one that is pulled is not there.
    pub fn link(&self, leg: usize) -> Contact {
        let link = self.fuses.get(leg).copied().unwrap_or(Contact::Open);
        if self.pulled.get(leg).copied().unwrap_or(true) { Contact::Open } else { link }
    }

    /// Whether it was left open though its hours, if it keeps any, say on.
    pub fn open_amiss(&self) -> bool {
        !self.closed && !self.idle && self.hours.is_none_or(|hours| hours.on)
    }

    /// Whether a leg's contact makes.
    pub fn makes(&self, leg: usize) -> bool {
        self.closed && self.poles.get(leg).is_some_and(|pole| *pole != Contact::Open)
    }

    /// Follows its hours at a time. A hand may have moved the contacts meanwhile: only a change of the hours moves
    /// them back. Returns whether they moved.
    pub fn keep_hours(&mut self, now: Seconds) -> bool {
        let Some(hours) = &mut self.hours else { return false };
        let say = hours.say(now);
        if say == hours.on {
            return false;
        }
        hours.on = say;
        let closed = say && !self.idle;
        let moved = self.closed != closed;
        self.closed = closed;
        moved
    }

    /// Sets its clock right. The contacts go where the hours now say.
    pub fn set_clock(&mut self, now: Seconds) {
        if let Some(hours) = &mut self.hours {
            hours.ahead = Seconds(0.0);
            hours.on = hours.say(now);
            self.closed = hours.on && !self.idle;
        }
    }
}

impl Plant {
    /// What stands in the heater's lines: a box in the first, a relay in an off-peak cable.
    pub fn boxes(&self) -> impl Iterator<Item = &InLineBox> {
        self.in_line.iter().chain(&self.off_peak)
    }

    /// The same, to be changed.
    pub fn boxes_mut(&mut self) -> impl Iterator<Item = &mut InLineBox> {
        self.in_line.iter_mut().chain(&mut self.off_peak)
    }

    /// Puts a box in the line: the branch cable ends in it and a whip goes on to the heater. Together they are as
    /// long as the cable was, of the same gauge and metal.
    pub fn put_in_line(&mut self, fitted: InLineBox) {
        let wiring = &mut self.wiring;
        for (run, [up, on]) in
            [(Wire::CableA, [Wire::BoxA, Wire::WhipA]), (Wire::CableB, [Wire::BoxB, Wire::WhipB])]
        {
            let whole = wiring.length(run).get();
            let conductor = *wiring.conductor(run);
            let share = up.usual_length().get() / (up.usual_length().get() + on.usual_length().get());
            *wiring.length_mut(up) = Metres(whole * share);
            *wiring.length_mut(on) = Metres(whole * (1.0 - share));
            [up, on].iter().for_each(|wire| *wiring.conductor_mut(*wire) = conductor);
        }
        wiring.boxed = true;
        self.in_line = Some(fitted);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Happening;
    use crate::electrical::fixtures::plant;

    fn at(hours: f64) -> Seconds {
        Seconds::hours(hours)
    }

    #[test]
    fn hours_are_kept_past_midnight_and_by_a_clock_that_is_out() {
        let mut hours = InLineBox::sound(BoxKind::Timer, Amps(30.0)).hours.unwrap();
        for (now, on) in
            [(20.9, true), (21.1, false), (23.9, false), (24.1, false), (28.9, false), (29.1, true)]
        {
            assert_eq!(hours.say(at(now)), on, "{now}");
        }
        assert!((hours.until(at(20.0)).to_minutes() - 60.0).abs() < 1e-9);
        assert!((hours.until(at(22.0)).to_minutes() - 420.0).abs() < 1e-9);
        hours.ahead = Seconds::hours(-10.0);
        assert!(!hours.say(at(8.0)) && hours.say(at(23.0)));
        assert!((hours.shows(at(8.0)).to_minutes() - 22.0 * 60.0).abs() < 1e-9);
    }

    /// A day of a house with a timer: off at nine in the evening, on at five in the morning, to the second or so.
    #[test]
    fn a_day_with_a_timer() {
        let mut plant = plant();
        plant.put_in_line(InLineBox::sound(BoxKind::Timer, Amps(30.0)));
        plant.clock = Seconds(0.0);
        let moved: Vec<(f64, bool)> = plant
            .advance(Seconds::days(1.0))
            .into_iter()
            .filter_map(|(at, what)| match what {
                Happening::LineSwitched { closed } => Some((at.get() / 3600.0, closed)),
                _ => None,
            })
            .collect();
        let [(first, false), (second, true), (third, false)] = moved[..] else { panic!("{moved:?}") };
        assert!(first < 0.001 && (second - 5.0).abs() < 0.001 && (third - 21.0).abs() < 0.001, "{moved:?}");
    }
}
