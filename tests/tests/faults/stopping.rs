//! When to stop, and whom to call: stopping in the right place costs nothing, going on does.
//! Whose work is whose: trade sheet 10.16, common practice, no source. After a shock: power off, then an ambulance
//! (10.16); what takes one is computed from the current or the burn.

use bench::person::{Harm, Severity};
use bench::{Action, Ending, Helper, Licence, Shown, Touchable};
use drill::{Account, Cure, Detail, Order, RuleId, ScoreLine};
use plant::fault::FaultId;
use plant::{Level, Screw};

use crate::technician::*;
use crate::work::*;
use crate::{f19, f20, f28, f37, f66};

fn lines(work: &Work, rule: RuleId) -> Vec<ScoreLine> {
    work.verdict().score.lines.into_iter().filter(|line| line.rule == rule).collect()
}

fn costs(work: &Work, rule: RuleId) -> f64 {
    lines(work, rule).iter().map(|line| line.points).sum()
}

fn total(work: &Work) -> f64 {
    work.verdict().score.total()
}

/// The same acts in the same house by somebody of another licence.
fn by_another(work: &Work, licence: Licence) -> Work {
    let order = Order { licence, ..work.drill.order.clone() };
    let mut other = Work::at(&order);
    assert_eq!(other.drill.job.home, work.drill.job.home, "the same house");
    for entry in &work.session.log {
        other.session.step(&entry.action);
    }
    other
}

fn half_dead(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F19, &[("pole", 0.0)]) }
}

/// A breaker with a dead pole, found and made dead.
fn found(licence: Licence) -> Work {
    let mut work = Work::at(&half_dead(licence));
    work.opens_up();
    let between = work.volts(Screw::H1, Screw::H3, 0.0);
    work.volts(Screw::H1, Screw::Shell, 120.0);
    work.volts(Screw::H3, Screw::Shell, 120.0);
    work.make_dead(&[]);
    work.finds(&[between]);
    work.acts(close(Level::Lower));
    work.acts(close(Level::Upper));
    work.acts([close_box(), Action::TellResult]);
    work
}

fn calls(mut work: Work, whom: Helper) -> Work {
    work.act(Action::StopAndCall { whom });
    work
}

#[test]
fn stopped_where_the_licence_ends_nothing_is_lost() {
    let work = calls(found(Licence::Plumber), Helper::Electrician);
    work.handed_on(Helper::Electrician);
    let score = work.verdict().score;
    for account in [Account::Safety, Account::Repair, Account::Finish] {
        assert_eq!(score.account(account).count(), 0, "{account:?}: {:#?}", score.lines);
    }
    assert!(score.right && score.cured && !score.failed);
}

/// The whole proper job of somebody who may, by somebody who may not: it works, and costs more than stopping.
#[test]
fn going_on_past_the_licence_costs() {
    let plumber = Licence::Plumber;
    let jobs: [(fn() -> Work, Licence); 5] = [
        (f19::perfect, plumber),
        (f20::perfect, plumber),
        (f28::perfect, plumber),
        (f66::perfect, plumber),
        (f37::perfect, Licence::Electrician),
    ];
    for (perfect, licence) in jobs {
        let may = perfect();
        may.cured();
        let may_not = by_another(&may, licence);
        let fault = may.drill.fault.id;
        let Verdict { cure, score } = may_not.verdict();
        assert_eq!(cure, Cure::Cured, "{fault}");
        let beyond = lines(&may_not, RuleId::BeyondLicence);
        assert!(matches!(beyond[..], [ScoreLine { points: 12.0, step: Some(_), .. }]), "{fault}: {beyond:?}");
        let full: f64 = score.of.iter().sum();
        assert_eq!(score.total(), full - 12.0, "{fault}: {:#?}", score.lines);
    }
}

/// Handed over as if nothing were left to do: the line says who it takes.
#[test]
fn handing_over_what_takes_somebody_else_costs() {
    let mut work = found(Licence::Plumber);
    work.act(Action::HandOver);
    let missed = lines(&work, RuleId::NotCured);
    let says = Detail::Call { whom: Helper::Electrician };
    assert!(missed.len() == 1 && missed[0].points > 0.0 && missed[0].detail == says, "{missed:?}");
    assert!(total(&work) < total(&calls(found(Licence::Plumber), Helper::Electrician)));
}

#[test]
fn calling_for_ones_own_work_costs() {
    for whom in [Helper::Electrician, Helper::Plumber, Helper::Utility, Helper::Ambulance] {
        let work = calls(found(Licence::Electrician), whom);
        let Verdict { cure, score } = work.verdict();
        assert_eq!(cure, Cure::CalledAmiss { whom, needed: None });
        assert!(!score.cured);
        let line = lines(&work, RuleId::CalledWithoutNeed);
        let says = Detail::Call { whom };
        assert!(matches!(&line[..], [l] if l.points == 10.0 && l.detail == says), "{line:?}");
    }
}

#[test]
fn calling_the_wrong_one_costs() {
    let right = total(&calls(found(Licence::Plumber), Helper::Electrician));
    for whom in [Helper::Plumber, Helper::Utility, Helper::Ambulance] {
        let work = calls(found(Licence::Plumber), whom);
        let needed = Some(Helper::Electrician);
        assert_eq!(work.verdict().cure, Cure::CalledAmiss { whom, needed });
        let line = lines(&work, RuleId::NotCured);
        let says = Detail::Call { whom: Helper::Electrician };
        assert!(matches!(&line[..], [l] if l.points == 20.0 && l.detail == says), "{line:?}");
        assert!(total(&work) < right);
    }
}

/// A bare hand on a live screw, and how it came out; nothing else is wrong with the job so far.
fn shocked() -> (Work, u32) {
    let mut work = Work::at(&order(FaultId::F02, &[]));
    work.act(Action::TellHousehold);
    work.acts(open(Level::Upper));
    let at = Touchable::Metal { point: Screw::H1.into() };
    let outcome = work.session.step(&Action::Touch { at });
    let held = |harm: &Harm| matches!(harm, Harm::Shock(s) if s.severity() == Severity::Injury);
    assert!(outcome.harms.iter().any(held), "{outcome:?}");
    assert_eq!(work.session.ended, None);
    let step = work.step();
    (work, step)
}

#[test]
fn after_a_shock_an_ambulance_is_right_and_costs_nothing() {
    let (mut work, _) = shocked();
    let slot = work.slot();
    work.act(Action::Breaker { slot, on: false });
    let work = calls(work, Helper::Ambulance);
    let Verdict { cure, score } = work.verdict();
    assert_eq!(cure, Cure::HandedOn { whom: Helper::Ambulance, safe: true });
    // The shock itself fails the job; the call takes nothing from what the other accounts still hold.
    assert!(score.failed);
    for account in [Account::Finding, Account::Repair, Account::Finish] {
        assert_eq!(score.account(account).count(), 0, "{account:?}: {:#?}", score.lines);
    }
}

#[test]
fn going_on_after_a_shock_costs() {
    let (mut work, shock) = shocked();
    let slot = work.slot();
    work.act(Action::Breaker { slot, on: false });
    assert_eq!(lines(&work, RuleId::NoAmbulance)[0].step, None, "nobody has called yet");
    work.act(Action::Lock { slot, on: true });
    work.acts(open(Level::Lower));
    let on = lines(&work, RuleId::NoAmbulance);
    assert!(matches!(on[..], [ScoreLine { points: 15.0, .. }]), "{on:?}");
    assert_eq!(on[0].step, Some(shock + 3), "the first cover that came off afterwards");
    // Called at last, after more work: too late for the line, and for what was left undone.
    let late = calls(work, Helper::Ambulance);
    assert_eq!(costs(&late, RuleId::NoAmbulance), 15.0);
    assert!(matches!(late.verdict().cure, Cure::CalledAmiss { .. }));
}

/// A whole proper job after the shock is worth less than the call.
#[test]
fn the_call_is_worth_more_than_the_repair() {
    let (mut work, _) = shocked();
    let slot = work.slot();
    work.act(Action::Breaker { slot, on: false });
    let called = total(&calls(work, Helper::Ambulance));
    let (mut on, _) = shocked();
    for entry in &crate::f02::perfect().session.log {
        on.session.step(&entry.action);
    }
    assert_eq!(on.session.ended, Some(Ending::HandedOver));
    assert!(called > total(&on), "{called} against {}", total(&on));
    assert_eq!(costs(&on, RuleId::NoAmbulance), 15.0);
}

#[test]
fn another_helper_than_an_ambulance_is_amiss_after_a_shock() {
    let (work, _) = shocked();
    let work = calls(work, Helper::Electrician);
    assert_eq!(costs(&work, RuleId::NoAmbulance), 15.0);
}

/// The ambulance comes to bare live screws.
#[test]
fn power_has_to_be_off_for_those_who_help() {
    let (work, _) = shocked();
    let work = calls(work, Helper::Ambulance);
    assert_eq!(work.verdict().cure, Cure::HandedOn { whom: Helper::Ambulance, safe: false });
    assert!(costs(&work, RuleId::LeftUnsafe) > 0.0);
    assert_eq!(costs(&work, RuleId::NoAmbulance), 0.0);
}

/// A tingle, or an act that the coach stops, hurts nobody: an ambulance is then without need.
#[test]
fn nobody_hurt_no_ambulance() {
    let coached = Order { mode: bench::Mode::Coached, ..order(FaultId::F02, &[]) };
    let mut work = Work::at(&coached);
    work.acts(open(Level::Upper));
    let at = Touchable::Metal { point: Screw::H1.into() };
    assert!(matches!(work.session.step(&Action::Touch { at }).shown, Shown::Stopped { .. }));
    let work = calls(work, Helper::Ambulance);
    assert_eq!(costs(&work, RuleId::NoAmbulance), 0.0);
    assert!(costs(&work, RuleId::CalledWithoutNeed) > 0.0);
}
