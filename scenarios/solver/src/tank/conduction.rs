//! Conduction between slugs, the eddy at the inlet, and loss to the surroundings, in one implicit step.

use super::flow::Plume;
use super::rough::{STIRRED_HEAT, heat_capacity};
use super::{Inputs, Slug, State};

/// Work arrays, kept between steps so that nothing is allocated.
#[derive(Clone, Debug)]
pub(super) struct Scratch {
    /// Slugs that sources lie in: what rises from them stirs the pool above.
    pub(super) stirred: Vec<Stirred>,
    /// Slugs that what comes in keeps stirred: nothing resists the heat between them or on their side of the eddy.
    pub(super) plume: Option<Plume>,
    nodes: Vec<Node>,
}

/// A slug, or a pool of several.
#[derive(Clone, Copy, Debug)]
struct Node {
    /// Heat capacity, J/K.
    heat: f64,
    /// Conductance upwards and to the room, W/K.
    link: f64,
    leak: f64,
    /// Temperature, °C: at the start, then the mean over the step.
    now: f64,
    /// What the elimination leaves: the inverse of the pivot, the share of the neighbour that is eliminated later, the
    /// value without it.
    pivot: f64,
    ratio: f64,
    value: f64,
    /// Slugs.
    count: u32,
}

impl Scratch {
    /// Room for so many nodes: growing one by one costs more than a step.
    pub(super) fn with_room(nodes: usize) -> Self {
        Self { stirred: Vec::with_capacity(2), plume: None, nodes: Vec::with_capacity(nodes) }
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

/// Up to this share of what evens out the explicit rule is as good as the implicit ones.
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
        let [explicit, one] = no_haste(&w.nodes, dt, [EXPLICIT, 1.0]);
        if explicit {
            midpoint(&mut w.nodes, inputs.ambient, dt);
        } else if one {
            one_stage(&mut w.nodes, inputs.ambient, dt);
        } else {
            two_stages(&mut w.nodes, inputs.ambient, dt);
        }
        // From here `now` holds the mean over the step: exact books whatever the solution's error.
        let (mut lost, mut below) = (0.0, 0.0);
        let next = w.nodes.iter().skip(1).map(|node| node.now).chain(core::iter::once(0.0));
        let mut slugs = self.slugs.as_mut_slice();
        // Slugs of one each since the last pool: they get their temperatures together.
        let mut single = 0;
        for (&Node { link, leak, count, now: t, .. }, t_above) in w.nodes.iter().zip(next) {
            let leak = leak * (t - inputs.ambient);
            // The topmost link is zero.
            let above = link * (t - t_above);
            lost += leak * dt;
            let gain = (below - above - leak) * dt;
            below = above;
            if count == 1 {
                let Some(slug) = slugs.get_mut(single) else { break };
                slug.enthalpy += gain / slug.mass;
                single += 1;
                continue;
            }
            let Some((singles, rest)) = core::mem::take(&mut slugs).split_at_mut_checked(single) else {
                break;
            };
            let Some((node, rest)) = rest.split_at_mut_checked(count as usize) else { break };
            Slug::refresh(singles);
            let mass: f64 = node.iter().map(|slug| slug.mass).sum();
            let enthalpy = node.first().map_or(0.0, |first| first.enthalpy);
            let pool = Slug::new(mass, enthalpy + gain / mass);
            node.iter_mut().for_each(|slug| *slug = pool.of(slug.mass));
            (slugs, single) = (rest, 0);
        }
        Slug::refresh(slugs);
        lost
    }

    /// Temperatures, heat capacities, conductances of the nodes: slugs, and pools that are stirred and so one.
    fn prepare(&self, w: &mut Scratch, inputs: &Inputs, height: f64, flow: f64) {
        w.nodes.clear();
        w.nodes.reserve(self.slugs.len());
        let eddy = STIRRED_HEAT.get() * inputs.mixing.strength * flow;
        let mut eddies = Fade::new(inputs.inlet_height, inputs.mixing.decay);
        let (per_metre, per_area) = (inputs.loss / height, 1.0 / self.area);
        // Where the last node ends, and half its thickness: what resists the heat on its side of the next edge.
        let (mut base, mut last) = (0.0, 0.0);
        let mut slugs = self.slugs.as_slice();
        let mut i = 0;
        let cut = |i: usize| move |s: &&Stirred| s.cut && s.slugs.0 <= i && i < s.slugs.1;
        let sources = w.stirred.iter().filter(|s| s.cut).fold(0, |end, s| end.max(s.slugs.1));
        while let [slug, above @ ..] = slugs {
            let source = if i < sources { w.stirred.iter().find(cut(i)) } else { None };
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
            w.nodes.push(Node {
                heat: mass * heat_capacity(celsius),
                // Nothing above the topmost.
                link: 0.0,
                leak: per_metre * thick,
                now: celsius,
                pivot: 0.0,
                ratio: 0.0,
                value: 0.0,
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

/// Whether no node exchanges more in a step than some shares of the heat it would take to even out.
fn no_haste(nodes: &[Node], dt: f64, shares: [f64; 2]) -> [bool; 2] {
    let mut below = 0.0;
    let mut slow = [true; 2];
    for &Node { heat, link: above, leak, .. } in nodes {
        let exchanged = dt * (below + above + leak);
        below = above;
        for (slow, share) in slow.iter_mut().zip(shares) {
            *slow &= exchanged <= share * heat;
        }
    }
    slow
}

/// Explicit midpoint rule; `now` becomes the temperatures of the middle.
fn midpoint(nodes: &mut [Node], ambient: f64, dt: f64) {
    let half = 0.5 * dt;
    let mut gain = 0.0;
    let mut last: Option<&mut Node> = None;
    for node in nodes {
        gain -= node.leak * (node.now - ambient);
        if let Some(below) = last {
            let up = below.link * (below.now - node.now);
            below.now += half * (below.value - up) / below.heat;
            gain += up;
        }
        (node.value, gain) = (gain, 0.0);
        last = Some(node);
    }
    if let Some(top) = last {
        top.now += half * top.value / top.heat;
    }
}

/// The system of a stage of `s` seconds, eliminated from both ends at once so that neither waits for the other. A node's
/// `value` is what is known of it, afterwards the solution.
struct Elimination {
    s: f64,
}

/// An end of the stack, and what has been eliminated there: the conductance inwards, the last node's share of its inner
/// neighbour, its value without it.
#[derive(Clone, Copy, Default)]
struct End {
    link: f64,
    ratio: f64,
    value: f64,
}

impl Elimination {
    /// Takes the next node of an end, `inwards` being its conductance to the one after it.
    fn factor(&self, end: &mut End, node: &mut Node, inwards: f64) {
        let inwards = self.s * inwards;
        node.pivot = 1.0 / (node.heat + inwards + self.s * node.leak + end.link * (1.0 - end.ratio));
        node.value = (node.value + end.link * end.value) * node.pivot;
        node.ratio = inwards * node.pivot;
        *end = End { link: inwards, ratio: node.ratio, value: node.value };
    }

    /// The same with the pivots that are there.
    fn again(&self, end: &mut End, node: &mut Node, inwards: f64) {
        node.value = (node.value + end.link * end.value) * node.pivot;
        *end = End { link: self.s * inwards, ratio: 0.0, value: node.value };
    }

    /// Solves for what stands in `value`, factoring first or with the factors that are there.
    fn solve(&self, nodes: &mut [Node], anew: bool) {
        let (low, high) = nodes.split_at_mut(nodes.len() / 2);
        let Some((middle, high)) = high.split_first_mut() else { return };
        let (mut under, mut over) = (End::default(), End::default());
        let step = |end: &mut End, node: &mut Node, inwards: f64| {
            if anew { self.factor(end, node, inwards) } else { self.again(end, node, inwards) }
        };
        // Of an even number the lower half has one more.
        let mut first = low.iter_mut();
        let odd = if first.len() > high.len() { first.next() } else { None };
        if let Some(node) = odd {
            let inwards = node.link;
            step(&mut under, node, inwards);
        }
        let mut last = high.iter_mut().rev().peekable();
        for node in first {
            let inwards = node.link;
            step(&mut under, node, inwards);
            if let Some(node) = last.next() {
                let inwards = last.peek().map_or(middle.link, |below| below.link);
                step(&mut over, node, inwards);
            }
        }
        if anew {
            let of = |end: End| end.link * (1.0 - end.ratio);
            middle.pivot = 1.0 / (middle.heat + self.s * middle.leak + (of(under) + of(over)));
        }
        let come = under.link * under.value + over.link * over.value;
        middle.value = (middle.value + come) * middle.pivot;
        let (mut below, mut above) = (middle.value, middle.value);
        let mut downwards = low.iter_mut().rev();
        for node in high {
            above = node.value + node.ratio * above;
            node.value = above;
            if let Some(node) = downwards.next() {
                below = node.value + node.ratio * below;
                node.value = below;
            }
        }
        for node in downwards {
            below = node.value + node.ratio * below;
            node.value = below;
        }
    }
}

/// What the trapezoidal rule knows over twice `s` seconds, into `value`.
fn trapezoid(nodes: &mut [Node], ambient: f64, s: f64) {
    let mut from = 0.0;
    let mut last: Option<&mut Node> = None;
    for node in nodes {
        if let Some(below) = last {
            let to = s * below.link * (below.now - node.now);
            below.value -= to;
            from = to;
        }
        node.value = node.heat * node.now + from + s * node.leak * (2.0 * ambient - node.now);
        last = Some(node);
    }
}

/// Trapezoidal rule; `now` becomes the mean of the two ends.
fn one_stage(nodes: &mut [Node], ambient: f64, dt: f64) {
    let s = 0.5 * dt;
    trapezoid(nodes, ambient, s);
    Elimination { s }.solve(nodes, true);
    for node in nodes {
        node.now = 0.5 * (node.now + node.value);
    }
}

/// TR-BDF2; `now` becomes the mean that its weights give.
fn two_stages(nodes: &mut [Node], ambient: f64, dt: f64) {
    let s = STAGE * dt;
    // Trapezoidal stage to γ·dt.
    trapezoid(nodes, ambient, s);
    Elimination { s }.solve(nodes, true);
    // Backward differentiation to dt.
    let past = (1.0 - GAMMA) * (1.0 - GAMMA) / (GAMMA * (2.0 - GAMMA));
    let recent = 1.0 / (GAMMA * (2.0 - GAMMA));
    for node in nodes.iter_mut() {
        let (now, mid) = (node.now, node.value);
        node.value = node.heat * (recent * mid - past * now) + s * node.leak * ambient;
        node.now = WEIGHT * (now + mid);
    }
    Elimination { s }.solve(nodes, false);
    for node in nodes {
        node.now += STAGE * node.value;
    }
}
