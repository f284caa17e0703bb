//! From parts and wires as they are to branches between nodes.

use quantity::{Constant, Ohms, Tag, Volts};
use solver::network::{Complex, Network};

use super::constants::{
    ACROSS, BESIDE, BOARD_LOAD, LEAD_STRAY, LEAST_RESISTANCE, NIPPLE_WATER, SERVICE_BOND, SOUND_CONTACT,
    SURFACE_LEAKAGE,
};
use super::nodes::{LEGS, NEUTRAL, Nodes};
use super::{Bridge, HERTZ};
use crate::supply::{Circuit, PORTABLE, Stab};
use crate::{Contact, ContactAt, End, Layout, Level, Plant, Screw, Wire};

/// Where a part of the plant lies in the list of branches.
pub(super) type Place = Option<usize>;

/// A plant as a network, with the places of its parts.
#[derive(Clone, Debug)]
pub(super) struct Lowered {
    /// Nodes by point.
    pub nodes: Nodes,
    /// The network.
    pub network: Network,
    /// Poles of the heater's breakers, each with the leg it sits on.
    pub feeding: Vec<(usize, Place)>,
    /// Poles of each breaker, by slot.
    pub poles: Vec<[Place; 2]>,
    /// Each wire's own copper.
    pub wires: [Place; Wire::ALL.len()],
    /// Each wire end's joint.
    pub joints: [[Place; 2]; Wire::ALL.len()],
    /// Contacts of the heater's controls.
    pub contacts: [Place; ContactAt::ALL.len()],
    /// Coil pieces and leak of each element.
    pub elements: [[Place; PIECES.get()]; 2],
    /// Bridges, in their order.
    pub bridges: Vec<Place>,
}

/// Whether capacitances take part.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Supply {
    /// 60 Hz.
    Alternating,
    /// Direct current: capacitances left out.
    Direct,
}

quantity::constants! {
    /// Pieces an element's coil falls into, at most.
    const PIECES: Constant<usize> =
        Constant::new("pieces of a coil", 3, "", Tag::Model("near the fault, far from it, and the fault itself"));
    /// Room kept for branches.
    const BRANCHES: Constant<usize> =
        Constant::new("branches that room is kept for", 160, "", Tag::Model("a heater with every wire and a meter on it"));
}

/// Screws of the heater whose bases leak to the shell: one of every group that could float.
const LEAKY: &[Screw] = &[
    Screw::Ja,
    Screw::Jb,
    Screw::Jg,
    Screw::H1,
    Screw::H3,
    Screw::U1,
    Screw::D1,
    Screw::Jc,
    Screw::Jd,
    Screw::H5,
    Screw::H7,
    Screw::U3,
    Screw::K1,
    Screw::K2,
    Screw::K3,
    Screw::K4,
    Screw::T1,
    Screw::T2,
    Screw::T3,
    Screw::T4,
];

/// The insulated conductors of each flat cable.
const FLAT_PAIRS: &[[Wire; 2]] = &[
    [Wire::CableA, Wire::CableB],
    [Wire::CableA, Wire::CableN],
    [Wire::SecondA, Wire::SecondB],
    [Wire::OffPeakA, Wire::OffPeakB],
    [Wire::BoxA, Wire::BoxB],
    [Wire::WhipA, Wire::WhipB],
];

/// Conductance of a resistance; one that is no resistance at all is an open circuit.
fn conductance(r: Ohms) -> Complex {
    let r = r.get();
    Complex::real(if r >= 0.0 { (1.0 / r.max(LEAST_RESISTANCE.get())).max(0.0) } else { 0.0 })
}

/// Admittance of a contact whose blade stands closed or open.
fn contact(state: Contact, closed: bool) -> Complex {
    let open = Complex::real(SURFACE_LEAKAGE.get());
    match (state, closed) {
        (Contact::Sound, true) => conductance(Ohms(SOUND_CONTACT.get())),
        (Contact::Worn(r), true) => conductance(r) + open,
        (Contact::Open, _) | (_, false) => open,
    }
}

/// Stray capacitance of a lead, F. A test may set another.
fn lead_stray() -> f64 {
    #[cfg(test)]
    if let Some(farads) = super::fixtures::STRAY.get() {
        return farads;
    }
    LEAD_STRAY.get()
}

/// Lowers a plant with whatever bridges it.
pub(super) fn lower(plant: &Plant, bridges: &[Bridge], supply: Supply) -> Lowered {
    let nodes = Nodes::of(plant);
    let mut network = Network::new(nodes.count);
    network.branches.reserve(BRANCHES.get());
    let mut this = Lowered {
        nodes,
        network,
        feeding: Vec::new(),
        poles: Vec::with_capacity(plant.panel.breakers.len()),
        wires: [None; Wire::ALL.len()],
        joints: [[None; 2]; Wire::ALL.len()],
        contacts: [None; ContactAt::ALL.len()],
        elements: [[None; PIECES.get()]; 2],
        bridges: Vec::with_capacity(bridges.len()),
    };
    this.service(plant);
    this.breakers(plant);
    this.in_line(plant);
    this.wires(plant);
    this.controls(plant);
    this.element(plant, Level::Upper, Screw::UEa, Screw::UEb, supply);
    this.element(plant, Level::Lower, Screw::LEa, Screw::LEb, supply);
    if supply == Supply::Alternating {
        this.strays(plant);
    }
    for bridge in bridges {
        let (a, b) = (this.nodes.point(bridge.a), this.nodes.point(bridge.b));
        let beside = Complex::capacitor(bridge.capacitance.max(0.0), HERTZ);
        let place = this.join(a, b, conductance(bridge.resistance) + beside);
        this.bridges.push(place);
    }
    this
}

/// The screws that each contact joins, in the order of [`ContactAt::ALL`]. A board's relays stand in for the
/// thermostats' contacts, and what is not there joins screws that are not there.
fn contact_screws(layout: Layout) -> [[Screw; 2]; ContactAt::ALL.len()] {
    let [upper, hot, lower] = match layout {
        Layout::Electronic => [[Screw::K1, Screw::K3], [Screw::U1, Screw::U4], [Screw::K1, Screw::K4]],
        Layout::OffPeak => [[Screw::U1, Screw::U2], [Screw::U3, Screw::U4], [Screw::D1, Screw::D2]],
        _ => [[Screw::U1, Screw::U2], [Screw::U1, Screw::U4], [Screw::D1, Screw::D2]],
    };
    [upper, hot, lower, [Screw::H1, Screw::H2], [Screw::H3, Screw::H4]]
}

impl Lowered {
    /// Adds a branch between two nodes that are there.
    fn join(&mut self, a: Option<u32>, b: Option<u32>, admittance: Complex) -> Place {
        Some(self.network.connect(a?, b?, admittance))
    }

    /// Adds a branch between two screws.
    fn screws(&mut self, a: Screw, b: Screw, admittance: Complex) -> Place {
        self.join(self.nodes.screw(a), self.nodes.screw(b), admittance)
    }

    /// Transformer, service conductors and the bonds at the service.
    fn service(&mut self, plant: &Plant) {
        let service = plant.service;
        let Volts(leg) = service.leg;
        let (times, angle) = service.kind.second();
        self.network.fix(NEUTRAL, Complex::ZERO);
        self.network.fix(LEGS[0], Complex::real(leg));
        self.network.fix(LEGS[1], Complex::polar(leg * times, angle));
        for (place, (from, to)) in LEGS.into_iter().zip([Screw::M1, Screw::M2]).enumerate() {
            let line = service.impedance.get(place).map_or(Complex::ZERO, |ohms| conductance(*ohms));
            self.join(Some(from), self.nodes.screw(to), line);
        }
        self.join(Some(NEUTRAL), self.nodes.screw(Screw::N), conductance(service.neutral));
        self.join(Some(NEUTRAL), self.nodes.screw(Screw::G), conductance(service.electrode));
        let bond = conductance(Ohms(SERVICE_BOND.get()));
        self.screws(Screw::N, Screw::G, bond);
        self.screws(Screw::N, Screw::Pipe, bond);
        self.screws(Screw::Shell, Screw::Pipe, conductance(Ohms(NIPPLE_WATER.get())));
        let on = service.loads;
        let loads =
            [(Screw::M1, Screw::N, on.one), (Screw::M2, Screw::N, on.two), (Screw::M1, Screw::M2, on.both)];
        for (a, b, ohms) in loads {
            if ohms.get().is_finite() {
                self.screws(a, b, conductance(ohms));
            }
        }
        for (bus, plugged) in [Screw::M1, Screw::M2].into_iter().zip(service.portable) {
            if plugged {
                self.screws(bus, Screw::N, conductance(PORTABLE.get()));
            }
        }
    }

    /// Breaker poles from the stabs they sit on to the screws they feed.
    fn breakers(&mut self, plant: &Plant) {
        for breaker in &plant.panel.breakers {
            let load = match breaker.feeds {
                Circuit::Heater => Some([Screw::B1, Screw::B2]),
                Circuit::SecondSource | Circuit::OffPeak => Some([Screw::S1, Screw::S2]),
                Circuit::Range | Circuit::Dryer => None,
            };
            let mut places = [None; 2];
            let poles = breaker.stabs.into_iter().zip(breaker.poles).zip(load.into_iter().flatten());
            for (at, (place, ((stab, pole), screw))) in places.iter_mut().zip(poles).enumerate() {
                let (leg, bus) = match stab {
                    Some(Stab::One) => (0, Screw::M1),
                    Some(Stab::Two) => (1, Screw::M2),
                    None => continue,
                };
                *place = self.screws(bus, screw, contact(pole, breaker.is_on(at)));
                self.feeding.push((leg, *place));
            }
            self.poles.push(places);
        }
    }

    /// Blades and fuses of the box in the line: in series, so that either open one opens its leg.
    fn in_line(&mut self, plant: &Plant) {
        let Some(fitted) = &plant.in_line else { return };
        let legs = [(Screw::X1, Screw::X3), (Screw::X2, Screw::X4)];
        for (leg, ((line, load), blade)) in legs.into_iter().zip(fitted.poles).enumerate() {
            let [blade, fuse] = [contact(blade, fitted.closed), contact(fitted.link(leg), true)];
            self.screws(line, load, blade * fuse * (blade + fuse).reciprocal_or_zero());
        }
    }

    /// Wires with their copper and joints. A relay in an off-peak cable is in series with the cable's copper.
    fn wires(&mut self, plant: &Plant) {
        for &wire in Wire::ALL.iter().filter(|wire| plant.wiring.exists(**wire)) {
            let mut copper = conductance(plant.conductor_ohms(wire));
            if let (Some(leg), Some(relay)) = (wire.off_peak_leg(), &plant.off_peak) {
                let pole = contact(relay.poles[leg], relay.closed);
                copper = copper * pole * (copper + pole).reciprocal_or_zero();
            }
            let ends = [End { wire, side: 0 }, End { wire, side: 1 }];
            let [near, far] = ends.map(|end| self.nodes.end(end));
            let place = self.join(near, far, copper);
            let joints = ends.map(|end| {
                let joint = plant.wiring.joint(end);
                let screw = joint.on.and_then(|screw| self.nodes.screw(screw));
                self.join(self.nodes.end(end), screw, conductance(joint.resistance))
            });
            if let Some(entry) = self.wires.get_mut(wire.index()) {
                *entry = place;
            }
            if let Some(entry) = self.joints.get_mut(wire.index()) {
                *entry = joints;
            }
        }
    }

    /// Limits, thermostats and relays, and what leaks over their bases.
    fn controls(&mut self, plant: &Plant) {
        for (&at, [a, b]) in ContactAt::ALL.iter().zip(contact_screws(plant.wiring.layout)) {
            let place = self.screws(a, b, contact(plant.contact(at).0, plant.makes(at)));
            if let Some(entry) = self.contacts.get_mut(at.index()) {
                *entry = place;
            }
        }
        if let Some(limit) = &plant.lower_limit {
            let screws = [(Screw::H5, Screw::H6), (Screw::H7, Screw::H8)];
            for (i, ((line, load), pole)) in screws.into_iter().zip(limit.poles).enumerate() {
                self.screws(line, load, contact(pole, limit.closed(i)));
            }
        }
        if plant.wiring.layout == Layout::Electronic {
            self.screws(Screw::K1, Screw::K2, conductance(Ohms(BOARD_LOAD.get())));
            for (ohms, [a, b]) in
                plant.sensor_ohms().into_iter().zip([[Screw::T1, Screw::T2], [Screw::T3, Screw::T4]])
            {
                self.screws(a, b, conductance(ohms));
            }
        }
        for &screw in LEAKY {
            self.screws(screw, Screw::Shell, Complex::real(SURFACE_LEAKAGE.get()));
        }
        for &level in Level::ALL {
            if let Some(track) = plant.track(level) {
                self.screws(crate::Film::screw(level), Screw::Shell, conductance(track));
            }
        }
        for screw in [Screw::B1, Screw::B2, Screw::S1, Screw::S2, Screw::X1, Screw::X2, Screw::X3, Screw::X4]
        {
            self.screws(screw, Screw::G, Complex::real(SURFACE_LEAKAGE.get()));
        }
    }

    /// An element's coil, whole or with a tap to its sheath, and its insulation.
    fn element(&mut self, plant: &Plant, level: Level, a: Screw, b: Screw, supply: Supply) {
        let Some(element) = plant.elements.get(level.index()) else { return };
        let (a, b, shell) = (self.nodes.screw(a), self.nodes.screw(b), self.nodes.screw(Screw::Shell));
        // A meter finds the coil cold; alternating current of the supply finds it at work.
        let coil = if supply == Supply::Direct { element.cold_coil() } else { element.coil() };
        let sound = |share: f64| conductance(coil * share);
        let broken = Complex::real(SURFACE_LEAKAGE.get());
        let pieces = match (plant.conducting_leak(level), self.nodes.tap(level)) {
            (Some(leak), tap @ Some(_)) => {
                let x = leak.fraction.clamp(0.0, 1.0);
                // A coil that is broken as well is broken on the far side of the fault, as seen from
                // its nearer end: that end still reaches the sheath.
                let (near, far) = match element.is_broken() {
                    false => (sound(x), sound(1.0 - x)),
                    true if 2.0 * x <= 1.0 => (sound(x), broken),
                    true => (broken, sound(1.0 - x)),
                };
                [
                    self.join(a, tap, near),
                    self.join(tap, b, far),
                    self.join(tap, shell, conductance(leak.resistance)),
                ]
            }
            _ => [self.join(a, b, if element.is_broken() { broken } else { sound(1.0) }), None, None],
        };
        if a.is_some() {
            let insulation = conductance(element.insulation());
            self.join(a, shell, insulation);
            self.join(b, shell, insulation);
        }
        if let Some(entry) = self.elements.get_mut(level.index()) {
            *entry = pieces;
        }
    }

    /// Stray capacitances: each lead to both feed leads and the shell; each conductor of a cable to the ground beside
    /// it, to the other conductor and to a live neighbour, by the metre.
    fn strays(&mut self, plant: &Plant) {
        let lead = Complex::capacitor(lead_stray(), HERTZ);
        let beside = |metres: f64| Complex::capacitor(BESIDE.get() * metres.max(0.0), HERTZ);
        // A relay sits at the head of its cable: the run lies behind it.
        let run = |wire: Wire| End { wire, side: u8::from(wire.off_peak_leg().is_some()) };
        for &pair in FLAT_PAIRS {
            let [a, b] = pair.map(|wire| self.nodes.end(run(wire)));
            self.join(a, b, beside(ACROSS.get() * plant.wiring.length(pair[0]).get()));
        }
        let ground = self.nodes.end(End { wire: Wire::CableG, side: 0 });
        let boxed: f64 = [Wire::BoxA, Wire::WhipA].iter().map(|wire| plant.wiring.length(*wire).get()).sum();
        let [feed_a, feed_b] = [Wire::FeedA, Wire::FeedB].map(|wire| self.nodes.end(End { wire, side: 1 }));
        let shell = self.nodes.screw(Screw::Shell);
        for &wire in Wire::ALL {
            let node = self.nodes.end(run(wire));
            if wire.is_cable() {
                let metres = plant.wiring.length(wire).get();
                if wire != Wire::CableG {
                    self.join(node, ground, beside(metres));
                }
                let neighbour = match wire {
                    Wire::CableA | Wire::CableB => plant.beside_live.get(),
                    // Shared out between the runs before and behind a box.
                    Wire::BoxA | Wire::BoxB | Wire::WhipA | Wire::WhipB => {
                        plant.beside_live.get() * metres / boxed.max(f64::MIN_POSITIVE)
                    }
                    _ => 0.0,
                };
                if neighbour > 0.0 && neighbour.is_finite() {
                    self.join(node, Some(LEGS[0]), beside(neighbour));
                }
                continue;
            }
            self.join(node, shell, lead);
            if wire != Wire::Bond && wire != Wire::FeedB {
                self.join(node, feed_b, lead);
                if wire != Wire::FeedA {
                    self.join(node, feed_a, lead);
                }
            }
        }
    }
}
