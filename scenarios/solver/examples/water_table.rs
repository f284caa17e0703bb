//! Prints `celsius pascal density cp` lines for `tests/reference/water/check.py`, then saturation lines.
use solver::water;

fn main() {
    for pascal in [101_325.0, 300_000.0, 600_000.0, 1_100_000.0] {
        for i in 0..=220 {
            let t = f64::from(i) * 0.5;
            println!(
                "{t} {pascal} {:.9} {:.9}",
                water::density_at(t, pascal),
                water::heat_capacity_at(t, pascal)
            );
        }
    }
    for i in 1..=110 {
        let pascal = f64::from(i) * 1e4;
        println!("saturation {pascal} {:.9}", water::saturation_temperature(pascal));
    }
    for i in 0..=220 {
        let t = f64::from(i) * 0.5;
        println!("enthalpy {t} {:.9}", water::enthalpy(t));
    }
}
