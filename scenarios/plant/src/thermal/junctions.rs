//! Water that meets: enthalpies where the pipes join.

use solver::water;

use super::flows::Flows;

/// Enthalpies of the waters that come together, J/kg.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sources {
    /// The main.
    pub main: f64,
    /// The cold pipe before the heater.
    pub cold: f64,
    /// What leaves the tank for the hot line.
    pub tank: f64,
}

/// Enthalpies at the two headers, J/kg.
#[derive(Clone, Copy, Debug)]
pub(super) struct Headers {
    /// The house's cold header.
    pub house: f64,
    /// The hot line.
    pub hot: f64,
}

/// Flow in m³/s with its enthalpy in J/kg.
type Stream = (f64, f64);

/// Mass flow, kg/s, of a stream; nothing for one that runs the other way.
fn mass((flow, enthalpy): Stream) -> f64 {
    flow.max(0.0) / water::specific_volume(enthalpy)
}

/// Enthalpy of streams stirred together; `else_` where none of them runs.
fn stirred(streams: &[Stream], else_: f64) -> f64 {
    let (mut total, mut heat) = (0.0, 0.0);
    for stream in streams {
        let part = mass(*stream);
        total += part;
        heat += part * stream.1;
    }
    if total > 0.0 { heat / total } else { else_ }
}

impl Headers {
    /// Crossovers all run one way, so one header is known before the other.
    pub fn of(flows: &Flows, from: Sources) -> Self {
        let Sources { main, cold, tank } = from;
        let into_house = [(flows.supply, main), (-flows.heater, cold)];
        let into_hot = [(flows.nipple, tank), (flows.mixer, cold), (-flows.circuit, cold)];
        if flows.cross >= 0.0 {
            let house = stirred(&into_house, main);
            let [a, b, c] = into_hot;
            Self { house, hot: stirred(&[a, b, c, (flows.cross, house)], tank) }
        } else {
            let hot = stirred(&into_hot, tank);
            let [a, b] = into_house;
            Self { house: stirred(&[a, b, (-flows.cross, hot)], main), hot }
        }
    }

    /// What a spout gives when both sides run, J/kg.
    pub fn spout(&self, hot: f64, cold: f64) -> f64 {
        stirred(&[(hot, self.hot), (cold, self.house)], self.hot)
    }
}
