//! Element gasket leaks.
//! Trade sheet, section 9, F50: common practice, no source; nothing computed.

use bench::{Action, Fitting, Sight};
use drill::{Cure, RuleId};
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER: [(&str, f64); 2] = [("level", 1.0), ("diameter", 0.0002)];
const UPPER: [(&str, f64); 2] = [("level", 0.0), ("diameter", 0.0002)];

/// Wiped dry, the flange that leaks is the first to drip again.
fn worked(numbers: &[(&str, f64)], level: Level) -> Work {
    let mut work = Work::at(&order(FaultId::F50, numbers));
    let [(place, fitting, kind), (other, dry, _)] = {
        let upper = (Place::UpperCompartment, Fitting::UpperElement, PartKind::UpperGasket);
        let lower = (Place::LowerCompartment, Fitting::LowerElement, PartKind::LowerGasket);
        if level == Level::Upper { [upper, lower] } else { [lower, upper] }
    };
    work.opens_up();
    work.acts([Fitting::UpperElement, Fitting::LowerElement].map(|fitting| Action::Wipe { fitting }));
    work.act(Action::Wait { minutes: 3.0 });
    let seen = work.look(place);
    assert!(seen.contains(&Sight::Wet { fitting, dripping: true }), "{seen:?}");
    let wet = work.step();
    let seen = work.look(other);
    assert!(seen.contains(&Sight::Dry { fitting: dry }), "{seen:?}");
    let dry = work.step();
    // No track of char leads from the controls' screws to the shell: that would be a wet compartment.
    let live = plant::Film::screw(level);
    work.make_dead(&[screws(level).as_slice(), &[live]].concat());
    let clear = work.over_or_kilohms(live, plant::Screw::Shell);
    work.finds(&[wet, dry, clear]);
    work.fits_drained(kind);
    work.act(Action::Wipe { fitting });
    work.act(Action::Wait { minutes: 3.0 });
    let seen = work.look(place);
    assert!(seen.contains(&Sight::Dry { fitting }), "{seen:?}");
    work.proves(18.75);
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(&LOWER, Level::Lower)
}

#[test]
fn a_gasket_on_a_clean_seat_cures() {
    perfect().cured();
    worked(&UPPER, Level::Upper).cured();
}

/// The dearest way to change a gasket: cured, and told so.
#[test]
fn a_whole_heater_cures_at_needless_cost() {
    let (work, verdict) = changed_in_error(&order(FaultId::F50, &LOWER));
    assert_eq!(verdict.cure, Cure::Cured);
    assert!(verdict.lost(RuleId::ChangedInVain) > 0.0, "{:#?}", verdict.score.lines);
    assert!(work.session.me.cost > 100.0);
}
