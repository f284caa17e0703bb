//! The heater's circuit as a ladder: two rails with what stands in them, a rung for each element, made from the
//! wiring as the factory and the installer left it; and how each piece stands at a moment.

use plant::electrical::{Bridge, Live};
use plant::home::Home;
use plant::{Circuit, Contact, ContactAt, End, Layout, Level, Plant, Screw, Wire};
use quantity::{Amps, Ohms, Volts};
use serde::{Deserialize, Serialize};

/// A point counts as live from here on (from memory: NFPA 70E, 50 V and more).
const LIVE: Volts = Volts(50.0);
/// What every screw is tried with, so that what only stands near a live wire is not taken for live (model: a hundred
/// times less than the strays of a cable beside another).
const TRIED: Ohms = Ohms(5e4);
/// A joint of more is drawn open: it lets a milliampere or two through at 240 V (model).
const OPEN: Ohms = Ohms(1e5);
/// Legs of the relay in an off-peak cable are counted from here.
pub const OFF_PEAK: u8 = 2;

/// What a piece of the ladder is.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub enum Part {
    /// A wire.
    Wire(Wire),
    /// A pole of a breaker.
    Breaker {
        /// Its slot.
        slot: u32,
        /// Which pole.
        pole: u8,
    },
    /// A blade or contact of the box in the line, with its fuse where it has one; of the utility's relay in an off-peak
    /// cable.
    Blade {
        /// The leg; in an off-peak cable two more.
        leg: u8,
    },
    /// A pole of the limit.
    Limit(ContactAt),
    /// A pole of the limit of the off-peak circuit.
    LowerLimit {
        /// Which pole.
        pole: u8,
    },
    /// A contact of a thermostat or of a board's relay.
    Contact(ContactAt),
    /// An element.
    Element(Level),
    /// A board's own supply.
    Board,
}

/// A piece between two screws.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub struct Piece {
    /// What it is.
    pub part: Part,
    /// From, to: away from leg 1, or down a rail.
    pub ends: [Screw; 2],
}

/// Two rails and the rungs between them.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
pub struct Rails {
    /// From each bus down to the limit's load screw.
    pub rails: [Vec<Piece>; 2],
    /// A second feed of the same splices, where there is one.
    pub second: [Vec<Piece>; 2],
    /// One rung each, from rail to rail.
    pub rungs: Vec<Vec<Piece>>,
}

/// The whole circuit: one pair of rails, two for an off-peak heater.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
pub struct Ladder {
    /// Each pair of rails.
    pub circuits: Vec<Rails>,
}

/// How a piece stands.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Stand {
    /// A way for current: closed, whole, landed at both ends where it belongs.
    pub closed: bool,
    /// Current in it.
    pub amps: Amps,
}

/// The ladder at a moment.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize)]
pub struct Path {
    /// Each piece, in the order of [`Ladder::pieces`].
    pub pieces: Vec<Stand>,
    /// Screws live against ground.
    pub live: Vec<Screw>,
    /// Wire ends that are not on the screw they belong on, with the screw they are on.
    pub astray: Vec<(End, Option<Screw>)>,
    /// Current from each element's coil into its sheath.
    pub to_shell: [Amps; 2],
}

impl Ladder {
    /// The circuit of a heater.
    pub fn of(plant: &Plant) -> Self {
        use Screw as S;
        let wiring = &plant.wiring;
        let (one, two) = feeds(plant, Circuit::Heater, [S::M1, S::M2], [S::B1, S::B2], !wiring.hot_neutral);
        let mut main =
            Rails { rails: [chain(one), chain(two)], second: [Vec::new(), Vec::new()], rungs: Vec::new() };
        if wiring.second_source {
            let (one, two) =
                feeds(plant, Circuit::SecondSource, [S::M1, S::M2], [S::S1, S::S2], !wiring.hot_neutral);
            main.second = [with(one, &[wire(Wire::SecondA)]), with(two, &[wire(Wire::SecondB)])];
        }
        let [left, right] = &mut main.rails;
        let way = |a: Wire, b: Wire, c: Wire| match wiring.boxed {
            true => (a, Some(b), c),
            false => (c, None, c),
        };
        for (rail, leg, (to_box, whip, cable), feed, pole) in [
            (left, 0, way(Wire::BoxA, Wire::WhipA, Wire::CableA), Wire::FeedA, ContactAt::LimitOne),
            (right, 1, way(Wire::BoxB, Wire::WhipB, Wire::CableB), Wire::FeedB, ContactAt::LimitTwo),
        ] {
            if leg == 1 && wiring.hot_neutral {
                rail.push(wire(Wire::CableN));
            } else if let Some(whip) = whip {
                let blade = Piece { part: Part::Blade { leg }, ends: [to_box.home()[1], whip.home()[0]] };
                rail.extend([wire(to_box), blade, wire(whip)]);
            } else {
                rail.push(wire(cable));
            }
            let screws = if leg == 0 { [S::H1, S::H2] } else { [S::H3, S::H4] };
            rail.extend([wire(feed), Piece { part: Part::Limit(pole), ends: screws }]);
        }
        let mut circuits = vec![main];
        rungs(plant, &mut circuits);
        Self { circuits }
    }

    /// All pieces in order: of each pair of rails the rails, the second feed, the rungs.
    pub fn pieces(&self) -> impl Iterator<Item = &Piece> {
        self.circuits.iter().flat_map(|one| one.rails.iter().chain(&one.second).chain(&one.rungs).flatten())
    }

    /// How it stands in a house.
    pub(super) fn path(&self, home: &Home, live: &Live) -> Path {
        let plant = &home.plant;
        let mut pieces: Vec<Stand> = self.pieces().map(|one| stand(plant, live, one.part)).collect();
        // What has no current of its own to ask for carries its neighbour's: they are in series.
        let parts: Vec<Part> = self.pieces().map(|one| one.part).collect();
        for (at, part) in parts.iter().enumerate() {
            let beside =
                |at: Option<usize>| at.and_then(|at| pieces.get(at)).map_or(Amps(0.0), |one| one.amps);
            let (before, after) = (beside(at.checked_sub(1)), beside(Some(at + 1)));
            let amps = match part {
                Part::Blade { .. } => after,
                Part::LowerLimit { .. } => before,
                Part::Element(_) => Amps(before.get().max(after.get())),
                Part::Board => after,
                _ => continue,
            };
            if let Some(piece) = pieces.get_mut(at) {
                piece.amps = amps;
            }
        }
        let screws = || Screw::ALL.iter().copied().filter(|screw| plant.wiring.has_screw(*screw));
        let tried: Vec<Bridge> =
            screws().map(|screw| Bridge::ohms(screw.into(), Screw::G.into(), TRIED)).collect();
        let tried = plant.energise(&tried);
        let hot = |screw: &Screw| tried.volts((*screw).into(), Screw::G.into()) >= LIVE;
        let astray = |end: End| {
            let on = plant.wiring.joint(end).on;
            (plant.wiring.exists(end.wire) && on != Some(end.home())).then_some((end, on))
        };
        Path {
            pieces,
            live: screws().filter(hot).collect(),
            astray: End::all().filter_map(astray).collect(),
            to_shell: [Level::Upper, Level::Lower].map(|level| live.sheath_amps(level)),
        }
    }
}

fn wire(of: Wire) -> Piece {
    Piece { part: Part::Wire(of), ends: of.home() }
}

/// The same wire walked the other way.
fn back(of: Wire) -> Piece {
    let [a, b] = of.home();
    Piece { part: Part::Wire(of), ends: [b, a] }
}

fn with(head: Option<Piece>, tail: &[Piece]) -> Vec<Piece> {
    head.into_iter().chain(tail.iter().copied()).collect()
}

fn chain(head: Option<Piece>) -> Vec<Piece> {
    with(head, &[])
}

/// The poles of the breaker that truly feeds a circuit.
fn feeds(
    plant: &Plant,
    of: Circuit,
    buses: [Screw; 2],
    loads: [Screw; 2],
    both: bool,
) -> (Option<Piece>, Option<Piece>) {
    let slot = plant.panel.slot_of(of).map(|slot| slot as u32);
    let pole = |pole: u8| {
        let at = usize::from(pole);
        slot.map(|slot| Piece { part: Part::Breaker { slot, pole }, ends: [buses[at & 1], loads[at & 1]] })
    };
    (pole(0), pole(1).filter(|_| both))
}

/// The rungs of a layout, and an off-peak heater's second pair of rails.
fn rungs(plant: &Plant, circuits: &mut Vec<Rails>) {
    use Screw as S;
    let contact = |at, a, b| Piece { part: Part::Contact(at), ends: [a, b] };
    let upper = Piece { part: Part::Element(Level::Upper), ends: [S::UEa, S::UEb] };
    let lower = Piece { part: Part::Element(Level::Lower), ends: [S::LEa, S::LEb] };
    let cold = contact(ContactAt::UpperCold, S::U1, S::U2);
    let low = contact(ContactAt::LowerCold, S::D1, S::D2);
    let first = [cold, wire(Wire::UpperSwitched), upper, back(Wire::UpperPermanent)];
    let strapped = |pieces: &[Piece]| with(Some(wire(Wire::Strap)), pieces);
    let Some(main) = circuits.first_mut() else { return };
    match plant.wiring.layout {
        Layout::SingleElement => main.rungs = vec![strapped(&first)],
        Layout::NonSimultaneous => {
            let over = contact(ContactAt::UpperHot, S::U1, S::U4);
            let tail = [low, wire(Wire::LowerSwitched), lower, back(Wire::LowerPermanent)];
            // The strap is common to both rungs: it hangs on the rail.
            main.rails[0].push(wire(Wire::Strap));
            main.rungs =
                vec![first.to_vec(), with(Some(over), &[&[wire(Wire::Transfer)], &tail[..]].concat())];
        }
        Layout::Simultaneous => {
            let tail = [low, wire(Wire::LowerSwitched), lower, back(Wire::LowerPermanent)];
            main.rungs = vec![strapped(&first), with(Some(wire(Wire::LowerFeed)), &tail)];
        }
        Layout::OffPeak => {
            main.rungs = vec![strapped(&first)];
            let pole = |pole, a, b| Piece { part: Part::LowerLimit { pole }, ends: [a, b] };
            let (one, two) = feeds(plant, Circuit::OffPeak, [S::M1, S::M2], [S::S1, S::S2], true);
            // The relay sits at the head of its cable: nobody reaches a screw between them.
            let relayed = |leg: u8, cable: Wire| {
                let [from, to] = cable.home();
                let blade = Piece { part: Part::Blade { leg: OFF_PEAK + leg }, ends: [from, to] };
                [blade, Piece { part: Part::Wire(cable), ends: [to, to] }]
            };
            let [relay, cable] = relayed(0, Wire::OffPeakA);
            let left = [relay, cable, wire(Wire::OffPeakFeedA), pole(0, S::H5, S::H6)];
            let [relay, cable] = relayed(1, Wire::OffPeakB);
            let right = [relay, cable, wire(Wire::OffPeakFeedB), pole(1, S::H7, S::H8)];
            let over = contact(ContactAt::UpperHot, S::U3, S::U4);
            let tail = [over, wire(Wire::Transfer), low, wire(Wire::LowerSwitched), lower];
            let rung = [&[wire(Wire::Interlock)], &tail[..], &[back(Wire::OffPeakPermanent)]].concat();
            circuits.push(Rails {
                rails: [with(one, &left), with(two, &right)],
                second: [Vec::new(), Vec::new()],
                rungs: vec![rung],
            });
        }
        Layout::Electronic => {
            let relay = |at, to| contact(at, S::K1, to);
            main.rails[0].push(wire(Wire::BoardLine));
            let board = Piece { part: Part::Board, ends: [S::K1, S::K2] };
            main.rungs = vec![
                vec![board, back(Wire::BoardReturn)],
                vec![
                    relay(ContactAt::UpperCold, S::K3),
                    wire(Wire::BoardUpper),
                    upper,
                    back(Wire::UpperPermanent),
                ],
                vec![
                    relay(ContactAt::LowerCold, S::K4),
                    wire(Wire::BoardLower),
                    lower,
                    back(Wire::LowerPermanent),
                ],
            ];
        }
    }
}

/// Closed or open, and the current where the network tells it.
fn stand(plant: &Plant, live: &Live, part: Part) -> Stand {
    let whole = |contact: Contact| contact != Contact::Open;
    let none = Amps(0.0);
    let (closed, amps) = match part {
        Part::Wire(wire) => {
            let landed = |side| {
                let end = End { wire, side };
                let joint = plant.wiring.joint(end);
                joint.on == Some(end.home()) && joint.resistance < OPEN
            };
            let there = plant.wiring.exists(wire);
            (there && landed(0) && landed(1), if there { live.amps(wire) } else { none })
        }
        Part::Breaker { slot, pole } => {
            let (slot, pole) = (slot as usize, usize::from(pole));
            let closed = plant.panel.breakers.get(slot).is_some_and(|one| {
                one.is_on(pole)
                    && one.poles.get(pole).is_some_and(|contact| whole(*contact))
                    && one.stabs.get(pole).is_some_and(Option::is_some)
            });
            (closed, live.pole_amps(slot, pole))
        }
        Part::Blade { leg } => {
            let fitted = if leg < OFF_PEAK { plant.in_line } else { plant.off_peak };
            let leg = usize::from(leg % OFF_PEAK);
            let closed = fitted.is_some_and(|one| one.makes(leg) && whole(one.link(leg)));
            (closed, none)
        }
        Part::Limit(at) | Part::Contact(at) => {
            (plant.makes(at) && whole(plant.contact(at).0), live.contact_amps(at))
        }
        Part::LowerLimit { pole } => {
            let pole = usize::from(pole);
            let closed = plant.lower_limit.as_ref().is_some_and(|limit| {
                limit.closed(pole) && limit.poles.get(pole).is_some_and(|contact| whole(*contact))
            });
            (closed, none)
        }
        Part::Element(level) => (plant.elements.get(level.index()).is_some_and(|one| !one.is_broken()), none),
        Part::Board => (plant.board.is_some_and(|board| board.powered), none),
    };
    Stand { closed, amps }
}

#[cfg(test)]
mod tests {
    use super::*;
    use plant::HeaterModel;

    /// Every rung of every heater is a chain from rail to rail, and every wire and contact of the heater's circuit is
    /// on it once.
    #[test]
    fn every_layout_is_a_ladder_of_its_own_wires() {
        for &model in HeaterModel::ALL {
            let order = crate::Order { heater: Some(model), ..crate::Order::chance(3, bench::Mode::Solo) };
            let home = crate::make(&order).unwrap().job.home;
            let ladder = Ladder::of(&home.plant);
            for rails in &ladder.circuits {
                for rail in rails.rails.iter().chain(&rails.rungs) {
                    for pair in rail.windows(2) {
                        assert_eq!(pair[0].ends[1], pair[1].ends[0], "{model} {pair:?}");
                    }
                    for piece in rail {
                        assert!(
                            piece.ends.iter().all(|s| matches!(s, Screw::M1 | Screw::M2 | Screw::N)
                                || home.plant.wiring.has_screw(*s)),
                            "{model} {piece:?}"
                        );
                    }
                }
                let foot = |rail: &Vec<Piece>| rail.last().unwrap().ends[1];
                for rung in &rails.rungs {
                    let from = rung.first().unwrap().ends[0];
                    assert!(from == foot(&rails.rails[0]), "{model} {rung:?}");
                    assert_eq!(rung.last().unwrap().ends[1], foot(&rails.rails[1]), "{model} {rung:?}");
                }
            }
            for &wire in Wire::ALL.iter().filter(|wire| home.plant.wiring.exists(**wire)) {
                let times = ladder.pieces().filter(|one| one.part == Part::Wire(wire)).count();
                let ground = matches!(wire, Wire::CableG | Wire::Bond);
                assert_eq!(times, usize::from(!ground), "{model} {wire}");
            }
        }
    }

    /// Trade sheet 1.2: with power on and the limit closed both screws of a satisfied element are live; dead once its
    /// breaker is off. 1.3: the upper element runs first.
    #[test]
    fn it_stands_as_the_network_says() {
        let order = crate::Order {
            fault: crate::Wanted::One(plant::fault::FaultId::F01),
            heater: Some(HeaterModel::Plain40),
            ..crate::Order::chance(4, bench::Mode::Solo)
        };
        let mut home = crate::make(&order).unwrap().job.home;
        home.plant.wiring = plant::Wiring::factory(Layout::NonSimultaneous, false);
        home.plant.elements = home.plant.elements.map(|one| plant::Element::sound(one.stamp));
        for at in home.plant.thermostats.iter_mut() {
            at.calling = true;
            at.stuck = None;
        }
        let ladder = Ladder::of(&home.plant);
        let amps = |home: &Home, level| {
            let path = ladder.path(home, &home.plant.energise(&[]));
            let at = ladder.pieces().position(|one| one.part == Part::Element(level)).unwrap();
            (path.pieces[at].amps.get(), path.live)
        };
        let (upper, live) = amps(&home, Level::Upper);
        assert!((18.0..20.0).contains(&upper), "{upper}");
        assert!(amps(&home, Level::Lower).0 < 0.01);
        assert!(live.contains(&Screw::LEa) && live.contains(&Screw::LEb));
        home.plant.thermostats[0].calling = false;
        assert!(amps(&home, Level::Upper).0 < 0.01);
        assert!(amps(&home, Level::Lower).0 > 18.0);
        for breaker in &mut home.plant.panel.breakers {
            breaker.handle = plant::Handle::Off;
        }
        let (_, live) = amps(&home, Level::Upper);
        assert_eq!(live, [Screw::M1, Screw::M2]);
    }
}
