//! Water in the tank, top to bottom, over time: one path a tone.

use std::rc::Rc;

use drill::debrief::{Picture, Sample};
use quantity::Seconds;
use yew::prelude::*;

use super::scale::{Axis, TONES, tone};
use super::sheet::Sheet;
use crate::said::use_voice;

/// Width of a column.
const COLUMN: f64 = 5.0;

/// Where it is drawn.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// Time.
    pub axis: Axis,
    /// Top edge.
    pub top: f64,
    /// Height.
    pub height: f64,
}

/// The picture.
#[component]
pub fn Water(props: &Props) -> Html {
    let voice = use_voice();
    let Props { sheet, axis, top, height } = props;
    let paths = use_memo((sheet.clone(), *axis, *top, *height), |(sheet, axis, top, height)| {
        paths(&sheet.picture, axis, *top, *height)
    });
    let bottom = top + height;
    let edge = |fraction: f64| format!("{:.1}", bottom - fraction * height + 4.0);
    let left = format!("{:.1}", axis.left - 7.0);
    let levels = sheet.element_heights();
    html! {
        <g class="inside" shape-rendering="crispEdges">
            <rect class="air" x={axis.left.to_string()} y={top.to_string()} width={axis.width().to_string()} height={height.to_string()} />
            { for paths.iter().enumerate().filter(|(_, path)| !path.is_empty()).map(|(tone, path)| html! {
                <path class={format!("tone-{tone}")} d={path.clone()} />
            }) }
            <rect class="frame" x={axis.left.to_string()} y={top.to_string()} width={axis.width().to_string()} height={height.to_string()} />
            <text class="ax end" x={left.clone()} y={format!("{:.1}", top + 9.0)}>{ voice.text("debrief-top") }</text>
            { for sheet.levels().iter().zip(levels).map(|(level, at)| html! {
                <text class="ax end" x={left.clone()} y={edge(at)}>{ sheet.which(&voice, *level) }</text>
            }) }
            <text class="ax end" x={axis.right.to_string()} y={format!("{:.1}", bottom + 15.0)}>{ voice.text("debrief-water") }</text>
        </g>
    }
}

/// One path a tone, each a row of rectangles.
fn paths(picture: &Picture, axis: &Axis, top: f64, height: f64) -> Vec<AttrValue> {
    let mut all = vec![String::new(); TONES];
    let columns = (axis.width() / COLUMN).ceil().max(1.0);
    let wide = axis.width() / columns;
    for column in 0..columns as u32 {
        let share = (f64::from(column) + 0.5) / columns;
        let at = picture.shown(Seconds(axis.length.get() * share));
        let Some(frame) = picture.samples.get(at) else { continue };
        let x = axis.left + f64::from(column) * wide;
        column_of(&mut all, frame, x, wide, top, height);
    }
    all.into_iter().map(AttrValue::from).collect()
}

/// One column; equal neighbours become one rectangle.
fn column_of(all: &mut [String], frame: &Sample, x: f64, wide: f64, top: f64, height: f64) {
    let layers = &frame.layers;
    let high = height / layers.len().max(1) as f64;
    let mut from = 0;
    while from < layers.len() {
        let here = layers.get(from).copied().flatten().map(tone);
        let same = layers.iter().skip(from).take_while(|one| one.map(tone) == here).count();
        if let Some(path) = here.and_then(|tone| all.get_mut(tone)) {
            let y = top + height - (from + same) as f64 * high;
            // A hair wider, so that no seam shows between columns.
            path.push_str(&format!(
                "M{x:.1} {y:.1}h{:.1}v{:.1}h-{:.1}z",
                wide + 0.4,
                same as f64 * high,
                wide + 0.4
            ));
        }
        from += same.max(1);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use quantity::Temperature;

    #[test]
    fn air_leaves_the_paper_and_water_is_drawn_once_a_tone() {
        let hot = Some(Temperature::celsius(60.0));
        let frame = |layers| Sample { layers, ..Sample::default() };
        let axis = Axis { left: 0.0, right: 5.0, length: Seconds(60.0), starts_at: Seconds(0.0) };
        let samples = vec![frame(vec![hot, hot, None, None])];
        let paths = paths(&Picture { samples, ..Picture::default() }, &axis, 0.0, 100.0);
        let drawn: Vec<&AttrValue> = paths.iter().filter(|path| !path.is_empty()).collect();
        assert_eq!(drawn, ["M0.0 50.0h5.4v50.0h-5.4z"]);
    }
}
