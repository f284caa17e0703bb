//! Tank shell corroded through.
//! Trade sheet, section 9, F03: common practice, no source; nothing computed.

use bench::{Action, Fitting, Helper, Licence, Shown, Sight};
use drill::{Cure, Order, RuleId};
use plant::Screw::{Ja, Jb};
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place};

use crate::in_vain::*;
use crate::technician::*;
use crate::wet::FITTINGS;
use crate::work::*;

fn leaking(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F03, &[("diameter", 0.0003)]) }
}

/// Wiped dry, every fitting stays dry but the rim; with both valves shut the pressure falls by itself.
fn found(work: &mut Work) {
    work.opens_up();
    work.acts(FITTINGS.map(|fitting| Action::Wipe { fitting }));
    work.act(Action::Wait { minutes: 12.0 });
    let mut steps = Vec::new();
    for (place, fittings) in [
        (Place::HeaterTop, &FITTINGS[..1]),
        (Place::Relief, &FITTINGS[1..2]),
        (Place::UpperCompartment, &FITTINGS[2..3]),
        (Place::LowerCompartment, &FITTINGS[3..4]),
        (Place::Drain, &FITTINGS[4..5]),
    ] {
        let seen = work.look(place);
        steps.push(work.step());
        for fitting in fittings {
            assert!(seen.contains(&Sight::Dry { fitting: *fitting }), "{seen:?}");
        }
    }
    let seen = work.look(Place::Drain);
    assert!(seen.contains(&Sight::Wet { fitting: Fitting::BottomRim, dripping: true }), "{seen:?}");
    work.make_dead(&[Ja, Jb]);
    work.act(Action::Gauge { on: true });
    let (before, _) = work.gauge();
    near(&"static", before, 50.0, 3.0);
    work.act(Action::ColdValve { opening: 0.0 });
    work.act(Action::Wait { minutes: 5.0 });
    let (after, _) = work.gauge();
    assert!(after < 10.0, "{after} psi after five minutes");
    steps.push(work.step());
    work.act(Action::Gauge { on: false });
    work.finds(&steps);
}

pub fn perfect() -> Work {
    let mut work = Work::at(&leaking(Licence::Plumber));
    found(&mut work);
    work.act(Action::AgreeCost);
    // The cold valve is shut already.
    work.acts(drain().into_iter().skip(1));
    work.fits(PartKind::Heater);
    work.acts(refill_new());
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn a_new_tank_cures() {
    perfect().cured();
}

/// Carried by one alone, copper on bare steel, the old relief valve in the new tank: each costs, and it works all the same.
#[test]
fn what_is_put_in_amiss_is_charged() {
    let mut work = Work::at(&leaking(Licence::Plumber));
    found(&mut work);
    work.act(Action::AgreeCost);
    work.acts(drain().into_iter().skip(1));
    let plate = work.session.home.plant.plate;
    for act in change_heater(&plate) {
        let slip = match act {
            Action::CarryOut { .. } => Action::CarryOut { helped: false },
            Action::JoinPipes { .. } => Action::JoinPipes { dielectric: false },
            Action::Replace { .. } => Action::ReuseRelief,
            other => other,
        };
        let shown = work.session.step(&slip).shown;
        assert!(!matches!(shown, Shown::Refused { .. }), "{slip:?}: {shown:?}");
    }
    work.acts(refill_new());
    work.proves(18.75);
    work.acts(hand_over());
    let verdict = work.verdict();
    assert_eq!(verdict.cure, Cure::Cured);
    assert_eq!(verdict.lost(RuleId::PutInAmiss), 12.0);
    let lines: Vec<RuleId> = verdict.score.lines.iter().map(|line| line.rule).collect();
    assert_eq!(lines, [RuleId::LiftedAlone, RuleId::PutInAmiss, RuleId::PutInAmiss]);
}

#[test]
fn an_electrician_shuts_off_and_calls_a_plumber() {
    let mut work = Work::at(&leaking(Licence::Electrician));
    found(&mut work);
    work.acts(close(Level::Lower));
    work.acts(close(Level::Upper));
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Plumber }]);
    work.handed_on(Helper::Plumber);
}

#[test]
fn a_gasket_does_not() {
    assert_in_vain(&leaking(Licence::Plumber));
}
