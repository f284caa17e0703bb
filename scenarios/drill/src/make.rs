//! From an order to a drill: what is left to chance is drawn, the house is lived in, somebody calls.

use bench::{Hearsay, Job, Trap};
use plant::BoxKind;
use plant::climate::Climate;
use plant::fault::{FaultCase, FaultError, FaultId, Parameters};
use plant::home::{Home, Setting};
use plant::household::{self, HouseholdKind, Life, Week};
use quantity::Draw;
use serde::{Deserialize, Serialize};

use crate::handiwork;
use crate::house::{house, houses, others, setting};
use crate::order::{Order, OrderError, Wanted};
use crate::second::{self, Second};
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
    /// A second one beside it, where the order asked for one.
    pub second: Option<FaultCase>,
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
/// Other kinds of household tried where the first would never notice: each is a week to live through.
const OTHERS: usize = 3;
/// Makes the drill of an order. The same order gives the same drill everywhere and always.
pub fn make(order: &Order) -> Result<Drill, OrderError> {
    let lived = Lived::through(order)?;
    Drill::after(order, lived)
}

/// The household's days until it calls: the long part of making a drill, which another thread may compute.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Lived {
    /// The house as the technician finds it.
    pub home: Home,
    /// What the people lived through.
    pub week: Week,
}

impl Lived {
    /// Lives through them.
    pub fn through(order: &Order) -> Result<Self, OrderError> {
        order.check()?;
        let Settled { setting, fault, second } = settle(order)?;
        let life = Life::drawn(&mut Draw::new(u64::from(order.seed), "life"));
        let (home, week) = somebody_calls(order, setting, [Some(&fault), second.as_ref()], life);
        Ok(Self { home, week })
    }
}

impl Drill {
    /// The drill of an order after the days that its household lived through.
    pub fn after(order: &Order, Lived { home, week }: Lived) -> Result<Self, OrderError> {
        let Settled { fault, second, .. } = settle(order)?;
        let seed = u64::from(order.seed);
        let setting = home.setting;
        let job = Job {
            account: household::account(&week),
            home,
            licence: order.licence,
            mode: order.mode,
            traps: order.traps.clone(),
            hearsay: Hearsay::ALL[Draw::new(seed, "hearsay").index(Hearsay::ALL.len())],
            kit: bench::Kit::drawn(seed),
            starts_at: week.life.rings_at,
            weekday: week.weekday(),
            limit_minutes: order.limit_minutes.map(f64::from),
        };
        let title = Title::drawn(seed, setting.climate);
        Ok(Self { order: order.clone(), title, setting, fault, second, week, job })
    }

    /// Everything that is wrong, the first fault first.
    pub fn wrong(&self) -> impl Iterator<Item = &FaultCase> {
        std::iter::once(&self.fault).chain(&self.second)
    }

    /// Each thing that is wrong, with the other beside it where there are two.
    pub fn each_beside(&self) -> impl Iterator<Item = (&FaultCase, Option<&FaultCase>)> {
        std::iter::once((&self.fault, self.second.as_ref()))
            .chain(self.second.iter().map(|second| (second, Some(&self.fault))))
    }

    /// Whether one of these is what is wrong.
    pub fn has(&self, any: &[FaultId]) -> bool {
        self.wrong().any(|case| any.contains(&case.id))
    }
}

/// What an order settles.
#[derive(Clone, PartialEq, Debug)]
pub struct Settled {
    /// Equipment, people, place, day.
    pub setting: Setting,
    /// The fault with its numbers.
    pub fault: FaultCase,
    /// The second one, where the order asked for one.
    pub second: Option<FaultCase>,
}

/// What an order settles before anybody lives in the house: quick, and all that a list of drills needs.
pub fn settle(order: &Order) -> Result<Settled, OrderError> {
    let seed = u64::from(order.seed);
    let houses = houses(order, setting(order, 0));
    let none = Parameters::new();
    let given = |id: FaultId, given: &Parameters, home: &Home| -> Result<Settled, OrderError> {
        let fault = completed(seed, id, given, home)?;
        let second = order.second.map(|wanted| beside(order, wanted, home, &fault)).transpose()?;
        Ok(Settled { setting: home.setting, fault, second })
    };
    // What was left to chance gives way to what is asked for.
    let named = |id: FaultId, parameters: &Parameters| {
        // Of houses that fit, one that has what the numbers ask for.
        let keeps = |home: &&Home| {
            let mut placed = parameters.clone();
            plant::fault::place_in(&mut placed, home);
            placed == *parameters && fits(order, home, id)
        };
        if let Some(home) = houses.iter().find(keeps).or_else(|| takes(order, &houses, id)) {
            return given(id, parameters, home);
        }
        let elsewhere = || others(order).flatten().find(|home| fits(order, home, id));
        let home = if wished(order, id) { elsewhere() } else { None };
        given(id, parameters, &home.ok_or(FaultError::DoesNotFit { id })?)
    };
    let by_chance = |houses: &[Home]| {
        let weight = |id: FaultId| takes(order, houses, id).map_or(0.0, |_| id.fault().weight.get());
        by_weight(FaultId::ALL, weight, &mut Draw::new(seed, "fault"), |id| {
            given(id, &none, takes(order, houses, id).ok_or(FaultError::DoesNotFit { id })?)
        })
    };
    match &order.fault {
        Wanted::One(id) => named(*id, &none),
        Wanted::Case(case) => named(case.id, &case.parameters),
        Wanted::List(list) => {
            let weight = |id: FaultId| if wished(order, id) { 1.0 } else { 0.0 };
            by_weight(list, weight, &mut Draw::new(seed, "fault"), |id| named(id, &none))
        }
        Wanted::Chance => match by_chance(&houses) {
            Err(OrderError::NothingFits) => others(order)
                .map(|houses| by_chance(&houses))
                .find(|dealt| *dealt != Err(OrderError::NothingFits))
                .unwrap_or(Err(OrderError::NothingFits)),
            dealt => dealt,
        },
    }
}

/// One of a list by weight. One that can be nowhere, or beside which no second fault of the kind asked for can be, is put
/// back, and another drawn.
fn by_weight(
    list: &[FaultId],
    weight: impl Fn(FaultId) -> f64,
    draw: &mut Draw,
    given: impl Fn(FaultId) -> Result<Settled, OrderError>,
) -> Result<Settled, OrderError> {
    let mut weights: Vec<f64> = list.iter().map(|id| weight(*id)).collect();
    let mut refused = OrderError::NothingFits;
    while weights.iter().sum::<f64>() > 0.0 {
        let index = draw.weighted(&weights);
        let (Some(id), Some(left)) = (list.get(index), weights.get_mut(index)) else { break };
        match given(*id) {
            Err(OrderError::NoSecond) => (refused, *left) = (OrderError::NoSecond, 0.0),
            Err(OrderError::Fault(FaultError::DoesNotFit { .. })) => *left = 0.0,
            settled => return settled,
        }
    }
    Err(refused)
}

/// The second fault of a house: of what the order wants, what goes with the first, by prior weight. Both are within the
/// learner's licence: where one is somebody else's work the call ends there.
fn beside(order: &Order, wanted: Second, home: &Home, first: &FaultCase) -> Result<FaultCase, OrderError> {
    let seed = u64::from(order.seed);
    let own = |case: &FaultCase| crate::licence::covers(order.licence, case.id.scope(&case.parameters));
    let asked = |id: &FaultId| match wanted {
        Second::Any => true,
        Second::Follows => second::follows(first.id, *id),
        Second::One(one) => *id == one,
    };
    let there = |id: FaultId| {
        completed(seed, id, &Parameters::new(), home)
            .ok()
            .filter(|case| own(case) && can_be(order, home, id) && second::go_together(home, first, case))
    };
    if !own(first) {
        return Err(OrderError::NoSecond);
    }
    let cases: Vec<FaultCase> =
        FaultId::ALL.iter().filter(|id| asked(id)).filter_map(|id| there(*id)).collect();
    let weights: Vec<f64> = cases.iter().map(|case| case.id.fault().weight.get()).collect();
    if cases.is_empty() {
        return Err(OrderError::NoSecond);
    }
    cases.get(Draw::new(seed, "second").weighted(&weights)).cloned().ok_or(OrderError::NoSecond)
}

/// A fault with its numbers in a house: those given, and the others drawn.
fn completed(seed: u64, id: FaultId, given: &Parameters, home: &Home) -> Result<FaultCase, FaultError> {
    let mut parameters = id.fault().complete(given, &mut numbers(seed, id))?;
    plant::fault::place_in(&mut parameters, home);
    Ok(FaultCase { id, parameters })
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

/// The first of these houses that a fault fits.
fn takes<'a>(order: &Order, houses: &'a [Home], id: FaultId) -> Option<&'a Home> {
    houses.iter().find(|home| fits(order, home, id))
}

/// A fault is wished for, fits a house, and shows in it alone. A second supply carries the heater past a dead breaker or splice.
fn fits(order: &Order, home: &Home, id: FaultId) -> bool {
    can_be(order, home, id) && wished(order, id)
}

/// A fault can be in a house, and shows in it.
fn can_be(order: &Order, home: &Home, id: FaultId) -> bool {
    let hidden = order.traps.contains(&Trap::SecondSource) && BEHIND_A_SECOND.contains(&id);
    let melts = home.setting.in_line == Some(BoxKind::FusedSwitch) && MELTS_A_FUSE.contains(&id);
    (id.fault().fits)(home) && !hidden && !melts
}

/// Lives in the house until somebody calls. Where these people would never notice, and the order leaves open
/// who they are, the next kind of household lives there instead; only if none would notice do the first ones
/// call without a complaint.
fn somebody_calls(
    order: &Order,
    setting: Setting,
    wrong: [Option<&FaultCase>; 2],
    life: Life,
) -> (Home, Week) {
    let lived = |household| {
        let mut home = house(order, Setting { household, ..setting });
        handiwork::lay(order, wrong, &mut home);
        let sound = home.clone();
        for fault in wrong.into_iter().flatten() {
            (fault.id.fault().apply)(&fault.parameters, &mut home);
        }
        // Where there are two, people who put an end to one of them leave half a drill.
        let of_two = wrong.into_iter().flatten().filter(|_| wrong.iter().all(Option::is_some));
        let ended = |lived: &Home| {
            lived.inspect().is_empty() || of_two.clone().any(|case| second::is_gone(&sound, case, lived))
        };
        live(home, life, u64::from(order.seed), ended)
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
fn live(home: Home, life: Life, seed: u64, ended: impl Fn(&Home) -> bool) -> (Home, Week) {
    let mut lived = home.clone();
    let week = household::week(&mut lived, life, &mut Draw::new(seed, "draws"), LONGEST_DAYS);
    let meddled = week.closed_again > 0 || week.button_pushes > 0;
    if !meddled || !ended(&lived) {
        return (lived, week);
    }
    let mut lived = home;
    let week = household::week(&mut lived, life.hands_off(), &mut Draw::new(seed, "draws"), LONGEST_DAYS);
    (lived, week)
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use bench::Mode;
    use plant::{Circuit, HeaterModel};

    use super::*;
    use crate::house::DEALT;

    #[test]
    fn chance_follows_the_weights() {
        let mut seen: BTreeMap<FaultId, [f64; 2]> = BTreeMap::new();
        for seed in 0..5000 {
            let order = Order { heater: Some(HeaterModel::Plain40), ..Order::chance(seed, Mode::Solo) };
            // Those of other heaters and other seasons stay away.
            let houses = houses(&order, setting(&order, 0));
            let here = |id: &&FaultId| houses.iter().any(|home| fits(&order, home, **id));
            let weight = |id: &FaultId| id.fault().weight.get();
            let total: f64 = FaultId::ALL.iter().filter(here).map(weight).sum();
            for id in FaultId::ALL.iter().filter(here) {
                seen.entry(*id).or_default()[1] += weight(id) / total;
            }
            let drawn = settle(&order).unwrap().fault.id;
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
        // Any heater can have each of them.
        let list = vec![FaultId::F50, FaultId::F54, FaultId::F56];
        let mut seen: BTreeMap<String, u32> = BTreeMap::new();
        for seed in 0..3000 {
            let order = Order { fault: Wanted::List(list.clone()), ..Order::chance(seed, Mode::Solo) };
            let Settled { setting, fault, .. } = settle(&order).unwrap();
            // Who lives on 277 V is drawn from fewer.
            let people = setting.heater != HeaterModel::Tall50At277;
            let names = [fault.id.name(), setting.heater.name(), setting.climate.name()];
            for name in names.into_iter().chain(people.then(|| setting.household.name())) {
                *seen.entry(name.to_owned()).or_default() += 1;
            }
        }
        let people: u32 = HouseholdKind::ALL.iter().map(|one| seen[one.name()]).sum();
        assert_eq!(seen.len(), 3 + DEALT.len() + HouseholdKind::ALL.len() + Climate::ALL.len());
        for (name, count) in seen {
            let (of, kinds) = match () {
                () if name.starts_with('F') => (3000, 3),
                () if name.parse::<HeaterModel>().is_ok() => (3000, DEALT.len()),
                () if name.parse::<HouseholdKind>().is_ok() => (people, HouseholdKind::ALL.len()),
                () => (3000, Climate::ALL.len()),
            };
            let expected = f64::from(of) / kinds as f64;
            assert!((f64::from(count) - expected).abs() < 4.0 * f64::sqrt(expected), "{name} {count}");
        }
    }

    #[test]
    fn wishes_are_kept_among_what_fits() {
        use crate::wish::{Family, Level, alike, level};
        for seed in 0..300 {
            let chance = Order::chance(seed, Mode::Solo);
            for wanted in Level::ALL {
                let id = settle(&Order { level: Some(wanted), ..chance.clone() }).unwrap().fault.id;
                assert_eq!(level(id), wanted);
            }
            for family in Family::ALL {
                let id = settle(&Order { family: Some(family), ..chance.clone() }).unwrap().fault.id;
                assert_eq!(Family::of(id), Some(family));
            }
            // In a house that can have none of them another is drawn; where nothing is left to draw it is refused in words.
            let like = Order { like: Some(FaultId::F10), ..chance.clone() };
            let id = settle(&like).unwrap().fault.id;
            assert!(alike(FaultId::F10).contains(&id) && id != FaultId::F10);
            let boards = Wanted::List(vec![FaultId::F60, FaultId::F61]);
            let single = settle(&Order { heater: Some(HeaterModel::Small20), fault: boards, ..chance });
            assert_eq!(single.unwrap_err(), OrderError::NothingFits);
        }
    }

    /// Whoever reads a code gets the drill of whoever wrote it, and the next seed deals another.
    #[test]
    fn a_code_gives_the_same_drill() {
        use crate::wish::Level;
        for seed in 0..8 {
            let hard = seed % 2 == 0;
            let order = Order {
                traps: hard.then_some(Trap::GhostVolts).into_iter().collect(),
                level: hard.then_some(Level::Hard),
                second: (!hard).then_some(Second::Any),
                ..Order::chance(seed, Mode::Solo)
            };
            let read = crate::code::decode(&crate::code::encode(&order).unwrap()).unwrap();
            let (made, dealt) = (make(&order).unwrap(), make(&read).unwrap());
            assert_eq!(dealt, made, "seed {seed}");
            let next = make(&Order { seed: seed + 100, ..order }).unwrap();
            assert!(next.title != made.title && next.job != made.job, "seed {seed}");
        }
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
            let mut plant = house(&order, setting(&order, 0)).plant;
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
