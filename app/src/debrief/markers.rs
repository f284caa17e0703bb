//! The lettered moments above the drawing, and the line down from each.

use std::rc::Rc;

use yew::prelude::*;

use super::drawing::clock;
use super::scale::Axis;
use super::sheet::{Sheet, Step};
use crate::said::use_voice;

/// Radius of a marker.
const RADIUS: f64 = 9.0;
/// Markers keep this distance; a bent line leads from each to its moment.
const APART: f64 = 20.0;

/// Where they are drawn.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// Time.
    pub axis: Axis,
    /// Top of the picture under them.
    pub top: f64,
    /// End of the lines.
    pub bottom: f64,
    /// The chosen step.
    pub step: u32,
    /// Only the chosen one is drawn.
    pub narrow: bool,
    /// Told a step to look at.
    pub onstep: Callback<u32>,
}

/// The markers. Each is a button; the list of steps has the same ones, larger.
#[component]
pub fn Markers(props: &Props) -> Html {
    let voice = use_voice();
    let shown = |step: &&Step| step.number == props.step || (step.marked && !props.narrow);
    let steps: Vec<&Step> = props.sheet.steps.iter().filter(shown).collect();
    let at: Vec<f64> = steps.iter().map(|step| props.axis.x(step.at)).collect();
    let places = spread(&at, props.axis.left, props.axis.right);
    let all = steps.iter().zip(at).zip(places).map(|((step, at), place)| marker(props, step, at, place));
    html! { <g class="markers" aria-label={voice.text("debrief-moments")} role="group">{ for all }</g> }
}

/// Places for markers as near to their moments as they fit beside each other.
fn spread(at: &[f64], left: f64, right: f64) -> Vec<f64> {
    let room = (right - left) / at.len().max(1) as f64;
    let apart = APART.min(room);
    let mut places = at.to_vec();
    let mut least = f64::NEG_INFINITY;
    for place in &mut places {
        *place = place.max(least);
        least = *place + apart;
    }
    let mut most = right;
    for place in places.iter_mut().rev() {
        *place = place.min(most);
        most = *place - apart;
    }
    places
}

fn marker(props: &Props, step: &Step, at: f64, place: f64) -> Html {
    let chosen = step.number == props.step;
    let choose = {
        let (told, number) = (props.onstep.clone(), step.number);
        Callback::from(move |()| told.emit(number))
    };
    let onclick = choose.reform(|_: MouseEvent| ());
    let onkeydown = Callback::from(move |event: KeyboardEvent| {
        if matches!(event.key().as_str(), "Enter" | " ") {
            event.prevent_default();
            choose.emit(());
        }
    });
    let letter = &step.letter;
    let said = format!("{letter} {} {}", clock(&props.sheet, step.at), step.what);
    let class = classes!("marker", chosen.then_some("chosen"), step.grave.then_some("grave"));
    let y = RADIUS + 3.0;
    let line = format!("M{place:.1} {:.1}L{at:.1} {:.1}V{:.1}", y + RADIUS, props.top, props.bottom);
    let x = format!("{place:.1}");
    html! {
        <g {class} role="button" tabindex="0" aria-label={said} aria-pressed={chosen.to_string()} {onclick} {onkeydown}>
            <path d={line} />
            <circle cx={x.clone()} cy={y.to_string()} r={RADIUS.to_string()} />
            <text {x} y={(y + 4.0).to_string()}>{ letter }</text>
        </g>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn markers_keep_apart_and_stay_on_the_sheet() {
        for at in [vec![10.0, 11.0, 12.0, 90.0], vec![380.0, 398.0, 399.0, 400.0], vec![]] {
            let places = spread(&at, 0.0, 400.0);
            assert!(places.windows(2).all(|pair| pair[1] - pair[0] >= APART - 1e-9), "{places:?}");
            assert!(places.iter().all(|x| (0.0..=400.0).contains(x)));
        }
        let crowd: Vec<f64> = (0..100).map(|_| 200.0).collect();
        assert!(spread(&crowd, 0.0, 400.0).iter().all(|x| (0.0..=400.0 + 1e-6).contains(x)));
    }
}
