//! The anode: a glass from either side, the rod looked at and changed.

use bench::{Action, Outcome, Sight};
use plant::fault::{FaultId, PartKind};
use plant::{AnodeMetal, Tap};

use crate::technician::*;
use crate::work::*;

/// What the hot glass and the rod have to show; the cold glass is clear before and after.
#[track_caller]
pub fn changed(fault: FaultId, numbers: &[(&str, f64)], rusty: bool, eggs: bool, core: bool) -> Work {
    let clear = Sight::Sample { hot: false, rusty: false, eggs: false };
    let mut work = Work::at(&order(fault, numbers));
    work.opens_up();
    let seen = sights(glass(&mut work, true).shown);
    assert_eq!(seen, [Sight::Sample { hot: true, rusty, eggs }]);
    let hot = work.step();
    assert_eq!(sights(glass(&mut work, false).shown), std::slice::from_ref(&clear));
    let cold = work.step();
    work.make_dead(&[]);
    // Water off and the pressure let down: only then the rod comes out.
    work.acts(drain().into_iter().take(4));
    work.act(Action::Wait { minutes: 5.0 });
    let seen = sights(work.act(Action::LookAtAnode).shown);
    let [Sight::Rod { metal: AnodeMetal::Magnesium, bare, length }] = seen[..] else { panic!("{seen:?}") };
    assert_eq!(bare.get() > 0.0, core, "{bare:?} of {length:?}");
    let rod = work.step();
    work.finds(&[hot, cold, rod]);
    work.fits(PartKind::Anode);
    work.acts(refill());
    assert_eq!(sights(glass(&mut work, false).shown), [clear]);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

fn glass(work: &mut Work, hot: bool) -> Outcome {
    work.act(Action::Sample { tap: Tap::Kitchen, hot })
}
