//! A place on the drawing that can be gone to, by mouse, touch or key.

use plant::Place;
use yew::prelude::*;

use super::hot::hot_keys;
use crate::drill::place::go;
use crate::store::use_work;
use crate::text;

/// A place and the rectangle that answers for it.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Where it leads.
    pub place: Place,
    /// Left, top, width, height on the drawing.
    pub area: (f64, f64, f64, f64),
    /// What is drawn there.
    #[prop_or_default]
    pub children: Html,
}

/// The place.
#[component]
pub fn Spot(props: &Props) -> Html {
    let work = use_work();
    let (x, y, width, height) = props.area;
    let here = work.desk.at == Some(props.place);
    let place = props.place;
    let seen = format!("seen-{}", place.name());
    let go = Callback::from(move |()| go(&work, place));
    let onclick = {
        let go = go.clone();
        Callback::from(move |_: MouseEvent| go.emit(()))
    };
    html! {
        <g
            class={classes!("spot", here.then_some("here"))}
            role="button"
            tabindex="0"
            aria-label={text::place(place)}
            aria-describedby={seen.clone()}
            aria-current={here.then_some("location")}
            data-place={place.name()}
            {onclick}
            onkeydown={hot_keys(go)}
        >
            // A button's own texts are not read out: they are its description.
            <g id={seen}>{ props.children.clone() }</g>
            <rect
                class="hit"
                x={x.to_string()}
                y={y.to_string()}
                width={width.to_string()}
                height={height.to_string()}
            />
        </g>
    }
}
