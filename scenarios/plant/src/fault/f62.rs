//! The board has locked heating out. Water was off in the street, a tap drew air into the tank, and the board saw no water
//! over its element; or a bucket was spilled into the tray under its leak sensor. The tank is full again, the tray dry; the
//! board does not forget until its supply is taken away.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::controls::board::Lockout;
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F62,
    module: module_path!(),
    weight: weight(3.0),
    parameters: &[Parameter::either("leak", "0 saw no water, 1 its tray was wet once")],
    // Locked out or not.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::ClearBoard],
    scope: Scope::HeaterParts,
    tempting: PartKind::Board,
};

fn fits(home: &Home) -> bool {
    home.plant.board.is_some()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    if let Some(board) = &mut home.plant.board {
        board.lockout = Some(if chosen(parameters, "leak") { Lockout::Leak } else { Lockout::NoWater });
    }
}
