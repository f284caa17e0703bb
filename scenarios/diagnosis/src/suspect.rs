//! Who is suspected, and the world in which each is the one.

use bench::Job;
use plant::fault::{FaultCase, FaultId, Parameter, Parameters};
use plant::home::Home;
use plant::{Circuit, Handle};

/// A fault with its numbers.
#[derive(Clone, PartialEq, Debug)]
pub struct Suspect {
    /// The fault.
    pub fault: FaultId,
    /// Its numbers.
    pub parameters: Parameters,
}

/// Every fault that can be in this house, each in all the variants its whole numbers give (upper or lower,
/// first or second pole). Numbers on a scale stand at their middle.
pub fn suspects(home: &Home) -> Vec<Suspect> {
    let mut sound = home.clone();
    sound.make_sound();
    let fit = FaultId::ALL.iter().copied().filter(|id| (id.fault().fits)(&sound));
    fit.flat_map(|fault| {
        let start = vec![Parameters::new()];
        let variants = fault.fault().parameters.iter().fold(start, |all, p| {
            all.iter()
                .flat_map(|so_far| values(p).into_iter().map(move |v| with(so_far, p.name, v)))
                .collect()
        });
        variants.into_iter().map(move |parameters| Suspect { fault, parameters })
    })
    .collect()
}

fn values(p: &Parameter) -> Vec<f64> {
    if p.whole {
        (p.low as i64..=p.high as i64).map(|v| v as f64).collect()
    } else if p.logarithmic {
        vec![(p.low * p.high).sqrt()]
    } else {
        vec![(p.low + p.high) / 2.0]
    }
}

fn with(so_far: &Parameters, name: &str, value: f64) -> Parameters {
    let mut all = so_far.clone();
    all.insert(name.to_owned(), value);
    all
}

/// The same job, had this suspect been the one: the house at the same moment with the true fault taken out
/// and this one put in. A limit or a breaker found tripped stays tripped where the suspect itself could have
/// tripped it before the call.
pub fn world(job: &Job, suspect: &Suspect) -> Job {
    world_beside(job, suspect, None)
}

/// The same where something else is wrong in the house whoever is the one: the other fault of a call with two.
pub fn world_beside(job: &Job, suspect: &Suspect, beside: Option<&FaultCase>) -> Job {
    let found = &job.home.plant;
    let limit = found.limit.tripped;
    let breaker = found.panel.feeding(Circuit::Heater).is_some_and(|b| b.handle == Handle::Tripped);
    let mut job = job.clone();
    job.home.make_sound();
    if let Some(also) = beside {
        (also.id.fault().apply)(&also.parameters, &mut job.home);
    }
    (suspect.fault.fault().apply)(&suspect.parameters, &mut job.home);
    let could =
        |trips: fn(FaultId) -> bool| trips(suspect.fault) || beside.is_some_and(|also| trips(also.id));
    if limit && could(overheats) {
        job.home.plant.limit.tripped = true;
    }
    if breaker && could(overloads) {
        let heater = job.home.plant.panel.breakers.iter_mut().filter(|b| b.feeds == Circuit::Heater);
        heater.for_each(|b| b.handle = Handle::Tripped);
    }
    job
}

/// Faults that run the tank to its limit, or warm the limit itself, before anybody calls: found by dealing thousands of
/// drills, and kept to by `tests/tests/exhaustive`.
const fn overheats(fault: FaultId) -> bool {
    matches!(
        fault,
        FaultId::F05
            | FaultId::F06
            | FaultId::F07
            | FaultId::F13
            | FaultId::F14
            | FaultId::F15
            | FaultId::F30
            | FaultId::F33
            | FaultId::F35
            | FaultId::F61
            | FaultId::F68
            | FaultId::F70
            | FaultId::F71
    )
}

/// Faults that trip the breaker before anybody calls; found and kept to likewise.
const fn overloads(fault: FaultId) -> bool {
    matches!(fault, FaultId::F13 | FaultId::F14 | FaultId::F15 | FaultId::F20 | FaultId::F30)
}
