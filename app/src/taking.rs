//! Taking a job from a door, the debrief or the atlas: the line while its days are lived, a stop, what went wrong.

use std::cell::RefCell;
use std::rc::Rc;

use drill::Order;
use yew::prelude::*;

use crate::away::Asked;
use crate::begin;
use crate::compose::name_drill;
use crate::shell::Busy;
use crate::store::{WorkHandle, use_work};
use crate::text::text;

/// A job being taken, from inside a component.
#[derive(Clone)]
pub struct Taking {
    work: WorkHandle,
    asked: Rc<RefCell<Option<Asked>>>,
    dealing: UseStateHandle<bool>,
    problem: UseStateHandle<String>,
    taken: Callback<()>,
}

/// What a component holds to take a job. Told when it is on the page.
#[hook]
pub fn use_taking(taken: Callback<()>) -> Taking {
    let work = use_work();
    let asked = use_mut_ref(|| None::<Asked>);
    let dealing = use_state(|| false);
    let problem = use_state(String::new);
    Taking { work, asked, dealing, problem, taken }
}

impl Taking {
    /// Takes a job. What was under way is given up once it is dealt.
    pub fn take(&self, order: &Order, learner: &str) {
        let (dealing, problem, taken) = (self.dealing.setter(), self.problem.setter(), self.taken.clone());
        self.dealing.set(true);
        let told = Callback::from(move |result: Result<(), String>| {
            dealing.set(false);
            match result {
                Ok(()) => taken.emit(()),
                Err(why) => problem.set(why),
            }
        });
        *self.asked.borrow_mut() = Some(begin::begin(&self.work, &name_drill(order), learner, told));
    }

    /// Whether its days are being lived.
    pub fn is_under_way(&self) -> bool {
        *self.dealing
    }

    /// Why it could not be taken, where it could not.
    pub fn problem(&self) -> Html {
        if self.problem.is_empty() {
            return html! {};
        }
        html! { <p class="warn" role="alert">{ &*self.problem }</p> }
    }

    /// The line that says so and stops it, or what stands there otherwise.
    pub fn or(&self, otherwise: Html) -> Html {
        if !self.is_under_way() {
            return otherwise;
        }
        let dealing = self.dealing.setter();
        let onstop = Callback::from(move |()| dealing.set(false));
        html! { <Busy said={text("page-dealing")} {onstop} /> }
    }
}
