//! The fields of the form.

use bench::{Licence, Mode, Trap};
use drill::{Family, Level, Second};
use plant::Location;
use plant::climate::Climate;
use plant::fault::FaultId;
use plant::household::HouseholdKind;
use serde::Serialize;
use web_sys::HtmlInputElement;
use words::Voice;
use yew::prelude::*;

use super::{Field, FormHandle, radios, tick};
use crate::said::use_voice;
use crate::shell::{Choice, Choices};

/// The form.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What is chosen.
    pub form: FormHandle,
    /// Limits are set too.
    #[prop_or_default]
    pub limits: bool,
}

/// House, heater and fault, traps, and the two limits where they are set.
#[component]
pub fn OrderFields(props: &Props) -> Html {
    let voice = use_voice();
    let form = &props.form;
    html! {
        <>
            <div class="fields">
                { chance_list(&voice, form, "heater", drill::DEALT, form.heater, |v, h| v.heater(h), Field::Heater) }
                { chance_list(&voice, form, "household", HouseholdKind::ALL, form.household, |v, h| v.household(h), Field::Household) }
                { chance_list(&voice, form, "climate", Climate::ALL, form.climate, |v, c| v.climate(c), Field::Climate) }
                { chance_list(&voice, form, "location", Location::ALL, form.location, |v, l| v.location(l), Field::Location) }
                { licences(&voice, form) }
            </div>
            { faults(&voice, form) }
            { traps(&voice, form) }
            if props.limits { { limits(&voice, form) } }
        </>
    }
}

/// A list whose first entry leaves it to chance.
fn chance_list<T: Copy + PartialEq + Serialize + 'static>(
    voice: &Voice,
    form: &FormHandle,
    name: &'static str,
    all: &'static [T],
    chosen: Option<T>,
    say: impl Fn(&Voice, T) -> String,
    field: fn(Option<T>) -> Field,
) -> Html {
    let choices: Vec<Choice> = all.iter().map(|one| Choice::new(written(one), say(voice, *one))).collect();
    let onchange =
        telling(form, move |value: String| field(all.iter().copied().find(|one| written(one) == value)));
    html! {
        <Choices
            label={voice.text(&format!("page-choose-{name}"))}
            {choices}
            chosen={chosen.map(|one| written(&one)).unwrap_or_default()}
            none={AttrValue::from(voice.text("page-chance"))}
            {onchange}
            hook={name}
        />
    }
}

/// As a drill's file has it.
fn written(one: &impl Serialize) -> String {
    drill::json::line(one).trim_matches('"').to_owned()
}

/// What shall be wrong besides: nothing, as a rule.
fn second(voice: &Voice, form: &FormHandle) -> Html {
    let left =
        [Second::Any, Second::Follows].into_iter().chain(FaultId::ALL.iter().copied().map(Second::One));
    let say = |one: Second| match one {
        Second::One(fault) => voice.fault(fault),
        chance => voice.text(&format!("page-second-{}", String::from(chance))),
    };
    let choices: Vec<Choice> = left.map(|one| Choice::new(String::from(one), say(one))).collect();
    let onchange = telling(form, |value: String| Field::Second(Second::try_from(value).ok()));
    html! {
        <div class="fields">
            <Choices
                label={voice.text("page-choose-second")}
                {choices}
                chosen={form.second.map(String::from).unwrap_or_default()}
                none={AttrValue::from(voice.text("page-second-none"))}
                {onchange}
                hook="second"
            />
        </div>
    }
}

fn licences(voice: &Voice, form: &FormHandle) -> Html {
    let choices = Licence::ALL
        .iter()
        .map(|one| Choice::new(format!("{one:?}"), voice.licence(*one)))
        .collect::<Vec<_>>();
    let onchange = {
        let form = form.clone();
        Callback::from(move |value: String| {
            if let Some(one) = Licence::ALL.into_iter().find(|one| format!("{one:?}") == value) {
                form.dispatch(Field::Licence(one));
            }
        })
    };
    html! {
        <Choices
            label={voice.text("page-licence")}
            {choices}
            chosen={format!("{:?}", form.licence)}
            {onchange}
            hook="licence"
        />
    }
}

fn faults(voice: &Voice, form: &FormHandle) -> Html {
    let onchange = telling(form, |value: AttrValue| Field::Named(value == "named"));
    let choices = ["chance", "named"].map(|one| {
        let text = |what: &str| AttrValue::from(voice.text(&format!("page-fault-{one}{what}")));
        (AttrValue::from(one), text(""), text("-note"))
    });
    html! {
        <>
            { radios(voice.text("page-choose-fault"), "fault", choices, if form.named { "named" } else { "chance" }, &onchange) }
            if !form.named {
                <div class="fields">
                    { chance_list(voice, form, "level", &Level::ALL, form.level, |v, one| v.wish_level(one), Field::Level) }
                    { chance_list(voice, form, "family", &Family::ALL, form.family, |v, one| v.family(one), Field::Family) }
                    { chance_list(voice, form, "like", FaultId::ALL, form.like, |v, one| v.fault(one), Field::Like) }
                </div>
            }
            { second(voice, form) }
            if form.named {
                <fieldset class="options" data-hook="faults">
                    <legend>{ voice.text("page-faults-named") }</legend>
                    { for FaultId::ALL.iter().map(|fault| fault_tick(voice, form, *fault)) }
                </fieldset>
            }
        </>
    }
}

fn fault_tick(voice: &Voice, form: &FormHandle, fault: FaultId) -> Html {
    let told = telling(form, move |on| Field::Fault(fault, on));
    tick(voice.fault(fault), form.faults.contains(&fault), told, fault.name().to_owned())
}

/// Tells the form what was chosen.
fn telling<T: 'static>(form: &FormHandle, field: impl Fn(T) -> Field + 'static) -> Callback<T> {
    let form = form.clone();
    Callback::from(move |chosen| form.dispatch(field(chosen)))
}

/// How the call is worked: one of these.
pub fn modes(voice: &Voice, form: &FormHandle, all: &'static [Mode]) -> Html {
    let name = |mode: Mode| written(&mode);
    let ways = all.iter().map(|mode| {
        let text = |what: &str| AttrValue::from(voice.text(&format!("page-mode-{}{what}", name(*mode))));
        (name(*mode).into(), text(""), text("-note"))
    });
    let now = form.mode;
    let told = telling(form, move |value: AttrValue| {
        Field::Mode(all.iter().copied().find(|mode| name(*mode) == *value).unwrap_or(now))
    });
    radios(voice.text("page-mode"), "mode", ways, &name(form.mode), &told)
}

fn traps(voice: &Voice, form: &FormHandle) -> Html {
    let each = |trap: Trap| {
        let told = telling(form, move |on| Field::Trap(trap, on));
        tick(voice.trap(trap), form.traps.contains(&trap), told, format!("{trap:?}"))
    };
    html! {
        <fieldset class="options">
            <legend>{ voice.text("page-choose-traps") }</legend>
            { for Trap::ALL.into_iter().map(each) }
        </fieldset>
    }
}

/// The two limits.
fn limits(voice: &Voice, form: &FormHandle) -> Html {
    html! {
        <div class="fields">
            { minutes(form, "limit", voice.text("page-choose-limit"), voice.text("page-choose-limit-note"), &form.limit, Field::Limit) }
            { minutes(form, "clock", voice.text("page-choose-clock"), voice.text("page-choose-clock-note"), &form.clock, Field::Clock) }
        </div>
    }
}

fn minutes(
    form: &FormHandle,
    hook: &'static str,
    label: String,
    note: String,
    value: &str,
    field: fn(String) -> Field,
) -> Html {
    let oninput = {
        let form = form.clone();
        Callback::from(move |event: InputEvent| {
            form.dispatch(field(event.target_unchecked_into::<HtmlInputElement>().value()));
        })
    };
    let noted = format!("{hook}-note");
    html! {
        <div>
            <label class="field">
                <span>{ label }</span>
                <input inputmode="numeric" maxlength="5" value={value.to_owned()} {oninput} data-field={hook} aria-describedby={noted.clone()} />
            </label>
            <p class="note" id={noted}>{ note }</p>
        </div>
    }
}
