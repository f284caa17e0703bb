//! Nipple corroded through.
//! Trade sheet, section 9, F52: common practice, no source.

use bench::{Action, Fitting, Sight};
use plant::Place;
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("diameter", 0.0002)];

/// Wiped dry, everything is looked at again after a quarter of an hour.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F52, NUMBERS));
    work.opens_up();
    work.acts(FITTINGS.map(|fitting| Action::Wipe { fitting }));
    work.act(Action::Wait { minutes: 15.0 });
    let mut steps = Vec::new();
    for (place, fittings) in PLACES {
        let seen = work.look(place);
        steps.push(work.step());
        for &fitting in fittings {
            let drips = seen.contains(&Sight::Wet { fitting, dripping: true });
            assert_eq!(drips, fitting == WET, "{fitting:?} {seen:?}");
        }
    }
    work.make_dead(&[]);
    work.finds(&steps);
    work.acts(drain().into_iter().take(4));
    work.act(Action::Wait { minutes: 5.0 });
    work.fits(PartKind::Nipples);
    work.acts(refill());
    work.acts([Action::Wipe { fitting: WET }, Action::Wait { minutes: 15.0 }]);
    for (place, _) in PLACES {
        assert!(!work.look(place).contains(&Sight::Wet { fitting: WET, dripping: true }));
    }
    work.proves(18.75);
    work.acts(hand_over());
    work
}

const WET: Fitting = Fitting::Nipples;
const FITTINGS: [Fitting; 6] = [
    Fitting::Nipples,
    Fitting::ReliefValve,
    Fitting::UpperElement,
    Fitting::LowerElement,
    Fitting::DrainValve,
    Fitting::BottomRim,
];
const PLACES: [(Place, &[Fitting]); 5] = [
    (Place::HeaterTop, &[Fitting::Nipples]),
    (Place::Relief, &[Fitting::ReliefValve]),
    (Place::UpperCompartment, &[Fitting::UpperElement]),
    (Place::LowerCompartment, &[Fitting::LowerElement]),
    (Place::Drain, &[Fitting::DrainValve]),
];

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_new_heater_does_not() {
    assert_in_vain(&order(FaultId::F52, NUMBERS));
}
