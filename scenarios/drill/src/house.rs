//! The sound house of an order: what nobody asked for is drawn from the seed, and the traps are laid.

use bench::Trap;
use plant::climate::Climate;
use plant::home::{Home, Setting};
use plant::household::HouseholdKind;
use plant::{BoxKind, Breaker, Circuit, HeaterModel, Installation, Location};
use quantity::{Amps, Draw, Metres};

use crate::order::Order;

/// Leg voltage of an ordinary evening, within the published service range (trade sheet 10.11: 5 %; drawn
/// well inside it).
const LEG_VOLTS: (f64, f64) = (118.0, 123.0);
/// What the house has on besides, of its usual resistance (invented).
const LOADS: (f64, f64) = (0.5, 2.0);
/// Cold resistance of a sound element over the nominal one (trade sheet 2.2: +5/-10 % of the wattage).
const TOLERANCE: (f64, f64) = (0.96, 1.08);
/// A cable beside a live one for its own length: bundled with it (model).
const GHOSTLY: Metres = Metres(10.0);

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
fn drawn_location(mut draw: Draw, climate: Climate) -> Location {
    let weights: Vec<f64> = Location::ALL
        .iter()
        .zip(LOCATIONS)
        .map(|(place, share)| if place.usual_in(climate) { share } else { 0.0 })
        .collect();
    Location::ALL.get(draw.weighted(&weights)).copied().unwrap_or_default()
}

/// The box in the line that chance gives a house.
fn drawn_box(seed: u64) -> Option<BoxKind> {
    let none = 1.0 - BOXES.iter().map(|(_, share)| share).sum::<f64>();
    let weights: Vec<f64> = BOXES.iter().map(|(_, share)| *share).chain([none]).collect();
    BOXES.get(Draw::new(seed, "box in the line").weighted(&weights)).map(|(kind, _)| *kind)
}

/// How often what was left to chance is drawn again for a fault that was asked for by name: one that one house in twenty
/// can have is then refused once in five million orders.
const AGAIN: u32 = 300;

/// Other houses of an order, where what is asked for cannot be in the first: of another season, in another town, on another
/// heater, wherever that was left to chance. None where nothing was.
pub(crate) fn others(order: &Order) -> impl Iterator<Item = Vec<Home>> {
    let open = order.heater.is_none() || order.climate.is_none() || order.day.is_none();
    (1..=if open { AGAIN } else { 0 }).map(|again| houses(order, setting(order, again)))
}

/// The house as drawn; then the same with each other box in its line, for a fault that lives in one.
pub(crate) fn houses(order: &Order, setting: Setting) -> Vec<Home> {
    let others = [None].into_iter().chain(BoxKind::ALL.iter().copied().map(Some));
    let others = others.filter(|one| *one != setting.in_line);
    std::iter::once(setting.in_line)
        .chain(others)
        .map(|in_line| house(order, Setting { in_line, ..setting }))
        .collect()
}

/// The heaters dealt by chance and offered in the composer: all of them.
pub const DEALT: &[HeaterModel] = HeaterModel::ALL;

/// One of those that fit, each as likely.
fn drawn<T: Copy>(mut draw: Draw, all: &[T], fits: impl Fn(T) -> bool) -> Option<T> {
    let all: Vec<T> = all.iter().copied().filter(|one| fits(*one)).collect();
    all.get(draw.index(all.len())).copied()
}

/// Heater, people, place and day of an order, drawn where they were left to chance: first, or `again` and again.
pub(crate) fn setting(order: &Order, again: u32) -> Setting {
    let seed = u64::from(order.seed);
    let draw = |purpose: &str| match again {
        0 => Draw::new(seed, purpose),
        _ => Draw::new(seed, &format!("{purpose} {again}")),
    };
    let usual = |people: HouseholdKind, heater: HeaterModel| people.usual_on(heater.plate().supply());
    let heater = order.heater.unwrap_or_else(|| {
        let fits = |heater| order.household.is_none_or(|people| usual(people, heater));
        drawn(draw("heater"), DEALT, fits).unwrap_or(HeaterModel::Plain40)
    });
    let household = order.household.unwrap_or_else(|| {
        drawn(draw("household"), HouseholdKind::ALL, |people| usual(people, heater))
            .unwrap_or(HouseholdKind::Couple)
    });
    let climate = order
        .climate
        .unwrap_or_else(|| drawn(draw("climate"), Climate::ALL, |_| true).unwrap_or(Climate::MillValley));
    Setting {
        heater,
        household,
        climate,
        day: order.day.unwrap_or(1 + draw("day").index(365) as u16),
        in_line: drawn_box(seed),
        location: order.location.unwrap_or_else(|| drawn_location(draw("location"), climate)),
    }
}

/// The sound house of an order, with its service, its elements' tolerances and its traps.
pub(crate) fn house(order: &Order, setting: Setting) -> Home {
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
