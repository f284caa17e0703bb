//! The heater cut open at the chosen moment: water layer by layer, elements at work, what lies on them and under them.

use std::rc::Rc;

use drill::debrief::Sample;
use plant::{DipTube, Level, Plant};
use quantity::Metres;
use words::Voice;
use yew::prelude::*;

use super::drawing::clock;
use super::scale::tone;
use super::sheet::{Sheet, levels};
use super::svg::{sheet as block, spread, stroke, word};
use crate::drill::sheet::frame::{Frame, MIDDLE, SCALE, WATER};
use crate::said::use_voice;

/// Fuller than this the tank is full.
const FULL: f64 = 0.995;

/// The job and the moment that is looked at.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// The chosen sample.
    pub at: usize,
}

/// The section.
#[component]
pub fn Section(props: &Props) -> Html {
    let voice = use_voice();
    let sheet = &props.sheet;
    let Some(now) = sheet.picture.samples.get(props.at) else { return html! {} };
    let plant = &sheet.session.home.plant;
    let said = voice.filled("debrief-section", &[("clock", clock(sheet, now.at).into())]);
    html! {
        <section class="section">
            <h2>{ &said }</h2>
            { cut(&voice, plant, now, said, plant.plate.model.name()) }
        </section>
    }
}

/// The drawing, with what it is called aloud and a name that no other on the page has.
pub fn cut(voice: &Voice, plant: &Plant, now: &Sample, said: String, name: &str) -> Html {
    let plate = &plant.plate;
    let frame = Frame::of(plate);
    let levels = levels(plant);
    let top = frame.top - 34.0;
    let (left, right) = (frame.left() - 88.0, frame.right() + 78.0);
    let area = format!("{left:.0} {top:.0} {:.0} {:.0}", right - left, 622.0 - top);
    html! {
        <svg viewBox={area} width={format!("{:.0}", right - left)} role="img" aria-label={said}>
            { stroke("jacket", frame.jacket()) }
            { water(now, &frame, name) }
            { inside(now, &frame, plate.height) }
            { for levels.iter().map(|level| element(voice, levels, now, &frame, *level)) }
            { degrees(voice, levels, now, &frame) }
        </svg>
    }
}

/// The layers, cut by the tank's outline; a wave and a triangle where the water ends below the top.
fn water(now: &Sample, frame: &Frame, name: &str) -> Html {
    let high = (WATER - frame.tank_top) / now.layers.len().max(1) as f64;
    let (x, wide) = (MIDDLE - frame.tank, 2.0 * frame.tank);
    let level = WATER - now.fill * (WATER - frame.tank_top);
    let layer = |(at, layer): (usize, &Option<_>)| {
        let tone = tone((*layer)?);
        let bottom = WATER - at as f64 * high;
        // The lowest reaches into the bottom's curve, the highest up to where the water ends.
        let (y, foot) = ((bottom - high).max(level), if at == 0 { 16.0 } else { 0.5 });
        let y = if now.fill >= FULL && at + 1 == now.layers.len() { y - 8.0 } else { y };
        Some(block(format!("tone-{tone}"), [x, y, wide, bottom + foot - y]))
    };
    html! {
        <>
            <clipPath id={format!("tank-{name}")}><path d={frame.shell()} /></clipPath>
            <g clip-path={format!("url(#tank-{name})")}>
                { block("air", [x, frame.tank_top - 8.0, wide, WATER - frame.tank_top + 24.0]) }
                { for now.layers.iter().enumerate().filter_map(layer) }
            </g>
            { stroke("shell", frame.shell()) }
            if now.fill < FULL {
                { stroke("level", format!("M{x:.1} {level:.1}h{wide:.1}M{:.1} {level:.1}l-7-11h14Z", MIDDLE + frame.tank * 0.5)) }
            }
        </>
    }
}

/// Dip tube, sediment.
fn inside(now: &Sample, frame: &Frame, height: Metres) -> Html {
    let tube = MIDDLE - frame.tank * 0.62;
    let end = match now.dip_tube {
        Some(DipTube::Whole) => WATER - 26.0,
        Some(DipTube::Broken) => frame.tank_top + 0.08 * height.get() * SCALE,
        Some(DipTube::Missing) | None => frame.tank_top - 4.0,
    };
    // Content over area is depth; the frame's tank is drawn to scale.
    let radius = frame.tank / SCALE;
    let depth = now.sediment.get() / (std::f64::consts::PI * radius * radius) * SCALE;
    let walls = |class: &'static str, from: f64, to: f64| {
        stroke(class, format!("M{:.1} {from:.1}V{to:.1}m8 0V{from:.1}", tube - 4.0))
    };
    html! {
        <>
            { walls("tube", frame.top - 14.0, end.min(frame.tank_top)) }
            { walls("tube pin", frame.tank_top, end.max(frame.tank_top)) }
            if now.sediment.get() > 0.0 {
                { block("sediment", [MIDDLE - frame.tank, WATER + 8.0 - depth.max(3.0), 2.0 * frame.tank, depth.max(3.0)]) }
            }
        </>
    }
}

/// An element as a hairpin with what lies on it; strokes of heat over it while it works.
fn element(voice: &Voice, levels: &[Level], now: &Sample, frame: &Frame, level: Level) -> Html {
    let at = level.index();
    let y = frame.elements.get(at).copied().unwrap_or(WATER);
    let watts = now.watts.get(at).copied().unwrap_or_default();
    let scale = now.scale.get(at).map_or(0.0, |thick| thick.get() * 1e3);
    let (from, to) = (MIDDLE - frame.tank - 6.0, MIDDLE + frame.tank * 0.55);
    let pin = format!("M{from:.1} {:.1}H{to:.1}a5 5 0 0 1 0 10H{from:.1}", y - 5.0);
    let on = watts.get() >= 1.0;
    let waves: String = [0.3, 0.55, 0.8]
        .map(|share| format!("M{:.1} {:.1}q5-4 0-8t0-8", from + share * (to - from), y - 10.0))
        .concat();
    let left = frame.left() - 8.0;
    let [first, rest] = match (level, levels.len()) {
        (_, 1) => [None, Some("debrief-element-only")],
        (Level::Upper, _) => [Some("debrief-element-upper-1"), Some("debrief-element-upper-2")],
        (Level::Lower, _) => [Some("debrief-element-lower-1"), Some("debrief-element-lower-2")],
    }
    .map(|id| id.map_or_else(String::new, |id| voice.text(id)));
    html! {
        <>
            if scale > 0.05 {
                <path class="scale" d={pin.clone()} stroke-width={format!("{:.1}", 5.0 + (4.0 * scale).min(16.0))} />
            }
            { stroke(classes!("pin", on.then_some("on")), pin) }
            if on {
                { stroke("waves", waves) }
            }
            { stroke("lead", format!("M{left:.1} {y:.1}H{from:.1}")) }
            { word("lab end", left - 4.0, y - 15.0, first) }
            { word("lab end", left - 4.0, y + 3.0, rest) }
            { word("sub end", left - 4.0, y + 21.0, if on { voice.units().watts(watts) } else { voice.text("debrief-off") }) }
        </>
    }
}

/// Temperatures beside the tank, at the top, at each control, at the bottom.
fn degrees(voice: &Voice, levels: &[Level], now: &Sample, frame: &Frame) -> Html {
    let high = (WATER - frame.tank_top) / now.layers.len().max(1) as f64;
    let layer_at = |y: f64| now.layers.get(((WATER - y) / high).floor().max(0.0) as usize).copied().flatten();
    let mut at = vec![frame.tank_top + high * 0.5];
    at.extend(levels.iter().filter_map(|level| frame.elements.get(level.index())).map(|y| y - 12.0));
    at.push(WATER - high * 0.5);
    let right = frame.right();
    let places = spread(&at, frame.tank_top, WATER + 8.0, 19.0);
    at.iter()
        .zip(places)
        .map(|(&y, place)| {
            let said = layer_at(y).map_or_else(|| voice.text("debrief-air"), |of| voice.units().temperature(of));
            html! {
                <>
                    { stroke("lead", format!("M{:.1} {y:.1}H{:.1}L{:.1} {place:.1}", MIDDLE + frame.tank, right + 4.0, right + 10.0)) }
                    { word("lab", right + 13.0, place + 4.0, said) }
                </>
            }
        })
        .collect()
}
