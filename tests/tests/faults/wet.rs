//! One fitting that leaks among all that could: wiped dry, and looked at again.

use bench::{Action, Fitting, Sight};
use plant::Place;
use plant::fault::FaultId;

use crate::technician::*;
use crate::work::*;

pub const FITTINGS: [Fitting; 6] = [
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

/// Wiped dry, everything is looked at again after a quarter of an hour; mended, nothing drips there any more.
#[track_caller]
pub fn drips_alone(fault: FaultId, numbers: &[(&str, f64)], wet: Fitting, mends: impl Fn(&mut Work)) -> Work {
    let mut work = Work::at(&order(fault, numbers));
    work.opens_up();
    work.acts(FITTINGS.map(|fitting| Action::Wipe { fitting }));
    work.act(Action::Wait { minutes: 15.0 });
    let mut steps = Vec::new();
    for (place, fittings) in PLACES {
        let seen = work.look(place);
        steps.push(work.step());
        for &fitting in fittings {
            let drips = seen.contains(&Sight::Wet { fitting, dripping: true });
            assert_eq!(drips, fitting == wet, "{fitting:?} {seen:?}");
        }
    }
    work.make_dead(&[]);
    work.finds(&steps);
    mends(&mut work);
    work.acts([Action::Wipe { fitting: wet }, Action::Wait { minutes: 15.0 }]);
    for (place, _) in PLACES {
        assert!(!work.look(place).contains(&Sight::Wet { fitting: wet, dripping: true }));
    }
    work.proves(18.75);
    work.acts(hand_over());
    work
}
