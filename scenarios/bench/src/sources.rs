//! Every tagged constant of the bench: instruments, the person, and how long each act takes.

use quantity::{Constant, Listed, Shown, Tag};

use crate::instrument::{self, Scale, clamp, insulation, multimeter};
use crate::{minutes, person, prices, reduce, view};

/// Minutes of the acts, as a list that outlives its readers.
const MINUTES: &[Constant] = &minutes::TABLE;
/// Prices of the parts, likewise.
const PRICES: &[Constant] = &prices::TABLE;

/// Every tagged constant of the bench, module by module.
pub fn sources() -> Vec<Listed> {
    let written =
        [person::SOURCES, instrument::SOURCES, reduce::SOURCES, &[view::CONSTANTS]].concat().concat();
    let acts = MINUTES.iter().map(|act| Listed { module: "bench::minutes", ident: act.name, constant: act });
    let parts =
        PRICES.iter().map(|part| Listed { module: "bench::prices", ident: part.name, constant: part });
    written.into_iter().chain(scales()).chain(acts).chain(parts).collect()
}

/// A scale's accuracy class, its least reading and the time until it stands still.
macro_rules! scale {
    ($module:ident :: $name:ident) => {{
        const SCALE: &Scale = &$module::$name;
        let module = concat!("bench::instrument::", stringify!($module));
        [
            Listed { module, ident: concat!(stringify!($name), ".class"), constant: SCALE },
            Listed { module, ident: concat!(stringify!($name), ".least"), constant: &SCALE.least },
            Listed { module, ident: concat!(stringify!($name), ".settles"), constant: &SCALE.settles },
        ]
    }};
}

/// The numbers of the displays.
fn scales() -> Vec<Listed> {
    [
        scale!(multimeter::AC_VOLTS),
        scale!(multimeter::LOW_VOLTS),
        scale!(multimeter::AMPS),
        scale!(multimeter::OHMS),
        scale!(clamp::AMPS),
        scale!(insulation::OHMS),
    ]
    .concat()
}

impl Shown for Scale {
    fn name(&self) -> &'static str {
        self.name
    }
    fn value(&self) -> String {
        format!("± ({} % of the reading + {} of the last digit)", self.class.percent, self.class.digits)
    }
    fn unit(&self) -> &'static str {
        ""
    }
    fn usual(&self) -> Option<String> {
        None
    }
    fn tag(&self) -> Tag {
        self.class.tag
    }
}
