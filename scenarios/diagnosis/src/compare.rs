//! Whether two readings are one to the instruments at hand.

use bench::instrument::{Scale, clamp, gauge, insulation, multimeter, thermometer};
use bench::{Bucket, Display, Shown, Sight, Went};
use quantity::{Pressure, Seconds, Temperature};

/// What two houses alike may differ by besides the instrument: absolute and relative. Supply that moves.
/// Common practice, no source.
const VOLTS: (f64, f64) = (2.5, 0.02);
/// A drop across a joint or a contact moves with its current, not with the supply: contact of the probes, and a share of
/// the drop. Common practice, no source: half a volt across a screw is told from none.
const DROP: (f64, f64) = (0.5, 0.05);
/// Element tolerance, and contact of the probes. Trade sheet 2.2.
const OHMS: (f64, f64) = (0.1, 0.07);
/// Supply and element together. Common practice, no source.
const AMPS: (f64, f64) = (0.1, 0.035);
/// Kelvins in running water. Common practice, no source.
const KELVINS: (f64, f64) = (1.0, 0.0);
/// Pascals, about 3 psi: a pump or a neighbour's tap. Common practice, no source.
const PASCALS: (f64, f64) = (20_000.0, 0.0);
/// Flow timed into a bucket. Common practice, no source.
const FLOW: (f64, f64) = (0.0, 0.12);
/// Volume drawn before the water turned cold: two gallons, and the tank as it stood. Common practice, no source.
const DRAWN: (f64, f64) = (0.0076, 0.15);
/// How long somebody says that it was warm: two minutes, and a quarter of it. Common practice, no source.
const RAN_COLD: (f64, f64) = (120.0, 0.25);
/// From here on water is seen to run. Common practice, no source.
const THREAD: f64 = 2e-6;
/// Bare core of a rod by eye: two inches, and a tenth of it. Common practice, no source.
const BARE: (f64, f64) = (0.05, 0.1);
/// A timer's dial is marked in quarters of an hour. Common practice, no source.
const DIAL_MARK: Seconds = Seconds::minutes(15.0);
/// Insulation readings within this factor of each other tell nothing. Common practice, no source.
const INSULATION_FACTOR: f64 = 3.0;

/// Whether the instruments could not tell these two apart.
pub fn reads_alike(a: &Shown, b: &Shown) -> bool {
    match (a, b) {
        (Shown::Meter { display: a }, Shown::Meter { display: b }) => displays_alike(a, b),
        (Shown::Clamp { amps: a }, Shown::Clamp { amps: b }) => {
            on_scale(&clamp::AMPS, a.get(), b.get(), AMPS)
        }
        (Shown::Temperature { reading: a }, Shown::Temperature { reading: b }) => same_temperature(*a, *b),
        (Shown::Bucket(a), Shown::Bucket(b)) => buckets_alike(a, b),
        (Shown::Pressure { now: a, highest: c }, Shown::Pressure { now: b, highest: d }) => {
            same_pressure(*a, *b) && same_pressure(*c, *d)
        }
        (Shown::Charge { air: a }, Shown::Charge { air: b }) => match (a, b) {
            (Some(a), Some(b)) => same_pressure(*a, *b),
            (a, b) => a.is_some() == b.is_some(),
        },
        (
            Shown::Sights { sights: a, .. } | Shown::DoneWith { sights: a },
            Shown::Sights { sights: b, .. } | Shown::DoneWith { sights: b },
        ) => sights_alike(a, b),
        (a, b) => a == b,
    }
}

/// Whether one and the same thing, looked at again later, seems unchanged: what is judged by eye counts here too.
pub fn seems_unchanged(before: &Shown, now: &Shown) -> bool {
    reads_alike(before, now)
        && match (before, now) {
            (Shown::DoneWith { sights: a }, Shown::DoneWith { sights: b }) => {
                a.iter().zip(b).all(|(a, b)| match (a, b) {
                    (Sight::Rod { bare: a, .. }, Sight::Rod { bare: b, .. }) => near(a.get(), b.get(), BARE),
                    _ => true,
                })
            }
            _ => true,
        }
}

fn near(a: f64, b: f64, (absolute, relative): (f64, f64)) -> bool {
    (a - b).abs() <= absolute + relative * a.abs().max(b.abs())
}

/// Two readings on one instrument: what its class leaves open, and what houses alike differ by.
fn on_scale(scale: &Scale, a: f64, b: f64, house: (f64, f64)) -> bool {
    near(a, b, (house.0 + scale.leaves_open(a, b), house.1))
}

fn same_temperature(a: Temperature, b: Temperature) -> bool {
    near(a.get(), b.get(), (KELVINS.0 + thermometer::CLASS.get(), KELVINS.1))
}

fn same_pressure(a: Pressure, b: Pressure) -> bool {
    let class = Pressure::psi(gauge::MIDDLE.get() / 100.0 * gauge::SPAN.get());
    near(a.get(), b.get(), (PASCALS.0 + class.get(), PASCALS.1))
}

fn displays_alike(a: &Display, b: &Display) -> bool {
    match (a, b) {
        (Display::Volts { volts: a }, Display::Volts { volts: b }) => {
            let (a, b) = (a.get(), b.get());
            let drop = DROP.0 + DROP.1 * a.abs().max(b.abs());
            on_scale(&multimeter::AC_VOLTS, a, b, (VOLTS.0.min(drop), VOLTS.1))
        }
        (Display::Ohms { ohms: a }, Display::Ohms { ohms: b }) => {
            on_scale(&multimeter::OHMS, a.get(), b.get(), OHMS)
        }
        (Display::Amps { amps: a }, Display::Amps { amps: b }) => {
            on_scale(&multimeter::AMPS, a.get(), b.get(), AMPS)
        }
        (Display::Insulation { ohms: a }, Display::Insulation { ohms: b }) => {
            let (low, high) = (a.get().min(b.get()), a.get().max(b.get()));
            high <= low.max(1.0) * INSULATION_FACTOR
        }
        // A scale that ends tells nothing of what lies beyond its end.
        (Display::Insulation { ohms }, Display::Over) | (Display::Over, Display::Insulation { ohms }) => {
            ohms.get() * INSULATION_FACTOR >= insulation::OHMS.top()
        }
        (Display::Live { .. }, Display::Live { .. }) => true,
        (a, b) => a == b,
    }
}

fn buckets_alike(a: &Bucket, b: &Bucket) -> bool {
    same_temperature(a.first, b.first)
        && same_temperature(a.last, b.last)
        && near(a.flow.get(), b.flow.get(), FLOW)
        && a.spat == b.spat
        && fell_alike(a, b)
}

/// How much ran before it turned cold is read off the bucket.
fn fell_alike(a: &Bucket, b: &Bucket) -> bool {
    match (a.fell_after, b.fell_after) {
        (Some(a), Some(b)) => near(a.get(), b.get(), DRAWN),
        (a, b) => a.is_some() == b.is_some(),
    }
}

/// Two clocks by their faces, over midnight too: how long a wait took by the minute is no reading of a timer.
fn same_time(a: Seconds, b: Seconds) -> bool {
    let apart = (a - b).get().rem_euclid(Seconds::days(1.0).get());
    apart.min(Seconds::days(1.0).get() - apart) <= DIAL_MARK.get()
}

/// Sights are alike when the same things are seen; how much of each is judged by eye and tells nothing.
fn sights_alike(a: &[Sight], b: &[Sight]) -> bool {
    a.len() == b.len() && a.iter().zip(b).all(|(a, b)| sight_alike(a, b))
}

fn sight_alike(a: &Sight, b: &Sight) -> bool {
    match (a, b) {
        (Sight::Warmth { about: a }, Sight::Warmth { about: b }) => near(a.get(), b.get(), (6.0, 0.0)),
        (Sight::Water { temperature: a }, Sight::Water { temperature: b }) => {
            near(a.get(), b.get(), (6.0, 0.0))
        }
        (Sight::WaterOnFloor { .. }, Sight::WaterOnFloor { .. })
        | (Sight::DrainRuns { .. }, Sight::DrainRuns { .. }) => true,
        (Sight::Used { tap: a, went: c, .. }, Sight::Used { tap: b, went: d, .. }) => {
            a == b
                && match (c, d) {
                    (Went::RanCold { after: a }, Went::RanCold { after: b }) => {
                        near(a.get(), b.get(), RAN_COLD)
                    }
                    (a, b) => a == b,
                }
        }
        (Sight::Rod { metal: a, bare: c, .. }, Sight::Rod { metal: b, bare: d, .. }) => {
            a == b && (c.get() > 0.0) == (d.get() > 0.0)
        }
        (
            Sight::BoxHours { shows: a, off_from: c, off_for: e },
            Sight::BoxHours { shows: b, off_from: d, off_for: f },
        ) => (c, e) == (d, f) && same_time(*a, *b),
        (Sight::WaterMeter { turning: a, .. }, Sight::WaterMeter { turning: b, .. }) => a == b,
        (
            Sight::TapRuns { tap: a, spitting: c, flow: e },
            Sight::TapRuns { tap: b, spitting: d, flow: f },
        ) => {
            // Where nothing comes, nothing spits.
            let runs = [e, f].map(|flow| flow.get() > THREAD);
            a == b && runs[0] == runs[1] && (c == d || !runs[0])
        }
        (a, b) => a == b,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quantity::{Amps, Ohms, Volts};

    #[test]
    fn a_dry_tap_spits_nothing() {
        let runs = |flow, spitting| Shown::DoneWith {
            sights: vec![Sight::TapRuns { tap: plant::Tap::Laundry, flow: quantity::Flow(flow), spitting }],
        };
        assert!(reads_alike(&runs(0.0, true), &runs(0.0, false)));
        assert!(!reads_alike(&runs(1e-4, true), &runs(1e-4, false)));
        assert!(!reads_alike(&runs(1e-4, false), &runs(0.0, false)));
    }

    #[test]
    fn a_timer_is_read_to_a_mark_of_its_dial() {
        let clock = |shows: Seconds| Shown::DoneWith {
            sights: vec![Sight::BoxHours {
                shows,
                off_from: Seconds::hours(21.0),
                off_for: Seconds::hours(8.0),
            }],
        };
        let noon = clock(Seconds::hours(12.0));
        assert!(reads_alike(&noon, &clock(Seconds::hours(12.1))));
        assert!(!reads_alike(&noon, &clock(Seconds::hours(21.0))));
        assert!(reads_alike(&clock(Seconds::hours(23.95)), &clock(Seconds::hours(0.05))));
    }

    #[test]
    fn what_a_meter_cannot_tell_is_alike() {
        let ohms = |o| Shown::Meter { display: Display::Ohms { ohms: Ohms(o) } };
        assert!(reads_alike(&ohms(12.8), &ohms(13.1)));
        assert!(!reads_alike(&ohms(12.8), &ohms(6.4)));
        assert!(!reads_alike(&ohms(12.8), &Shown::Meter { display: Display::Over }));
        let insulation = |o| Shown::Meter { display: Display::Insulation { ohms: Ohms(o) } };
        let over = Shown::Meter { display: Display::Over };
        assert!(reads_alike(&insulation(994e6), &over) && reads_alike(&over, &insulation(400e6)));
        assert!(!reads_alike(&insulation(300e6), &over));
        let volts = |v| Shown::Meter { display: Display::Volts { volts: Volts(v) } };
        assert!(reads_alike(&volts(240.0), &volts(238.5)) && !reads_alike(&volts(240.0), &volts(208.0)));
        assert!(reads_alike(&volts(121.0), &volts(118.0)) && reads_alike(&volts(0.1), &volts(0.4)));
        assert!(!reads_alike(&volts(0.1), &volts(1.4)));
        let amps = |a| Shown::Clamp { amps: Amps(a) };
        assert!(reads_alike(&amps(0.0), &amps(0.1)) && !reads_alike(&amps(0.0), &amps(18.75)));
        assert!(!reads_alike(&amps(0.0), &amps(1.0)) && !reads_alike(&amps(9.4), &amps(18.75)));
    }
}
