//! Safety: nobody hurt, nobody endangered.

use bench::person::{Harm, Severity};
use bench::{Action, Fact, Noticed, Shown, Unproved};
use plant::Circuit;

use super::{Case, Detail, Ledger, ScoreLine, steps};
use crate::rubric::RuleId;

pub(super) fn judge(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    for (step, entry) in steps::all(case.session) {
        for fact in &entry.outcome.facts {
            judge_fact(fact, step, ledger);
        }
        for harm in &entry.outcome.harms {
            judge_harm(harm, step, ledger);
        }
        if let Shown::Stopped { .. } = entry.outcome.shown {
            ledger.charge(RuleId::StoppedByCoach, Some(step), Detail::Plain);
        }
        if entry.outcome.noticed.iter().any(|n| matches!(n, Noticed::SomebodyReset { .. })) {
            ledger.charge(RuleId::SomebodyReset, Some(step), Detail::Plain);
        }
    }
    untold(case, ledger);
    miswired_power(case, ledger);
    left_hot(case, ledger);
}

fn judge_fact(fact: &Fact, step: u32, ledger: &mut Ledger<'_>) {
    let step = Some(step);
    match *fact {
        Fact::WorkedUnproved { at, live: true, protected: false, .. } => {
            ledger.charge(RuleId::TouchedLive, step, Detail::Point { point: at });
        }
        Fact::WorkedUnproved { at, live: true, protected: true, .. } => {
            ledger.charge(RuleId::WorkedLive, step, Detail::Point { point: at });
        }
        Fact::WorkedUnproved { live: false, missing, .. } | Fact::OhmsUnproved { live: false, missing }
            if is_told_again(missing, ledger) => {}
        Fact::WorkedUnproved { at, live: false, missing, .. } => {
            ledger.charge(RuleId::WorkedUnproved, step, Detail::Unproved { point: Some(at), missing });
        }
        // Leads on live metal with bare hands or eyes: until proved dead, everything is live.
        Fact::MeasuredLive { protected: false } => {
            ledger.charge_once(RuleId::NoProtection, step, Detail::Plain);
        }
        Fact::OhmsUnproved { live: true, .. } => ledger.charge(RuleId::OhmsLive, step, Detail::Plain),
        Fact::OhmsUnproved { live: false, missing } => {
            ledger.charge(RuleId::OhmsUnproved, step, Detail::Unproved { point: None, missing });
        }
        Fact::EnergisedOpen => ledger.charge(RuleId::EnergisedOpen, step, Detail::Plain),
        Fact::Miswired { end, .. } => ledger.charge(RuleId::Miswired, step, Detail::At { end }),
        Fact::HotDischarge { temperature } => {
            ledger.charge(RuleId::HotDischarge, step, Detail::Hot { temperature });
        }
        _ => {}
    }
}

/// Whose whole procedure lacked one ground left out one thing, however much was done on the strength of it.
fn is_told_again(missing: Unproved, ledger: &Ledger<'_>) -> bool {
    let told = |line: &ScoreLine| matches!(line.detail, Detail::Unproved { missing: Unproved::Ground, .. });
    missing == Unproved::Ground && ledger.lines.iter().any(told)
}

fn judge_harm(harm: &Harm, step: u32, ledger: &mut Ledger<'_>) {
    let step = Some(step);
    let hurt = harm.severity() >= Severity::Injury;
    match harm {
        Harm::Shock(_) if hurt => ledger.charge(RuleId::Shock, step, Detail::Plain),
        Harm::Burn(burn) if hurt => {
            ledger.charge(RuleId::Burn, step, Detail::Hot { temperature: burn.temperature });
        }
        Harm::Steam { .. } => ledger.charge(RuleId::Blast, step, Detail::Plain),
        Harm::Overpressure { .. } if harm.severity() == Severity::Grave => {
            ledger.charge(RuleId::Blast, step, Detail::Plain);
        }
        Harm::Strain { .. } => ledger.charge(RuleId::LiftedAlone, step, Detail::Plain),
        Harm::ArcFlash { .. } => ledger.charge(RuleId::Arc, step, Detail::Plain),
        Harm::Flood { .. } if hurt => ledger.charge(RuleId::Flood, step, Detail::Plain),
        _ => {}
    }
}

/// Power or water went off before anybody was told.
fn untold(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let told = steps::first(case.session, |e| matches!(e.action, Action::TellHousehold));
    let off = steps::first(case.session, |e| match e.action {
        Action::Breaker { on: false, .. } | Action::BoxHandle { closed: false } => true,
        Action::ColdValve { opening } | Action::MainValve { opening } => opening <= 0.0,
        _ => false,
    });
    if let Some(off) = off.filter(|off| told.is_none_or(|told| told > *off)) {
        ledger.charge(RuleId::HouseholdNotTold, Some(off), Detail::Plain);
    }
}

/// Power came on while some wire sat on a foreign screw.
fn miswired_power(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let mut crossed = Vec::new();
    for (step, entry) in steps::done(case.session) {
        if let Action::Land { end, screw, .. } = entry.action {
            crossed.retain(|e| *e != end);
            if screw != end.home() {
                crossed.push(end);
            }
        }
        if let Action::Lift { end } = entry.action {
            crossed.retain(|e| *e != end);
        }
        if steps::has(entry, |f| matches!(f, Fact::Energised { .. }))
            && let Some(end) = crossed.first()
        {
            ledger.charge_once(RuleId::EnergisedMiswired, Some(step), Detail::At { end: *end });
        }
    }
}

/// Dials left where the water scalds, with power on: CPSC advises 120 °F (trade sheet 8.6, published).
fn left_hot(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let plant = &case.session.home.plant;
    let hottest = plant.thermostats.iter().map(|t| t.dial.to_fahrenheit()).fold(0.0, f64::max);
    let on = plant.panel.feeding(Circuit::Heater).is_some_and(|b| b.handle == plant::Handle::On);
    if on && hottest > 125.0 {
        let temperature = quantity::Temperature::fahrenheit(hottest);
        ledger.charge(RuleId::LeftHot, steps::dial_turned(case.session), Detail::Hot { temperature });
    }
}
