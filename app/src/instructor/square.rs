//! A link as a square code (ISO/IEC 18004) for a camera.

use qrcode::{Color, EcLevel, QrCode};
use yew::prelude::*;

use crate::said::use_voice;

/// Empty modules around the code that the standard asks for.
const QUIET: usize = 4;

/// The link.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The link.
    pub text: AttrValue,
}

/// The code; nothing when the link is too long for one.
#[component]
pub fn Square(props: &Props) -> Html {
    let voice = use_voice();
    let drawn = use_memo(props.text.clone(), |text| modules(text));
    let Some((size, path)) = &*drawn else { return html! {} };
    html! {
        <svg class="square" viewBox={format!("0 0 {size} {size}")} role="img" aria-label={voice.text("instructor-square")} shape-rendering="crispEdges">
            <rect class="light" width={size.to_string()} height={size.to_string()} />
            <path class="dark" d={path.clone()} />
        </svg>
    }
}

/// The side with its margin, and the dark modules as one path.
fn modules(text: &str) -> Option<(usize, AttrValue)> {
    let code = QrCode::with_error_correction_level(text, EcLevel::M).ok()?;
    let width = code.width();
    let mut path = String::new();
    for (at, _) in code.to_colors().iter().enumerate().filter(|(_, color)| **color == Color::Dark) {
        path.push_str(&format!("M{} {}h1v1h-1z", at % width + QUIET, at / width + QUIET));
    }
    Some((width + 2 * QUIET, path.into()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_link_becomes_a_square_with_its_three_corners() {
        let (size, path) = modules("https://school.example/tankwright/#/drill/10G0-4NAB-CDE").unwrap();
        // 56 bytes at level M need version 4: 33 modules a side.
        assert_eq!(size, 33 + 2 * QUIET);
        for corner in ["M4 4h", "M36 4h", "M4 36h"] {
            assert!(path.contains(corner), "{corner}");
        }
        assert!(modules(&"x".repeat(4000)).is_none());
    }
}
