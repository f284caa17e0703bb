//! What the parts of the van cost: one table, each entry with its tag.

use quantity::{Constant, Tag};

use crate::action::NewPart;

const fn invented(name: &'static str, dollars: f64) -> Constant {
    Constant::new(name, dollars, "$", Tag::Invented("of the order of a supply house's prices"))
}

/// The table, by the names of the parts in the table of minutes.
pub const TABLE: [Constant; 25] = [
    invented("element", 25.0),
    invented("thermostat", 20.0),
    invented("limit", 30.0),
    invented("new-breaker", 25.0),
    invented("fuse", 10.0),
    invented("time-switch", 90.0),
    invented("connectors", 6.0),
    invented("dip-tube", 15.0),
    invented("anode", 40.0),
    invented("sensor", 18.0),
    invented("board", 110.0),
    invented("regulator", 90.0),
    invented("mixing-valve", 120.0),
    invented("cartridge", 45.0),
    invented("drain-valve", 15.0),
    invented("nipples", 20.0),
    invented("connections", 30.0),
    invented("hot-line", 80.0),
    invented("pipe-clips", 12.0),
    invented("return-check", 30.0),
    invented("pump-timer", 45.0),
    invented("gasket", 4.0),
    invented("relief-valve", 35.0),
    invented("expansion-tank", 60.0),
    invented("heater", 700.0),
];

/// What a part costs, in dollars.
pub fn of(part: &NewPart) -> f64 {
    named(crate::minutes::part_name(part))
}

/// What a whole heater costs, in dollars.
pub fn heater() -> f64 {
    named("heater")
}

fn named(name: &str) -> f64 {
    TABLE.iter().find(|entry| entry.name == name).map_or(0.0, Constant::get)
}
