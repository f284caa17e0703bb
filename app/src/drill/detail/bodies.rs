//! The bodies that the screws sit on: limits, thermostats or a board, the switch of a box in the line.

use bench::Session;
use bench::view::BoxView;
use plant::{BoxKind, Layout, Level, Place};
use yew::prelude::*;

use super::layout::level;
use crate::drill::known::Known;
use crate::text;
use crate::units::Units;

/// The bodies of a place.
pub fn bodies(session: &Session, place: Place, known: &Known, shown: Units) -> Html {
    let layout = session.home.plant.wiring.layout;
    let dial = level(place).and_then(|level| known.dial(level));
    let said = dial.map(|t| shown.words().temperature(t)).unwrap_or_default();
    let sooty = |at| crate::drill::sheet::soot(&known.found, at, 196.0, 306.0);
    match place {
        Place::UpperCompartment => html! {
            <g>
                { limit(30.0, 92.0, known.buttons[0] == Some(true)) }
                { upper_control(layout, &said) }
                { sooty(Level::Upper) }
            </g>
        },
        Place::LowerCompartment => html! {
            <g>
                { lower_control(layout, &said, known.buttons[1] == Some(true)) }
                <circle cx="170" cy="250" r="76" class="flange" />
                { sooty(Level::Lower) }
            </g>
        },
        Place::JunctionBox => html! { <rect x="30" y="44" width="280" height="232" class="part" /> },
        Place::InLineBox => match session.view().in_line {
            Some(seen) => in_line(&seen, session.home.plant.wiring.hot_neutral),
            None => html! {},
        },
        Place::HeaterTop => {
            let stand = session.home.plant.plumbing.stand;
            // Undone, the pipes end above the heater, or above where it stood.
            let end = if stand.is_piped() { 206 } else { 130 };
            html! {
                <g>
                    <path d={format!("M104 0V{end}")} class="cold" />
                    <path d={format!("M276 0V{end}")} class="hot" />
                    if stand.is_there() {
                        if !stand.is_piped() {
                            <path d="M104 206v-20M276 206v-20" class="ink" />
                        }
                        <path d="M20 330V236Q20 200 170 200Q320 200 320 236V330Z" class="card" />
                    }
                </g>
            }
        }
        Place::LoadCenter => html! {
            <g>
                <path d="M46 44V262M102 44V262" class="bus" />
                <path d="M34 294H60M88 294H160" class="bus" />
            </g>
        },
        _ => html! {},
    }
}

/// A limit with its red button in the middle.
fn limit(top: f64, height: f64, proud: bool) -> Html {
    let middle = top + height / 2.0;
    html! {
        <g>
            <rect x="52" y={top.to_string()} width="236" height={height.to_string()} class="part" />
            <circle cx="170" cy={middle.to_string()} r={if proud { "20" } else { "16" }} class="reset" />
            <path d={format!("M162 {middle}h16")} class="mark" />
        </g>
    }
}

fn upper_control(layout: Layout, said: &str) -> Html {
    match layout {
        Layout::Electronic => html! {
            <g>
                <rect x="36" y="128" width="268" height="104" class="card" />
                <rect x="84" y="148" width="76" height="32" class="part" />
                <rect x="180" y="148" width="76" height="32" class="part" />
                <text x="170" y="199" class="sub middle">{ said }</text>
            </g>
        },
        Layout::OffPeak => html! {
            <g>
                <rect x="52" y="140" width="236" height="94" class="card" />
                <circle cx="170" cy="172" r="18" class="dial" />
                <text x="170" y="212" class="sub middle">{ said }</text>
            </g>
        },
        Layout::NonSimultaneous | Layout::Simultaneous | Layout::SingleElement => html! {
            <g>
                <rect x="52" y="146" width="236" height="84" class="card" />
                <circle cx="170" cy="168" r="16" class="dial" />
                <text x="194" y="166" class="sub">{ said }</text>
            </g>
        },
    }
}

fn lower_control(layout: Layout, said: &str, proud: bool) -> Html {
    match layout {
        Layout::Electronic => html! {
            <g>
                <path d="M170 0V84" class="sensor-lead" />
                <rect x="128" y="84" width="84" height="34" class="card" />
                <text x="170" y="106" class="sub middle">{ text::SENSOR }</text>
            </g>
        },
        Layout::OffPeak => html! {
            <g>
                <rect x="36" y="22" width="268" height="52" class="part" />
                <circle cx="170" cy="54" r={if proud { "15" } else { "12" }} class="reset" />
                <path d="M164 54h12" class="mark" />
                <rect x="52" y="92" width="236" height="66" class="card" />
                <circle cx="170" cy="116" r="17" class="dial" />
                <text x="170" y="150" class="sub middle">{ said }</text>
            </g>
        },
        Layout::NonSimultaneous | Layout::Simultaneous | Layout::SingleElement => html! {
            <g>
                <rect x="52" y="46" width="236" height="100" class="card" />
                <circle cx="170" cy="86" r="22" class="dial" />
                <text x="170" y="128" class="sub middle">{ said }</text>
            </g>
        },
    }
}

/// The box in the line with its door off: a pole for each leg it switches.
fn in_line(seen: &BoxView, hot_neutral: bool) -> Html {
    let legs = if hot_neutral { 1 } else { 2 };
    let columns = [90.0, 250.0].into_iter().take(legs).enumerate().map(|(leg, x)| pole(seen, leg, x));
    html! {
        <g>
            <rect x="40" y="40" width="260" height="250" class="part" />
            { for columns }
            { match seen.kind {
                BoxKind::FusedSwitch => html! { <path d="M90 130H250" class="ink bar" /> },
                BoxKind::Timer => html! {
                    <g>
                        <circle cx="170" cy="166" r="42" class="card" />
                        <path d="M170 130v8M206 166h-8M170 202v-8M134 166h8M170 166V146" class="ink thin" />
                        <path d="M170 166l16 10" class="ink" />
                    </g>
                },
                BoxKind::UtilityRelay => html! {
                    <g>
                        <rect x="136" y="142" width="68" height="48" class="card" />
                        <path d="M146 150V182M154 150V182M162 150V182M170 150V182M178 150V182M186 150V182M194 150V182" class="ink thin" />
                    </g>
                },
            } }
        </g>
    }
}

/// One pole: blade or contact, below it the fuse where there are any.
fn pole(seen: &BoxView, leg: usize, x: f64) -> Html {
    let closed = seen.closed.unwrap_or(true);
    let blade = if closed { format!("M{x} 150V104") } else { format!("M{x} 150L{} 116", x + 30.0) };
    let out = seen.pulled.is_some_and(|pulled| pulled.get(leg) == Some(&true));
    html! {
        <g>
            <path d={format!("M{x} 91V104M{x} 150V160M{x} 222V239")} class="ink" />
            <path d={blade} class="ink blade" />
            if seen.kind != BoxKind::FusedSwitch {
                <path d={format!("M{x} 160V222")} class="ink" />
            } else if out {
                <path d={format!("M{} 166h24M{} 216h24", x - 12.0, x - 12.0)} class="ink" />
            } else {
                <rect x={(x - 12.0).to_string()} y="160" width="24" height="62" class="card" />
            }
        </g>
    }
}
