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

/// Water that turns to steam where it comes out, in °C.
const BOILING_OVER: f64 = 120.0;
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
/// The finger of a glove on a screw that was made dead, then a bare one.
const GLOVED: &str = r#"{"do":"touch","at":{"what":"metal","point":"UEa"}}"#;
const BARE_HAND: &str = r#"{"do":"gloves","on":false},{"do":"touch","at":{"what":"metal","point":"UEa"}}"#;
/// The lever of the relief valve, with nobody told.
const LEVER: &str = r#"[{"do":"relief-lever","up":true}]"#;
/// A heater being changed: drained and dead with its leads off, its pipes undone, carried out, the new one set, its pipes on.
const DRAINED: &str = r#"[{"do":"tell-household"},{"do":"gloves","on":true},{"do":"eye-protection","on":true},{"do":"breaker","slot":2,"on":false},{"do":"lock","slot":2,"on":true},
{"do":"cover","which":"junction-box","off":true},{"do":"lift","end":"feed-a@Ja"},{"do":"lift","end":"feed-b@Jb"},{"do":"lift","end":"bond@Jg"},
{"do":"cold-valve","opening":0.0},{"do":"hose","on":true},{"do":"drain","opening":1.0},{"do":"tap","tap":"bath","opening":1.0},{"do":"wait","minutes":60.0}"#;
const CHANGE: [(&str, &str); 4] = [
    ("pipes undone", r#"{"do":"part-pipes"}"#),
    ("carried out", r#"{"do":"carry-out","helped":true}"#),
    ("the new one set", r#"{"do":"set-heater","nominal":"40 gal","rating":{"watts":4500.0,"volts":240.0}}"#),
    (
        "its pipes on",
        r#"{"do":"join-pipes","dielectric":true},{"do":"look","at":"heater-top"},{"do":"look","at":"relief"}"#,
    ),
];
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

/// Hotter than its water boils at in the open air, as where the limit failed and the relief valve is stuck.
fn boiling_over(home: &mut Home) {
    let plate = &home.plant.plate;
    if let Ok(tank) = solver::tank::Tank::of_volume(plate.content().get(), plate.height.get()) {
        home.plant.tank = tank.full_at(BOILING_OVER);
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

/// A list of acts with more of them.
fn and(acts: &str, more: &str) -> String {
    format!("{},{more}]", acts.trim_end_matches(']'))
}

/// The whole of a change, act by act.
fn changes() -> Vec<State> {
    const CLOSE: &[Place] = &[Place::HeaterTop, Place::JunctionBox];
    let mut acts = DRAINED.to_owned();
    let each = CHANGE.iter().map(|&(caption, more)| {
        acts = and(&acts, more);
        let places = if caption == "carried out" { &CLOSE[..1] } else { CLOSE };
        state(caption, places, plain(), &acts)
    });
    each.collect()
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
        state("a glove on a screw", &[Place::UpperCompartment], plain(), &and(LOOKED, GLOVED)),
        state("a bare hand on a screw", &[Place::UpperCompartment], plain(), &and(LOOKED, BARE_HAND)),
        state("steam", &[], changed(boiling_over), LEVER),
    ]
}

/// Every state: the whole drawing, close up, and the meter where it is placed.
pub fn states() -> Html {
    drawn(all())
}

/// A heater being changed: the whole drawing, what is close up, and the van.
pub fn exchange() -> Html {
    drawn(changes())
}

fn drawn(states: Vec<State>) -> Html {
    states
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
    use bench::person::Harm;
    use bench::{Action, Fitting, Shown};
    use plant::Stand;

    /// What each caption says is so in the world that was folded, and was seen.
    #[test]
    fn every_state_is_what_its_caption_says() {
        let all = all();
        let [wet, button, both, breaker, burnt, lifted, fuse, leads, clamp, glove, hand, steam] =
            all.as_slice()
        else {
            panic!("twelve")
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
        for (touching, gloves) in [(glove, true), (hand, false)] {
            let world = world(touching);
            let last = world.log.last().unwrap();
            assert!(matches!(last.action, Action::Touch { .. }) && last.outcome.harms.is_empty());
            assert!(!matches!(last.outcome.shown, Shown::Refused { .. } | Shown::Stopped { .. }));
            assert_eq!(world.me.gloves, gloves);
        }
        let steamed = world(steam);
        let harms = &steamed.log.last().unwrap().outcome.harms;
        assert!(harms.iter().any(|harm| matches!(harm, Harm::Steam { .. })), "{harms:?}");
    }

    /// Each stage of the change is the one that it is called.
    #[test]
    fn a_heater_is_changed_act_by_act() {
        let worlds: Vec<World> = changes().into_iter().map(|state| state.session.unwrap()).collect();
        for world in &worlds {
            let refused: Vec<_> = world
                .log
                .iter()
                .filter(|entry| matches!(entry.outcome.shown, Shown::Refused { .. }))
                .collect();
            assert!(refused.is_empty(), "{refused:?}");
        }
        let stands: Vec<Stand> = worlds.iter().map(|world| world.home.plant.plumbing.stand).collect();
        assert_eq!(stands, [Stand::Loose, Stand::Gone, Stand::Loose, Stand::Piped]);
    }
}
