//! Numeric check cases of the trade sheet, section 12, that belong to the electrical side.

use super::*;
use crate::Level;
use crate::heater::Rating;
use Screw::*;
use quantity::Watts;

fn rated(watts: f64, volts: f64) -> Rating {
    Rating { watts: Watts(watts), volts: Volts(volts) }
}

/// A plant with ideal contacts whose upper element carries another stamp and runs.
fn running(rating: Rating) -> Plant {
    let mut plant = ideal();
    blades(&mut plant, true, false);
    plant.elements[0] = Element::sound(rating);
    plant
}

/// Power and current of the upper element.
fn upper(plant: &Plant) -> (f64, f64) {
    let live = plant.energise(&[]);
    (live.element_watts(Level::Upper).get(), live.amps(Wire::UpperSwitched).get())
}

fn wye(plant: &mut Plant) {
    plant.service.kind = ServiceKind::Wye208;
}

/// Cases 1 and 2 (2.1, computed; 4500 W at 240 V published).
#[test]
fn cases_1_and_2_rated_resistance_and_current() {
    near(rated(4500.0, 240.0).resistance().get(), 12.80, 0.01);
    near(upper(&running(rated(4500.0, 240.0))).1, 18.75, 0.01);
    near(upper(&running(rated(5500.0, 240.0))).1, 22.92, 0.01);
}

/// Case 3 (2.4, computed): 4500 W at 240 V on 208 V.
#[test]
fn case_3_on_208_volts() {
    let mut plant = running(rated(4500.0, 240.0));
    wye(&mut plant);
    // Two legs of a 208Y/120 wye are 207.85 V apart; the table takes 208.
    plant.service.leg = Volts(208.0 / 3.0_f64.sqrt());
    let (watts, amps) = upper(&plant);
    near(watts, 3380.0, 1.0);
    near(amps, 16.25, 0.01);
    plant.elements[0] = Element::sound(rated(5500.0, 240.0));
    near(upper(&plant).0, 4131.0, 1.0);
}

/// Case 4 (2.4, published): the same on 120 V, between a leg and neutral.
#[test]
fn case_4_on_120_volts() {
    let mut plant = running(rated(4500.0, 240.0));
    plant.wiring.joint_mut(End { wire: Wire::CableB, side: 0 }).on = Some(N);
    let (watts, amps) = upper(&plant);
    near(watts, 1125.0, 0.5);
    near(amps, 9.38, 0.01);
}

/// Cases 5 and 6 and the rest of 2.4 (computed).
#[test]
fn cases_5_and_6_other_stamps_on_240_volts() {
    let (watts, amps) = upper(&running(rated(4500.0, 208.0)));
    near(watts, 5991.0, 2.0);
    near(amps, 24.96, 0.02);
    near(upper(&running(rated(5500.0, 250.0))).0, 5069.0, 2.0);
    near(upper(&running(rated(1500.0, 120.0))).0, 6000.0, 1.0);
    for (leg, watts) in [(114.0, 4061.0), (126.0, 4961.0), (138.5, 5994.0)] {
        let mut plant = running(rated(4500.0, 240.0));
        plant.service.leg = Volts(leg);
        near(upper(&plant).0, watts, 1.0);
    }
}

/// Case 7 (1.6, computed): leg 1 open, upper calling.
#[test]
fn case_7_back_feed() {
    let mut plant = stiff();
    blades(&mut plant, true, false);
    plant.panel.breakers[0].poles[0] = Contact::Open;
    near(reading(&plant, H1, H3, METER), 0.0, 0.5);
    near(reading(&plant, H1, G, METER), 120.0, 1.0);
    near(reading(&plant, H3, G, METER), 120.0, 1.0);
}

/// Case 8 (1.6, computed): satisfied.
#[test]
fn case_8_satisfied() {
    let mut plant = stiff();
    blades(&mut plant, false, false);
    near(reading(&plant, UEa, G, METER), 120.0, 1.0);
    near(reading(&plant, LEa, G, METER), 120.0, 1.0);
    near(reading(&plant, UEa, UEb, METER), 0.0, 0.1);
    near(reading(&plant, D1, D2, METER), 240.0, 1.0);
}

/// Case 9 (1.6, computed): full voltage across the open transfer contact needs the lower element.
#[test]
fn case_9_return_through_the_lower_element() {
    let mut plant = stiff();
    blades(&mut plant, true, true);
    near(reading(&plant, U1, U4, METER), 240.0, 1.0);
    plant.elements[1].open = true;
    assert!(reading(&plant, U1, U4, METER) < 111.0);
    assert!(reading(&plant, U1, U4, LOW) < 0.3);
}

/// Case 10 (1.6, computed): limit tripped.
#[test]
fn case_10_limit_tripped() {
    let mut plant = stiff();
    blades(&mut plant, true, true);
    plant.limit.tripped = true;
    near(reading(&plant, H2, H4, METER), 0.0, 0.1);
    near(reading(&plant, H1, H3, METER), 240.0, 1.0);
    assert!(reading(&plant, H1, H2, METER) < 111.0);
    assert!(reading(&plant, H1, H2, LOW) < 0.3);
}

/// Case 13 and 3.7 (computed): a joint of 1 Ω in a 4500 W circuit; 0.5 Ω drops 9 V and takes 163 W.
#[test]
fn case_13_loose_joint() {
    let end = End { wire: Wire::FeedA, side: 0 };
    let mut plant = running(rated(4500.0, 240.0));
    plant.wiring.joint_mut(end).resistance = Ohms(1.0);
    let live = plant.energise(&[]);
    near(live.amps(Wire::FeedA).get(), 17.39, 0.01);
    near(live.joint_watts(end).get(), 302.0, 1.0);
    plant.wiring.joint_mut(end).resistance = Ohms(0.5);
    let live = plant.energise(&[]);
    near(live.joint_watts(end).get(), 163.0, 1.0);
    near(live.volts(end.into(), Ja.into()).get(), 9.0, 0.1);
}

/// Case 14 (1.10, computed): lower fed from H2 directly, both elements run.
#[test]
fn case_14_simultaneous() {
    let mut plant = ideal();
    blades(&mut plant, true, true);
    plant.wiring.joint_mut(End { wire: Wire::Transfer, side: 0 }).on = Some(H2);
    let amps = plant.energise(&[]).leg_current(0);
    near(amps.get(), 37.5, 0.1);
    near(crate::branch::CONTINUOUS.get() * amps.get(), 46.9, 0.1);
    assert_eq!(crate::branch::fitted(amps).map(|fitted| fitted.get()), Some(50.0));
}

/// Trade sheet 1.8 (computed): 208 V between two legs of a wye, 120 V from each to ground.
#[test]
fn wye_is_208_between_legs() {
    let mut plant = plant();
    wye(&mut plant);
    blades(&mut plant, false, false);
    near(reading(&plant, H1, H3, METER), 207.8, 0.1);
    near(reading(&plant, H1, G, METER), 120.0, 0.1);
    near(reading(&plant, H3, G, METER), 120.0, 0.1);
}
