//! Conduction between slugs, the eddy at the inlet, and loss to the surroundings, in one implicit step.

use super::flow::Plume;
use super::{Inputs, State};

/// Work arrays, kept between steps so that nothing is allocated.
#[derive(Clone, Default, Debug)]
pub(super) struct Scratch {
    /// Slugs over a source: stirred, so that their lower edge is as warm as they are.
    pub(super) stirred: Vec<usize>,
    /// Slugs that what comes in keeps stirred: nothing resists the heat between them or on their side of the eddy.
    pub(super) plume: Option<Plume>,
    now: Vec<f64>,
    mid: Vec<f64>,
    new: Vec<f64>,
    heat: Vec<f64>,
    link: Vec<f64>,
    leak: Vec<f64>,
    upper: Vec<f64>,
    pivot: Vec<f64>,
}

/// TR-BDF2 with both stages on one matrix: γ = 2 − √2 (Bank et al. 1985; Hosea and Shampine 1996).
const GAMMA: f64 = 2.0 - core::f64::consts::SQRT_2;
const STAGE: f64 = 0.5 * GAMMA;
const WEIGHT: f64 = 0.25 * core::f64::consts::SQRT_2;

/// Below this haste the explicit rule is as good as the implicit ones.
const EXPLICIT: f64 = 0.2;

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
        for ((((slug, &t), t_above), &link), &leak) in
            self.slugs.iter_mut().zip(&w.now).zip(next).zip(&w.link).zip(&w.leak)
        {
            let leak = leak * (t - inputs.ambient);
            // The topmost link is zero.
            let above = link * (t - t_above);
            lost += leak * dt;
            slug.set(slug.enthalpy + (below - above - leak) * dt / slug.mass);
            below = above;
        }
        lost
    }

    /// Temperatures, heat capacities, conductances.
    fn prepare(&self, w: &mut Scratch, inputs: &Inputs, height: f64, flow: f64) {
        let n = self.slugs.len();
        for list in [&mut w.now, &mut w.heat, &mut w.link, &mut w.leak] {
            list.resize(n, 0.0);
        }
        let eddy = 4.17e6 * inputs.mixing.strength * flow;
        let fade = -1.0 / inputs.mixing.decay;
        let (per_metre, per_area) = (inputs.loss / height, 1.0 / self.area);
        let (mut base, mut last) = (0.0, 0.0);
        // A link belongs to the slug below it: it is written one slug late.
        let mut link = w.link.iter_mut();
        let lists = w.now.iter_mut().zip(&mut w.heat).zip(&mut w.leak);
        for (i, (slug, ((now, heat), leak))) in self.slugs.iter().zip(lists).enumerate() {
            let celsius = slug.celsius();
            let thick = slug.volume() * per_area;
            *now = celsius;
            *heat = slug.mass * rough_heat_capacity(celsius);
            *leak = per_metre * thick;
            if i > 0 {
                let mut k = inputs.conductivity;
                let far = f64::abs(base - inputs.inlet_height) * fade;
                // Past ten decay lengths the eddy is a ten-thousandth of itself: not worth an exponential.
                if eddy > 0.0 && far > -10.0 {
                    k += eddy * quantity::det::exp(far);
                }
                let path = match w.plume {
                    Some((_, first)) if i == first => thick,
                    Some((lowest, first)) if lowest < i && i < first => STIRRED * (thick + last),
                    _ if w.stirred.contains(&i) => last,
                    _ => thick + last,
                };
                if let Some(link) = link.next() {
                    *link = k * self.area / (0.5 * path);
                }
            }
            base += thick;
            last = thick;
        }
        if let Some(link) = link.next() {
            *link = 0.0;
        }
    }
}

/// Heat capacity within 0.3 %, J/(kg·K). Only steers the implicit prediction; the books are kept in enthalpy.
fn rough_heat_capacity(celsius: f64) -> f64 {
    4_207.54 + celsius * (-1.235_2 + celsius * 0.013_323)
}

/// Most of the heat it would take to even out that any slug exchanges in a step.
fn haste(w: &Scratch, dt: f64) -> f64 {
    let mut below = 0.0;
    let rates = w.link.iter().zip(&w.leak).zip(&w.heat).map(|((&above, &leak), &heat)| {
        let rate = (below + above + leak) / heat;
        below = above;
        rate
    });
    dt * rates.fold(0.0, f64::max)
}

/// Explicit midpoint rule; `now` becomes the temperatures of the middle.
fn midpoint(w: &mut Scratch, ambient: f64, dt: f64) {
    let half = 0.5 * dt;
    let mut below = 0.0;
    let above = w.now.iter().skip(1).copied().chain(core::iter::once(0.0));
    w.new.clear();
    w.new.extend(w.now.iter().zip(above).zip(&w.heat).zip(&w.link).zip(&w.leak).map(
        |((((&t, t_above), &heat), &link), &leak)| {
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
    let known = w.now.iter().zip(next).zip(&w.heat).zip(&w.link).zip(&w.leak);
    for (((((&t, t_above), &heat), &link), &leak), (upper, new)) in
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
    let known = w.now.iter().zip(next).zip(&w.heat).zip(&w.link).zip(&w.leak);
    let wanted = w.upper.iter_mut().zip(&mut w.pivot).zip(&mut w.mid);
    for (((((&t, t_above), &heat), &link), &leak), ((upper, slot), mid)) in known.zip(wanted) {
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
    let known = w.now.iter().zip(&w.mid).zip(&w.heat).zip(&w.link).zip(&w.leak);
    for (((((&t, &mid), &heat), &link), &leak), (&pivot, new)) in known.zip(w.pivot.iter().zip(&mut w.new)) {
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
