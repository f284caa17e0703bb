//! A 240 V heater on a 208 V supply.
//! Trade sheet, section 9, F27: common practice, no source; 16.25 A and 75 % of 2.4 (computed).

use bench::{Action, NewPart, Shown, Writing};
use plant::Screw::{H1, H3, Ja, Jb, Jg, LEa, LEb, UEa, UEb};
use plant::fault::{Advice, FaultId};
use plant::heater::Rating;
use plant::{Level, Wire};
use quantity::{Volts, Watts};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Everything right but the supply: 208 V between the legs, 120 V each to ground, three quarters of the power.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F27, &[]));
    work.acts(arrive());
    let Shown::Plate { plate } = work.act(Action::Read { what: Writing::Plate }).shown else { panic!() };
    assert_eq!(plate.element.volts.get(), 240.0);
    work.draw(20.0);
    let volts = work.volts(Ja, Jb, 208.0);
    work.volts(Ja, Jg, 120.0);
    work.volts(Jb, Jg, 120.0);
    let amps = work.amps(Wire::FeedA, 16.25);
    // Cable and contacts take two per cent of it.
    near(&"watts", work.session.inside().watts.iter().map(|w| w.get()).sum(), 3380.0, 100.0);
    work.finds(&[volts, amps]);
    work.act(Action::Advise { advice: Advice::LowSupplyVoltage });
    work.act(Action::WaitForCutOut);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_words_end_it() {
    perfect().cured();
}

#[test]
fn an_element_like_the_old_one_does_not() {
    assert_in_vain(&order(FaultId::F27, &[]));
}

/// Trade sheet 2.1 (computed): 4500 W at 208 V takes 21.6 A.
#[test]
fn elements_made_for_the_supply_cure_too() {
    let mut work = Work::at(&order(FaultId::F27, &[]));
    work.opens_up();
    let volts = work.volts(H1, H3, 208.0);
    let stamp = work.act(Action::Read { what: Writing::StampUpper });
    assert!(matches!(stamp.shown, Shown::Stamp { rating, .. } if rating.volts.get() == 240.0));
    let stamped = work.step();
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.finds(&[volts, stamped]);
    work.acts(drain());
    let mut plate = work.session.home.plant.plate;
    plate.element = Rating { watts: Watts(4500.0), volts: Volts(208.0) };
    for level in [Level::Upper, Level::Lower] {
        work.act(Action::Replace { part: NewPart::asked_by(&plate, level) });
    }
    work.acts(refill());
    work.proves(21.6);
    work.acts(hand_over());
    work.cured();
}
