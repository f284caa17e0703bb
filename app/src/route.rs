//! Where the page is: the address's fragment, which no server ever sees.

use gloo::events::EventListener;
use gloo::utils::window;
use yew::prelude::*;

/// A page of the page.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Route {
    /// The doors: practise alone, exam, instructor.
    #[default]
    Doors,
    /// A drill under way.
    Drill,
    /// What a finished drill amounted to.
    Debrief,
    /// The instructor's desk.
    Instructor,
    /// An exam.
    Exam,
    /// Where every number comes from.
    Sources,
    /// Every fault beside a sound house.
    Atlas,
    /// The trade's terms.
    Glossary,
    /// The job under way for a room to see, its inside shown.
    Show,
}

impl Route {
    /// All of them.
    pub const ALL: [Self; 9] = [
        Self::Doors,
        Self::Drill,
        Self::Debrief,
        Self::Instructor,
        Self::Exam,
        Self::Sources,
        Self::Atlas,
        Self::Glossary,
        Self::Show,
    ];

    /// Its fragment, to link to.
    pub const fn href(self) -> &'static str {
        match self {
            Self::Doors => "#/",
            Self::Drill => "#/drill",
            Self::Debrief => "#/debrief",
            Self::Instructor => "#/instructor",
            Self::Exam => "#/exam",
            Self::Sources => "#/sources",
            Self::Atlas => "#/atlas",
            Self::Glossary => "#/glossary",
            Self::Show => "#/show",
        }
    }

    /// The page that is open.
    pub fn now() -> Self {
        Address::now().route
    }

    /// Goes there.
    pub fn open(self) {
        // Refused only when the page itself is being torn down.
        let _ = window().location().set_hash(self.href());
    }
}

/// A route with what follows it in the fragment, such as a drill code: `#/drill/CODE`.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Address {
    /// The route.
    pub route: Route,
    /// What follows it, without the slash.
    pub rest: String,
}

impl Address {
    /// Reads a fragment; what is not known opens the doors.
    pub fn from_fragment(fragment: &str) -> Self {
        let path = fragment.trim_start_matches('#').trim_start_matches('/');
        let (name, rest) = path.split_once('/').unwrap_or((path, ""));
        Route::ALL
            .into_iter()
            .find(|route| !name.is_empty() && route.href().trim_start_matches("#/") == name)
            .map_or_else(Self::default, |route| Self { route, rest: rest.to_owned() })
    }

    fn now() -> Self {
        Self::from_fragment(&window().location().hash().unwrap_or_default())
    }
}

/// Follows the address.
#[hook]
pub fn use_address() -> Address {
    let address = use_state(Address::now);
    let set = address.setter();
    use_effect_with((), move |()| {
        let listener = EventListener::new(&window(), "hashchange", move |_| set.set(Address::now()));
        move || drop(listener)
    });
    (*address).clone()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fragment_names_a_route_and_what_follows() {
        for route in Route::ALL {
            assert_eq!(Address::from_fragment(route.href()).route, route);
        }
        let address = Address::from_fragment("#/drill/K7QD-3M2A");
        assert_eq!((address.route, address.rest.as_str()), (Route::Drill, "K7QD-3M2A"));
        assert_eq!(Address::from_fragment("#/nowhere/else"), Address::default());
        assert_eq!(Address::from_fragment(""), Address::default());
    }
}
