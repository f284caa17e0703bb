//! What a technician does, as lists of acts: the same sequences for every fault, for worked attempts and for
//! hands on the page. Order of work: trade sheet 10.1 to 10.11 (common practice, no source).

use bench::{Action, Clamped, Cover, KnownSource, MeterFunction, NewPart, Probe};
use plant::fault::PartKind;
use plant::heater::Plate;
use plant::{End, Layout, Level, Place, Point, Screw, Tap, Wire};
use quantity::{Amps, Pressure, Temperature, Volume};

/// Both dials to 120 °F (3.2, published: two owner's manuals).
pub fn set_dials() -> [Action; 2] {
    let to = Temperature::fahrenheit(120.0);
    [Action::Dial { level: Level::Upper, to }, Action::Dial { level: Level::Lower, to }]
}

/// A wire's end by the screw it belongs on.
pub fn end(wire: Wire, screw: Screw) -> End {
    let side = u8::from(wire.home()[1] == screw);
    assert_eq!(End { wire, side }.home(), screw);
    End { wire, side }
}

pub fn read(function: MeterFunction, red: impl Into<Point>, black: impl Into<Point>) -> Action {
    Action::Meter { function, red: red.into(), black: black.into() }
}

pub fn clamp(wire: Wire) -> Action {
    Action::Clamp { around: Clamped::Wire { wire } }
}

fn cover(which: Cover, off: bool) -> Action {
    Action::Cover { which, off }
}

/// Says what will be off, proves the meter, puts gloves and eye protection on, opens the junction box.
pub fn arrive() -> Vec<Action> {
    vec![
        Action::TellHousehold,
        Action::ProveMeter { on: KnownSource::ProvingUnit },
        Action::EyeProtection { on: true },
        Action::Gloves { on: true },
        cover(Cover::JunctionBox, true),
    ]
}

/// Cover, insulation and shield of a compartment.
pub fn open(level: Level) -> Vec<Action> {
    Cover::over(level).iter().map(|&which| cover(which, true)).collect()
}

/// The same put back, what lies inside first.
pub fn close(level: Level) -> Vec<Action> {
    Cover::over(level).iter().rev().map(|&which| cover(which, false)).collect()
}

pub fn open_panel() -> Action {
    cover(Cover::PanelFront, true)
}

pub fn close_panel() -> Action {
    cover(Cover::PanelFront, false)
}

pub fn close_box() -> Action {
    cover(Cover::JunctionBox, false)
}

/// The tank's metal shown to be a ground: continuity to the bonded pipe, leads zeroed first.
pub fn prove_ground() -> Vec<Action> {
    vec![Action::ZeroLeads, read(MeterFunction::Ohms, Screw::Shell, Screw::Pipe)]
}

/// Proves dead what is off and locked: leg to leg, each leg and each screw that hands will touch to the proved
/// ground, then the meter once more (10.1).
pub fn prove_dead(screws: &[Screw]) -> Vec<Action> {
    prove_dead_to(Screw::Shell, screws)
}

/// The same to a ground that was proved some other way.
pub fn prove_dead_to(ground: Screw, screws: &[Screw]) -> Vec<Action> {
    let low = |a, b| read(MeterFunction::LowVolts, a, b);
    let mut acts = vec![low(Screw::H1, Screw::H3)];
    acts.extend([Screw::H1, Screw::H3].iter().chain(screws).map(|s| low(*s, ground)));
    acts.push(Action::ProveMeter { on: KnownSource::ProvingUnit });
    acts
}

/// The same at the breaker's load screws, to the ground bar, panel open (10.1).
pub fn prove_breaker_dead() -> Vec<Action> {
    vec![
        read(MeterFunction::LowVolts, Screw::B1, Screw::B2),
        read(MeterFunction::Ohms, Screw::G, Screw::Pipe),
        read(MeterFunction::LowVolts, Screw::B1, Screw::G),
        read(MeterFunction::LowVolts, Screw::B2, Screw::G),
        Action::ProveMeter { on: KnownSource::ProvingUnit },
    ]
}

/// The same where the breaker may have one pole: the leg to the neutral bar in place of the other leg.
pub fn prove_breaker_dead_on(hot_neutral: bool) -> Vec<Action> {
    if !hot_neutral {
        return prove_breaker_dead();
    }
    vec![
        read(MeterFunction::LowVolts, Screw::B1, Screw::N),
        read(MeterFunction::Ohms, Screw::G, Screw::Pipe),
        read(MeterFunction::LowVolts, Screw::B1, Screw::G),
        Action::ProveMeter { on: KnownSource::ProvingUnit },
    ]
}

/// Both wires of an element, labelled and taken off (10.2).
pub fn lift_element(level: Level) -> Vec<Action> {
    let mut acts = Vec::new();
    for end in element_ends(level) {
        acts.extend([Action::Label { end }, Action::Lift { end }]);
    }
    acts
}

/// The same landed again and torqued.
pub fn land_element(level: Level) -> Vec<Action> {
    element_ends(level).map(|end| Action::Land { end, screw: end.home(), torqued: true }).to_vec()
}

fn element_ends(level: Level) -> [End; 2] {
    match level {
        Level::Upper => [end(Wire::UpperSwitched, Screw::UEa), end(Wire::UpperPermanent, Screw::UEb)],
        Level::Lower => [end(Wire::LowerSwitched, Screw::LEa), end(Wire::LowerPermanent, Screw::LEb)],
    }
}

/// The two screws of an element.
pub fn screws(level: Level) -> [Screw; 2] {
    match level {
        Level::Upper => [Screw::UEa, Screw::UEb],
        Level::Lower => [Screw::LEa, Screw::LEb],
    }
}

/// Water off, hose on, drain and a tap open until nothing runs (10.6).
pub fn drain() -> Vec<Action> {
    vec![
        Action::ColdValve { opening: 0.0 },
        Action::Hose { on: true },
        Action::Drain { opening: 1.0 },
        Action::Tap { tap: Tap::Bath, opening: 1.0 },
        Action::Wait { minutes: 45.0 },
    ]
}

/// Drain shut, taps open, cold valve opened slowly then full, run until solid, relief valve lifted, every fitting
/// looked at, every tap purged (10.9, 10.10).
pub fn refill() -> Vec<Action> {
    let mut acts = vec![
        Action::Drain { opening: 0.0 },
        Action::ColdValve { opening: 0.4 },
        Action::Wait { minutes: 30.0 },
        Action::ColdValve { opening: 1.0 },
        Action::Wait { minutes: 5.0 },
        Action::Tap { tap: Tap::Bath, opening: 0.0 },
    ];
    for tap in [Tap::Laundry, Tap::Kitchen, Tap::Shower] {
        acts.extend([
            Action::Tap { tap, opening: 1.0 },
            Action::Wait { minutes: 1.0 },
            Action::Tap { tap, opening: 0.0 },
        ]);
    }
    acts.extend([
        Action::ReliefLever { up: true },
        Action::ReliefLever { up: false },
        Action::Hose { on: false },
        Action::Look { at: Place::Drain },
        Action::Look { at: Place::HeaterTop },
    ]);
    acts
}

/// Own lock off, breaker on.
pub fn energise(slot: u32) -> Vec<Action> {
    vec![Action::Lock { slot, on: false }, Action::Breaker { slot, on: true }]
}

/// Box shut, a tap's temperature taken, gloves off, the customer told, the job handed over.
pub fn hand_over() -> Vec<Action> {
    vec![
        close_box(),
        Action::Gloves { on: false },
        Action::EyeProtection { on: false },
        Action::Tap { tap: Tap::Kitchen, opening: 1.0 },
        Action::Wait { minutes: 3.0 },
        Action::Thermometer { at: Probe::Tap { tap: Tap::Kitchen } },
        Action::Tap { tap: Tap::Kitchen, opening: 0.0 },
        Action::TellResult,
        Action::HandOver,
    ]
}

/// The same after a whole heater was changed: its drain is shut, and no hose is on it.
pub fn refill_new() -> Vec<Action> {
    let mut acts = refill();
    acts.retain(|act| !matches!(act, Action::Drain { .. } | Action::Hose { .. }));
    acts
}

/// The right one of the two, by what was changed.
pub fn refill_after(kind: PartKind) -> Vec<Action> {
    if kind == PartKind::Heater { refill_new() } else { refill() }
}

/// The leads of a heater at the splices in its junction box.
fn leads(layout: Layout) -> impl Iterator<Item = End> {
    let ends = Wire::ALL.iter().filter(move |wire| layout.has_lead(**wire) && !wire.is_cable());
    ends.flat_map(|wire| [0, 1].map(|side| End { wire: *wire, side }))
        .filter(|end| end.home().place() == Place::JunctionBox)
}

/// A whole heater changed, drained and dead (10.14): leads and pipes off, carried out by two, the new one set and piped
/// through dielectric nipples, a new relief valve in it, its leads landed and torqued.
pub fn change_heater(plate: &Plate) -> Vec<Action> {
    let mut acts: Vec<Action> = leads(plate.layout).map(|end| Action::Lift { end }).collect();
    acts.extend([
        Action::PartPipes,
        Action::CarryOut { helped: true },
        Action::SetHeater { nominal: plate.nominal, rating: plate.element },
        Action::JoinPipes { dielectric: true },
        Action::Replace { part: NewPart::ReliefValve { opens_at: plate.working_pressure } },
    ]);
    let land = |end: End| Action::Land { end, screw: end.home(), torqued: true };
    acts.extend(leads(plate.layout).map(land));
    acts
}

/// What is done to change a part.
pub fn change(kind: PartKind, plate: &Plate, breaker: Amps, main: Pressure) -> Vec<Action> {
    match kind {
        PartKind::Heater => change_heater(plate),
        PartKind::UpperThermostat => changed_flat(Level::Upper),
        PartKind::LowerThermostat => changed_flat(Level::Lower),
        // It sits before the heater's own valve (common practice, no source).
        PartKind::Regulator => vec![
            Action::MainValve { opening: 0.0 },
            Action::Replace { part: part(kind, plate, breaker, main) },
            Action::MainValve { opening: 1.0 },
        ],
        _ => vec![Action::Replace { part: part(kind, plate, breaker, main) }],
    }
}

/// A new thermostat, pressed flat under its clip (10.8).
fn changed_flat(level: Level) -> Vec<Action> {
    vec![Action::Replace { part: NewPart::Thermostat { level } }, Action::Seat { level }]
}

/// A part that belongs on a plate, from the van.
fn part(kind: PartKind, plate: &Plate, breaker: Amps, main: Pressure) -> NewPart {
    let seat_cleaned = true;
    let element = |level| NewPart::asked_by(plate, level);
    match kind {
        PartKind::UpperElement => element(Level::Upper),
        PartKind::LowerElement => element(Level::Lower),
        PartKind::UpperThermostat => NewPart::Thermostat { level: Level::Upper },
        PartKind::LowerThermostat => NewPart::Thermostat { level: Level::Lower },
        PartKind::Limit => NewPart::Limit,
        PartKind::LowerLimit => NewPart::LowerLimit,
        PartKind::Breaker => NewPart::Breaker { rating: breaker },
        PartKind::Fuse => NewPart::Fuse { rating: breaker },
        PartKind::TimeSwitch => NewPart::TimeSwitch,
        PartKind::Connectors => NewPart::Connectors,
        PartKind::DipTube => NewPart::DipTube,
        PartKind::Anode => NewPart::Anode { metal: plant::AnodeMetal::AluminiumZinc },
        PartKind::UpperGasket => NewPart::Gasket { level: Level::Upper, seat_cleaned },
        PartKind::LowerGasket => NewPart::Gasket { level: Level::Lower, seat_cleaned },
        PartKind::ReliefValve => NewPart::ReliefValve { opens_at: plate.working_pressure },
        PartKind::ExpansionTank => NewPart::ExpansionTank { volume: Volume::gallons(4.4), charge: main },
        PartKind::UpperSensor => NewPart::Sensor { level: Level::Upper },
        PartKind::LowerSensor => NewPart::Sensor { level: Level::Lower },
        PartKind::Board => NewPart::Board,
        PartKind::Regulator => NewPart::Regulator { set: Pressure::psi(55.0) },
        PartKind::MixingValve => NewPart::MixingValve { set: Temperature::fahrenheit(120.0) },
        PartKind::Cartridge => NewPart::Cartridge { tap: Tap::Shower },
        PartKind::DrainValve => NewPart::DrainValve,
        PartKind::Nipples => NewPart::Nipples,
        PartKind::Connections => NewPart::Connections,
        PartKind::HotLine => NewPart::HotLine,
        PartKind::PipeClips => NewPart::PipeClips,
        PartKind::ReturnCheck => NewPart::ReturnCheck,
        PartKind::PumpTimer => NewPart::PumpTimer,
        PartKind::Heater => panic!("a heater is changed act by act"),
    }
}

/// Screws that a change puts hands on, heater side.
pub fn handled(kind: PartKind) -> &'static [Screw] {
    use Screw::{
        D1, D2, H1, H2, H3, H4, H5, H6, H7, H8, Ja, Jb, Jc, Jd, K1, K2, K3, K4, LEa, LEb, U1, U2, U4, UEa,
        UEb,
    };
    match kind {
        PartKind::UpperElement | PartKind::UpperGasket => &[UEa, UEb],
        PartKind::LowerElement | PartKind::LowerGasket => &[LEa, LEb],
        PartKind::UpperThermostat => &[U1, U2, U4],
        PartKind::LowerThermostat => &[D1, D2],
        PartKind::Limit => &[H1, H2, H3, H4],
        PartKind::LowerLimit => &[H5, H6, H7, H8],
        PartKind::Board => &[K1, K2, K3, K4],
        PartKind::Heater => &[Ja, Jb, Jc, Jd],
        _ => &[],
    }
}

/// Whether a change opens the tank.
pub fn opens_tank(kind: PartKind) -> bool {
    matches!(
        kind,
        PartKind::UpperElement
            | PartKind::LowerElement
            | PartKind::UpperGasket
            | PartKind::LowerGasket
            | PartKind::Heater
            | PartKind::ReliefValve
            | PartKind::Regulator
            | PartKind::MixingValve
            | PartKind::DrainValve
            | PartKind::Nipples
            | PartKind::Connections
    )
}
