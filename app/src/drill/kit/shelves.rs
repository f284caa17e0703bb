//! The van's shelves: every part, with the ratings there are. The wrong one can be taken.

use bench::{Action, NewPart, Session};
use plant::fault::PartKind;
use plant::heater::Rating;
use plant::{AnodeMetal, ElementLength, Layout, Level, Mount, Tap};
use quantity::{Amps, Pressure, Temperature, Volts, Volume, Watts};
use yew::prelude::*;

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
const TANKS: [f64; 2] = [2.0, 4.4];
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
            <p>{ text::cost(props.session.me.cost) }</p>
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
    let layout = session.home.plant.wiring.layout;
    let shelf = |shelf: Vec<NewPart>| {
        let kind = shelf.first()?.kind();
        let options: Vec<_> =
            shelf.into_iter().map(|part| (option(&part, units), Action::Replace { part })).collect();
        let name = text::fit(text::part_kind(kind), layout);
        Some(Offer::choose(text::capital(&name), text::FIT, text::fit_part(&name), options))
    };
    shelves(layout, built).into_iter().filter_map(shelf).collect()
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

fn option(part: &NewPart, units: Units) -> String {
    text::part_option(part, units)
}

fn rating((watts, volts): (f64, f64)) -> Rating {
    Rating { watts: Watts(watts), volts: Volts(volts) }
}

/// Every part there is for a heater wired so, by shelf; elements of one length and mount.
fn shelves(layout: Layout, (length, mount): (ElementLength, Mount)) -> Vec<Vec<NewPart>> {
    let mut all = Vec::new();
    let levels = || Level::ALL.iter().copied().filter(|level| layout.has(*level));
    for level in levels() {
        all.push(
            ELEMENTS
                .iter()
                .flat_map(|&one| {
                    [true, false].map(|seat_cleaned| NewPart::Element {
                        level,
                        rating: rating(one),
                        length,
                        mount,
                        seat_cleaned,
                    })
                })
                .collect(),
        );
    }
    all.extend(levels().map(|level| vec![NewPart::Thermostat { level }]));
    all.push(vec![NewPart::Limit]);
    all.push(AMPS.iter().map(|&a| NewPart::Breaker { rating: Amps(a) }).collect());
    all.push(AMPS.iter().map(|&a| NewPart::Fuse { rating: Amps(a) }).collect());
    all.push(vec![NewPart::TimeSwitch]);
    all.push(vec![NewPart::Connectors]);
    all.push(vec![NewPart::DipTube]);
    all.push(AnodeMetal::ALL.iter().map(|&metal| NewPart::Anode { metal }).collect());
    all.extend(Level::ALL.iter().map(|&level| vec![NewPart::Sensor { level }]));
    all.push(vec![NewPart::Board]);
    all.push(REGULATORS.iter().map(|&p| NewPart::Regulator { set: Pressure::psi(p) }).collect());
    all.push(MIXED.iter().map(|&t| NewPart::MixingValve { set: Temperature::fahrenheit(t) }).collect());
    all.push(Tap::ALL.iter().map(|&tap| NewPart::Cartridge { tap }).collect());
    all.extend(
        [
            NewPart::DrainValve,
            NewPart::Nipples,
            NewPart::Connections,
            NewPart::HotLine,
            NewPart::PipeClips,
            NewPart::ReturnCheck,
            NewPart::PumpTimer,
        ]
        .map(|p| vec![p]),
    );
    for level in levels() {
        all.push([true, false].map(|seat_cleaned| NewPart::Gasket { level, seat_cleaned }).to_vec());
    }
    all.push(RELIEFS.iter().map(|&p| NewPart::ReliefValve { opens_at: Pressure::psi(p) }).collect());
    all.push(
        TANKS
            .iter()
            .flat_map(|&v| {
                CHARGES
                    .map(|p| NewPart::ExpansionTank { volume: Volume::gallons(v), charge: Pressure::psi(p) })
            })
            .collect(),
    );
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
        Offer::choose(text::capital(&heater), text::FIT, text::fit_part(&heater), new),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A heater stands among the acts of its change.
    #[test]
    fn every_kind_of_part_is_on_a_shelf() {
        for kind in PartKind::ALL.iter().filter(|kind| **kind != PartKind::Heater) {
            let all = shelves(Layout::NonSimultaneous, (ElementLength::Middle, Mount::ScrewIn));
            assert!(all.iter().flatten().any(|part| part.kind() == *kind), "{kind}");
        }
    }

    /// What each plate asks for can be taken, and one of another length and mount too.
    #[test]
    fn the_element_of_every_plate_is_on_a_shelf() {
        for &model in plant::HeaterModel::ALL {
            let plate = model.plate();
            let asked = NewPart::asked_by(&plate, Level::Upper);
            let on = |length, mount| shelves(plate.layout, (length, mount)).concat().contains(&asked);
            for (length, mount) in
                ElementLength::ALL.iter().flat_map(|l| Mount::ALL.iter().map(move |m| (*l, *m)))
            {
                assert_eq!(on(length, mount), (length, mount) == (plate.length, plate.mount), "{model}");
            }
        }
    }
}
