//! What was seen beside the fault and told, seen and not told, told and not there.

use bench::{Action, Observation, Shown, Sight};
use plant::fault::FaultId;
use plant::{Circuit, Discharge, Home, Level, branch};

use super::{Case, Detail, Ledger, steps};
use crate::rubric::RuleId;

/// What an eye can find at an installation that has to be told though it is not the fault.
const HAZARDS: [Observation; 10] = [
    Observation::NoExpansionControl,
    Observation::OversizedBreaker,
    Observation::PlasticDischarge,
    Observation::UphillDischarge,
    Observation::NoDielectric,
    Observation::NoPan,
    Observation::CappedDischarge,
    Observation::BlockedRelief,
    Observation::BridgedLimit,
    Observation::OtherElement,
];

pub(super) fn judge(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let what = case.job.hearsay;
    let wrong = |entry: &bench::Entry| matches!(entry.action, Action::Answer { so } if so != what.is_so());
    if let Some(step) = steps::first(case.session, wrong) {
        ledger.charge(RuleId::ToldAmiss, Some(step), Detail::Heard { what });
    }
    // Only what this technician had before the eyes: nobody is charged for a cover that stayed on.
    for what in HAZARDS.iter().filter(|what| !told(case, **what) && !put_right(case, **what)) {
        if let Some(step) = seen(case, *what) {
            ledger.charge(RuleId::HazardUnreported, Some(step), Detail::Observed { what: *what });
        }
    }
    for (step, entry) in steps::done(case.session) {
        if let Action::Report { what } = entry.action
            && !holds(case, what)
        {
            ledger.charge(RuleId::ReportedAmiss, Some(step), Detail::Observed { what });
        }
    }
}

/// Reported, or mended, or written down as what is wrong.
fn told(case: &Case<'_>, what: Observation) -> bool {
    let me = &case.session.me;
    let dealt_with = what == Observation::NoExpansionControl
        && (case.session.home.plant.plumbing.expansion.is_some()
            || me.findings.iter().any(|finding| finding.fault == Some(FaultId::F45)));
    dealt_with || me.reported.contains(&what)
}

/// The first step that showed it.
fn seen(case: &Case<'_>, what: Observation) -> Option<u32> {
    let plate = |entry: &bench::Entry| matches!(entry.outcome.shown, Shown::Plate { .. });
    let other = case.job.home.installation.other_element.filter(|_| what == Observation::OtherElement);
    if let Some((of, _)) = other {
        // What stands on a stamp is wrong only beside what stands on the plate.
        steps::first(case.session, plate)?;
        return steps::first(
            case.session,
            |entry| matches!(entry.outcome.shown, Shown::Stamp { level, .. } if level == of),
        );
    }
    let shows = |sight: &Sight| match (what, sight) {
        (Observation::OversizedBreaker, Sight::Cable { awg, .. }) => too_thin(case, *awg),
        (Observation::PlasticDischarge, Sight::Discharge { pipe }) => *pipe == Discharge::Plastic,
        (Observation::UphillDischarge, Sight::Discharge { pipe }) => *pipe == Discharge::Uphill,
        (Observation::CappedDischarge, Sight::Discharge { pipe }) => *pipe == Discharge::Capped,
        // Behind a cap that was seen no valve is to blame.
        (Observation::BlockedRelief, Sight::LeverNothing) => !capped(&case.job.home),
        (Observation::BridgedLimit, Sight::LimitBridged) => true,
        (Observation::NoDielectric, Sight::Dielectric { there })
        | (Observation::NoPan, Sight::Pan { there }) => !there,
        // The look that finds no tank shows the check valve too.
        (Observation::NoExpansionControl, Sight::ExpansionTank { there }) => {
            !there && case.job.home.plant.plumbing.closed
        }
        _ => false,
    };
    steps::done(case.session).find_map(|(step, entry)| match &entry.outcome.shown {
        Shown::Sights { sights, .. } | Shown::DoneWith { sights } => sights.iter().any(shows).then_some(step),
        _ => None,
    })
}

fn capped(home: &Home) -> bool {
    home.installation.discharge == Discharge::Capped
}

/// Somebody's handiwork that is no more has not to be told.
fn put_right(case: &Case<'_>, what: Observation) -> bool {
    let home = &case.session.home;
    match what {
        Observation::CappedDischarge => !capped(home),
        Observation::PlasticDischarge | Observation::UphillDischarge => {
            home.installation.discharge == Discharge::Metal
        }
        // Copper that the technician put on bare steel himself is charged as his own doing.
        Observation::NoDielectric => home.installation.dielectric || case.job.home.installation.dielectric,
        Observation::BlockedRelief => !home.plant.plumbing.relief.blocked,
        Observation::BridgedLimit => !home.installation.bridged,
        Observation::OtherElement => home.installation.other_element.is_none(),
        _ => false,
    }
}

fn too_thin(case: &Case<'_>, awg: u8) -> bool {
    let breaker = case.job.home.plant.panel.feeding(Circuit::Heater);
    breaker.zip(branch::protects(awg)).is_some_and(|(breaker, most)| breaker.rating > most)
}

/// It is so, as the technician found the house or as it is now.
fn holds(case: &Case<'_>, what: Observation) -> bool {
    let (job, now) = (&case.job.home, &case.session.home);
    let plant = &job.plant;
    let installation = &job.installation;
    match what {
        Observation::MislabelledBreaker => plant.panel.breakers.iter().any(|b| b.label != b.feeds),
        Observation::SecondSource => plant.panel.breakers.iter().filter(|b| b.feeds_heater()).count() > 1,
        // The learner's own meter: whoever doubts it is right to say so.
        Observation::BrokenLead => true,
        Observation::NoExpansionControl => plant.plumbing.is_closed() && plant.plumbing.expansion.is_none(),
        Observation::ScaldingWater => {
            [job, now].iter().any(|home| home.plant.outlet().to_fahrenheit() > SCALDS)
                || plant.thermostats.iter().any(|t| t.dial.to_fahrenheit() > SCALDS)
        }
        Observation::OversizedBreaker => {
            too_thin(case, plant.wiring.conductor(plant.wiring.feeders()[0]).awg)
        }
        Observation::PlasticDischarge => installation.discharge == Discharge::Plastic,
        Observation::UphillDischarge => installation.discharge == Discharge::Uphill,
        Observation::NoDielectric => !installation.dielectric || !now.installation.dielectric,
        Observation::NoPan => !installation.pan,
        Observation::CappedDischarge => capped(job),
        Observation::BlockedRelief => plant.plumbing.relief.blocked,
        Observation::BridgedLimit => installation.bridged,
        Observation::OtherElement => {
            let other = |level: &Level| plant.elements[level.index()].stamp != plant.plate.element;
            Level::ALL.iter().any(|level| plant.plate.has(*level) && other(level))
        }
    }
}

/// Warmer than this it is worth a word (trade sheet 8.1, published: third-degree burns in minutes at 125 °F).
const SCALDS: f64 = 123.0;
