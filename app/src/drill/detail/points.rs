//! The points of a detail: screws and bare wire ends, each a button of its own.

use std::rc::Rc;

use plant::{Place, Point};
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};
use yew::prelude::*;

use super::layout::{At, screws};
use super::path::{Bare, drawn};
use crate::drill::known::Known;
use crate::drill::sheet::hot::hot_keys;
use crate::store::{Desk, Msg, World, use_steady, use_work};
use crate::text;

/// The world, what is known of it, and the place.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// What was perceived.
    pub known: Rc<Known>,
    /// Where.
    pub place: Place,
}

/// The points.
#[component]
pub fn Points(props: &Props) -> Html {
    let work = use_work();
    let picked = work.desk.point;
    let Props { session, known, place } = props;
    let layout = session.home.plant.wiring.layout;
    let drawn = drawn(*place, &session.home.plant.wiring, &session.lost());
    let mut ends: Vec<Bare> = drawn.into_iter().flat_map(|(_, drawn)| drawn.ends).collect();
    quantity::sort::sort_by_key(&mut ends, |one| one.letter);
    let ends = ends.into_iter().map(|one| {
            let labelled = session.home.plant.wiring.joint(one.end).labelled;
            let point = Point::End(one.end);
            let charred = known.charred.contains(&one.end);
            let about = about(&work.desk, point, !one.landed, labelled, charred);
            let said = text::point(point, &session.home.plant.wiring);
            // Where true names are spoken, as in a look inside, there is no letter to write.
            let lettered = text::letter(one.end).is_some();
            let name = lettered.then_some(if one.landed { LETTER } else { BELOW });
            html! { <Dot {point} picked={picked == Some(point)} {said} at={one.at} {name} lifted={!one.landed} {labelled} {about} /> }
        });
    let screws = screws(*place, layout)
        .iter()
        .filter(|one| session.home.plant.wiring.has_screw(one.screw))
        .map(|one| {
            let point = Point::Screw(one.screw);
            let about = about(&work.desk, point, false, false, false);
            let said = text::point(point, &session.home.plant.wiring);
            html! { <Dot {point} picked={picked == Some(point)} {said} at={one.at} name={one.name} {about} /> }
        });
    let changes = use_steady().changes;
    let onclick = Callback::from(move |event: MouseEvent| {
        let Some((point, at)) = meant(&event) else { return };
        // The finger may have touched a neighbour.
        let _ = at.focus();
        changes.dispatch(Msg::Pick(point));
    });
    html! { <g role="toolbar" aria-label={text::PICK_POINT} {onclick}>{ for screws }{ for ends }</g> }
}

/// The point that a press is for: where points lie close, the nearest one to the finger. What no finger pressed, a screen
/// reader, say, is for the very point.
fn meant(event: &MouseEvent) -> Option<(Point, HtmlElement)> {
    let pressed = event.target()?.dyn_into::<Element>().ok()?.closest("[data-point]").ok()??;
    let all = pressed.parent_element()?.query_selector_all("[data-point]").ok()?;
    let finger = event.detail() > 0;
    let far = |one: &Element| {
        let area = one.query_selector(".hit").ok()??.get_bounding_client_rect();
        let x = area.x() + area.width() / 2.0 - f64::from(event.client_x());
        let y = area.y() + area.height() / 2.0 - f64::from(event.client_y());
        Some(x * x + y * y)
    };
    let each = (0..all.length()).filter_map(|at| all.item(at)?.dyn_into::<Element>().ok());
    let near = each.filter(|_| finger).filter_map(|one| Some((far(&one)?, one)));
    let nearest = near.reduce(|a, b| if b.0 < a.0 { b } else { a }).map_or(pressed, |(_, one)| one);
    // A part of a drawing takes the focus by the same name.
    Some((nearest.get_attribute("data-point")?.parse().ok()?, nearest.unchecked_into()))
}

/// Where a wire end's letter stands from it.
const LETTER: At = (9.0, -7.0);
/// The same where it hangs in a row with others.
const BELOW: At = (-4.0, 21.0);

/// What else is seen at a point, in words.
fn about(desk: &Desk, point: Point, lifted: bool, labelled: bool, charred: bool) -> AttrValue {
    let all = [
        (lifted, text::POINT_LIFTED),
        (labelled, text::POINT_LABELLED),
        (charred, text::POINT_CHARRED),
        (desk.red == Some(point), text::POINT_RED_LEAD),
        (desk.black == Some(point), text::POINT_BLACK_LEAD),
    ];
    let said: Vec<String> = all.iter().filter(|one| one.0).map(|one| one.1.to_string()).collect();
    said.join("; ").into()
}

/// One point.
#[derive(Properties, PartialEq)]
struct DotProps {
    point: Point,
    picked: bool,
    said: AttrValue,
    at: At,
    #[prop_or_default]
    name: Option<At>,
    #[prop_or_default]
    lifted: bool,
    #[prop_or_default]
    labelled: bool,
    about: AttrValue,
}

#[component]
fn Dot(props: &DotProps) -> Html {
    let changes = use_steady().changes;
    let point = props.point;
    let (x, y) = props.at;
    let picked = props.picked;
    let pick = Callback::from(move |()| changes.dispatch(Msg::Pick(point)));
    let screw = matches!(point, Point::Screw(_));
    let described = (!props.about.is_empty()).then(|| format!("about-{point}"));
    let (ring, radius, kind) = if screw { ("17", "11", "screw") } else { ("13", "5", "copper-end") };
    html! {
        <g
            class={classes!("point", picked.then_some("picked"), props.lifted.then_some("lifted"))}
            role="button"
            tabindex="0"
            aria-label={&props.said}
            aria-describedby={described.clone()}
            aria-pressed={picked.to_string()}
            data-point={point.to_string()}
            onkeydown={hot_keys(pick)}
        >
            if described.is_some() {
                <desc id={described}>{ &props.about }</desc>
            }
            // A finger's width on a phone; where two of them meet, the nearer point is meant.
            <circle class="hit" cx={x.to_string()} cy={y.to_string()} r="24" />
            <circle class={kind} cx={x.to_string()} cy={y.to_string()} r={radius} />
            <circle class="ring" cx={x.to_string()} cy={y.to_string()} r={ring} />
            if props.labelled {
                <rect class="flag" x={(x - 3.0).to_string()} y={(y + 8.0).to_string()} width="14" height="9" />
            }
            if let Some((dx, dy)) = props.name {
                <text class="name" x={(x + dx).to_string()} y={(y + dy).to_string()}>{ text::mark(point) }</text>
            }
        </g>
    }
}
