//! Figures of the house's piping, each with its source.

use quantity::{Constant, Flow, Tag};

const INVENTED: Tag = Tag::Model("an invented house; sizes as usual in the trade");

quantity::constants! {
    /// Flow of the open service pipe, meter and house pipe to the heater's cold valve at 60 psi of drop.
    pub(super) const SERVICE: Constant =
        Constant::new("service pipe and meter, flow at 60 psi", 15.0, "gpm", INVENTED);
    /// The heater's cold valve, open, with its stretch of pipe.
    pub(super) const COLD_VALVE: Constant = Constant::new(
        "heater's cold valve and pipe, flow at 60 psi",
        14.0,
        "gpm",
        Tag::Model(
            "with the service pipe and a nipple 9 gpm; half open it gives the 5 gpm of a careful refill, 5.10",
        ),
    );
    /// A nipple with its heat trap (and the dip tube behind the inlet's).
    pub(super) const NIPPLE: Constant =
        Constant::new("nipple with heat trap, flow at 60 psi", 18.9, "gpm", INVENTED);
    /// A mixing valve wide open on one side.
    pub(super) const MIXER: Constant = Constant::new("mixing valve, flow at 60 psi", 16.0, "gpm", INVENTED);
    /// A regulator's own drop: 8 gpm at 7 psi below its set point (droop).
    pub(super) const REGULATOR: Constant = Constant::new(
        "regulator, flow at 60 psi below its set point",
        23.0,
        "gpm",
        Tag::Memory("makers' flow curves of 3/4 in regulators: a droop of about 7 psi at 8 gpm"),
    );
    /// Flow of the loop's pipe for a rise of 60 psi; its pump adds [`PUMP`].
    pub(super) const LOOP: Constant = Constant::new(
        "recirculation loop, flow at 60 psi",
        1.0,
        "gpm",
        Tag::Model("balanced by its valve so that the pump moves 0.16 gpm"),
    );
    /// Pressure the loop's pump adds.
    pub(super) const PUMP: Constant = Constant::new(
        "recirculation pump, pressure added",
        10_000.0,
        "Pa",
        Tag::Model("a small circulator, 1 m of head"),
    );
    /// Height over which warm water rises in the loop.
    pub(super) const RISER: Constant = Constant::new("height of the recirculation loop", 4.0, "m", INVENTED);
    /// Heat the loop loses for each kelvin above the room.
    pub(super) const LOOP_LOSS: Constant = Constant::new(
        "heat loss of the recirculation loop",
        8.0,
        "W/K",
        Tag::Model("40 m of thinly insulated half-inch pipe at 0.2 W/(m K)"),
    );
    /// Heat the two nipples lose more, for each kelvin, when nothing stops warm water from rising into the pipes.
    pub(super) const NO_TRAP_LOSS: Constant = Constant::new(
        "extra loss without heat traps",
        0.25,
        "W/K",
        Tag::Memory("heat traps are worth 0.01 to 0.02 of the energy factor"),
    );
    /// Heat the bare cold pipe takes up for each kelvin below the room.
    pub(super) const COLD_PIPE_GAIN: Constant = Constant::new(
        "heat gain of the cold pipe",
        4.0,
        "W/K",
        Tag::Computed("10 m of bare 3/4 in pipe, 0.7 m2 at 6 W/(m2 K)"),
    );
    /// Density taken for heads and orifices.
    pub(super) const DENSITY: Constant = Constant::new(
        "density for heads and orifices",
        1000.0,
        "kg/m3",
        Tag::Model("cold water; hot is 1.2 % lighter"),
    );
    /// Discharge coefficient of an orifice.
    pub(super) const DISCHARGE: Constant =
        Constant::new("discharge coefficient of an orifice", 0.6, "", Tag::Memory("a handbook of hydraulics: sharp-edged orifices"));
    /// Bore of the drain valve.
    pub(super) const DRAIN_BORE: Constant =
        Constant::new("bore of the drain valve", 0.0127, "m", Tag::Computed("half an inch"));
    /// What a hose lets through of the bare valve's flow.
    pub(super) const HOSE: Constant = Constant::new(
        "drain flow with a hose over flow without",
        0.51,
        "",
        Tag::Computed("3 of 5.9 gpm"),
    );
    /// Bore of the relief valve fully lifted.
    pub(super) const RELIEF_BORE: Constant = Constant::new(
        "bore of the lifted relief valve",
        0.0127,
        "m",
        Tag::Model("half an inch in a 3/4 in valve"),
    );
    /// Share of its setting at which a relief valve that dripped by pressure is shut again.
    pub(super) const RESEAT: Constant = Constant::new(
        "pressure at which a relief valve shuts over the one at which it opens",
        0.97,
        "",
        Tag::Model("valves drip at their setting rather than pop while water expands"),
    );
    /// Water in the cold pipe between its valve and the tank.
    pub(super) const PIPE: Constant =
        Constant::new("water in the cold pipe", 3.0e-3, "m3", Tag::Model("10 m of 3/4 in pipe"));
    /// Give of the house's piping and of the air trapped in it.
    pub(super) const PIPING_GIVE: Constant = Constant::new(
        "stretch of the house's pipes and of the air trapped in them",
        2.0e-10,
        "m3/Pa",
        Tag::Model("60 m of half-inch plastic pipe, 8 L at 1.5e-8 /Pa, and 0.1 L of air in stubs at 60 psi"),
    );
    /// Wall of the tank's shell.
    pub(super) const SHELL: Constant =
        Constant::new("wall of the tank's shell", 1.8e-3, "m", Tag::Model("the wall of a common residential tank"));
    /// Young's modulus of steel.
    pub(super) const STEEL: Constant =
        Constant::new("Young's modulus of steel", 200e9, "Pa", Tag::Memory("a handbook of materials: structural steel"));
    /// Poisson's ratio of steel.
    pub(super) const POISSON: Constant =
        Constant::new("Poisson's ratio of steel", 0.3, "", Tag::Memory("handbook value"));
    /// Growth of the shell's volume with temperature.
    pub(super) const SHELL_GROWTH: Constant = Constant::new(
        "growth of a steel vessel's volume",
        36e-6,
        "1/K",
        Tag::Memory("three times 12e-6 /K, handbook value"),
    );
    /// Compressibility of the water in the tank.
    pub(super) const SQUEEZE: Constant =
        Constant::new("compressibility of water", 4.45e-10, "1/Pa", Tag::Computed("IAPWS-97 at 40 to 60 C"));
    /// Below this pressure the water in the pipe draws vapour and gives way at once.
    pub(super) const VACUUM: Constant = Constant::new(
        "pressure at which shut-in water draws vapour, gauge",
        -95_000.0,
        "Pa",
        Tag::Computed("saturation at about 38 C, IAPWS-97"),
    );
    /// A tap or valve open less than this lets no air in.
    pub(super) const AJAR: Constant =
        Constant::new("opening below which no air gets in", 0.02, "", Tag::Model("a film of water closes it"));
    /// Water lower than this is called empty: it lies below the lip of the drain.
    pub(super) const EMPTY: Constant =
        Constant::new("depth that stays below the drain's lip", 0.003, "m", Tag::Model("lip of a cast boss"));
    /// Water that has run out has come back when it stands higher than this.
    pub(super) const FILLED: Constant =
        Constant::new("depth at which a tank that ran out has water again", 0.01, "m", Tag::Model("a finger's width"));
    /// Air smaller than this is none: a hundredth of a millilitre at room pressure.
    pub(super) const NO_AIR: Constant =
        Constant::new("air that counts as none", 1e-3, "J", Tag::Model("a hundredth of a millilitre"));
    /// Less than this is nothing: a cubic millimetre, or a nanosecond.
    pub(super) const SPECK: Constant = Constant::new("what counts as nothing", 1e-9, "", Tag::Model("rounding"));
    /// Pressure before a tap at which its nominal flow is given.
    pub(super) const SIXTY: Constant =
        Constant::new("pressure of nominal flows", 413_685.4, "Pa", Tag::Computed("60 psi"));
    /// Volume of sediment that halves the drain's flow.
    pub(super) const CHOKE: Constant = Constant::new(
        "sediment that halves the flow of the drain",
        2.0,
        "L",
        Tag::Model("choked drains run far below 1 gpm"),
    );
}

/// Flow factor, m³/s for each square root of a pascal, of a path whose flow at 60 psi is given in gpm.
pub(super) fn at_sixty(gpm: &Constant) -> f64 {
    Flow::gpm(gpm.get()).get() / SIXTY.get().sqrt()
}

/// Flow factor of an orifice of a diameter in metres.
pub(super) fn orifice(diameter: f64) -> f64 {
    let area = core::f64::consts::FRAC_PI_4 * diameter * diameter;
    solver::hydraulic::orifice(DISCHARGE.get(), area.max(0.0), DENSITY.get())
}
