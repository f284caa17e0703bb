//! Who is suspected, and the world in which each is the one.

use bench::Job;
use plant::fault::{FaultCase, FaultId, Parameter, Parameters, Remedy};
use plant::home::Home;
use plant::{Breaker, Handle};

/// A fault with its numbers.
#[derive(Clone, PartialEq, Debug)]
pub struct Suspect {
    /// The fault.
    pub fault: FaultId,
    /// Its numbers.
    pub parameters: Parameters,
}

impl Suspect {
    /// What puts it right.
    pub fn remedy(&self) -> Option<Remedy> {
        self.fault.remedy(&self.parameters)
    }
}

/// Every fault that can be in this house, each in all the variants its whole numbers give (upper or lower,
/// first or second pole), placed where the house has such a part. Numbers on a scale stand at their middle.
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
        let mut placed: Vec<Suspect> = Vec::new();
        for mut parameters in variants {
            plant::fault::place_in(&mut parameters, &sound);
            let suspect = Suspect { fault, parameters };
            if !placed.contains(&suspect) {
                placed.push(suspect);
            }
        }
        placed
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
    let found = Found::of(&job.home);
    let mut job = job.clone();
    job.home.make_sound();
    if let Some(also) = beside {
        (also.id.fault().apply)(&also.parameters, &mut job.home);
    }
    (suspect.fault.fault().apply)(&suspect.parameters, &mut job.home);
    let could = |what: Tripped| trips(suspect.fault, what) || beside.is_some_and(|also| trips(also.id, what));
    found.into_world(&mut job.home, could);
    job
}

/// What stands tripped in a house as it is found.
struct Found {
    limit: bool,
    lower_limit: bool,
    /// Breakers of the heater's circuits, by slot.
    breakers: Vec<usize>,
}

impl Found {
    fn of(home: &Home) -> Self {
        let plant = &home.plant;
        let tripped = |b: &Breaker| b.feeds_heater() && b.handle == Handle::Tripped;
        let breakers = plant.panel.breakers.iter().enumerate();
        Self {
            limit: plant.limit.tripped,
            lower_limit: plant.lower_limit.is_some_and(|limit| limit.tripped),
            breakers: breakers.filter(|(_, b)| tripped(b)).map(|(slot, _)| slot).collect(),
        }
    }

    /// Leaves tripped what this world could have tripped.
    fn into_world(self, home: &mut Home, could: impl Fn(Tripped) -> bool) {
        let plant = &mut home.plant;
        if could(Tripped::Limit) {
            plant.limit.tripped |= self.limit;
            if let Some(limit) = &mut plant.lower_limit {
                limit.tripped |= self.lower_limit;
            }
        }
        if could(Tripped::Breaker) {
            for slot in self.breakers {
                if let Some(breaker) = plant.panel.breakers.get_mut(slot) {
                    breaker.handle = Handle::Tripped;
                }
            }
        }
    }
}

/// What weeks lived with each fault were found to end in, written by `tests/tests/dealing/trips.rs`.
const LIVED: &str = include_str!("../trips.txt");

/// What may be found tripped, in the order of the table's columns.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
enum Tripped {
    Limit,
    Breaker,
}

/// Whether a week with this fault ends with the limit tripped now and then.
pub fn trips_limit(fault: FaultId) -> bool {
    trips(fault, Tripped::Limit)
}

/// The same of a breaker of the heater.
pub fn trips_breaker(fault: FaultId) -> bool {
    trips(fault, Tripped::Breaker)
}

/// Whether a week with this fault ends with it tripped now and then.
fn trips(fault: FaultId, what: Tripped) -> bool {
    let name = fault.to_string();
    let row = LIVED.lines().find_map(|line| line.strip_prefix(name.as_str()));
    // The name, the weeks lived, then one column each.
    let found = row.and_then(|row| row.split_whitespace().nth(1 + what as usize));
    found.is_some_and(|found| found != "0")
}

#[cfg(test)]
mod tests {
    use plant::climate::Climate;
    use plant::household::HouseholdKind;
    use plant::{Circuit, HeaterModel, Setting};

    use super::*;

    #[test]
    fn every_fault_has_lived() {
        assert!(FaultId::ALL.iter().all(|id| LIVED.lines().any(|l| l.starts_with(&id.to_string()))));
        assert!(trips(FaultId::F05, Tripped::Limit) && !trips(FaultId::F05, Tripped::Breaker));
        assert!(trips(FaultId::F20, Tripped::Breaker) && !trips(FaultId::F41, Tripped::Limit));
    }

    #[test]
    fn what_stands_tripped_goes_into_a_world_that_could_have_tripped_it() {
        let mut found = Home::sound(Setting {
            heater: HeaterModel::OffPeak80,
            household: HouseholdKind::Family,
            climate: Climate::MillValley,
            day: 40,
            in_line: None,
            location: Default::default(),
        });
        let sound = found.clone();
        let slot = found.plant.panel.slot_of(Circuit::OffPeak).unwrap();
        found.plant.lower_limit.as_mut().unwrap().tripped = true;
        found.plant.panel.breakers[slot].handle = Handle::Tripped;
        let tripped = |could: bool| {
            let mut world = sound.clone();
            Found::of(&found).into_world(&mut world, |_| could);
            let plant = world.plant;
            (plant.lower_limit.unwrap().tripped, plant.limit.tripped, plant.panel.breakers[slot].handle)
        };
        assert_eq!(tripped(true), (true, false, Handle::Tripped));
        assert_eq!(tripped(false), (false, false, Handle::On));
    }
}
