//! Whether the house works after the job: an inspection of everything, and days lived on where that decides.

use bench::{Ending, Helper, Session};
use plant::fault::{Advice, Defect, FaultCase, FaultId, PartKind, Remedy};
use plant::home::Home;
use plant::household::{self, Life, Symptom};
use quantity::{Draw, Seconds};
use serde::{Deserialize, Serialize};

use crate::left;
use crate::licence;
use crate::make::Drill;
use crate::score::hurt;

/// What became of the house.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub enum Cure {
    /// It works, or the right words were said.
    Cured,
    /// The work was somebody else's, and the right one was called to a house left safe or not.
    HandedOn {
        /// Whom was called.
        whom: Helper,
        /// Power locked off and water where it does no harm.
        safe: bool,
    },
    /// The work was somebody else's, and the wrong one was called, or nobody was needed.
    CalledAmiss {
        /// Whom was called.
        whom: Helper,
        /// Whom it takes; `None` when the learner's own licence would have done.
        needed: Option<Helper>,
    },
    /// It does not work.
    NotCured {
        /// What is still wrong, or wrong now.
        left: Vec<Defect>,
    },
}

impl Cure {
    /// The job came to its right end.
    pub const fn is_right(&self) -> bool {
        matches!(self, Self::Cured | Self::HandedOn { .. })
    }
}

/// What the right end of a drill is.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum RightEnd {
    /// The learner's own work.
    Own(Remedy),
    /// Somebody else's work: make it safe and call.
    Call(Helper),
}

/// The right end of a drill for the learner's licence.
pub fn right_end(drill: &Drill) -> RightEnd {
    let scope = drill.fault.id.scope(&drill.fault.parameters);
    match drill.fault.id.remedy(&drill.fault.parameters) {
        Some(remedy) if licence::covers(drill.order.licence, scope) => RightEnd::Own(remedy),
        _ => RightEnd::Call(licence::helper_for(scope).unwrap_or(Helper::Electrician)),
    }
}

/// Judges the house as it was left.
pub fn judge(drill: &Drill, session: &Session) -> Cure {
    let right = right_end(drill);
    if let Some(Ending::Called { whom }) = session.ended {
        if hurt::ambulance_called(session) {
            return Cure::HandedOn { whom, safe: left::harmless(session) };
        }
        return match right {
            RightEnd::Call(needed) if needed == whom => {
                Cure::HandedOn { whom, safe: drill.wrong().all(|case| left::safe(session, case)) }
            }
            RightEnd::Call(needed) => Cure::CalledAmiss { whom, needed: Some(needed) },
            RightEnd::Own(_) if works(drill, session).is_empty() => Cure::Cured,
            RightEnd::Own(_) => Cure::CalledAmiss { whom, needed: None },
        };
    }
    let left = works(drill, session);
    if left.is_empty() { Cure::Cured } else { Cure::NotCured { left } }
}

/// Fuller than this a tank that was found empty is full: an air pocket is the finish's own line. Model: no source.
const FULL: f64 = 0.98;

/// What keeps the house from working. A switched-off breaker counts where it is the fault: otherwise the
/// hand-over says so on its own line.
fn works(drill: &Drill, session: &Session) -> Vec<Defect> {
    let advised = |advice| session.me.advised.contains(&advice);
    let mut left = session.home.inspect();
    left.retain(|defect| match defect {
        Defect::PowerOff => drill.has(&[FaultId::F18, FaultId::F63, FaultId::F69]),
        Defect::LowSupply => !advised(Advice::LowSupplyVoltage),
        Defect::DampAir => !advised(Advice::DampAir),
        Defect::ColdMain => !advised(Advice::ColdMain),
        Defect::LongRun => !advised(Advice::NothingWrong),
        Defect::Demand => !advised(Advice::DemandExceedsCapacity) && !serves_as_is(drill, session),
        _ => true,
    });
    if drill.has(&[FaultId::F63]) && session.home.plant.fill() < FULL {
        left.push(Defect::NotFull);
    }
    left
}

/// A bigger heater may serve a bigger demand: only days lived in the house tell.
fn serves_as_is(drill: &Drill, session: &Session) -> bool {
    let bigger = session.home.plant.plate.nominal.0 > drill.job.home.plant.plate.nominal.0 * 1.01;
    bigger && aftermath(drill, session, 4).is_none()
}

/// What the same people would complain of after some more days in the house as it was left; `None` if nothing, or if
/// they would say the same of the heater they were sold, with nothing wrong. Slow: for a debrief, not for a class of thousands.
pub fn aftermath(drill: &Drill, session: &Session, days: u16) -> Option<Symptom> {
    let mut home: Home = session.home.clone();
    // On to the next midnight, where a week begins.
    let time_of_day = (drill.job.starts_at + session.clock).0 % 86_400.0;
    home.plant.plumbing.taps = [0.0; 4];
    home.plant.advance(Seconds(86_400.0 - time_of_day));
    let life = Life { patience: u16::MAX, ..drill.week.life.hands_off() };
    let lived = |mut home: Home| {
        let mut draw = Draw::new(u64::from(drill.order.seed), "aftermath");
        household::complaint(&household::week(&mut home, life, &mut draw, days))
    };
    let mut sound = home.clone();
    let complaint = lived(home)?;
    sound.make_sound();
    (lived(sound) != Some(complaint)).then_some(complaint)
}

/// Parts whose change is the remedy of what is wrong.
pub fn right_parts(drill: &Drill) -> Vec<PartKind> {
    drill.wrong().flat_map(parts_of).collect()
}

fn parts_of(case: &FaultCase) -> Vec<PartKind> {
    match case.id.remedy(&case.parameters) {
        Some(Remedy::Replace(part) | Remedy::FlushAndReplace(part) | Remedy::DryAndReplace(part)) => {
            vec![part]
        }
        Some(Remedy::ReplaceAll(parts)) => parts.to_vec(),
        // On 208 V, elements made for it are as good an end as words.
        Some(Remedy::Advise(Advice::LowSupplyVoltage)) => {
            vec![PartKind::UpperElement, PartKind::LowerElement]
        }
        _ => Vec::new(),
    }
}

/// Whether a licence covers the remedy of a drill.
pub fn within_licence(drill: &Drill) -> bool {
    drill.wrong().all(|case| licence::covers(drill.order.licence, case.id.scope(&case.parameters)))
}
