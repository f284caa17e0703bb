//! Back to even layers once the water has come to rest.

use super::{Inputs, Slug, State};

/// Neighbours this near in temperature are one, K.
const ALIKE: f64 = 0.01;
/// The largest slug made of such, in layers.
const LARGEST: f64 = 4.0;
/// Share of the distance to the nearest place of interest that a slug may measure.
const GRADING: f64 = 0.4;
/// What may be heated or watched reaches from this far below a probe to this far above it, m.
const AROUND_PROBE: (f64, f64) = (0.2, 0.04);
/// Decay lengths of the eddy at the inlet that stay fine.
const AROUND_INLET: f64 = 3.0;

impl State {
    /// Lays the water out in layers of one volume, the topmost taking the rest.
    ///
    /// Inside a slug the enthalpy is taken as linear with the limited slope of van Leer (monotonized central
    /// differences), so that a front is hardly widened and no new extreme appears. Mass and energy are kept.
    /// Happens once after each flow: at rest every layer lies where it always lies, and what is computed
    /// there does not depend on how the flow was cut into steps.
    pub(super) fn regrid(&mut self, layer: f64, scratch: &mut Vec<Slug>) {
        scratch.clear();
        let (mut mass, mut energy, mut room) = (0.0, 0.0, layer);
        let n = self.slugs.len();
        for i in 0..n {
            let Some(&slug) = self.slugs.get(i) else { break };
            let size = slug.volume();
            if size <= 0.0 {
                continue;
            }
            let slope = self.limited_slope(i);
            // Share of the slug already laid out, from its bottom.
            let mut done = 0.0;
            while done < 1.0 {
                let end = if (1.0 - done) * size <= room { 1.0 } else { done + room / size };
                let part = slug.mass * (end - done);
                mass += part;
                energy += part * (slug.enthalpy + slope * (0.5 * (done + end) - 0.5));
                room -= (end - done) * size;
                if end < 1.0 || room <= 1e-9 * layer {
                    scratch.push(Slug::new(mass, energy / mass));
                    (mass, energy, room) = (0.0, 0.0, layer);
                }
                done = end;
            }
        }
        if mass > 0.0 {
            match scratch.last_mut() {
                // A last film is no layer of its own.
                Some(last) if mass < 0.05 * last.mass => {
                    let whole = last.mass + mass;
                    *last = Slug::new(whole, (last.mass * last.enthalpy + energy) / whole);
                }
                _ => scratch.push(Slug::new(mass, energy / mass)),
            }
        }
        core::mem::swap(&mut self.slugs, scratch);
        self.growing = None;
    }

    /// Difference of enthalpy across a slug, from bottom to top; zero at an end or an extreme.
    pub(super) fn limited_slope(&self, i: usize) -> f64 {
        let (Some(low), Some(here), Some(high)) =
            (i.checked_sub(1).and_then(|j| self.slugs.get(j)), self.slugs.get(i), self.slugs.get(i + 1))
        else {
            return 0.0;
        };
        let (a, b, c) = (low.mass, here.mass, high.mass);
        let down = (here.enthalpy - low.enthalpy) * 2.0 * b / (a + b);
        let up = (high.enthalpy - here.enthalpy) * 2.0 * b / (b + c);
        if down * up <= 0.0 {
            return 0.0;
        }
        // Neither end of the line may pass a neighbour.
        let most = 2.0 * (here.enthalpy - low.enthalpy).abs().min((high.enthalpy - here.enthalpy).abs());
        (0.5 * (down + up)).clamp(-most, most)
    }

    /// Joins neighbours that are as good as equal where nothing is about to happen: away from the inlet's eddy and
    /// from what the bodies on the wall watch.
    pub(super) fn thin(&mut self, inputs: &Inputs, layer: f64) {
        let eddy = AROUND_INLET * inputs.mixing.decay;
        let inlet = (inputs.inlet_height - eddy, inputs.inlet_height + eddy);
        let probes: Vec<(f64, f64)> =
            self.probes.iter().map(|p| (p.height - AROUND_PROBE.0, p.height + AROUND_PROBE.1)).collect();
        let area = self.area;
        self.join_where(|joint| {
            let (low, high) = (joint.base / area, (joint.base + joint.size) / area);
            let free = probes.iter().fold(apart(inlet, low, high), |free, &p| free.min(apart(p, low, high)));
            joint.gap < ALIKE && joint.size <= (LARGEST * layer).min(GRADING * free * area)
        });
    }

    /// Joins neighbours, from the bottom up, wherever `fits` says so.
    fn join_where(&mut self, fits: impl Fn(&Joint) -> bool) {
        let n = self.slugs.len();
        let (mut kept, mut base) = (0, 0.0);
        for i in 1..n {
            let (Some(&a), Some(&b)) = (self.slugs.get(kept), self.slugs.get(i)) else { return };
            let gap = (a.celsius() - b.celsius()).abs();
            let joint = Joint { base, size: a.volume() + b.volume(), gap };
            if fits(&joint) {
                let mass = a.mass + b.mass;
                let whole = if gap == 0.0 {
                    a.of(mass)
                } else {
                    Slug::new(mass, (a.mass * a.enthalpy + b.mass * b.enthalpy) / mass)
                };
                if let Some(slot) = self.slugs.get_mut(kept) {
                    *slot = whole;
                }
            } else {
                base += a.volume();
                kept += 1;
                if let Some(slot) = self.slugs.get_mut(kept) {
                    *slot = b;
                }
            }
        }
        self.slugs.truncate(kept + 1);
        self.growing = None;
    }

    /// Cuts what is larger than a layer into even parts before water moves, linear inside as in [`State::regrid`].
    pub(super) fn split(&mut self, layer: f64, scratch: &mut Vec<Slug>) {
        scratch.clear();
        for (i, &slug) in self.slugs.iter().enumerate() {
            let parts = (slug.volume() / layer).round().max(1.0);
            if parts < 2.0 {
                scratch.push(slug);
                continue;
            }
            let slope = self.limited_slope(i);
            for part in 0..parts as u32 {
                let middle = (f64::from(part) + 0.5) / parts - 0.5;
                scratch.push(Slug::new(slug.mass / parts, slug.enthalpy + slope * middle));
            }
        }
        core::mem::swap(&mut self.slugs, scratch);
        self.growing = None;
    }
}

/// Two neighbours that could be one.
struct Joint {
    /// Volume below them, m³.
    base: f64,
    /// Their volume, m³.
    size: f64,
    /// How far apart they are, K.
    gap: f64,
}

/// How far a stretch lies from a range of heights.
fn apart((from, to): (f64, f64), low: f64, high: f64) -> f64 {
    (from - high).max(low - to).max(0.0)
}
