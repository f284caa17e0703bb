//! Prints the person's two curves as lines `curve,x,y`: time to a burn by water temperature in degrees
//! Celsius, and the c1 current in milliamperes by duration in seconds.

use bench::person::{Degree, Exposure, Who, shock};
use quantity::{Seconds, Temperature, det};

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
        println!("c1,{time},{}", 1e3 * shock::c1(Seconds(time)).get());
    }
}
