//! What was asked for: a drill as somebody wrote it, with the rest left to chance.

use plant::climate::Climate;
use plant::fault::{FaultCase, FaultId};
use plant::household::HouseholdKind;
use plant::{HeaterModel, Location};
use serde::{Deserialize, Serialize};

use bench::{Licence, Mode, Trap};

use crate::second::Second;
use crate::wish::{Family, Level};

/// The rules this program computes by. A change that makes an old attempt come out otherwise raises it.
pub const RULES: u32 = 17;

/// A drill as asked for. Everything but the seed may be left out and is then left to chance.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Order {
    /// What kind of file this is.
    #[serde(default)]
    pub tankwright: Kind,
    /// The rules it was written for.
    #[serde(default = "current")]
    pub rules: u32,
    /// The seed of every draw, below 2^30.
    pub seed: u32,
    /// The heater; left to chance when absent.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub heater: Option<HeaterModel>,
    /// Leg voltage of the service; drawn within the ordinary band when absent.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub leg_volts: Option<f64>,
    /// The people.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub household: Option<HouseholdKind>,
    /// The place.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub climate: Option<Climate>,
    /// Where in the house the heater stands.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub location: Option<Location>,
    /// Day of the year.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<u16>,
    /// The fault, or the list it is drawn from.
    #[serde(default)]
    pub fault: Wanted,
    /// How hard it shall be to tell; left to chance when absent.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level: Option<Level>,
    /// The family it shall belong to.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub family: Option<Family>,
    /// The fault it shall look like, without being it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub like: Option<FaultId>,
    /// A second fault beside the first; none when absent.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub second: Option<Second>,
    /// Whose licence the learner holds.
    #[serde(default = "plumber")]
    pub licence: Licence,
    /// Traps laid.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub traps: Vec<Trap>,
    /// How the drill is run.
    #[serde(default = "solo")]
    pub mode: Mode,
    /// Limit in simulated minutes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub limit_minutes: Option<u16>,
    /// Limit by the wall clock in minutes: the page's doing, unproven in a file.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub clock_minutes: Option<u16>,
}

fn current() -> u32 {
    RULES
}
fn plumber() -> Licence {
    Licence::Plumber
}
fn solo() -> Mode {
    Mode::Solo
}

/// Marks a file as a drill.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Kind {
    /// A drill.
    #[default]
    Drill,
}

/// Which fault is wanted.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize)]
#[serde(untagged)]
pub enum Wanted {
    /// Any, by prior weight. Written `null` or left out.
    #[default]
    Chance,
    /// One of these, each as likely as the others.
    List(Vec<FaultId>),
    /// Just this one.
    One(FaultId),
    /// This one, with numbers.
    Case(FaultCase),
}

/// Why an order cannot be used.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
pub enum OrderError {
    /// Not readable as a drill.
    #[error("line {line}, column {column}: {problem}. Compare with docs/drill-file.md")]
    Unreadable {
        /// Line, 1 the first.
        line: usize,
        /// Column.
        column: usize,
        /// What is wrong.
        problem: String,
    },
    /// Rules this release does not have.
    #[error(
        "this drill was made for rules {found}; this release has rules {RULES}. Open it with the release that made it"
    )]
    OtherRules {
        /// Rules found.
        found: u32,
    },
    /// A number out of range.
    #[error("{name} must lie between {low} and {high}, not {value}")]
    OutOfRange {
        /// Field.
        name: &'static str,
        /// Smallest.
        low: f64,
        /// Largest.
        high: f64,
        /// Found.
        value: f64,
    },
    /// A list with nothing in it.
    #[error("the list of faults is empty: name one, or leave `fault` out for any")]
    EmptyList,
    /// No fault of the list can be in this house.
    #[error("none of the faults asked for can be in this house: choose another heater or other faults")]
    NothingFits,
    /// The second fault cannot be there beside the first.
    #[error(
        "no second fault of the kind asked for can be there beside the first: choose another, another heater or licence"
    )]
    NoSecond,
    /// The fault's own numbers.
    #[error(transparent)]
    Fault(#[from] plant::fault::FaultError),
}

impl Order {
    /// Everything left to chance.
    pub fn chance(seed: u32, mode: Mode) -> Self {
        Self {
            tankwright: Kind::Drill,
            rules: RULES,
            seed: seed & SEED_MASK,
            heater: None,
            leg_volts: None,
            household: None,
            climate: None,
            location: None,
            day: None,
            fault: Wanted::Chance,
            level: None,
            family: None,
            like: None,
            second: None,
            licence: Licence::Plumber,
            traps: Vec::new(),
            mode,
            limit_minutes: None,
            clock_minutes: None,
        }
    }

    /// Reads a drill file.
    pub fn read(text: &str) -> Result<Self, OrderError> {
        let order: Self = serde_json::from_str(text).map_err(|e| OrderError::Unreadable {
            line: e.line(),
            column: e.column(),
            problem: plain(&e),
        })?;
        order.check()?;
        Ok(order)
    }

    /// Writes it as a file.
    pub fn write(&self) -> String {
        crate::json::lines(self)
    }

    /// What nobody asked for: the fields of the file that chance fills from the seed.
    pub fn left_to_chance(&self) -> Vec<&'static str> {
        let named = matches!(self.fault, Wanted::One(_) | Wanted::Case(_));
        let fields = [
            ("heater", self.heater.is_none()),
            ("leg-volts", self.leg_volts.is_none()),
            ("household", self.household.is_none()),
            ("climate", self.climate.is_none()),
            ("location", self.location.is_none()),
            ("day", self.day.is_none()),
            ("fault", !named),
            ("level", !named && self.level.is_none()),
            ("family", !named && self.family.is_none()),
            ("like", !named && self.like.is_none()),
            ("second", matches!(self.second, Some(Second::Any | Second::Follows))),
        ];
        fields.into_iter().filter(|(_, left)| *left).map(|(name, _)| name).collect()
    }

    /// Refuses what cannot be meant.
    pub fn check(&self) -> Result<(), OrderError> {
        if self.rules != RULES {
            return Err(OrderError::OtherRules { found: self.rules });
        }
        within("seed", f64::from(self.seed), 0.0, f64::from(SEED_MASK))?;
        within("day", f64::from(self.day.unwrap_or(1)), 1.0, 365.0)?;
        // ANSI C84.1 range B is 110 to 127 V at the service; a little beyond may be asked for. From memory.
        within("leg-volts", self.leg_volts.unwrap_or(120.0), 100.0, 135.0)?;
        within("limit-minutes", f64::from(self.limit_minutes.unwrap_or(60)), 5.0, 1023.0)?;
        within("clock-minutes", f64::from(self.clock_minutes.unwrap_or(60)), 1.0, 1023.0)?;
        if matches!(&self.fault, Wanted::List(list) if list.is_empty()) {
            return Err(OrderError::EmptyList);
        }
        Ok(())
    }
}

/// Seeds are 30 bits, six characters of a code.
pub const SEED_MASK: u32 = (1 << 30) - 1;

fn within(name: &'static str, value: f64, low: f64, high: f64) -> Result<(), OrderError> {
    if (low..=high).contains(&value) {
        Ok(())
    } else {
        Err(OrderError::OutOfRange { name, low, high, value })
    }
}

/// A parser's message without the place, which is told apart.
pub(crate) fn plain(error: &serde_json::Error) -> String {
    let text = error.to_string();
    let cut = text.rfind(" at line ").unwrap_or(text.len());
    text.get(..cut).unwrap_or(&text).chars().take(200).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_shortest_file_is_a_seed() {
        let order = Order::read(r#"{"seed": 7}"#).unwrap();
        assert_eq!(order, Order { mode: Mode::Solo, ..Order::chance(7, Mode::Solo) });
        assert_eq!(Order::read(&order.write()), Ok(order));
    }

    #[test]
    fn a_file_tells_what_was_asked_and_what_was_left_to_chance() {
        let text = r#"{"seed":7,"level":"hard","family":"controls","like":"F10","heater":"plain-40"}"#;
        let order = Order::read(text).unwrap();
        assert_eq!((order.level, order.like), (Some(Level::Hard), Some(FaultId::F10)));
        assert_eq!(Order::read(&order.write()), Ok(order.clone()));
        assert_eq!(order.left_to_chance(), ["leg-volts", "household", "climate", "location", "day", "fault"]);
        assert_eq!(Order::chance(7, Mode::Solo).left_to_chance().len(), 10);
    }

    #[test]
    fn every_way_to_ask_for_a_fault_reads() {
        for (text, wanted) in [
            (r#""F13""#, Wanted::One(FaultId::F13)),
            (r#"["F01","F02"]"#, Wanted::List(vec![FaultId::F01, FaultId::F02])),
            ("null", Wanted::Chance),
        ] {
            assert_eq!(Order::read(&format!(r#"{{"seed":1,"fault":{text}}}"#)).unwrap().fault, wanted);
        }
        let case = Order::read(r#"{"seed":1,"fault":{"id":"F13","fraction":0.5}}"#).unwrap();
        assert!(matches!(case.fault, Wanted::Case(c) if c.parameters["fraction"] == 0.5));
    }

    #[test]
    fn what_is_wrong_is_told_with_its_place() {
        let e = Order::read("{\"seed\": 1,\n \"heater\": \"barrel\"}").unwrap_err();
        assert!(matches!(e, OrderError::Unreadable { line: 2, .. }), "{e}");
        assert!(matches!(Order::read(r#"{"seed":1,"rules":90}"#), Err(OrderError::OtherRules { found: 90 })));
        assert!(matches!(Order::read(r#"{"seed":1,"day":400}"#), Err(OrderError::OutOfRange { .. })));
        assert!(matches!(Order::read(r#"{"seed":1,"fault":[]}"#), Err(OrderError::EmptyList)));
    }
}
