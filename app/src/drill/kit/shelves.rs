//! The van's shelves: every part that has a place in this heater and house, with the ratings there are and its price.
//! The wrong one can be taken.

use bench::{Action, NewPart, Session, prices};
use plant::fault::PartKind;
use plant::heater::Rating;
use plant::{AnodeMetal, BoxKind, ElementLength, Layout, Level, Mount, Plant, Tap};
use quantity::{Amps, Pressure, Temperature, Volts, Volume, Watts};
use yew::prelude::*;

use crate::drill::call::spent;
use crate::drill::place::{Offer, Offers};
use crate::glossary::WordsHere;
use crate::said::use_units;
use crate::shell::{Choice, Choices};
use crate::store::World;
use crate::text;
use crate::units::Units;

/// Elements on the shelf: watts and volts.
const ELEMENTS: [(f64, f64); 9] = [
    (4500.0, 240.0),
    (3500.0, 240.0),
    (5500.0, 240.0),
    (3800.0, 240.0),
    (4500.0, 208.0),
    (3500.0, 208.0),
    (5500.0, 208.0),
    (4500.0, 277.0),
    (1500.0, 120.0),
];
/// Length and mount of most elements.
const AS_MOST: (ElementLength, Mount) = (ElementLength::Middle, Mount::ScrewIn);
/// Breakers and fuses, in amperes.
const AMPS: [f64; 7] = [30.0, 15.0, 20.0, 25.0, 35.0, 40.0, 50.0];
/// Relief valves, in psi.
const RELIEFS: [f64; 4] = [150.0, 75.0, 100.0, 125.0];
/// Regulators, in psi; mixing valves, in °F.
const REGULATORS: [f64; 4] = [55.0, 45.0, 65.0, 90.0];
const MIXED: [f64; 3] = [120.0, 110.0, 140.0];
/// Expansion tanks in gallons, charges in psi.
const TANKS: [f64; 3] = [2.0, 4.4, 8.0];
const CHARGES: [f64; 6] = [60.0, 40.0, 50.0, 70.0, 80.0, 20.0];
/// Heaters in gallons.
const HEATERS: [f64; 6] = [40.0, 20.0, 30.0, 50.0, 80.0, 120.0];

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The shelves.
#[component]
pub fn VanShelves(props: &Props) -> Html {
    let units = use_units();
    let built = use_state(|| AS_MOST);
    let offers = parts(&props.session, *built, units);
    let any = Action::Replace { part: NewPart::Limit };
    let caution = text::act_caution(&any).map(AttrValue::from);
    let exchange = exchange(units);
    html! {
        <div class="shelves">
            <p>{ spent(&props.session) }</p>
            <WordsHere texts={offers.iter().map(Offer::label).collect::<Vec<_>>()} />
            if let Some(caution) = &caution {
                <p class="warn">{ caution }</p>
            }
            { elements(&built, units) }
            <Offers {offers} />
            <Offers title={text::CHANGE_HEATER} offers={exchange} {caution} />
        </div>
    }
}

/// Everything that is on the shelves, the parts of the change of a heater last.
pub fn on_the_van(session: &Session, units: Units) -> Vec<Offer> {
    let mut all = parts(session, AS_MOST, units);
    all.extend(exchange(units));
    all
}

/// Each shelf as a list.
fn parts(session: &Session, built: (ElementLength, Mount), units: Units) -> Vec<Offer> {
    let plant = &session.home.plant;
    let all = shelves(plant, built);
    let shelf = |shelf: &[NewPart]| {
        let first = shelf.first()?;
        let name = text::fit(text::part_kind(first.kind()), plant.wiring.layout);
        let options = shelf.iter().map(|&part| (text::part_option(&part, units), Action::Replace { part }));
        let offer = Offer::choose(text::capital(&name), text::FIT, text::fit_part(&name), options);
        Some(offer.priced(prices::of(first)))
    };
    all.chunk_by(|a, b| a.kind() == b.kind()).filter_map(shelf).collect()
}

/// Length and mount, chosen once for every element on the shelves.
fn elements(built: &UseStateHandle<(ElementLength, Mount)>, units: Units) -> Html {
    let (length, mount) = **built;
    let lengths = ElementLength::ALL.iter().map(|one| (one.name(), text::text(&format!("kit-length-{one}"))));
    let mounts = Mount::ALL.iter().map(|one| (one.name(), text::say(units, |voice| voice.mount(*one))));
    let choices = |all: Vec<(&'static str, String)>| -> Vec<Choice> {
        all.into_iter().map(|(value, label)| Choice::new(value, label)).collect()
    };
    let onlength = {
        let built = built.clone();
        Callback::from(move |value: String| built.set((value.parse().unwrap_or(length), mount)))
    };
    let onmount = {
        let built = built.clone();
        Callback::from(move |value: String| built.set((length, value.parse().unwrap_or(mount))))
    };
    html! {
        <div class="chooser">
            <Choices label={text::LENGTH} choices={choices(lengths.collect())} chosen={length.name()} onchange={onlength} hook="element-length" />
            <Choices label={text::MOUNT} choices={choices(mounts.collect())} chosen={mount.name()} onchange={onmount} hook="element-mount" />
        </div>
    }
}

fn rating((watts, volts): (f64, f64)) -> Rating {
    Rating { watts: Watts(watts), volts: Volts(volts) }
}

/// Every part there is for such a heater in such a house, each kind together; elements of one length and mount.
fn shelves(plant: &Plant, (length, mount): (ElementLength, Mount)) -> Vec<NewPart> {
    let mut all = Vec::new();
    let layout = plant.wiring.layout;
    let levels = || Level::ALL.iter().copied().filter(|level| layout.has(*level));
    for level in levels() {
        for one in ELEMENTS {
            for seat_cleaned in [true, false] {
                all.push(NewPart::Element { level, rating: rating(one), length, mount, seat_cleaned });
            }
        }
    }
    for level in levels() {
        all.push(match layout {
            Layout::Electronic => NewPart::Sensor { level },
            _ => NewPart::Thermostat { level },
        });
    }
    if layout == Layout::Electronic {
        all.push(NewPart::Board);
    }
    all.push(NewPart::Limit);
    if plant.lower_limit.is_some() {
        all.push(NewPart::LowerLimit);
    }
    for a in AMPS {
        all.push(NewPart::Breaker { rating: Amps(a) });
    }
    match plant.in_line.map(|one| one.kind) {
        Some(BoxKind::FusedSwitch) => {
            for a in AMPS {
                all.push(NewPart::Fuse { rating: Amps(a) });
            }
        }
        Some(BoxKind::Timer) => all.push(NewPart::TimeSwitch),
        _ => {}
    }
    all.extend([NewPart::Connectors, NewPart::DipTube]);
    for &metal in AnodeMetal::ALL {
        all.push(NewPart::Anode { metal });
    }
    for p in REGULATORS {
        all.push(NewPart::Regulator { set: Pressure::psi(p) });
    }
    for t in MIXED {
        all.push(NewPart::MixingValve { set: Temperature::fahrenheit(t) });
    }
    for &tap in Tap::ALL {
        all.push(NewPart::Cartridge { tap });
    }
    all.extend([NewPart::DrainValve, NewPart::Nipples]);
    all.extend([NewPart::Connections, NewPart::HotLine]);
    all.push(NewPart::PipeClips);
    if plant.plumbing.recirculation.is_some() {
        all.extend([NewPart::ReturnCheck, NewPart::PumpTimer]);
    }
    for level in levels() {
        for seat_cleaned in [true, false] {
            all.push(NewPart::Gasket { level, seat_cleaned });
        }
    }
    for p in RELIEFS {
        all.push(NewPart::ReliefValve { opens_at: Pressure::psi(p) });
    }
    for v in TANKS {
        for p in CHARGES {
            all.push(NewPart::ExpansionTank { volume: Volume::gallons(v), charge: Pressure::psi(p) });
        }
    }
    all
}

/// Changing the whole heater, act by act.
fn exchange(units: Units) -> Vec<Offer> {
    let new = HEATERS.iter().flat_map(|&v| {
        ELEMENTS.map(|one| {
            let (nominal, rating) = (Volume::gallons(v), rating(one));
            (text::heater_option(nominal, rating, units), Action::SetHeater { nominal, rating })
        })
    });
    let heater = text::part_kind(PartKind::Heater);
    vec![
        Offer::plain(Action::PartPipes, text::PART_PIPES),
        Offer::plain(Action::CarryOut { helped: true }, text::CARRY_HELPED),
        Offer::plain(Action::CarryOut { helped: false }, text::CARRY_ALONE),
        Offer::plain(Action::JoinPipes { dielectric: true }, text::JOIN_DIELECTRIC),
        Offer::plain(Action::JoinPipes { dielectric: false }, text::JOIN_BARE),
        Offer::plain(Action::ReuseRelief, text::REUSE_RELIEF),
        Offer::choose(text::capital(&heater), text::FIT, text::fit_part(&heater), new)
            .priced(prices::heater()),
    ]
}

/// Every part on the shelves, elements of every length and mount.
#[cfg(test)]
pub fn every_part(session: &Session) -> Vec<NewPart> {
    let built =
        ElementLength::ALL.iter().flat_map(|length| Mount::ALL.iter().map(move |mount| (*length, *mount)));
    built.flat_map(|built| shelves(&session.home.plant, built)).collect()
}
