//! How far a fault has gone: where it stands among the numbers that it is drawn with, and never a sentence.

use quantity::Draw;

use super::Fault;
use super::numbers::{Parameter, Parameters, chosen, parameter};
use crate::named::named;

named! {
    /// How far a fault has gone.
    Stage {
        /// It has begun.
        Early = "early",
        /// Between the two.
        WellOn = "well-on",
        /// Far gone: about as bad as it is met, or at its end.
        Gone = "gone",
    }
}

/// Which end of a parameter's range is the bad one.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Way {
    /// It gets worse as this number grows.
    Grows(&'static str),
    /// It gets worse as this number shrinks.
    Shrinks(&'static str),
}

/// What tells the stages of a fault.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Stages {
    /// There is no between that shows: it works or it does not, somebody left it so, or nothing measures how far it is.
    Sudden,
    /// One number all the way, a third of what is drawn to each stage.
    Along(Way),
    /// One number, half of what is drawn to either stage, until the second case of the named choice ends it.
    Until(Way, &'static str),
    /// Well on in the first case of the named choice, gone in the second; its beginning shows nowhere.
    Late(&'static str),
}

impl Stages {
    /// The stages it knows, the first first.
    pub const fn all(self) -> &'static [Stage] {
        match self {
            Self::Sudden => &[],
            Self::Along(_) | Self::Until(..) => Stage::ALL,
            Self::Late(_) => &[Stage::WellOn, Stage::Gone],
        }
    }

    /// The choice that ends it.
    const fn end(self) -> Option<&'static str> {
        match self {
            Self::Until(_, end) | Self::Late(end) => Some(end),
            Self::Sudden | Self::Along(_) => None,
        }
    }

    /// The number it follows, and the stages that share its range.
    fn course(self) -> Option<(Way, &'static [Stage])> {
        match self {
            Self::Along(way) => Some((way, Stage::ALL)),
            Self::Until(way, _) => Some((way, &[Stage::Early, Stage::WellOn])),
            Self::Sudden | Self::Late(_) => None,
        }
    }
}

impl Way {
    const fn name(self) -> &'static str {
        match self {
            Self::Grows(name) | Self::Shrinks(name) => name,
        }
    }

    /// A place in the range, counted from the good end, from its place counted from the low end; and back.
    fn turned(self, place: f64) -> f64 {
        match self {
            Self::Grows(_) => place,
            Self::Shrinks(_) => 1.0 - place,
        }
    }
}

impl Fault {
    /// How far it has gone with these numbers; nothing where it knows no between.
    pub fn stage(&self, parameters: &Parameters) -> Option<Stage> {
        if self.stages.end().is_some_and(|end| chosen(parameters, end)) {
            return Some(Stage::Gone);
        }
        let Some((way, among)) = self.stages.course() else { return self.stages.all().first().copied() };
        let worn = way.turned(self.named(way)?.place(parameter(parameters, way.name())));
        let at = (worn * among.len() as f64) as usize;
        among.get(at.min(among.len() - 1)).copied()
    }

    /// Numbers of this stage: drawn as always, but that what tells the stage lies in its part. Nothing where the fault
    /// does not know the stage. The same stream gives each stage at the same place of its part.
    pub fn at(&self, stage: Stage, draw: &mut Draw) -> Option<Parameters> {
        if !self.stages.all().contains(&stage) {
            return None;
        }
        let mut numbers = self.complete(&Parameters::new(), draw).ok()?;
        let mut set = |name: &str, value: f64| numbers.get_mut(name).map(|one| std::mem::replace(one, value));
        if let Some(end) = self.stages.end() {
            set(end, f64::from(u8::from(stage == Stage::Gone)));
        }
        if let Some((way, among)) = self.stages.course()
            && let Some(part) = among.iter().position(|one| *one == stage)
        {
            let range = self.named(way)?;
            let drawn = way.turned(range.place(parameter(&numbers, way.name())));
            let worn = (part as f64 + drawn) / among.len() as f64;
            numbers.insert(way.name().to_owned(), range.value(way.turned(worn)));
        }
        Some(numbers)
    }

    fn named(&self, way: Way) -> Option<&'static Parameter> {
        self.parameters.iter().find(|p| p.name == way.name())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fault::FaultId;

    const DRAWINGS: u64 = 200;

    fn staged() -> impl Iterator<Item = &'static Fault> {
        FaultId::ALL.iter().map(|id| id.fault()).filter(|fault| fault.stages != Stages::Sudden)
    }

    fn drawn(fault: &Fault, seed: u64) -> Parameters {
        fault.complete(&Parameters::new(), &mut Draw::new(seed, "stage")).unwrap()
    }

    #[test]
    fn what_tells_a_stage_is_drawn() {
        for fault in staged() {
            let has = |name: &str, whole| fault.parameters.iter().any(|p| p.name == name && p.whole == whole);
            assert!(fault.stages.course().is_none_or(|(way, _)| has(way.name(), false)), "{}", fault.id);
            assert!(fault.stages.end().is_none_or(|end| has(end, true)), "{}", fault.id);
        }
    }

    #[test]
    fn every_drawing_has_a_stage_and_every_stage_is_drawn() {
        for fault in staged() {
            let found = |seed| fault.stage(&drawn(fault, seed)).unwrap();
            let all: std::collections::BTreeSet<Stage> = (0..DRAWINGS).map(found).collect();
            assert!(all.iter().eq(fault.stages.all()), "{}: {all:?}", fault.id);
        }
        let sudden = FaultId::ALL.iter().map(|id| id.fault()).filter(|fault| fault.stages == Stages::Sudden);
        for fault in sudden {
            assert_eq!(fault.stage(&drawn(fault, 1)), None, "{}", fault.id);
        }
    }

    #[test]
    fn numbers_drawn_at_a_stage_are_of_that_stage_and_within_their_ranges() {
        for fault in staged() {
            for (seed, &stage) in (0..DRAWINGS).flat_map(|seed| Stage::ALL.iter().map(move |s| (seed, s))) {
                let Some(numbers) = fault.at(stage, &mut Draw::new(seed, "stage")) else {
                    assert!(!fault.stages.all().contains(&stage));
                    continue;
                };
                assert_eq!(fault.stage(&numbers), Some(stage), "{} {numbers:?}", fault.id);
                assert!(fault.complete(&numbers, &mut Draw::new(seed, "stage")).is_ok(), "{}", fault.id);
            }
        }
    }

    #[test]
    fn only_what_tells_the_stage_differs_between_stages() {
        for fault in staged() {
            let usual = drawn(fault, 7);
            let tells = [fault.stages.end(), fault.stages.course().map(|(way, _)| way.name())];
            for &stage in fault.stages.all() {
                let numbers = fault.at(stage, &mut Draw::new(7, "stage")).unwrap();
                let differs = numbers.iter().filter(|(name, value)| usual[*name] != **value);
                assert!(differs.into_iter().all(|(name, _)| tells.contains(&Some(name))), "{}", fault.id);
            }
        }
    }

    #[test]
    fn worse_lies_where_the_catalogue_says() {
        let numbers = |name: &str, value| Parameters::from([(name.to_owned(), value)]);
        let nipple = FaultId::F58.fault();
        assert_eq!(nipple.stage(&numbers("free", 0.14)), Some(Stage::Early));
        assert_eq!(nipple.stage(&numbers("free", 0.07)), Some(Stage::Gone));
        let splice = FaultId::F23.fault();
        assert_eq!(splice.stage(&numbers("ohms", 0.07)), Some(Stage::Early));
        assert_eq!(splice.stage(&numbers("ohms", 0.11)), Some(Stage::WellOn));
        assert_eq!(splice.stage(&numbers("open", 1.0)), Some(Stage::Gone));
    }
}
