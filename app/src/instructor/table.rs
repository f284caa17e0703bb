//! The class table: one row an attempt, and the files that could not be used.

use std::rc::Rc;

use drill::{Account, Practice, Seal, commonest, csv};
use words::Voice;
use yew::prelude::*;

use super::collected::Collected;
use super::row::Row;
use crate::debrief::{ending_words, points};
use crate::files::save;
use crate::said::use_voice;

/// What was read in.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was read in.
    pub all: Rc<Collected>,
    /// Told a row to step through.
    pub onopen: Callback<usize>,
    /// Told to empty the table.
    pub onclear: Callback<()>,
}

/// The table.
#[component]
pub fn Table(props: &Props) -> Html {
    let voice = use_voice();
    let all = &props.all;
    if all.items.is_empty() {
        return html! { <p class="note">{ voice.text("instructor-none") }</p> };
    }
    let rows: Vec<_> = all.rows().collect();
    let clear = props.onclear.reform(|_: MouseEvent| ());
    html! {
        <>
            { bad(&voice, all) }
            if !rows.is_empty() {
                <div class="scroll" tabindex="0" role="region" aria-label={voice.text("instructor-table")}>
                    <table class="class-table">
                        <thead><tr>{ head(&voice) }</tr></thead>
                        <tbody>{ for rows.iter().map(|(at, row)| line(props, &voice, *at, row)) }</tbody>
                    </table>
                </div>
            }
            { unsafe_acts(&voice, all) }
            <div class="row">
                <button type="button" class="go" onclick={saver(all)} data-act="csv">{ voice.text("instructor-csv") }</button>
                <button type="button" onclick={clear} data-act="empty">{ voice.text("instructor-clear") }</button>
            </div>
        </>
    }
}

fn bad(voice: &Voice, all: &Collected) -> Html {
    let count = all.bad().count() as u32;
    if count == 0 {
        return html! {};
    }
    html! {
        <section class="bad-files" role="alert">
            <h2>{ voice.filled("instructor-bad", &[("count", count.into())]) }</h2>
            <ul>
                { for all.bad().map(|(name, why)| html! { <li><b>{ name.to_owned() }</b>{ ": " }{ why.to_owned() }</li> }) }
            </ul>
        </section>
    }
}

fn head(voice: &Voice) -> Html {
    let text = |id: &str| voice.text(&format!("instructor-col-{id}"));
    let mut all: Vec<String> = ["learner", "drill", "mode", "ending"].map(text).into();
    all.extend(Account::ALL.map(|one| voice.account(one)));
    all.extend(["total", "minutes", "acts", "seal"].map(text));
    all.into_iter().map(|one| html! { <th scope="col">{ one }</th> }).collect()
}

fn line(props: &Props, voice: &Voice, at: usize, row: &Row) -> Html {
    let class = &row.class;
    let onclick = {
        let told = props.onopen.clone();
        Callback::from(move |_| told.emit(at))
    };
    let learner = match class.learner.as_str() {
        "" => voice.text("instructor-no-name"),
        name => name.to_owned(),
    };
    let seal =
        voice.text(if class.seal == Seal::Sealed { "instructor-sealed" } else { "instructor-unsealed" });
    html! {
        <tr key={at} class={classes!(class.score.failed.then_some("failed"))}>
            <th scope="row">
                <button type="button" class="link" {onclick} title={voice.text("instructor-open")}>{ learner }</button>
            </th>
            <td>{ voice.fault(class.score.truth) }</td>
            <td>{ voice.mode(row.mode) }</td>
            <td>{ ending_words(voice, class.ended) }</td>
            { for figures(class).into_iter().map(|text| html! { <td class="figure">{ text }</td> }) }
            <td>{ seal }{ practised(voice, class.practice) }</td>
        </tr>
    }
}

/// That it was no first trial, and by how much.
fn practised(voice: &Voice, practice: Practice) -> Html {
    if practice.is_none() {
        return html! {};
    }
    let fills = [("carried", practice.carried.into()), ("back", practice.taken_back.into())];
    html! { <small class="practised">{ voice.filled("instructor-practice", &fills) }</small> }
}

/// Four accounts, total, minutes, acts.
fn figures(row: &drill::Row) -> Vec<String> {
    let mut all: Vec<String> = row.score.reached.iter().map(|one| points(*one)).collect();
    all.push(points(row.score.total()));
    all.push(format!("{:.0}", row.minutes));
    all.push(row.acts.to_string());
    all
}

/// What went wrong most in the account of safety.
fn unsafe_acts(voice: &Voice, all: &Collected) -> Html {
    let rows: Vec<drill::Row> = all.rows().map(|(_, row)| row.class.clone()).collect();
    let most = commonest(&rows, Account::Safety);
    if most.is_empty() {
        return html! {};
    }
    let count = |times: usize| {
        voice.filled(
            "instructor-of-all",
            &[("count", (times as u32).into()), ("total", (rows.len() as u32).into())],
        )
    };
    html! {
        <section class="unsafe">
            <h2>{ voice.text("instructor-unsafe") }</h2>
            <ul>
                { for most.iter().map(|(rule, times)| html! {
                    <li><b>{ count(*times) }</b>{ " " }{ voice.rule_right(*rule) }</li>
                }) }
            </ul>
        </section>
    }
}

fn saver(all: &Rc<Collected>) -> Callback<MouseEvent> {
    let all = all.clone();
    Callback::from(move |_| {
        let rows: Vec<drill::Row> = all.rows().map(|(_, row)| row.class.clone()).collect();
        let _ = save("tankwright-class.csv", "text/csv", &csv(&rows));
    })
}
