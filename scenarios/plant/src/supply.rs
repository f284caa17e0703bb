//! The service and the load center.

use quantity::{Amps, Constant, Ohms, Tag, Volts};
use serde::{Deserialize, Serialize};

use crate::named::named;
use crate::parts::Contact;

quantity::constants! {
    /// Impedance of a leg of the service.
    pub const LEG_IMPEDANCE: Constant<Ohms> = Constant::of(
        "impedance of a service leg",
        Ohms(0.010),
        Tag::Model("a short cable from a near transformer"),
    );
    /// Impedance of the service's neutral.
    pub const NEUTRAL_IMPEDANCE: Constant<Ohms> = Constant::of(
        "impedance of the service neutral",
        Ohms(0.010),
        Tag::Model("as a leg's: the same cable"),
    );
    /// From the ground bar through the electrodes and the earth to the transformer's neutral.
    pub const ELECTRODE: Constant<Ohms> = Constant::of(
        "path through the earth to the transformer",
        Ohms(25.0),
        Tag::Memory("NEC 250.53(A)(2): a rod of 25 ohms or less needs no second one"),
    );
    /// What else the house has on leg 1 of an evening, leg to neutral.
    pub const LOAD_ONE: Constant<Ohms> =
        Constant::of("evening load, leg 1 to neutral", Ohms(20.0), Tag::Invented("6 A: refrigerator, lights"));
    /// What else the house has on leg 2, leg to neutral.
    pub const LOAD_TWO: Constant<Ohms> =
        Constant::of("evening load, leg 2 to neutral", Ohms(48.0), Tag::Invented("2.5 A: screens, chargers"));
    /// What else the house has from leg to leg.
    pub const LOAD_BOTH: Constant<Ohms> =
        Constant::of("evening load, leg to leg", Ohms(60.0), Tag::Invented("4 A: a heat pump at low speed"));
    /// A portable heater at a receptacle, leg to neutral.
    pub const PORTABLE: Constant<Ohms> = Constant::of(
        "portable heater: 1500 W at 120 V",
        Ohms(9.6),
        Tag::CommonPractice,
    );
    /// Nominal leg of a household service.
    pub const LEG_120: Constant<Volts> =
        Constant::of("leg of a household service", Volts(120.0), Tag::Published("ANSI C84.1, nominal system voltages"));
    /// Nominal leg of a 480Y/277 service.
    pub const LEG_277: Constant<Volts> =
        Constant::of("leg of a 480Y/277 service", Volts(277.0), Tag::Published("ANSI C84.1, nominal system voltages"));
    /// From leg to leg of a wye over leg to neutral; so far the high leg of a delta stands off its neutral too.
    pub const ROOT_3: Constant =
        Constant::new("wye: leg to leg over leg to neutral", 1.732_050_807_568_877_2, "", Tag::Computed("root of 3"));
    /// Angle from one leg to the other of a winding with its middle grounded, of a wye, of the high leg.
    const ANGLES: Constant<[f64; 3]> = Constant::new(
        "angles between legs",
        [180.0, -120.0, 90.0],
        "degrees",
        Tag::Published("service literature, wiring page: split phase, wye, delta with a high leg"),
    );
}

named! {
    /// How the building and the heater's circuit are fed.
    ServiceKind {
        /// 120/240 V, one transformer winding with its middle grounded.
        Split240 = "split-240",
        /// Two legs of a 208Y/120 V wye.
        Wye208 = "wye-208",
        /// 240 V delta with one winding's middle grounded, the heater on that winding's two legs.
        Delta240 = "delta-240",
        /// The same, the heater on a normal leg and the high leg (B): that one stands at 208 V to ground.
        Delta240High = "delta-240-high",
        /// 277 V, one leg and the neutral of a 480Y/277 V wye.
        Wye277 = "wye-277",
        /// 120 V, one leg and the neutral of a 120/240 V service.
        Single120 = "single-120",
    }
}

impl ServiceKind {
    /// One leg and the neutral feed the heater, through a single-pole breaker.
    pub const fn hot_neutral(self) -> bool {
        matches!(self, Self::Wye277 | Self::Single120)
    }

    /// Nominal voltage of its first leg to neutral.
    pub const fn leg(self) -> Volts {
        match self {
            Self::Wye277 => LEG_277.get(),
            _ => LEG_120.get(),
        }
    }

    /// Second leg against the first: how many times as high, at what angle in degrees.
    pub(crate) fn second(self) -> (f64, f64) {
        let [middle, wye, high] = ANGLES.get();
        match self {
            Self::Split240 | Self::Delta240 | Self::Single120 => (1.0, middle),
            Self::Wye208 | Self::Wye277 => (1.0, wye),
            Self::Delta240High => (ROOT_3.get(), high),
        }
    }
}

/// What a house has on beside the heater, as resistances; infinite where nothing is on.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Loads {
    /// Leg 1 to neutral.
    pub one: Ohms,
    /// Leg 2 to neutral.
    pub two: Ohms,
    /// Leg to leg.
    pub both: Ohms,
}

impl Loads {
    /// Nothing on.
    pub const NONE: Self =
        Self { one: Ohms(f64::INFINITY), two: Ohms(f64::INFINITY), both: Ohms(f64::INFINITY) };

    /// All of them: leg 1, leg 2, leg to leg.
    pub fn each_mut(&mut self) -> impl Iterator<Item = &mut Ohms> {
        [&mut self.one, &mut self.two, &mut self.both].into_iter()
    }
}

/// The utility's side.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Service {
    /// How the legs stand to each other.
    pub kind: ServiceKind,
    /// The first leg to neutral, unloaded; the other follows from the kind.
    pub leg: Volts,
    /// Impedance of each leg up to the bus, taken as resistive; a lost leg has [`crate::BURNT_OFF`].
    pub impedance: [Ohms; 2],
    /// Impedance of the neutral up to its bar; a loose or open one has more.
    pub neutral: Ohms,
    /// From the ground bar through the earth to the transformer's neutral.
    pub electrode: Ohms,
    /// What else the house has on.
    pub loads: Loads,
    /// A portable heater is plugged in at a receptacle of leg 1, of leg 2.
    #[serde(default)]
    pub portable: [bool; 2],
}

impl Service {
    /// A sound one with an evening's loads.
    pub fn sound(kind: ServiceKind) -> Self {
        let evening = Loads { one: LOAD_ONE.get(), two: LOAD_TWO.get(), both: LOAD_BOTH.get() };
        let loads = match kind {
            // Nobody puts 120 V loads on a high leg.
            ServiceKind::Delta240High => Loads { two: Loads::NONE.two, ..evening },
            // A shop's loads are not this circuit's.
            ServiceKind::Wye277 => Loads::NONE,
            _ => evening,
        };
        Self {
            kind,
            leg: kind.leg(),
            impedance: [LEG_IMPEDANCE.get(); 2],
            neutral: NEUTRAL_IMPEDANCE.get(),
            electrode: ELECTRODE.get(),
            loads,
            portable: [false; 2],
        }
    }

    /// Whether the house has receptacles of 120 V on a leg: none on a high leg, none on 277 V.
    pub const fn has_receptacle(&self, leg: Stab) -> bool {
        match self.kind {
            ServiceKind::Wye277 => false,
            ServiceKind::Delta240High => matches!(leg, Stab::One),
            _ => true,
        }
    }

    /// Unloaded voltage across a heater on this supply.
    pub fn across(&self) -> Volts {
        let factor = match self.kind {
            ServiceKind::Wye277 | ServiceKind::Single120 => 1.0,
            ServiceKind::Wye208 => ROOT_3.get(),
            ServiceKind::Split240 | ServiceKind::Delta240 | ServiceKind::Delta240High => 2.0,
        };
        self.leg * factor
    }
}

named! {
    /// The handle of a breaker.
    Handle {
        /// On.
        On = "on",
        /// Off.
        Off = "off",
        /// In the middle, after a trip; must go to off before on.
        Tripped = "tripped",
    }
}

named! {
    /// What a breaker of the load center feeds.
    Circuit {
        /// The heater, by `cable-a` and `cable-b`.
        Heater = "heater",
        /// The heater again, by the second cable.
        SecondSource = "second-source",
        /// The heater's lower element, by the off-peak cable.
        OffPeak = "off-peak",
        /// The range; in a 480Y/277 panel lamps.
        Range = "range",
        /// The dryer; in a 480Y/277 panel a fan.
        Dryer = "dryer",
    }
}

named! {
    /// The stab of the bus a pole sits on.
    Stab {
        /// Leg 1.
        One = "leg-1",
        /// Leg 2.
        Two = "leg-2",
    }
}

/// A breaker in the load center, of one or two poles.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Breaker {
    /// What it feeds in truth.
    pub feeds: Circuit,
    /// What the directory says it feeds.
    pub label: Circuit,
    /// Its rating.
    pub rating: Amps,
    /// Its handle.
    pub handle: Handle,
    /// Its poles.
    pub poles: [Contact; 2],
    /// The stab each pole sits on. A single-pole breaker has no second; a two-pole one in the wrong slot, and any
    /// tandem, has both on the same leg.
    pub stabs: [Option<Stab>; 2],
    /// Of a tandem, which of its halves has tripped by itself: two single breakers in one space, on one stab, each with a
    /// handle and a trip of its own. `None` for any other.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tandem: Option<[bool; 2]>,
    /// What it holds of what its rating says: less than 1 once it has tired.
    pub holds: f64,
    /// What a hot lug beside each pole adds to its heat, as a fraction of what trips it.
    pub beside: [f64; 2],
    /// Heat stored in each pole's bimetal, as a fraction of what trips it (0 to 1).
    pub heat: [f64; 2],
    /// Somebody's lock holds it off.
    pub locked: bool,
    /// A tag hangs on it.
    pub tagged: bool,
}

/// The load center: its breakers in the order of their spaces.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Panel {
    /// Breakers; the slot of an action is an index here.
    pub breakers: Vec<Breaker>,
}

impl Breaker {
    /// Whether it feeds the heater, by whichever cable.
    pub const fn feeds_heater(&self) -> bool {
        matches!(self.feeds, Circuit::Heater | Circuit::SecondSource | Circuit::OffPeak)
    }

    /// How its handle stands; of a tandem's two, tripped as soon as one is.
    pub fn stands(&self) -> Handle {
        match self.tandem {
            Some(tripped) if self.handle == Handle::On && tripped.contains(&true) => Handle::Tripped,
            _ => self.handle,
        }
    }

    /// Whether a pole is switched on: in a tandem, unless its own half has tripped.
    pub fn is_on(&self, pole: usize) -> bool {
        let tripped = self.tandem.is_some_and(|tripped| tripped.get(pole) == Some(&true));
        self.handle == Handle::On && !tripped
    }

    /// Throws its handle, of a tandem both.
    pub fn throw(&mut self, to: Handle) {
        self.handle = to;
        self.tandem = self.tandem.map(|_| [false; 2]);
    }

    /// Whether it has one pole only.
    pub const fn is_single(&self) -> bool {
        self.stabs[1].is_none()
    }
}

impl Panel {
    /// The slot of the first breaker that truly feeds a circuit.
    pub fn slot_of(&self, circuit: Circuit) -> Option<usize> {
        self.breakers.iter().position(|b| b.feeds == circuit)
    }

    /// The breaker that truly feeds a circuit.
    pub fn feeding(&self, circuit: Circuit) -> Option<&Breaker> {
        self.breakers.iter().find(|b| b.feeds == circuit)
    }
}
