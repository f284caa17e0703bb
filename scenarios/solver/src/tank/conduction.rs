//! Conduction between slugs, the eddy at the inlet, and loss to the surroundings, in one implicit step.

use super::flow::Plume;
use super::{Inputs, Slug, State};

/// Work arrays, kept between steps so that nothing is allocated.
#[derive(Clone, Debug)]
pub(super) struct Scratch {
    /// Slugs that sources lie in: what rises from them stirs the pool above.
    pub(super) stirred: Vec<Stirred>,
    /// Slugs that what comes in keeps stirred: nothing resists the heat between them or on their side of the eddy.
    pub(super) plume: Option<Plume>,
    nodes: Vec<Node>,
    now: Vec<f64>,
    mid: Vec<f64>,
    new: Vec<f64>,
    upper: Vec<f64>,
    pivot: Vec<f64>,
}

/// A slug, or a pool of several: heat capacity in J/K, conductance upwards and to the room in W/K.
#[derive(Clone, Copy, Debug)]
struct Node {
    heat: f64,
    link: f64,
    leak: f64,
    /// Slugs.
    count: u32,
}

impl Scratch {
    /// Room for so many nodes: growing one by one costs more than a step.
    pub(super) fn with_room(nodes: usize) -> Self {
        let list = || Vec::with_capacity(nodes);
        Self {
            stirred: Vec::with_capacity(2),
            plume: None,
            nodes: Vec::with_capacity(nodes),
            now: list(),
            mid: list(),
            new: list(),
            upper: list(),
            pivot: list(),
        }
    }
}

/// A source's slugs.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stirred {
    /// The lowest, and the first one above them all.
    pub(super) slugs: (usize, usize),
    /// The lowest begins where the source does: down to its lower edge it is as warm as it is.
    pub(super) cut: bool,
}

/// TR-BDF2 with both stages on one matrix: γ = 2 − √2 (Bank et al. 1985; Hosea and Shampine 1996).
const GAMMA: f64 = 2.0 - core::f64::consts::SQRT_2;
const STAGE: f64 = 0.5 * GAMMA;
const WEIGHT: f64 = 0.25 * core::f64::consts::SQRT_2;

/// Below this haste the explicit rule is as good as the implicit ones.
const EXPLICIT: f64 = 0.2;

/// Shortest way of heat between two nodes, m: between pools that touch.
const LEAST_PATH: f64 = 1e-4;

/// Share of its resistance that is left in stirred water.
const STIRRED: f64 = 0.01;

impl State {
    /// Advances conduction and loss by `dt`; `flow` in m³/s drives the eddy. Returns the heat lost, J.
    pub(super) fn conduct(
        &mut self,
        w: &mut Scratch,
        inputs: &Inputs,
        height: f64,
        flow: f64,
        dt: f64,
    ) -> f64 {
        let n = self.slugs.len();
        if n == 0 {
            return 0.0;
        }
        self.prepare(w, inputs, height, flow);
        // Far from evening out nothing has to be solved; below it the trapezoidal rule overshoots nowhere.
        let haste = haste(w, dt);
        if haste < EXPLICIT {
            midpoint(w, inputs.ambient, dt);
        } else if haste <= 1.0 {
            one_stage(w, inputs.ambient, dt);
        } else {
            two_stages(w, inputs.ambient, dt);
        }
        // From here `now` holds the mean over the step: exact books whatever the solution's error.
        let (mut lost, mut below) = (0.0, 0.0);
        let next = w.now.iter().skip(1).copied().chain(core::iter::once(0.0));
        let mut slugs = self.slugs.as_mut_slice();
        for ((&Node { link, leak, count, .. }, &t), t_above) in w.nodes.iter().zip(&w.now).zip(next) {
            let leak = leak * (t - inputs.ambient);
            // The topmost link is zero.
            let above = link * (t - t_above);
            lost += leak * dt;
            let gain = (below - above - leak) * dt;
            below = above;
            let Some((node, rest)) = slugs.split_at_mut_checked(count as usize) else { break };
            match node {
                [slug] => slug.enthalpy += gain / slug.mass,
                [first, ..] => {
                    let enthalpy = first.enthalpy;
                    let mass: f64 = node.iter().map(|slug| slug.mass).sum();
                    let pool = enthalpy + gain / mass;
                    node.iter_mut().for_each(|slug| slug.enthalpy = pool);
                }
                [] => {}
            }
            slugs = rest;
        }
        Slug::refresh(&mut self.slugs);
        lost
    }

    /// Temperatures, heat capacities, conductances of the nodes: slugs, and pools that are stirred and so one.
    fn prepare(&self, w: &mut Scratch, inputs: &Inputs, height: f64, flow: f64) {
        w.now.clear();
        w.now.reserve(self.slugs.len());
        w.nodes.clear();
        w.nodes.reserve(self.slugs.len());
        let eddy = 4.17e6 * inputs.mixing.strength * flow;
        let mut eddies = Fade::new(inputs.inlet_height, inputs.mixing.decay);
        let (per_metre, per_area) = (inputs.loss / height, 1.0 / self.area);
        // Where the last node ends, and half its thickness: what resists the heat on its side of the next edge.
        let (mut base, mut last) = (0.0, 0.0);
        let mut slugs = self.slugs.as_slice();
        let mut i = 0;
        while let [slug, above @ ..] = slugs {
            let source = w.stirred.iter().find(|s| s.cut && s.slugs.0 <= i && i < s.slugs.1);
            let mut count = 1;
            if source.is_some() {
                let alike = above.iter().take_while(|other| other.enthalpy == slug.enthalpy).count();
                // What is warmer above warms the topmost slug of a pool that rises from a source: it stays there.
                let capped = alike < above.len();
                count += if capped { alike.saturating_sub(1) } else { alike };
            }
            let (node, rest) = slugs.split_at(count.min(slugs.len()));
            let (celsius, mut thick, mut mass) = (slug.celsius(), 0.0, 0.0);
            for slug in node {
                thick += slug.volume();
                mass += slug.mass;
            }
            thick *= per_area;
            let pool = source.is_some_and(|s| count > 1 || s.slugs.0 == i);
            let half = if pool { 0.0 } else { 0.5 * slug.volume() * per_area };
            if i > 0 {
                let mut k = inputs.conductivity;
                if eddy > 0.0 {
                    k += eddy * eddies.at(base);
                }
                let path = match w.plume {
                    Some((_, first)) if i == first => 0.5 * thick,
                    Some((lowest, first)) if lowest < i && i < first => STIRRED * (half + last),
                    _ => half + last,
                };
                // Two pools that touch are one as soon as they are equally warm.
                if let Some(below) = w.nodes.last_mut() {
                    below.link = k * self.area / path.max(LEAST_PATH);
                }
            }
            w.now.push(celsius);
            w.nodes.push(Node {
                heat: mass * rough_heat_capacity(celsius),
                // Nothing above the topmost.
                link: 0.0,
                leak: per_metre * thick,
                count: count as u32,
            });
            base += thick;
            last = node.last().map_or(half, |top| 0.5 * top.volume() * per_area);
            slugs = rest;
            i += count;
        }
    }
}

/// The eddy's share of its strength at heights asked for from the bottom up: 1 at the inlet, 1/e a decay length away.
struct Fade {
    inlet: f64,
    per_decay: f64,
    /// Height and share of the last answer.
    last: Option<(f64, f64)>,
}

/// The largest exponent of the short series.
const SHORT: f64 = 0.5;

impl Fade {
    fn new(inlet: f64, decay: f64) -> Self {
        Self { inlet, per_decay: 1.0 / decay, last: None }
    }

    fn at(&mut self, height: f64) -> f64 {
        let share = match self.last {
            // From one edge of a slug to the next it is a short way.
            Some((from, share)) if (from < self.inlet) == (height < self.inlet) => {
                let way = (height - from) * self.per_decay;
                // Past ten decay lengths it is a ten-thousandth of itself.
                if share < 5e-5 && height > self.inlet {
                    return 0.0;
                }
                share * exp_near_zero(if height < self.inlet { way } else { -way })
            }
            _ => quantity::det::exp(-f64::abs(height - self.inlet) * self.per_decay),
        };
        self.last = Some((height, share));
        share
    }
}

/// Exponential, within 2e-6 by its series where that is short.
fn exp_near_zero(x: f64) -> f64 {
    if x.abs() > SHORT {
        return quantity::det::exp(x);
    }
    let (one, half, third) = (1.0 + x, x * x * 0.5, x * (1.0 / 3.0));
    one + half * (1.0 + third * (1.0 + x * 0.25 * (1.0 + x * 0.2 * (1.0 + x * (1.0 / 6.0)))))
}

/// Heat capacity within 0.3 %, J/(kg·K). Only steers the implicit prediction; the books are kept in enthalpy.
fn rough_heat_capacity(celsius: f64) -> f64 {
    4_207.54 + celsius * (-1.235_2 + celsius * 0.013_323)
}

/// Most of the heat it would take to even out that any slug exchanges in a step.
fn haste(w: &Scratch, dt: f64) -> f64 {
    let (mut below, mut most) = (0.0, 0.0);
    for &Node { heat, link: above, leak, .. } in &w.nodes {
        let rate = (below + above + leak) / heat;
        below = above;
        if rate > most {
            most = rate;
        }
    }
    dt * most
}

/// Explicit midpoint rule; `now` becomes the temperatures of the middle.
fn midpoint(w: &mut Scratch, ambient: f64, dt: f64) {
    let half = 0.5 * dt;
    let mut below = 0.0;
    let above = w.now.iter().skip(1).copied().chain(core::iter::once(0.0));
    w.new.clear();
    w.new.extend(w.now.iter().zip(above).zip(&w.nodes).map(
        |((&t, t_above), &Node { heat, link, leak, .. })| {
            let up = link * (t - t_above);
            let gain = below - up - leak * (t - ambient);
            below = up;
            t + half * gain / heat
        },
    ));
    core::mem::swap(&mut w.now, &mut w.new);
}

/// Trapezoidal rule; `now` becomes the mean of the two ends.
fn one_stage(w: &mut Scratch, ambient: f64, dt: f64) {
    let s = 0.5 * dt;
    let n = w.now.len();
    w.upper.resize(n, 0.0);
    w.new.resize(n, 0.0);
    // Factors and goes forward in one pass. `from` is the heat from the slug below at the start.
    let (mut below, mut ratio, mut carried, mut from) = (0.0, 0.0, 0.0, 0.0);
    let next = w.now.iter().skip(1).copied().chain(core::iter::once(0.0));
    let known = w.now.iter().zip(next).zip(&w.nodes);
    for (((&t, t_above), &Node { heat, link, leak, .. }), (upper, new)) in
        known.zip(w.upper.iter_mut().zip(&mut w.new))
    {
        let above = s * link;
        let to = above * (t - t_above);
        let leak = s * leak;
        let right = heat * t + from - to + leak * (2.0 * ambient - t);
        let pivot = 1.0 / (heat + below + above + leak - below * ratio);
        carried = (right + below * carried) * pivot;
        ratio = above * pivot;
        *upper = ratio;
        *new = carried;
        below = above;
        from = to;
    }
    let mut higher = 0.0;
    for ((now, &new), &upper) in w.now.iter_mut().zip(&w.new).zip(&w.upper).rev() {
        higher = new + upper * higher;
        *now = 0.5 * (*now + higher);
    }
}

/// TR-BDF2; `now` becomes the mean that its weights give.
fn two_stages(w: &mut Scratch, ambient: f64, dt: f64) {
    let s = STAGE * dt;
    let n = w.now.len();
    for list in [&mut w.upper, &mut w.pivot, &mut w.mid, &mut w.new] {
        list.resize(n, 0.0);
    }
    // Trapezoidal stage to γ·dt: factors and goes forward in one pass.
    let (mut below, mut ratio, mut carried, mut from) = (0.0, 0.0, 0.0, 0.0);
    let next = w.now.iter().skip(1).copied().chain(core::iter::once(0.0));
    let known = w.now.iter().zip(next).zip(&w.nodes);
    let wanted = w.upper.iter_mut().zip(&mut w.pivot).zip(&mut w.mid);
    for (((&t, t_above), &Node { heat, link, leak, .. }), ((upper, slot), mid)) in known.zip(wanted) {
        let (above, leak) = (s * link, s * leak);
        let to = above * (t - t_above);
        let right = heat * t + from - to + leak * (2.0 * ambient - t);
        let pivot = 1.0 / (heat + above + leak + below * (1.0 - ratio));
        carried = (right + below * carried) * pivot;
        ratio = above * pivot;
        (*upper, *slot, *mid) = (ratio, pivot, carried);
        (below, from) = (above, to);
    }
    let mut higher = 0.0;
    for (mid, &upper) in w.mid.iter_mut().zip(&w.upper).rev() {
        higher = *mid + upper * higher;
        *mid = higher;
    }
    // Backward differentiation to dt.
    let past = (1.0 - GAMMA) * (1.0 - GAMMA) / (GAMMA * (2.0 - GAMMA));
    let recent = 1.0 / (GAMMA * (2.0 - GAMMA));
    let (mut below, mut carried) = (0.0, 0.0);
    let known = w.now.iter().zip(&w.mid).zip(&w.nodes);
    for (((&t, &mid), &Node { heat, link, leak, .. }), (&pivot, new)) in
        known.zip(w.pivot.iter().zip(&mut w.new))
    {
        let right = heat * (recent * mid - past * t) + s * leak * ambient;
        carried = (right + below * carried) * pivot;
        below = s * link;
        *new = carried;
    }
    let mut higher = 0.0;
    let ends = w.now.iter_mut().zip(&w.mid).zip(&w.new).zip(&w.upper);
    for (((now, &mid), &new), &upper) in ends.rev() {
        higher = new + upper * higher;
        *now = WEIGHT * (*now + mid) + STAGE * higher;
    }
}
