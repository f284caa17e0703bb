//! The whole drawing and its details, for every heater and in every state that eyes would see.

use plant::{BoxKind, Discharge, HeaterModel, Home, Level, Location, Place, Recirculation};
use yew::prelude::*;

use crate::store::World;

use super::stand::{Opened, Stand, call, frame, house, known};
use crate::drill::detail::{Detail, has_detail};
use crate::drill::sheet::Sheet;
use crate::drill::sticker::Sticker;

/// Everything that a heater has taken off, what can be read read.
pub const OPENED: &str = r#"[{"do":"tell-household"},{"do":"gloves","on":true},{"do":"eye-protection","on":true},
{"do":"breaker","slot":2,"on":false},{"do":"lock","slot":2,"on":true},{"do":"read","what":"plate"},{"do":"read","what":"directory"},
{"do":"cover","which":"panel-front","off":true},{"do":"cover","which":"box-door","off":true},{"do":"cover","which":"junction-box","off":true},
{"do":"cover","which":"upper","off":true},{"do":"cover","which":"upper-insulation","off":true},{"do":"cover","which":"upper-shield","off":true},
{"do":"cover","which":"lower","off":true},{"do":"cover","which":"lower-insulation","off":true},{"do":"cover","which":"lower-shield","off":true},
{"do":"look","at":"load-center"},{"do":"look","at":"heater-top"},{"do":"look","at":"relief"},{"do":"look","at":"drain"},
{"do":"look","at":"upper-compartment"},{"do":"look","at":"lower-compartment"},{"do":"read","what":"dials"}]"#;

/// What stands in the line before each heater of the gallery.
const fn box_of(model: HeaterModel) -> Option<BoxKind> {
    match model {
        HeaterModel::Short30 | HeaterModel::Tall50At277 => Some(BoxKind::FusedSwitch),
        HeaterModel::Wide80 => Some(BoxKind::Timer),
        HeaterModel::Both50 => Some(BoxKind::UtilityRelay),
        _ => None,
    }
}

fn sheet(caption: String, session: Option<World>) -> Html {
    let Some(session) = session else { return frame(caption, html! { "?" }) };
    let known = known(&session);
    frame(
        caption,
        html! { <Stand session={session.clone()}><div class="drawing"><Sheet {session} {known} /></div></Stand> },
    )
}

/// Every heater as it is found, and with everything off.
pub fn sheets() -> Html {
    let both = |&model: &HeaterModel| {
        let home = || house(model, box_of(model), Location::Basement);
        html! {
            <>
                { sheet(format!("{model}, as found"), call(home(), "[]")) }
                { sheet(format!("{model}, open and looked at"), call(home(), OPENED)) }
            </>
        }
    };
    HeaterModel::ALL.iter().map(both).collect()
}

/// A heater in an attic with whatever a look around can find.
fn attic(model: HeaterModel, change: fn(&mut Home)) -> Home {
    let mut home = house(model, None, Location::Attic);
    let found = &mut home.installation;
    (found.streak, found.lime, found.pan, found.soot) = (true, true, true, Some(Level::Upper));
    found.condensate = true;
    home.plant.plumbing.recirculation = Some(Recirculation { pump: true, check: true, valve: 1.0 });
    change(&mut home);
    home
}

/// What only a look around finds, and water where it does not belong.
pub fn found() -> Html {
    let all = |caption: &str, home: Home| sheet(caption.to_owned(), call(home, OPENED));
    let wet = r#"[{"do":"hose","on":true},{"do":"drain","opening":1.0},{"do":"tap","tap":"kitchen","opening":1.0},{"do":"relief-lever","up":true},{"do":"wait","minutes":2.0}]"#;
    let puddle = r#"[{"do":"drain","opening":1.0},{"do":"wait","minutes":2.0},{"do":"look","at":"drain"}]"#;
    let plain = || house(HeaterModel::Plain40, None, Location::Basement);
    html! {
        <>
            { all("loop, pan, streak, soot, lime, condensate, metal pipe", attic(HeaterModel::Plain40, |_| ())) }
            { all("plastic pipe, no dielectric unions, pump rests, valve shut", attic(HeaterModel::Large120, |home| {
                home.installation.discharge = Discharge::Plastic;
                home.installation.dielectric = false;
                home.plant.plumbing.recirculation = Some(Recirculation { pump: false, check: true, valve: 0.0 });
            })) }
            { all("pipe that rises, soot below", attic(HeaterModel::Short30, |home| {
                home.installation.discharge = Discharge::Uphill;
                home.installation.soot = Some(Level::Lower);
            })) }
            { all("small heater, pipe that rises, no pan", attic(HeaterModel::Small20, |home| {
                home.installation.discharge = Discharge::Uphill;
                home.installation.pan = false;
            })) }
            { sheet("hose, drain, tap and relief valve running".into(), call(plain(), wet)) }
            { sheet("drained on the floor".into(), call(plain(), puddle)) }
        </>
    }
}

/// The factory's diagram inside the cover, of every way that a heater is wired.
pub fn stickers() -> Html {
    let mut ways = Vec::new();
    for plate in HeaterModel::ALL.iter().map(|model| model.plate()) {
        let way = (plate.layout, plate.supply().hot_neutral());
        if !ways.contains(&way) {
            ways.push(way);
        }
    }
    let one = |(layout, hot_neutral)| {
        let second = if hot_neutral { "N" } else { "L2" };
        frame(
            format!("{layout}, L1 and {second}"),
            html! { <Opened><Sticker {layout} {hot_neutral} /></Opened> },
        )
    };
    ways.into_iter().map(one).collect()
}

/// Every place with a detail, covered and bare.
pub fn details() -> Html {
    let of = |(session, caption): (&World, &str)| {
        let known = known(session);
        let places = Place::ALL.iter().copied().filter(|place| has_detail(*place));
        let there = |place: &Place| match place {
            Place::InLineBox => session.home.plant.wiring.boxed,
            Place::LowerCompartment => session.home.plant.plate.has(Level::Lower),
            _ => true,
        };
        places
            .filter(there)
            .map(|place| {
                let inside = html! { <Detail session={session.clone()} known={known.clone()} {place} /> };
                frame(
                    format!("{caption}, {place}"),
                    html! { <Stand session={session.clone()}>{ inside }</Stand> },
                )
            })
            .collect::<Html>()
    };
    HeaterModel::ALL
        .iter()
        .flat_map(|&model| {
            let home = || house(model, box_of(model), Location::Basement);
            let covered = (model == HeaterModel::Plain40).then(|| call(home(), "[]")).flatten();
            let bare = call(home(), OPENED);
            let named =
                |session: Option<World>, how: &str| session.map(|one| (one, format!("{model} {how}")));
            [named(covered, "covered"), named(bare, "bare")]
        })
        .flatten()
        .map(|(session, caption)| of((&session, &caption)))
        .collect()
}
