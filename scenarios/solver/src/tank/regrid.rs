//! Back to even layers once the water has come to rest.

use super::{Slug, State};

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
    fn limited_slope(&self, i: usize) -> f64 {
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
}
