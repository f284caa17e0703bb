//! The drawing, 466 by 640: ink on paper, a place to go wherever something can be done.

use std::rc::Rc;

use bench::person::Harm;
use yew::prelude::*;

use super::frame::Frame;
use super::heater::Heater;
use super::in_line::{in_line, off_peak_relay};
use super::leads::Leads;
use super::load_center::LoadCenter;
use super::main_valve::main_valve;
use super::people::People;
use super::pipes::{Pipes, RELIEF_WORDS};
use super::taps::Taps;
use crate::drill::known::Known;
use crate::said::use_voice;
use crate::store::World;
use crate::text;

/// The world and what is known of it.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// What was perceived.
    pub known: Rc<Known>,
}

/// A cloud, from above the relief valve and its words up.
const STEAM: &str =
    "M0 0q-22 2-20-16q-18-8-6-24q-10-22 14-26q8-20 30-10q24-8 28 12q20 6 10 24q10 18-10 24q-4 18-26 14Z";

/// Whether the last act let steam out.
fn steams(session: &World) -> bool {
    session
        .log
        .last()
        .is_some_and(|last| last.outcome.harms.iter().any(|harm| matches!(harm, Harm::Steam { .. })))
}

/// The drawing.
#[component]
pub fn Sheet(props: &Props) -> Html {
    let voice = use_voice();
    let (wet, steam) = (voice.text("symptom-wet"), voice.text("burn-source-steam"));
    let Props { session, known } = props;
    let view = session.view();
    let frame = Frame::of(&session.home.plant.plate);
    html! {
        <svg class="sheet" viewBox="0 0 466 640" role="toolbar" aria-label={text::DRAWING}>
            <defs>
                <pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                    <line x1="0" y1="0" x2="0" y2="7" class="rule" />
                </pattern>
            </defs>
            <rect x="0" y="613" width="466" height="12" fill="url(#hatch)" />
            <line x1="0" y1="613" x2="466" y2="613" class="ink" />
            if view.on_floor.is_some() {
                <ellipse cx="248" cy="613" rx="96" ry="6" class="water" role="img" aria-label={wet} />
            }
            <Pipes view={view.clone()} {frame} known={known.clone()} second_circuit={matches!(session.home.plant.wiring.layout, plant::Layout::OffPeak)} recirculation={session.home.plant.plumbing.recirculation} />
            { main_valve(session.home.plant.plumbing.main_valve) }
            if session.home.plant.off_peak.is_some() {
                { off_peak_relay(known.relay) }
            }
            if let Some(seen) = view.in_line {
                { in_line(&seen) }
            }
            <LoadCenter session={session.clone()} known={known.clone()} />
            if view.stand.is_there() {
                <Heater session={session.clone()} known={known.clone()} />
            }
            <Taps taps={view.taps} />
            if steams(session) {
                <path class="steam" role="img" aria-label={steam} d={STEAM} transform={format!("translate({} {})", frame.right() + 22.0, frame.relief().min(RELIEF_WORDS) - 22.0)} />
            }
            <Leads session={session.clone()} />
            <People />
        </svg>
    }
}
