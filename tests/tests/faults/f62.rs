//! Board locked out for want of water.
//! Trade sheet, section 9, F62: common practice, no source; the board says so, and water stands at the relief valve.

use bench::{Action, Sight};
use drill::{Order, RuleId};
use plant::controls::board::Lockout;
use plant::fault::FaultId;
use plant::{HeaterModel, Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn on_a_board(leak: f64) -> Order {
    Order { heater: Some(HeaterModel::Board50), ..order(FaultId::F62, &[("leak", leak)]) }
}

/// It says why; full at the top and at every tap, it forgets when its supply is taken away and given back.
pub fn perfect() -> Work {
    cleared(0.0, Lockout::NoWater)
}

fn cleared(leak: f64, lockout: Lockout) -> Work {
    let mut work = Work::at(&on_a_board(leak));
    work.acts(arrive());
    work.acts(open(Level::Upper));
    let says = Sight::BoardSays { lit: true, lockout: Some(lockout) };
    assert!(work.look(Place::UpperCompartment).contains(&says));
    let said = work.step();
    let idle = work.amps(Wire::FeedA, 0.0);
    work.acts([Action::ReliefLever { up: true }, Action::ReliefLever { up: false }]);
    let solid = work.step() - 1;
    let slot = work.slot();
    work.act(Action::Breaker { slot, on: false });
    work.finds(&[said, idle, solid]);
    work.act(Action::Wait { minutes: 1.0 });
    work.acts(close(Level::Upper));
    work.act(Action::Breaker { slot, on: true });
    work.amps(Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    work.amps(Wire::FeedA, 0.0);
    work.acts(hand_over());
    work
}

#[test]
fn a_cleared_board_heats_again() {
    perfect().cured();
    cleared(1.0, Lockout::Leak).cured();
}

#[test]
fn a_board_is_changed_at_needless_cost() {
    let (_, verdict) = changed_in_error(&on_a_board(0.0));
    assert!(verdict.cure.is_right() && verdict.lost(RuleId::ChangedInVain) > 0.0, "{verdict:#?}");
}
