//! The water in the tank: a stack of slugs, and the bodies on the wall.

use serde::{Deserialize, Serialize};

use super::{Probe, Tank};
use crate::water;

/// A piece of the stack with one temperature.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Slug {
    /// kg.
    pub(super) mass: f64,
    /// J/kg above liquid at 0 °C.
    pub(super) enthalpy: f64,
    /// °C and m³/kg that belong to the enthalpy: looked at far more often than they change.
    celsius: f64,
    specific: f64,
}

impl Slug {
    pub(super) fn new(mass: f64, enthalpy: f64) -> Self {
        let ([celsius], [specific]) = water::liquids([enthalpy]);
        Self { mass, enthalpy, celsius, specific }
    }

    /// Another mass in kg of the same water.
    pub(super) fn of(self, mass: f64) -> Self {
        Self { mass, ..self }
    }

    /// Gives it another enthalpy, J/kg.
    pub(super) fn set(&mut self, enthalpy: f64) {
        *self = Self::new(self.mass, enthalpy);
    }

    /// Gives many their temperature and volume anew after their enthalpies were changed, four abreast.
    pub(super) fn refresh(slugs: &mut [Self]) {
        let mut fours = slugs.chunks_exact_mut(4);
        for four in &mut fours {
            let [a, b, c, d] = four else { continue };
            let ([ta, tb, tc, td], [va, vb, vc, vd]) =
                water::liquids([a.enthalpy, b.enthalpy, c.enthalpy, d.enthalpy]);
            (a.celsius, a.specific) = (ta, va);
            (b.celsius, b.specific) = (tb, vb);
            (c.celsius, c.specific) = (tc, vc);
            (d.celsius, d.specific) = (td, vd);
        }
        for slug in fours.into_remainder() {
            slug.set(slug.enthalpy);
        }
    }

    /// kg.
    pub fn mass(&self) -> f64 {
        self.mass
    }

    /// J/kg above liquid at 0 °C.
    pub fn enthalpy(&self) -> f64 {
        self.enthalpy
    }

    /// m³ at one atmosphere.
    pub fn volume(&self) -> f64 {
        self.mass * self.specific
    }

    /// °C.
    pub fn celsius(&self) -> f64 {
        self.celsius
    }
}

/// The state that is kept, copied and put back. Everything else is scratch.
#[derive(PartialEq, Debug, Serialize, Deserialize)]
pub struct State {
    /// The water, bottom first.
    pub(super) slugs: Vec<Slug>,
    /// Cross-section of the tank it stands in, m².
    pub(super) area: f64,
    /// Slugs below the inlet while the one above them is still being filled by it.
    pub(super) growing: Option<u32>,
    /// Enthalpy at the very top edge while water is drawn, J/kg.
    pub(super) edge: f64,
    /// Whether water was moving in the last step.
    pub(super) moving: bool,
    /// The fastest flow when it last changed, m³/s.
    pub(super) flow: f64,
    /// Whether heat came in in the last step.
    pub(super) heated: bool,
    /// Time since flow or heat last changed, s: steps grow with it.
    pub(super) quiet: f64,
    /// Bodies on the wall. The caller may add, move and alter them between calls.
    pub probes: Vec<Probe>,
}

impl Clone for State {
    fn clone(&self) -> Self {
        let &Self { area, growing, edge, moving, flow, heated, quiet, .. } = self;
        let (slugs, probes) = (self.slugs.clone(), self.probes.clone());
        Self { slugs, area, growing, edge, moving, flow, heated, quiet, probes }
    }

    /// Into the lists that are there: a step is kept so at each step.
    fn clone_from(&mut self, other: &Self) {
        let &Self { area, growing, edge, moving, flow, heated, quiet, .. } = other;
        let (mut slugs, mut probes) = (core::mem::take(&mut self.slugs), core::mem::take(&mut self.probes));
        slugs.clone_from(&other.slugs);
        probes.clone_from(&other.probes);
        *self = Self { slugs, area, growing, edge, moving, flow, heated, quiet, probes };
    }
}

impl Tank {
    /// Full of water of one temperature.
    pub fn full_at(&self, celsius: f64) -> State {
        self.filled_to(self.height, celsius)
    }

    /// No water.
    pub fn empty(&self) -> State {
        self.filled_to(0.0, 20.0)
    }

    /// Water of one temperature up to a height in m.
    pub fn filled_to(&self, level: f64, celsius: f64) -> State {
        let level = if level.is_finite() { level.clamp(0.0, self.height) } else { 0.0 };
        let celsius = if celsius.is_finite() { celsius.clamp(0.0, 150.0) } else { 20.0 };
        let volume = level * self.area();
        let count = (volume / self.layer()).round().max(1.0) as usize;
        let enthalpy = water::enthalpy(celsius);
        let mass = volume / water::specific_volume(enthalpy) / count as f64;
        let slugs = if mass > 0.0 { vec![Slug::new(mass, enthalpy); count] } else { Vec::new() };
        State {
            slugs,
            area: self.area(),
            growing: None,
            moving: false,
            flow: 0.0,
            heated: false,
            edge: enthalpy,
            quiet: 0.0,
            probes: Vec::new(),
        }
    }

    /// Full, with temperatures from the bottom up, each for an equal share of the height.
    pub fn layered(&self, celsius: &[f64]) -> State {
        let mut state = self.full_at(20.0);
        let count = state.slugs.len().max(1);
        let share = self.volume() / count as f64;
        for (i, slug) in state.slugs.iter_mut().enumerate() {
            let index = i * celsius.len() / count;
            slug.set(water::enthalpy(celsius.get(index).copied().unwrap_or(20.0)));
            slug.mass = share / slug.specific;
        }
        state
    }
}

impl State {
    /// The water, bottom first.
    pub fn slugs(&self) -> &[Slug] {
        &self.slugs
    }

    /// Water in the tank, kg.
    pub fn mass(&self) -> f64 {
        self.slugs.iter().map(|s| s.mass).sum()
    }

    /// Enthalpy of the water above liquid at 0 °C, J.
    pub fn energy(&self) -> f64 {
        self.slugs.iter().map(|s| s.mass * s.enthalpy).sum()
    }

    /// Volume of the water at one atmosphere, m³.
    ///
    /// Can pass the volume of the tank when water is pushed in or heated with no way out: by how much sets
    /// the pressure.
    pub fn water_volume(&self) -> f64 {
        // Four sums side by side: one would wait for each addition.
        let mut sums = [0.0; 4];
        let fours = self.slugs.chunks_exact(4);
        let rest: f64 = fours.remainder().iter().map(Slug::volume).sum();
        for four in fours {
            for (sum, slug) in sums.iter_mut().zip(four) {
                *sum += slug.volume();
            }
        }
        let [a, b, c, d] = sums;
        (a + b) + (c + d) + rest
    }

    /// Height of the surface, m.
    pub fn level(&self) -> f64 {
        self.water_volume() / self.area
    }

    /// Temperature of all the water if it were stirred, °C.
    pub fn mean(&self) -> Option<f64> {
        let mass = self.mass();
        (mass > 0.0).then(|| water::temperature(self.energy() / mass))
    }

    /// Whether there is water at this height, m. The top of a full tank counts as wet.
    pub fn wetted(&self, height: f64) -> bool {
        let level = self.level();
        level > 0.0 && height <= level * 1.002
    }

    /// Share of a stretch around `centre` that is under water, 0 to 1.
    pub fn wetted_share(&self, centre: f64, spread: f64) -> f64 {
        Self::share_below(self.level(), centre, spread)
    }

    /// Share of a stretch that is under water of a level.
    pub(super) fn share_below(level: f64, centre: f64, spread: f64) -> f64 {
        let level = level * 1.002;
        if spread <= 0.0 {
            return if level > 0.0 && centre <= level { 1.0 } else { 0.0 };
        }
        ((level - (centre - 0.5 * spread)) / spread).clamp(0.0, 1.0)
    }

    /// Water temperature at a height in m, °C; nothing above the surface.
    pub fn temperature_at(&self, height: f64) -> Option<f64> {
        if !height.is_finite() || !self.wetted(height) {
            return None;
        }
        // Counted in volume: no division per slug.
        let height = height * self.area;
        let mut base = 0.0;
        let mut before: Option<(f64, f64)> = None;
        for slug in &self.slugs {
            let thick = slug.volume();
            let (middle, here) = (base + 0.5 * thick, slug.celsius());
            if height <= middle {
                return Some(between(before, (middle, here), height));
            }
            before = Some((middle, here));
            base += thick;
        }
        before.map(|(_, t)| t)
    }

    /// Temperatures at many heights, as [`Self::temperature_at`] gives them, in one walk through the water. `order` is
    /// work space.
    pub(super) fn temperatures_at(
        &self,
        heights: impl Iterator<Item = f64> + Clone,
        order: &mut Vec<(f64, usize)>,
        found: &mut Vec<Option<f64>>,
    ) {
        found.clear();
        order.clear();
        for (i, height) in heights.clone().enumerate() {
            found.push(None);
            if height.is_finite() {
                let height = height * self.area;
                let place = order.iter().position(|(other, _)| *other > height).unwrap_or(order.len());
                order.insert(place, (height, i));
            }
        }
        let mut wanted = order.iter().copied();
        let mut next = wanted.next();
        let mut base = 0.0;
        let mut before = None;
        for slug in &self.slugs {
            let thick = slug.volume();
            let there = (base + 0.5 * thick, slug.celsius());
            while let Some((height, i)) = next.filter(|(height, _)| *height <= there.0) {
                if let Some(found) = found.get_mut(i) {
                    *found = Some(between(before, there, height));
                }
                next = wanted.next();
            }
            before = Some(there);
            base += thick;
        }
        while let Some((_, i)) = next {
            if let Some(found) = found.get_mut(i) {
                *found = before.map(|(_, celsius)| celsius);
            }
            next = wanted.next();
        }
        let level = base / self.area;
        for (found, height) in found.iter_mut().zip(heights) {
            if level <= 0.0 || height > level * 1.002 {
                *found = None;
            }
        }
    }

    /// Mean temperature of each of `count` equal layers of a tank of this height, bottom first; nothing where
    /// a layer is wholly dry.
    pub fn layers(&self, tank: &Tank, count: u32) -> Vec<Option<f64>> {
        let share = tank.volume() / f64::from(count.max(1));
        let mut out = Vec::with_capacity(count as usize);
        let mut slugs = self.slugs.iter();
        let mut left = slugs.next().map(|s| (s.volume(), s.celsius()));
        for _ in 0..count {
            let (mut need, mut have, mut sum) = (share, 0.0, 0.0);
            while let Some((volume, celsius)) = left {
                let take = volume.min(need);
                have += take;
                sum += take * celsius;
                need -= take;
                if volume > take {
                    left = Some((volume - take, celsius));
                    break;
                }
                left = slugs.next().map(|s| (s.volume(), s.celsius()));
            }
            out.push((have > 1e-9 * share).then(|| sum / have));
        }
        out
    }
}

/// Temperature at a height between the middles of two slugs, each with its temperature.
fn between(before: Option<(f64, f64)>, (middle, here): (f64, f64), height: f64) -> f64 {
    match before {
        Some((low, t)) if middle > low => t + (here - t) * (height - low) / (middle - low),
        _ => here,
    }
}
