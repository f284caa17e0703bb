//! From an order to a drill: what is left to chance is drawn, the house is lived in, somebody calls.

use bench::{Job, Trap};
use plant::climate::Climate;
use plant::fault::{FaultCase, FaultId, Parameters};
use plant::home::{Home, Setting};
use plant::household::{self, HouseholdKind, Life, Week};
use plant::{BoxKind, Breaker, Circuit, HeaterModel, Installation, Location};
use quantity::{Amps, Draw, Metres};
use serde::{Deserialize, Serialize};

use crate::order::{Order, OrderError, Wanted};
use crate::wish::wished;

/// A drill, resolved: nothing in it is left to chance any more.
#[derive(Clone, PartialEq, Debug)]
pub struct Drill {
    /// What was asked for.
    pub order: Order,
    /// What it is called.
    pub title: Title,
    /// Equipment, people, place, day.
    pub setting: Setting,
    /// The fault with its numbers.
    pub fault: FaultCase,
    /// What the people lived through before they called.
    pub week: Week,
    /// What the technician finds.
    pub job: Job,
}

/// What a drill is called: an invented call to an invented address.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub struct Title {
    /// Number of the service call.
    pub call: u16,
    /// House number.
    pub house: u16,
    /// Index into [`STREETS`].
    pub street: u16,
    /// The town.
    pub town: Climate,
}

/// Streets of our invented towns; names are the same in every language.
pub const STREETS: [&str; 16] = [
    "Alder Court",
    "Birch Lane",
    "Cannery Row North",
    "Dovetail Street",
    "Elm Terrace",
    "Ferry Road",
    "Granary Lane",
    "Heron Way",
    "Ironbark Close",
    "Juniper Street",
    "Kiln Road",
    "Lantern Hill",
    "Meadow End",
    "Orchard Bend",
    "Quarry Street",
    "Willow Steps",
];

impl Title {
    fn drawn(seed: u64, town: Climate) -> Self {
        let mut draw = Draw::new(seed, "title");
        Self {
            call: 1 + draw.index(98) as u16,
            house: 1 + draw.index(140) as u16,
            street: draw.index(STREETS.len()) as u16,
            town,
        }
    }

    /// The street's name.
    pub fn street_name(&self) -> &'static str {
        STREETS.get(usize::from(self.street)).copied().unwrap_or("")
    }
}

/// Longest time a household puts up with trouble, in days.
const LONGEST_DAYS: u16 = 7;
/// Leg voltage of an ordinary evening, within the published service range (trade sheet 10.11: 5 %; drawn
/// well inside it).
const LEG_VOLTS: (f64, f64) = (118.0, 123.0);
/// What the house has on besides, of its usual resistance (invented).
const LOADS: (f64, f64) = (0.5, 2.0);
/// Cold resistance of a sound element over the nominal one (trade sheet 2.2: +5/-10 % of the wattage).
const TOLERANCE: (f64, f64) = (0.96, 1.08);
/// Other kinds of household tried where the first would never notice: each is a week to live through.
const OTHERS: usize = 3;
/// A cable beside a live one for its own length: bundled with it (model).
const GHOSTLY: Metres = Metres(10.0);

/// Makes the drill of an order. The same order gives the same drill everywhere and always.
pub fn make(order: &Order) -> Result<Drill, OrderError> {
    order.check()?;
    let (setting, fault) = settle(order)?;
    let seed = u64::from(order.seed);
    let life = Life::drawn(&mut Draw::new(seed, "life"));
    let (home, week) = somebody_calls(order, setting, &fault, life);
    let setting = home.setting;
    let job = Job {
        account: household::account(&week),
        home,
        licence: order.licence,
        mode: order.mode,
        traps: order.traps.clone(),
        kit: bench::Kit::drawn(seed),
        starts_at: life.rings_at,
        limit_minutes: order.limit_minutes.map(f64::from),
    };
    let title = Title::drawn(seed, setting.climate);
    Ok(Drill { order: order.clone(), title, setting, fault, week, job })
}

/// What an order settles before anybody lives in the house: quick, and all that a list of drills needs.
pub fn settle(order: &Order) -> Result<(Setting, FaultCase), OrderError> {
    let seed = u64::from(order.seed);
    let setting = setting(order);
    let houses = houses(order, setting);
    let takes = |id: FaultId| houses.iter().find(|home| fits(order, home, id));
    let given = |id: FaultId, given: &Parameters| -> Result<(Setting, FaultCase), OrderError> {
        let home = takes(id).ok_or(plant::fault::FaultError::DoesNotFit { id })?;
        let mut parameters = id.fault().complete(given, &mut numbers(seed, id))?;
        plant::fault::place_in(&mut parameters, home);
        Ok((home.setting, FaultCase { id, parameters }))
    };
    let none = Parameters::new();
    match &order.fault {
        Wanted::One(id) => given(*id, &none),
        Wanted::Case(case) => given(case.id, &case.parameters),
        Wanted::List(list) => {
            let fitting: Vec<FaultId> = list.iter().copied().filter(|id| takes(*id).is_some()).collect();
            let index = Draw::new(seed, "fault").index(fitting.len());
            given(*fitting.get(index).ok_or(OrderError::NothingFits)?, &none)
        }
        Wanted::Chance => {
            let weights: Vec<f64> = FaultId::ALL
                .iter()
                .map(|id| if takes(*id).is_some() { id.fault().weight.get() } else { 0.0 })
                .collect();
            let index = Draw::new(seed, "fault").weighted(&weights);
            given(*FaultId::ALL.get(index).ok_or(OrderError::NothingFits)?, &none)
        }
    }
}

/// Shares of houses that have a box in the line; the others have none. Invented: fused switches where the code asks for
/// a disconnect in sight, timers and the utility's relays in some streets.
const BOXES: [(BoxKind, f64); 3] =
    [(BoxKind::FusedSwitch, 0.08), (BoxKind::Timer, 0.03), (BoxKind::UtilityRelay, 0.03)];

/// Share of houses whose heater was changed for a bigger one on the old cable. Invented.
const TOO_THIN: f64 = 0.03;
/// By how many AWG numbers such a cable is too thin, and the thinnest there is (10 AWG asked for, 14 there).
const THINNER: u8 = 4;
const THINNEST: u8 = 14;

/// Shares of the places where heaters stand. Invented.
const LOCATIONS: [f64; Location::ALL.len()] = [0.35, 0.25, 0.25, 0.10, 0.05];

/// Where chance puts the heater: nowhere it would freeze.
fn drawn_location(seed: u64, climate: Climate) -> Location {
    let weights: Vec<f64> = Location::ALL
        .iter()
        .zip(LOCATIONS)
        .map(|(place, share)| if place.usual_in(climate) { share } else { 0.0 })
        .collect();
    Location::ALL.get(Draw::new(seed, "location").weighted(&weights)).copied().unwrap_or_default()
}

/// The box in the line that chance gives a house.
fn drawn_box(seed: u64) -> Option<BoxKind> {
    let none = 1.0 - BOXES.iter().map(|(_, share)| share).sum::<f64>();
    let weights: Vec<f64> = BOXES.iter().map(|(_, share)| *share).chain([none]).collect();
    BOXES.get(Draw::new(seed, "box in the line").weighted(&weights)).map(|(kind, _)| *kind)
}

/// The house as drawn; then the same with each other box in its line, for a fault that lives in one.
fn houses(order: &Order, setting: Setting) -> Vec<Home> {
    let others = [None].into_iter().chain(BoxKind::ALL.iter().copied().map(Some));
    let others = others.filter(|one| *one != setting.in_line);
    std::iter::once(setting.in_line)
        .chain(others)
        .map(|in_line| house(order, Setting { in_line, ..setting }))
        .collect()
}

/// The stream a fault's own numbers are drawn from; also used for what a suspect would look like.
pub(crate) fn numbers(seed: u64, id: FaultId) -> Draw {
    Draw::new(seed, &format!("numbers {id}"))
}

/// Faults of the main circuit that a second supply carries the heater past, or meets head on.
const BEHIND_A_SECOND: &[FaultId] = &[
    FaultId::F18,
    FaultId::F19,
    FaultId::F20,
    FaultId::F21,
    FaultId::F23,
    FaultId::F25,
    FaultId::F26,
    FaultId::F28,
    FaultId::F66,
    FaultId::F69,
];

/// Faults whose current melts a fuse in the line before anybody calls: a second thing broken, and work of another
/// licence.
const MELTS_A_FUSE: &[FaultId] = &[FaultId::F14, FaultId::F15, FaultId::F30];

/// A fault is wished for, fits a house, and shows in it alone. A second supply carries the heater past a dead breaker or splice.
fn fits(order: &Order, home: &Home, id: FaultId) -> bool {
    let hidden = order.traps.contains(&Trap::SecondSource) && BEHIND_A_SECOND.contains(&id);
    let melts = home.setting.in_line == Some(BoxKind::FusedSwitch) && MELTS_A_FUSE.contains(&id);
    (id.fault().fits)(home) && !hidden && !melts && wished(order, id)
}

/// The heaters dealt by chance and offered in the composer: all of them.
pub const DEALT: &[HeaterModel] = HeaterModel::ALL;

fn setting(order: &Order) -> Setting {
    let seed = u64::from(order.seed);
    let any = |purpose: &str, n: usize| Draw::new(seed, purpose).index(n);
    let pick = |all: &[HeaterModel]| all.get(any("heater", all.len())).copied();
    let climate = order
        .climate
        .or_else(|| Climate::ALL.get(any("climate", Climate::ALL.len())).copied())
        .unwrap_or(Climate::MillValley);
    Setting {
        heater: order.heater.or_else(|| pick(DEALT)).unwrap_or(HeaterModel::Plain40),
        household: order
            .household
            .or_else(|| HouseholdKind::ALL.get(any("household", HouseholdKind::ALL.len())).copied())
            .unwrap_or(HouseholdKind::Couple),
        climate,
        day: order.day.unwrap_or(1 + any("day", 365) as u16),
        in_line: drawn_box(seed),
        location: order.location.unwrap_or_else(|| drawn_location(seed, climate)),
    }
}

/// The sound house of an order, with its service, its elements' tolerances and its traps.
fn house(order: &Order, setting: Setting) -> Home {
    let seed = u64::from(order.seed);
    let mut home = Home::sound(setting);
    let drawn = Draw::new(seed, "service").between(LEG_VOLTS.0, LEG_VOLTS.1);
    // An order speaks of 120 V legs; those of another service stand in proportion.
    let nominal = home.plant.service.kind.leg();
    home.plant.service.leg =
        nominal * (order.leg_volts.unwrap_or(drawn) / plant::supply::LEG_120.get().get());
    let mut evening = Draw::new(seed, "loads");
    for load in home.plant.service.loads.each_mut() {
        *load = *load * evening.between(LOADS.0, LOADS.1);
    }
    let mut tolerance = Draw::new(seed, "tolerance");
    for element in &mut home.plant.elements {
        element.tolerance = tolerance.between(TOLERANCE.0, TOLERANCE.1);
    }
    if Draw::new(seed, "cable too thin").chance(TOO_THIN) {
        let thin = home.plant.wiring.conductor(home.plant.wiring.feeders()[0]).awg.saturating_add(THINNER);
        home.plant.wiring.size(thin.min(THINNEST));
    }
    home.installation = Installation::drawn(&mut Draw::new(seed, "installation"), setting.location);
    for trap in &order.traps {
        lay(*trap, &mut home);
    }
    home
}

/// Lays the traps that live in the house; the others live in the kit and the people.
fn lay(trap: Trap, home: &mut Home) {
    let single = home.plant.wiring.hot_neutral;
    let breakers = &mut home.plant.panel.breakers;
    match trap {
        Trap::MislabelledBreaker => {
            for breaker in breakers {
                breaker.label = match breaker.label {
                    Circuit::Heater => Circuit::Dryer,
                    Circuit::Dryer => Circuit::Heater,
                    other => other,
                };
            }
        }
        // An off-peak heater's second circuit is one already: the directory calls it something else.
        Trap::SecondSource if home.plant.plate.layout == plant::Layout::OffPeak => {
            for breaker in breakers.iter_mut().filter(|b| b.feeds == Circuit::OffPeak) {
                breaker.label = Circuit::Range;
            }
        }
        Trap::SecondSource => {
            home.plant.wiring.second_source = true;
            let (feeds, rating) = (Circuit::SecondSource, Amps(30.0));
            // On one leg and the neutral only the leg comes from elsewhere.
            let fed = if single { Breaker::single(feeds, rating) } else { Breaker::sound(feeds, rating) };
            if !breakers.iter().any(|b| b.feeds == feeds) {
                // The directory never heard of it: an old circuit pressed into service.
                breakers.push(Breaker { label: Circuit::Range, ..fed });
            }
        }
        Trap::GhostVolts => home.plant.beside_live = GHOSTLY,
        Trap::BrokenLead | Trap::SomebodyResets | Trap::WornLead | Trap::WrongJack | Trap::WeakBattery => {}
    }
}

/// Lives in the house until somebody calls. Where these people would never notice, and the order leaves open
/// who they are, the next kind of household lives there instead; only if none would notice do the first ones
/// call without a complaint.
fn somebody_calls(order: &Order, setting: Setting, fault: &FaultCase, life: Life) -> (Home, Week) {
    let lived = |household| {
        let mut home = house(order, Setting { household, ..setting });
        (fault.id.fault().apply)(&fault.parameters, &mut home);
        live(home, life, u64::from(order.seed))
    };
    let first = lived(setting.household);
    if order.household.is_some() || household::complaint(&first.1).is_some() {
        return first;
    }
    let all = HouseholdKind::ALL;
    let others = all.iter().cycle().skip_while(|k| **k != setting.household).skip(1).take(OTHERS);
    others.map(|kind| lived(*kind)).find(|(_, week)| household::complaint(week).is_some()).unwrap_or(first)
}

/// Lives in the house. Where the people themselves put an end to the trouble nobody would call: then they
/// were of the kind that touches nothing.
fn live(home: Home, life: Life, seed: u64) -> (Home, Week) {
    let mut lived = home.clone();
    let week = household::week(&mut lived, life, &mut Draw::new(seed, "draws"), LONGEST_DAYS);
    let meddled = week.closed_again > 0 || week.button_pushes > 0;
    if !meddled || !lived.inspect().is_empty() {
        return (lived, week);
    }
    let mut lived = home;
    let week = household::week(&mut lived, life.hands_off(), &mut Draw::new(seed, "draws"), LONGEST_DAYS);
    (lived, week)
}

#[cfg(test)]
mod tests {
    use std::collections::{BTreeMap, BTreeSet};

    use bench::Mode;

    use super::*;

    #[test]
    fn chance_follows_the_weights() {
        let mut seen: BTreeMap<FaultId, [f64; 2]> = BTreeMap::new();
        for seed in 0..5000 {
            let order = Order { heater: Some(HeaterModel::Plain40), ..Order::chance(seed, Mode::Solo) };
            // Those of other heaters and other seasons stay away.
            let houses = houses(&order, setting(&order));
            let here = |id: &&FaultId| houses.iter().any(|home| fits(&order, home, **id));
            let weight = |id: &FaultId| id.fault().weight.get();
            let total: f64 = FaultId::ALL.iter().filter(here).map(weight).sum();
            for id in FaultId::ALL.iter().filter(here) {
                seen.entry(*id).or_default()[1] += weight(id) / total;
            }
            let drawn = settle(&order).unwrap().1.id;
            assert!(here(&&drawn), "{drawn} with seed {seed}");
            seen.entry(drawn).or_default()[0] += 1.0;
        }
        for (id, [found, expected]) in seen {
            // Four standard deviations of a count: one test in some thousands would fail by chance.
            assert!((found - expected).abs() < 4.0 * expected.sqrt(), "{id} {found} {expected}");
        }
    }

    #[test]
    fn lists_and_settings_are_even() {
        let list = vec![FaultId::F01, FaultId::F09, FaultId::F50];
        let mut seen: BTreeMap<String, u32> = BTreeMap::new();
        for seed in 0..3000 {
            let order = Order { fault: Wanted::List(list.clone()), ..Order::chance(seed, Mode::Solo) };
            let (setting, fault) = settle(&order).unwrap();
            for name in
                [fault.id.name(), setting.heater.name(), setting.household.name(), setting.climate.name()]
            {
                *seen.entry(name.to_owned()).or_default() += 1;
            }
        }
        assert_eq!(seen.len(), 3 + DEALT.len() + HouseholdKind::ALL.len() + Climate::ALL.len());
        for (name, count) in seen {
            let kinds = |name: &str| match () {
                () if name.starts_with('F') => 3,
                () if name.parse::<HeaterModel>().is_ok() => DEALT.len(),
                () if name.parse::<HouseholdKind>().is_ok() => HouseholdKind::ALL.len(),
                () => Climate::ALL.len(),
            };
            let expected = 3000.0 / kinds(&name) as f64;
            assert!((f64::from(count) - expected).abs() < 4.0 * f64::sqrt(expected), "{name} {count}");
        }
    }

    #[test]
    fn wishes_are_kept_among_what_fits() {
        use crate::wish::{Family, Level, alike, level};
        for seed in 0..300 {
            let chance = Order::chance(seed, Mode::Solo);
            for wanted in Level::ALL {
                let id = settle(&Order { level: Some(wanted), ..chance.clone() }).unwrap().1.id;
                assert_eq!(level(id), wanted);
            }
            for family in Family::ALL {
                // A wish that nothing in this house meets is refused in words.
                match settle(&Order { family: Some(family), ..chance.clone() }) {
                    Ok((_, fault)) => assert_eq!(Family::of(fault.id), Some(family)),
                    Err(error) => assert_eq!(error, OrderError::NothingFits),
                }
            }
            if let Ok((_, fault)) = settle(&Order { like: Some(FaultId::F10), ..chance }) {
                assert!(alike(FaultId::F10).contains(&fault.id) && fault.id != FaultId::F10);
            }
        }
    }

    #[test]
    fn every_seed_has_its_own_code() {
        let codes: BTreeSet<String> =
            (0..2000).map(|s| crate::code::encode(&Order::chance(s, Mode::Solo)).unwrap()).collect();
        assert_eq!(codes.len(), 2000);
    }

    #[test]
    fn what_cannot_be_is_refused() {
        let on_208 = Order {
            heater: Some(HeaterModel::Tall50At208),
            fault: Wanted::One(FaultId::F27),
            ..Order::chance(1, Mode::Solo)
        };
        assert!(matches!(make(&on_208), Err(OrderError::Fault(_))));
        let hidden = Order {
            fault: Wanted::List(vec![FaultId::F18, FaultId::F19]),
            traps: vec![Trap::SecondSource],
            ..Order::chance(1, Mode::Solo)
        };
        assert_eq!(make(&hidden).unwrap_err(), OrderError::NothingFits);
    }

    /// Whatever feeds a heater a second time keeps it live with its own breaker off; an off-peak circuit does so of
    /// itself, and the trap hides its name.
    #[test]
    fn a_second_source_is_one_in_every_heater() {
        use plant::{Handle, Screw};
        for &heater in HeaterModel::ALL {
            let order = Order {
                heater: Some(heater),
                fault: Wanted::One(FaultId::F37),
                traps: vec![Trap::SecondSource],
                ..Order::chance(3, Mode::Solo)
            };
            let mut plant = house(&order, setting(&order)).plant;
            let off_peak = plant.plate.layout == plant::Layout::OffPeak;
            let unnamed = plant
                .panel
                .breakers
                .iter()
                .any(|b| b.feeds_heater() && b.feeds != Circuit::Heater && b.label == Circuit::Range);
            assert!(unnamed, "{heater}");
            for breaker in plant.panel.breakers.iter_mut().filter(|b| b.feeds == Circuit::Heater) {
                breaker.handle = Handle::Off;
            }
            let at = if off_peak { Screw::H5 } else { Screw::H1 };
            let volts = plant.energise(&[]).volts(at.into(), Screw::Shell.into());
            assert!(volts.get() > 100.0, "{heater}: {volts:?}");
        }
    }

    #[test]
    fn a_drill_is_the_same_every_time_and_still_has_its_fault() {
        for seed in 0..6 {
            let order = Order::chance(seed, Mode::Solo);
            let drill = make(&order).unwrap();
            assert_eq!(make(&order).unwrap(), drill);
            assert!(!drill.job.home.inspect().is_empty(), "{}", drill.fault.id);
        }
    }
}
