//! Water moved in and out of the stack as whole pieces, so that fronts stay sharp.

use quantity::det;

use super::{Slug, State};
use crate::water;

/// Mass in kg and its enthalpy in J.
#[derive(Clone, Copy, Default, Debug)]
pub(super) struct Parcel {
    pub mass: f64,
    pub energy: f64,
}

impl Parcel {
    fn add(&mut self, mass: f64, enthalpy: f64) {
        self.mass += mass;
        self.energy += mass * enthalpy;
    }
}

/// How far a boundary may lie from where it is wanted, in layers.
const SLACK: f64 = 0.02;
/// How near one has to lie to be moved there, in layers.
const NEAR: f64 = 0.2;

/// Slugs that what comes in has stirred: the lowest, and the first one above them all.
pub(super) type Plume = (usize, usize);

/// A slug by its number, and the volume below it, m³.
#[derive(Clone, Copy, Default, Debug)]
pub(super) struct Place {
    pub slug: usize,
    pub base: f64,
}

impl State {
    /// Takes a volume off the top. Returns what came and the volume that was not there.
    ///
    /// Inside the topmost slug the enthalpy is taken as linear, between the edge that left last and the
    /// slug below: the outlet then follows a front smoothly instead of in steps of a whole slug.
    pub(super) fn take_top(&mut self, mut volume: f64) -> (Parcel, f64) {
        let mut out = Parcel::default();
        while volume > 0.0 {
            let n = self.slugs.len();
            let below = n.checked_sub(2).and_then(|i| self.slugs.get(i)).copied();
            let Some(top) = self.slugs.last_mut() else { break };
            let size = top.volume();
            let slope = match below {
                Some(b) if size > 0.0 => {
                    let upper = (self.edge - top.enthalpy) / (0.5 * size);
                    let lower = (top.enthalpy - b.enthalpy) / (0.5 * (size + b.volume()));
                    upper.min(lower).max(0.0)
                }
                _ => 0.0,
            };
            if size <= volume {
                out.add(top.mass, top.enthalpy);
                self.edge = top.enthalpy - 0.5 * slope * size;
                volume -= size;
                self.slugs.pop();
            } else {
                let mass = top.mass * volume / size;
                let rest = top.mass - mass;
                let enthalpy = top.enthalpy + 0.5 * slope * (size - volume);
                self.edge = top.enthalpy + slope * (0.5 * size - volume);
                out.add(mass, enthalpy);
                *top = Slug::new(rest, top.enthalpy - (enthalpy - top.enthalpy) * mass / rest);
                volume = 0.0;
            }
        }
        (out, volume)
    }

    /// Takes a volume off the bottom. Returns what came and the volume that was not there.
    pub(super) fn take_bottom(&mut self, mut volume: f64) -> (Parcel, f64) {
        let mut out = Parcel::default();
        let mut gone = 0;
        for slug in &mut self.slugs {
            if volume <= 0.0 {
                break;
            }
            let size = slug.volume();
            if size <= volume {
                out.add(slug.mass, slug.enthalpy);
                volume -= size;
                gone += 1;
            } else {
                let mass = slug.mass * volume / size;
                out.add(mass, slug.enthalpy);
                slug.mass -= mass;
                volume = 0.0;
            }
        }
        self.slugs.drain(..gone);
        self.growing = self.growing.and_then(|b| b.checked_sub(gone as u32));
        (out, volume.max(0.0))
    }

    /// Takes a volume at a height, as far as the water reaches it. Returns what came and what was not there.
    pub(super) fn take_at(&mut self, height: f64, mut volume: f64) -> (Parcel, f64) {
        let mut out = Parcel::default();
        let cut = height.max(0.0) * self.area;
        let mut base = 0.0;
        let mut i = 0;
        while let Some(slug) = self.slugs.get_mut(i) {
            let size = slug.volume();
            // The surface of a full tank lies at most a little under its top; count it as reached.
            if base + size < cut {
                base += size;
                i += 1;
                continue;
            }
            if size <= volume {
                out.add(slug.mass, slug.enthalpy);
                volume -= size;
                self.slugs.remove(i);
            } else {
                let mass = slug.mass * volume / size;
                out.add(mass, slug.enthalpy);
                slug.mass -= mass;
                return (out, 0.0);
            }
        }
        (out, volume)
    }

    /// Takes a volume at a height: off the top where that is the topmost slug, nothing where the water does
    /// not reach. Returns what came and what was not there.
    pub(super) fn take_near(&mut self, height: f64, volume: f64) -> (Parcel, f64) {
        if !self.wetted(height) {
            return (Parcel::default(), volume);
        }
        let top = self.slugs.last().map_or(0.0, Slug::volume);
        if height * self.area >= self.water_volume() - top {
            return self.take_top(volume);
        }
        self.growing = None;
        self.take_at(height, volume)
    }

    /// Puts in a parcel at a height, or on the surface if that is lower.
    ///
    /// Colder than what lies below, it stirs that part of the tank: the pool below the inlet takes it up as
    /// a stirred vessel does (exactly, for any size of parcel), and what the pool no longer has room for
    /// comes out above the inlet as a new slug.
    pub(super) fn inject(&mut self, height: f64, parcel: Parcel, layer: f64) -> Option<Plume> {
        if parcel.mass <= 0.0 {
            return None;
        }
        let enthalpy = parcel.energy / parcel.mass;
        let boundary = match self.growing {
            Some(b) if self.base_near(b as usize, height, layer) => b as usize,
            _ => {
                self.growing = None;
                self.cut(height, layer)
            }
        };
        let (mut low, mut mass, mut energy, mut volume) = (boundary, 0.0, 0.0, 0.0);
        while let Some(slug) = low.checked_sub(1).and_then(|i| self.slugs.get(i)) {
            let blend = (energy + parcel.energy) / (mass + parcel.mass);
            if slug.enthalpy < blend {
                break;
            }
            mass += slug.mass;
            energy += slug.mass * slug.enthalpy;
            volume += slug.volume();
            low -= 1;
        }
        let mut out = parcel;
        if mass > 0.0 {
            let stirred = enthalpy + (energy / mass - enthalpy) * det::exp(-parcel.mass / mass);
            let kept = volume / water::specific_volume(stirred);
            let over = mass + parcel.mass - kept;
            if over > 0.0 {
                out = Parcel { mass: over, energy: energy + parcel.energy - kept * stirred };
            } else {
                out = Parcel::default();
            }
            let (pool, heat) = (mass + parcel.mass - out.mass, energy + parcel.energy - out.energy);
            let stirred = Slug::new(0.0, heat / pool);
            for slug in self.slugs.iter_mut().skip(low).take(boundary - low) {
                *slug = stirred.of(slug.mass * pool / mass);
            }
        }
        self.emerge(boundary, out, layer);
        (mass > 0.0).then_some((low, boundary))
    }

    /// Adds what comes up at a boundary: to the slug that is still growing there until it is half a layer, then as new
    /// ones, so that how large they are does not hang on the step.
    fn emerge(&mut self, boundary: usize, mut parcel: Parcel, layer: f64) {
        let whole = 500.0 * layer;
        while parcel.mass > 0.0 {
            let growing =
                self.slugs.get_mut(boundary).filter(|slug| self.growing.is_some() && slug.mass < whole);
            let enthalpy = parcel.energy / parcel.mass;
            let room = whole - growing.as_ref().map_or(0.0, |slug| slug.mass);
            // A rest too small to be a slug of its own goes along.
            let part = if parcel.mass < 1.05 * room { parcel.mass } else { room };
            match growing {
                Some(slug) => {
                    let mass = slug.mass + part;
                    *slug = Slug::new(mass, (slug.mass * slug.enthalpy + part * enthalpy) / mass);
                }
                None => {
                    self.slugs.insert(boundary.min(self.slugs.len()), Slug::new(part, enthalpy));
                }
            }
            parcel.mass -= part;
            parcel.energy -= part * enthalpy;
            self.growing = Some(boundary as u32);
        }
    }

    /// Whether the slugs below a boundary still reach about up to a height.
    fn base_near(&self, boundary: usize, height: f64, layer: f64) -> bool {
        let base: f64 = self.slugs.iter().take(boundary).map(Slug::volume).sum();
        let all_wet = boundary < self.slugs.len() || base <= height * self.area;
        all_wet && (base - height.max(0.0) * self.area).abs() < 0.5 * layer
    }

    /// The number of slugs below each of some heights where [`Self::cut`] would find a boundary and change nothing,
    /// in one walk; nothing where it would have to make one. And the slug that reaches the lowest of them.
    pub(super) fn boundaries<const N: usize>(
        &self,
        heights: [f64; N],
        layer: f64,
    ) -> (Option<[usize; N]>, Place) {
        let cuts = heights.map(|height| height.max(0.0) * self.area);
        let slack = SLACK * layer;
        let mut found = [usize::MAX; N];
        let mut base = 0.0;
        let lowest = cuts.iter().fold(f64::INFINITY, |lowest, cut| lowest.min(*cut));
        let mut start = Place::default();
        for slug in &self.slugs {
            let top = base + slug.volume();
            if top >= lowest {
                break;
            }
            base = top;
            start = Place { slug: start.slug + 1, base };
        }
        for (i, slug) in self.slugs.iter().enumerate().skip(start.slug) {
            let top = base + slug.volume();
            let mut missing = false;
            for (found, cut) in found.iter_mut().zip(&cuts).filter(|(found, _)| **found == usize::MAX) {
                let (low, high) = (cut - base, top - cut);
                if high < 0.0 {
                    missing = true;
                } else if low <= slack {
                    *found = i;
                } else if high <= slack {
                    *found = i + 1;
                } else {
                    return (None, start);
                }
            }
            if !missing {
                return (Some(found), start);
            }
            base = top;
        }
        (Some(found.map(|found| found.min(self.slugs.len()))), start)
    }

    /// Makes a boundary at a height; returns the number of slugs below it. One close by is moved there, so that no
    /// sliver is left between the two.
    pub(super) fn cut(&mut self, height: f64, layer: f64) -> usize {
        let cut = height.max(0.0) * self.area;
        let (slack, near) = (SLACK * layer, NEAR * layer);
        let mut base = 0.0;
        for i in 0..self.slugs.len() {
            let Some(slug) = self.slugs.get(i).copied() else { break };
            let size = slug.volume();
            let (low, high) = (cut - base, base + size - cut);
            base += size;
            if high < 0.0 {
                continue;
            }
            if low <= slack {
                return i;
            }
            if high <= slack {
                return i + 1;
            }
            let share = low / size;
            if low.min(high) >= near || (low <= high && i == 0) || (low > high && i + 1 == self.slugs.len()) {
                let under = slug.of(slug.mass * share);
                self.put(i, under);
                self.slugs.insert(i + 1, slug.of(slug.mass - under.mass));
                return i + 1;
            }
            // Linear inside, as in `regrid`.
            let slope = self.limited_slope(i);
            let under = Slug::new(slug.mass * share, slug.enthalpy - 0.5 * slope * (1.0 - share));
            let over = Slug::new(slug.mass - under.mass, slug.enthalpy + 0.5 * slope * share);
            let (stays, goes, to, boundary) =
                if low <= high { (over, under, i - 1, i) } else { (under, over, i + 1, i + 1) };
            self.put(i, stays);
            if let Some(slug) = self.slugs.get_mut(to) {
                let mass = slug.mass + goes.mass;
                *slug = Slug::new(mass, (slug.mass * slug.enthalpy + goes.mass * goes.enthalpy) / mass);
            }
            return boundary;
        }
        self.slugs.len()
    }

    fn put(&mut self, i: usize, slug: Slug) {
        if let Some(slot) = self.slugs.get_mut(i) {
            *slot = slug;
        }
    }
}
