//! Drawing in turns: what must answer at once is drawn at once, the rest right after it, so that no turn is long and
//! the page answers between them.

use gloo::render::request_animation_frame;
use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// A hand that has not moved for so long rests, in milliseconds.
const REST_MS: u32 = 150;

/// A value as it was a turn ago, for what need not answer at once.
#[hook]
pub fn use_later<T: Clone + PartialEq + 'static>(now: T) -> T {
    let later = {
        let now = now.clone();
        use_state_eq(move || now)
    };
    let set = later.setter();
    use_effect_with(now, move |now| {
        let now = now.clone();
        let turn = Timeout::new(0, move || set.set(now));
        move || drop(turn)
    });
    (*later).clone()
}

/// A value once nothing has changed it for a while: at once where it changes alone, and only at rest while a hand runs
/// along something.
#[hook]
pub fn use_rest<T: Clone + PartialEq + 'static>(now: T) -> T {
    let rested = {
        let now = now.clone();
        use_state_eq(move || now)
    };
    let set = rested.setter();
    let last = use_mut_ref(|| 0.0);
    use_effect_with(now, move |now| {
        let (now, time) = (now.clone(), js_sys::Date::now());
        let alone = time - last.replace(time) > f64::from(REST_MS);
        let turn = Timeout::new(if alone { 0 } else { REST_MS }, move || set.set(now));
        move || drop(turn)
    });
    (*rested).clone()
}

/// How many of several things are drawn by now: none at first, and so many more each turn until all are there.
#[hook]
pub fn use_share(all: usize, each: usize) -> usize {
    let drawn = use_state_eq(|| 0);
    let set = drawn.setter();
    use_effect_with((*drawn, all), move |&(drawn, all)| {
        let turn = (drawn < all).then(|| Timeout::new(0, move || set.set(drawn + each)));
        move || drop(turn)
    });
    all.min(*drawn)
}

/// The same, one more after each frame: each is laid out before the next is drawn.
#[hook]
pub fn use_frames(all: usize) -> usize {
    let drawn = use_state_eq(|| 0);
    let set = drawn.setter();
    use_effect_with((*drawn, all), move |&(drawn, all)| {
        let frame = (drawn < all).then(|| {
            // Not in the frame itself, which has enough to do.
            request_animation_frame(move |_| drop(Timeout::new(0, move || set.set(drawn + 1)).forget()))
        });
        move || drop(frame)
    });
    *drawn
}
