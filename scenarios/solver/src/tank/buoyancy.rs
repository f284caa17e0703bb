//! Unstable layers mix: warmer water below colder is merged until none is left.

use super::{Slug, State};

/// Neighbours this near are one while water moves, J/kg: a hundredth of a kelvin.
const ALIKE: f64 = 10.0;
/// The largest slug made of such, in layers.
const GATHERED: f64 = 2.0;
/// What is larger than this is cut where it has to be fine, in layers.
const COARSE: f64 = 0.75;

impl State {
    /// Merges every run of slugs that is warmer below than above, exactly (pool adjacent violators).
    ///
    /// Slugs of a run keep their places and share one enthalpy. Judged by temperature: the density maximum
    /// at 4 °C is not modelled.
    pub(super) fn overturn(&mut self) {
        let mut i = 0;
        let upside_down = |(low, high): (&Slug, &Slug)| low.enthalpy > high.enthalpy;
        while let Some(slugs) = self.slugs.get(i..) {
            let Some(next) = slugs.iter().zip(slugs.iter().skip(1)).position(upside_down) else { break };
            i += next;
            let (Some(&low), Some(&high)) = (self.slugs.get(i), self.slugs.get(i + 1)) else { break };
            // From here outwards, as long as it is warmer below or colder above than the blend.
            let (mut from, mut to) = (i, i + 2);
            let mut mass = low.mass + high.mass;
            let mut energy = low.mass * low.enthalpy + high.mass * high.enthalpy;
            loop {
                let below = from.checked_sub(1).and_then(|k| self.slugs.get(k));
                if let Some(slug) = below.filter(|slug| slug.enthalpy * mass > energy) {
                    (mass, energy) = (mass + slug.mass, energy + slug.mass * slug.enthalpy);
                    from -= 1;
                } else if let Some(slug) = self.slugs.get(to).filter(|slug| slug.enthalpy * mass < energy) {
                    (mass, energy) = (mass + slug.mass, energy + slug.mass * slug.enthalpy);
                    to += 1;
                } else {
                    break;
                }
            }
            if mass > 0.0 {
                let stirred = Slug::new(0.0, energy / mass);
                for slug in self.slugs.iter_mut().take(to).skip(from) {
                    *slug = stirred.of(slug.mass);
                }
            }
            i = to - 1;
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

    /// Joins neighbours deep inside a stretch of one temperature while water moves, and cuts what is larger than half a
    /// layer where `fine` wants it so (given in volumes from the bottom). A front's own slugs stay as they are.
    pub(super) fn gather(&mut self, layer: f64, scratch: &mut Vec<Slug>, fine: impl Fn(f64, f64) -> bool) {
        let alike = |a: &Slug, b: &Slug| (a.enthalpy - b.enthalpy).abs() < ALIKE;
        let most = GATHERED * layer;
        let (mut base, mut below, mut growing) = (0.0, true, self.growing);
        scratch.clear();
        for (i, slug) in self.slugs.iter().enumerate() {
            if self.growing == Some(i as u32) {
                growing = Some(scratch.len() as u32);
            }
            let size = slug.volume();
            if fine(base, base + size) {
                let parts = if size > COARSE * layer { (2.0 * size / layer).round() } else { 1.0 };
                let part = slug.of(slug.mass / parts);
                scratch.extend(core::iter::repeat_n(part, parts as usize));
                (base, below) = (base + size, true);
                continue;
            }
            let above = self.slugs.get(i + 1);
            let joins = scratch.last_mut().filter(|last| {
                alike(last, slug)
                    && below
                    && last.volume() + size <= most
                    && above.is_none_or(|above| alike(slug, above))
                    && self.growing != Some(i as u32)
                    && !fine(base - last.volume(), base)
            });
            match joins {
                Some(last) => {
                    let mass = last.mass + slug.mass;
                    *last = Slug::new(mass, (last.mass * last.enthalpy + slug.mass * slug.enthalpy) / mass);
                }
                None => {
                    below = scratch.last().is_none_or(|last| alike(last, slug));
                    scratch.push(*slug);
                }
            }
            base += size;
        }
        if self.growing == Some(self.slugs.len() as u32) {
            growing = Some(scratch.len() as u32);
        }
        core::mem::swap(&mut self.slugs, scratch);
        self.growing = growing;
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
