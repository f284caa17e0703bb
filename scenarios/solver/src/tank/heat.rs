//! Heat of the elements into the water they lie in.

use super::conduction::Stirred;
use super::flow::Place;
use super::{Inputs, Report, Slug, State, Tank};

/// A source weaker than this stirs nothing, W: no more than what the tank loses anyway.
pub(super) const STIRS: f64 = 50.0;
/// Water this much over a source's upper edge covers it whatever the rounding.
const SUNK: f64 = 1.01;
/// Boundaries at the lower edge of a source, in layers below it. Both sides are fine: what is stirred while it is
/// heated meets the cold at that edge afterwards.
const EDGE: [f64; 3] = [0.0, 0.8, -0.8];

impl Tank {
    /// Heat of the sources into the slugs they lie in.
    /// Notes the slugs that the rising water stirs down to their lower edge.
    pub(super) fn heat(
        &self,
        state: &mut State,
        inputs: &Inputs,
        dt: f64,
        stirred: &mut Vec<Stirred>,
        report: &mut Report,
    ) {
        // How far the water rises past the sources in the whole step.
        let rises = inputs.outlet_height.is_none() && inputs.inlet_height < 0.5 * self.height;
        let up = if state.moving && rises { 2.0 * dt * inputs.draw } else { 0.0 };
        for source in &inputs.sources {
            let heat = source.watts * dt;
            if heat <= 0.0 {
                continue;
            }
            // A point is given the thickness of a coil.
            let spread = source.spread.max(0.01);
            let low = source.centre - 0.5 * spread;
            let stirs = source.watts > STIRS;
            let sharp = stirs && !state.moving;
            let edges = EDGE.map(|below| low - below * self.height / f64::from(self.layers));
            let (known, start) =
                if sharp { state.boundaries(edges, self.layer()) } else { (None, Place::default()) };
            // Where the water reaches well over it that will do: by how much takes a walk to the top.
            let sunk = up <= 0.0 && state.reaches(start, SUNK * (low + spread) * state.area);
            let level = if sunk { f64::INFINITY } else { state.level() };
            let wet = heat * State::share_below(level, source.centre, spread);
            report.dry += heat - wet;
            // The water under a source stays cold: at rest that edge is kept sharp whatever the layers are, and
            // fine enough for what is conducted through it.
            let (mut lowest, mut start) = (0, start);
            if let (Some([at, ..]), true) = (known, sharp) {
                lowest = at;
            } else if sharp {
                for edge in edges {
                    state.cut(edge, self.layer());
                }
                lowest = state.cut(low, self.layer());
                start = Place::default();
            }
            let area = state.area;
            // The covered stretch; below a full tank's last thousandth all of it.
            let end = (low + spread).min(level);
            let length = end - low;
            if wet <= 0.0 || length <= 0.0 {
                report.dry += wet;
                continue;
            }
            // Counted in volume: no division per slug.
            let (from, to, share) = (low * area, end * area, wet / (length * area));
            let passing = Passing::of((from, to), up, level * area);
            let (reach_low, reach_high) = passing.reach();
            let mut base = start.base;
            let mut given = 0.0;
            let mut slugs = (usize::MAX, 0);
            for (i, slug) in state.slugs.iter_mut().enumerate().skip(start.slug) {
                if base >= reach_high {
                    break;
                }
                let above = base + slug.volume();
                if above > reach_low {
                    let over = passing.between(base, above);
                    slugs = (slugs.0.min(i), i + 1);
                    let part = share * over;
                    slug.enthalpy += part / slug.mass;
                    given += part;
                }
                base = above;
            }
            Slug::refresh(state.slugs.get_mut(slugs.0.min(slugs.1)..slugs.1).unwrap_or_default());
            if stirs {
                stirred.push(Stirred { slugs: (slugs.0.max(lowest), slugs.1), cut: !state.moving });
            }
            report.heated += given;
            report.dry += wet - given;
        }
    }
}

/// A stretch that water rises past during a step: what lies in it only for a part of the step, a little below and above
/// it, is given its part. In volumes from the bottom.
struct Passing {
    from: f64,
    to: f64,
    /// Half of what rises past.
    half: f64,
}

impl Passing {
    fn of((from, to): (f64, f64), up: f64, surface: f64) -> Self {
        Self { from, to, half: (0.5 * up).min(from).min(surface - to).max(0.0) }
    }

    fn reach(&self) -> (f64, f64) {
        (self.from - self.half, self.to + self.half)
    }

    /// Volume of the stretch that lies between two heights, in the mean over the step.
    fn between(&self, low: f64, high: f64) -> f64 {
        if self.half <= 0.0 {
            return (high.min(self.to) - low.max(self.from)).max(0.0);
        }
        self.below(high) - self.below(low)
    }

    fn below(&self, height: f64) -> f64 {
        // A ramp that sets in over twice the half.
        let ramp = |x: f64| {
            let x = (x + self.half).clamp(0.0, 2.0 * self.half);
            0.25 * x * x / self.half
        };
        let over = |edge: f64| ramp(height - edge) + (height - edge - self.half).max(0.0);
        over(self.from) - over(self.to)
    }
}

impl State {
    /// Whether the water from a slug upwards reaches a height, given as the volume below it.
    fn reaches(&self, from: Place, volume: f64) -> bool {
        let mut top = from.base;
        self.slugs.iter().skip(from.slug).any(|slug| {
            top += slug.volume();
            top >= volume
        })
    }
}
