//! The house over the time of a job, sampled for the debrief's drawings: water, currents, the way they take.

use bench::{Action, Session, Waiting};
use plant::home::Home;
use plant::{DipTube, Level, Screw, Tap, Wire};
use quantity::{Amps, Metres, Pressure, Seconds, Temperature, Volume, Watts};
use serde::{Deserialize, Serialize};

use super::ladder::{Ladder, Path};

/// Layers drawn, from the bottom up.
pub const LAYERS: u32 = 24;
/// Shortest time between two samples while something goes on.
const APART: Seconds = Seconds(120.0);
/// Most samples between acts, over the whole job.
const MOST: f64 = 360.0;

/// The house at one moment.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize)]
pub struct Sample {
    /// Time into the job.
    pub at: Seconds,
    /// The act that it shows: in its course or at its end; 0 on arrival.
    pub step: u32,
    /// Water of each layer, bottom first; nothing where it is dry.
    pub layers: Vec<Option<Temperature>>,
    /// Share of the tank that is full.
    pub fill: f64,
    /// What the upper and the lower control feel.
    pub controls: [Temperature; 2],
    /// The hottest water that runs from a tap.
    pub tap: Option<Temperature>,
    /// Heat of the upper and the lower element.
    pub watts: [Watts; 2],
    /// Current in each heater lead, `feed-a` and `feed-b`.
    pub legs: [Amps; 2],
    /// Pressure at the tank.
    pub pressure: Pressure,
    /// Power reaches the limit's line screws.
    pub live: bool,
    /// How the circuit stands.
    pub path: Path,
    /// Scale on each element.
    pub scale: [Metres; 2],
    /// Sediment over the bottom.
    pub sediment: Volume,
    /// The dip tube.
    pub dip_tube: Option<DipTube>,
}

impl Sample {
    /// Water at the very top; none where the top is dry.
    pub fn top(&self) -> Option<Temperature> {
        self.layers.last().copied().flatten()
    }
}

/// The whole job.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize)]
pub struct Picture {
    /// The circuit.
    pub ladder: Ladder,
    /// Samples in order of time: on arrival, at the end of each act, and between while nothing but time passes.
    pub samples: Vec<Sample>,
}

impl Picture {
    /// The sample at the end of an act, by its place.
    pub fn after(&self, step: u32) -> usize {
        self.samples.partition_point(|one| one.step <= step).saturating_sub(1)
    }

    /// The last sample at or before a time, by its place.
    pub fn shown(&self, at: Seconds) -> usize {
        self.samples.partition_point(|one| one.at <= at).saturating_sub(1)
    }
}

/// Samples the states on the way. A long act is let run again in slices on a copy, for the picture alone.
pub fn picture(states: &[Session]) -> Picture {
    let Some(first) = states.first() else { return Picture::default() };
    let mut picture = Picture::of(first);
    let pairs = || states.iter().zip(states.iter().skip(1)).zip(1_u32..);
    let waited: f64 = pairs().filter_map(|((before, after), _)| waits(before, after)).map(Seconds::get).sum();
    for ((before, after), step) in pairs() {
        if let Some(took) = waits(before, after) {
            let mut meanwhile = Meanwhile::new((before, after), took, apart(Seconds(waited)), step);
            while meanwhile.sample(&mut picture) {}
        }
        picture.and(after, step);
    }
    picture
}

/// Time between two samples of all that was waited.
fn apart(waited: Seconds) -> Seconds {
    Seconds((waited.get() / MOST).max(APART.get()))
}

/// How long nothing but time passed from one state to the next. Other acts change the house at a moment of their
/// own.
fn waits(before: &Session, after: &Session) -> Option<Seconds> {
    let action = &after.log.last()?.action;
    matches!(action, Action::Wait { .. } | Action::WaitForCutOut | Action::LetThemUse { .. })
        .then(|| after.clock - before.clock)
}

/// Time that passed between two states, let pass again on a copy, a slice at a time.
pub struct Meanwhile {
    course: Course,
    began: Seconds,
    slice: Seconds,
    slices: u32,
    passed: u32,
    step: u32,
}

/// How it passes.
enum Course {
    /// Nothing but time.
    Quiet(Box<Home>),
    /// People go to the taps.
    Lived(Box<Waiting>),
}

impl Course {
    fn of(before: &Session, action: Option<&Action>) -> Self {
        let lived = action.filter(|one| matches!(one, Action::LetThemUse { .. }));
        match lived.and_then(|action| Waiting::begin(before, action)) {
            Some(waiting) => Self::Lived(Box::new(waiting)),
            None => Self::Quiet(Box::new(before.home.clone())),
        }
    }
}

impl Meanwhile {
    /// Of a film that goes on act by act; `None` where it was not time that passed.
    pub fn of(before: &Session, after: &Session, step: u32) -> Option<Self> {
        let took = waits(before, after)?;
        Some(Self::new((before, after), took, apart(took), step))
    }

    fn new((before, after): (&Session, &Session), took: Seconds, apart: Seconds, step: u32) -> Self {
        let slices = (took / apart).ceil().max(1.0);
        Self {
            course: Course::of(before, after.log.last().map(|entry| &entry.action)),
            began: before.clock,
            slice: took / slices,
            slices: slices as u32,
            passed: 0,
            step,
        }
    }

    /// Takes the next sample on the way into a picture. Whether there was one.
    pub fn sample(&mut self, picture: &mut Picture) -> bool {
        if self.passed + 1 >= self.slices {
            return false;
        }
        self.passed += 1;
        let due = self.began + self.slice * f64::from(self.passed);
        match &mut self.course {
            Course::Quiet(home) => {
                home.plant.advance(self.slice);
                picture.take(home, due, self.step);
            }
            // Their pieces end where a tap is turned: the first that reaches what is due is taken.
            Course::Lived(waiting) => {
                while waiting.clock() < due && waiting.go_on() {}
                picture.take(waiting.home(), waiting.clock(), self.step);
            }
        }
        true
    }
}

impl Picture {
    /// A state to begin with.
    pub fn of(first: &Session) -> Self {
        let mut picture = Self { ladder: Ladder::of(&first.home.plant), samples: Vec::new() };
        picture.take(&first.home, first.clock, 0);
        picture
    }

    /// The end of an act.
    pub fn and(&mut self, after: &Session, step: u32) {
        self.take(&after.home, after.clock, step);
    }

    fn take(&mut self, home: &Home, at: Seconds, step: u32) {
        let plant = &home.plant;
        let live = plant.energise(&[]);
        let running =
            |tap: &&Tap| plant.plumbing.hot_opening(tap.index()) > 0.0 && plant.tap_flow(**tap).get() > 0.0;
        let hottest = |a: Temperature, b: Temperature| if b > a { b } else { a };
        let to_ground = |screw: Screw| live.volts(screw.into(), Screw::G.into()).get() > 50.0;
        self.samples.push(Sample {
            at,
            step,
            layers: plant.layers(LAYERS),
            fill: plant.fill(),
            controls: [0, 1].map(|i: usize| plant.thermostats.get(i).map_or(plant.room, |one| one.body)),
            tap: Tap::ALL.iter().filter(running).map(|tap| plant.tap_temperature(*tap)).reduce(hottest),
            watts: [Level::Upper, Level::Lower].map(|level| live.element_watts(level)),
            legs: [live.amps(Wire::FeedA), live.amps(Wire::FeedB)],
            pressure: plant.plumbing.pressure,
            live: to_ground(Screw::H1) || to_ground(Screw::H3),
            path: self.ladder.path(home, &live),
            scale: [0, 1]
                .map(|i: usize| plant.elements.get(i).map_or(Metres(0.0), |one| one.scale.thickness)),
            sediment: plant.vessel.sediment,
            dip_tube: Some(plant.vessel.dip_tube),
        });
    }
}
