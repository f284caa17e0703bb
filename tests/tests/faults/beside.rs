//! What is to be seen beside the fault: hazards to tell, traces that mean nothing.

use bench::{Action, Mode, Observation, Sight};
use drill::{Order, RuleId};
use plant::fault::{FaultId, PartKind};
use plant::household::{Answer, Question};
use plant::{Discharge, Place};

use crate::technician::*;
use crate::work::*;

/// An order of the tests' house with another seed, whose installation answers the question.
fn drawn(asked: impl Fn(&plant::Home) -> bool) -> Order {
    let all = (0..400).map(|seed| Order { seed, ..order(FaultId::F35, &[("dial", 145.0)]) });
    let mut found = all.filter(|order| asked(&drill::make(order).unwrap().job.home));
    found.next().expect("a house like this among 400")
}

fn lost(work: &Work, rule: RuleId) -> f64 {
    work.verdict().score.lines.iter().filter(|line| line.rule == rule).map(|line| line.points).sum()
}

/// Seen, it has to be told; unseen, nobody is charged; told where it is not, it is charged.
#[track_caller]
fn told(order: &Order, place: Place, what: Observation, sight: &Sight) {
    let job = |looks: bool, tells: bool| {
        let mut work = Work::at(order);
        work.acts(arrive());
        if looks {
            assert!(work.look(place).contains(sight), "{sight:?}");
        }
        if tells {
            work.act(Action::Report { what });
        }
        work.acts(hand_over());
        (lost(&work, RuleId::HazardUnreported), lost(&work, RuleId::ReportedAmiss))
    };
    assert_eq!(job(true, false), (2.0, 0.0), "{what:?} seen and not told");
    assert_eq!(job(true, true), (0.0, 0.0), "{what:?} seen and told");
    assert_eq!(job(false, false), (0.0, 0.0), "{what:?} never looked at");
}

#[test]
fn hazards_seen_are_to_be_told() {
    let plastic = drawn(|home| home.installation.discharge == Discharge::Plastic);
    let sight = Sight::Discharge { pipe: Discharge::Plastic };
    told(&plastic, Place::Relief, Observation::PlasticDischarge, &sight);
    let uphill = drawn(|home| home.installation.discharge == Discharge::Uphill);
    let sight = Sight::Discharge { pipe: Discharge::Uphill };
    told(&uphill, Place::Relief, Observation::UphillDischarge, &sight);
    let bare = drawn(|home| !home.installation.dielectric);
    told(&bare, Place::HeaterTop, Observation::NoDielectric, &Sight::Dielectric { there: false });
    // 30 A before 14 AWG (NEC 240.4(D): 15 A at most).
    let thin = drawn(|home| {
        let wiring = &home.plant.wiring;
        wiring.conductor(wiring.feeders()[0]).awg == 14
    });
    let mut work = Work::at(&thin);
    work.acts(arrive());
    let seen = work.look(Place::JunctionBox);
    let cable = seen.into_iter().find(|sight| matches!(sight, Sight::Cable { awg: 14, .. })).unwrap();
    told(&thin, Place::JunctionBox, Observation::OversizedBreaker, &cable);
}

#[test]
fn what_is_not_there_is_not_told() {
    let sound = drawn(|home| home.installation == plant::Installation::default());
    let mut work = Work::at(&sound);
    work.acts(arrive());
    work.act(Action::Report { what: Observation::PlasticDischarge });
    work.act(Action::Report { what: Observation::ScaldingWater });
    work.acts(hand_over());
    assert_eq!(lost(&work, RuleId::ReportedAmiss), 1.0, "145 °F is so, the plastic is not");
}

/// Streak, soot and crust come with every fault alike: they tell nothing.
#[test]
fn traces_know_nothing_of_the_fault() {
    let marks = |id| {
        (0..60).map(move |seed| {
            let order = Order { fault: drill::Wanted::One(id), ..Order::chance(seed, Mode::Solo) };
            drill::settle(&order).is_ok().then(|| drill::make(&order).unwrap().job.home.installation)
        })
    };
    let both = marks(FaultId::F01).zip(marks(FaultId::F12)).filter_map(|(a, b)| Some((a?, b?)));
    let both: Vec<_> = both.collect();
    assert!(both.len() > 40 && both.iter().all(|(a, b)| a == b));
    assert!(both.iter().any(|(a, _)| a.streak) && both.iter().any(|(a, _)| !a.streak));
    assert!(both.iter().any(|(a, _)| a.condensate) && both.iter().any(|(a, _)| !a.condensate));
}

/// A line that drips beside the heater does so with power and water off, wets no fitting of it, and is neither a hazard nor
/// a sight that any suspect's house would have shown otherwise.
#[test]
fn a_condensate_line_drips_whatever_the_heater_does() {
    let dripping =
        drawn(|home| home.installation.condensate && home.setting.location != plant::Location::Attic);
    let mut work = Work::at(&dripping);
    work.acts(arrive());
    let with = work.look(Place::Drain);
    assert!(with.contains(&Sight::Condensate), "{with:?}");
    let slot = work.slot();
    work.act(Action::Breaker { slot, on: false });
    work.act(Action::ColdValve { opening: 0.0 });
    work.act(Action::Wait { minutes: 60.0 });
    assert_eq!(work.look(Place::Drain), with);
    let floor = |sight: &&Sight| matches!(sight, Sight::Wet { .. } | Sight::WaterOnFloor { .. });
    assert_eq!(with.iter().find(floor), None, "nothing of the heater is wet: {with:?}");
    for suspect in [FaultId::F12, FaultId::F49, FaultId::F55] {
        let order = Order { fault: drill::Wanted::One(suspect), ..dripping.clone() };
        let mut other = Work::at(&order);
        other.acts(arrive());
        let seen = other.look(Place::Drain);
        assert!(seen.contains(&Sight::Condensate), "{suspect} {seen:?}");
    }
}

/// People who want to be asked are asked before more is spent than they said.
#[test]
fn consent_comes_before_the_cost() {
    let asks_above = |drill: &drill::Drill| match drill.job.account.answer(Question::Cost) {
        Some(Answer::Cost { ask_above }) => ask_above,
        other => panic!("{other:?}"),
    };
    let all = || (0..400).map(|seed| Order { seed, ..order(FaultId::F46, &[]) });
    let find = |worried: bool| {
        all().find(|order| asks_above(&drill::make(order).unwrap()).is_some_and(|most| most <= 50) == worried)
    };
    let job = |order: &Order, agrees: bool| {
        let mut work = Work::at(order);
        work.acts(arrive());
        if agrees {
            work.act(Action::AgreeCost);
        }
        work.make_dead_outside();
        work.acts(drain());
        // Ninety dollars of regulator.
        work.fits(PartKind::Regulator);
        lost(&work, RuleId::CostNotAgreed)
    };
    let (worried, easy) = (find(true).unwrap(), find(false).unwrap());
    assert_eq!(job(&worried, false), 2.0);
    assert_eq!(job(&worried, true), 0.0);
    let above_90 = asks_above(&drill::make(&easy).unwrap()).is_none_or(|most| most >= 90);
    assert_eq!(job(&easy, false), if above_90 { 0.0 } else { 2.0 });
}
