//! One job under way: acts that must not be refused, readings with the values they must have, the verdict.

use std::fmt::Debug;

use bench::person::Harm;
use bench::{Action, Bucket, Helper, Licence, Mode, Outcome, Probe, Session, Shown, Sight};
use drill::cure::{self, Cure};
use drill::{Account, Attempt, Drill, Order, Rubric, RuleId, Score, Wanted};
use plant::climate::Climate;
use plant::fault::{FaultCase, FaultId, Parameters, PartKind};
use plant::household::HouseholdKind;
use plant::{Circuit, Handle, HeaterModel, Level, Screw, Tap, Wire};
use quantity::{Amps, Seconds, Volume};

use crate::technician as by_the_book;

/// A seed under which both elements are drawn within 0.1 % of V²/P, so that readings can be asserted as the
/// trade sheet computes them; see `the_elements_of_the_seed_are_nominal`.
pub const SEED: u32 = 2403;

/// An order with everything named: a 40-gallon heater of 4500 W at 240 V, legs of 120 V, a family.
pub fn order(id: FaultId, numbers: &[(&str, f64)]) -> Order {
    let parameters: Parameters = numbers.iter().map(|(name, value)| ((*name).to_owned(), *value)).collect();
    Order {
        heater: Some(HeaterModel::Plain40),
        leg_volts: Some(120.0),
        household: Some(HouseholdKind::Family),
        climate: Some(Climate::MillValley),
        day: Some(100),
        fault: Wanted::Case(FaultCase { id, parameters }),
        licence: Licence::Plumber,
        ..Order::chance(SEED, Mode::Solo)
    }
}

/// A technician at work.
pub struct Work {
    pub drill: Drill,
    pub session: Session,
}

/// How a job came out.
#[derive(Debug)]
pub struct Verdict {
    pub cure: Cure,
    pub score: Score,
}

impl Work {
    /// Rings at the door.
    pub fn at(order: &Order) -> Self {
        let drill = drill::make(order).unwrap_or_else(|e| panic!("{e}"));
        let session = Session::begin(drill.job.clone());
        Self { drill, session }
    }

    /// Does one act, which must not be refused nor hurt anybody.
    #[track_caller]
    pub fn act(&mut self, action: Action) -> Outcome {
        let outcome = self.session.step(&action);
        let done = !matches!(outcome.shown, Shown::Refused { .. } | Shown::Stopped { .. });
        assert!(done, "step {}: {action:?}: {:?}", self.step(), outcome.shown);
        // A house nobody was in for days gives gas at its first tap: told, and nobody's error.
        let hurt = |harm: &Harm| !matches!(harm, Harm::FlammableGas { .. });
        assert!(!outcome.harms.iter().any(hurt), "step {}: {action:?}: {:?}", self.step(), outcome.harms);
        outcome
    }

    /// Does acts in order.
    #[track_caller]
    pub fn acts(&mut self, actions: impl IntoIterator<Item = Action>) {
        for action in actions {
            self.act(action);
        }
    }

    /// The number of the last step.
    pub fn step(&self) -> u32 {
        self.session.log.len() as u32
    }

    /// The directory's slot of the heater, as it truly is: no order here mislabels it.
    pub fn slot(&self) -> u32 {
        self.session.home.plant.panel.slot_of(Circuit::Heater).unwrap() as u32
    }

    pub fn handle(&self) -> Handle {
        self.session.home.plant.panel.feeding(Circuit::Heater).unwrap().handle
    }

    /// Off, where it is not, locked, and proved dead at these screws too (10.1).
    #[track_caller]
    pub fn make_dead(&mut self, screws: &[Screw]) {
        let slot = self.slot();
        if self.handle() != Handle::Off {
            self.act(Action::Breaker { slot, on: false });
        }
        self.act(Action::Lock { slot, on: true });
        self.acts(by_the_book::prove_ground());
        // A tank that is no ground: the pipe, where a live leg has shown that it is one.
        let proved = |screw| self.session.me.grounds.contains(&screw);
        let ground = if proved(Screw::Shell) { Screw::Shell } else { Screw::Pipe };
        self.acts(by_the_book::prove_dead_to(ground, screws));
        assert!(self.session.me.proved_dead.is_some(), "not proved dead");
    }

    /// Off and locked, nothing touched that would have to be proved.
    #[track_caller]
    pub fn make_dead_outside(&mut self) {
        let slot = self.slot();
        if self.handle() != Handle::Off {
            self.act(Action::Breaker { slot, on: false });
        }
        self.act(Action::Lock { slot, on: true });
    }

    /// Writes the finding down.
    #[track_caller]
    pub fn finds(&mut self, evidence: &[u32]) {
        self.finds_the(self.drill.fault.id, evidence);
    }

    /// Writes a finding of this fault down.
    #[track_caller]
    pub fn finds_the(&mut self, fault: FaultId, evidence: &[u32]) {
        self.act(Action::Finding { fault: Some(fault), evidence: evidence.to_vec() });
    }

    /// Fits the part of this kind that belongs here.
    #[track_caller]
    pub fn fits(&mut self, kind: PartKind) -> Outcome {
        let acts = self.change(kind).into_iter().map(|act| self.act(act));
        acts.last().unwrap()
    }

    /// What changes the part of this kind for the one that belongs here.
    fn change(&self, kind: PartKind) -> Vec<Action> {
        let plant = &self.drill.job.home.plant;
        let breaker = plant.panel.feeding(Circuit::Heater).map_or(Amps(30.0), |b| b.rating);
        by_the_book::change(kind, &plant.plate, breaker, plant.plumbing.main)
    }

    /// Fits it whatever spills: only a refusal would be wrong.
    #[track_caller]
    pub fn forces(&mut self, kind: PartKind) {
        for act in self.change(kind) {
            let shown = self.session.step(&act).shown;
            assert!(!matches!(shown, Shown::Refused { .. } | Shown::Stopped { .. }), "{act:?}: {shown:?}");
        }
    }

    /// Presses the button, running hot water off until it latches.
    #[track_caller]
    pub fn reset_limit(&mut self) -> u32 {
        for _ in 0..30 {
            if sights(self.act(Action::PressReset).shown).contains(&Sight::Clicked) {
                return self.step();
            }
            self.act(Action::Bucket { tap: Tap::Bath, volume: Volume::gallons(4.0) });
            self.act(Action::Wait { minutes: 3.0 });
        }
        panic!("the button never latched");
    }

    /// An element with its wires off must read as a sound one; the step of that reading.
    #[track_caller]
    pub fn coil_is_whole(&mut self, level: Level) -> u32 {
        let [a, b] = by_the_book::screws(level);
        self.acts(by_the_book::lift_element(level));
        let step = self.ohms(a, b, 12.54, 0.1);
        self.acts(by_the_book::land_element(level));
        step
    }

    /// Both elements with their wires off, over a megohm to the shell, and wired again (10.3, 10.5).
    #[track_caller]
    pub fn elements_clear(&mut self) -> [u32; 2] {
        [Level::Upper, Level::Lower].map(|level| {
            let [a, _] = by_the_book::screws(level);
            self.acts(by_the_book::lift_element(level));
            let step = self.insulated(a, Screw::Shell);
            self.acts(by_the_book::land_element(level));
            step
        })
    }

    /// Water at the kitchen tap after half a minute, in °F.
    #[track_caller]
    pub fn tap(&mut self) -> f64 {
        let tap = Tap::Kitchen;
        self.acts([Action::Tap { tap, opening: 1.0 }, Action::Wait { minutes: 0.5 }]);
        let shown = self.act(Action::Thermometer { at: Probe::Tap { tap } }).shown;
        self.act(Action::Tap { tap, opening: 0.0 });
        match shown {
            Shown::Temperature { reading } => reading.to_fahrenheit(),
            other => panic!("{other:?}"),
        }
    }

    /// Lets it run, then the tap must give more than this, in °F. Gives the step of that reading.
    #[track_caller]
    pub fn overheats(&mut self, minutes: f64, more_than: f64) -> u32 {
        self.act(Action::Wait { minutes });
        let tap = self.tap();
        assert!(tap > more_than, "{tap} °F at the tap after {minutes} minutes");
        self.step() - 1
    }

    /// A temperature, in °F.
    #[track_caller]
    pub fn degrees(&mut self, at: Probe) -> f64 {
        match self.act(Action::Thermometer { at }).shown {
            Shown::Temperature { reading } => reading.to_fahrenheit(),
            other => panic!("{other:?}"),
        }
    }

    /// Waits, everything as it is, until it is this hot there, in °F; the step of that reading.
    #[track_caller]
    pub fn heats_past(&mut self, at: Probe, fahrenheit: f64) -> u32 {
        for _ in 0..24 {
            if self.degrees(at) > fahrenheit {
                return self.step();
            }
            self.act(Action::Wait { minutes: 10.0 });
        }
        panic!("never past {fahrenheit} °F");
    }

    /// What is heard at a place.
    #[track_caller]
    pub fn hears(&mut self, at: plant::Place) -> Vec<Sight> {
        sights(self.act(Action::Listen { at }).shown)
    }

    /// Hose on and drain open: until nothing grey comes any more.
    #[track_caller]
    pub fn flushes(&mut self) {
        for _ in 0..60 {
            self.act(Action::Wait { minutes: 5.0 });
            if !self.look(plant::Place::Drain).contains(&Sight::Grit) {
                return;
            }
        }
        panic!("it never ran clear");
    }

    /// Whether the water meter's small dial turns.
    #[track_caller]
    pub fn meter_turns(&mut self) -> bool {
        let seen = sights(self.act(Action::ReadWaterMeter).shown);
        seen.iter().any(|sight| matches!(sight, Sight::WaterMeter { turning: true, .. }))
    }

    /// Draws hot water into buckets at a tap.
    #[track_caller]
    pub fn draw_at(&mut self, tap: Tap, gallons: f64) -> Bucket {
        match self.act(Action::Bucket { tap, volume: Volume::gallons(gallons) }).shown {
            Shown::Bucket(bucket) => bucket,
            other => panic!("{other:?}"),
        }
    }

    /// Draws hot water into buckets.
    #[track_caller]
    pub fn draw(&mut self, gallons: f64) -> Bucket {
        let act = Action::Bucket { tap: Tap::Bath, volume: Volume::gallons(gallons) };
        match self.act(act).shown {
            Shown::Bucket(bucket) => bucket,
            other => panic!("{other:?}"),
        }
    }

    /// Pressure now and the highest, in psi.
    #[track_caller]
    pub fn gauge(&mut self) -> (f64, f64) {
        match self.act(Action::ReadGauge).shown {
            Shown::Pressure { now, highest } => (now.to_psi(), highest.to_psi()),
            other => panic!("{other:?}"),
        }
    }

    /// Water away, changed, filled again and purged (10.6, 10.7, 10.9, 10.10).
    #[track_caller]
    pub fn fits_drained(&mut self, kind: PartKind) {
        self.acts(by_the_book::drain());
        self.fits(kind);
        self.acts(by_the_book::refill_after(kind));
    }

    /// Both compartments open, junction box open, gloves and eye protection on, household told.
    #[track_caller]
    pub fn opens_up(&mut self) {
        self.acts(by_the_book::arrive());
        self.acts(by_the_book::open(Level::Upper));
        self.acts(by_the_book::open(Level::Lower));
    }

    /// So many gallons at the bath: the heater is called.
    #[track_caller]
    pub fn draws(&mut self, gallons: f64) {
        self.act(Action::Bucket { tap: Tap::Bath, volume: Volume::gallons(gallons) });
    }

    /// Waits on where a clogged drain takes longer.
    pub fn drains_out(&mut self) {
        let clogged = self.session.home.plant.plumbing.drain_grit > 0.0;
        while clogged && self.session.home.plant.fill() > 0.01 && self.session.clock < Seconds::days(2.0) {
            self.act(Action::Wait { minutes: 60.0 });
        }
    }

    /// Closed again with the breaker on, for a look at it running.
    #[track_caller]
    pub fn runs(&mut self) {
        if self.session.home.plant.plate.has(Level::Lower) {
            self.acts(by_the_book::close(Level::Lower));
        }
        self.acts(by_the_book::close(Level::Upper));
        let slot = self.slot();
        self.acts(by_the_book::energise(slot));
    }

    /// Closed up, on, watched to its cut-out: this current at first, none in either leg at last.
    #[track_caller]
    pub fn proves(&mut self, first: f64) {
        self.runs();
        self.amps(Wire::FeedA, first);
        self.act(Action::WaitForCutOut);
        self.amps(Wire::FeedA, 0.0);
        self.amps(Wire::FeedB, 0.0);
    }

    /// Judged as it was left.
    pub fn verdict(&self) -> Verdict {
        let cure = cure::judge(&self.drill, &self.session);
        Verdict { score: drill::judge(&self.drill, &self.session, &Rubric::plain()), cure }
    }

    /// Cured by the whole proper job, nothing lost in any account.
    #[track_caller]
    pub fn cured(&self) {
        let Verdict { cure, score } = self.verdict();
        assert_eq!(cure, Cure::Cured, "{:#?}", score.lines);
        assert_eq!(score.reached, score.of, "{:#?}", score.lines);
        let file = self.attempt().write();
        let read = Attempt::read(&file).unwrap_or_else(|e| panic!("{e}"));
        assert!(drill::replay(&self.drill, &read.actions) == self.session, "replayed from its file");
    }

    /// Handed on to the right person, the house left safe, nothing lost in the Repair account.
    #[track_caller]
    pub fn handed_on(&self, whom: Helper) {
        let Verdict { cure, score } = self.verdict();
        assert_eq!(cure, Cure::HandedOn { whom, safe: true });
        assert_eq!(score.account(Account::Repair).count(), 0, "{:#?}", score.lines);
    }

    /// Made dead, the finding written, closed up, and the right person called: handed on.
    #[track_caller]
    pub fn hands_on(&mut self, evidence: &[u32], whom: Helper) {
        self.make_dead(&[]);
        self.finds(evidence);
        self.acts(by_the_book::close(Level::Lower));
        self.acts(by_the_book::close(Level::Upper));
        self.acts([by_the_book::close_box(), Action::TellResult, Action::StopAndCall { whom }]);
        self.handed_on(whom);
    }

    /// What was done, as an attempt file has it.
    pub fn attempt(&self) -> Attempt {
        let actions = self.session.log.iter().map(|entry| entry.action.clone()).collect();
        Attempt { actions, ..Attempt::new("Worked example", self.drill.order.clone()) }
    }
}

impl Verdict {
    /// Points lost in the Repair account by a rule.
    pub fn lost(&self, rule: RuleId) -> f64 {
        self.score.account(Account::Repair).filter(|l| l.rule == rule).map(|l| l.points).sum()
    }
}

pub fn sights(shown: Shown) -> Vec<Sight> {
    match shown {
        Shown::Sights { sights, .. } | Shown::DoneWith { sights } => sights,
        other => panic!("{other:?}"),
    }
}

#[track_caller]
pub fn near(what: &dyn Debug, found: f64, expected: f64, within: f64) {
    assert!((found - expected).abs() <= within, "{what:?}: {found}, not {expected} within {within}");
}
