//! What the generator deals against what was asked of it: chance by prior weight among what fits, a list evenly,
//! houses and people by their shares; a code reads back, and hardly two seeds deal the same.
#![allow(clippy::unwrap_used, clippy::print_stdout, clippy::indexing_slicing, reason = "a test")]
#![allow(clippy::disallowed_methods, reason = "logarithms of a check, not of the world")]

mod alike;
mod bytes;
mod chi_square;
mod first_look;
mod trips;

use std::collections::{BTreeMap, BTreeSet};

use bench::Mode;
use drill::{DEALT, Order, Wanted, code};
use plant::climate::Climate;
use plant::fault::FaultId;
use plant::home::{Home, Setting};
use plant::household::HouseholdKind;
use plant::{BoxKind, HeaterModel, ServiceKind};
use quantity::Digest;

use chi_square::Chi;

/// Less than this and chance alone is no explanation. The draws are seeded: a run is the same every time.
const LEAST: f64 = 0.001;

/// Faults that fit a house with some box in its line or none: the catalogue's own word, not the generator's.
fn fitting(setting: Setting) -> Vec<FaultId> {
    let boxes = [None].into_iter().chain(BoxKind::ALL.iter().copied().map(Some));
    let houses: Vec<Home> = boxes.map(|in_line| Home::sound(Setting { in_line, ..setting })).collect();
    let fits = |id: &FaultId| houses.iter().any(|home| (id.fault().fits)(home));
    FaultId::ALL.iter().copied().filter(fits).collect()
}

/// Counts and expectations of faults in one heater: seasons and places decide what can be there too.
type Table = BTreeMap<FaultId, (f64, f64)>;

/// One fault dealt among those it could have been, each as likely as its share.
fn enter(table: &mut Table, dealt: FaultId, among: &[FaultId], share: impl Fn(FaultId) -> f64) {
    assert!(among.contains(&dealt), "{dealt} cannot be in this house");
    let total: f64 = among.iter().map(|id| share(*id)).sum();
    for id in among {
        table.entry(*id).or_default().1 += share(*id) / total;
    }
    table.entry(dealt).or_default().0 += 1.0;
}

fn together(tables: &BTreeMap<HeaterModel, Table>) -> Chi {
    tables.values().map(|table| Chi::table(table.values().copied())).fold(Chi::default(), Chi::and)
}

fn told(what: &str, chi: &Chi) {
    println!(
        "{what}: chi-square {:.1} on {} degrees of freedom, p = {:.3}",
        chi.statistic,
        chi.freedom,
        chi.p()
    );
    assert!(chi.p() > LEAST, "{what}: {} on {}, p = {}", chi.statistic, chi.freedom, chi.p());
}

fn even<T: Copy + Ord>(all: &[T], counted: &BTreeMap<T, f64>) -> Chi {
    let total: f64 = counted.values().sum();
    let expected = total / all.len() as f64;
    assert!(counted.keys().all(|k| all.contains(k)));
    Chi::table(all.iter().map(|k| (counted.get(k).copied().unwrap_or(0.0), expected)))
}

/// Everything left to chance: faults by weight in each heater, heaters, people, places and days evenly.
fn chance(orders: u32) {
    let mut faults: BTreeMap<HeaterModel, Table> = BTreeMap::new();
    let mut heaters = BTreeMap::new();
    let (mut places, mut seasons) = (BTreeMap::new(), BTreeMap::new());
    // Who lives there and what was dealt; on 277 V by itself.
    let mut dealt = [(); 2].map(|()| (BTreeMap::new(), BTreeSet::new()));
    for seed in 0..orders {
        let order = Order::chance(seed, Mode::Solo);
        let drill::Settled { setting, fault, .. } = drill::settle(&order).unwrap();
        let weight = |id: FaultId| id.fault().weight.get();
        let mut among = fitting(setting);
        // Chance deals nothing that the first look names.
        among.retain(|id| !drill::wish::given_away(*id));
        enter(faults.entry(setting.heater).or_default(), fault.id, &among, weight);
        *heaters.entry(setting.heater).or_default() += 1.0;
        let service = setting.heater.plate().supply();
        let (people, drills) = &mut dealt[usize::from(service == ServiceKind::Wye277)];
        *people.entry(setting.household).or_default() += 1.0;
        *places.entry(setting.climate).or_default() += 1.0;
        *seasons.entry((setting.day - 1) / 73).or_default() += 1.0;
        let code = code::encode(&order).unwrap();
        let read = code::decode(&code).unwrap();
        assert_eq!(read, order, "{code}");
        drills.insert(Digest::of(&serde_json::to_vec(&(setting, &fault)).unwrap()));
    }
    // Codes carry the seed and differ by that alone. What may coincide is what two seeds deal: a fault without numbers in a
    // house like another, on the same day; there are more of them on 277 V, with two kinds of people.
    for (people, drills) in &dealt {
        let all = people.values().sum::<f64>() as usize;
        let again = all - drills.len();
        println!("{again} of {all} deal a house, its people and a fault that another seed dealt");
        assert!(again < orders as usize / 1000, "{again} drills dealt twice");
    }
    told("faults by weight in each heater", &together(&faults));
    told("heaters evenly", &even(DEALT, &heaters));
    told("households evenly", &even(HouseholdKind::ALL, &dealt[0].0));
    // No family lives on 277 V.
    let usual = [HouseholdKind::Rooms, HouseholdKind::SmallLaundry];
    told("households on 277 V evenly", &even(&usual, &dealt[1].0));
    told("places evenly", &even(Climate::ALL, &places));
    told("fifths of the year evenly", &even(&[0, 1, 2, 3, 4], &seasons));
}

/// A named list: each of it as likely as the others, those that only a season or one heater has among them.
fn listed(orders: u32) {
    let rare = [FaultId::F42, FaultId::F53, FaultId::F63, FaultId::F65];
    let list: Vec<FaultId> = FaultId::ALL.iter().copied().step_by(5).chain(rare).collect();
    let mut counted: BTreeMap<FaultId, f64> = BTreeMap::new();
    for seed in 0..orders {
        let order = Order { fault: Wanted::List(list.clone()), ..Order::chance(seed, Mode::Solo) };
        *counted.entry(drill::settle(&order).unwrap().fault.id).or_default() += 1.0;
    }
    told("a named list evenly", &even(&list, &counted));
}

/// Whatever is asked for by name is dealt: heater, place and day give way to it where they were left to chance, and what
/// was asked for besides stands.
#[test]
fn what_is_asked_for_by_name_is_dealt() {
    for (&id, seed) in FaultId::ALL.iter().flat_map(|id| (0..20).map(move |seed| (id, seed))) {
        let order = Order { fault: Wanted::One(id), ..Order::chance(seed, Mode::Solo) };
        let settled = drill::settle(&order).unwrap_or_else(|error| panic!("{id}, seed {seed}: {error}"));
        assert_eq!(settled.fault.id, id);
        // In its house again, asked for with it, it is the same fault.
        let drill::Settled { setting, fault, .. } = settled;
        let (heater, household) = (Some(setting.heater), Some(setting.household));
        let (climate, day) = (Some(setting.climate), Some(setting.day));
        let there = drill::settle(&Order { heater, household, climate, day, ..order }).unwrap();
        assert_eq!((there.setting.day, there.fault.id), (setting.day, fault.id));
    }
    let summer = Order { fault: Wanted::One(FaultId::F63), day: Some(200), ..Order::chance(3, Mode::Solo) };
    assert!(drill::settle(&summer).is_err(), "it freezes in summer");
    let plain = Order {
        heater: Some(HeaterModel::Plain40),
        fault: Wanted::One(FaultId::F60),
        ..Order::chance(3, Mode::Solo)
    };
    assert!(drill::settle(&plain).is_err(), "a snap thermostat with a board's sensor");
}

/// `cargo test -p tankwright-tests --test dealing -- --nocapture` tells the figures.
#[test]
fn a_hundred_thousand_orders_are_dealt_as_asked() {
    chance(100_000);
    listed(100_000);
}

/// A family asked for by name gets no heater of 277 V by chance; both asked for stand together.
#[test]
fn no_family_is_dealt_277_volts() {
    let family = |seed| Order { household: Some(HouseholdKind::Family), ..Order::chance(seed, Mode::Solo) };
    let heaters: BTreeSet<HeaterModel> =
        (0..500).map(|seed| drill::settle(&family(seed)).unwrap().setting.heater).collect();
    assert_eq!(heaters.len(), DEALT.len() - 1);
    assert!(!heaters.contains(&HeaterModel::Tall50At277));
    let asked = Order { heater: Some(HeaterModel::Tall50At277), ..family(1) };
    let setting = drill::settle(&asked).unwrap().setting;
    assert_eq!((setting.heater, setting.household), (HeaterModel::Tall50At277, HouseholdKind::Family));
}

/// A count that is off is noticed: the test can fail.
#[test]
fn a_crooked_deal_is_noticed() {
    let mut counted: BTreeMap<u32, f64> = (0..10).map(|k| (k, 100.0)).collect();
    assert!(even(&(0..10).collect::<Vec<_>>(), &counted).p() > 0.99);
    counted.insert(3, 160.0);
    assert!(even(&(0..10).collect::<Vec<_>>(), &counted).p() < LEAST);
}
