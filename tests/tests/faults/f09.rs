//! One pole of the limit burnt open.
//! Trade sheet, section 9, F09: common practice, no source; readings of rows D' and D'' of 1.6 (computed).

use bench::{Action, Shown, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Cold tank, upper element called: the whole supply stands across the burnt pole, which is open when dead.
fn worked(pole: f64) -> Work {
    let mut work = Work::at(&order(FaultId::F09, &[("pole", pole)]));
    let [burnt, sound] = if pole < 0.5 { [[H1, H2], [H3, H4]] } else { [[H3, H4], [H1, H2]] };
    work.opens_up();
    work.volts(H1, H3, 240.0);
    work.volts(H2, H4, 0.0);
    let across = work.volts(burnt[0], burnt[1], 240.0);
    work.volts(sound[0], sound[1], 0.0);
    for screw in [H1, H2, H3, H4, U1, UEa, UEb] {
        work.volts(screw, Shell, 120.0);
    }
    work.volts(UEa, UEb, 0.0);
    work.make_dead(&[H1, H2, H3, H4]);
    assert_eq!(work.act(Action::PressReset).shown, Shown::DoneWith { sights: vec![Sight::NoClick] });
    let open = work.over(burnt[0], burnt[1]);
    work.ohms(sound[0], sound[1], 0.0, 0.1);
    work.finds(&[across, open]);
    work.fits(PartKind::Limit);
    work.ohms(burnt[0], burnt[1], 0.0, 0.1);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(0.0)
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
    worked(1.0).cured();
}

#[test]
fn a_breaker_does_not() {
    assert_in_vain(&order(FaultId::F09, &[("pole", 0.0)]));
}
