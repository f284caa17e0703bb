//! Symbols of the ladder, each drawn level around its middle, 44 wide.

use drill::debrief::Part;
use yew::prelude::*;

use super::svg::stroke;

/// A part with how it stands: the class of what flows in it and of each of its ends.
pub fn symbol(
    part: Part,
    closed: bool,
    class: &'static str,
    ends: [&'static str; 2],
    leak: bool,
    place: String,
) -> Html {
    let [near, far] = ends;
    let double = |class: &'static str, way: &'static str| {
        html! {
            <>
                { stroke(classes!("way", class), way.to_owned()) }
                if class == "runs" { { stroke("core", way.to_owned()) } }
            </>
        }
    };
    let runs = class == "runs";
    let (near, far) = if runs { (class, class) } else { (near, far) };
    let drawn = match (part, closed) {
        (Part::Element(_), true) => double(class, "M-22 0h4l2-7 5 14 5-14 5 14 5-14 5 14 5-14 2 7h6"),
        (Part::Element(_), false) => html! {
            <>{ double(near, "M-22 0h4l2-7 5 14 3-9") }{ double(far, "M22 0h-4l-2 7-5-14-3 9") }</>
        },
        (Part::Board, _) => {
            stroke(classes!("way", class, "box"), "M-22-9h44v18h-44ZM-13-3h26M-13 3h16".to_owned())
        }
        (_, true) => double(class, "M-22 0H22"),
        (_, false) => html! { <>{ double(near, "M-22 0L14-14") }{ double(far, "M22 0h-2") }</> },
    };
    html! {
        <g transform={place}>
            { drawn }
            if leak {
                { stroke("way live", "M0-8v-9M-9-17h18M-6-21h12M-3-25h6".to_owned()) }
            }
        </g>
    }
}
