//! What can be done at each place, as data.

use bench::{Action, Cover, Session, Writing};
use plant::{BoxKind, Circuit, Handle, Place, Screw, Stab};
use yew::prelude::*;

use super::compartment;
use super::offer::Offer;
use super::water;
use crate::drill::known::Known;
use crate::text;
use crate::units::Units;

/// Acts under one heading.
pub struct Group {
    /// The heading.
    pub title: AttrValue,
    /// The acts.
    pub offers: Vec<Offer>,
    /// The caution that goes with them.
    pub caution: Option<AttrValue>,
    /// They go in pairs.
    pub pairs: bool,
}

impl Group {
    /// A group without a caution.
    pub fn new(title: impl Into<AttrValue>, offers: Vec<Offer>) -> Self {
        Self { title: title.into(), offers, caution: None, pairs: false }
    }

    /// Two beside each other.
    pub fn in_pairs(mut self) -> Self {
        self.pairs = true;
        self
    }

    /// With the caution of its riskiest act.
    pub fn cautioned(mut self, action: &Action) -> Self {
        self.caution = text::act_caution(action).map(AttrValue::from);
        self
    }
}

/// Everything that can be done at a place.
pub fn groups(place: Place, session: &Session, known: &Known, units: Units) -> Vec<Group> {
    let mut groups = match place {
        Place::LoadCenter => load_center(session, known),
        Place::JunctionBox => vec![covers(session, &[Cover::JunctionBox])],
        Place::HeaterTop => water::top(session),
        Place::UpperCompartment | Place::LowerCompartment => compartment::groups(place, session, units),
        Place::Relief => water::relief(session),
        Place::Drain => water::drain(session),
        Place::Taps => water::taps(session, units),
        Place::InLineBox => in_line(session),
        Place::Customer | Place::Van => Vec::new(),
    };
    if !matches!(place, Place::Customer | Place::Van) {
        groups.insert(0, senses(place));
    }
    groups
}

fn senses(at: Place) -> Group {
    let offers = vec![
        Offer::plain(Action::Look { at }, text::LOOK),
        Offer::plain(Action::Listen { at }, text::LISTEN),
        Offer::plain(Action::Smell { at }, text::SMELL),
    ];
    Group::new(text::SENSES, offers)
}

/// Covers, each off or on as it is; where there are more than one, all that are left in one go.
pub fn covers(session: &Session, which: &[Cover]) -> Group {
    let is_off = |cover: &Cover| session.access.off.contains(cover);
    let act = |off| move |which: Cover| Action::Cover { which, off };
    // From the outside in, and from the inside out.
    let left = which.iter().copied().filter(|cover| !is_off(cover)).map(act(true)).collect();
    let bare = which.iter().copied().rev().filter(is_off).map(act(false)).collect();
    let all = [(left, text::COVERS_OFF), (bare, text::COVERS_ON)];
    let all = all.into_iter().filter_map(|(acts, label)| all_of(acts, label));
    let each = which.iter().map(|&which| {
        let off = is_off(&which);
        let action = Action::Cover { which, off: !off };
        Offer::plain(action, text::cover_act(which, !off, session.home.plant.wiring.layout))
    });
    Group::new(text::COVERS, all.chain(each).collect())
}

/// Several acts on one button; one alone has its own already.
fn all_of(acts: Vec<Action>, label: text::Label) -> Option<Offer> {
    let mut acts = acts.into_iter();
    let (first, then) = (acts.next()?, acts.collect::<Vec<_>>());
    (!then.is_empty()).then(|| Offer::All { first, then, label: label.into() })
}

/// What the kind of box allows: handle and lock of a switch and its fuses, lever and clock of a timer.
fn in_line(session: &Session) -> Vec<Group> {
    let Some(seen) = session.view().in_line else { return Vec::new() };
    let handle = |closed| {
        let action = Action::BoxHandle { closed };
        Offer::toggle(action, text::box_act(closed), seen.closed == Some(closed))
    };
    let front =
        covers(session, &[Cover::BoxDoor]).cautioned(&Action::Cover { which: Cover::BoxDoor, off: true });
    match seen.kind {
        BoxKind::FusedSwitch => {
            let lock = Action::BoxLock { on: !seen.locked };
            let fused = |leg: &&Stab| **leg == Stab::One || session.home.plant.wiring.has_screw(Screw::X4);
            let fuses = Stab::ALL.iter().filter(fused).flat_map(|&leg| {
                let out = seen.pulled.is_some_and(|pulled| pulled.get(leg as usize) == Some(&true));
                [
                    Offer::toggle(Action::PullFuse { leg, out: !out }, text::pull_fuse(leg), out),
                    Offer::plain(Action::TestFuse { leg }, text::test_fuse(leg)),
                ]
            });
            vec![
                Group::new(text::BOX_HANDLE, vec![handle(false), handle(true)]).in_pairs(),
                Group::new(text::LOCKOUT, vec![Offer::toggle(lock, text::BOX_LOCK, seen.locked)]),
                front,
                Group::new(text::FUSES, fuses.collect()).in_pairs(),
            ]
        }
        BoxKind::Timer => vec![
            front,
            Group::new(text::TIMER, vec![handle(false), handle(true)]).in_pairs(),
            Group::new(text::BOX_CLOCK, vec![Offer::plain(Action::SetClock, text::SET_CLOCK)]),
        ],
        BoxKind::UtilityRelay => vec![front],
    }
}

fn load_center(session: &Session, known: &Known) -> Vec<Group> {
    let breakers = &session.home.plant.panel.breakers;
    let mut handles = Vec::new();
    let mut locks = Vec::new();
    let mut labels = Vec::new();
    let mut moves = Vec::new();
    for (at, breaker) in breakers.iter().enumerate() {
        let slot = at as u32;
        let seen = known.handles.get(&slot).copied();
        handles.push(Offer::toggle(
            Action::Breaker { slot, on: false },
            text::breaker_act(slot, false),
            seen == Some(Handle::Off),
        ));
        handles.push(Offer::toggle(
            Action::Breaker { slot, on: true },
            text::breaker_act(slot, true),
            seen == Some(Handle::On),
        ));
        if !breaker.is_single() {
            moves.push((text::space(slot), Action::MoveBreaker { slot }));
        }
        let action = Action::Lock { slot, on: !breaker.locked };
        locks.push(Offer::toggle(action, text::lock_act(slot), breaker.locked));
        for &feeds in Circuit::ALL {
            labels.push((text::relabel(slot, feeds), Action::Relabel { slot, feeds }));
        }
    }
    locks.push(Offer::plain(Action::TryStart, text::TRY_START));
    let writing = vec![
        Offer::plain(Action::Read { what: Writing::Directory }, text::READ_DIRECTORY),
        Offer::choose(text::CORRECT_LABEL, text::WRITE, text::WRITE_LABEL, labels),
    ];
    let front = Action::Cover { which: Cover::PanelFront, off: true };
    let mut groups = vec![
        Group::new(text::BREAKERS, handles).in_pairs().cautioned(&Action::Breaker { slot: 0, on: true }),
        Group::new(text::LOCKOUT, locks),
        Group::new(text::WRITINGS, writing),
        covers(session, &[Cover::PanelFront]).cautioned(&front),
    ];
    if !moves.is_empty() {
        let moves = Offer::choose(text::MOVE_BREAKER, text::MOVE, text::MOVE_BREAKER, moves);
        groups.push(Group::new(text::BEHIND_FRONT, vec![moves]));
    }
    groups.extend(Some(portable(session)).filter(|group| !group.offers.is_empty()));
    groups
}

/// A big load on one leg, beside the volts it is read by.
fn portable(session: &Session) -> Group {
    let service = session.home.plant.service;
    let plugged = Stab::ALL.iter().zip(service.portable).filter(|(leg, _)| service.has_receptacle(**leg));
    let offers = plugged
        .map(|(&leg, on)| Offer::toggle(Action::PortableHeater { leg, on: !on }, text::portable(leg), on));
    Group::new(text::PORTABLE, offers.collect())
        .in_pairs()
        .cautioned(&Action::PortableHeater { leg: Stab::One, on: true })
}
