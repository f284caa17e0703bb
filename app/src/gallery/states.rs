//! What an eye finds at a heater that is not as it should be, and what one's own hands leave: water where it does not
//! belong, a button that stands proud, a tripped handle, char and soot, wires off, a fuse out, leads and clamp placed.

use bench::{Clamped, MeterFunction};
use plant::parts::Contact;
use plant::{BoxKind, End, Handle, HeaterModel, Home, Layout, Level, Location, Place, Screw, Wire};
use yew::prelude::*;

use super::stand::{Stand, call, frame, house, known};
use crate::drill::detail::Detail;
use crate::drill::meter::Meter;
use crate::drill::sheet::Sheet;
use crate::store::{Desk, Setting, World};

/// Width of a hole that drips.
const DRIP: f64 = 0.0003;
/// Breaker off, everything bare, every place looked at, after water has had its time to show.
const LOOKED: &str = r#"[{"do":"gloves","on":true},{"do":"eye-protection","on":true},{"do":"breaker","slot":2,"on":false},
{"do":"lock","slot":2,"on":true},{"do":"cover","which":"panel-front","off":true},{"do":"cover","which":"box-door","off":true},{"do":"cover","which":"junction-box","off":true},
{"do":"cover","which":"upper","off":true},{"do":"cover","which":"upper-insulation","off":true},{"do":"cover","which":"upper-shield","off":true},
{"do":"cover","which":"lower","off":true},{"do":"cover","which":"lower-insulation","off":true},{"do":"cover","which":"lower-shield","off":true},
{"do":"look","at":"heater-top"},{"do":"look","at":"relief"},{"do":"look","at":"drain"},{"do":"look","at":"junction-box"},
{"do":"look","at":"upper-compartment"},{"do":"look","at":"lower-compartment"}]"#;
/// One wire labelled and lifted, one only labelled, one lifted without a label.
const LIFTED: &str = r#"[{"do":"breaker","slot":2,"on":false},{"do":"lock","slot":2,"on":true},
{"do":"cover","which":"lower","off":true},{"do":"cover","which":"lower-insulation","off":true},{"do":"cover","which":"lower-shield","off":true},
{"do":"label","end":"lower-switched@LEa"},{"do":"lift","end":"lower-switched@LEa"},{"do":"label","end":"transfer@D1"},{"do":"lift","end":"lower-permanent@LEb"}]"#;
/// Two fuses out of their clips, one of them melted.
const PULLED: &str = r#"[{"do":"breaker","slot":2,"on":false},{"do":"box-handle","closed":false},{"do":"box-lock","on":true},{"do":"cover","which":"box-door","off":true},
{"do":"pull-fuse","leg":"leg-1","out":true},{"do":"test-fuse","leg":"leg-1"}]"#;
/// The load center looked at.
const PANEL: &str = r#"[{"do":"read","what":"directory"},{"do":"look","at":"load-center"}]"#;

/// A state: what it is called, where it is seen close, what was done.
struct State {
    caption: &'static str,
    places: &'static [Place],
    session: Option<World>,
    desk: Desk,
}

fn state(caption: &'static str, places: &'static [Place], home: Home, acts: &str) -> State {
    State { caption, places, session: call(home, acts), desk: Desk::default() }
}

fn plain() -> Home {
    house(HeaterModel::Plain40, None, Location::Basement)
}

fn changed(change: fn(&mut Home)) -> Home {
    let mut home = plain();
    change(&mut home);
    home
}

/// Water at every fitting that a drop can hang from.
fn wet(home: &mut Home) {
    let plant = &mut home.plant;
    (plant.plumbing.nipple_leak, plant.plumbing.drain_drip, plant.plumbing.relief.weep) = (DRIP, DRIP, DRIP);
    plant.vessel.shell_hole = DRIP;
    for element in &mut plant.elements {
        element.gasket.leak_diameter = DRIP;
    }
}

fn charred(home: &mut Home) {
    home.installation.soot = Some(Level::Lower);
    for end in [End { wire: Wire::Transfer, side: 1 }, End { wire: Wire::LowerSwitched, side: 0 }] {
        home.plant.wiring.joint_mut(end).charred = true;
    }
}

fn fused() -> Home {
    let mut home = house(HeaterModel::Short30, Some(BoxKind::FusedSwitch), Location::Basement);
    if let Some(fitted) = &mut home.plant.in_line {
        fitted.fuses[0] = Contact::Open;
    }
    home
}

fn off_peak() -> Home {
    let mut home = house(HeaterModel::OffPeak80, None, Location::Basement);
    debug_assert_eq!(home.plant.plate.layout, Layout::OffPeak);
    home.plant.limit.tripped = true;
    if let Some(limit) = &mut home.plant.lower_limit {
        limit.tripped = true;
    }
    home
}

fn placed() -> State {
    let points = [Screw::UEa, Screw::Shell].map(Into::into);
    let desk = Desk {
        red: Some(points[0]),
        black: Some(points[1]),
        point: Some(points[1]),
        setting: Setting::Leads(MeterFunction::Volts),
        ..Desk::default()
    };
    State { desk, ..state("both leads placed", &[Place::UpperCompartment], plain(), LOOKED) }
}

fn clamped() -> State {
    let around = Clamped::Wire { wire: Wire::UpperSwitched };
    let desk = Desk { clamped: Some(around), setting: Setting::Clamp, ..Desk::default() };
    State { desk, ..state("the clamp around a wire", &[Place::UpperCompartment], plain(), LOOKED) }
}

fn all() -> Vec<State> {
    const COMPARTMENTS: &[Place] = &[Place::UpperCompartment, Place::LowerCompartment];
    vec![
        state("a drop at every fitting", COMPARTMENTS, changed(wet), LOOKED),
        state(
            "button popped",
            &[Place::UpperCompartment],
            changed(|home| home.plant.limit.tripped = true),
            LOOKED,
        ),
        state("both buttons popped", COMPARTMENTS, off_peak(), LOOKED),
        state(
            "breaker tripped",
            &[Place::LoadCenter],
            changed(|home| home.plant.panel.breakers[2].handle = Handle::Tripped),
            PANEL,
        ),
        state("char at two screws, soot", &[Place::LowerCompartment], changed(charred), LOOKED),
        state("wires lifted and labelled", &[Place::LowerCompartment], plain(), LIFTED),
        state("a melted fuse pulled and tested", &[Place::InLineBox], fused(), PULLED),
        placed(),
        clamped(),
    ]
}

/// Every state: the whole drawing, close up, and the meter where it is placed.
pub fn states() -> Html {
    all()
        .into_iter()
        .filter_map(|State { caption, places, session, desk }| {
            let session = session?;
            let known = known(&session);
            let stand = |what: &str, inside: Html| {
                let (session, desk) = (session.clone(), desk.clone());
                frame(format!("{caption}, {what}"), html! { <Stand {session} {desk}>{ inside }</Stand> })
            };
            let close = places.iter().map(|&place| {
                stand(place.name(), html! { <Detail session={session.clone()} known={known.clone()} {place} /> })
            });
            let sheet = html! { <div class="drawing"><Sheet session={session.clone()} known={known.clone()} /></div> };
            let placed = desk.reading().is_some();
            Some(html! {
                <>
                    { stand("drawing", sheet) }
                    { for close }
                    if placed { { stand("meter", html! { <Meter session={session.clone()} /> }) } }
                </>
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::{Fitting, Shown};

    /// What each caption says is so in the world that was folded, and was seen.
    #[test]
    fn every_state_is_what_its_caption_says() {
        let all = all();
        let [wet, button, both, breaker, burnt, lifted, fuse, leads, clamp] = all.as_slice() else {
            panic!("nine")
        };
        let world = |state: &State| state.session.clone().unwrap();
        let known = |state: &State| known(&world(state));
        for fitting in [
            Fitting::UpperElement,
            Fitting::LowerElement,
            Fitting::Nipples,
            Fitting::DrainValve,
            Fitting::ReliefValve,
            Fitting::BottomRim,
        ] {
            assert_eq!(known(wet).wet.get(&fitting), Some(&true), "{fitting:?}");
        }
        assert_eq!(known(button).buttons[0], Some(true));
        assert_eq!(known(both).buttons, [Some(true); 2]);
        assert_eq!(known(breaker).handles.get(&2), Some(&Handle::Tripped));
        assert_eq!((known(burnt).charred.len(), known(burnt).found.soot), (2, Some(Level::Lower)));
        let ends = |is: fn(&World, End) -> bool| End::all().filter(|end| is(&world(lifted), *end)).count();
        assert_eq!(ends(|world, end| world.home.plant.wiring.joint(end).labelled), 2);
        assert!(world(lifted).log.iter().all(|entry| !matches!(entry.outcome.shown, Shown::Refused { .. })));
        assert!(!matches!(world(fuse).log.last().unwrap().outcome.shown, Shown::Refused { .. }));
        for placed in [leads, clamp] {
            assert!(placed.desk.reading().is_some());
        }
    }
}
