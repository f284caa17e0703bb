//! Every tagged constant of the bench: instruments, the person, and how long each act takes.

use quantity::{Constant, Listed, Shown, Tag};

use crate::instrument::{self, Scale, clamp, insulation, multimeter};
use crate::{minutes, person};

/// Minutes of the acts, as a list that outlives its readers.
const MINUTES: &[Constant] = &minutes::TABLE;

/// Every tagged constant of the bench, module by module.
pub fn sources() -> Vec<Listed> {
    let written = [person::SOURCES, instrument::SOURCES].concat().concat();
    let acts = MINUTES.iter().map(|act| Listed { module: "bench::minutes", ident: act.name, constant: act });
    written.into_iter().chain(classes()).chain(acts).collect()
}

/// The accuracy classes of the displays.
fn classes() -> [Listed; 6] {
    let of = |module, ident, constant: &'static Scale| Listed { module, ident, constant };
    [
        of("bench::instrument::multimeter", "AC_VOLTS", &multimeter::AC_VOLTS),
        of("bench::instrument::multimeter", "LOW_VOLTS", &multimeter::LOW_VOLTS),
        of("bench::instrument::multimeter", "AMPS", &multimeter::AMPS),
        of("bench::instrument::multimeter", "OHMS", &multimeter::OHMS),
        of("bench::instrument::clamp", "AMPS", &clamp::AMPS),
        of("bench::instrument::insulation", "OHMS", &insulation::OHMS),
    ]
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
