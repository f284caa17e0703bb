//! Gas that burns, at an open tap.

use quantity::Volume;

use super::turn::Turn;
use crate::person::Harm;

/// Less than this passes with the water unseen. Model: no source.
const LEAST: Volume = Volume::litres(0.5);

/// Tells hydrogen that has come out since there was `before` of it, where nobody let air in.
pub(super) fn watch(turn: &mut Turn, before: Volume) {
    if turn.s.me.ventilated {
        return;
    }
    let out = before - turn.s.home.plant.hydrogen();
    let told = turn.harms.iter_mut().find_map(|harm| match harm {
        Harm::FlammableGas { volume } => Some(volume),
        _ => None,
    });
    match told {
        Some(volume) if out.get() > 0.0 => *volume += out,
        Some(_) => {}
        None if out >= LEAST => turn.harms.push(Harm::FlammableGas { volume: out }),
        None => {}
    }
}
