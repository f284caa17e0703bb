//! Proving dead, kept as facts: nothing here holds anybody back.
//!
//! Own lock and tag on every breaker that truly feeds the heater, household told, meter proved on a known
//! source, leg to leg, each leg and each screw that will be touched to a ground that was itself proved,
//! meter proved again (trade sheet 6.8, 6.9 and 10.1).

use plant::{Plant, Point, Screw};
use quantity::{Seconds, Volts};

use super::turn::Turn;
use super::{Answered, senses};
use crate::action::{KnownSource, MeterFunction};
use crate::session::{Session, Technician};
use crate::shown::{Display, Fact, Shown};

/// A display up to this counts as no voltage.
const DEAD: Volts = Volts(0.5);
/// A leg to a sound ground reads between these (trade sheet 6.14, from memory: 110 to 126 V).
const LEG: (Volts, Volts) = (Volts(100.0), Volts(135.0));
/// Two grounds with at most this between them are one (common practice, no source).
const BONDED: f64 = 1.0;
/// Pairs that show leg to leg.
const PAIRS: [[Screw; 2]; 3] = [[Screw::H1, Screw::H3], [Screw::Ja, Screw::Jb], [Screw::B1, Screw::B2]];

/// Everything that feeds the heater is off, with the technician's own lock and tag.
fn locked_out(plant: &Plant) -> bool {
    plant
        .panel
        .breakers
        .iter()
        .filter(|b| senses::feeds_heater(b))
        .all(|b| b.handle != plant::Handle::On && b.locked && b.tagged)
}

/// Power came back, a lock came off, or the meter failed: what was proved is proved no more.
pub(super) fn forget(me: &mut Technician) {
    me.read_dead.clear();
    me.legs_dead = None;
    me.proved_dead = None;
}

/// A point was proved dead: the procedure is complete and the meter was proved again after this point.
pub(super) fn is_proved(session: &Session, point: Point) -> bool {
    let me = &session.me;
    let Some(again) = me.meter_proved.filter(|_| me.proved_dead.is_some()) else { return false };
    let names = [Some(senses::metal(&session.home.plant, point)), home(point), Some(point)];
    names.into_iter().flatten().any(|name| me.read_dead.get(&name).is_some_and(|step| *step < again))
}

/// A lifted wire end was read while it was on its screw.
fn home(point: Point) -> Option<Point> {
    match point {
        Point::End(end) => Some(Point::Screw(end.home())),
        Point::Screw(_) => None,
    }
}

/// Takes a reading into account.
pub(super) fn reading(turn: &mut Turn, function: MeterFunction, points: [Point; 2], display: &Display) {
    let plant = &turn.s.home.plant;
    let points = points.map(|p| senses::metal(plant, p));
    match (function, *display) {
        (MeterFunction::Volts | MeterFunction::LowVolts, Display::Volts { volts }) => {
            if (LEG.0..=LEG.1).contains(&volts) {
                leg_read(turn, points);
            } else if volts <= DEAD {
                dead_read(turn, points);
            }
        }
        (MeterFunction::Ohms, Display::Ohms { ohms }) if ohms.get() <= BONDED => bonded(turn, points),
        (MeterFunction::Continuity, Display::Tone { on: true }) => bonded(turn, points),
        _ => {}
    }
}

fn prove_ground(turn: &mut Turn, screw: Screw) {
    if turn.s.me.grounds.insert(screw) {
        turn.facts.push(Fact::GroundProved { on: screw });
    }
}

/// A live leg against a ground proves the ground.
fn leg_read(turn: &mut Turn, points: [Point; 2]) {
    match points.map(senses::ground) {
        [Some(screw), None] | [None, Some(screw)] => prove_ground(turn, screw),
        _ => {}
    }
}

/// Continuity to the panel's ground bar, or to the bonded pipe, proves a ground.
fn bonded(turn: &mut Turn, points: [Point; 2]) {
    let [Some(a), Some(b)] = points.map(senses::ground) else { return };
    let good = |s: Screw| matches!(s, Screw::G | Screw::Pipe) || turn.s.me.grounds.contains(&s);
    if a != b && (good(a) || good(b)) {
        prove_ground(turn, a);
        prove_ground(turn, b);
    }
}

/// 0 V counts once everything is locked, the people know, and the meter was proved.
fn dead_read(turn: &mut Turn, [a, b]: [Point; 2]) {
    let me = &turn.s.me;
    if me.meter_proved.is_none() || !me.household_told || !locked_out(&turn.s.home.plant) {
        return;
    }
    let step = turn.step;
    if PAIRS.iter().any(|[x, y]| {
        let pair = (Point::Screw(*x), Point::Screw(*y));
        pair == (a, b) || pair == (b, a)
    }) {
        turn.s.me.legs_dead = Some(step);
        return;
    }
    let point = match (senses::ground(a), senses::ground(b)) {
        (None, Some(ground)) if me.grounds.contains(&ground) => a,
        (Some(ground), None) if me.grounds.contains(&ground) => b,
        _ => return,
    };
    turn.s.me.read_dead.insert(point, step);
    turn.facts.push(Fact::TestedDead { point });
}

/// The procedure is complete: a pair of legs to each other and each to ground, all before this step.
fn complete(session: &Session) -> bool {
    let me = &session.me;
    let dead = |screw: Screw| me.read_dead.contains_key(&Point::Screw(screw));
    me.legs_dead.is_some()
        && me.household_told
        && locked_out(&session.home.plant)
        && PAIRS.iter().any(|[a, b]| dead(*a) && dead(*b))
}

/// Reads a known source: before, so that a 0 means something, and after, so that it still does.
pub(super) fn meter(turn: &mut Turn, on: KnownSource, time: Seconds) -> Answered {
    turn.pass(time);
    let source = match on {
        KnownSource::Receptacle => turn.s.home.plant.service.leg,
        KnownSource::ProvingUnit => PROVING_UNIT,
    };
    let display = super::meter::known(turn, source, on == KnownSource::Receptacle, time);
    let right = matches!(display, Display::Volts { volts } if volts.near(source, source * AS_KNOWN));
    if right {
        turn.s.me.meter_proved = Some(turn.step);
        if turn.s.me.proved_dead.is_none() && complete(&turn.s) {
            turn.s.me.proved_dead = Some(turn.step);
            turn.facts.push(Fact::ProvedDead);
        }
    } else {
        turn.s.me.meter_proved = None;
        forget(&mut turn.s.me);
    }
    Ok(Shown::Meter { display })
}

/// A meter that shows a known source within this share of it is taken for sound. Common practice, no source.
const AS_KNOWN: f64 = 0.1;

/// What the proving unit gives. Model: ours gives 240 V.
const PROVING_UNIT: Volts = Volts(240.0);
