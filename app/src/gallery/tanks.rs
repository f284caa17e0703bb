//! The tank cut open in every state of its water and of what lies in it; a job's plots with its strip.

use plant::{DipTube, HeaterModel, Home, Level, Location};
use quantity::{Metres, Temperature, Volume};
use yew::prelude::*;

use super::circuits::sheet;
use super::stand::{frame, house, wide};
use crate::debrief::drawing::Drawing;
use crate::debrief::figures::Figures;
use crate::debrief::inspector::Inspector;
use crate::debrief::section::Section;
use crate::debrief::steps::Steps;
use crate::debrief::strip::Strip;
use crate::said::use_voice;

/// Water drawn and made hot again.
const USED: &str = r#"[{"do":"tap","tap":"kitchen","opening":1.0},{"do":"wait","minutes":9.0},{"do":"tap","tap":"kitchen","opening":0.0},{"do":"wait","minutes":8.0}]"#;
/// A job with everything in it that a plot shows.
const JOB: &str = r#"[{"do":"tell-household"},{"do":"gloves","on":true},{"do":"eye-protection","on":true},{"do":"tap","tap":"kitchen","opening":1.0},{"do":"wait","minutes":20.0},
{"do":"tap","tap":"kitchen","opening":0.0},{"do":"breaker","slot":2,"on":false},{"do":"wait","minutes":10.0},{"do":"breaker","slot":2,"on":true},{"do":"wait","minutes":90.0},{"do":"hand-over"}]"#;

/// The tank.
#[component]
pub fn Tanks() -> Html {
    let voice = use_voice();
    let one = |caption: String, home: Home, acts: &str| {
        let inside = sheet(&voice, home, acts).map(|sheet| {
            let at = sheet.picture.samples.len().saturating_sub(1);
            html! { <Section {sheet} {at} /> }
        });
        frame(caption, inside.unwrap_or_default())
    };
    let plain = || house(HeaterModel::Plain40, None, Location::Basement);
    let changed = |caption: &str, acts: &str, change: fn(&mut Home)| {
        let mut home = plain();
        change(&mut home);
        one(caption.to_owned(), home, acts)
    };
    html! {
        <>
            { for HeaterModel::ALL.iter().map(|&model| one(format!("{model}, drawn from"), house(model, None, Location::Basement), USED)) }
            { changed("draining", r#"[{"do":"cold-valve","opening":0.0},{"do":"tap","tap":"kitchen","opening":1.0},{"do":"hose","on":true},{"do":"drain","opening":1.0},{"do":"wait","minutes":9.0}]"#, |_| ()) }
            { changed("empty", "[]", |home| home.plant.empty_vessel()) }
            { changed("scale on both elements, sediment", USED, |home| {
                home.plant.vessel.sediment = Volume::litres(6.0);
                for (element, thick) in home.plant.elements.iter_mut().zip([0.001, 0.003]) {
                    element.scale.thickness = Metres(thick);
                }
            }) }
            { changed("broken dip tube", USED, |home| home.plant.vessel.dip_tube = DipTube::Broken) }
            { changed("no dip tube", USED, |home| home.plant.vessel.dip_tube = DipTube::Missing) }
            { changed("a dial turned up", r#"[{"do":"wait","minutes":240.0}]"#, |home| home.plant.thermostats[Level::Upper.index()].dial = Temperature::fahrenheit(150.0)) }
        </>
    }
}

/// Plots, figures, strip, inspector and list of one job, on arrival, within a wait, and at its end.
#[component]
pub fn Jobs() -> Html {
    let voice = use_voice();
    let nothing = Callback::noop();
    let moved: Callback<usize> = Callback::noop();
    let all = [(HeaterModel::Plain40, 0), (HeaterModel::Plain40, 20), (HeaterModel::Small20, 1000)];
    all.into_iter()
        .filter_map(|(model, at)| {
            let sheet = sheet(&voice, house(model, None, Location::Basement), JOB)?;
            let at = at.min(sheet.picture.samples.len().saturating_sub(1));
            let step = sheet.picture.samples.get(at)?.step;
            Some(html! {
                <>
                    { wide(format!("{model}, plots and figures"), html! {
                        <>
                            <Drawing sheet={sheet.clone()} {at} {step} onstep={nothing.clone()} />
                            <Figures sheet={sheet.clone()} {at} />
                            <Strip sheet={sheet.clone()} {at} shown=true onat={moved.clone()} />
                        </>
                    }) }
                    { frame(format!("{model}, an act"), html! { <Inspector sheet={sheet.clone()} {step} onstep={nothing.clone()} /> }) }
                    { frame(format!("{model}, every act"), html! { <Steps {sheet} {step} onstep={nothing.clone()} /> }) }
                </>
            })
        })
        .collect()
}
