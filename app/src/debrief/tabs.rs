//! The debrief's sections, one at a time on a phone.

use yew::prelude::*;

use crate::said::use_voice;

/// A section.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Tab {
    /// The four accounts and the verdict.
    #[default]
    Account,
    /// The drawing.
    Inside,
    /// Every act.
    Steps,
    /// Handing in, printing.
    Report,
}

impl Tab {
    const ALL: [Self; 4] = [Self::Account, Self::Inside, Self::Steps, Self::Report];

    /// Its name in the book and in the style sheet.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Account => "account",
            Self::Inside => "inside",
            Self::Steps => "steps",
            Self::Report => "report",
        }
    }
}

/// The section shown.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Which.
    pub tab: Tab,
    /// Told another one.
    pub ontab: Callback<Tab>,
}

/// The row of buttons at the foot of a phone.
#[component]
pub fn DebriefTabs(props: &Props) -> Html {
    let voice = use_voice();
    let button = |tab: Tab| {
        let told = props.ontab.clone();
        let onclick = Callback::from(move |_| told.emit(tab));
        let here = tab == props.tab;
        html! {
            <button type="button" aria-current={here.then_some("true")} {onclick} data-tab={tab.name()}>
                { voice.text(&format!("debrief-tab-{}", tab.name())) }
            </button>
        }
    };
    html! {
        <nav class="debrief-tabs" aria-label={voice.text("debrief-sections")}>
            { for Tab::ALL.into_iter().map(button) }
        </nav>
    }
}
