//! Rusty hot water.
//! Trade sheet, section 9, F55: common practice, no source.

use bench::{Action, Sight};
use plant::fault::{FaultId, PartKind};
use plant::{AnodeMetal, Tap};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("left", 0.01), ("bare", 0.12)];

/// Hot is brown, cold is clear, and the rod is a bare core.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F55, NUMBERS));
    work.opens_up();
    let seen = sights(glass(&mut work, true).shown);
    assert_eq!(seen, [Sight::Sample { hot: true, rusty: true, eggs: false }]);
    let hot = work.step();
    let seen = sights(glass(&mut work, false).shown);
    assert_eq!(seen, [Sight::Sample { hot: false, rusty: false, eggs: false }]);
    let cold = work.step();
    let steps = |rod: u32| [hot, cold, rod];
    work.make_dead(&[]);
    // Water off and the pressure let down: only then the rod comes out.
    work.acts(drain().into_iter().take(4));
    work.act(Action::Wait { minutes: 5.0 });
    let seen = sights(work.act(Action::LookAtAnode).shown);
    assert_eq!(seen, [Sight::Rod { metal: AnodeMetal::Magnesium, core: true }]);
    let rod = work.step();
    work.finds(&steps(rod));
    work.fits(PartKind::Anode);
    work.acts(refill());
    let seen = sights(glass(&mut work, false).shown);
    assert_eq!(seen, [Sight::Sample { hot: false, rusty: false, eggs: false }]);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

fn glass(work: &mut Work, hot: bool) -> bench::Outcome {
    work.act(Action::Sample { tap: Tap::Kitchen, hot })
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F55, NUMBERS));
}
