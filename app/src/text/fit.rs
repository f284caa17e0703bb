//! Words that follow the heater: one element is neither upper nor lower, and where a neutral comes there is no
//! second leg.

use plant::heater::Plate;
use plant::{BoxKind, Layout, Level, Place, Point, Screw, Wiring};

use super::{name, voice};

/// What controls the heater, on its plate.
pub const fn control(plate: &Plate) -> &'static str {
    if plate.layout.has_thermostats() { "thermostats" } else { "electronic, two sensors" }
}

/// What supplies the heater, on its plate.
pub fn supply(plate: &Plate) -> String {
    let volts = plate.element.volts.get();
    let wires = if plate.supply().hot_neutral() { ", hot and neutral" } else { "" };
    format!("{volts:.0} V 1Ø{wires}")
}

/// How many circuits, on its plate.
pub const fn circuits(layout: Layout) -> &'static str {
    if matches!(layout, Layout::OffPeak) { "two, lower off-peak" } else { "one" }
}

/// A name without "upper" where nothing is lower.
pub fn fit(said: String, layout: Layout) -> String {
    if layout.has(Level::Lower) {
        return said;
    }
    let plain = said.replace("upper ", "");
    match plain.strip_prefix("Upper ") {
        Some(rest) => voice::capital(rest),
        None => plain,
    }
}

/// A place of this heater, as a heading.
pub const fn place_of(place: Place, layout: Layout) -> &'static str {
    match (place, layout.has(Level::Lower)) {
        (Place::UpperCompartment, false) => "Compartment",
        _ => name::place(place),
    }
}

/// A point of this heater in full, for a list or a screen reader.
pub fn point(point: Point, wiring: &Wiring) -> String {
    let said = name::any_point(point);
    let neutral = wiring.hot_neutral && matches!(point, Point::Screw(Screw::Jb | Screw::H3 | Screw::H4));
    fit(if neutral { said.replace("leg 2", "the neutral") } else { said }, wiring.layout)
}

/// What stands in the line, on two lines.
pub const fn box_kind(kind: BoxKind) -> [&'static str; 2] {
    match kind {
        BoxKind::FusedSwitch => ["Fused", "switch"],
        BoxKind::Timer => ["Timer", ""],
        BoxKind::UtilityRelay => ["Utility", "relay"],
    }
}

/// How the box stands, as far as its door lets it be seen.
pub const fn box_state(seen: &bench::view::BoxView) -> &'static str {
    match (seen.closed, seen.locked) {
        (_, true) => "locked off",
        (Some(true), _) => "closed",
        (Some(false), _) => "open",
        (None, _) => "",
    }
}

#[cfg(test)]
mod tests {
    use plant::HeaterModel;

    use super::*;

    fn said(model: HeaterModel, screw: Screw) -> String {
        let plate = model.plate();
        point(screw.into(), &Wiring::factory(plate.layout, plate.supply().hot_neutral()))
    }

    #[test]
    fn a_small_heater_has_no_upper_part_and_no_second_leg() {
        for &screw in Screw::ALL {
            let words = said(HeaterModel::Small20, screw);
            assert!(!words.contains("upper"), "{words}");
        }
        assert_eq!(said(HeaterModel::Small20, Screw::H3), "H3, limit, line screw of the neutral");
        assert_eq!(said(HeaterModel::Small20, Screw::U1), "U1, thermostat, common");
        assert_eq!(said(HeaterModel::Small20, Screw::M2), "M2, bus, leg 2");
        assert_eq!(said(HeaterModel::Tall50At277, Screw::Jb), "JB, junction box, splice of the neutral");
        assert_eq!(said(HeaterModel::Plain40, Screw::H3), "H3, limit, line screw of leg 2");
        assert_eq!(said(HeaterModel::Plain40, Screw::U1), "U1, upper thermostat, common");
        assert_eq!(fit("Upper insulation off".into(), Layout::SingleElement), "Insulation off");
    }
}
