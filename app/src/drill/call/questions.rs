//! The questions, with the answers already given.

use bench::{Action, Question, Session, Shown};
use plant::household::Answer;
use yew::prelude::*;

use crate::said::use_units;
use crate::shell::Act;
use crate::store::World;
use crate::text;

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The list. A question asked shows its answer in the question's place.
#[component]
pub fn Questions(props: &Props) -> Html {
    let units = use_units();
    let session = &props.session;
    let asked = Question::ALL.iter().filter(|one| answer(session, **one).is_some()).count();
    let rows = Question::ALL.iter().map(|&question| {
        let action = Action::Ask { question };
        html! {
            <li key={question.name()}>
                if let Some(answer) = answer(session, question) {
                    <p class="asked">{ text::question(question) }</p>
                    <p class="quote small">{ format!("“{}”", text::answer(answer, units)) }</p>
                } else {
                    <Act {action} label={text::question(question)} class="plain" />
                }
            </li>
        }
    });
    html! {
        <details class="questions" open=true>
            <summary><h2>{ text::ASK }</h2><span>{ format!("{asked}/{}", Question::ALL.len()) }</span></summary>
            <ul class="asks">{ for rows }</ul>
        </details>
    }
}

/// The answer given to a question so far.
pub fn answer(session: &Session, question: Question) -> Option<Answer> {
    session.log.iter().rev().find_map(|entry| match (&entry.action, &entry.outcome.shown) {
        (Action::Ask { question: asked }, Shown::Said { answer }) if *asked == question => Some(*answer),
        _ => None,
    })
}
