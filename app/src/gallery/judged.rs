//! A debrief's parts of real jobs: the long guided call as its guide works it, and one with two faults worked by somebody in a
//! hurry. The report stands here as it does on paper.

use std::rc::Rc;

use bench::{Action, Session};
use drill::{Attempt, Order};
use yew::prelude::*;

use super::stand::{frame, wide};
use crate::debrief::accounts::Accounts;
use crate::debrief::report::Report;
use crate::debrief::sayings::Sayings;
use crate::debrief::sheet::Sheet;
use crate::debrief::use_sheet;
use crate::debrief::verdict::VerdictCard;
use crate::debrief::would::Would;
use crate::drill::guide::{Guided, next};
use crate::drill::known::Known;
use crate::said::use_voice;

/// More acts than the guide takes.
const LONGEST: usize = 220;
/// A job with a second fault beside the first.
const TWO: &str = r#"{"seed": 11, "fault": "F41", "second": "F01", "heater": "plain-40", "mode": "solo"}"#;
/// In a hurry: nobody told, nothing locked, metal touched, a finding on nothing, power on behind open covers.
const HURRY: &str = r#"[{"do":"breaker","slot":2,"on":false},{"do":"cover","which":"lower","off":true},{"do":"cover","which":"lower-insulation","off":true},
{"do":"cover","which":"lower-shield","off":true},{"do":"look","at":"lower-compartment"},{"do":"breaker","slot":2,"on":true},{"do":"meter","function":"volts","red":"LEa","black":"LEb"},
{"do":"finding","fault":"F12","evidence":[]},{"do":"hand-over"}]"#;

/// Every state of the long guided call, worked by whoever does what its guide says.
pub fn guided() -> &'static [Session] {
    // Once a page; it stays until the page goes.
    thread_local! { static KEPT: &'static [Session] = Vec::leak(follow()); }
    KEPT.with(|kept| *kept)
}

fn follow() -> Vec<Session> {
    let Ok(drill) = ::drill::make(&Guided::Second.order()) else { return Vec::new() };
    let mut states = vec![Session::begin(drill.job)];
    while let Some(now) = states.last().filter(|one| one.ended.is_none() && states.len() < LONGEST) {
        let Some(action) = next(Guided::Second, now, &Known::of(now)).action else { break };
        let after = bench::reduce(now, &action).0;
        states.push(after);
    }
    states
}

/// The two jobs.
fn attempts() -> [Option<Attempt>; 2] {
    let mut first = Attempt::new("", Guided::Second.order());
    first.actions = guided()
        .last()
        .map(|end| end.log.iter().map(|entry| entry.action.clone()).collect())
        .unwrap_or_default();
    let two = Order::read(TWO).ok().map(|order| {
        let mut attempt = Attempt::new("", order);
        attempt.actions = serde_json::from_str(HURRY).unwrap_or_default();
        attempt
    });
    [Some(first), two]
}

#[derive(Properties, PartialEq)]
struct Props {
    caption: AttrValue,
    attempt: Rc<Attempt>,
}

/// The parts, once the debrief is computed.
#[component]
fn Judged(props: &Props) -> Html {
    let voice = use_voice();
    let caption = props.caption.clone();
    use_sheet(props.attempt.clone(), None).show(&voice, |sheet| {
        let onstep = Callback::<u32>::noop();
        html! {
            <>
                { wide(format!("{caption}, accounts"), html! { <Accounts sheet={sheet.clone()} onstep={onstep.clone()} /> }) }
                { frame(format!("{caption}, verdict"), html! { <VerdictCard sheet={sheet.clone()} /> }) }
                { frame(format!("{caption}, sayings"), html! { <Sayings sheet={sheet.clone()} {onstep} /> }) }
                { for reads(&sheet).into_iter().map(|step| frame(
                    format!("{caption}, had it been, act {step}"),
                    html! { <Would sheet={sheet.clone()} {step} /> },
                )) }
                { wide(format!("{caption}, report"), html! { <div class="on-paper"><Report {sheet} /></div> }) }
            </>
        }
    })
}

/// The first look and the first reading: what they would have shown otherwise.
fn reads(sheet: &Sheet) -> Vec<u32> {
    let first = |is: fn(&Action) -> bool| sheet.session.log.iter().position(|entry| is(&entry.action));
    let both =
        [first(|act| matches!(act, Action::Look { .. })), first(|act| matches!(act, Action::Meter { .. }))];
    both.into_iter().flatten().map(|at| at as u32 + 1).collect()
}

/// Both debriefs.
pub fn debriefs() -> Html {
    let names = ["by the guide", "in a hurry"];
    names
        .into_iter()
        .zip(attempts())
        .filter_map(|(caption, attempt)| Some(html! { <Judged {caption} attempt={Rc::new(attempt?)} /> }))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_jobs_can_be_made_and_one_has_two_faults() {
        let [first, two] = attempts().map(Option::unwrap);
        assert!(guided().last().unwrap().ended.is_some());
        assert!(!first.actions.is_empty());
        let drill = ::drill::make(&two.order).unwrap();
        assert!(drill.second.is_some());
        let end = ::drill::replay(&drill, &two.actions);
        assert_eq!(end.log.len(), two.actions.len());
        assert!(end.ended.is_some());
    }
}
