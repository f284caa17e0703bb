//! Ink lines over the time of the job: temperatures, heat of the elements, currents. Told apart by their strokes, and
//! each named at its end.

use std::rc::Rc;

use drill::debrief::Sample;
use plant::Level;
use quantity::Temperature;
use words::Voice;
use yew::prelude::*;

use super::scale::Axis;
use super::sheet::Sheet;
use super::svg::{spread, stroke, word};
use crate::said::use_voice;

/// What is plotted.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Of {
    /// Water at the top, what the controls feel, the tap.
    Temperatures,
    /// Heat of each element.
    Heat,
    /// Current of each leg.
    Current,
}

/// Where it is drawn.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// What.
    pub of: Of,
    /// Time.
    pub axis: Axis,
    /// Top edge.
    pub top: f64,
    /// Height.
    pub height: f64,
}

/// What a line shows.
#[derive(Clone, Copy)]
enum Value {
    Top,
    Control(Level),
    Tap,
    Element(Level),
    Leg(usize),
}

impl Value {
    fn of(self, sample: &Sample, units: words::Units) -> Option<f64> {
        let degrees = |of: Temperature| match units {
            words::Units::Customary => of.to_fahrenheit(),
            words::Units::Si => of.to_celsius(),
        };
        match self {
            Self::Top => sample.top().map(degrees),
            Self::Control(level) => sample.controls.get(level.index()).copied().map(degrees),
            Self::Tap => sample.tap.map(degrees),
            Self::Element(level) => sample.watts.get(level.index()).map(|watts| watts.get() / 1e3),
            Self::Leg(leg) => sample.legs.get(leg).map(|amps| amps.get()),
        }
    }
}

/// A line: its name, its stroke, its values.
struct Line {
    name: String,
    class: &'static str,
    value: Value,
}

/// The plot.
#[component]
pub fn Plot(props: &Props) -> Html {
    let voice = use_voice();
    let Props { sheet, of, axis, top, height } = props;
    let (samples, units) = (&sheet.picture.samples, voice.units());
    let lines = lines(&voice, sheet, *of);
    let values = || samples.iter().flat_map(|one| lines.iter().filter_map(|line| line.value.of(one, units)));
    let scale = Scale::of(*of, &voice, values());
    let y = |value: f64| top + height - (value - scale.low) / (scale.high - scale.low) * height;
    let rule = |value: f64| {
        let at = y(value);
        html! {
            <>
                { stroke("rule", format!("M{:.1} {at:.1}H{:.1}", axis.left, axis.right)) }
                { word("ax end", axis.left - 7.0, at + 4.0, format!("{value:.0}{}", scale.unit)) }
            </>
        }
    };
    let curve = |line: &Line| {
        let mut way = String::new();
        let mut before: Option<f64> = None;
        for sample in samples {
            let here = line.value.of(sample, units).map(y);
            if let Some(here) = here {
                let x = axis.x(sample.at);
                match before {
                    // A switch is a step, not a slope.
                    Some(last) if *of != Of::Temperatures && (last - here).abs() > 0.5 => {
                        way.push_str(&format!("H{x:.1}V{here:.1}"));
                    }
                    Some(_) => way.push_str(&format!("L{x:.1} {here:.1}")),
                    // A moment alone is a dot.
                    None => way.push_str(&format!("M{x:.1} {here:.1}h.1")),
                }
            }
            before = here;
        }
        stroke(line.class, way)
    };
    // The names stand at the ends of their lines, in the order of their heights.
    let mut ends: Vec<(f64, f64, &Line)> = lines
        .iter()
        .filter_map(|line| {
            let last = samples.iter().rev().find(|one| line.value.of(one, units).is_some())?;
            Some((y(line.value.of(last, units)?), axis.x(last.at), line))
        })
        .collect();
    ends.sort_by(|a, b| a.0.total_cmp(&b.0));
    let at: Vec<f64> = ends.iter().map(|one| one.0).collect();
    let names = ends.iter().zip(spread(&at, *top, top + height, 13.0)).map(|((from, x, line), at)| {
        html! {
            <>
                { stroke("to-name", format!("M{x:.1} {from:.1}L{:.1} {from:.1}L{:.1} {at:.1}", axis.right, axis.right + 8.0)) }
                { word("ax", axis.right + 10.0, at + 4.0, line.name.clone()) }
            </>
        }
    });
    html! {
        <g class="plot">
            { word("ax", axis.left, top - 7.0, voice.text(caption(*of))) }
            { for scale.rules().into_iter().map(rule) }
            { for lines.iter().map(curve) }
            { for names }
        </g>
    }
}

const fn caption(of: Of) -> &'static str {
    match of {
        Of::Temperatures => "debrief-temperatures",
        Of::Heat => "debrief-heat",
        Of::Current => "debrief-current",
    }
}

fn lines(voice: &Voice, sheet: &Sheet, of: Of) -> Vec<Line> {
    let pair = ["line-2", "line-3"];
    let level = |value: fn(Level) -> Value| {
        let line =
            move |(&at, class): (&Level, _)| Line { name: sheet.which(voice, at), class, value: value(at) };
        sheet.levels().iter().zip(pair).map(line).collect::<Vec<_>>()
    };
    match of {
        Of::Temperatures => {
            let mut all = level(Value::Control);
            if let [only] = all.as_mut_slice() {
                only.name = voice.text("debrief-only-control");
            }
            all.push(Line { name: voice.text("debrief-top"), class: "line-1", value: Value::Top });
            all.push(Line { name: voice.text("debrief-tap"), class: "line-4", value: Value::Tap });
            all
        }
        Of::Heat => level(Value::Element),
        Of::Current => {
            let line = |(leg, class)| Line { name: sheet.rail(voice, leg), class, value: Value::Leg(leg) };
            (0..).zip(pair).map(line).collect()
        }
    }
}

/// The values' scale.
struct Scale {
    low: f64,
    high: f64,
    step: f64,
    unit: &'static str,
}

impl Scale {
    /// Round figures around what there is.
    fn of(of: Of, voice: &Voice, values: impl Iterator<Item = f64>) -> Self {
        let (low, high) =
            values.fold((f64::INFINITY, 0.0_f64), |(low, high), one| (low.min(one), high.max(one)));
        let least = |sizes: &[f64]| sizes.iter().copied().find(|size| high <= *size).unwrap_or(high);
        let full = |high: f64, unit| Self { low: 0.0, high, step: high, unit };
        match of {
            Of::Heat => full(least(&[2.0, 5.0, 10.0, 20.0, 50.0]), " kW"),
            Of::Current => full(least(&[10.0, 20.0, 30.0, 50.0, 100.0, 200.0]), " A"),
            Of::Temperatures => {
                let (step, unit) = match voice.units() {
                    words::Units::Customary => (40.0, " °F"),
                    words::Units::Si => (20.0, " °C"),
                };
                let low = (low.min(high) / step).floor() * step;
                Self { low, high: ((high / step).ceil() * step).max(low + step), step, unit }
            }
        }
    }

    fn rules(&self) -> Vec<f64> {
        let count =
            ((self.high - self.low) / self.step.max(f64::MIN_POSITIVE)).round().clamp(1.0, 12.0) as u32;
        (0..=count).map(|i| self.low + f64::from(i) * self.step).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::voice;
    use crate::units::Units;

    #[test]
    fn scales_are_round_and_hold_every_value() {
        let of = |of, units, values: &[f64]| {
            let scale = Scale::of(of, &voice(units), values.iter().copied());
            assert!(values.iter().all(|one| (scale.low..=scale.high).contains(one)));
            scale.rules()
        };
        assert_eq!(of(Of::Temperatures, Units::Us, &[48.0, 131.0]), [40.0, 80.0, 120.0, 160.0]);
        assert_eq!(of(Of::Temperatures, Units::Si, &[9.0, 55.0]), [0.0, 20.0, 40.0, 60.0]);
        assert_eq!(of(Of::Current, Units::Us, &[0.0, 18.8]), [0.0, 20.0]);
        assert_eq!(of(Of::Heat, Units::Us, &[0.0, 4.5]), [0.0, 5.0]);
        assert_eq!(of(Of::Current, Units::Us, &[]), [0.0, 10.0]);
    }
}
