//! The meter: a branch of the network for volts, a test current for ohms. It shows what a display shows.
//!
//! No noise: the same state reads the same. A meter of this class is good to about 1 % and a few digits
//! (common practice, no source); the simulated one is exact up to its last digit.

use plant::electrical::Bridge;
use plant::{Plant, Point};
use quantity::{Constant, Ohms, Seconds, Tag, Volts};

use super::turn::Turn;
use super::{Answered, prove, reach, senses};
use crate::action::MeterFunction;
use crate::person::Harm;
use crate::session::Technician;
use crate::shown::{Display, Fact, Refusal, Shown};

/// Input of the volts function.
pub const INPUT: Constant =
    Constant::new("meter input", 10e6, "ohm", Tag::Computed("the meter behind the readings of 1.6"));
/// Input of the low-impedance volts function.
pub const LOW_INPUT: Constant =
    Constant::new("low-impedance input", 3e3, "ohm", Tag::Published("support pages of two makers (6.12)"));
/// Both leads in series, with their tips.
pub const LEADS: Constant = Constant::new("leads", 0.3, "ohm", Tag::CommonPractice);
/// Top of the ohms ranges.
pub const MOST_OHMS: Constant = Constant::new("ohms range", 40e6, "ohm", Tag::CommonPractice);
/// Below this the continuity tone sounds.
pub const TONE: Constant = Constant::new("continuity tone", 30.0, "ohm", Tag::CommonPractice);
/// Insulation range.
pub const INSULATION: (Constant, Constant) = (
    Constant::new("insulation range, low", 0.01e6, "ohm", Tag::CommonPractice),
    Constant::new("insulation range, high", 1000e6, "ohm", Tag::CommonPractice),
);
/// Voltage from which the ohms function is upset.
const UPSET: Volts = Volts(1.0);
/// Voltage from which its fuse goes.
const BLOWS: Volts = Volts(50.0);

/// Rounds to a step of the display. Never a negative zero.
pub(super) fn to_digit(value: f64, step: f64) -> f64 {
    let steps = (value / step).round();
    // Dividing by a whole number keeps decimal steps tidy: 128 / 10 is 12.8, 128 * 0.1 is not.
    let per = (1.0 / step).round();
    let rounded = if per >= 1.0 && (per * step - 1.0).abs() < 1e-9 { steps / per } else { steps * step };
    rounded + 0.0
}

/// Rounds to four digits and no finer than `finest`, as an autoranging display does: 600.0, 6.000 k and on.
fn autorange(value: f64, finest: f64) -> f64 {
    let mut step = finest;
    while value.abs() >= step * 6000.0 && step < 1e9 {
        step *= 10.0;
    }
    to_digit(value, step)
}

/// A reading between two points.
pub(super) fn meter(
    turn: &mut Turn,
    function: MeterFunction,
    red: Point,
    black: Point,
    time: Seconds,
) -> Answered {
    reach::point(&turn.s, red)?;
    reach::point(&turn.s, black)?;
    if red == black {
        return Err(Refusal::SamePoint);
    }
    turn.pass(time);
    if senses::either_live(&turn.s.home.plant, red, black) {
        let protected = turn.s.me.gloves && turn.s.me.eyes;
        turn.facts.push(Fact::MeasuredLive { protected });
    }
    let display = display(&turn.s.home.plant, &turn.s.me, function, red, black);
    if !matches!(function, MeterFunction::Volts | MeterFunction::LowVolts) {
        unproved(turn, red, black);
    }
    if let Display::Live { volts } = display {
        turn.s.me.fuse_blown |= volts >= BLOWS;
        turn.harms.push(Harm::MeterOverloaded { volts });
    }
    prove::reading(turn, function, [red, black], &display);
    Ok(Shown::Meter { display })
}

/// What the display says.
fn display(plant: &Plant, me: &Technician, function: MeterFunction, a: Point, b: Point) -> Display {
    match function {
        MeterFunction::Volts => volts(plant, me, a, b, INPUT.get()),
        MeterFunction::LowVolts => volts(plant, me, a, b, LOW_INPUT.get()),
        MeterFunction::Ohms | MeterFunction::Continuity | MeterFunction::Insulation => {
            // A broken lead or a blown fuse passes nothing, neither its own current nor the circuit's.
            let through = !me.lead_broken && !me.fuse_blown;
            let met = if through { senses::firm(plant, a, b) } else { Volts(0.0) };
            if met >= UPSET {
                return Display::Live { volts: Volts(to_digit(met.get(), 0.1)) };
            }
            let path = if through { plant.resistance(a, b) } else { None };
            resistance(me, function, path)
        }
    }
}

fn volts(plant: &Plant, me: &Technician, a: Point, b: Point, input: f64) -> Display {
    if me.lead_broken {
        return Display::Volts { volts: Volts(0.0) };
    }
    let live = plant.energise(&[Bridge::ohms(a, b, Ohms(input))]);
    Display::Volts { volts: Volts(autorange(live.volts(a, b).get().abs(), 0.1)) }
}

fn resistance(me: &Technician, function: MeterFunction, path: Option<Ohms>) -> Display {
    let leads = if me.leads_zeroed { 0.0 } else { LEADS.get() };
    let ohms = path.map(|p| p.get() + leads);
    match (function, ohms) {
        (MeterFunction::Continuity, ohms) => Display::Tone { on: ohms.is_some_and(|r| r < TONE.get()) },
        (MeterFunction::Insulation, Some(r)) if r <= INSULATION.1.get() => {
            Display::Insulation { ohms: Ohms(autorange(r, INSULATION.0.get())) }
        }
        (MeterFunction::Ohms, Some(r)) if r <= MOST_OHMS.get() => {
            Display::Ohms { ohms: Ohms(autorange(r, 0.1)) }
        }
        _ => Display::Over,
    }
}

/// Ohms on a circuit not proved dead; from one ground to another is no such circuit.
fn unproved(turn: &mut Turn, a: Point, b: Point) {
    if senses::ground(a).is_some() && senses::ground(b).is_some() {
        return;
    }
    let bare = |p: Point| senses::ground(p).is_none() && !prove::is_proved(&turn.s, p);
    if turn.s.me.proved_dead.is_some() && !(bare(a) && bare(b)) {
        return;
    }
    let live = senses::either_live(&turn.s.home.plant, a, b);
    turn.facts.push(Fact::OhmsUnproved { live });
}

/// Holds the leads together: a broken lead cannot be zeroed, and says so.
pub(super) fn zero(turn: &mut Turn, time: Seconds) -> Answered {
    turn.pass(time);
    if turn.s.me.lead_broken || turn.s.me.fuse_blown {
        return Ok(Shown::Meter { display: Display::Over });
    }
    turn.s.me.leads_zeroed = true;
    Ok(Shown::Meter { display: Display::Ohms { ohms: Ohms(0.0) } })
}

/// Takes the spare leads and a fresh fuse. The meter has to be proved anew.
pub(super) fn spare(turn: &mut Turn, time: Seconds) -> Answered {
    turn.pass(time);
    let me = &mut turn.s.me;
    me.lead_broken = false;
    me.fuse_blown = false;
    me.leads_zeroed = false;
    me.meter_proved = None;
    prove::forget(me);
    Ok(Shown::Done)
}
