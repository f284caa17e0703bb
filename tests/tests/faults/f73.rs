//! The service's neutral is loose.
//! Trade sheet, section 9, F73: common practice, no source; the legs computed from the house's loads and the electrode.

use bench::{Action, Glow, Helper, Session, Shown, Sight};
use drill::Order;
use plant::Screw::*;
use plant::fault::FaultId;
use plant::household::{Answer, Question, Symptom};
use plant::{Place, Stab, Wire};
use quantity::Ohms;

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn loose() -> Order {
    order(FaultId::F73, &[("ohms", 100.0)])
}

/// The heater is as it should be; leg to leg 240 V, leg to neutral two that are far apart and add up to it.
pub fn perfect() -> Work {
    let mut work = Work::at(&loose());
    assert_eq!(work.drill.job.account.symptom, Symptom::Lights);
    let asked = work.act(Action::Ask { question: Question::House }).shown;
    assert!(
        matches!(asked, Shown::Said { answer: Answer::House { dim: true, bright: true, .. } }),
        "{asked:?}"
    );
    work.acts(arrive());
    work.draw(20.0);
    work.amps(Wire::CableA, 18.75);
    work.act(open_panel());
    let across = work.volts(M1, M2, 240.0);
    let first = work.reads(M1, N);
    let one = work.step();
    let second = work.reads(M2, N);
    let two = work.step();
    assert!((first - second).abs() > 20.0 && (first + second - 238.0).abs() < 5.0, "{first} V, {second} V");
    work.make_dead_outside();
    work.finds(&[across, one, two]);
    work.act(close_panel());
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Utility }]);
    work
}

/// Where the house happens to have as much on one leg as on the other, nothing shows until a big load makes it uneven.
/// By hand: 24 ohms on each leg, 100 ohms of neutral beside 25 of earth, which is 20; a heater of 9.6 ohms makes 6.857
/// ohms of one side. The neutral stands off by 120 (1/6.857 - 1/24) / (1/6.857 + 1/24 + 1/20) = 52.6 V.
#[test]
fn even_loads_show_it_under_a_big_one() {
    let mut work = Work::at(&loose());
    let loads = &mut work.drill.job.home.plant.service.loads;
    (loads.one, loads.two) = (Ohms(24.0), Ohms(24.0));
    work.session = Session::begin(work.drill.job.clone());
    work.acts(arrive());
    work.act(open_panel());
    let even = [M1, M2].map(|leg| work.reads(leg, N));
    // Two readings, each within 1 % and three of the last digit.
    assert!((even[0] - even[1]).abs() < 3.0, "{even:?}");
    let mut shown = Vec::new();
    for (leg, low, high) in [(Stab::One, M1, M2), (Stab::Two, M2, M1)] {
        let plugged = work.act(Action::PortableHeater { leg, on: true }).shown;
        let faint = Sight::Portable { leg, glow: Glow::Faint };
        assert_eq!(plugged, Shown::DoneWith { sights: vec![faint.clone()] });
        let seen = work.act(Action::Look { at: Place::LoadCenter }).shown;
        assert!(matches!(seen, Shown::Sights { sights, .. } if sights.contains(&faint)));
        work.volts(low, N, 120.0 - 52.6);
        shown.push(work.step());
        work.volts(high, N, 120.0 + 52.6);
        shown.push(work.step());
        work.volts(M1, M2, 240.0);
        work.act(Action::PortableHeater { leg, on: false });
    }
    work.make_dead_outside();
    work.finds(&shown);
    work.act(close_panel());
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Utility }]);
    work.handed_on(Helper::Utility);
}

/// A sound neutral holds both legs where they were: 12.5 A over a hundredth of an ohm is an eighth of a volt.
#[test]
fn a_sound_neutral_holds() {
    let mut work = Work::at(&order(FaultId::F01, &[]));
    work.acts(arrive());
    work.act(open_panel());
    for leg in [Stab::One, Stab::Two] {
        let plugged = work.act(Action::PortableHeater { leg, on: true }).shown;
        let full = Sight::Portable { leg, glow: Glow::Full };
        assert_eq!(plugged, Shown::DoneWith { sights: vec![full] });
        work.volts(M1, N, 120.0);
        work.volts(M2, N, 120.0);
        work.act(Action::PortableHeater { leg, on: false });
    }
}

#[test]
fn the_utility_is_called() {
    perfect().handed_on(Helper::Utility);
}

#[test]
fn a_breaker_does_not() {
    assert_in_vain(&loose());
}
