//! The board has locked heating out: water was off in the street, a tap drew air into the tank, and the board saw no
//! water over its element. The tank is full again, the board does not forget until its supply is taken away.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::controls::board::Lockout;
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F62,
    module: module_path!(),
    weight: weight(3.0),
    parameters: &[],
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

fn apply(_: &Parameters, home: &mut Home) {
    if let Some(board) = &mut home.plant.board {
        board.lockout = Some(Lockout::NoWater);
    }
}
