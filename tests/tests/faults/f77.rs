//! Thermostat contact that makes only at times.
//! Not on the trade sheet. A film that a moving blade rubs through is common practice, no source; what stands across an
//! open contact and a closed one as in its 1.6 (computed).

use bench::{Action, Probe};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};
use quantity::Temperature;

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER: [(&str, f64); 2] = [("level", 1.0), ("share", 0.7)];

/// Turned down and up again, the blade rubs its contact.
fn closes_anew(work: &mut Work) {
    for fahrenheit in [90.0, 120.0] {
        work.act(Action::Dial { level: Level::Lower, to: Temperature::fahrenheit(fahrenheit) });
    }
}

/// Cold beside it, it stands open at one closing and closed at another.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F77, &LOWER));
    work.opens_up();
    work.until(Wire::UpperSwitched, 0.0);
    work.draw(10.0);
    work.until(Wire::UpperSwitched, 0.0);
    let shell = work.degrees(Probe::Shell { level: Level::Lower });
    assert!(shell < 100.0, "cold beside it: {shell} °F");
    let cold = work.step();
    let (mut open, mut closed) = (None, None);
    for _ in 0..20 {
        match work.reads(D1, D2) {
            volts if volts > 200.0 => open = Some(work.step()),
            volts if volts < 1.0 => closed = Some(work.step()),
            volts => panic!("{volts} V"),
        }
        if open.is_some() && closed.is_some() {
            break;
        }
        closes_anew(&mut work);
    }
    let (open, closed) = (open.expect("once open"), closed.expect("once closed"));
    work.make_dead(&[D1, D2]);
    work.finds(&[cold, open, closed]);
    work.fits(PartKind::LowerThermostat);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn the_lower_element_does_not() {
    let work = assert_in_vain(&order(FaultId::F77, &LOWER));
    assert!(work.session.home.plant.thermostats[1].fickle.is_some());
}
