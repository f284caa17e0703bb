//! A house walked through in every round, and what tells two such walks apart.

use bench::{Action, Job, Session, Shown};

use crate::compare::{reads_alike, seems_unchanged};
use crate::rounds::{CALL, Round};

/// All that every round shows in one house, and the house.
#[derive(Clone, PartialEq, Debug)]
pub struct Walk {
    job: Job,
    rounds: [Vec<(Action, Shown)>; Round::ALL.len()],
}

/// One act, and what it shows in either house.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Telling<'a> {
    /// The round it belongs to.
    pub round: Round,
    /// Its place in the round, 0 the first.
    pub step: usize,
    /// The act.
    pub act: &'a Action,
    /// The last wait or draw before it in its round: how the heater stood.
    pub after: Option<&'a Action>,
    /// What it shows in the first house.
    pub here: &'a Shown,
    /// What it shows in the other.
    pub there: &'a Shown,
}

impl Walk {
    /// Walks every round of a job, each from the moment the door opens.
    pub fn through(job: Job) -> Self {
        Self { rounds: Round::ALL.map(|round| round.walk(&job)), job }
    }

    /// The house after one act: water drawn that calls the lower thermostat.
    pub fn drawn(&self) -> Session {
        let mut session = Session::begin(self.job.clone());
        session.step(&CALL);
        session
    }

    /// What an act of a round shows, by its place in the round.
    pub fn shown(&self, round: Round, step: usize) -> Option<&Shown> {
        self.rounds.get(round as usize)?.get(step).map(|(_, shown)| shown)
    }

    /// The same, where it is this act that stands there.
    pub(crate) fn shown_by(&self, act: &Action, round: Round, step: usize) -> Option<&Shown> {
        let (there, shown) = self.rounds.get(round as usize)?.get(step)?;
        (there == act).then_some(shown)
    }

    /// The acts that show something else in the other house, by more than instruments and eyes leave open.
    /// Acts that only one of the two houses has are passed over.
    pub fn told_from<'a>(&'a self, other: &'a Self) -> impl Iterator<Item = Telling<'a>> {
        self.tells(other, reads_alike)
    }

    /// How many acts that is. A contact tried again and again counts once.
    pub fn acts_that_tell(&self, other: &Self) -> usize {
        let (contacts, others): (Vec<_>, Vec<_>) =
            self.told_from(other).partition(|t| t.round == Round::Contacts);
        others.len() + usize::from(!contacts.is_empty())
    }

    /// The same as [`Walk::told_from`], where the other is this house later: what is only judged by eye counts too.
    pub(crate) fn grown_to<'a>(&'a self, later: &'a Self) -> impl Iterator<Item = Telling<'a>> {
        self.tells(later, seems_unchanged)
    }

    fn tells<'a>(
        &'a self,
        other: &'a Self,
        alike: fn(&Shown, &Shown) -> bool,
    ) -> impl Iterator<Item = Telling<'a>> {
        Round::ALL.iter().zip(self.rounds.iter().zip(&other.rounds)).flat_map(
            move |(round, (here, there))| {
                let mut after = None;
                here.iter().zip(there).enumerate().filter_map(move |(step, ((act, here), (same, there)))| {
                    let before = after;
                    if sets(act) {
                        after = Some(act);
                    }
                    let tells = act == same && !alike(here, there);
                    tells.then_some(Telling { round: *round, step, act, after: before, here, there })
                })
            },
        )
    }
}

/// Acts that leave the heater otherwise than it was: satisfied, or called again.
const fn sets(act: &Action) -> bool {
    matches!(
        act,
        Action::WaitForCutOut
            | Action::Bucket { .. }
            | Action::MainValve { .. }
            | Action::ColdValve { .. }
            | Action::ReturnValve { .. }
            | Action::Thaw
            | Action::Dial { .. }
    )
}
