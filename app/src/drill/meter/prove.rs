//! Proving the meter, zeroing its leads, changing them.

use bench::{Action, Jack, KnownSource};
use yew::prelude::*;

use crate::said::use_language;
use crate::shell::Act;
use crate::text;

/// The acts.
#[component]
pub fn Prove() -> Html {
    use_language();
    html! {
        <div class="acts prove" role="toolbar" aria-label={text::PROVE}>
            <Act action={Action::ProveMeter { on: KnownSource::Receptacle }} label={text::PROVE_RECEPTACLE} />
            <Act action={Action::ProveMeter { on: KnownSource::ProvingUnit }} label={text::PROVE_UNIT} />
            <Act action={Action::ZeroLeads} label={text::ZERO_LEADS} />
            <Act action={Action::SpareLeads} label={text::SPARE_LEADS} />
            <Act action={Action::Jack { jack: Jack::Volts }} label={text::JACK_VOLTS} />
            <Act action={Action::Jack { jack: Jack::Amps }} label={text::JACK_AMPS} />
            <Act action={Action::ChangeBattery} label={text::CHANGE_BATTERY} />
        </div>
    }
}
