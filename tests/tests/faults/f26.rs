//! The timer in the line, or a relay of the utility's, keeps the heater off.
//! Trade sheet, section 9, F26: common practice, no source; volts upstream, none downstream.

use bench::{Action, Cover, Helper, Licence, Refusal, Shown, Sight};
use drill::Order;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::household::{Answer, Question};
use plant::{BoxKind, HeaterModel, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn timer(clock: f64) -> Order {
    let numbers = [("clock", clock), ("hours", 11.0)];
    Order { licence: Licence::Electrician, ..order(FaultId::F26, &numbers) }
}

fn door(off: bool) -> Action {
    Action::Cover { which: Cover::BoxDoor, off }
}

/// The box with its door off: lever, what the clock shows, the true time of day.
fn seen(work: &mut Work) -> (Option<bool>, f64, f64) {
    let sights = work.look(Place::InLineBox);
    let [Sight::Box { kind: BoxKind::Timer, closed, .. }, Sight::BoxHours { shows, .. }] = sights[..] else {
        panic!("{sights:?}")
    };
    let now = (work.drill.job.starts_at + work.session.clock).get() % 86_400.0;
    (closed, shows.get(), now)
}

pub fn perfect() -> Work {
    let mut work = Work::at(&timer(0.0));
    work.opens_up();
    let none = work.ghost(H1, H3);
    work.ghost(H1, Shell);
    work.act(door(true));
    let (closed, shows, now) = seen(&mut work);
    assert!(closed == Some(true) && (shows - now).abs() < 1.0, "its clock says on and is right");
    let line = work.volts(X1, X2, 240.0);
    let load = work.ghost(X3, X4);
    work.make_dead(&[X1, X2, X3, X4]);
    work.finds(&[none, line, load]);
    work.fits(PartKind::TimeSwitch);
    work.act(door(false));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn another_timer_cures() {
    perfect().cured();
}

/// Eleven hours slow: off from eight in the morning until four.
#[test]
fn a_clock_set_right_cures() {
    let mut work = Work::at(&timer(1.0));
    work.acts(arrive());
    work.act(door(true));
    let (closed, shows, now) = seen(&mut work);
    assert!((now - shows - 11.0 * 3600.0).abs() < 1.0);
    assert_eq!(closed, Some(false), "{} h", now / 3600.0);
    let looked = work.step();
    work.volts(X1, X2, 240.0);
    let load = work.ghost(X3, X4);
    work.finds(&[looked, load]);
    work.act(Action::SetClock);
    let (closed, shows, now) = seen(&mut work);
    assert!(closed == Some(true) && (shows - now).abs() < 1.0);
    work.act(door(false));
    work.draw(20.0);
    work.amps(plant::Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    work.amps(plant::Wire::FeedA, 0.0);
    work.acts(hand_over());
    work.cured();
}

/// A lever moved by hand holds until the hours move it back: it proves the wires behind it, and cures nothing.
#[test]
fn the_lever_is_no_cure() {
    let mut work = Work::at(&timer(1.0));
    work.acts(arrive());
    work.act(door(true));
    work.act(Action::BoxHandle { closed: true });
    work.volts(X3, X4, 240.0);
    let lock = work.session.step(&Action::BoxLock { on: true }).shown;
    assert_eq!(lock, bench::Shown::Refused { why: bench::Refusal::NoHasp }, "a control is no isolation");
    work.act(door(false));
    work.acts(hand_over());
    assert!(!work.verdict().cure.is_right());
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&timer(0.0));
}

/// A relay of the utility's: in the line of a plain heater, or in the off-peak cable of an off-peak one.
fn relay(heater: HeaterModel, clock: f64) -> Order {
    Order { heater: Some(heater), ..order(FaultId::F26, &[("clock", clock), ("utility", 1.0)]) }
}

/// The hours a tag tells, and what its clock shows, against the true time.
fn hours(work: &Work, sights: &[Sight]) -> (f64, f64) {
    let now = (work.drill.job.starts_at + work.session.clock).get() % 86_400.0;
    let found = sights.iter().find_map(|sight| match *sight {
        Sight::BoxHours { shows, off_from, off_for } => {
            assert!((shows.get() - now).abs() < 1.0, "its clock is right");
            Some((off_from.get() / 3600.0, off_for.get() / 3600.0))
        }
        _ => None,
    });
    let (from, long) = found.unwrap_or_else(|| panic!("{sights:?}"));
    let hour = now / 3600.0;
    assert!(hour < from || hour > from + long, "outside its hours: {hour}");
    (from, long)
}

/// A relay in the line whose contacts do not make, outside its hours: 240 V before it, none behind it. It is sealed, and
/// the utility is called; behind closed covers nothing has to be locked.
#[test]
fn the_utility_is_called_to_its_relay_in_the_line() {
    for (clock, flag) in [(0.0, true), (1.0, false)] {
        let mut work = Work::at(&relay(HeaterModel::Plain40, clock));
        assert!(work.session.home.plant.in_line.is_some_and(|one| one.kind == BoxKind::UtilityRelay));
        work.acts(arrive());
        work.act(door(true));
        let sights = work.look(Place::InLineBox);
        let face = Sight::Box { kind: BoxKind::UtilityRelay, closed: Some(flag), locked: false };
        assert!(sights.contains(&face), "{sights:?}");
        assert_eq!(hours(&work, &sights), (17.0, 3.0));
        let line = work.volts(X1, X2, 240.0);
        let load = work.ghost(X3, X4);
        work.ghost(Ja, Jb);
        for act in [Action::BoxHandle { closed: true }, Action::SetClock] {
            assert_eq!(work.session.step(&act).shown, Shown::Refused { why: Refusal::Sealed });
        }
        work.finds(&[line, load]);
        work.act(door(false));
        work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Utility }]);
        work.handed_on(Helper::Utility);
    }
}

/// The relay of an off-peak cable: the breaker's screws have 240 V, the splices behind the cable none, outside its hours;
/// the upper circuit is as it should be, and the people have hot water of the upper third only.
#[test]
fn the_utility_is_called_to_an_off_peak_relay() {
    for (clock, flag) in [(0.0, true), (1.0, false)] {
        let mut work = Work::at(&relay(HeaterModel::OffPeak80, clock));
        let asked = work.act(Action::Ask { question: Question::HowMuch }).shown;
        assert!(
            matches!(
                asked,
                Shown::Said { answer: Answer::HowMuch(plant::household::HowMuch::RunsOut { .. }) }
            ),
            "{asked:?}"
        );
        let known = work.act(Action::Ask { question: Question::OtherSupply }).shown;
        let knows = work.drill.week.life.knows_supply;
        assert_eq!(known, Shown::Said { answer: Answer::OtherSupply { known: knows } });
        let seen = work.look(Place::LoadCenter);
        assert!(seen.contains(&Sight::OffPeakRelay { closed: flag }), "{seen:?}");
        assert_eq!(hours(&work, &seen), (14.0, 6.0));
        work.acts(arrive());
        work.acts(open(plant::Level::Upper));
        work.acts(open(plant::Level::Lower));
        work.act(open_panel());
        let line = work.volts(S1, S2, 240.0);
        let load = work.ghost(Jc, Jd);
        work.ghost(H5, H7);
        work.volts(H1, H3, 240.0);
        work.amps(Wire::OffPeakFeedA, 0.0);
        work.finds(&[line, load]);
        work.act(close_panel());
        work.acts(close(plant::Level::Lower));
        work.acts(close(plant::Level::Upper));
        work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Utility }]);
        work.handed_on(Helper::Utility);
    }
}

/// An electrician is the wrong one to call: the relay is sealed and the utility's.
#[test]
fn an_electrician_is_the_wrong_one() {
    let mut work = Work::at(&relay(HeaterModel::OffPeak80, 0.0));
    work.acts([Action::TellResult, Action::StopAndCall { whom: Helper::Electrician }]);
    let cure = work.verdict().cure;
    assert_eq!(cure, drill::Cure::CalledAmiss { whom: Helper::Electrician, needed: Some(Helper::Utility) });
}
