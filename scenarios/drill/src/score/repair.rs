//! Repair: the right part and rating, nothing changed in vain, nobody's work but one's own.

use bench::person::Harm;
use bench::{Action, Ending, Fact, Helper, NewPart};
use plant::fault::{Advice, PartKind, Remedy, Scope};
use plant::household::{Answer as Told, Question};
use plant::{End, Level};

use super::finding::Found;
use super::{Case, Detail, Ledger, hurt, steps};
use crate::licence;
use crate::rubric::RuleId;

pub(super) fn judge(case: &Case<'_>, found: &Found, ledger: &mut Ledger<'_>) {
    // Of two things wrong both are the learner's own work: the maker sees to it.
    let Some(scope) = case.truths.first().map(|one| one.case.id.scope(&one.case.parameters)) else { return };
    let allowed = licence::covers(case.job.licence, scope);
    let called = match case.session.ended {
        Some(Ending::Called { whom }) => Some(whom),
        _ => None,
    };
    let stopped = hurt::ambulance_called(case.session);
    match called {
        // Somebody hurt comes first: what that leaves undone costs nothing.
        Some(_) if stopped => {}
        Some(whom) if allowed => ledger.charge(RuleId::CalledWithoutNeed, last(case), Detail::Call { whom }),
        Some(whom) if licence::helper_for(scope) != Some(whom) => {
            let right = licence::helper_for(scope).unwrap_or(whom);
            ledger.charge(RuleId::NotCured, last(case), Detail::Call { whom: right });
        }
        Some(_) => {}
        None => handed_over(case, found, licence::helper_for(scope).filter(|_| !allowed), ledger),
    }
    parts(case, ledger);
    unpressed(case, ledger);
    consent(case, ledger);
    if !stopped {
        joints(case, ledger);
    }
}

fn last(case: &Case<'_>) -> Option<u32> {
    u32::try_from(case.session.log.len()).ok().filter(|n| *n > 0)
}

fn handed_over(case: &Case<'_>, found: &Found, helper: Option<Helper>, ledger: &mut Ledger<'_>) {
    let mut by_hand = false;
    for id in case.faults() {
        let words: Vec<Advice> = id.fault().remedies.iter().filter_map(advice).collect();
        by_hand |= words.is_empty();
        // Parts can serve as well as words: elements made for the supply, a heater that meets the demand.
        let said = words.is_empty() || words.iter().any(|a| case.session.me.advised.contains(a));
        if !said && !case.cured {
            ledger.charge(RuleId::WrongWords, None, Detail::Plain);
        }
    }
    if !by_hand {
        return;
    }
    if !case.cured {
        let detail = helper.map_or(Detail::Plain, |whom| Detail::Call { whom });
        ledger.charge(RuleId::NotCured, None, detail);
    } else if !found.right {
        ledger.charge(RuleId::CuredByLuck, None, Detail::Plain);
    }
}

fn advice(remedy: &Remedy) -> Option<Advice> {
    match remedy {
        Remedy::Advise(advice) => Some(*advice),
        _ => None,
    }
}

fn parts(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    for (step, entry) in steps::done(case.session) {
        if let Some(detail) = beyond(case, &entry.action) {
            ledger.charge_once(RuleId::BeyondLicence, Some(step), detail);
        }
        for fact in &entry.outcome.facts {
            if let Fact::PutInAmiss { part } = *fact {
                ledger.charge(RuleId::PutInAmiss, Some(step), Detail::Part { part, cost: 0.0 });
            }
            let Fact::Changed { part, matches, needed, cost } = *fact else { continue };
            let detail = Detail::Part { part, cost };
            if !needed && !goes_with_another(case, part) {
                ledger.charge(RuleId::ChangedInVain, Some(step), detail.clone());
            }
            if !matches {
                ledger.charge(RuleId::WrongRating, Some(step), detail.clone());
            }
            if !licence::covers(case.job.licence, licence::scope_of(part)) {
                ledger.charge_once(RuleId::BeyondLicence, Some(step), detail);
            }
        }
        for harm in &entry.outcome.harms {
            if let Harm::ElementBurntOut { element, .. } = *harm {
                ledger.charge(RuleId::BurntElement, Some(step), Detail::Element { level: element });
            }
        }
    }
}

/// Of parts that have to be changed together none is in vain: a new thermostat pressed flat takes the limit with it.
fn goes_with_another(case: &Case<'_>, part: PartKind) -> bool {
    let all = |remedy: &Remedy| matches!(remedy, Remedy::ReplaceAll(parts) if parts.contains(&part));
    case.faults().any(|id| id.fault().remedies.iter().any(all))
}

/// A thermostat that was changed and stands off the shell.
fn unpressed(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let thermostats = Level::ALL.iter().zip(&case.session.home.plant.thermostats);
    for (level, _) in thermostats.filter(|(_, thermostat)| !thermostat.seated) {
        let part = NewPart::Thermostat { level: *level };
        let changes = |e: &bench::Entry| {
            matches!(&e.action, Action::Replace { part: new } if *new == part)
                && steps::has(e, |fact| matches!(fact, Fact::Changed { .. }))
        };
        if let Some(step) = steps::last(case.session, changes) {
            let detail = Detail::Part { part: part.kind(), cost: 0.0 };
            ledger.charge(RuleId::PutInAmiss, Some(step), detail);
        }
    }
}

/// The place of an act at wires or at a breaker that the licence does not reach.
fn beyond(case: &Case<'_>, action: &Action) -> Option<Detail> {
    let (scope, detail) = match *action {
        Action::Lift { end } | Action::Land { end, .. } | Action::Remake { end, .. } => {
            (licence::scope_of_end(end), Detail::At { end })
        }
        Action::PartPipes => (Scope::Piping, Detail::Part { part: PartKind::Connections, cost: 0.0 }),
        Action::MoveBreaker { .. } => (Scope::Panel, Detail::Point { point: plant::Screw::B1.into() }),
        _ => return None,
    };
    (!licence::covers(case.job.licence, scope)).then_some(detail)
}

/// What was fitted, in dollars, beyond the sum that these people wanted to be asked about.
fn consent(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let Some(Told::Cost { ask_above: Some(most) }) = case.job.account.answer(Question::Cost) else { return };
    let (mut spent, mut agreed) = (0.0, false);
    for (step, entry) in steps::done(case.session) {
        agreed |= entry.action == Action::AgreeCost;
        for fact in &entry.outcome.facts {
            let Fact::Changed { part, cost, .. } = *fact else { continue };
            spent += cost;
            if !agreed && spent > f64::from(most) {
                ledger.charge_once(RuleId::CostNotAgreed, Some(step), Detail::Part { part, cost });
            }
        }
    }
}

/// Joints the learner made and left loose, and wires left hanging.
fn joints(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let before = &case.job.home.plant.wiring;
    let now = &case.session.home.plant.wiring;
    for end in End::all() {
        let (was, is) = (before.joint(end), now.joint(end));
        let step = || {
            steps::last(case.session, |entry| match entry.action {
                Action::Lift { end: at } | Action::Land { end: at, .. } | Action::Remake { end: at, .. } => {
                    at == end
                }
                _ => false,
            })
        };
        if is.on.is_none() && was.on.is_some() {
            ledger.charge(RuleId::WiresOff, step(), Detail::At { end });
        } else if was.torqued && !is.torqued {
            ledger.charge(RuleId::Untorqued, step(), Detail::At { end });
        }
    }
}
