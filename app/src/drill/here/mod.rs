//! What the drill's place at hand offers, what is refused now and why, the points that leads can go on.

mod offered;
pub mod sheet;
