//! The rounds a thorough technician makes, each from the moment the door opens: everything there is to look at,
//! everything that can be read while it runs, everything that can be read dead, everything about the water.
//!
//! They answer two questions by folding: whether two faults can be told apart at all in this house, and by what.
//! They are no model of good practice: nobody needs them all.

use bench::{Action, Clamped, Cover, Fitting, KnownSource, MeterFunction, Probe, Shown, Touchable, Writing};
use plant::home::Home;
use plant::{Circuit, End, Level, Place, Point, Screw, Stab, Tap, Wire};
use quantity::{Temperature, Volume};

use bench::{Job, Session};

use crate::recovery;

/// One round.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Round {
    /// Eyes, ears, nose and hands; wiped dry and looked at again.
    Looking,
    /// Volts and amperes as found, run to its cut-out, and called again by a draw.
    Running,
    /// Dead and proved: ohms with the leads off, stamps.
    Dead,
    /// Buckets, thermometer, gauge, valves.
    Water,
    /// Run cold and made warm again, the dials turned: who calls when, and how far a blade lags its dial.
    Recovery,
    /// Dead and proved, each dial down and up again and again: a contact that makes only at times.
    Contacts,
}

/// Water that calls the lower thermostat, and shows where it turns cold.
pub(crate) const DRAW: Volume = Volume::litres(76.0);
/// The same into a bucket.
pub(crate) const CALL: Action = Action::Bucket { tap: Tap::Bath, volume: DRAW };
/// Below the water in a warm tank: a sound thermostat snaps open.
const DIAL_DOWN: Temperature = Temperature::fahrenheit(90.0);
/// Above it: a sound thermostat calls.
const DIAL_UP: Temperature = Temperature::fahrenheit(150.0);
/// How often a contact is tried: one that makes at three of four closings misses one of these nine times in ten.
const TRIES: usize = 8;
/// Long enough for a drip to show on a fitting wiped dry. Common practice, no source.
const DRIP: f64 = 15.0;

pub(crate) const LEVELS: [Level; 2] = [Level::Upper, Level::Lower];
const PLACES: [Place; 9] = [
    Place::LoadCenter,
    Place::InLineBox,
    Place::JunctionBox,
    Place::HeaterTop,
    Place::UpperCompartment,
    Place::LowerCompartment,
    Place::Relief,
    Place::Drain,
    Place::Taps,
];
const FITTINGS: [Fitting; 6] = [
    Fitting::Nipples,
    Fitting::ReliefValve,
    Fitting::UpperElement,
    Fitting::LowerElement,
    Fitting::DrainValve,
    Fitting::BottomRim,
];
/// Every cover in the way, in the order it comes off; the load center's last.
pub const COVERS: [Cover; 9] = [
    Cover::BoxDoor,
    Cover::JunctionBox,
    Cover::Upper,
    Cover::UpperInsulation,
    Cover::UpperShield,
    Cover::Lower,
    Cover::LowerInsulation,
    Cover::LowerShield,
    Cover::PanelFront,
];
/// Across every contact and every element, from the main to the last screw.
const ACROSS: [(Screw, Screw); 28] = [
    (Screw::M1, Screw::M2),
    (Screw::M1, Screw::N),
    (Screw::M2, Screw::N),
    (Screw::B1, Screw::B2),
    (Screw::M1, Screw::B1),
    (Screw::M2, Screw::B2),
    (Screw::S1, Screw::S2),
    (Screw::X1, Screw::X2),
    (Screw::X3, Screw::X4),
    (Screw::X1, Screw::X3),
    (Screw::X2, Screw::X4),
    (Screw::Ja, Screw::Jb),
    (Screw::H1, Screw::H3),
    (Screw::H2, Screw::H4),
    (Screw::H1, Screw::H2),
    (Screw::H3, Screw::H4),
    (Screw::H5, Screw::H7),
    (Screw::H6, Screw::H8),
    (Screw::U1, Screw::U2),
    (Screw::U1, Screw::U4),
    (Screw::U4, Screw::H4),
    (Screw::K1, Screw::K2),
    (Screw::K3, Screw::K2),
    (Screw::K4, Screw::K2),
    (Screw::UEa, Screw::UEb),
    (Screw::D1, Screw::D2),
    (Screw::LEa, Screw::LEb),
    (Screw::Shell, Screw::Pipe),
];
const TO_SHELL: [Screw; 8] =
    [Screw::H1, Screw::H3, Screw::U4, Screw::UEa, Screw::UEb, Screw::LEa, Screw::LEb, Screw::G];

impl Round {
    /// All of them.
    pub const ALL: [Self; 6] =
        [Self::Looking, Self::Running, Self::Dead, Self::Water, Self::Recovery, Self::Contacts];

    /// Its acts in this house. What is not there is refused alike whatever is wrong, and tells nothing.
    pub fn acts(self, home: &Home) -> Vec<Action> {
        match self {
            Self::Looking => looking(),
            Self::Running => running(home),
            Self::Dead => dead(home),
            Self::Water => water(),
            Self::Recovery => recovery::acts(home),
            Self::Contacts => contacts(home),
        }
    }

    /// What each act of the round shows in this house, with the acts.
    pub fn walk(self, job: &Job) -> Vec<(Action, Shown)> {
        let mut session = Session::begin(job.clone());
        let step = |action: Action| {
            let shown = session.step(&action).shown;
            (action, shown)
        };
        self.acts(&job.home).into_iter().map(step).collect()
    }
}

pub(crate) fn arrive() -> Vec<Action> {
    let told = [Action::TellHousehold, Action::Gloves { on: true }, Action::EyeProtection { on: true }];
    let covers = COVERS.into_iter().filter(|which| *which != Cover::PanelFront);
    told.into_iter().chain(covers.map(|which| Action::Cover { which, off: true })).collect()
}

fn looks() -> impl Iterator<Item = Action> {
    PLACES.into_iter().map(|at| Action::Look { at })
}

fn looking() -> Vec<Action> {
    let writings = [Writing::Plate, Writing::Directory];
    let mut acts: Vec<Action> = writings.map(|what| Action::Read { what }).to_vec();
    acts.extend(PLACES.into_iter().flat_map(|at| [Action::Smell { at }, Action::Listen { at }]));
    acts.extend(FITTINGS.map(|fitting| Action::Touch { at: Touchable::Fitting { fitting } }));
    acts.push(Action::Touch { at: Touchable::ReliefPipe });
    acts.extend(arrive());
    acts.push(Action::Cover { which: Cover::PanelFront, off: true });
    acts.extend(looks());
    acts.extend([Writing::Dials, Writing::Diagram].map(|what| Action::Read { what }));
    acts.extend(FITTINGS.map(|fitting| Action::Wipe { fitting }));
    acts.push(Action::Wait { minutes: DRIP });
    acts.extend(looks());
    acts
}

pub(crate) fn volts(red: impl Into<Point>, black: impl Into<Point>) -> Action {
    Action::Meter { function: MeterFunction::Volts, red: red.into(), black: black.into() }
}

/// Every pair, every leg to the shell, every joint, every wire.
fn live(home: &Home) -> Vec<Action> {
    let wiring = &home.plant.wiring;
    let mut acts: Vec<Action> = ACROSS.iter().map(|(a, b)| volts(*a, *b)).collect();
    acts.extend(TO_SHELL.map(|screw| volts(screw, Screw::Shell)));
    acts.extend(
        [(Screw::H2, Screw::H4), (Screw::U1, Screw::U2), (Screw::U1, Screw::U4)].map(|(a, b)| {
            Action::Meter { function: MeterFunction::LowVolts, red: a.into(), black: b.into() }
        }),
    );
    let wires = || Wire::ALL.iter().copied().filter(|wire| wiring.exists(*wire));
    acts.extend(wires().map(|wire| Action::Clamp { around: Clamped::Wire { wire } }));
    acts.push(Action::Clamp { around: Clamped::BothLegs });
    let ends = wires().flat_map(|wire| [0, 1].map(|side| End { wire, side }));
    acts.extend(ends.map(|end| volts(Point::End(end), end.home())));
    acts.extend(LEVELS.map(|level| Action::Thermometer { at: Probe::Shell { level } }));
    acts
}

/// Water run off until a hot limit would latch, and its button pressed.
fn reset() -> [Action; 3] {
    [CALL, Action::Wait { minutes: 5.0 }, Action::PressReset]
}

fn running(home: &Home) -> Vec<Action> {
    let mut acts = arrive();
    acts.push(Action::Cover { which: Cover::PanelFront, off: true });
    acts.extend(live(home));
    acts.extend(reset());
    acts.push(Action::WaitForCutOut);
    acts.extend(live(home));
    acts.extend([Action::Thermometer { at: Probe::Drain }, CALL]);
    acts.extend(live(home));
    acts.push(Action::Listen { at: Place::LowerCompartment });
    acts.extend(looks());
    acts.extend(one_sided());
    acts
}

/// Each leg to the neutral with a big load on one side of the house, then on the other.
fn one_sided() -> impl Iterator<Item = Action> {
    Stab::ALL.iter().flat_map(|&leg| {
        let plug = |on| Action::PortableHeater { leg, on };
        [plug(true), volts(Screw::M1, Screw::N), volts(Screw::M2, Screw::N), plug(false)]
    })
}

fn ohms(red: Screw, black: Screw) -> Action {
    Action::Meter { function: MeterFunction::Ohms, red: red.into(), black: black.into() }
}

/// What a locked breaker leaves dead: the bus behind it stays live, and ohms on it cost the meter its fuse.
fn isolated((a, b): &(Screw, Screw)) -> bool {
    ![a, b].iter().any(|screw| matches!(screw, Screw::M1 | Screw::M2))
}

/// The meter proved, every circuit of the heater off and locked.
fn locked(home: &Home) -> Vec<Action> {
    let mut acts = vec![Action::ProveMeter { on: KnownSource::Receptacle }];
    for circuit in [Circuit::Heater, Circuit::OffPeak, Circuit::SecondSource] {
        if let Some(slot) = home.plant.panel.slot_of(circuit) {
            let slot = u32::try_from(slot).unwrap_or(u32::MAX);
            acts.extend([Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }]);
        }
    }
    acts
}

/// Ohms of each thermostat's contacts with its leads off, time and again.
fn contacts(home: &Home) -> Vec<Action> {
    let mut acts = arrive();
    acts.extend(locked(home));
    acts.extend(inner_ends(home).map(|end| Action::Lift { end }));
    for _ in 0..TRIES {
        for to in [DIAL_DOWN, DIAL_UP] {
            acts.extend(LEVELS.map(|level| Action::Dial { level, to }));
            acts.extend(
                [(Screw::U1, Screw::U2), (Screw::U1, Screw::U4), (Screw::D1, Screw::D2)]
                    .map(|(a, b)| ohms(a, b)),
            );
        }
    }
    acts
}

/// Every end of a wire on a screw behind the covers.
fn inner_ends(home: &Home) -> impl Iterator<Item = End> {
    let leads = Wire::ALL.iter().copied().filter(|wire| home.plant.wiring.exists(*wire));
    let inside = |end: &End| matches!(end.home().place(), Place::UpperCompartment | Place::LowerCompartment);
    leads.flat_map(|wire| [0, 1].map(|side| End { wire, side })).filter(inside)
}

fn dead(home: &Home) -> Vec<Action> {
    let mut acts = arrive();
    acts.extend(reset());
    acts.push(Action::WaitForCutOut);
    acts.extend(locked(home));
    // On ten megohms a dead cable may show ghosts.
    acts.extend([Screw::H1, Screw::H3].map(|screw| volts(screw, Screw::Shell)));
    acts.extend([Action::ZeroLeads, ohms(Screw::Shell, Screw::Pipe)]);
    acts.extend(ACROSS.iter().map(|(a, b)| Action::Meter {
        function: MeterFunction::LowVolts,
        red: (*a).into(),
        black: (*b).into(),
    }));
    acts.extend([Writing::StampUpper, Writing::StampLower].map(|what| Action::Read { what }));
    acts.extend(inner_ends(home).map(|end| Action::Lift { end }));
    acts.extend(ACROSS.iter().filter(|pair| isolated(pair)).map(|(a, b)| ohms(*a, *b)));
    acts.extend(TO_SHELL.map(|screw| ohms(screw, Screw::Shell)));
    acts.extend([Screw::UEa, Screw::LEa].map(|screw| Action::Meter {
        function: MeterFunction::Insulation,
        red: screw.into(),
        black: Screw::Shell.into(),
    }));
    acts.extend(LEVELS.map(|level| Action::Plug { level, fitted: false }));
    acts.extend([(Screw::T1, Screw::T2), (Screw::T3, Screw::T4)].map(|(a, b)| ohms(a, b)));
    acts.extend(LEVELS.map(|level| Action::Dial { level, to: DIAL_DOWN }));
    acts.extend(
        [(Screw::U1, Screw::U2), (Screw::U1, Screw::U4), (Screw::D1, Screw::D2)].map(|(a, b)| ohms(a, b)),
    );
    acts.push(Action::PressReset);
    acts
}

fn water() -> Vec<Action> {
    let mut acts = vec![
        Action::TellHousehold,
        Action::Thermometer { at: Probe::ColdPipe },
        Action::Thermometer { at: Probe::ReliefPipe },
        Action::Thermometer { at: Probe::ReturnPipe },
        Action::Gauge { on: true },
        Action::ReadGauge,
    ];
    let bucket = |tap| Action::Bucket { tap, volume: Volume::litres(8.0) };
    acts.extend([true, false].map(|hot| Action::Sample { tap: Tap::Kitchen, hot }));
    acts.extend([Tap::Kitchen, Tap::Shower, Tap::Laundry].map(bucket));
    acts.extend([
        Action::ReadGauge,
        CALL,
        Action::WaitForCutOut,
        Action::ReadGauge,
        Action::Look { at: Place::Relief },
        Action::Look { at: Place::Drain },
        CALL,
        Action::Thermometer { at: Probe::Drain },
        Action::TankCharge,
        Action::ReadWaterMeter,
        Action::Tap { tap: Tap::Kitchen, opening: 1.0 },
        Action::Wait { minutes: 2.0 },
        Action::Thermometer { at: Probe::HotPipe },
        Action::Thermometer { at: Probe::ColdPipe },
        // While cold water comes in, damp air settles on its pipe.
        Action::Listen { at: Place::HeaterTop },
        Action::Look { at: Place::HeaterTop },
        Action::ColdValve { opening: 0.0 },
        Action::Wait { minutes: 2.0 },
        Action::Look { at: Place::Taps },
    ]);
    acts.extend([Tap::Laundry, Tap::Bath, Tap::Shower].map(|tap| Action::Stops { tap, shut: true }));
    acts.extend([Tap::Laundry, Tap::Bath, Tap::Shower].map(|tap| Action::Stops { tap, shut: false }));
    acts.extend([
        Action::Tap { tap: Tap::Kitchen, opening: 0.0 },
        // Only the lowest tap lets the pressure down far enough to draw the rod.
        Action::Tap { tap: Tap::Laundry, opening: 1.0 },
        Action::Wait { minutes: 2.0 },
        Action::LookAtAnode,
        Action::Tap { tap: Tap::Laundry, opening: 0.0 },
        Action::ReadWaterMeter,
        Action::Wait { minutes: 5.0 },
        Action::ReadGauge,
        Action::Gauge { on: false },
        Action::ColdValve { opening: 1.0 },
        Action::Hose { on: true },
        Action::Drain { opening: 1.0 },
        Action::Wait { minutes: 1.0 },
        Action::Look { at: Place::Drain },
        Action::Drain { opening: 0.0 },
        Action::ReliefLever { up: true },
        Action::ReliefLever { up: false },
        Action::Look { at: Place::Relief },
    ]);
    acts
}
