//! The inside of the job under way as it goes: sampled after each act, and between while time is let pass.

use std::rc::Rc;

use crate::store::World;
use drill::debrief::{Picture, picture};
use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// The page is drawn after an act before its inside is sampled.
const BREATH_MS: u32 = 20;

/// What was sampled, and of which world.
#[derive(Clone)]
struct Film {
    session: World,
    picture: Rc<Picture>,
}

impl Film {
    fn begun(session: World) -> Self {
        let picture = Rc::new(picture(std::slice::from_ref(&*session)));
        Self { session, picture }
    }

    /// One act more. Whatever else it is that follows, it begins a film of its own.
    fn and(&self, next: &World) -> Self {
        let before = &self.session;
        let follows = next.log.len() == before.log.len() + 1
            && next.log.iter().zip(&before.log).all(|(one, other)| Rc::ptr_eq(one, other));
        if !follows {
            return Self::begun(next.clone());
        }
        let more = picture(&[(**before).clone(), (**next).clone()]);
        if more.ladder != self.picture.ladder {
            return Self::begun(next.clone());
        }
        let mut all = (*self.picture).clone();
        let step = u32::try_from(next.log.len()).unwrap_or(u32::MAX);
        all.samples.extend(more.samples.into_iter().skip(1).map(|mut one| {
            one.step = step;
            one
        }));
        Self { session: next.clone(), picture: Rc::new(all) }
    }
}

/// The world that is shown and its film, a breath behind the one that is worked on.
#[hook]
pub fn use_film(now: &World) -> (World, Rc<Picture>) {
    let film = {
        let now = now.clone();
        use_state(move || Film::begun(now))
    };
    {
        let (film, now) = (film.clone(), now.clone());
        use_effect_with(now, move |now| {
            let now = now.clone();
            let behind = film.session != now;
            let timer = behind.then(|| Timeout::new(BREATH_MS, move || film.set(film.and(&now))));
            move || drop(timer)
        });
    }
    (film.session.clone(), film.picture.clone())
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::Action;

    #[test]
    fn the_film_goes_on_with_each_act_and_begins_anew_with_another_job() {
        let start = World::from(bench::Session::begin(crate::begin::example()));
        let film = Film::begun(start.clone());
        assert_eq!(film.picture.samples.len(), 1);
        let mut later = (*start).clone();
        later.step(&Action::Wait { minutes: 10.0 });
        let later = World::from(later);
        let film = film.and(&later);
        let steps: Vec<u32> = film.picture.samples.iter().map(|one| one.step).collect();
        assert!(steps.len() > 3 && steps[0] == 0 && steps[1..].iter().all(|step| *step == 1), "{steps:?}");
        assert_eq!(film.picture.samples.last().unwrap().at, later.clock);
        assert_eq!(film.and(&start).picture.samples.len(), 1);
    }
}
