//! Gas that burns, at an open tap.

use quantity::{Constant, Tag, Volume};

use super::turn::Turn;
use crate::person::Harm;

quantity::constants! {
    /// Less than this passes with the water unseen.
    const LEAST: Constant<Volume> = Constant::of("hydrogen that passes with the water unseen", Volume::litres(0.5), Tag::Model("a few bubbles in a bucket"));
}

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
        None if out >= LEAST.get() => turn.harms.push(Harm::FlammableGas { volume: out }),
        None => {}
    }
}
