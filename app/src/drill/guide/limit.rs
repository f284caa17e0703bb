//! The first call: a limit with a pole that no longer makes, found by ohms and changed while the tank stays full.

use bench::{Action, MeterFunction, NewPart, Session};
use plant::fault::FaultId;
use plant::{Level, Place, Screw};

use super::next::{Next, begin};
use super::past::{self, last};
use super::stage::Stage;
use super::{mend, prove};
use crate::drill::known::Known;

/// The screws of each pole, line and load.
const POLES: [[Screw; 2]; 2] = [[Screw::H1, Screw::H2], [Screw::H3, Screw::H4]];
/// Every screw that a hand comes near.
const SCREWS: [Screw; 4] = [Screw::H1, Screw::H3, Screw::H2, Screw::H4];
/// A limit of which one pole is burnt open, as a finding names it.
const BURNT: FaultId = FaultId::F09;

/// What is next.
pub fn next(session: &Session, known: &Known) -> Next {
    let part = NewPart::Limit;
    if last(session, |act| matches!(act, Action::Replace { part: NewPart::Limit })) > 0 {
        return mend::finish(session, known, Level::Upper);
    }
    begin(session, known)
        .or_else(|| prove::dead(session, Level::Upper, &SCREWS))
        .or_else(|| find(session))
        .or_else(|| mend::agreed(session))
        .unwrap_or_else(|| {
            Next::at(Stage::Changed, "guide-change-limit", Place::Van, Action::Replace { part })
        })
}

/// Both poles read, and the one that does not make named.
fn find(session: &Session) -> Option<Next> {
    let poles = POLES.map(|pair| past::pole(session, pair));
    if let Some((pair, _)) = POLES.into_iter().zip(poles).find(|(_, read)| read.is_none()) {
        let at = Place::UpperCompartment;
        return Some(Next::reading(Stage::Read, "guide-pole", at, MeterFunction::Ohms, pair));
    }
    let read = poles.into_iter().flatten();
    if read.clone().filter(|(_, makes)| *makes).count() != 1 {
        return Some(Next::unclear());
    }
    let fault = Some(BURNT);
    if session.me.findings.last().is_none_or(|last| last.fault != fault) {
        let evidence = read.map(|(step, _)| step).collect();
        return Some(Next::kit(Stage::Named, "guide-name", Action::Finding { fault, evidence }));
    }
    None
}
