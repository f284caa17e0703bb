//! The ways water can take in and out of the tank, and the pressure at which they balance.
//!
//! Quasi-steady: at each moment the flows are those of orifices at the present pressures. What can give way
//! (the stretch of pipe and shell, an expansion tank, air at the top) makes the pressure a state; it is
//! advanced by the implicit Euler rule, which holds at any step.

use quantity::Volume;
use solver::water::{ATMOSPHERE, GRAVITY};

use crate::parts::Level;
use crate::waterworks::{ExpansionTank, Tap};
use crate::{Plant, thermal::vessel};

/// Density taken for heads and orifices, kg/m³.
const RHO: f64 = 1000.0;
/// Discharge coefficient of an orifice (trade sheet 5.8).
const CD: f64 = 0.6;
/// Bore of the drain valve: half an inch (trade sheet 5.8).
const DRAIN_BORE: f64 = 0.0127;
/// A hose lets through half of that: 3 of 5.9 gpm (trade sheet 5.8).
const HOSE: f64 = 0.51;
/// Bore of the relief valve fully lifted: half an inch (model, a 3/4 in valve).
const RELIEF_BORE: f64 = 0.0127;
/// A relief valve that opened by pressure shuts when the pressure is down to this share of its setting
/// (model; valves drip at their setting rather than pop).
const RESEAT: f64 = 0.97;
/// Flow through the open cold valve with no pressure behind it, at 60 psi: 9 gpm (model; half open it gives
/// the 5 gpm of a careful refill, trade sheet 5.10).
const SUPPLY: f64 = 9.0;
/// Water in the cold pipe between street and tank: 3 L, some 10 m of 3/4 in pipe (model).
const PIPE: f64 = 3.0e-3;
/// Stretch of shell, pipe and trapped air for each m³ of the tank and pascal: 5.5 times that of the water
/// alone. A bare shell is 4.2 times softer (trade sheet 5.6, computed), a house with its pipes up to ten
/// (from memory).
const STRETCH: f64 = 2.5e-9;
/// Below this pressure the water in the pipe draws vapour and gives way at once, Pa gauge.
const VACUUM: f64 = -95_000.0;
/// A tap or valve open less than this lets no air in.
pub(super) const AJAR: f64 = 0.02;
/// Water lower than this is called empty, m: it lies below the lip of the drain.
pub(super) const EMPTY: f64 = 0.003;
/// Air smaller than this is none, J: a hundredth of a millilitre at room pressure.
pub(super) const NO_AIR: f64 = 1e-3;
/// 60 psi in Pa.
const SIXTY: f64 = 413_685.4;

/// Everything that sets the flows at one moment.
pub(super) struct Ways {
    main: f64,
    supply: f64,
    check: bool,
    taps: [f64; 4],
    heads: [f64; 4],
    drain: f64,
    relief: f64,
    lift: Lift,
    weep: f64,
    gaskets: [f64; 2],
    gasket_heights: [f64; 2],
    hole: f64,
    expansion: Option<ExpansionTank>,
    stretch: f64,
    /// Volume of the tank, m³.
    pub capacity: f64,
    area: f64,
    /// Height of the water surface, m.
    pub level: f64,
    /// Volume of water in the tank, m³.
    pub water: f64,
    /// Volume of water on the cold side, m³.
    pub cold: f64,
    /// Air at the top as absolute pressure times volume, J.
    pub air: f64,
    /// Air can get in or out at the top.
    pub vented: bool,
}

/// How the relief valve stands.
#[derive(Clone, Copy, PartialEq)]
enum Lift {
    Shut,
    /// Lifted a little by pressure: opens evenly between the reseat pressure and its setting.
    Pressure {
        seat: f64,
        span: f64,
    },
    Full,
}

/// Flows at one moment, m³/s; the supply may run backwards.
#[derive(Clone, Copy, Default, Debug, PartialEq)]
pub(super) struct Flows {
    pub supply: f64,
    pub taps: [f64; 4],
    pub drain: f64,
    pub relief: f64,
    pub gaskets: [f64; 2],
    pub hole: f64,
}

impl Flows {
    /// Out at the top of the water.
    pub fn top(&self) -> f64 {
        self.taps.iter().sum::<f64>() + self.relief + self.gaskets[0]
    }

    /// Out at its bottom.
    pub fn bottom(&self) -> f64 {
        self.drain + self.gaskets[1] + self.hole
    }

    fn out(&self) -> f64 {
        self.top() + self.bottom()
    }
}

/// Flow factor of an orifice: m³/s for each square root of a pascal.
fn orifice(diameter: f64) -> f64 {
    CD * core::f64::consts::FRAC_PI_4 * diameter * diameter * (2.0 / RHO).sqrt()
}

impl Ways {
    pub fn of(plant: &Plant) -> Self {
        let plumbing = &plant.plumbing;
        let tank = vessel::vessel(&plant.plate);
        let open = |share: f64| if share.is_finite() { share.clamp(0.0, 1.0) } else { 0.0 };
        let taps = Tap::ALL.iter().zip(plumbing.taps);
        let mut factors = [0.0; 4];
        let mut heads = [0.0; 4];
        for ((&tap, opening), (factor, head)) in taps.zip(factors.iter_mut().zip(heads.iter_mut())) {
            *factor = tap.nominal().get() / SIXTY.sqrt() * open(opening);
            *head = RHO * GRAVITY * (tap.height().get() - tank.height()).max(0.0);
        }
        let choke = 1.0 / (1.0 + plant.vessel.sediment.to_litres().max(0.0) / 2.0);
        let hose = if plumbing.hose { HOSE } else { 1.0 };
        let relief = &plumbing.relief;
        let hot = relief.open && plant.relief_water() > plant.relief_recloses();
        let lift = if relief.lever || hot {
            Lift::Full
        } else if relief.open {
            let setting = relief.opens_at.get();
            Lift::Pressure { seat: RESEAT * setting, span: (1.0 - RESEAT) * setting }
        } else {
            Lift::Shut
        };
        let water = plant.tank.water_volume();
        Self {
            main: plumbing.main.get(),
            supply: SUPPLY * 6.309_019_64e-5 / SIXTY.sqrt() * open(plumbing.cold_valve),
            check: plumbing.closed,
            taps: factors,
            heads,
            drain: orifice(DRAIN_BORE) * open(plumbing.drain_valve) * hose * choke,
            relief: orifice(RELIEF_BORE),
            lift,
            weep: orifice(relief.weep.max(0.0)),
            gaskets: [0, 1].map(|i| orifice(plant.elements[i].gasket.leak_diameter.max(0.0))),
            gasket_heights: [Level::Upper, Level::Lower].map(|l| vessel::element_height(&plant.plate, l)),
            hole: orifice(plant.vessel.shell_hole.max(0.0)),
            expansion: plumbing.expansion.filter(|e| !e.waterlogged),
            stretch: STRETCH * tank.volume(),
            capacity: tank.volume(),
            area: tank.area(),
            level: (water / tank.area()).min(tank.height()),
            water,
            cold: plant.cold_volume(),
            air: plumbing.air.get(),
            vented: relief.lever || plumbing.taps.iter().any(|t| open(*t) > AJAR),
        }
    }

    /// Whether air or nothing stands above the water.
    pub fn has_void(&self) -> bool {
        self.air > NO_AIR
    }

    /// Volume of water that the cold side holds at a pressure, m³.
    pub fn content(&self, p: f64) -> f64 {
        let soft = if p < VACUUM { 1e-6 * (p - VACUUM) } else { 0.0 };
        let bladder = self.expansion.map_or(0.0, |tank| {
            let charge = tank.charge.get() + ATMOSPHERE;
            let over = p + ATMOSPHERE;
            if over > charge && over > 1.0 { tank.volume.get() * (1.0 - charge / over) } else { 0.0 }
        });
        PIPE + self.stretch * p.max(VACUUM) + soft + bladder
    }

    /// Volume of water that tank and cold side hold together at a pressure, m³.
    fn total(&self, p: f64) -> f64 {
        let shut = if self.has_void() { self.air / (p + ATMOSPHERE) } else { 0.0 };
        self.capacity - shut + self.content(p)
    }

    /// The flows at a pressure at the top of the tank, Pa gauge, with the surface at a height.
    pub fn flows(&self, p: f64, level: f64) -> Flows {
        let root = |factor: f64, dp: f64| if dp > 0.0 { factor * dp.sqrt() } else { 0.0 };
        let at = |height: f64| if level > height { p + RHO * GRAVITY * (level - height) } else { 0.0 };
        let mut flows = Flows { supply: root(self.supply, self.main - p), ..Flows::default() };
        if !self.check {
            flows.supply -= root(self.supply, p - self.main);
        }
        if !self.has_void() {
            for (flow, (factor, head)) in flows.taps.iter_mut().zip(self.taps.iter().zip(self.heads)) {
                *flow = root(*factor, p - head);
            }
            let lifted = match self.lift {
                Lift::Shut => 0.0,
                Lift::Pressure { seat, span } => ((p - seat) / span).clamp(0.0, 1.0),
                Lift::Full => 1.0,
            };
            flows.relief = root(self.relief * lifted + self.weep, p);
        }
        let drainable = if level > EMPTY { p + RHO * GRAVITY * level } else { 0.0 };
        flows.drain = root(self.drain, drainable);
        flows.hole = root(self.hole, drainable);
        for (flow, (factor, height)) in
            flows.gaskets.iter_mut().zip(self.gaskets.iter().zip(self.gasket_heights))
        {
            *flow = root(*factor, at(height));
        }
        flows
    }

    /// Pressure below which air comes in: through a tap or the lever at the top, or up the open drain.
    pub fn floor(&self) -> Option<f64> {
        if self.vented {
            Some(0.0)
        } else if self.drain > 0.0 && self.level > EMPTY {
            Some(-RHO * GRAVITY * self.level)
        } else if self.drain > 0.0 {
            Some(0.0)
        } else {
            None
        }
    }

    /// Pressure at the end of `dt` seconds while the water grows by `growth` m³/s.
    pub fn pressure_after(&self, dt: f64, growth: f64) -> f64 {
        if self.vented && self.has_void() {
            return 0.0;
        }
        let have = self.water + self.cold;
        let p = root_of(|p: f64| {
            let flows = self.flows(p, self.level);
            self.total(p) - have - dt * (flows.supply - flows.out() + growth)
        });
        self.floor().map_or(p, |floor| p.max(floor))
    }

    /// Pressure that goes with the water and air there are now.
    pub fn settled_pressure(&self) -> f64 {
        if self.vented && self.has_void() {
            return 0.0;
        }
        let have = self.water + self.cold;
        root_of(|p| self.total(p) - have)
    }

    /// Whether growing water has somewhere to go.
    pub fn gives_way(&self) -> bool {
        self.vented || self.drain > 0.0 || (self.supply > 0.0 && !self.check)
    }

    /// Whether the main can bring the cold side to a pressure: water in, or back where nothing stops it.
    pub fn main_reaches(&self, p: f64) -> bool {
        self.supply > 0.0 && (!self.check || p <= self.main)
    }

    /// Volume missing in tank and cold side together at a pressure, m³.
    pub fn lacking(&self, p: f64) -> f64 {
        self.total(p) - self.water - self.cold
    }

    /// Surface area of the tank, m².
    pub fn area(&self) -> f64 {
        self.area
    }

    /// Volume not filled with water, m³.
    pub fn void(&self) -> f64 {
        (self.capacity - self.water).max(0.0)
    }

    /// Volume by which the cold side would shrink if it fell to this pressure, m³.
    pub fn released(&self, p: f64) -> f64 {
        self.cold - self.content(p)
    }

    /// Part of a line that fills with air when the tank breathes through another tap: the common trunk.
    pub fn trunk(line: Volume) -> Volume {
        line * 0.3
    }
}

/// Root of an increasing function of pressure, by halving: always ends, always the same.
fn root_of(f: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (-ATMOSPHERE + 100.0, 4.0e6);
    if f(low) >= 0.0 {
        return low;
    }
    if f(high) <= 0.0 {
        return high;
    }
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if f(middle) < 0.0 {
            low = middle;
        } else {
            high = middle;
        }
        if high - low < 1e-4 {
            break;
        }
    }
    0.5 * (low + high)
}
