//! Strokes and words of the debrief's drawings, written once.

use yew::prelude::*;

/// A length as the drawing has it.
pub fn px(of: f64) -> String {
    format!("{of:.1}")
}

/// A stroke.
pub fn stroke(class: impl Into<Classes>, way: String) -> Html {
    html! { <path class={class.into()} d={way} /> }
}

/// A word.
pub fn word(class: &'static str, x: f64, y: f64, said: impl Into<AttrValue>) -> Html {
    html! { <text {class} x={px(x)} y={px(y)}>{ said.into() }</text> }
}

/// A rectangle.
pub fn sheet(class: impl Into<Classes>, [x, y, width, height]: [f64; 4]) -> Html {
    html! {
        <rect class={class.into()} x={px(x)} y={px(y)} width={px(width.max(0.0))} height={px(height.max(0.0))} />
    }
}

/// Places as near to where they are wanted, in rising order, as they fit so far apart between two edges.
pub fn spread(at: &[f64], from: f64, to: f64, apart: f64) -> Vec<f64> {
    let apart = apart.min((to - from) / at.len().max(1) as f64);
    let mut places = at.to_vec();
    let mut least = f64::NEG_INFINITY;
    for place in &mut places {
        *place = place.max(least);
        least = *place + apart;
    }
    let mut most = to;
    for place in places.iter_mut().rev() {
        *place = place.min(most);
        most = *place - apart;
    }
    places
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_keep_apart_and_stay_on_the_sheet() {
        for at in [vec![10.0, 11.0, 12.0, 90.0], vec![380.0, 398.0, 399.0, 400.0], vec![]] {
            let places = spread(&at, 0.0, 400.0, 20.0);
            assert!(places.windows(2).all(|pair| pair[1] - pair[0] >= 20.0 - 1e-9), "{places:?}");
            assert!(places.iter().all(|x| (0.0..=400.0).contains(x)));
        }
        let crowd: Vec<f64> = (0..100).map(|_| 200.0).collect();
        assert!(spread(&crowd, 0.0, 400.0, 20.0).iter().all(|x| (0.0..=400.0 + 1e-6).contains(x)));
    }
}
