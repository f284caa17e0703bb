//! Flow against pressure difference. Every law rises with the upstream and falls with the downstream pressure.

use quantity::{Constant, Tag};

quantity::constants! {
    /// Opening pressure of a standard relief valve: 150 psi.
    const OPENS: Constant = Constant::new("relief valve opens", 1.034_214e6, "Pa", Tag::Published("ANSI Z21.22: 150 psi"));
    /// It begins to weep at this share of it.
    const SIMMERS: Constant = Constant::new("relief valve weeps from, over its opening", 0.9, "1", Tag::Model("makers print no curve"));
    /// Share of its full flow that it weeps just below.
    const WEEPS: Constant = Constant::new("weeping, over the full flow", 2e-5, "1", Tag::Model("drops, no stream"));
    /// Within this share between closing and opening it has closed.
    const CLOSED: Constant = Constant::new("share of the way to opening that counts as closed", 0.02, "1", Tag::Model("a step's grain"));
}

/// A relief valve: pops at one pressure, then opens in proportion, closes at a lower one; or by temperature.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Relief {
    /// Coefficient when fully open, m³/s/√Pa.
    pub k: f64,
    /// It begins to weep here, Pa.
    pub simmer: f64,
    /// Share of `k` that it weeps just below `open`.
    pub weep: f64,
    /// It lifts here, Pa.
    pub open: f64,
    /// Fully open here, Pa.
    pub full: f64,
    /// It closes again here, Pa.
    pub reseat: f64,
    /// It opens fully at this water temperature, °C.
    pub hot: f64,
    /// And closes again at this one, °C.
    pub cool: f64,
    /// Opening by hand, 0 to 1.
    pub lever: f64,
    /// Lifted by pressure at the moment.
    pub lifted: bool,
    /// Held open by temperature at the moment.
    pub heated: bool,
}

impl Relief {
    /// One that opens at 150 psi, whatever the temperature; `full` and `reseat` are pressures in Pa.
    pub fn standard(k: f64, full: f64, reseat: f64) -> Self {
        let open = OPENS.get();
        Self {
            k,
            simmer: SIMMERS.get() * open,
            weep: WEEPS.get(),
            open,
            full,
            reseat,
            hot: f64::INFINITY,
            cool: f64::INFINITY,
            lever: 0.0,
            lifted: false,
            heated: false,
        }
    }

    /// Tells it the temperature of the water around its sensing rod, °C.
    pub fn sense(&mut self, celsius: f64) {
        if celsius >= self.hot {
            self.heated = true;
        } else if celsius <= self.cool {
            self.heated = false;
        }
    }

    /// Opening, 0 to 1, and its slope per Pa.
    fn lift(&self, dp: f64) -> (f64, f64) {
        let fixed = if self.heated { 1.0 } else { self.lever.clamp(0.0, 1.0) };
        let (low, high, scale) =
            if self.lifted { (self.reseat, self.full, 1.0) } else { (self.simmer, self.open, self.weep) };
        let width = (high - low).max(1.0);
        let share = (dp - low) / width;
        let (lift, slope) = if share <= 0.0 {
            (0.0, 0.0)
        } else if share >= 1.0 {
            (scale, 0.0)
        } else {
            (scale * share, scale / width)
        };
        if lift > fixed { (lift, slope) } else { (fixed, 0.0) }
    }

    /// Follows the pressure after a step. Whether it has just popped, so that the step must be done again.
    pub(super) fn follow(&mut self, dp: f64) -> bool {
        if !self.lifted && dp >= self.open {
            self.lifted = true;
            return true;
        }
        if self.lifted && dp <= self.reseat + CLOSED.get() * (self.open - self.reseat) {
            self.lifted = false;
        }
        false
    }
}

/// How a branch passes water.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Law {
    /// Q = k·√Δp either way; a shut valve has k 0.
    Orifice {
        /// m³/s/√Pa.
        k: f64,
    },
    /// One way only, above a cracking pressure.
    Check {
        /// m³/s/√Pa.
        k: f64,
        /// Pa.
        cracking: f64,
    },
    /// One way only, and never pushes the downstream above a set pressure.
    Regulator {
        /// m³/s/√Pa.
        k: f64,
        /// Pa gauge at the height of the downstream node.
        set: f64,
        /// Lets water back when the downstream stands higher than the upstream.
        bypass: bool,
    },
    /// A pump that adds a pressure to what drives the flow; 0 is a pump at rest.
    Pump {
        /// m³/s/√Pa.
        k: f64,
        /// Pa.
        rise: f64,
        /// A check behind it lets nothing back.
        check: bool,
    },
    /// A relief valve; opens by the pressure difference across it.
    Relief(Relief),
}

/// √d made smooth at zero: d/(d² + ε²)^¼ with ε = 1 Pa, and its slope. Always rising.
fn root(d: f64) -> (f64, f64) {
    let square = d * d + 1.0;
    let quarter = square.sqrt().sqrt();
    (d / quarter, (0.5 * d * d + 1.0) / (square * quarter))
}

/// The same for d above zero only.
fn one_way(d: f64) -> (f64, f64) {
    if d > 0.0 { root(d) } else { (0.0, 0.0) }
}

impl Law {
    /// Flow from upstream to downstream, and its slopes with the two pressures (both as positive numbers).
    ///
    /// `up` and `down` are total heads as pressures; `down_head` is the part of `down` that is height, so
    /// that a set pressure is read where the valve's outlet is.
    pub(super) fn flow(&self, up: f64, down: f64, down_head: f64) -> (f64, f64, f64) {
        match *self {
            Self::Orifice { k } => {
                let (q, s) = root(up - down);
                (k * q, k * s, k * s)
            }
            Self::Check { k, cracking } => {
                let (q, s) = one_way(up - down - cracking);
                (k * q, k * s, k * s)
            }
            Self::Regulator { k, set, bypass } => {
                if bypass && down > up {
                    let (q, s) = one_way(down - up);
                    return (-k * q, k * s, k * s);
                }
                let held = set + down_head;
                let (q, s) = one_way(up.min(held) - down);
                (k * q, if up < held { k * s } else { 0.0 }, k * s)
            }
            Self::Pump { k, rise, check } => {
                let dp = up + rise - down;
                let (q, s) = if check { one_way(dp) } else { root(dp) };
                (k * q, k * s, k * s)
            }
            Self::Relief(relief) => {
                let dp = up - down;
                let (lift, slope) = relief.lift(dp);
                let (q, s) = one_way(dp);
                let total = relief.k * (lift * s + slope * q);
                (relief.k * lift * q, total, total)
            }
        }
    }

    /// Its coefficient when open, m³/s/√Pa: nothing passes where it is 0.
    pub fn factor(&self) -> f64 {
        self.numbers()[0]
    }

    /// Its numbers, for checking.
    pub(super) fn numbers(&self) -> [f64; 3] {
        match *self {
            Self::Orifice { k } => [k, 0.0, 0.0],
            Self::Check { k, cracking } => [k, cracking, 0.0],
            Self::Regulator { k, set, .. } => [k, set, 0.0],
            Self::Pump { k, rise, .. } => [k, rise, 0.0],
            Self::Relief(r) => [r.k, r.open, r.lever],
        }
    }
}
