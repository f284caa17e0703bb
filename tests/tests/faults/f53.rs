//! Condensation.
//! Trade sheet, section 9, F53: common practice, no source; wet with cold water in it, dry once the tank is hot.

use bench::{Action, Fitting, Sight};
use drill::Order;
use plant::climate::Climate;
use plant::fault::{Advice, FaultId};
use plant::{Place, Tap};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn in_winter() -> Order {
    Order { climate: Some(Climate::MillValley), day: Some(20), ..order(FaultId::F53, &[("dew", 64.0)]) }
}

/// Wiped, it is wet again while cold water runs in; at rest it stays dry, and nothing drips.
pub fn perfect() -> Work {
    let mut work = Work::at(&in_winter());
    work.acts(arrive());
    let wet = |seen: &[Sight]| seen.contains(&Sight::Wet { fitting: Fitting::Nipples, dripping: false });
    work.acts([Action::Tap { tap: Tap::Kitchen, opening: 1.0 }, Action::Wait { minutes: 3.0 }]);
    let seen = work.look(Place::HeaterTop);
    assert!(wet(&seen), "{seen:?}");
    let sweats = work.step();
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    work.act(Action::WaitForCutOut);
    work.act(Action::Wait { minutes: 90.0 });
    work.act(Action::Wipe { fitting: Fitting::Nipples });
    work.act(Action::Wait { minutes: 15.0 });
    let seen = work.look(Place::HeaterTop);
    assert!(seen.contains(&Sight::Dry { fitting: Fitting::Nipples }), "{seen:?}");
    let stays_dry = work.step();
    work.finds(&[sweats, stays_dry]);
    work.act(Action::Advise { advice: Advice::DampAir });
    work.acts(hand_over());
    work
}

#[test]
fn the_right_words_end_it() {
    perfect().cured();
}

#[test]
fn a_heater_does_not() {
    assert_in_vain(&in_winter());
}
