//! Words that follow the heater: one element is neither upper nor lower. What follows its supply stands in the book.

use plant::heater::Plate;
use plant::{BoxKind, End, Layout, Level, Point, Screw, Wire, Wiring};

use super::{Label, filled, name, text, voice};

/// What supplies the heater, on its plate.
pub fn supply(plate: &Plate) -> String {
    let volts = format!("{:.0}", plate.element.volts.get());
    let id = if plate.supply().hot_neutral() { "plate-supply-neutral" } else { "plate-supply" };
    filled(id, &[("volts", volts.into())])
}

/// What its elements draw, on its plate.
pub fn elements(plate: &Plate) -> String {
    let watts = format!("{:.0}", plate.element.watts.get());
    filled("plate-watts", &[("watts", watts.into())])
}

/// A name without "upper" where nothing is lower. The book says which word is left out, and with which blank.
pub fn fit(said: String, layout: Layout) -> String {
    if layout.has(Level::Lower) {
        return said;
    }
    let upper = text("level-upper-left-out");
    let plain = said.replace(&upper, "");
    match plain.strip_prefix(&voice::capital(&upper)) {
        Some(rest) => voice::capital(rest),
        None => plain,
    }
}

/// A point of this heater in full, for a list or a screen reader.
pub fn point(point: Point, wiring: &Wiring) -> String {
    fit(name::any_point(point), wiring.layout)
}

/// A lead of the wiring diagram, by what it joins.
pub fn diagram_wire(wire: Wire, wiring: &Wiring) -> String {
    let [from, to] = wire.home().map(|screw| point(screw.into(), wiring).into());
    filled("diagram-wire", &[("from", from), ("to", to)])
}

/// A wire on a screw, in the colour that it is seen to have.
pub fn wire_on(end: End, colour: Option<&str>) -> String {
    let name = voice::wire_of(end);
    match colour {
        Some(colour) => filled(
            "point-wire",
            &[("wire", name.into()), ("colour", text(&format!("colour-{colour}")).into())],
        ),
        None => name,
    }
}

/// The screw that a wire's end is on.
pub fn landed_on(screw: Screw, wiring: &Wiring) -> String {
    filled("point-landed", &[("screw", point(screw.into(), wiring).into())])
}

/// What stands in the line, on two lines.
pub const fn box_kind(kind: BoxKind) -> [Option<Label>; 2] {
    match kind {
        BoxKind::FusedSwitch => [Some(Label("sheet-box-switch-1")), Some(Label("sheet-box-switch-2"))],
        BoxKind::Timer => [Some(Label("sheet-box-timer")), None],
        BoxKind::UtilityRelay => [Some(Label("sheet-box-relay-1")), Some(Label("sheet-box-relay-2"))],
    }
}

/// How a pair of contacts stands.
pub const fn contacts_state(closed: bool) -> Label {
    Label(if closed { "sheet-box-closed" } else { "sheet-box-open" })
}

/// How the box stands, as far as its door lets it be seen.
pub const fn box_state(seen: &bench::view::BoxView) -> Option<Label> {
    match (seen.closed, seen.locked) {
        (_, true) => Some(Label("sheet-box-locked")),
        (Some(closed), _) => Some(contacts_state(closed)),
        (None, _) => None,
    }
}

#[cfg(test)]
mod tests {
    use plant::HeaterModel;

    use super::*;

    fn said(heater: HeaterModel, screw: Screw) -> String {
        let setting = plant::Setting { heater, ..crate::begin::example().home.setting };
        let plant = plant::Home::sound(setting).plant;
        super::super::about(&plant);
        point(screw.into(), &plant.wiring)
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

    #[test]
    fn in_spanish_a_small_heater_has_no_upper_part_either() {
        super::super::speak(words::Language::Spanish, include_str!("../../../assets/words/es.ftl"));
        for &screw in Screw::ALL {
            let words = said(HeaterModel::Small20, screw);
            assert!(!words.contains("superior"), "{words}");
        }
        assert_eq!(said(HeaterModel::Small20, Screw::U1), "U1, termostato, común");
        assert_eq!(said(HeaterModel::Small20, Screw::H3), "H3, limitador, tornillo de entrada del neutro");
        assert_eq!(fit("Tapa superior: quitar".into(), Layout::SingleElement), "Tapa: quitar");
        super::super::turn_to(words::Language::English);
    }
}
