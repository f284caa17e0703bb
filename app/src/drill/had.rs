//! Whatever puts a fault right is to be had on the page, at every heater that is dealt: its part on the van's shelves,
//! its act at its place. And nothing is offered that has no place there.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use bench::{Action, Fact, Fitting, Job, Mode, NewPart, Refusal, Session, Shown};
use plant::fault::{FaultId, Parameters, PartKind, Remedy};
use plant::parts::Level;
use plant::{BoxKind, Circuit, End, HeaterModel, Home, Layout, Place, Setting, Stand, Tap};
use quantity::{Draw, Temperature};

use super::kit::{every_part, on_the_van};
use super::known::Known;
use super::meter::points_of;
use super::place::{Offer, groups, point_offers};
use crate::units::Units;

/// Sets of numbers drawn of each fault, besides the ends of their ranges.
const DRAWS: u64 = 2;
/// A call, for all that is not the house.
static CALL: LazyLock<Job> = LazyLock::new(crate::begin::example);

/// Every heater with each box in its line and with none.
fn settings() -> impl Iterator<Item = Setting> {
    let usual = CALL.home.setting;
    let boxes = [None].into_iter().chain(BoxKind::ALL.iter().copied().map(Some));
    let boxes: Vec<_> = boxes.collect();
    drill::DEALT.iter().flat_map(move |&heater| {
        boxes.clone().into_iter().map(move |in_line| Setting { heater, in_line, ..usual })
    })
}

/// A call at a house, everything open, dead and empty, so that nothing but the thing itself is in the way.
fn opened(home: Home) -> Session {
    let mut session = Session::begin(Job { home, mode: Mode::Solo, ..CALL.clone() });
    session.access.off.extend(diagnosis::COVERS);
    let plant = &mut session.home.plant;
    for breaker in &mut plant.panel.breakers {
        breaker.handle = plant::Handle::Off;
    }
    plant.plumbing.cold_valve = 0.0;
    plant.plumbing.main_valve = 0.0;
    plant.empty_vessel();
    session
}

/// The numbers that a fault is tried with.
fn numbers(id: FaultId) -> Vec<Parameters> {
    let fault = id.fault();
    let ends = [0.0, 1.0].map(|share: f64| {
        let at = |p: &plant::fault::Parameter| (p.name.to_owned(), p.low + share * (p.high - p.low));
        fault.parameters.iter().map(at).collect::<Parameters>()
    });
    let drawn =
        (0..DRAWS).map(|seed| fault.complete(&Parameters::new(), &mut Draw::new(seed, "had")).unwrap());
    ends.into_iter().chain(drawn).collect()
}

/// Each house of each heater with each fault that can be in it, and what puts that right.
fn cases(mut told: impl FnMut(Session, Remedy, &str)) -> usize {
    let mut count = 0;
    for (setting, &id) in settings().flat_map(|setting| FaultId::ALL.iter().map(move |id| (setting, id))) {
        for mut parameters in numbers(id) {
            let mut home = Home::sound(setting);
            plant::fault::place_in(&mut parameters, &home);
            // A box matters only to what can be in its house alone.
            let plain = Home::sound(Setting { in_line: None, ..setting });
            let fits = id.fault().fits;
            if !fits(&home) || (setting.in_line.is_some() && fits(&plain)) {
                continue;
            }
            (id.fault().apply)(&parameters, &mut home);
            let remedy = id.remedy(&parameters).unwrap();
            told(
                opened(home),
                remedy,
                &format!("{} {:?} {id} {parameters:?}", setting.heater, setting.in_line),
            );
            count += 1;
        }
    }
    count
}

/// The parts that a remedy asks for.
fn parts(remedy: Remedy) -> Vec<PartKind> {
    match remedy {
        Remedy::Replace(part) | Remedy::DryAndReplace(part) | Remedy::FlushAndReplace(part) => vec![part],
        Remedy::ReplaceAll(parts) => parts.to_vec(),
        _ => Vec::new(),
    }
}

/// Whether an act changes a part for one that puts it right and belongs there.
fn is_right(session: &Session, action: &Action) -> bool {
    let facts = bench::reduce(session, action).1.facts;
    facts.iter().any(|fact| matches!(fact, Fact::Changed { matches: true, needed: true, .. }))
}

/// An element of other watts never belongs there: it need not be tried.
fn may_be(session: &Session, part: &NewPart) -> bool {
    let watts = session.home.plant.plate.element.watts;
    !matches!(part, NewPart::Element { rating, .. } if rating.watts != watts)
}

/// All acts of some offers.
fn acts(offers: Vec<Offer>) -> Vec<Action> {
    offers
        .into_iter()
        .flat_map(|offer| match offer {
            Offer::Do { action, .. } => vec![action],
            Offer::All { first, then, .. } => std::iter::once(first).chain(then).collect(),
            Offer::Choose { options, .. } => options.into_iter().map(|(_, action)| action).collect(),
        })
        .collect()
}

/// All acts offered at the places.
fn at_places(session: &Session) -> Vec<Action> {
    let known = Known::of(session);
    let all = |place: &Place| groups(*place, session, &known, Units::Us).into_iter().flat_map(|g| g.offers);
    acts(Place::ALL.iter().filter(|place| super::place::is_there(session, **place)).flat_map(all).collect())
}

/// All acts offered at a wire's end.
fn at_end(session: &Session, end: End) -> Vec<Action> {
    acts(point_offers(session, end.into()))
}

#[test]
fn the_right_part_of_every_remedy_is_on_the_shelves_of_every_heater() {
    let mut asked = 0;
    let mut lacking = BTreeSet::new();
    let mut kinds = BTreeSet::new();
    let count = cases(|mut session, remedy, of| {
        kinds.extend(every_part(&session).iter().map(NewPart::kind));
        for kind in parts(remedy) {
            asked += 1;
            let shelves = match kind {
                PartKind::Heater => {
                    session.home.plant.plumbing.stand = Stand::Gone;
                    acts(on_the_van(&session, Units::Us))
                }
                _ => every_part(&session)
                    .into_iter()
                    .filter(|part| part.kind() == kind && may_be(&session, part))
                    .map(|part| Action::Replace { part })
                    .collect(),
            };
            if !shelves.iter().any(|action| is_right(&session, action)) {
                lacking.insert(format!("{of}: {kind}"));
            }
        }
    });
    assert!(asked > 1000 && count > asked, "{asked} of {count}");
    assert!(lacking.is_empty(), "{} lack: {lacking:#?}", lacking.len());
    // Somewhere there is a place for each. A heater stands among the acts of its change.
    for kind in PartKind::ALL.iter().filter(|kind| **kind != PartKind::Heater) {
        assert!(kinds.contains(kind), "{kind}");
    }
}

#[test]
fn the_act_of_every_remedy_is_offered_at_its_place_of_every_heater() {
    let safe = Temperature::fahrenheit(120.0);
    cases(|session, remedy, of| {
        let plant = &session.home.plant;
        let layout = plant.wiring.layout;
        let slot = plant.panel.slot_of(Circuit::Heater).unwrap() as u32;
        let breaker = |on| Action::Breaker { slot, on };
        let cold = Action::ColdValve { opening: 1.0 };
        let asked = match remedy {
            Remedy::Seat(level) => vec![Action::Seat { level }],
            Remedy::ResetLimit => vec![Action::PressReset],
            Remedy::CloseBreaker | Remedy::ClearBoard => vec![breaker(false), breaker(true)],
            Remedy::SetClock => vec![Action::SetClock],
            Remedy::MoveBreaker => vec![Action::MoveBreaker { slot }],
            Remedy::Relabel => (0..)
                .zip(&plant.panel.breakers)
                .filter(|(_, one)| one.label != one.feeds)
                .map(|(slot, one)| Action::Relabel { slot, feeds: one.feeds })
                .chain([breaker(true)])
                .collect(),
            Remedy::Vent => vec![Action::Ventilate, Action::Tap { tap: Tap::Kitchen, opening: 1.0 }],
            Remedy::ThawAndFill => vec![Action::Thaw, cold, breaker(true)],
            Remedy::SetDials => Level::ALL
                .iter()
                .filter(|level| layout.has(**level))
                .map(|&level| Action::Dial { level, to: safe })
                .collect(),
            Remedy::FlushAndReplace(_) => {
                vec![Action::Hose { on: true }, Action::Drain { opening: 1.0 }, cold]
            }
            Remedy::DryAndReplace(PartKind::UpperGasket) => {
                vec![Action::Wipe { fitting: Fitting::UpperElement }]
            }
            Remedy::DryAndReplace(_) => vec![Action::Wipe { fitting: Fitting::LowerElement }],
            // Parts are looked for on the shelves, wires at their ends, words and calls are always at hand.
            _ => Vec::new(),
        };
        let offered = at_places(&session);
        for act in asked {
            assert!(offered.contains(&act), "{of}: {act:?}");
        }
        let (Remedy::Land(ends) | Remedy::Remake(ends)) = remedy else { return };
        let here = |end: &&End| plant.wiring.exists(end.wire);
        let bad = |end: &End| plant.wiring.joint(*end);
        let ends: Vec<End> = ends
            .iter()
            .filter(here)
            .filter(|end| bad(end).on != Some(end.home()) || bad(end).charred || !bad(end).torqued)
            .copied()
            .collect();
        assert!(!ends.is_empty(), "{of}");
        for end in ends {
            assert!(points_of(&session, end.home().place()).contains(&end.into()), "{of}: {end}");
            let mut lifted = session.clone();
            lifted.home.plant.wiring.joint_mut(end).on = None;
            let land = Action::Land { end, screw: end.home(), torqued: true };
            let remake = Action::Remake { end, torqued: true };
            let (on, off) = (at_end(&session, end), at_end(&lifted, end));
            let whole = on.contains(&Action::Lift { end }) && on.contains(&remake) && off.contains(&land);
            assert!(whole, "{of}: {end}");
        }
    });
}

/// What each plate asks for can be taken, from the shelf of its own length and mount and from no other.
#[test]
fn the_element_of_every_plate_is_on_one_shelf() {
    for setting in settings() {
        let session = opened(Home::sound(setting));
        let asked = NewPart::asked_by(&session.home.plant.plate, Level::Upper);
        let on = every_part(&session).into_iter().filter(|part| *part == asked).count();
        assert_eq!(on, 1, "{}", setting.heater);
    }
}

/// What is offered may be of no use, and the world then says why; but nobody holds out a thing or an act that this
/// heater and this house have no place for at all.
#[test]
fn nothing_is_offered_that_has_no_place_at_this_heater() {
    for setting in settings() {
        let session = opened(Home::sound(setting));
        let of = format!("{} {:?}", setting.heater, setting.in_line);
        let parts = every_part(&session).into_iter().map(|part| Action::Replace { part });
        let ends = End::all().filter(|end| points_of(&session, end.home().place()).contains(&(*end).into()));
        let at_ends = ends.flat_map(|end| at_end(&session, end));
        for action in parts.chain(at_places(&session)).chain(at_ends) {
            let nowhere = bench::refusal(&session, &action) == Some(Refusal::NotHere);
            // Whether an expansion tank hangs there is for the eye to find.
            assert!(!nowhere || action == Action::TankCharge, "{of}: {action:?}");
        }
        let kinds: Vec<PartKind> = every_part(&session).iter().map(NewPart::kind).collect();
        let layout = session.home.plant.wiring.layout;
        assert_eq!(kinds.contains(&PartKind::LowerLimit), layout == Layout::OffPeak, "{of}");
        assert_eq!(kinds.contains(&PartKind::Board), layout == Layout::Electronic, "{of}");
        assert_eq!(kinds.contains(&PartKind::UpperThermostat), layout.has_thermostats(), "{of}");
    }
}

/// A part is called by what this heater takes, and each shelf says its price.
#[test]
fn the_shelves_name_what_the_trade_sells_for_this_heater_and_at_what_price() {
    let usual = CALL.home.setting;
    let shelves = |heater| {
        let session = opened(Home::sound(Setting { heater, ..usual }));
        crate::text::about(&session.home.plant);
        on_the_van(&session, Units::Us)
    };
    let says = |heater, name: &str| shelves(heater).iter().any(|one| one.label() == name);
    for (heater, breaker) in [
        (HeaterModel::Tall50At277, "Single-pole breaker"),
        (HeaterModel::Small20, "Single-pole breaker"),
        (HeaterModel::Plain40, "Two-pole breaker"),
        (HeaterModel::Tall50At208, "Two-pole breaker"),
    ] {
        assert!(says(heater, breaker), "{heater}");
    }
    assert!(
        says(HeaterModel::OffPeak80, "Upper high limit") && says(HeaterModel::OffPeak80, "Lower high limit")
    );
    assert!(says(HeaterModel::Plain40, "High limit") && !says(HeaterModel::Board50, "Upper thermostat"));
    for offer in drill::DEALT.iter().flat_map(|heater| shelves(*heater)) {
        if let Offer::Choose { label, price, .. } = offer {
            let dollars: f64 = price.trim_start_matches('$').parse().unwrap_or_default();
            assert!(price.starts_with('$') && dollars > 0.0, "{label}: {price}");
        }
    }
}

/// The name on the directory's line is one that this panel can bear.
#[test]
fn nobody_cooks_on_a_panel_of_277_volts() {
    let usual = CALL.home.setting;
    let reads = |heater, single| {
        let mut session = opened(Home::sound(Setting { heater, in_line: None, ..usual }));
        crate::text::about(&session.home.plant);
        assert_eq!(session.home.plant.panel.breakers[0].is_single(), single, "{heater}");
        let outcome = session.step(&Action::Read { what: bench::Writing::Directory });
        let Shown::Directory { .. } = &outcome.shown else { panic!("{heater}") };
        crate::text::say(Units::Us, |voice| voice.shown(&outcome.shown))
    };
    let shop = reads(HeaterModel::Tall50At277, true);
    assert_eq!(shop, "1: Lighting, 20 A; 2: Exhaust fan, 20 A; 3: Water heater, 25 A");
    for heater in [HeaterModel::Tall50At208, HeaterModel::Small20, HeaterModel::Plain40] {
        assert!(reads(heater, false).starts_with("1: Range, 50 A; 2: Dryer, 30 A; 3: Water heater"));
    }
}
