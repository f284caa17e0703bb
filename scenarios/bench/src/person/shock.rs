//! What a current through the body does: IEC 60479-1 zones by path and duration.

use quantity::{Amps, Constant, Seconds, Tag, det};
use serde::{Deserialize, Serialize};

/// The way a current takes through the body.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Path {
    /// One hand to the other.
    HandHand,
    /// Left hand to the feet.
    LeftHandFeet,
    /// Right hand to the feet.
    RightHandFeet,
    /// Both hands together to the feet.
    HandsFeet,
    /// Left hand to the trunk (chest, or a knee on the shell counted like it).
    LeftHandTrunk,
    /// Right hand to the trunk.
    RightHandTrunk,
    /// One foot to the other.
    FootFoot,
}

impl Path {
    /// All of them.
    pub const ALL: &'static [Self] = &[
        Self::HandHand,
        Self::LeftHandFeet,
        Self::RightHandFeet,
        Self::HandsFeet,
        Self::LeftHandTrunk,
        Self::RightHandTrunk,
        Self::FootFoot,
    ];

    /// Impedance over that of hand to hand.
    pub const fn impedance_factor(self) -> f64 {
        match self {
            Self::HandHand | Self::LeftHandFeet | Self::RightHandFeet | Self::FootFoot => 1.0,
            Self::HandsFeet => BOTH_HANDS.get(),
            Self::LeftHandTrunk | Self::RightHandTrunk => TO_TRUNK.get(),
        }
    }

    /// Heart-current factor: the current left hand to feet that endangers the heart alike, over this one.
    pub const fn heart_factor(self) -> f64 {
        let [right_hand, hands, left_trunk, right_trunk, feet] = HEART.get();
        match self {
            Self::LeftHandFeet | Self::HandsFeet => 1.0,
            Self::RightHandFeet => right_hand,
            Self::HandHand => hands,
            Self::LeftHandTrunk => left_trunk,
            Self::RightHandTrunk => right_trunk,
            Self::FootFoot => feet,
        }
    }
}

/// How bad a current of some duration is, mildest first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ShockZone {
    /// Below the threshold of reaction.
    Imperceptible,
    /// Felt: a tingle, a start.
    Perceptible,
    /// Some people can no longer let go of what they hold.
    LetGoAtRisk,
    /// Most people can no longer let go.
    BeyondLetGo,
    /// Past the c1 curve: the heart may fibrillate.
    Fibrillation,
}

quantity::constants! {
    /// Threshold of reaction, line a.
    pub const REACTION: Constant = Constant::new(
        "threshold of reaction",
        0.5e-3,
        "A",
        Tag::Published("IEC 60479-1 line a, as printed by a trade journal"),
    );
    /// Let-go threshold that holds for everybody.
    pub const LET_GO_ALL: Constant =
        Constant::new("let-go, all persons", 5e-3, "A", Tag::Memory("IEC 60479-1, 5.4"));
    /// Let-go threshold of adult men.
    pub const LET_GO_MEN: Constant =
        Constant::new("let-go, adult men", 10e-3, "A", Tag::Memory("IEC 60479-1, 5.4"));
    /// Time until a startled hand is off what it only touched.
    pub const STARTLE: Constant = Constant::new(
        "startle and withdrawal",
        0.3,
        "s",
        Tag::Model("about the reaction time of an alert adult; no source"),
    );
    /// Time until somebody who cannot let go falls away or is freed.
    pub const HELD: Constant = Constant::new(
        "held fast",
        5.0,
        "s",
        Tag::Model("somebody near opens the circuit, or a fall does; no source"),
    );
    /// A class A interrupter opens at 4 to 6 mA; here at the end that everybody can count on.
    pub const GFCI_TRIPS: Constant =
        Constant::new("class A interrupter opens", 6.0, "mA", Tag::Published("4 to 6 mA, citing UL 943"));
    /// The c1 curve, seconds and amperes left hand to feet, straight in the logarithms of both. 40 mA at 5 s
    /// published (a page that reproduces the figure, 7.5); the other points from memory of IEC 60479-1,
    /// figure 20.
    pub const C1: Constant<[(f64, f64); 4]> = Constant::new(
        "c1 curve, left hand to feet: duration and current",
        [(0.01, 0.5), (0.1, 0.4), (1.0, 0.05), (3.0, 0.04)],
        "s, A",
        Tag::Memory("IEC 60479-1, figure 20; 40 mA was read on a page that reproduces it"),
    );
    /// Its trip time: this current over the one to ground, to this power, in seconds.
    const GFCI_CURVE: Constant<(f64, f64)> = Constant::new(
        "class A interrupter: current that opens it in a second, power",
        (20.0, 1.43),
        "mA, 1",
        Tag::Memory("UL 943"),
    );
    /// Impedance from both hands to the feet over that of hand to hand.
    const BOTH_HANDS: Constant =
        Constant::new("impedance, both hands to feet, over hand to hand", 0.5, "1", Tag::Memory("IEC 60479-1"));
    /// Impedance from a hand to the trunk over that of hand to hand.
    const TO_TRUNK: Constant = Constant::new(
        "impedance, hand to trunk, over hand to hand",
        0.5,
        "1",
        Tag::Published("a typed copy of IEC 479-1"),
    );
    /// Heart-current factors: right hand to feet, hand to hand, left and right hand to trunk, foot to foot.
    const HEART: Constant<[f64; 5]> = Constant::new(
        "heart-current factors: right hand to feet, hand to hand, left and right hand to trunk, foot to foot",
        [0.8, 0.4, 1.5, 1.3, 0.04],
        "1",
        Tag::Memory("IEC 60479-1, table 12"),
    );
    /// Currents of c1, c2 and c3 for three seconds and more. The same ratios hold here for all durations.
    const LONG: Constant<[f64; 3]> = Constant::new(
        "c1, c2, c3 for three seconds and more; their ratios hold here for all durations",
        [40e-3, 50e-3, 80e-3],
        "A",
        Tag::Memory("IEC 60479-1, figure 20"),
    );
}

/// How long a touch lasts: a hand that only touches is startled away; one that grasps stays for as long
/// as the current holds it. An unfelt current ends nothing, so `meant` is how long the touch was to be.
pub fn contact_time(current: Amps, grasps: bool, meant: Seconds) -> Seconds {
    let size = current.get().abs();
    if size < REACTION.get() {
        meant
    } else if grasps && size >= LET_GO_ALL.get() {
        Seconds(HELD.get())
    } else {
        Seconds(STARTLE.get())
    }
}

/// The c1 current for a duration; constant outside the ends of the curve.
pub fn c1(duration: Seconds) -> Amps {
    Amps(through(duration.get(), C1.get()))
}

/// The curves of the danger to the heart, by what share of people they concern.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Curve {
    /// Below it the heart is not known to fibrillate.
    C1,
    /// Up to it, about one in twenty.
    C2,
    /// Up to it, about half; beyond it more.
    C3,
}

impl Curve {
    /// All of them, mildest first.
    pub const ALL: [Self; 3] = [Self::C1, Self::C2, Self::C3];

    /// The curve's current over that of c1.
    pub const fn over_c1(self) -> f64 {
        let [c1, c2, c3] = LONG.get();
        match self {
            Self::C1 => 1.0,
            Self::C2 => c2 / c1,
            Self::C3 => c3 / c1,
        }
    }

    /// When a current, taken as left hand to feet, crosses it; `None` if it never does.
    pub fn crossing(self, equivalent: Amps) -> Option<Seconds> {
        c1_crossing(Amps(equivalent.get() / self.over_c1()))
    }
}

/// Trip time of a class A ground-fault interrupter, where one guards the circuit; `None` for a current it lets
/// pass.
pub fn gfci_opens(to_ground: Amps) -> Option<Seconds> {
    let size = to_ground.get().abs() * 1e3;
    let (second, power) = GFCI_CURVE.get();
    (size >= GFCI_TRIPS.get()).then(|| Seconds(det::pow(second / size, power)))
}

/// When a current, taken as left hand to feet, crosses the c1 curve; `None` if it never does.
pub fn c1_crossing(equivalent: Amps) -> Option<Seconds> {
    let [(first, _), .., (_, floor)] = C1.get();
    if equivalent.get().is_nan() || equivalent.get() < floor {
        return None;
    }
    let turned = C1.get().map(|(t, i)| (-i, t));
    let t = turned.windows(2).find_map(|pair| match pair {
        [(i0, t0), (i1, t1)] if (*i0..=*i1).contains(&-equivalent.get()) => {
            Some(log_log(equivalent.get(), (-i0, *t0), (-i1, *t1)))
        }
        _ => None,
    });
    Some(Seconds(t.unwrap_or(first)))
}

/// Piecewise log-log interpolation with constant ends.
fn through(x: f64, points: [(f64, f64); 4]) -> f64 {
    let [first, .., last] = points;
    if x <= first.0 {
        return first.1;
    }
    points
        .windows(2)
        .find_map(|pair| match pair {
            [a, b] if x <= b.0 => Some(log_log(x, *a, *b)),
            _ => None,
        })
        .unwrap_or(last.1)
}

fn log_log(x: f64, (x0, y0): (f64, f64), (x1, y1): (f64, f64)) -> f64 {
    let share = det::ln(x / x0) / det::ln(x1 / x0);
    y0 * det::exp(share * det::ln(y1 / y0))
}

/// A current through the body, judged.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Judged {
    /// The zone it ends in.
    pub zone: ShockZone,
    /// The current left hand to feet that endangers the heart alike.
    pub equivalent: Amps,
    /// When it crosses the c1 curve if it goes on; absent if it never does.
    pub crosses_c1: Option<Seconds>,
}

/// Judges a current along a path for a duration. Let-go is judged by its size alone: a shorter touch is
/// no safer to count on.
pub fn shock(current: Amps, path: Path, duration: Seconds) -> Judged {
    let equivalent = current.abs() * path.heart_factor();
    let crosses_c1 = c1_crossing(equivalent);
    let size = current.get().abs();
    let zone = if crosses_c1.is_some_and(|t| t <= duration) {
        ShockZone::Fibrillation
    } else if size >= LET_GO_MEN.get() {
        ShockZone::BeyondLetGo
    } else if size >= LET_GO_ALL.get() {
        ShockZone::LetGoAtRisk
    } else if size >= REACTION.get() {
        ShockZone::Perceptible
    } else {
        ShockZone::Imperceptible
    };
    Judged { zone, equivalent, crosses_c1 }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 7.5: published at 5 s (40 mA), the rest from memory of IEC 60479-1, figure 20.
    #[test]
    fn c1_goes_through_its_points() {
        for (t, i) in [(0.01, 0.5), (0.1, 0.4), (1.0, 0.05), (3.0, 0.04), (5.0, 0.04), (0.001, 0.5)] {
            assert!((c1(Seconds(t)).get() - i).abs() < 1e-12, "{t} s");
        }
    }

    /// 7.6, computed from the tables of IEC 60479-1:2005 and the c1 points.
    #[test]
    fn crossing_times_of_the_trade_sheet() {
        let cases = [
            (131e-3, Path::LeftHandFeet, Some(0.34)),
            (200e-3, Path::HandHand, Some(0.60)),
            (165e-3, Path::HandHand, Some(0.73)),
            (76e-3, Path::HandHand, None),
        ];
        for (amps, path, expected) in cases {
            let judged = shock(Amps(amps), path, Seconds(0.2));
            assert_eq!(judged.zone, ShockZone::BeyondLetGo);
            match (judged.crosses_c1, expected) {
                (Some(t), Some(e)) => assert!((t.get() - e).abs() < 0.006, "{amps} A: {t:?}"),
                (found, expected) => assert_eq!(found.map(Seconds::get), expected),
            }
        }
        assert!((shock(Amps(76e-3), Path::HandHand, Seconds(10.0)).equivalent.get() - 30e-3).abs() < 1e-3);
    }

    /// 7.4: 0.5 mA published; 5 and 10 mA from memory of IEC 60479-1.
    #[test]
    fn thresholds() {
        let zone = |ma: f64| shock(Amps(ma * 1e-3), Path::LeftHandFeet, Seconds(10.0)).zone;
        assert_eq!(zone(0.49), ShockZone::Imperceptible);
        assert_eq!(zone(0.5), ShockZone::Perceptible);
        assert_eq!(zone(5.7), ShockZone::LetGoAtRisk); // 7.8: the tingle through a 20 kilohm leak
        assert_eq!(zone(16.0), ShockZone::BeyondLetGo);
        assert_eq!(zone(39.9), ShockZone::BeyondLetGo);
        assert_eq!(zone(40.0), ShockZone::Fibrillation);
    }

    /// 7.5, from memory of IEC 60479-1.
    #[test]
    fn factors_of_paths() {
        let heart: Vec<f64> = Path::ALL.iter().map(|p| p.heart_factor()).collect();
        assert_eq!(heart, [0.4, 1.0, 0.8, 1.0, 1.5, 1.3, 0.04]);
        let body: Vec<f64> = Path::ALL.iter().map(|p| p.impedance_factor()).collect();
        assert_eq!(body, [1.0, 1.0, 1.0, 0.5, 0.5, 0.5, 1.0]);
    }

    #[test]
    fn more_current_or_longer_is_never_milder() {
        for &path in Path::ALL {
            for step in 0..200 {
                let amps = 0.1e-3 * det::exp(f64::from(step) * 0.05);
                for tick in 0..60 {
                    let time = 1e-3 * det::exp(f64::from(tick) * 0.17);
                    let here = shock(Amps(amps), path, Seconds(time));
                    let more = shock(Amps(amps * 1.05), path, Seconds(time));
                    let longer = shock(Amps(amps), path, Seconds(time * 1.2));
                    assert!(more.zone >= here.zone && longer.zone >= here.zone);
                    if let (Some(now), Some(then)) = (here.crosses_c1, more.crosses_c1) {
                        assert!(then <= now);
                    }
                }
            }
        }
    }

    #[test]
    fn who_grasps_is_held() {
        let time = |ma, grasps| contact_time(Amps(ma * 1e-3), grasps, Seconds(60.0)).get();
        assert_eq!(time(0.2, true), 60.0);
        assert_eq!(time(2.0, true), STARTLE.get());
        assert_eq!(time(76.0, false), STARTLE.get());
        assert_eq!(time(76.0, true), HELD.get());
    }

    /// The curve and its inverse are one curve.
    #[test]
    fn crossing_inverts_the_curve() {
        for step in 0..100 {
            let t = 0.0101 * det::exp(f64::from(step) * 0.0565);
            let back = c1_crossing(c1(Seconds(t))).unwrap();
            assert!((back.get() / t - 1.0).abs() < 1e-9, "{t} {back:?}");
        }
        assert_eq!(c1_crossing(Amps(f64::NAN)), None);
    }
}
