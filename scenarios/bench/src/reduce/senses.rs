//! Questions to the plant that more than one act asks.

use plant::electrical::Bridge;
use plant::supply::ServiceKind;
use plant::{Breaker, Circuit, End, Handle, Level, Place, Plant, Point, Screw, Tap, Wire};
use quantity::{Ohms, Temperature, Volts};

/// Below this share the tank counts as not full: expansion and layers move the last half per cent.
const FULL: f64 = 0.995;
/// Load that tells a firm voltage from a stray one (trade sheet 6.12, published: low-impedance meters take
/// about 3 kilohms).
const FIRM: Ohms = Ohms(3000.0);
/// From here up a point counts as live. Trade sheet 6.8: below 50 V to ground other rules hold (published).
pub(crate) const LIVE: Volts = Volts(50.0);

/// The tank is full.
pub(crate) fn full(plant: &Plant) -> bool {
    plant.fill() >= FULL
}

/// Water covers an element.
pub(crate) fn wetted(plant: &Plant, level: Level) -> bool {
    plant.fill() * plant.plate.height.get() > flange(plant, level)
}

/// Height of an element above the bottom, in metres.
pub(crate) fn flange(plant: &Plant, level: Level) -> f64 {
    match level {
        Level::Upper => plant.plate.upper_element.get(),
        Level::Lower => plant.plate.lower_element.get(),
    }
}

/// Nominal voltage leg to leg.
pub(crate) fn nominal(plant: &Plant) -> Volts {
    let factor = match plant.service.kind {
        ServiceKind::Split240 => 2.0,
        ServiceKind::Wye208 => 3f64.sqrt(),
    };
    plant.service.leg * factor
}

/// A breaker that truly feeds the heater.
pub(crate) fn feeds_heater(breaker: &Breaker) -> bool {
    matches!(breaker.feeds, Circuit::Heater | Circuit::SecondSource)
}

/// Some breaker that feeds the heater is on.
pub(crate) fn fed(plant: &Plant) -> bool {
    plant.panel.breakers.iter().any(|b| feeds_heater(b) && b.handle == Handle::On)
}

/// A wire of the heater lies off its screw.
pub(crate) fn any_lifted(plant: &Plant) -> bool {
    End::all().any(|end| exists(plant, end.wire) && plant.wiring.joint(end).on.is_none())
}

/// The wire is there in this house.
pub(crate) fn exists(plant: &Plant, wire: Wire) -> bool {
    plant.wiring.second_source || !matches!(wire, Wire::SecondA | Wire::SecondB)
}

/// The point is there in this house.
pub(crate) fn there(plant: &Plant, point: Point) -> bool {
    match point {
        Point::Screw(Screw::S1 | Screw::S2) => plant.wiring.second_source,
        Point::Screw(_) => true,
        Point::End(end) => exists(plant, end.wire),
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
    plant.energise(&[Bridge { a, b, resistance: FIRM }]).volts(a, b).abs()
}

/// Firm voltage of a point to the ground bar of the load center.
pub(crate) fn to_ground(plant: &Plant, point: Point) -> Volts {
    firm(plant, point, Point::Screw(Screw::G))
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
    opening(plant, tap) > 0.0 && !full(plant)
}

/// Temperature of what comes from the drain.
pub(crate) fn drain_temperature(plant: &Plant) -> Temperature {
    plant.wall(Level::Lower)
}

/// The relief valve lets water out now.
pub(crate) fn relief_runs(plant: &Plant) -> bool {
    let relief = &plant.plumbing.relief;
    relief.open || (relief.lever && plant.fill() > 0.9)
}

/// A wire end is charred at a place.
pub(crate) fn charred_at(plant: &Plant, place: Place) -> bool {
    End::all()
        .any(|end| exists(plant, end.wire) && end.home().place() == place && plant.wiring.joint(end).charred)
}

/// A wire that comes and goes with the heater.
pub(crate) const fn inside(wire: Wire) -> bool {
    !matches!(wire, Wire::CableA | Wire::CableB | Wire::CableG | Wire::SecondA | Wire::SecondB)
}

/// Water temperatures in equal slices of the height, bottom first.
pub(crate) fn layers(plant: &Plant, count: u32) -> Vec<Option<Temperature>> {
    let walls = [plant.wall(Level::Lower), plant.wall(Level::Upper)];
    let wet = |i: u32| (f64::from(i) + 0.5) / f64::from(count) < plant.fill();
    (0..count).map(|i| wet(i).then_some(walls[usize::from(i >= count / 2)])).collect()
}
