//! What acts on the tank during a step, held constant for its duration.

use quantity::{Constant, Tag};

use super::{Error, State, Warming, check};

/// A heat source in the water.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Source {
    /// Height of its middle, m.
    pub centre: f64,
    /// Vertical extent over which it gives its heat evenly, m.
    pub spread: f64,
    /// Heat, W; only the share below the surface reaches the water.
    pub watts: f64,
}

/// What comes in at the inlet.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Filling {
    /// As much as keeps the tank full; growth of the water leaves by the inlet.
    KeepFull,
    /// A given flow, m³/s of water at the inlet's temperature. Negative takes water out at the inlet's height.
    Flow(f64),
}

quantity::constants! {
    /// Strength of the eddy under a 19 mm tube, see [`Mixing`].
    const EDDY: Constant = Constant::new(
        "diffusivity of the eddy at the inlet, over the flow",
        0.26,
        "1/m",
        Tag::Model("jet of a 19 mm tube, 0.005 of velocity and bore; that it follows the flow: ANL publication 170017"),
    );
    /// Distance over which it fades.
    const FADES: Constant = Constant::new("the eddy at the inlet fades over", 0.08, "m", Tag::Model("four bores of the tube"));
    /// Conduction along water and wall together, over the water's area.
    const CONDUCTS: Constant = Constant::new(
        "conduction of water and wall along the tank",
        1.5,
        "W/(m·K)",
        Tag::Memory("papers on stratified tanks: 1 to 3 with the wall"),
    );
}

/// The eddy that an incoming jet stirs up: a diffusivity that fades with the distance from the inlet.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Mixing {
    /// Diffusivity at the inlet per unit of flow, m²/s per m³/s. Grows in proportion to the flow.
    pub strength: f64,
    /// Distance over which it falls to 1/e, m.
    pub decay: f64,
}

impl Default for Mixing {
    fn default() -> Self {
        Self { strength: EDDY.get(), decay: FADES.get() }
    }
}

/// Another way in or out, at a height of its own: a return, one end of a loop that circulates by itself.
///
/// What a port brings or takes beyond the others is made up for by the inlet of a tank that is kept full.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Port {
    /// Height, m; the height of the tank or more is its very top.
    pub height: f64,
    /// Flow, m³/s: into the tank when positive, out of it when negative.
    pub flow: f64,
    /// Temperature of what comes in, °C.
    pub celsius: f64,
}

/// Most ports of one tank.
pub const PORTS: usize = 4;

/// A port's flow up to this, m³/s, counts as rest: loops that circulate by themselves, 0.16 gallons a minute.
pub(super) const SEEP: f64 = 1e-5;

/// Everything that acts on the tank.
#[derive(Clone, PartialEq, Debug)]
pub struct Inputs {
    /// Heat sources, any number.
    pub sources: Vec<Source>,
    /// Flow out to the taps, m³/s.
    pub draw: f64,
    /// Height where it is taken, m, as far as the water reaches it; nothing for the top of the water.
    pub outlet_height: Option<f64>,
    /// Flow out at the bottom, m³/s.
    pub drain: f64,
    /// What comes in.
    pub filling: Filling,
    /// Height where it comes in, m (the real end of the inlet tube).
    pub inlet_height: f64,
    /// Its temperature, °C.
    pub inlet_celsius: f64,
    /// Temperature of the surroundings, °C.
    pub ambient: f64,
    /// Heat loss of the full tank, W/K, spread evenly over the height; the dry part loses nothing.
    pub loss: f64,
    /// Effective vertical conductivity of water and wall together, W/(m·K).
    pub conductivity: f64,
    /// The eddy at the inlet.
    pub mixing: Mixing,
    /// Other ways in and out, at most [`PORTS`].
    pub ports: Vec<Port>,
    /// What warms one of the bodies on the wall.
    pub warming: Option<Warming>,
}

impl Inputs {
    /// Nothing drawn and nothing heated; kept full through an inlet at this height at the ambient temperature.
    ///
    /// The walls conduct as most do.
    pub fn idle(inlet_height: f64, ambient: f64, loss: f64) -> Self {
        Self {
            sources: Vec::new(),
            draw: 0.0,
            outlet_height: None,
            drain: 0.0,
            filling: Filling::KeepFull,
            inlet_height,
            inlet_celsius: ambient,
            ambient,
            loss,
            conductivity: CONDUCTS.get(),
            mixing: Mixing::default(),
            ports: Vec::new(),
            warming: None,
        }
    }

    pub(super) fn check(&self) -> Result<(), Error> {
        for source in &self.sources {
            check("source centre", source.centre, f64::MIN)?;
            check("source spread", source.spread, 0.0)?;
            check("source watts", source.watts, 0.0)?;
        }
        if let Filling::Flow(flow) = self.filling {
            check("filling", flow, f64::MIN)?;
        }
        for port in &self.ports {
            check("port height", port.height, f64::MIN)?;
            check("port flow", port.flow, f64::MIN)?;
            check("port temperature", port.celsius, f64::MIN)?;
        }
        if let Some(warming) = &self.warming {
            warming.check()?;
        }
        if self.ports.len() > PORTS {
            return Err(Error::Bad { field: "number of ports", value: self.ports.len() as f64 });
        }
        check("draw", self.draw, 0.0)?;
        check("outlet height", self.outlet_height.unwrap_or(0.0), f64::MIN)?;
        check("drain", self.drain, 0.0)?;
        check("inlet height", self.inlet_height, f64::MIN)?;
        check("inlet temperature", self.inlet_celsius, f64::MIN)?;
        check("ambient", self.ambient, f64::MIN)?;
        check("loss", self.loss, 0.0)?;
        check("conductivity", self.conductivity, 0.0)?;
        check("mixing strength", self.mixing.strength, 0.0)?;
        check("mixing decay", self.mixing.decay, 1e-6)
    }

    /// Fastest flow, m³/s.
    pub(super) fn fastest(&self) -> f64 {
        let filling = match self.filling {
            Filling::KeepFull => 0.0,
            Filling::Flow(flow) => flow.abs(),
        };
        let ports = self.ports.iter().map(|p| p.flow.abs()).filter(|flow| *flow > SEEP);
        ports.fold(self.draw.max(self.drain).max(filling), f64::max)
    }

    /// Fastest flow that counts as rest, m³/s.
    pub(super) fn seep(&self) -> f64 {
        self.ports.iter().map(|p| p.flow.abs()).filter(|flow| *flow <= SEEP).fold(0.0, f64::max)
    }

    /// Heat of all sources, W.
    pub(super) fn watts(&self) -> f64 {
        self.sources.iter().map(|s| s.watts).sum()
    }

    pub(super) fn heated(&self) -> bool {
        self.sources.iter().any(|s| s.watts > 0.0)
    }
}

/// A threshold watched on a probe: `advance` stops when the probe passes it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Cross {
    /// Index into [`State::probes`].
    pub probe: u32,
    /// Stop when the probe rises to this, °C.
    pub rising: Option<f64>,
    /// Stop when the probe falls to this, °C.
    pub falling: Option<f64>,
}

impl Cross {
    pub(super) fn check(&self, state: &State) -> Result<(), Error> {
        if state.probes.get(self.probe as usize).is_none() {
            return Err(Error::NoProbe(self.probe));
        }
        check("rising threshold", self.rising.unwrap_or(0.0), f64::MIN)?;
        check("falling threshold", self.falling.unwrap_or(0.0), f64::MIN)
    }
}
