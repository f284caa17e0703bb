//! Whose work is whose. Who may do what is local law; this is the usual split, from memory.

use bench::{Helper, Licence};
use plant::fault::{PartKind, Scope};
use plant::{End, Place};

/// Whether a licence covers a kind of work. A supervised learner's supervisor answers for the heater's parts.
pub const fn covers(licence: Licence, scope: Scope) -> bool {
    match scope {
        Scope::Words | Scope::HeaterParts => true,
        Scope::Panel => matches!(licence, Licence::Electrician),
        Scope::Piping => matches!(licence, Licence::Plumber),
        Scope::Utility => false,
    }
}

/// Who has to be called for work that the licence does not cover.
pub const fn helper_for(scope: Scope) -> Option<Helper> {
    match scope {
        Scope::Panel => Some(Helper::Electrician),
        Scope::Piping => Some(Helper::Plumber),
        Scope::Utility => Some(Helper::Utility),
        Scope::Words | Scope::HeaterParts => None,
    }
}

/// Whose work changing a part is.
pub const fn scope_of(part: PartKind) -> Scope {
    match part {
        PartKind::Breaker | PartKind::Fuse | PartKind::TimeSwitch | PartKind::Connectors => Scope::Panel,
        PartKind::Regulator
        | PartKind::MixingValve
        | PartKind::Cartridge
        | PartKind::DrainValve
        | PartKind::Nipples
        | PartKind::Connections
        | PartKind::HotLine
        | PartKind::PipeClips
        | PartKind::ReturnCheck
        | PartKind::PumpTimer
        | PartKind::DipTube
        | PartKind::Anode
        | PartKind::ReliefValve
        | PartKind::ExpansionTank
        | PartKind::Heater => Scope::Piping,
        _ => Scope::HeaterParts,
    }
}

/// Whose work a wire end is: those in the load center and in the box in the line belong to the branch circuit.
pub const fn scope_of_end(end: End) -> Scope {
    match end.home().place() {
        Place::LoadCenter | Place::InLineBox => Scope::Panel,
        _ => Scope::HeaterParts,
    }
}
