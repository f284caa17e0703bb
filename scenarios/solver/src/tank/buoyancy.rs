//! Unstable layers mix: warmer water below colder is merged until none is left.

use super::{Slug, State};

impl State {
    /// Merges every run of slugs that is warmer below than above, exactly (pool adjacent violators).
    ///
    /// Slugs of a run keep their places and share one enthalpy. Judged by temperature: the density maximum
    /// at 4 °C is not modelled.
    pub(super) fn overturn(&mut self, scratch: &mut Vec<(f64, f64, u32)>) {
        let stable = self.slugs.windows(2).all(|pair| match pair {
            [low, high] => low.enthalpy <= high.enthalpy,
            _ => true,
        });
        if stable {
            return;
        }
        scratch.clear();
        for slug in &self.slugs {
            let mut run = (slug.mass, slug.mass * slug.enthalpy, 1);
            while let Some(&(mass, energy, count)) = scratch.last() {
                // Compared by cross-multiplying: energy/mass of the lower run above that of the upper.
                if energy * run.0 <= run.1 * mass {
                    break;
                }
                run = (run.0 + mass, run.1 + energy, run.2 + count);
                scratch.pop();
            }
            scratch.push(run);
        }
        let mut slugs = self.slugs.iter_mut();
        for &(mass, energy, count) in scratch.iter() {
            if count > 1 && mass > 0.0 {
                let stirred = Slug::new(0.0, energy / mass);
                for slug in slugs.by_ref().take(count as usize) {
                    *slug = stirred.of(slug.mass);
                }
            } else {
                for _ in 0..count {
                    slugs.next();
                }
            }
        }
    }

    /// Keeps the stack at a bounded number of slugs: none tiny, and the two most alike joined first.
    ///
    /// With a joined size of at most 1.25 layers there is always a pair to join while more than 1.7 times
    /// `layers` are left.
    pub(super) fn tidy(&mut self, layer: f64, layers: u32) {
        let density = 1000.0;
        let most = (1.7 * f64::from(layers)) as usize + 4;
        while self.slugs.len() > most {
            let mut best: Option<(usize, f64)> = None;
            for (i, pair) in self.slugs.windows(2).enumerate() {
                let [a, b] = pair else { continue };
                // The inlet still needs this boundary.
                if self.growing == Some(i as u32 + 1) {
                    continue;
                }
                if a.mass + b.mass > 1.25 * layer * density {
                    continue;
                }
                let gap = a.enthalpy - b.enthalpy;
                let cost = gap * gap * a.mass * b.mass / (a.mass + b.mass);
                if best.is_none_or(|(_, least)| cost < least) {
                    best = Some((i, cost));
                }
            }
            let Some((i, _)) = best else { break };
            self.growing = self.growing.map(|b| if b as usize > i { b - 1 } else { b });
            self.join(i);
        }
    }

    /// Joins the slug at `i` with the one above it.
    pub(super) fn join(&mut self, i: usize) {
        let (Some(&a), Some(&b)) = (self.slugs.get(i), self.slugs.get(i + 1)) else { return };
        let mass = a.mass + b.mass;
        if let Some(slot) = self.slugs.get_mut(i) {
            *slot = Slug::new(mass, (a.mass * a.enthalpy + b.mass * b.enthalpy) / mass);
        }
        self.slugs.remove(i + 1);
    }
}
