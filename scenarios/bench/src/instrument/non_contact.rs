//! The non-contact tester: it answers to the field between its tip and the hand that holds it.
//!
//! It cannot show the absence of voltage. It is silent behind grounded metal, between two conductors of
//! opposite phase, and in a hand that floats; and it sounds at stray voltages that could not light a lamp. No
//! silence of it counts towards a point proved dead.

use quantity::{Constant, Tag};

quantity::constants! {
    /// From this voltage to ground it sounds, held in a bare hand by somebody who stands on the ground.
    pub const SOUNDS: Constant = Constant::new("non-contact tester sounds", 50.0, "V", Tag::CommonPractice);
    /// Held in an insulating glove on a dry floor the hand floats: then it takes this many times as much.
    pub const FLOATING: Constant = Constant::new(
        "non-contact tester in a floating hand",
        3.0,
        "1",
        Tag::Model("makers ask for a bare, grounded hand and print no figure: 120 V to ground is then missed"),
    );
}
