//! What a technician would hear, for who wants it: the meter's tone, a control that snaps over. Off until it is switched
//! on; everything heard is also in the log.

use bench::{Display, Entry, Noticed, Shown, Sight};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::HtmlAudioElement;
use yew::prelude::*;

use crate::here::Setting;
use crate::store::use_work;

/// Plays what each new act lets hear. It draws nothing.
#[component]
pub fn Sounds() -> Html {
    let work = use_work();
    let job = work.running.as_ref();
    let last = job.and_then(|job| job.session.log.last().filter(|_| job.session.log.len() > job.restored));
    let heard = last.and_then(|entry| heard(entry));
    use_effect_with(job.map_or(0, |job| job.session.log.len()), move |_| {
        if let Some(name) = heard.filter(|_| Setting::Sound.is_on()) {
            play(name);
        }
    });
    html! {}
}

/// The sound of an act.
fn heard(entry: &Entry) -> Option<&'static str> {
    let clicks = |sight: &Sight| matches!(sight, Sight::Clicked | Sight::Starts { started: true });
    let noticed = || entry.outcome.noticed.iter().any(|one| matches!(one, Noticed::Click { .. }));
    match &entry.outcome.shown {
        Shown::Meter { display: Display::Tone { on: true } } => Some("tone"),
        Shown::Sights { sights, .. } | Shown::DoneWith { sights, .. } if sights.iter().any(clicks) => {
            Some("click")
        }
        _ => noticed().then_some("click"),
    }
}

fn play(name: &str) {
    let begun =
        HtmlAudioElement::new_with_src(&format!("assets/asked/{name}.wav")).and_then(|one| one.play());
    if let Ok(begun) = begun {
        // A browser may refuse to play: what was to be heard is in the log.
        spawn_local(async { drop(JsFuture::from(begun).await) });
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_control_that_starts_is_heard_and_a_reading_is_not() {
        let fault = drill::Wanted::One(plant::FaultId::F55);
        let heater = Some(plant::HeaterModel::Plain40);
        let order = drill::Order { heater, fault, ..drill::Order::chance(7, bench::Mode::Solo) };
        let bare = [bench::Cover::Upper, bench::Cover::UpperInsulation, bench::Cover::UpperShield];
        let begun = bench::Session::begin(drill::make(&order).unwrap().job);
        let open = bare.map(|which| bench::Action::Cover { which, off: true });
        let open = open.iter().fold(begun, |session, act| bench::reduce(&session, act).0);
        let after = |act| bench::reduce(&open, &act).0.log.last().and_then(|entry| heard(entry));
        assert_eq!(after(bench::Action::TryStart), Some("click"));
        assert_eq!(after(bench::Action::ProveMeter { on: bench::KnownSource::Receptacle }), None);
    }
}
