//! The diagram as a sticker, and what it shows as a list.

use plant::fault::PartKind;
use plant::{Circuit, Layout, Level, Screw, Wire, Wiring};
use yew::prelude::*;

use super::plan::{At, height, lower, spot, way};
use crate::said::use_language;
use crate::text;

/// Which heater.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// How it is wired.
    pub layout: Layout,
    /// The second conductor is a neutral.
    pub hot_neutral: bool,
}

/// The sticker.
#[component]
pub fn Sticker(props: &Props) -> Html {
    use_language();
    let Props { layout, hot_neutral } = *props;
    let wiring = Wiring::factory(layout, hot_neutral);
    let leads = || Wire::ALL.iter().copied().filter(|wire| layout.has_lead(*wire));
    let lines: String = leads().filter_map(|wire| way(wire, layout)).map(|way| path(&way)).collect();
    // Where the leads of both elements meet.
    let joint = way(Wire::UpperPermanent, layout)
        .and_then(|way| way.get(1).copied())
        .filter(|_| layout.has_lead(Wire::LowerPermanent));
    let screws = Screw::ALL.iter().filter_map(|&screw| Some(terminal(screw, spot(screw, layout)?)));
    let list = leads().map(|wire| html! { <li>{ text::diagram_wire(wire, &wiring) }</li> });
    html! {
        <figure class="sticker">
            <figcaption>{ text::DIAGRAM }</figcaption>
            <svg viewBox={format!("0 0 340 {}", height(layout))} role="img" aria-label={text::DIAGRAM}>
                <path d={lines} class="ink thin" />
                <path d={contacts(layout)} class="ink blade" />
                <path d={elements(layout)} class="ink" />
                <path d={ties(layout)} class="ink thin tie" />
                <path d="M200 30v12M190 42h20M194 47h12M197 52h6" class="ink thin" />
                if let Some((x, y)) = joint {
                    <circle cx={x.to_string()} cy={y.to_string()} r="3" class="dot" />
                }
                { for screws }
                { legs(layout, hot_neutral) }
                { names(layout) }
            </svg>
            <details>
                <summary>{ text::DIAGRAM_LIST }</summary>
                <ul>{ for list }</ul>
            </details>
        </figure>
    }
}

fn path(way: &[At]) -> String {
    let points = way.iter().enumerate();
    points.map(|(at, (x, y))| format!("{}{x} {y}", if at == 0 { 'M' } else { 'L' })).collect()
}

/// Contacts between two screws, as they stand in a cold heater.
fn contacts(layout: Layout) -> String {
    let pairs = [
        [Screw::H1, Screw::H2],
        [Screw::H3, Screw::H4],
        [Screw::H5, Screw::H6],
        [Screw::H7, Screw::H8],
        [Screw::U1, Screw::U2],
        [Screw::U3, Screw::U4],
        [Screw::D1, Screw::D2],
    ];
    let mut drawn: String = pairs
        .iter()
        .filter_map(|pair| Some(path(&[spot(pair[0], layout)?, spot(pair[1], layout)?])))
        .collect();
    if matches!(layout, Layout::NonSimultaneous) {
        // The contact that waits until the top is hot.
        drawn.push_str("M110 190v-14");
    }
    drawn
}

/// Elements as zigzags, and the board as a frame.
fn elements(layout: Layout) -> String {
    let pairs = [[Screw::UEa, Screw::UEb], [Screw::LEa, Screw::LEb]];
    let at = pairs.iter().filter_map(|pair| spot(pair[0], layout));
    let mut drawn: String =
        at.map(|(x, y)| format!("M{x} {y}h10l5-8 10 16 10-16 10 16 10-16 10 16 5-8h10")).collect();
    if !layout.has_thermostats() {
        drawn.push_str(&format!("M30 138H120V{}H30Z", lower(layout) + 12));
    }
    drawn
}

/// What moves together.
fn ties(layout: Layout) -> String {
    let mut drawn = "M46 84H294".to_owned();
    if matches!(layout, Layout::OffPeak) {
        drawn.push_str("M46 276H294M75 156V334");
    }
    if matches!(layout, Layout::NonSimultaneous) {
        drawn.push_str("M75 156V180H104");
    }
    drawn
}

/// A screw and its name: beside a leg, above a rung.
fn terminal(screw: Screw, (x, y): At) -> Html {
    let (class, dx, dy) = match screw {
        Screw::Shell => return html! { <circle cx={x.to_string()} cy={y.to_string()} r="3" class="dot" /> },
        Screw::Ja | Screw::Jc | Screw::H1 | Screw::H2 | Screw::H5 | Screw::H6 => ("name", 8, 5),
        Screw::Jb | Screw::Jd | Screw::H3 | Screw::H4 | Screw::H7 | Screw::H8 => ("name end", -8, 5),
        Screw::Jg => ("name end", -8, 5),
        Screw::U4 if y < 200 => ("name", 8, 5),
        Screw::K2 => ("name end", -8, 5),
        Screw::K1 => ("name", -4, 18),
        Screw::K3 => ("name end", -4, 18),
        Screw::U1 | Screw::U3 | Screw::D1 => ("name", 5, -8),
        Screw::U2 | Screw::U4 | Screw::D2 | Screw::K4 => ("name end", -4, -8),
        Screw::UEa | Screw::LEa => ("name", -14, -8),
        _ => ("name end", 14, -8),
    };
    html! {
        <>
            <circle cx={x.to_string()} cy={y.to_string()} r="4" class="screw" />
            <text x={(x + dx).to_string()} y={(y + dy).to_string()} {class}>{ screw.name() }</text>
        </>
    }
}

/// What is fed in at the top of each leg.
fn legs(layout: Layout, hot_neutral: bool) -> Html {
    let second = if hot_neutral { "N" } else { "L2" };
    let feeds = [(Screw::Ja, "L1"), (Screw::Jb, second), (Screw::Jc, "L1"), (Screw::Jd, second)];
    let said = feeds.into_iter().filter_map(|(screw, name)| {
        let (x, y) = spot(screw, layout)?;
        Some(html! { <text x={x.to_string()} y={(y - 10).to_string()} class="lab middle">{ name }</text> })
    });
    html! { <>{ for said }</> }
}

/// What the parts are.
fn names(layout: Layout) -> Html {
    let word = |x: i16, y: i16, class: &'static str, said: String| {
        html! { <text x={x.to_string()} y={y.to_string()} class={classes!("sub", class)}>{ text::fit(said, layout) }</text> }
    };
    let part = |kind| text::part_kind(kind);
    let low = lower(layout);
    let off_peak = matches!(layout, Layout::OffPeak);
    html! {
        <>
            { word(170, 79, "middle", part(PartKind::Limit)) }
            if layout.has_thermostats() {
                { word(52, 126, "", part(PartKind::UpperThermostat)) }
            } else {
                { word(52, 126, "", part(PartKind::Board)) }
                { word(38, 192, "", "T1 T2".to_owned()) }
                { word(38, 232, "", "T3 T4".to_owned()) }
            }
            { word(210, 178, "middle", part(PartKind::UpperElement)) }
            if off_peak {
                { word(184, 204, "middle", text::circuit(Circuit::OffPeak)) }
                { word(170, 271, "middle", part(PartKind::LowerLimit)) }
            }
            if layout.has(Level::Lower) {
                if layout.has_thermostats() {
                    { word(52, low - 24, "", part(PartKind::LowerThermostat)) }
                }
                { word(210, low + 28, "middle", part(PartKind::LowerElement)) }
            }
        </>
    }
}
