//! The inside of the job under way as it goes: sampled after each act, and between while time is let pass, in turns.

use std::collections::VecDeque;
use std::rc::Rc;

use drill::debrief::{Ladder, Meanwhile, Picture};
use yew::prelude::*;

use crate::store::World;
use crate::turns::Turns;

/// The page is drawn after an act before its inside is sampled.
const BREATH_MS: u32 = 20;

/// What was sampled, up to which world, and the worlds that are still to come.
struct Film {
    session: World,
    picture: Rc<Picture>,
    next: VecDeque<World>,
    /// The wait that led to the next world, while it is sampled.
    meanwhile: Option<Meanwhile>,
}

impl Film {
    fn begun(session: World) -> Self {
        let picture = Rc::new(Picture::of(&session));
        Self { session, picture, next: VecDeque::new(), meanwhile: None }
    }

    /// A world more to sample. Whether that has to be begun: nothing was under way.
    fn then(&mut self, world: &World) -> bool {
        let idle = self.next.is_empty();
        if self.next.back().unwrap_or(&self.session) == world {
            return false;
        }
        self.next.push_back(world.clone());
        idle
    }

    /// Takes a sample more. Whether there are more to come.
    fn go_on(&mut self) -> bool {
        let Some(next) = self.next.front().cloned() else { return false };
        if !self.goes_on_with(&next) {
            self.picture = Rc::new(Picture::of(&next));
            return self.reached(next);
        }
        let step = u32::try_from(next.log.len()).unwrap_or(u32::MAX);
        if self.meanwhile.is_none() {
            self.meanwhile = Meanwhile::of(&self.session, &next, step);
        }
        let picture = Rc::make_mut(&mut self.picture);
        if self.meanwhile.as_mut().is_some_and(|meanwhile| meanwhile.sample(picture)) {
            return true;
        }
        picture.and(&next, step);
        self.reached(next)
    }

    /// The next world is one act more, in a circuit as it was. Whatever else follows begins a film of its own.
    fn goes_on_with(&self, next: &World) -> bool {
        let before = &self.session;
        next.log.len() == before.log.len() + 1
            && next.log.iter().zip(&before.log).all(|(one, other)| Rc::ptr_eq(one, other))
            && Ladder::of(&next.home.plant) == self.picture.ladder
    }

    fn reached(&mut self, world: World) -> bool {
        self.meanwhile = None;
        self.session = world;
        self.next.pop_front();
        !self.next.is_empty()
    }

    /// What there is to show: as far as it has come.
    fn shown(&self) -> (World, Rc<Picture>) {
        (self.session.clone(), self.picture.clone())
    }
}

/// The world that is shown and its film, a breath behind the one that is worked on.
#[hook]
pub fn use_film(now: &World) -> (World, Rc<Picture>) {
    let film = {
        let now = now.clone();
        use_mut_ref(move || Film::begun(now))
    };
    let shown = use_state(|| film.borrow().shown());
    let turns = use_mut_ref(|| None::<Turns>);
    let show = shown.setter();
    use_effect_with(now.clone(), move |now| {
        if film.borrow_mut().then(now) {
            let film = film.clone();
            *turns.borrow_mut() = Some(Turns::after(BREATH_MS, move |_| {
                let before = film.borrow().session.clone();
                let more = film.borrow_mut().go_on();
                let reached = film.borrow().shown();
                if reached.0 != before {
                    show.set(reached);
                }
                more
            }));
        }
    });
    (*shown).clone()
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::{Action, Session};

    fn after(before: &World, action: &Action) -> World {
        let mut later: Session = (**before).clone();
        later.step(action);
        later.into()
    }

    fn steps(film: &Film) -> Vec<u32> {
        film.picture.samples.iter().map(|one| one.step).collect()
    }

    #[test]
    fn the_film_goes_on_with_each_act_and_begins_anew_with_another_job() {
        let start = World::from(Session::begin(crate::begin::example()));
        let mut film = Film::begun(start.clone());
        assert_eq!(film.picture.samples.len(), 1);
        let later = after(&start, &Action::Wait { minutes: 10.0 });
        assert!(film.then(&later));
        while film.go_on() {}
        let steps = steps(&film);
        assert!(steps.len() > 3 && steps[0] == 0 && steps[1..].iter().all(|step| *step == 1), "{steps:?}");
        assert_eq!(film.picture.samples.last().unwrap().at, later.clock);
        assert_eq!(*film.picture, drill::debrief::picture(&[(*start).clone(), (*later).clone()]));
        assert!(film.then(&start));
        assert!(!film.go_on());
        assert_eq!(film.picture.samples.len(), 1);
    }

    #[test]
    fn what_is_done_while_a_wait_is_sampled_comes_after_it() {
        let start = World::from(Session::begin(crate::begin::example()));
        let mut film = Film::begun(start.clone());
        let waited = after(&start, &Action::Wait { minutes: 60.0 });
        let told = after(&waited, &Action::TellHousehold);
        assert!(film.then(&waited));
        assert!(film.go_on());
        assert!(!film.then(&told) && !film.then(&told), "under way already");
        while film.go_on() {}
        assert!(film.session == told);
        assert_eq!(film.picture.samples.last().unwrap().step, 2);
        assert!(steps(&film).is_sorted());
        assert!(!film.then(&told));
    }
}
