//! Two things wrong at once: each is found, told from the rest and put right by itself.

use bench::{Mode, Probe};
use drill::{Cure, Order, OrderError, RuleId, Second, Wanted};
use plant::Screw::*;
use plant::fault::{Defect, FaultId, PartKind};
use plant::{Level, Wire};

use crate::technician::*;
use crate::work::*;

fn open_stat_and_element() -> Work {
    Work::at(&Order { second: Some(Second::One(FaultId::F01)), ..order(FaultId::F12, &[]) })
}

/// The top hot, the bottom cold and nothing below: the lower thermostat is open, and so is the element behind it.
fn at_the_bottom(work: &mut Work) -> [u32; 3] {
    work.acts(arrive());
    work.until(Wire::FeedA, 0.0);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.volts(U1, U4, 0.0);
    let called = work.volts(U4, H4, 240.0);
    let shell = work.degrees(Probe::Shell { level: Level::Lower });
    assert!(shell < 100.0, "cold beside it: {shell} °F");
    let cold = work.step();
    work.make_dead(&[D1, D2, LEa, LEb, UEa, UEb]);
    [called, cold, work.over(D1, D2)]
}

#[test]
fn both_found_and_both_changed_cure() {
    let mut work = open_stat_and_element();
    let stat = at_the_bottom(&mut work);
    work.acts(lift_element(Level::Lower));
    let coil = work.over(LEa, LEb);
    let upper = work.coil_is_whole(Level::Upper);
    work.finds_the(FaultId::F12, &stat);
    work.finds_the(FaultId::F01, &[coil, upper]);
    work.fits(PartKind::LowerThermostat);
    work.fits_drained(PartKind::LowerElement);
    work.acts(land_element(Level::Lower));
    work.proves(18.75);
    work.acts(hand_over());
    work.cured();
}

/// The second shows when the first repair is proved, and is a finding of its own.
#[test]
fn the_second_may_be_found_when_the_first_repair_is_proved() {
    let mut work = open_stat_and_element();
    let stat = at_the_bottom(&mut work);
    work.finds_the(FaultId::F12, &stat);
    work.fits(PartKind::LowerThermostat);
    let slot = work.slot();
    work.acts(energise(slot));
    let volts = work.volts(LEa, LEb, 240.0);
    let amps = work.amps(Wire::LowerSwitched, 0.0);
    work.make_dead(&[LEa, LEb, UEa, UEb]);
    work.acts(lift_element(Level::Lower));
    let coil = work.over(LEa, LEb);
    let upper = work.coil_is_whole(Level::Upper);
    work.finds_the(FaultId::F01, &[volts, amps, coil, upper]);
    work.fits_drained(PartKind::LowerElement);
    work.acts(land_element(Level::Lower));
    work.proves(18.75);
    work.acts(hand_over());
    let verdict = work.verdict();
    assert_eq!(verdict.cure, Cure::Cured);
    assert!(verdict.score.right);
    assert!(
        verdict.score.lines.iter().all(|l| l.rule == RuleId::EnergisedOpen),
        "{:#?}",
        verdict.score.lines
    );
}

/// Half of it is no cure: the account of the finding says what was missed, that of the repair that it comes back.
#[test]
fn one_of_two_is_not_enough() {
    let mut work = open_stat_and_element();
    let stat = at_the_bottom(&mut work);
    work.finds_the(FaultId::F12, &stat);
    work.fits(PartKind::LowerThermostat);
    work.runs();
    work.acts(hand_over());
    let verdict = work.verdict();
    assert!(matches!(verdict.cure, Cure::NotCured { .. }), "{:?}", verdict.cure);
    let cost = |rule| verdict.score.lines.iter().filter(|l| l.rule == rule).map(|l| l.points).sum::<f64>();
    assert_eq!((cost(RuleId::SecondNotFound), cost(RuleId::NotCured)), (12.0, 20.0));
    assert_eq!((verdict.score.truth, verdict.score.second), (FaultId::F12, Some(FaultId::F01)));
    assert!(!verdict.score.right);
}

/// A reading that only the first fault explains tells nothing of the second.
#[test]
fn the_evidence_of_one_does_not_serve_the_other() {
    let mut work = open_stat_and_element();
    let stat = at_the_bottom(&mut work);
    work.finds_the(FaultId::F01, &stat);
    let lines = work.verdict().score.lines;
    assert!(lines.iter().any(|l| l.rule == RuleId::EvidenceLeavesOthers), "{lines:#?}");
}

/// Dealt by chance: both are there, both are within the licence, and with the one put right the other is still there.
#[test]
fn what_chance_deals_goes_together() {
    let mut dealt = 0;
    for seed in 0..60 {
        let second = if seed % 2 == 0 { Second::Any } else { Second::Follows };
        let order = Order { second: Some(second), ..Order::chance(seed, Mode::Solo) };
        let settled = match drill::settle(&order) {
            Err(OrderError::NoSecond) => continue,
            settled => settled.unwrap(),
        };
        dealt += 1;
        let two = settled.second.unwrap();
        assert!(!two.id.same_repair(settled.fault.id), "{} {}", settled.fault.id, two.id);
        if second == Second::Follows {
            assert!(drill::second::follows(settled.fault.id, two.id));
        }
        let code = drill::code::encode(&order).unwrap();
        assert_eq!(drill::code::decode(&code).unwrap(), order);
        if seed % 6 > 1 {
            continue;
        }
        let made = drill::make(&order).unwrap();
        let all = made.job.home.inspect();
        for case in made.wrong() {
            let mut alone = made.job.home.clone();
            alone.make_sound();
            (case.id.fault().apply)(&case.parameters, &mut alone);
            let left = alone.inspect();
            assert!(
                !left.is_empty() && left.iter().all(|defect| all.contains(defect)),
                "{}: {left:?}",
                case.id
            );
        }
    }
    assert!(dealt > 50, "{dealt}");
}

#[test]
fn what_cannot_be_beside_the_first_is_refused() {
    for (first, second) in [
        (FaultId::F01, FaultId::F67),
        (FaultId::F01, FaultId::F56),
        (FaultId::F22, FaultId::F01),
        (FaultId::F05, FaultId::F08),
        (FaultId::F18, FaultId::F20),
    ] {
        let order =
            Order { second: Some(Second::One(second)), fault: Wanted::One(first), ..order(first, &[]) };
        assert!(matches!(drill::settle(&order), Err(OrderError::NoSecond)), "{first} {second}");
    }
}

/// People who close a tripped breaker and still call for the other fault would leave half a drill: they touch nothing.
#[test]
fn what_people_can_put_an_end_to_is_still_there() {
    let mut dealt = 0;
    for seed in 0..24 {
        let order = Order {
            second: Some(Second::One(FaultId::F01)),
            fault: Wanted::One(FaultId::F18),
            ..Order::chance(seed, Mode::Solo)
        };
        let Ok(made) = drill::make(&order) else { continue };
        dealt += 1;
        assert!(made.job.home.inspect().contains(&Defect::PowerOff), "seed {seed}");
    }
    assert!(dealt > 12, "{dealt}");
}
