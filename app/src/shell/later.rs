//! Drawing in turns: what must answer at once is drawn at once, the rest right after it, so that no turn is long and
//! the page answers between them.

use gloo::render::request_animation_frame;
use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// A hand that has not moved for so long rests, in milliseconds.
const REST_MS: u32 = 150;
/// What keeps pace with a hand is drawn again after so many milliseconds.
const PACE_MS: f64 = 100.0;

/// A value so many milliseconds after it last changed, as asked at each change.
#[hook]
fn use_after<T: Clone + PartialEq + 'static>(now: T, wait: impl FnOnce() -> u32 + 'static) -> T {
    let after = {
        let now = now.clone();
        use_state_eq(move || now)
    };
    let set = after.setter();
    use_effect_with(now, move |now| {
        let now = now.clone();
        let turn = Timeout::new(wait(), move || set.set(now));
        move || drop(turn)
    });
    (*after).clone()
}

/// A value as it was a turn ago, for what need not answer at once.
#[hook]
pub fn use_later<T: Clone + PartialEq + 'static>(now: T) -> T {
    use_after(now, || 0)
}

/// A value once nothing has changed it for a while: at once where it changes alone, and only at rest while a hand runs
/// along something.
#[hook]
pub fn use_rest<T: Clone + PartialEq + 'static>(now: T) -> T {
    let last = use_mut_ref(|| 0.0);
    use_after(now, move || {
        let time = js_sys::Date::now();
        let alone = time - last.replace(time) > f64::from(REST_MS);
        if alone { 0 } else { REST_MS }
    })
}

/// A value that keeps pace: at once where it changes alone, and so often and no oftener while a hand runs along something.
#[hook]
pub fn use_paced<T: Clone + PartialEq + 'static>(now: T) -> T {
    // When it was drawn last, and when it is drawn next.
    let drawn = use_mut_ref(|| (0.0, f64::INFINITY));
    use_after(now, move || {
        let time = js_sys::Date::now();
        let (last, next) = *drawn.borrow();
        let last = if next <= time { next } else { last };
        let next = time.max(last + PACE_MS);
        drawn.replace((last, next));
        (next - time) as u32
    })
}

/// A value half a pace later, so that not everything that keeps pace is drawn in one turn.
#[hook]
pub fn use_half_a_pace_later<T: Clone + PartialEq + 'static>(now: T) -> T {
    use_after(now, || (PACE_MS / 2.0) as u32)
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

/// Whether something folded away has been unfolded, and what tells so. A long text or table is made only then: the
/// browser lays it out even where it is folded away.
#[hook]
pub fn use_unfolded() -> (bool, Callback<Event>) {
    let unfolded = use_state_eq(|| false);
    let set = unfolded.setter();
    (*unfolded, Callback::from(move |_| set.set(true)))
}
