//! What a debrief shows, computed from the replay: the score, the way through the job, the tank as it went.

mod ladder;
mod picture;
mod steps;

pub use ladder::{Ladder, Part, Path, Piece, Rails, Stand};
pub use picture::{LAYERS, Meanwhile, Picture, Sample, picture};
pub use steps::{Moment, Phase, Told, letter};

use bench::Session;
use diagnosis::Circle;
use plant::fault::FaultCase;
use plant::household::Symptom;
use serde::{Deserialize, Serialize};

use crate::belief::{self, Held};
use crate::cure::{self, Cure, RightEnd};
use crate::make::{Drill, Title};
use crate::replay::{circles, judge_among, states};
use crate::rubric::Rubric;
use crate::score::Score;

/// Days lived on in the house after the job, to hear whether anybody still complains.
const DAYS_AFTER: u16 = 3;

/// Everything a debrief shows.
#[derive(Clone, PartialEq, Debug)]
pub struct Debrief {
    /// The drill's name.
    pub title: Title,
    /// What was truly wrong.
    pub fault: FaultCase,
    /// The second thing wrong, where there were two.
    pub second: Option<FaultCase>,
    /// What the right end was for this licence.
    pub right_end: RightEnd,
    /// The score.
    pub score: Score,
    /// What became of the house.
    pub cure: Cure,
    /// What the people would complain of in the days after, when the job was not cured.
    pub afterwards: Option<Symptom>,
    /// Sloppy statements of the trade that the job acted on.
    pub beliefs: Vec<Held>,
    /// The acts in order.
    pub moments: Vec<Moment>,
    /// Simulated minutes by phase, in the order of [`Phase::ALL`].
    pub phases: [f64; Phase::ALL.len()],
    /// Layers and currents over time.
    pub picture: Picture,
    /// Simulated minutes in all.
    pub minutes: f64,
}

/// What folding and judging a list of acts finds: the long part of a debrief, which another thread may compute.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Findings {
    /// The score.
    pub score: Score,
    /// What became of the house.
    pub cure: Cure,
    /// What the people would complain of in the days after, when the job was not cured.
    pub afterwards: Option<Symptom>,
    /// Sloppy statements of the trade that the job acted on.
    pub beliefs: Vec<Held>,
    /// The acts in order.
    pub moments: Vec<Moment>,
    /// Layers and currents over time.
    pub picture: Picture,
    /// Simulated minutes in all.
    pub minutes: f64,
}

/// Makes the debrief of a list of acts.
pub fn debrief(drill: &Drill, actions: &[bench::Action], rubric: &Rubric) -> Debrief {
    Debrief::of(drill, Findings::of(drill, &circles(drill), actions, rubric))
}

impl Findings {
    /// Folds the acts and judges them among the drill's suspects.
    pub fn of(drill: &Drill, circles: &[Circle], actions: &[bench::Action], rubric: &Rubric) -> Self {
        let states = states(drill, actions);
        let fallback;
        let end: &Session = match states.last() {
            Some(end) => end,
            None => {
                fallback = Session::begin(drill.job.clone());
                &fallback
            }
        };
        let score = judge_among(drill, circles, end, rubric);
        let cure = cure::judge(drill, end);
        let afterwards = match cure {
            Cure::NotCured { .. } => cure::aftermath(drill, end, DAYS_AFTER),
            _ => None,
        };
        let moments = steps::moments(drill, end, &score);
        Self {
            beliefs: belief::held(drill, end, &score),
            score,
            cure,
            afterwards,
            moments,
            picture: picture(&states),
            minutes: end.clock.to_minutes(),
        }
    }
}

impl Debrief {
    /// The debrief of a drill in which this was found.
    pub fn of(drill: &Drill, found: Findings) -> Self {
        let Findings { score, cure, afterwards, beliefs, moments, picture, minutes } = found;
        let mut phases = [0.0; Phase::ALL.len()];
        for moment in &moments {
            if let Some(sum) = phases.get_mut(moment.phase as usize) {
                *sum += moment.took.to_minutes();
            }
        }
        Self {
            title: drill.title,
            fault: drill.fault.clone(),
            second: drill.second.clone(),
            right_end: cure::right_end(drill),
            score,
            cure,
            afterwards,
            beliefs,
            moments,
            phases,
            picture,
            minutes,
        }
    }
}

#[cfg(test)]
mod tests {
    use bench::{Action, Cover, MeterFunction, Mode};
    use plant::fault::FaultId;
    use plant::{HeaterModel, Screw};
    use quantity::Seconds;

    use super::*;
    use crate::order::{Order, Wanted};

    fn sample() -> (Drill, Vec<Action>) {
        let order = Order {
            fault: Wanted::One(FaultId::F01),
            heater: Some(HeaterModel::Plain40),
            ..Order::chance(4, Mode::Solo)
        };
        let volts = |red: Screw, black: Screw| Action::Meter {
            function: MeterFunction::Volts,
            red: red.into(),
            black: black.into(),
        };
        let acts = vec![
            Action::TellHousehold,
            Action::Gloves { on: true },
            Action::EyeProtection { on: true },
            Action::Cover { which: Cover::Upper, off: true },
            Action::Cover { which: Cover::UpperInsulation, off: true },
            Action::Cover { which: Cover::UpperShield, off: true },
            volts(Screw::H1, Screw::H3),
            volts(Screw::H1, Screw::H3),
            volts(Screw::H1, Screw::H3),
            Action::WaitForCutOut,
        ];
        (crate::make(&order).unwrap(), acts)
    }

    #[test]
    fn it_follows_the_acts_and_their_time() {
        let (drill, acts) = sample();
        let d = debrief(&drill, &acts, &Rubric::plain());
        assert_eq!(d.moments.len(), acts.len());
        let sum: f64 = d.phases.iter().sum();
        assert!((sum - d.minutes).abs() < 1e-6, "{sum} {}", d.minutes);
        let first = d.picture.samples.first().unwrap();
        let last = d.picture.samples.last().unwrap();
        assert_eq!(first.at.0, 0.0);
        assert!((last.at.to_minutes() - d.minutes).abs() < 1e-6);
        assert!(d.picture.samples.windows(2).all(|w| w[0].at <= w[1].at && w[0].step <= w[1].step));
        for (step, moment) in (1..).zip(&d.moments) {
            let end = &d.picture.samples[d.picture.after(step)];
            assert_eq!((end.step, end.at), (step, moment.at + moment.took));
        }
        assert_eq!(
            d.picture.shown(Seconds(0.0)),
            d.picture.after(d.moments.iter().take_while(|m| m.took.get() <= 0.0).count() as u32)
        );
    }

    #[test]
    fn a_picture_stays_small_however_long_the_waits() {
        let (drill, mut acts) = sample();
        acts.extend(std::iter::repeat_n(Action::Wait { minutes: 600.0 }, 4));
        let d = debrief(&drill, &acts, &Rubric::plain());
        assert!(d.picture.samples.len() <= acts.len() + 1 + 370, "{}", d.picture.samples.len());
        assert!(d.picture.samples.len() > 300);
        assert_eq!(d.picture, debrief(&drill, &acts, &Rubric::plain()).picture);
    }

    #[test]
    fn what_people_draw_while_one_waits_is_in_the_picture() {
        let (drill, mut acts) = sample();
        let quiet = debrief(&drill, &acts, &Rubric::plain()).picture;
        acts.push(Action::LetThemUse { minutes: 1440.0 });
        let picture = debrief(&drill, &acts, &Rubric::plain()).picture;
        let lived = &picture.samples[quiet.samples.len()..];
        let running = lived.iter().filter(|one| one.tap.is_some()).count();
        assert!(running > 0 && running < lived.len() / 2, "{running} of {}", lived.len());
        // Between two acts the film is the same fold: its end joins the act's.
        let [.., before, after] = lived else { panic!("a day is no moment") };
        assert!((before.pressure.get() - after.pressure.get()).abs() < 20_000.0);
        assert!(lived.windows(2).all(|pair| pair[0].at <= pair[1].at));
    }

    #[test]
    fn a_reading_tells_something_new_only_once() {
        let (drill, acts) = sample();
        let d = debrief(&drill, &acts, &Rubric::plain());
        assert!(matches!(&d.moments[6].told, Told::New { ruled_out } if !ruled_out.is_empty()));
        // The second may still rule out what takes a minute to trip a breaker; the third cannot.
        assert_eq!(d.moments[8].told, Told::NothingNew);
        assert_eq!(d.moments[0].told, Told::NoReading);
    }
}
