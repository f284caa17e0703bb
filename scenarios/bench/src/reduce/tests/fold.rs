//! Total, deterministic, and one fold by any road.

use plant::fault::{Advice, FaultId};
use plant::heater::Rating;
use plant::household::Question;
use plant::{ElementLength, Mount, Place, Tap};
use quantity::{Amps, Draw, Pressure, Watts};

use super::*;

pub(super) fn pick<T: Copy>(draw: &mut Draw, list: &[T]) -> T {
    list[draw.index(list.len())]
}

fn any_point(draw: &mut Draw) -> Point {
    if draw.chance(0.7) { screw(pick(draw, Screw::ALL)) } else { Point::End(any_end(draw)) }
}

fn any_end(draw: &mut Draw) -> End {
    let ends: Vec<End> = End::all().collect();
    pick(draw, &ends)
}

fn any_part(draw: &mut Draw) -> NewPart {
    let level = pick(draw, &[Level::Upper, Level::Lower]);
    let rating = Rating {
        watts: Watts(pick(draw, &[3500.0, 4500.0, -1.0])),
        volts: Volts(pick(draw, &[208.0, 240.0])),
    };
    let (length, mount) = (pick(draw, ElementLength::ALL), pick(draw, Mount::ALL));
    let seat_cleaned = draw.chance(0.5);
    match draw.index(25) {
        24 => NewPart::LowerLimit,
        23 => NewPart::ReturnCheck,
        22 => NewPart::PumpTimer,
        21 => NewPart::Anode { metal: pick(draw, plant::AnodeMetal::ALL) },
        20 => NewPart::Sensor { level },
        19 => NewPart::Board,
        11 => NewPart::Connectors,
        12 => NewPart::Regulator { set: Pressure::psi(55.0) },
        13 => NewPart::MixingValve { set: Temperature::fahrenheit(120.0) },
        14 => NewPart::Cartridge { tap: pick(draw, Tap::ALL) },
        15 => NewPart::DrainValve,
        16 => NewPart::Nipples,
        17 => NewPart::Connections,
        18 => NewPart::HotLine,
        9 => NewPart::TimeSwitch,
        0 => NewPart::Element { level, rating, length, mount, seat_cleaned },
        1 => NewPart::Thermostat { level },
        2 => NewPart::Limit,
        3 => NewPart::Breaker { rating: Amps(30.0) },
        4 => NewPart::Fuse { rating: Amps(30.0) },
        5 => NewPart::DipTube,
        6 => NewPart::Gasket { level, seat_cleaned },
        7 => NewPart::ReliefValve { opens_at: Pressure::psi(150.0) },
        8 => NewPart::ExpansionTank { volume: Volume::gallons(2.0), charge: Pressure::psi(50.0) },
        _ => NewPart::PipeClips,
    }
}

/// Every kind of act, by its number.
pub(super) const KINDS: usize = 48;

pub(super) fn act(kind: usize, draw: &mut Draw) -> Action {
    let on = draw.chance(0.5);
    let slot = draw.index(5) as u32;
    let level = pick(draw, &[Level::Upper, Level::Lower]);
    let tap = pick(draw, Tap::ALL);
    let opening = pick(draw, &[0.0, 0.3, 1.0, 1.0, -1.0, 1e300]);
    let place = pick(draw, Place::ALL);
    let fitting = pick(draw, &[Fitting::UpperElement, Fitting::LowerElement, Fitting::Nipples]);
    match kind {
        0 => Action::Ask { question: pick(draw, Question::ALL) },
        1 => Action::TellHousehold,
        2 => Action::Read {
            what: pick(draw, &[Writing::Plate, Writing::Diagram, Writing::StampUpper, Writing::Dials]),
        },
        3 => Action::Look { at: place },
        4 => Action::Listen { at: place },
        5 => Action::Smell { at: place },
        6 => Action::Touch {
            at: match draw.index(4) {
                0 => Touchable::Metal { point: any_point(draw) },
                1 => Touchable::Water { tap },
                2 => Touchable::Fitting { fitting },
                _ => Touchable::ReliefPipe,
            },
        },
        7 => Action::Wipe { fitting },
        8 => Action::Gloves { on },
        9 => Action::EyeProtection { on },
        10 => Action::Breaker { slot, on },
        11 => Action::TryStart,
        12 => Action::Lock { slot, on },
        13 => Action::Relabel { slot, feeds: pick(draw, Circuit::ALL) },
        14..=17 => Action::Cover { which: pick(draw, &COVERS), off: draw.chance(0.8) },
        18 | 19 => {
            Action::Meter { function: pick(draw, &FUNCTIONS), red: any_point(draw), black: any_point(draw) }
        }
        20 => Action::ZeroLeads,
        21 => Action::ProveMeter { on: KnownSource::ProvingUnit },
        22 => match draw.index(4) {
            0 => Action::SpareLeads,
            1 => Action::ChangeBattery,
            2 => Action::NonContact { at: any_point(draw) },
            _ => Action::Jack { jack: if on { Jack::Amps } else { Jack::Volts } },
        },
        23 => Action::Clamp {
            around: if on { Clamped::BothLegs } else { Clamped::Wire { wire: pick(draw, Wire::ALL) } },
        },
        24 => Action::PressReset,
        25 => Action::Lift { end: any_end(draw) },
        26 => Action::Label { end: any_end(draw) },
        27 => Action::Land { end: any_end(draw), screw: pick(draw, Screw::ALL), torqued: on },
        28 => Action::Remake { end: any_end(draw), torqued: on },
        29 => Action::Dial { level, to: Temperature::fahrenheit(draw.between(80.0, 160.0)) },
        30 => Action::Seat { level },
        31 if on => Action::MainValve { opening },
        31 => Action::ColdValve { opening },
        32 => Action::Tap { tap, opening },
        33 => Action::Bucket { tap, volume: Volume::litres(draw.between(-2.0, 60.0)) },
        34 if draw.chance(0.5) => Action::Stops { tap, shut: on },
        34 => Action::Hose { on },
        35 if draw.chance(0.3) => Action::Plug { level, fitted: on },
        35 => Action::Drain { opening },
        36 => Action::ReliefLever { up: on },
        37 => Action::Wait { minutes: draw.between(-1.0, 30.0) },
        38 if on => Action::LetThemUse { minutes: draw.between(-1.0, 30.0) },
        38 => Action::WaitForCutOut,
        39 => Action::Thermometer {
            at: match draw.index(6) {
                0 => Probe::Tap { tap },
                1 => Probe::Shell { level },
                2 => Probe::Metal { point: any_point(draw) },
                3 => Probe::ColdPipe,
                4 => Probe::ReliefPipe,
                _ => Probe::Drain,
            },
        },
        40 => Action::Gauge { on },
        41 if on => Action::ReadWaterMeter,
        41 => Action::ReadGauge,
        42 => match draw.index(3) {
            0 => Action::TankCharge,
            1 => Action::Sample { tap, hot: on },
            _ => Action::LookAtAnode,
        },
        44 => match draw.index(6) {
            0 => Action::BoxHandle { closed: on },
            1 => Action::BoxLock { on },
            2 => Action::PullFuse { leg: pick(draw, plant::Stab::ALL), out: on },
            4 => Action::MoveBreaker { slot },
            3 => Action::TestFuse { leg: pick(draw, plant::Stab::ALL) },
            _ => Action::SetClock,
        },
        43 => Action::Replace { part: any_part(draw) },
        47 => match draw.index(6) {
            0 => Action::CarryOut { helped: on },
            1 => Action::JoinPipes { dielectric: on },
            2 => Action::ReuseRelief,
            3 => Action::SetHeater { nominal: Volume::gallons(40.0), rating: home().plant.plate.element },
            _ => Action::PartPipes,
        },
        46 => match draw.index(6) {
            5 => Action::PortableHeater { leg: pick(draw, plant::Stab::ALL), on },
            4 => Action::Answer { so: draw.chance(0.5) },
            3 => Action::AgreeCost,
            0 => Action::ReturnValve { opening },
            1 => Action::Ventilate,
            _ => Action::Thaw,
        },
        _ => match draw.index(4) {
            0 => Action::Finding { fault: Some(FaultId::F01), evidence: vec![draw.index(50) as u32] },
            1 => Action::Advise { advice: Advice::NothingWrong },
            2 => Action::Report { what: Observation::SecondSource },
            _ => Action::TellResult,
        },
    }
}

const COVERS: [Cover; 9] = [
    Cover::BoxDoor,
    Cover::PanelFront,
    Cover::JunctionBox,
    Cover::Upper,
    Cover::Lower,
    Cover::UpperInsulation,
    Cover::LowerInsulation,
    Cover::UpperShield,
    Cover::LowerShield,
];
const FUNCTIONS: [MeterFunction; 5] = [
    MeterFunction::Volts,
    MeterFunction::LowVolts,
    MeterFunction::Ohms,
    MeterFunction::Continuity,
    MeterFunction::Insulation,
];

fn random(seed: u64, acts: usize) -> Vec<Action> {
    let mut draw = Draw::new(seed, "acts");
    (0..acts).map(|_| act(draw.index(KINDS), &mut draw)).collect()
}

fn bytes(session: &Session) -> Vec<u8> {
    serde_json::to_vec(session).unwrap()
}

/// Water that the books do not account for, in kilograms.
fn out_of_balance(session: &Session) -> f64 {
    let held = |home: &Home| home.plant.tank.mass() + home.plant.plumbing.cold_side.mass.get();
    let booked = |home: &Home| home.plant.plumbing.ledger.net_mass().get();
    let (then, now) = (&session.job.home, &session.home);
    ((held(now) - held(then)) - (booked(now) - booked(then))).abs()
}

const ALL_TRAPS: [Trap; 5] =
    [Trap::BrokenLead, Trap::MislabelledBreaker, Trap::SecondSource, Trap::GhostVolts, Trap::SomebodyResets];

#[test]
fn two_hundred_random_acts_answer_and_repeat() {
    for seed in 0..6 {
        let mode = if seed % 2 == 0 { Mode::Solo } else { Mode::Coached };
        let job = job(home(), mode, &ALL_TRAPS);
        let acts = random(seed, 200);
        let one = Session::replay(job.clone(), &acts);
        assert_eq!(one.log.len(), 200);
        let hurt = |e: &Entry| e.outcome.harms.iter().any(|h| h.severity() >= person::Severity::Injury);
        assert!(mode == Mode::Solo || !one.log.iter().any(|e| hurt(e)), "the coach let it happen");
        assert!(out_of_balance(&one) < 1e-6, "seed {seed}: {} kg", out_of_balance(&one));
        assert!(bytes(&one) == bytes(&Session::replay(job.clone(), &acts)), "repeated, seed {seed}");
        // Stored half-way and taken up again it is the same job.
        let half = Session::replay(job, &acts[..100]);
        let mut again: Session = serde_json::from_slice(&bytes(&half)).unwrap();
        acts[100..].iter().for_each(|a| {
            again.step(a);
        });
        assert!(bytes(&one) == bytes(&again), "taken up again, seed {seed}");
        let _ = (one.view(), one.inside());
    }
}

#[test]
fn every_act_is_answered_in_a_fresh_job() {
    let fresh = solo(home());
    let mut draw = Draw::new(1, "each");
    let mut acts: Vec<Action> =
        (0..KINDS).flat_map(|kind| (0..4).map(move |_| kind)).map(|k| act(k, &mut draw)).collect();
    acts.push(Action::StopAndCall { whom: Helper::Utility });
    acts.push(Action::HandOver);
    acts.push(Action::TimeUp { allowed: 60.0 });
    for action in acts {
        let (next, outcome) = reduce(&fresh, &action);
        assert_eq!(next.log.len(), 1);
        assert_eq!(
            *next.log[0],
            Entry { at: Seconds(0.0), action: action.clone(), outcome: outcome.clone() }
        );
        if let Shown::Refused { why: Refusal::OtherMount | Refusal::TooLong } = outcome.shown {
            // It was tried, and carried back.
            assert_eq!(next.clock, Seconds::minutes(5.0), "{action:?}");
            assert_eq!(next.home.plant.wiring, fresh.home.plant.wiring, "{action:?}");
            assert_eq!(next.me.cost, 0.0, "{action:?}");
        } else if matches!(outcome.shown, Shown::Refused { .. }) {
            assert_eq!(next.clock, Seconds(0.0), "{action:?}");
            assert_eq!(next.home, fresh.home, "{action:?}");
        }
        // Meaning survives the file.
        let text = serde_json::to_string(&outcome).unwrap();
        assert_eq!(serde_json::from_str::<Outcome>(&text).unwrap(), outcome, "{text}");
    }
}

#[test]
fn numbers_that_are_none_are_refused() {
    let fresh = solo(home());
    let tap = plant::Tap::Bath;
    for nan in [f64::NAN, f64::INFINITY, -1.0] {
        for action in [
            Action::Tap { tap, opening: nan },
            Action::ColdValve { opening: nan },
            Action::Drain { opening: nan },
            Action::Wait { minutes: nan },
            Action::Bucket { tap, volume: Volume(nan) },
            Action::Dial { level: Level::Upper, to: Temperature(nan) },
            Action::TimeUp { allowed: nan },
        ] {
            let (next, outcome) = reduce(&fresh, &action);
            assert_eq!(outcome.shown, Shown::Refused { why: Refusal::OutOfRange }, "{action:?}");
            assert_eq!(next.home, fresh.home);
        }
    }
}

#[test]
fn nothing_follows_the_end() {
    let mut session = solo(home());
    session.step(&Action::HandOver);
    let home = session.home.clone();
    let outcome = session.step(&Action::Wait { minutes: 5.0 });
    assert_eq!(outcome.shown, Shown::Refused { why: Refusal::Over });
    assert_eq!(session.home, home);
}

#[test]
fn simulated_time_runs_out() {
    let mut job = job(home(), Mode::Exam, &[]);
    job.limit_minutes = Some(30.0);
    let session = Session::replay(job, &[Action::Wait { minutes: 29.0 }, Action::Wait { minutes: 2.0 }]);
    assert_eq!(session.ended, Some(Ending::TimeOut));
}

/// Every act has its own entry in the table of minutes, and every entry is used once.
#[test]
fn the_table_of_minutes_is_whole() {
    let mut draw = Draw::new(3, "minutes");
    let mut names: Vec<&str> = minutes::TABLE.iter().map(|c| c.name).collect();
    for _ in 0..20_000 {
        let act = act(draw.index(KINDS), &mut draw);
        let name = minutes::name(&act);
        if let Action::Replace { part } = &act {
            assert!(crate::prices::of(part) > 0.0, "{name} has no price");
        }
        assert!(minutes::TABLE.iter().any(|c| c.name == name), "{name}");
        names.retain(|n| *n != name);
    }
    assert_eq!(names, ["at-once"], "never used");
    for (i, entry) in minutes::TABLE.iter().enumerate() {
        assert!(minutes::TABLE[..i].iter().all(|c| c.name != entry.name), "{} twice", entry.name);
    }
}

#[test]
fn asking_whether_an_act_can_be_done_says_what_doing_it_says() {
    let mut session = solo(home());
    let mut refused = 0;
    for action in random(31, 160) {
        let asked = refusal(&session, &action);
        let (next, outcome) = reduce(&session, &action);
        match outcome.shown {
            Shown::Refused { why } if !matches!(action, Action::Bucket { .. } | Action::Wait { .. }) => {
                assert_eq!(asked, Some(why), "{action:?}");
                refused += 1;
            }
            Shown::Refused { .. } => {}
            _ => assert_eq!(asked, None, "{action:?}"),
        }
        session = next;
        if session.ended.is_some() {
            break;
        }
    }
    assert!(refused > 5, "{refused}");
}
