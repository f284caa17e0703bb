//! What conducts how well: tagged constants of the lowering.

use quantity::{Constant, Tag};

quantity::constants! {
    /// A sound closed contact.
    pub const SOUND_CONTACT: Constant = Constant::new(
        "sound contact",
        0.005,
        "Ω",
        Tag::Computed("contact resistance behind the expected readings of a sound heater"),
    );
    /// What still conducts across an open contact, a broken coil or the base of a screw.
    pub const SURFACE_LEAKAGE: Constant = Constant::new(
        "surface leakage",
        1e-12,
        "S",
        Tag::Model("a teraohm: far above every tester's range, and it leaves no conductor without a potential"),
    );
    /// Capacitance of each lead inside the heater to each feed lead and to the shell.
    pub const LEAD_STRAY: Constant = Constant::new(
        "stray capacitance of a lead",
        20e-12,
        "F",
        Tag::Model("10 pF for each of a lead's two ends, between 2 pF of a tidy installation and 20 pF of a long run"),
    );
    /// Capacitance of two conductors that run side by side, for each metre.
    pub const BESIDE: Constant = Constant::new(
        "capacitance of two conductors side by side",
        60e-12,
        "F/m",
        Tag::Memory("data of flat building cable, from a conductor to the bare one beside it"),
    );
    /// Of that, between the two insulated conductors of a flat cable.
    pub const ACROSS: Constant = Constant::new(
        "capacitance across a flat cable, of that to its neighbour",
        0.3,
        "",
        Tag::Model("the bare ground lies between them"),
    );
    /// Bonds at the service: neutral bar to ground bar, and to the cold water pipe.
    pub const SERVICE_BOND: Constant = Constant::new(
        "bond at the service",
        0.001,
        "Ω",
        Tag::Model("a short, heavy jumper; as good as a sound joint"),
    );
    /// From the shell to the pipes through the water in lined nipples.
    pub const NIPPLE_WATER: Constant = Constant::new(
        "water in the lined nipples",
        10e3,
        "Ω",
        Tag::Model("two nipples of 75 mm and 15 mm bore with water of 0.02 S/m"),
    );
    /// What a control board itself draws.
    pub const BOARD_LOAD: Constant = Constant::new(
        "supply of a control board",
        30e3,
        "Ω",
        Tag::Model("2 W at 240 V: a small supply that idles"),
    );
    /// The least resistance taken for anything, so that nothing is an ideal short.
    pub const LEAST_RESISTANCE: Constant = Constant::new(
        "least resistance",
        1e-6,
        "Ω",
        Tag::Model("a microohm: 20 µV at 20 A, far below what is read"),
    );
}
