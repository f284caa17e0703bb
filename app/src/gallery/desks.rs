//! The exam from its door to its end, and the instructor's desk: what is handed out, what is read in.

use bench::{Action, Mode};
use drill::{Attempt, Order, Practice};
use plant::{HeaterModel, Location};
use yew::prelude::*;

use super::stand::{Opened, Stand, calls_in, frame, house, wide};
use super::worked::Worked;
use crate::exam::{ExamClock, ExamDoor, Locked};
use crate::files::Picked;
use crate::instructor::Instructor;
use crate::instructor::collect::Collect;
use crate::instructor::hand_out::HandOut;
use crate::instructor::handout::Handout;
use crate::store::{Head, World};

/// An exam with both limits.
const EXAM: &str = r#"{"seed": 7, "fault": "F01", "mode": "exam", "limit-minutes": 90, "clock-minutes": 30}"#;
/// The drill that the attempts of the table are of.
const SOLO: &str = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "solo"}"#;
/// A metal part touched under power, and handed over.
const RASH: &str = r#"[{"do":"cover","which":"lower","off":true},{"do":"cover","which":"lower-insulation","off":true},{"do":"cover","which":"lower-shield","off":true},
{"do":"touch","at":{"what":"metal","point":"D1"}},{"do":"hand-over"}]"#;

/// What opens a code.
const ENTER: &[&str] = &["[data-act=enter-code]"];
/// An exam, and faults by name.
const BY_NAME: &[&str] = &["input[name=mode][value=exam]", "input[name=fault][value=named]"];

/// An exam under way that began so many minutes ago.
fn clock(caption: &str, minutes: f64) -> Option<Html> {
    let home = house(HeaterModel::Plain40, None, Location::Basement);
    let session = World::from(calls_in(Mode::Exam, home, "[]")?.pop()?);
    let began = js_sys::Date::now() - minutes * 60_000.0;
    let head = Head { attempt: format!("{began:.0}"), drill: EXAM.into(), ..Head::default() };
    Some(frame(caption.to_owned(), html! { <Stand {session} {head}><ExamClock /></Stand> }))
}

/// The exam.
pub fn exam() -> Html {
    let attempt = Order::read(EXAM).ok().map(|order| Attempt::new("Bench 4", order));
    html! {
        <>
            { wide("exam, its door", html! { <ExamDoor /> }) }
            { wide("exam, a code that is none", html! {
                <Worked write={Some(("[data-field=code]", "K7QD".into()))} press={ENTER.to_vec()}><ExamDoor /></Worked>
            }) }
            { wide("exam, a drill that is none", html! {
                <Worked write={Some(("[data-field=code]", SOLO.into()))} press={ENTER.to_vec()}><ExamDoor /></Worked>
            }) }
            { wide("exam, before the start", html! {
                <Worked write={Some(("[data-field=code]", EXAM.into()))} press={ENTER.to_vec()}><ExamDoor /></Worked>
            }) }
            { clock("exam, time left", 3.0).unwrap_or_default() }
            { clock("exam, time short", 27.0).unwrap_or_default() }
            if let Some(attempt) = attempt {
                { wide("exam, over", html! { <div class="doors"><Opened><Locked attempt={std::rc::Rc::new(attempt)} onopen={Callback::noop()} /></Opened></div> }) }
            }
        </>
    }
}

/// An attempt file of a drill.
fn file(name: &str, learner: &str, practice: Practice, acts: &str) -> Option<Picked> {
    let mut attempt = Attempt::new(learner, Order::read(SOLO).ok()?);
    attempt.practice = practice;
    attempt.actions = serde_json::from_str::<Vec<Action>>(acts).ok()?;
    Some(Picked { name: name.to_owned(), text: Some(attempt.write()) })
}

/// A class: a clean end, one with practice, one in danger without a name, one whose digests are gone, and three files of
/// no use.
fn class() -> Vec<Picked> {
    let helped = Practice { carried: 2, taken_back: 3 };
    let none = Practice::default();
    let short = r#"[{"do":"tell-household"},{"do":"stop-and-call","whom":"electrician"}]"#;
    let bad = |name: &str, text: Option<&str>| {
        Some(Picked { name: name.to_owned(), text: text.map(str::to_owned) })
    };
    let unsealed = file("d.json", "Bench 7", none, short).and_then(|one| {
        let mut all: serde_json::Value = serde_json::from_str(&one.text?).ok()?;
        all.as_object_mut()?.remove("links");
        Some(Picked { text: Some(all.to_string()), ..one })
    });
    [
        file("a.json", "Bench 4", none, short),
        file("b.json", "Bench 5", helped, r#"[{"do":"hand-over"}]"#),
        file("c.json", "", none, RASH),
        unsealed,
        bad("cut.json", Some("{")),
        bad(
            "edited.json",
            file("", "Bench 6", none, short)
                .and_then(|one| one.text)
                .map(|text| text.replace("Bench 6", "Bench 8"))
                .as_deref(),
        ),
        bad("large.json", None),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// The instructor's desk.
pub fn instructor() -> Html {
    let sheet = |order: &str| {
        Order::read(order).ok().map(|order| html! {
            <>
                { frame(format!("handed out, {:?}", order.mode), html! { <div class="desk"><Handout order={order.clone()} /></div> }) }
                { frame(format!("on paper, {:?}", order.mode), html! { <div class="desk on-paper"><Handout {order} /></div> }) }
            </>
        })
    };
    html! {
        <>
            { wide("instructor, handing out", html! { <form><Instructor /></form> }) }
            // In forms of their own: what is chosen in one is not taken from another.
            { wide("instructor, an exam by named faults", html! {
                <form class="desk"><Worked press={BY_NAME.to_vec()}><HandOut /></Worked></form>
            }) }
            { wide("instructor, a limit that is none", html! {
                <form class="desk"><Worked write={Some(("[data-field=limit]", "x".into()))}><HandOut /></Worked></form>
            }) }
            { for [SOLO, EXAM].into_iter().filter_map(sheet) }
            { wide("instructor, nothing read in", html! { <div class="desk"><Opened><Collect /></Opened></div> }) }
            { wide("instructor, a class", html! { <div class="desk"><Collect files={class()} /></div> }) }
            { wide("instructor, an attempt", html! {
                <div class="desk"><Worked press={vec![".class-table button.link"]}><Collect files={class().into_iter().take(1).collect::<Vec<_>>()} /></Worked></div>
            }) }
        </>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_class_has_four_attempts_and_three_files_of_no_use() {
        let read = |one: &Picked| one.text.as_deref().map(Attempt::read);
        let all = class();
        let good: Vec<Attempt> = all.iter().filter_map(|one| read(one)?.ok()).collect();
        assert_eq!((all.len(), good.len()), (7, 4));
        assert_eq!(good.iter().filter(|one| one.seal == drill::Seal::Unsealed).count(), 1);
        assert_eq!(good.iter().filter(|one| !one.practice.is_none()).count(), 1);
        assert!(good.iter().any(|one| one.learner.is_empty()));
    }
}
