//! Questions to the plant that more than one act asks.

use plant::electrical::Bridge;
use plant::{ContactAt, End, Handle, Level, Place, Plant, Point, Screw, Tap, Wire};
use quantity::{Constant, Flow, Ohms, Tag, Temperature, Volts};

use super::behind::contact_place;

quantity::constants! {
    /// Below this share the tank counts as not full: expansion and layers move the last half per cent.
    const FULL: Constant = Constant::new("share from which the tank counts as full", 0.995, "1", Tag::Model("expansion and layers move the last half per cent"));
    /// Load that tells a firm voltage from a stray one.
    const FIRM: Constant<Ohms> = Constant::of("load that tells a firm voltage from a stray one", Ohms(3000.0), Tag::Published("support pages of instrument sellers: low-impedance meters take about 3 kilohms"));
    /// Less than this from the relief valve only wets it: a glass in ten minutes.
    const TRICKLE: Constant<Flow> = Constant::of("less than this from the relief valve only wets it", Flow(3e-7), Tag::Model("a glass in ten minutes"));
    /// From here up a point counts as live.
    pub(crate) const LIVE: Constant<Volts> = Constant::of("from here a point counts as live", Volts(50.0), Tag::Published("OSHA 1910.333(a)(1): other rules below 50 V to ground"));
    /// Water on the floor from which hands and feet count as wet.
    const WET_FLOOR: Constant<quantity::Volume> = Constant::of("water on the floor with which hands and feet are wet", quantity::Volume::litres(2.0), Tag::Model("more than a wet towel takes up"));
}

/// Hands and feet are wet with what stands on the floor.
pub(crate) fn wet_floor(plant: &Plant) -> bool {
    plant.plumbing.on_floor >= WET_FLOOR.get()
}

/// The tank is full.
pub(crate) fn full(plant: &Plant) -> bool {
    plant.fill() >= FULL.get()
}

/// Water covers an element.
pub(crate) fn wetted(plant: &Plant, level: Level) -> bool {
    plant.wetted(level)
}

/// Height of an element above the bottom, in metres.
pub(crate) fn flange(plant: &Plant, level: Level) -> f64 {
    match level {
        Level::Upper => plant.plate.upper_element.get(),
        Level::Lower => plant.plate.lower_element.get(),
    }
}

/// Voltage of the supply across the heater, unloaded.
pub(crate) fn nominal(plant: &Plant) -> Volts {
    plant.service.across()
}

/// Some breaker that feeds the heater is on, and so is the box in its line.
pub(crate) fn fed(plant: &Plant) -> bool {
    let on = |b: &plant::Breaker| {
        let fitted = match b.feeds {
            plant::Circuit::Heater => plant.in_line,
            plant::Circuit::OffPeak => plant.off_peak,
            _ => None,
        };
        b.handle == Handle::On && fitted.is_none_or(|one| one.closed)
    };
    plant.panel.breakers.iter().any(|b| b.feeds_heater() && on(b))
}

/// A wire of the heater lies off its screw.
pub(crate) fn any_lifted(plant: &Plant) -> bool {
    End::all().any(|end| exists(plant, end.wire) && plant.wiring.joint(end).on.is_none())
}

/// The wire is there in this house.
pub(crate) fn exists(plant: &Plant, wire: Wire) -> bool {
    plant.wiring.exists(wire)
}

/// The point is there in this house.
pub(crate) fn there(plant: &Plant, point: Point) -> bool {
    plant.wiring.has(point)
}

/// The place is there in this house.
pub(crate) fn place_there(plant: &Plant, place: Place) -> bool {
    let stands = plant.plumbing.stand.is_there();
    match place {
        Place::JunctionBox | Place::UpperCompartment => stands,
        Place::LowerCompartment => stands && plant.plate.has(Level::Lower),
        Place::InLineBox => plant.wiring.boxed,
        _ => true,
    }
}

/// The same metal by one name: a landed wire end is its screw.
pub(crate) fn metal(plant: &Plant, point: Point) -> Point {
    match point {
        Point::End(end) if exists(plant, end.wire) => plant.wiring.joint(end).on.map_or(point, Point::Screw),
        _ => point,
    }
}

/// Metal that belongs to ground: not meant to carry current.
pub(crate) const fn ground(point: Point) -> Option<Screw> {
    match point {
        Point::Screw(screw @ (Screw::G | Screw::N | Screw::Jg | Screw::Shell | Screw::Pipe)) => Some(screw),
        _ => None,
    }
}

/// Voltage between two points that a load of a few kilohms does not pull down.
pub(crate) fn firm(plant: &Plant, a: Point, b: Point) -> Volts {
    if a == b {
        return Volts(0.0);
    }
    plant.across(Bridge::ohms(a, b, FIRM.get()))
}

/// Firm voltage of a point to the ground bar of the load center.
pub(crate) fn to_ground(plant: &Plant, point: Point) -> Volts {
    firm(plant, point, Point::Screw(Screw::G))
}

/// One of two points is firmly live to ground.
pub(crate) fn either_live(plant: &Plant, a: Point, b: Point) -> bool {
    let ground = Point::Screw(Screw::G);
    let met = [a, b].map(|point| (point != ground).then(|| Bridge::ohms(point, ground, FIRM.get())));
    plant.across_both(met).iter().any(|volts| *volts >= LIVE.get())
}

/// The first hot tap that stands open and gives water.
pub(crate) fn open_tap(plant: &Plant) -> Option<Tap> {
    Tap::ALL.iter().copied().find(|tap| opening(plant, *tap) > 0.0 && plant.tap_flow(*tap).get() > 0.0)
}

/// How far a tap stands open.
pub(crate) fn opening(plant: &Plant, tap: Tap) -> f64 {
    plant.plumbing.taps.get(tap as usize).copied().unwrap_or(0.0)
}

/// A tap spits air.
pub(crate) fn spits(plant: &Plant, tap: Tap) -> bool {
    plant.tap_spits(tap)
}

/// The relief valve lets water out now.
pub(crate) fn relief_runs(plant: &Plant) -> bool {
    plant.relief_flow() >= TRICKLE.get()
}

/// A wire end or a contact is charred at a place.
pub(crate) fn charred_at(plant: &Plant, place: Place) -> bool {
    let joint =
        |end: End| exists(plant, end.wire) && end.home().place() == place && plant.wiring.joint(end).charred;
    let contact = |at: &ContactAt| contact_place(*at) == place && plant.contact(*at).1.charred;
    End::all().any(joint) || ContactAt::ALL.iter().any(contact)
}

/// A wire that comes and goes with the heater.
pub(crate) const fn inside(wire: Wire) -> bool {
    !wire.is_cable()
}

/// Water temperatures in equal slices of the height, bottom first.
pub(crate) fn layers(plant: &Plant, count: u32) -> Vec<Option<Temperature>> {
    let slice = plant.plate.height.get() / f64::from(count.max(1));
    let at = |i: u32| plant.tank.temperature_at((f64::from(i) + 0.5) * slice);
    (0..count).map(|i| at(i).map(Temperature::celsius)).collect()
}
