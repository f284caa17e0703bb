//! Heat trap stuck in the outlet nipple.
//! Trade sheet, section 9, F58: common practice, no source.

use bench::Action;
use plant::Tap;
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("free", 0.1)];

/// Weak hot flow at every tap, full pressure at the tank and full flow at its drain.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F58, NUMBERS));
    work.opens_up();
    let bath = work.draw(4.0);
    let first = work.step();
    let kitchen = work.draw_at(Tap::Kitchen, 2.0);
    let second = work.step();
    assert!(bath.flow.to_gpm() < 1.6, "{bath:?}");
    assert!(kitchen.flow.to_gpm() < 1.5, "{kitchen:?}");
    work.act(Action::Gauge { on: true });
    work.act(Action::Tap { tap: Tap::Bath, opening: 1.0 });
    let (now, _) = work.gauge();
    assert!(now > 40.0, "{now} psi at the tank with the bath running");
    let pressed = work.step();
    work.acts([Action::Tap { tap: Tap::Bath, opening: 0.0 }, Action::Gauge { on: false }]);
    work.make_dead(&[]);
    work.finds(&[first, second, pressed]);
    work.acts(drain().into_iter().take(4));
    work.act(Action::Wait { minutes: 5.0 });
    work.fits(PartKind::Nipples);
    work.acts(refill());
    assert!(work.draw(4.0).flow.to_gpm() > 3.0);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

/// It comes with nipples of its own.
#[test]
fn a_new_heater_is_dear() {
    assert_dear(&order(FaultId::F58, NUMBERS));
}
