//! The meter: a branch of the network for volts, a test current for ohms, a near short in its amperes jack.
//! It shows what a display shows ([`crate::instrument`]), with the kit's own error and no noise: the same state
//! reads the same.

use plant::electrical::Bridge;
use plant::{Plant, Point};
use quantity::{Amps, Constant, Ohms, Seconds, Tag, Volts};

use super::turn::Turn;
use super::{Answered, board, prove, reach, senses};
use crate::action::{Jack, MeterFunction};
use crate::instrument::{Kit, insulation, low_impedance, multimeter as dmm};
use crate::person::Harm;
use crate::session::Technician;
use crate::shown::{Display, Fact, Noticed, Refusal, Shown};

quantity::constants! {
    /// Impedance of a receptacle's circuit back to the service.
    const RECEPTACLE: Constant<Ohms> = Constant::of("impedance of a receptacle's circuit back to the service", Ohms(0.4), Tag::CommonPractice);
}

/// The meter as it stands at one step.
struct Meter<'a> {
    me: &'a Technician,
    kit: &'a Kit,
    /// The leads pass something.
    passes: bool,
}

impl<'a> Meter<'a> {
    fn of(turn: &'a Turn) -> Self {
        let kit = &turn.s.job.kit;
        Self { me: &turn.s.me, kit, passes: turn.s.me.lead_passes(kit, turn.step) }
    }

    /// The battery is flat.
    fn dark(&self) -> bool {
        self.me.battery.get() <= 0.0
    }

    /// What a failing battery makes of a reading.
    fn factor(&self) -> f64 {
        dmm::battery_factor(self.me.battery.get())
    }

    fn volts(&self, volts: f64, function: MeterFunction) -> Display {
        let scale = if function == MeterFunction::LowVolts { dmm::LOW_VOLTS } else { dmm::AC_VOLTS };
        match scale.read(volts * self.factor(), self.kit.volts) {
            Some(volts) => Display::Volts { volts: Volts(volts) },
            None => Display::Over,
        }
    }

    /// What the display says when nothing comes in through the leads.
    const fn nothing(function: MeterFunction) -> Display {
        match function {
            MeterFunction::Volts | MeterFunction::LowVolts => Display::Volts { volts: Volts(0.0) },
            MeterFunction::Amps => Display::Amps { amps: Amps(0.0) },
            MeterFunction::Continuity => Display::Tone { on: false },
            MeterFunction::Ohms | MeterFunction::Insulation => Display::Over,
        }
    }

    /// A reading with the red lead in the volts jack.
    fn display(&self, plant: &Plant, function: MeterFunction, a: Point, b: Point) -> Display {
        if self.dark() {
            return Display::Blank;
        }
        let across = |input: f64, capacitance: f64| {
            let bridge = Bridge { a, b, resistance: Ohms(input), capacitance };
            plant.across(bridge).get()
        };
        match function {
            _ if !self.passes => Self::nothing(function),
            MeterFunction::Volts => {
                self.volts(across(dmm::INPUT.get(), dmm::INPUT_CAPACITANCE.get()), function)
            }
            MeterFunction::LowVolts => self.volts(across(low_impedance::INPUT.get(), 0.0), function),
            MeterFunction::Amps => Self::nothing(function),
            // A blown fuse passes nothing, neither the meter's own current nor the circuit's.
            _ if self.me.fuse_blown => Self::nothing(function),
            MeterFunction::Ohms | MeterFunction::Continuity | MeterFunction::Insulation => {
                let met = senses::firm(plant, a, b).get();
                if met >= dmm::UPSET.get() {
                    let shown = dmm::AC_VOLTS.read(met, self.kit.volts).unwrap_or(met);
                    return Display::Live { volts: Volts(shown) };
                }
                self.resistance(function, plant.resistance(a, b))
            }
        }
    }

    fn resistance(&self, function: MeterFunction, path: Option<Ohms>) -> Display {
        let leads = if self.me.leads_zeroed { 0.0 } else { dmm::LEADS.get() };
        let ohms = path.map(|p| (p.get() + leads) * self.factor());
        let shown = match (function, ohms) {
            (MeterFunction::Continuity, r) => {
                return Display::Tone { on: r.is_some_and(|r| r < dmm::TONE.get()) };
            }
            (MeterFunction::Insulation, Some(r)) => {
                insulation::OHMS.read(r, self.kit.insulation).map(|r| Display::Insulation { ohms: Ohms(r) })
            }
            (_, Some(r)) => dmm::OHMS.read(r, self.kit.ohms).map(|r| Display::Ohms { ohms: Ohms(r) }),
            (_, None) => None,
        };
        shown.unwrap_or(Display::Over)
    }
}

/// Ohms of something held in the hand, leads on its ends.
pub(super) fn loose(turn: &mut Turn, path: Option<Ohms>, time: Seconds) -> Display {
    let meter = Meter::of(turn);
    let open = !meter.passes || meter.me.fuse_blown || meter.me.jack == Jack::Amps;
    let display = match () {
        () if meter.dark() => Display::Blank,
        () if open => Display::Over,
        () => meter.resistance(MeterFunction::Ohms, path),
    };
    drain(turn, time);
    display
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
        let protected = turn.s.me.protected();
        turn.facts.push(Fact::MeasuredLive { protected });
    }
    let display = match turn.s.me.jack {
        Jack::Volts => Meter::of(turn).display(&turn.s.home.plant, function, red, black),
        Jack::Amps => through(turn, function, red, black),
    };
    if !matches!(function, MeterFunction::Volts | MeterFunction::LowVolts | MeterFunction::Amps) {
        unproved(turn, red, black);
    }
    if let Display::Live { volts } = display {
        turn.s.me.fuse_blown |= volts.get() >= dmm::BLOWS.get();
        turn.harms.push(Harm::MeterOverloaded { volts });
    }
    if function == MeterFunction::Insulation && matches!(display, Display::Insulation { .. } | Display::Over)
    {
        board::stress(turn, red, black);
    }
    drain(turn, time);
    prove::reading(turn, function, [red, black], &display);
    Ok(Shown::Meter { display })
}

/// A reading with the red lead in the amperes jack: the meter joins the two points, whatever the dial says.
fn through(turn: &mut Turn, function: MeterFunction, red: Point, black: Point) -> Display {
    let meter = Meter::of(turn);
    let joins = meter.passes && !meter.me.fuse_blown;
    let path = Ohms(dmm::LEADS.get() + dmm::SHUNT.get());
    let current = if joins {
        turn.s.home.plant.energise(&[Bridge::ohms(red, black, path)]).bridge_amps(0)
    } else {
        Amps(0.0)
    };
    let dark = meter.dark();
    if current.get() > dmm::FUSE.get() {
        let volts = senses::firm(&turn.s.home.plant, red, black);
        blow(turn, volts, current);
        turn.noticed.push(Noticed::Flash { at: red });
        return if dark { Display::Blank } else { Meter::nothing(function) };
    }
    let meter = Meter::of(turn);
    match function {
        _ if dark => Display::Blank,
        MeterFunction::Amps => match dmm::AMPS.read(current.get() * meter.factor(), meter.kit.amps) {
            Some(amps) => Display::Amps { amps: Amps(amps) },
            None => Display::Over,
        },
        _ => Meter::nothing(function),
    }
}

/// The fuse of the amperes jack opens on a short through the meter.
fn blow(turn: &mut Turn, volts: Volts, current: Amps) {
    let size = current.get();
    let opens = Seconds(dmm::FUSE_I2T.get() / (size * size));
    let protected = turn.s.me.protected();
    turn.s.me.fuse_blown = true;
    turn.harms.push(Harm::arc(volts, current, opens, protected));
    turn.harms.push(Harm::MeterOverloaded { volts });
}

/// Reads a source known to be live. `stiff` says that it can drive a fault current.
pub(super) fn known(turn: &mut Turn, source: Volts, stiff: bool, time: Seconds) -> Display {
    let meter = Meter::of(turn);
    let (dark, passes) = (meter.dark(), meter.passes);
    let display = match meter.me.jack {
        _ if dark => Display::Blank,
        Jack::Volts if passes => meter.volts(source.get(), MeterFunction::Volts),
        Jack::Volts | Jack::Amps => Meter::nothing(MeterFunction::Volts),
    };
    let shorts = turn.s.me.jack == Jack::Amps && passes && !turn.s.me.fuse_blown;
    if shorts && stiff {
        let path = dmm::LEADS.get() + dmm::SHUNT.get() + RECEPTACLE.get().get();
        blow(turn, source, Amps(source.get() / path));
    }
    drain(turn, time);
    display
}

/// Takes a use out of the battery.
fn drain(turn: &mut Turn, time: Seconds) {
    turn.s.me.battery = Seconds((turn.s.me.battery.get() - time.get()).max(0.0));
    if turn.s.me.low_battery() {
        turn.noticed.push(Noticed::LowBattery);
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
    let point = if senses::ground(a).is_none() { a } else { b };
    let missing = prove::missing(&turn.s, point);
    turn.facts.push(Fact::OhmsUnproved { live, missing });
}

/// Holds the leads together: a broken lead cannot be zeroed, and says so.
pub(super) fn zero(turn: &mut Turn, time: Seconds) -> Answered {
    turn.pass(time);
    let meter = Meter::of(turn);
    let open = !meter.passes || meter.me.fuse_blown || meter.me.jack == Jack::Amps;
    let display = match () {
        () if meter.dark() => Display::Blank,
        () if open => Display::Over,
        () => Display::Ohms { ohms: Ohms(0.0) },
    };
    turn.s.me.leads_zeroed |= matches!(display, Display::Ohms { .. });
    drain(turn, time);
    Ok(Shown::Meter { display })
}

/// Takes the spare leads and a fresh fuse. The meter has to be proved anew.
pub(super) fn spare(turn: &mut Turn, time: Seconds) -> Answered {
    turn.pass(time);
    let me = &mut turn.s.me;
    me.lead_broken = false;
    me.lead_worn = false;
    me.fuse_blown = false;
    me.leads_zeroed = false;
    me.jack = Jack::Volts;
    opened(me);
    Ok(Shown::Done)
}

/// Puts the red lead into a jack.
pub(super) fn jack(turn: &mut Turn, jack: Jack, time: Seconds) -> Answered {
    if turn.s.me.jack == jack {
        return Err(Refusal::AlreadySo);
    }
    turn.pass(time);
    turn.s.me.jack = jack;
    Ok(Shown::Done)
}

/// Puts in a fresh battery. The meter has to be proved anew.
pub(super) fn change_battery(turn: &mut Turn, time: Seconds) -> Answered {
    turn.pass(time);
    turn.s.me.battery = Seconds(dmm::BATTERY.get());
    opened(&mut turn.s.me);
    Ok(Shown::Done)
}

/// The meter was opened: it is not the one that was proved.
fn opened(me: &mut Technician) {
    me.meter_proved = None;
    prove::forget(me);
}
