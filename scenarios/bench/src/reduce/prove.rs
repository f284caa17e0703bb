//! Proving dead, kept as facts: nothing here holds anybody back.
//!
//! Own lock and tag on every breaker that truly feeds the heater, household told, meter proved on a known
//! source, leg to leg, each leg and each screw that will be touched to a ground that was itself proved,
//! meter proved again (trade sheet 6.8, 6.9 and 10.1).

use plant::{Plant, Point, Screw};
use quantity::{Constant, Seconds, Tag, Volts};

use super::turn::Turn;
use super::{Answered, senses};
use crate::action::{KnownSource, MeterFunction};
use crate::session::{Session, Technician};
use crate::shown::{Display, Fact, Shown, Unproved};

quantity::constants! {
    /// A display up to this counts as no voltage.
    const DEAD: Constant<Volts> = Constant::of("display that counts as no voltage", Volts(0.5), Tag::Model("ten times the least that the low-impedance range tells from nothing"));
    /// A leg to a sound ground reads between these shares of its nominal voltage.
    const LEG: Constant<(f64, f64)> = Constant::new("shares of its nominal voltage a sound leg reads", (100.0 / 120.0, 135.0 / 120.0), "1", Tag::Memory("ANSI C84.1, utilization 110 to 126 V of 120 V, widened for a drop under load"));
    /// Two grounds with at most this between them are one.
    const BONDED: Constant = Constant::new("most ohms between two grounds that are one", 1.0, "ohm", Tag::CommonPractice);
    /// A meter that shows a known source within this share of it is taken for sound.
    const AS_KNOWN: Constant = Constant::new("share within which a meter shows a known source", 0.1, "1", Tag::CommonPractice);
    /// A source with less than this of a leg's voltage is none.
    const ALIVE: Constant = Constant::new("share of a leg's voltage below which a source is none", 0.7, "1", Tag::CommonPractice);
    /// What the proving unit gives. Model: ours gives 240 V.
    const PROVING_UNIT: Constant<Volts> = Constant::of("what the proving unit gives", Volts(240.0), Tag::Model("ours gives 240 V"));
}

/// Pairs that show the two conductors of the heater's circuit to each other.
const PAIRS: &[[Screw; 2]] = &[
    [Screw::H1, Screw::H3],
    [Screw::Ja, Screw::Jb],
    [Screw::B1, Screw::B2],
    [Screw::B1, Screw::N],
    [Screw::X1, Screw::X2],
    [Screw::X3, Screw::X4],
];
/// The same of an off-peak circuit.
const OFF_PEAK_PAIRS: &[[Screw; 2]] =
    &[[Screw::H5, Screw::H7], [Screw::Jc, Screw::Jd], [Screw::S1, Screw::S2]];

/// The pairs of each circuit that a plant has, main circuit first.
fn circuits(plant: &Plant) -> impl Iterator<Item = (usize, &'static [[Screw; 2]])> {
    let off_peak = plant.plate.layout == plant::Layout::OffPeak;
    [PAIRS, OFF_PEAK_PAIRS].into_iter().enumerate().take(1 + usize::from(off_peak))
}

/// Whether a pair's screws are there and it shows both conductors of the circuit.
fn shows(plant: &Plant, pair: &[Screw; 2]) -> bool {
    let neutral = pair.contains(&Screw::N);
    neutral == (plant.wiring.hot_neutral && pair.contains(&Screw::B1))
        && pair.iter().all(|screw| plant.wiring.has_screw(*screw))
}

/// Whether a voltage to ground is that of a live leg of this supply.
fn is_leg(plant: &Plant, volts: Volts) -> bool {
    let leg = plant.service.kind.leg();
    let high = plant.service.kind == plant::ServiceKind::Delta240High;
    let nominal = [Some(leg), high.then_some(leg * plant::supply::ROOT_3.get())];
    nominal.into_iter().flatten().any(|n| (n * LEG.get().0..=n * LEG.get().1).contains(&volts))
}

/// Everything that feeds the heater is off, with the technician's own lock and tag.
fn locked_out(plant: &Plant) -> bool {
    plant
        .panel
        .breakers
        .iter()
        .filter(|b| b.feeds_heater())
        // An open, locked switch in the line isolates the main circuit as well as its breaker does.
        .filter(|b| b.feeds != plant::Circuit::Heater || !plant.in_line.is_some_and(|one| one.isolates()))
        .all(|b| b.handle != plant::Handle::On && b.locked && b.tagged)
}

/// Power came back, a lock came off, or the meter failed: what was proved is proved no more.
pub(super) fn forget(me: &mut Technician) {
    me.read_dead.clear();
    me.read_to.clear();
    me.legs_dead = [None; 2];
    me.proved_dead = None;
}

/// A point was proved dead: the procedure is complete and the meter was proved again after this point.
pub(super) fn is_proved(session: &Session, point: Point) -> bool {
    let me = &session.me;
    let Some(again) = me.meter_proved.filter(|_| me.proved_dead.is_some()) else { return false };
    names(session, point).any(|name| me.read_dead.get(&name).is_some_and(|step| *step < again))
}

/// What was missing first where a point is not proved dead.
pub(super) fn missing(session: &Session, point: Point) -> Unproved {
    let (me, plant) = (&session.me, &session.home.plant);
    match () {
        () if !locked_out(plant) => Unproved::Lock,
        () if !me.household_told => Unproved::Household,
        () if me.meter_proved.is_none() => Unproved::Meter,
        () if circuits(plant).any(|(circuit, _)| !matches!(me.legs_dead.get(circuit), Some(Some(_)))) => {
            Unproved::Legs
        }
        () if !names(session, point).any(|name| me.read_dead.contains_key(&name)) => {
            if names(session, point).any(|name| me.read_to.iter().any(|read| read.0 == name)) {
                Unproved::Ground
            } else {
                Unproved::Screw
            }
        }
        () if !complete(session) => {
            if me.read_to.is_empty() {
                Unproved::Screw
            } else {
                Unproved::Ground
            }
        }
        () => Unproved::MeterAgain,
    }
}

/// The points by which a point may have been read: its metal, the screw it was on, itself.
fn names(session: &Session, point: Point) -> impl Iterator<Item = Point> {
    [Some(senses::metal(&session.home.plant, point)), home(point), Some(point)].into_iter().flatten()
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
            if is_leg(plant, volts) {
                leg_read(turn, points);
            } else if volts <= DEAD.get() {
                dead_read(turn, points);
            }
        }
        (MeterFunction::Ohms, Display::Ohms { ohms }) if ohms.get() <= BONDED.get() => bonded(turn, points),
        (MeterFunction::Continuity, Display::Tone { on: true }) => bonded(turn, points),
        _ => {}
    }
}

/// What was read against it before counts from now on; so does a meter proved since.
fn prove_ground(turn: &mut Turn, screw: Screw) {
    let me = &mut turn.s.me;
    if !me.grounds.insert(screw) {
        return;
    }
    turn.facts.push(Fact::GroundProved { on: screw });
    for &(point, _, step) in me.read_to.iter().filter(|read| read.1 == screw) {
        me.read_dead.insert(point, step);
        turn.facts.push(Fact::TestedDead { point });
    }
    me.read_to.retain(|read| read.1 != screw);
    let last = me.read_dead.values().copied().max();
    if last < me.meter_proved && last.is_some() {
        completed(turn);
    }
}

/// Whether it is all done by now, for the first time.
fn completed(turn: &mut Turn) {
    if turn.s.me.proved_dead.is_none() && complete(&turn.s) {
        turn.s.me.proved_dead = Some(turn.step);
        turn.facts.push(Fact::ProvedDead);
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
    let plant = &turn.s.home.plant;
    let is_pair = |[x, y]: &[Screw; 2]| {
        let pair = (Point::Screw(*x), Point::Screw(*y));
        pair == (a, b) || pair == (b, a)
    };
    let read = circuits(plant).find(|(_, pairs)| pairs.iter().any(|p| shows(plant, p) && is_pair(p)));
    if let Some((circuit, _)) = read {
        if let Some(entry) = turn.s.me.legs_dead.get_mut(circuit) {
            *entry = Some(step);
        }
        return;
    }
    let (point, ground) = match (senses::ground(a), senses::ground(b)) {
        (None, Some(ground)) => (a, ground),
        (Some(ground), None) => (b, ground),
        _ => return,
    };
    let proved = me.grounds.contains(&ground);
    // The last reading of a point counts.
    turn.s.me.read_to.retain(|read| read.0 != point);
    if !proved {
        turn.s.me.read_to.push((point, ground, step));
        return;
    }
    turn.s.me.read_dead.insert(point, step);
    turn.facts.push(Fact::TestedDead { point });
}

/// The procedure is complete: a pair of legs to each other and each to ground, all before this step.
fn complete(session: &Session) -> bool {
    let me = &session.me;
    let dead = |screw: Screw| me.read_dead.contains_key(&Point::Screw(screw));
    let plant = &session.home.plant;
    // The neutral bar is itself a ground: nothing is left to read it against.
    let proved = |screw: Screw| screw == Screw::N || dead(screw);
    me.household_told
        && locked_out(plant)
        && circuits(plant).all(|(circuit, pairs)| {
            me.legs_dead.get(circuit).is_some_and(Option::is_some)
                && pairs.iter().any(|pair| shows(plant, pair) && pair.iter().all(|screw| proved(*screw)))
        })
}

/// Reads a known source: before, so that a 0 means something, and after, so that it still does.
pub(super) fn meter(turn: &mut Turn, on: KnownSource, time: Seconds) -> Answered {
    turn.pass(time);
    let source = match on {
        KnownSource::Receptacle => receptacle(&turn.s.home.plant),
        KnownSource::ProvingUnit => PROVING_UNIT.get(),
    };
    let display = super::meter::known(turn, source, on == KnownSource::Receptacle, time);
    // A source that has failed itself proves nothing.
    let alive = source >= plant::supply::LEG_120.get() * ALIVE.get();
    let right =
        alive && matches!(display, Display::Volts { volts } if volts.near(source, source * AS_KNOWN.get()));
    if right {
        turn.s.me.meter_proved = Some(turn.step);
        completed(turn);
    } else {
        turn.s.me.meter_proved = None;
        forget(&mut turn.s.me);
    }
    Ok(Shown::Meter { display })
}

/// A receptacle on another circuit of leg 1, as the network stands; in a 480Y/277 building behind a transformer.
fn receptacle(plant: &Plant) -> Volts {
    let (leg, neutral) = (Point::Screw(Screw::M1), Point::Screw(Screw::N));
    let ratio = plant::supply::LEG_120.get() / plant.service.kind.leg();
    plant.standing().volts(leg, neutral) * ratio
}
