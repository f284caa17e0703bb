//! Instruments as they fail and mislead.

use super::*;
use crate::MeterFunction::{Amps as AmpsAc, LowVolts, Volts as VoltsAc};
use crate::instrument::{clamp, gauge, multimeter, thermometer};
use crate::person::Harm;

fn with(home: Home, traps: &[Trap], kit: Kit) -> Session {
    Session::begin(Job { kit, ..job(home, Mode::Solo, traps) })
}

fn open(home: Home, traps: &[Trap]) -> Session {
    let mut session = with(home, traps, Kit::EXACT);
    doing(&mut session, &uncover(Level::Upper));
    doing(&mut session, &[Action::Cover { which: Cover::JunctionBox, off: true }]);
    session
}

fn shows(outcome: &Outcome) -> Display {
    match outcome.shown {
        Shown::Meter { display } => display,
        ref other => panic!("{other:?}"),
    }
}

/// F64: the amperes jack is a near short. The fuse opens with a flash, and from then on the volts read zero on
/// a live circuit; a known source tells.
#[test]
fn the_amperes_jack_shorts_whatever_the_dial_says() {
    let mut session = open(cold_home(), &[Trap::WrongJack]);
    let outcome = session.step(&meter(VoltsAc, Screw::H1, Screw::H3));
    assert_eq!(shows(&outcome), Display::Volts { volts: Volts(0.0) });
    let arc = outcome.harms.iter().find_map(|h| match h {
        Harm::ArcFlash { current, cleared_after, .. } => Some((current.get(), cleared_after.get())),
        _ => None,
    });
    let (current, time) = arc.unwrap();
    assert!((200.0..900.0).contains(&current) && time < 0.02, "{current} A, {time} s");
    assert!(outcome.harms.iter().any(|h| matches!(h, Harm::MeterOverloaded { .. })));
    assert!(outcome.noticed.iter().any(|n| matches!(n, Noticed::Flash { .. })));
    assert!(session.me.fuse_blown);
    // Nothing more flashes, and the circuit is still live behind the zero.
    let outcome = session.step(&meter(VoltsAc, Screw::H1, Screw::H3));
    assert!(outcome.harms.is_empty() && shows(&outcome) == Display::Volts { volts: Volts(0.0) });
    session.step(&Action::ProveMeter { on: KnownSource::ProvingUnit });
    assert_eq!(session.me.meter_proved, None);
    doing(&mut session, &[Action::Jack { jack: Jack::Volts }]);
    assert!(volts(&mut session, VoltsAc, Screw::H1, Screw::H3).near(Volts(240.0), Volts(3.0)));
    let again = session.step(&Action::Jack { jack: Jack::Volts });
    assert_eq!(again.shown, Shown::Refused { why: Refusal::AlreadySo });
}

/// Proving on a receptacle is no safer with the lead in that jack; a proving unit cannot drive the current.
#[test]
fn a_known_source_meets_the_wrong_jack() {
    let mut session = open(home(), &[Trap::WrongJack]);
    let outcome = session.step(&Action::ProveMeter { on: KnownSource::ProvingUnit });
    assert!(outcome.harms.is_empty() && !session.me.fuse_blown);
    let outcome = session.step(&Action::ProveMeter { on: KnownSource::Receptacle });
    assert!(outcome.harms.iter().any(|h| matches!(h, Harm::ArcFlash { .. })));
    assert!(session.me.fuse_blown && session.me.meter_proved.is_none());
}

/// Across an open switch of a calling circuit the meter carries the load, as an ammeter should: 18.75 A blows
/// its 11 A fuse, a dead circuit reads nothing.
#[test]
fn the_ammeter_carries_what_the_circuit_drives() {
    let mut session = open(home(), &[]);
    doing(&mut session, &[Action::Jack { jack: Jack::Amps }]);
    let dead = session.step(&meter(AmpsAc, Screw::UEa, Screw::UEb));
    assert_eq!(shows(&dead), Display::Amps { amps: quantity::Amps(0.0) });
    // Satisfied: across the open upper contact stands the whole voltage, through the upper element.
    let load = session.step(&meter(AmpsAc, Screw::U1, Screw::U2));
    assert!(
        load.harms.iter().any(|h| matches!(h, Harm::ArcFlash { current, .. }
        if (current.get() - 18.3).abs() < 1.0)),
        "{load:?}"
    );
}

/// The sign first, then readings too high, then nothing.
#[test]
fn a_weak_battery_says_so_before_it_lies() {
    let mut session = open(home(), &[Trap::WeakBattery]);
    let read = meter(VoltsAc, Screw::H1, Screw::H3);
    let first = session.step(&read);
    assert!(first.noticed.contains(&Noticed::LowBattery) && session.view().low_battery);
    let good = volts(&mut session, VoltsAc, Screw::H1, Screw::H3);
    let mut last = good;
    while let Display::Volts { volts } = shows(&session.step(&read)) {
        assert!(volts >= last);
        last = volts;
    }
    assert!(last > good * 1.03, "{last:?}");
    assert_eq!(shows(&session.step(&read)), Display::Blank);
    session.step(&Action::ProveMeter { on: KnownSource::Receptacle });
    assert_eq!(session.me.meter_proved, None);
    doing(&mut session, &[Action::ChangeBattery]);
    assert_eq!(volts(&mut session, VoltsAc, Screw::H1, Screw::H3), good);
    assert!(!session.view().low_battery);
}

/// A worn lead reads right or nothing, and the same attempt reads the same.
#[test]
fn a_worn_lead_comes_and_goes() {
    let mut session = open(home(), &[Trap::WornLead]);
    let read = meter(VoltsAc, Screw::H1, Screw::H3);
    let seen: Vec<bool> = (0..40)
        .map(|_| match shows(&session.step(&read)) {
            Display::Volts { volts } => volts > Volts(200.0),
            other => panic!("{other:?}"),
        })
        .collect();
    assert!(seen.contains(&true) && seen.contains(&false));
    doing(&mut session, &[Action::SpareLeads]);
    assert!((0..20).all(|_| shows(&session.step(&read)) != Display::Volts { volts: Volts(0.0) }));
}

/// Ghost volts: the meter's own capacitance takes some away, low impedance all of it.
#[test]
fn ghosts_fall_with_the_input() {
    let mut ghostly = home();
    ghostly.plant.beside_live = quantity::Metres(20.0);
    let mut session = open(ghostly, &[]);
    let slot = slot(&session, Circuit::Heater);
    doing(&mut session, &[Action::Breaker { slot, on: false }]);
    let ghost = volts(&mut session, VoltsAc, Screw::H1, Screw::Shell);
    assert!((20.0..115.0).contains(&ghost.get()), "{ghost:?}");
    assert!(volts(&mut session, LowVolts, Screw::H1, Screw::Shell) < Volts(0.3));
}

/// Silent behind sheet metal and in a floating hand, sounding at a ghost, and never a proof.
#[test]
fn a_non_contact_tester_proves_nothing() {
    let sounds = |session: &mut Session, at| match session.step(&Action::NonContact { at: screw(at) }).shown {
        Shown::NonContact { sounds } => sounds,
        other => panic!("{other:?}"),
    };
    let mut session = with(home(), &[], Kit::EXACT);
    assert!(!sounds(&mut session, Screw::H1), "live, behind its cover");
    doing(&mut session, &uncover(Level::Upper));
    assert!(sounds(&mut session, Screw::H1));
    doing(&mut session, &[Action::Gloves { on: true }]);
    assert!(!sounds(&mut session, Screw::H1), "live, in a floating hand");
    doing(&mut session, &[Action::Gloves { on: false }]);
    assert!(!sounds(&mut session, Screw::Shell));
    lock_out(&mut session);
    assert!(!sounds(&mut session, Screw::H1) && session.me.read_dead.is_empty());
}

/// Two conductors in the jaws: the difference, by phase.
#[test]
fn a_clamp_around_two_reads_their_sum() {
    let mut session = open(cold_home(), &[]);
    let clamp = |first, second| Action::Clamp { around: Clamped::Pair { first, second } };
    match session.step(&clamp(Wire::FeedA, Wire::FeedB)).shown {
        Shown::Clamp { amps } => assert_eq!(amps.get(), 0.0),
        other => panic!("{other:?}"),
    }
    doing(&mut session, &uncover(Level::Lower));
    let apart = session.step(&clamp(Wire::CableA, Wire::LowerSwitched));
    assert_eq!(apart.shown, Shown::Refused { why: Refusal::NothingToReach });
}

/// The specimens of a drill read within their classes, and not all like the ideal ones.
#[test]
fn specimens_read_within_their_classes() {
    let mut differs = 0;
    for seed in 0..12 {
        let reading = |kit: Kit| {
            let mut session = with(cold_home(), &[], kit);
            doing(&mut session, &uncover(Level::Upper));
            doing(&mut session, &[Action::Cover { which: Cover::JunctionBox, off: true }]);
            let volts = volts(&mut session, VoltsAc, Screw::H1, Screw::H3).get();
            let around = Clamped::Wire { wire: Wire::FeedA };
            let Shown::Clamp { amps } = session.step(&Action::Clamp { around }).shown else { panic!() };
            let Shown::Temperature { reading } =
                session.step(&Action::Thermometer { at: Probe::ColdPipe }).shown
            else {
                panic!()
            };
            doing(&mut session, &[Action::Gauge { on: true }]);
            let Shown::Pressure { now, .. } = session.step(&Action::ReadGauge).shown else { panic!() };
            [volts, amps.get(), reading.get(), now.to_psi()]
        };
        let (ideal, own) = (reading(Kit::EXACT), reading(Kit::drawn(seed)));
        let within = [
            multimeter::AC_VOLTS.uncertainty(ideal[0]),
            clamp::AMPS.uncertainty(ideal[1]),
            thermometer::CLASS.get() + 0.1,
            gauge::CLASS.get() / 100.0 * gauge::SPAN.get() + 1.0,
        ];
        for ((a, b), most) in ideal.iter().zip(&own).zip(within) {
            assert!((a - b).abs() <= most, "{seed}: {ideal:?} {own:?}");
            differs += usize::from(a != b);
        }
    }
    assert!(differs > 24, "{differs}");
}

/// Every act that reads an instrument takes at least as long as it needs to stand still.
#[test]
fn no_act_is_shorter_than_its_instrument_settles() {
    let minutes =
        |name: &str| crate::minutes::TABLE.iter().find(|c| c.name == name).map_or(0.0, |c| c.get()) * 60.0;
    for (act, settles) in [
        ("meter", multimeter::OHMS.settling().get()),
        ("meter", multimeter::AC_VOLTS.settling().get()),
        ("meter", crate::instrument::insulation::OHMS.settling().get()),
        ("clamp", clamp::AMPS.settling().get()),
        ("thermometer", thermometer::SETTLES.get()),
    ] {
        assert!(minutes(act) >= settles, "{act}");
    }
}

/// Trade sheet 10.3: the test voltage spoils a control board that still hangs on the element; with the element's
/// wires off it does not.
#[test]
fn an_insulation_test_spoils_a_board_left_connected() {
    let electronic = || Home::sound(Setting { heater: HeaterModel::Board50, ..home().setting });
    let run = |lift: bool| {
        let mut session = open(electronic(), &[]);
        lock_out(&mut session);
        if lift {
            let [switched, permanent] = [end(Wire::BoardUpper, 1), end(Wire::UpperPermanent, 1)];
            doing(&mut session, &[Action::Lift { end: switched }, Action::Lift { end: permanent }]);
        }
        let outcome = session.step(&meter(MeterFunction::Insulation, Screw::UEa, Screw::Shell));
        let spoilt = outcome.harms.iter().any(|h| matches!(h, Harm::BoardDamaged { .. }));
        let dead = session.home.plant.thermostats.iter().all(|t| t.cold_contact == plant::Contact::Open);
        assert_eq!(spoilt, dead);
        spoilt
    };
    assert!(run(false) && !run(true));
}
