//! Prints the person's curves as lines `curve,x,y`: time to a burn by water temperature in degrees Celsius, the
//! current of c1, c2 and c3 in milliamperes by duration in seconds, and the body's impedance in ohms, hand to
//! hand, by touch voltage.

use bench::person::{Curve, Degree, Exposure, Percentile, Wetness, Who, body, shock};
use quantity::{Seconds, Temperature, Volts, det};

fn main() {
    for (name, degree) in [("first", Degree::First), ("second", Degree::Second), ("third", Degree::Third)] {
        for quarter in 0..=104 {
            let celsius = 44.0 + 0.25 * f64::from(quarter);
            let water = Exposure::water(Temperature::celsius(celsius), Seconds(3e4));
            if let Some(time) = water.time_to(degree, Who::Adult) {
                println!("{name},{celsius},{}", time.get());
            }
        }
    }
    for step in 0..=100 {
        let time = 0.005 * det::exp(0.08 * f64::from(step));
        for (name, curve) in [("c1", Curve::C1), ("c2", Curve::C2), ("c3", Curve::C3)] {
            println!("{name},{time},{}", 1e3 * shock::c1(Seconds(time)).get() * curve.over_c1());
        }
    }
    for volts in (20..=1000).step_by(5) {
        let across = Volts(f64::from(volts));
        for (name, percentile) in [("5", Percentile::P5), ("50", Percentile::P50), ("95", Percentile::P95)] {
            for (skin, wetness) in [("dry", Wetness::Dry), ("water", Wetness::Water), ("salt", Wetness::Salt)]
            {
                println!("{skin}-{name},{volts},{}", body::hand_to_hand(across, percentile, wetness).get());
            }
            println!("1994-{name},{volts},{}", body::hand_to_hand_1994(across, percentile).get());
        }
    }
}
