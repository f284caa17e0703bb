//! The numbers of a fault: how often it is met, what it is drawn with, and where both come from.

use std::collections::BTreeMap;

use quantity::{Constant, Draw, Figure, Listed, Shown, Tag};

use super::FaultId;
use crate::home::Home;
use crate::parts::Level;

/// A number a fault is drawn with.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Parameter {
    /// Its name in drill files.
    pub name: &'static str,
    /// Smallest value.
    pub low: f64,
    /// Largest value.
    pub high: f64,
    /// Its unit, as printed.
    pub unit: &'static str,
    /// Drawn evenly in the logarithm.
    pub logarithmic: bool,
    /// Whole numbers only.
    pub whole: bool,
    /// Where its range comes from.
    pub tag: Tag,
}

/// The numbers of one fault, by parameter name.
pub type Parameters = BTreeMap<String, f64>;

impl Parameter {
    /// One of two cases, 0 or 1; the unit says which is which.
    pub(super) const fn either(name: &'static str, cases: &'static str) -> Self {
        let tag = Tag::Model("both cases are drawn alike");
        Self { name, low: 0.0, high: 1.0, unit: cases, logarithmic: false, whole: true, tag }
    }

    /// Drawn evenly between two values.
    pub(super) const fn between(name: &'static str, range: [f64; 2], unit: &'static str, tag: Tag) -> Self {
        let [low, high] = range;
        Self { name, low, high, unit, logarithmic: false, whole: false, tag }
    }

    /// Drawn between two values evenly in the logarithm.
    pub(super) const fn spread(name: &'static str, range: [f64; 2], unit: &'static str, tag: Tag) -> Self {
        Self { logarithmic: true, ..Self::between(name, range, unit, tag) }
    }

    pub(super) fn draw(&self, draw: &mut Draw) -> f64 {
        let u = draw.unit();
        if self.whole {
            (self.low + (u * (self.high - self.low + 1.0)).floor()).min(self.high)
        } else {
            self.value(u)
        }
    }

    /// The value at a place of its range, 0 to 1, as it is drawn.
    pub(super) fn value(&self, place: f64) -> f64 {
        if self.logarithmic {
            self.low * quantity::det::exp(place * quantity::det::ln(self.high / self.low))
        } else {
            self.low + place * (self.high - self.low)
        }
    }

    /// Where in its range a value lies, 0 to 1, as it is drawn.
    pub(super) fn place(&self, value: f64) -> f64 {
        if self.logarithmic {
            quantity::det::ln(value / self.low) / quantity::det::ln(self.high / self.low)
        } else {
            (value - self.low) / (self.high - self.low)
        }
    }
}

impl Shown for Parameter {
    fn name(&self) -> &'static str {
        self.name
    }
    fn value(&self) -> String {
        format!("{} to {}", self.low.si(), self.high.si())
    }
    fn unit(&self) -> &'static str {
        self.unit
    }
    fn usual(&self) -> Option<String> {
        None
    }
    fn tag(&self) -> Tag {
        self.tag
    }
}

/// How often a fault is met, relative to the others: what tradespeople say of their calls.
pub(super) const fn weight(value: f64) -> Constant {
    Constant::new("how often it is met, relative to the others", value, "", Tag::CommonPractice)
}

/// The numbers of the catalogue, fault by fault.
pub(crate) fn sources() -> Vec<Listed> {
    let mut all = Vec::new();
    for id in FaultId::ALL {
        let fault = id.fault();
        all.push(Listed { module: fault.module, ident: "weight", constant: &fault.weight });
        let ranges = fault.parameters.iter().filter(|p| !p.whole);
        all.extend(ranges.map(|p| Listed { module: fault.module, ident: p.name, constant: p }));
    }
    all
}

/// Which of the two parts of a kind, read from a parameter named `level`: 0 upper, 1 lower.
pub fn level_of(parameters: &Parameters) -> Level {
    if chosen(parameters, "level") { Level::Lower } else { Level::Upper }
}

/// The same in a house that may have an upper one only.
pub(super) fn level_in(parameters: &Parameters, home: &Home) -> Level {
    if home.plant.plate.has(Level::Lower) { level_of(parameters) } else { Level::Upper }
}

/// Sets a parameter named `level` to a part the house has, and one named `utility` to what stands in its lines.
pub fn place_in(parameters: &mut Parameters, home: &Home) {
    if let Some(level) = parameters.get_mut("level").filter(|_| !home.plant.plate.has(Level::Lower)) {
        *level = 0.0;
    }
    super::f26::place(parameters, home);
}

/// One number of a fault; 0 when a hand-made case lacks it, which `Fault::complete` never leaves so.
pub(super) fn parameter(parameters: &Parameters, name: &str) -> f64 {
    parameters.get(name).copied().unwrap_or(0.0)
}

/// Whether the second of a parameter's two cases holds.
pub(super) fn chosen(parameters: &Parameters, name: &str) -> bool {
    is_second(parameter(parameters, name))
}

/// Whether a value nearer 1 than 0 stands for the second of two cases.
pub(super) fn is_second(value: f64) -> bool {
    2.0 * value >= 1.0
}
