//! What the page may show: the state a technician can perceive, and nothing behind it.

use std::collections::BTreeSet;

use plant::{BoxKind, Circuit, End, Handle, Level, Place, Point, Screw, Stand, Tap};
use quantity::{Amps, Constant, Flow, Seconds, Tag, Temperature, Volume, Watts};

use crate::action::{Action, Clamped, Cover, Jack, MeterFunction};
use crate::reduce::senses;
use crate::session::Session;
use crate::shown::{Display, Ending, Shown};

/// A breaker's face.
#[derive(Clone, PartialEq, Debug)]
pub struct BreakerView {
    /// Slot.
    pub slot: u32,
    /// What the directory says.
    pub label: Circuit,
    /// Its rating, printed on the handle.
    pub rating: Amps,
    /// Its handle.
    pub handle: Handle,
    /// A lock hangs on it.
    pub locked: bool,
    /// A tag hangs on it.
    pub tagged: bool,
}

/// The face of the box in the line.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct BoxView {
    /// What it is.
    pub kind: BoxKind,
    /// Handle or contacts closed; `None` where the door hides them.
    pub closed: Option<bool>,
    /// A lock hangs on it.
    pub locked: bool,
    /// A tag hangs on it.
    pub tagged: bool,
    /// Fuses pulled, leg 1 and leg 2, with the door off.
    pub pulled: Option<[bool; 2]>,
}

/// A wire end in sight.
#[derive(Clone, PartialEq, Debug)]
pub struct EndView {
    /// Which.
    pub end: End,
    /// The screw it is on; `None` while lifted.
    pub on: Option<Screw>,
    /// It carries a label.
    pub labelled: bool,
    /// It is charred.
    pub charred: bool,
}

/// A tap as it stands.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct TapView {
    /// Which.
    pub tap: Tap,
    /// Opening.
    pub opening: f64,
    /// Flow.
    pub flow: Flow,
    /// It spits air.
    pub spitting: bool,
}

/// The last reading of the meter.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct MeterView {
    /// Function.
    pub function: MeterFunction,
    /// Red lead.
    pub red: Point,
    /// Black lead.
    pub black: Point,
    /// Display.
    pub display: Display,
}

/// The last reading of the clamp.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct ClampView {
    /// Around what.
    pub around: Clamped,
    /// Amperes.
    pub amps: Amps,
}

/// Everything in sight.
#[derive(Clone, PartialEq, Debug)]
pub struct View {
    /// Time of day.
    pub time_of_day: Seconds,
    /// Time into the job.
    pub elapsed: Seconds,
    /// Time left, where there is a limit.
    pub left: Option<Seconds>,
    /// Breakers in order.
    pub breakers: Vec<BreakerView>,
    /// The box in the line, where there is one.
    pub in_line: Option<BoxView>,
    /// Covers off.
    pub off: BTreeSet<Cover>,
    /// Places whose bare metal can be reached.
    pub reachable: Vec<Place>,
    /// Wire ends in sight.
    pub ends: Vec<EndView>,
    /// Dials, where in sight: upper, lower.
    pub dials: [Option<Temperature>; 2],
    /// The limit's button stands proud, where in sight.
    pub button_proud: Option<bool>,
    /// Opening of the cold valve.
    pub cold_valve: f64,
    /// Taps.
    pub taps: Vec<TapView>,
    /// Opening of the drain valve.
    pub drain_valve: f64,
    /// Flow from it.
    pub drain_flow: Flow,
    /// The hose is on.
    pub hose: bool,
    /// The relief lever is held up.
    pub lever: bool,
    /// Water runs from the relief valve's pipe.
    pub relief_runs: bool,
    /// How far the heater is in its place.
    pub stand: Stand,
    /// A relief valve is in its port.
    pub relief_there: bool,
    /// Water stands on the floor, about.
    pub on_floor: Option<Volume>,
    /// The gauge is on.
    pub gauge: bool,
    /// Gloves on.
    pub gloves: bool,
    /// Eye protection on.
    pub eyes: bool,
    /// Leads zeroed.
    pub leads_zeroed: bool,
    /// The jack the meter's red lead is in.
    pub jack: Jack,
    /// The low-battery sign stands on the meter.
    pub low_battery: bool,
    /// Household told.
    pub household_told: bool,
    /// Result told.
    pub result_told: bool,
    /// Last reading of the meter.
    pub meter: Option<MeterView>,
    /// Last reading of the clamp.
    pub clamp: Option<ClampView>,
    /// Dollars of parts.
    pub cost: f64,
    /// Acts the coach stopped.
    pub stops: u32,
    /// How it ended.
    pub ended: Option<Ending>,
}

quantity::constants! {
    /// From this much the floor is seen to be wet.
    const SEEN: Constant<Volume> = Constant::of("water on the floor that is seen", Volume::litres(0.05), Tag::Model("a cup would be overlooked at less than a quarter"));
}

/// Places with bare metal behind covers.
const METAL: [Place; 5] = [
    Place::LoadCenter,
    Place::InLineBox,
    Place::JunctionBox,
    Place::UpperCompartment,
    Place::LowerCompartment,
];

impl Session {
    /// What is in sight now.
    pub fn view(&self) -> View {
        let plant = &self.home.plant;
        let plumbing = &plant.plumbing;
        let wet = plumbing.on_floor >= SEEN.get();
        View {
            time_of_day: Seconds((self.job.starts_at + self.clock).get() % 86_400.0),
            elapsed: self.clock,
            left: self.job.limit_minutes.map(|m| Seconds((m * 60.0 - self.clock.get()).max(0.0))),
            breakers: self.breakers(),
            in_line: self.box_in_line(),
            off: self.access.off.clone(),
            reachable: METAL.into_iter().filter(|p| self.reachable(*p)).collect(),
            ends: self.ends(),
            dials: [Level::Upper, Level::Lower].map(|level| self.dial(level)),
            button_proud: self.sees(Place::UpperCompartment).then_some(plant.limit.tripped),
            cold_valve: plumbing.cold_valve,
            taps: Tap::ALL.iter().map(|tap| self.tap(*tap)).collect(),
            drain_valve: plumbing.drain_valve,
            drain_flow: plant.drain_flow(),
            hose: plumbing.hose,
            lever: plumbing.relief.lever,
            relief_runs: senses::relief_runs(plant),
            stand: plumbing.stand,
            relief_there: !plumbing.relief.missing,
            on_floor: wet.then_some(plumbing.on_floor),
            gauge: self.me.gauge,
            gloves: self.me.gloves,
            eyes: self.me.eyes,
            leads_zeroed: self.me.leads_zeroed,
            jack: self.me.jack,
            low_battery: self.me.low_battery(),
            household_told: self.me.household_told,
            result_told: self.me.result_told,
            meter: self.log.iter().rev().find_map(|e| meter_of(&e.action, &e.outcome.shown)),
            clamp: self.log.iter().rev().find_map(|e| clamp_of(&e.action, &e.outcome.shown)),
            cost: self.me.cost,
            stops: self.me.stops,
            ended: self.ended,
        }
    }

    /// Bare metal of a place can be reached.
    pub fn reachable(&self, place: Place) -> bool {
        crate::reduce::reachable(self, place)
    }

    /// A place can be seen into.
    pub fn sees(&self, place: Place) -> bool {
        crate::reduce::sees(self, place)
    }

    fn breakers(&self) -> Vec<BreakerView> {
        let face = |(b, slot): (&plant::Breaker, u32)| BreakerView {
            slot,
            label: b.label,
            rating: b.rating,
            handle: b.stands(),
            locked: b.locked,
            tagged: b.tagged,
        };
        self.home.plant.panel.breakers.iter().zip(0u32..).map(face).collect()
    }

    fn box_in_line(&self) -> Option<BoxView> {
        let one = self.home.plant.in_line?;
        let open = self.reachable(Place::InLineBox);
        Some(BoxView {
            kind: one.kind,
            closed: (open || one.is_fused()).then_some(one.closed),
            locked: one.locked,
            tagged: one.tagged,
            pulled: (open && one.is_fused()).then_some(one.pulled),
        })
    }

    fn ends(&self) -> Vec<EndView> {
        let plant = &self.home.plant;
        End::all()
            .filter(|end| senses::exists(plant, end.wire))
            .filter(|end| match end.home().place() {
                place @ (Place::LoadCenter | Place::InLineBox) => self.reachable(place),
                place => self.sees(place),
            })
            .map(|end| {
                let joint = plant.wiring.joint(end);
                EndView { end, on: joint.on, labelled: joint.labelled, charred: joint.charred }
            })
            .collect()
    }

    fn dial(&self, level: Level) -> Option<Temperature> {
        let place = match level {
            // A board carries the settings of both zones.
            Level::Lower if self.home.plant.plate.layout.has_thermostats() => Place::LowerCompartment,
            _ => Place::UpperCompartment,
        };
        let dial = self.home.plant.thermostats.get(level.index()).map(|t| t.dial);
        dial.filter(|_| self.sees(place))
    }

    fn tap(&self, tap: Tap) -> TapView {
        let plant = &self.home.plant;
        TapView {
            tap,
            opening: senses::opening(plant, tap),
            flow: plant.tap_flow(tap),
            spitting: senses::spits(plant, tap),
        }
    }
}

fn meter_of(action: &Action, shown: &Shown) -> Option<MeterView> {
    match (action, shown) {
        (Action::Meter { function, red, black }, Shown::Meter { display }) => {
            Some(MeterView { function: *function, red: *red, black: *black, display: *display })
        }
        _ => None,
    }
}

fn clamp_of(action: &Action, shown: &Shown) -> Option<ClampView> {
    match (action, shown) {
        (Action::Clamp { around }, Shown::Clamp { amps }) => Some(ClampView { around: *around, amps: *amps }),
        _ => None,
    }
}

/// What no technician sees: for the debrief, and for the coach when asked.
#[derive(Clone, PartialEq, Debug)]
pub struct Inside {
    /// How full the tank is, 0 to 1.
    pub fill: f64,
    /// Water temperatures in equal slices of the height, bottom first; `None` where there is air.
    pub layers: Vec<Option<Temperature>>,
    /// Heat of the upper and the lower element.
    pub watts: [Watts; 2],
    /// Current of each leg of the branch cable.
    pub legs: [Amps; 2],
    /// Blades of the upper and the lower thermostat call.
    pub calling: [bool; 2],
    /// The limit has tripped.
    pub limit_tripped: bool,
    /// Pressure at the tank.
    pub pressure: quantity::Pressure,
}

/// Slices of `Inside::layers`.
const SLICES: u32 = 24;

impl Session {
    /// Looks inside.
    pub fn inside(&self) -> Inside {
        let plant = &self.home.plant;
        let live = plant.standing();
        Inside {
            fill: plant.fill(),
            layers: senses::layers(plant, SLICES),
            watts: [Level::Upper, Level::Lower].map(|level| live.element_watts(level)),
            legs: plant.wiring.feeders().map(|wire| live.amps(wire)),
            calling: plant.thermostats.map(|t| t.blade_calls()),
            limit_tripped: plant.limit.tripped,
            pressure: plant.plumbing.pressure,
        }
    }
}
