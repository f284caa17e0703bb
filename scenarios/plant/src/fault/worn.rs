//! When a part is worn or wrong: the one judgement that an inspection of the house and a changed part share.

use quantity::{Constant, Kelvins, Pressure, Tag};

use crate::controls::limit::TRIP;
use crate::parts::{Element, Limit, Thermostat};
use crate::waterworks::{Fixture, HeatTraps, Plumbing};

quantity::constants! {
    /// A limit that trips further below its rating than this is weak.
    const WEAK_BY: Constant<Kelvins> =
        Constant::of("furthest below its rating that a limit passes", Kelvins::fahrenheit(15.0), Tag::CommonPractice);
    /// Static pressure that asks for a regulator.
    const HIGHEST_STATIC: Constant<Pressure> = Constant::of(
        "highest static pressure that an inspection passes",
        Pressure::psi(80.0),
        Tag::Memory("IPC 604.8, UPC 608.2: a regulator above 80 psi"),
    );
    /// A nipple with less of its bore free is clogged.
    const FREE: Constant =
        Constant::new("free bore of a nipple that an inspection passes", 0.5, "", Tag::Model("a quarter of the flow"));
    /// A limit stop that lets in more cold than this is set wrong.
    const STOP: Constant =
        Constant::new("limit stop that an inspection passes", 0.15, "", Tag::Model("110 °F from 120 °F"));
    /// A thermostat that closes further below its cut-out than this is worn.
    const WIDEST: Constant<Kelvins> = Constant::of(
        "widest differential that an inspection passes",
        Kelvins::fahrenheit(25.0),
        Tag::CommonPractice,
    );
    /// A thermostat further off its dial than this is worn.
    const OFF_DIAL: Constant<Kelvins> =
        Constant::of("furthest off its dial that an inspection passes", Kelvins::fahrenheit(10.0), Tag::CommonPractice);
    /// A coil of less than this share of its stamp has shorted turns.
    const LEAST_COIL: Constant = Constant::new(
        "least resistance of a coil, of its stamp's",
        0.9,
        "",
        Tag::CommonPractice,
    );
}

impl Element {
    /// Its coil is broken, for good or while it is warm.
    pub fn breaks(&self) -> bool {
        self.open || self.parting.is_some()
    }

    /// Turns of its coil are shorted.
    pub fn is_shorted(&self) -> bool {
        self.tolerance < LEAST_COIL.get()
    }
}

impl Thermostat {
    /// It opens off its dial, closes far too late, or makes only at times.
    pub fn is_off(&self) -> bool {
        self.fickle.is_some() || self.differential > WIDEST.get() || self.offset.abs() > OFF_DIAL.get()
    }
}

impl Limit {
    /// It trips far below its rating.
    pub fn is_weak(&self) -> bool {
        self.trip.get() < TRIP.get().get() - WEAK_BY.get().get()
    }
}

impl Plumbing {
    /// The house stands above what asks for a regulator.
    pub fn is_pressed(&self) -> bool {
        self.static_pressure() > HIGHEST_STATIC.get()
    }
}

impl HeatTraps {
    /// A nipple lets too little through.
    pub fn are_choked(&self) -> bool {
        self.inlet_free < FREE.get() || self.outlet_free < FREE.get()
    }
}

impl Fixture {
    /// It crosses over, or its stop lets too much cold in.
    pub fn is_faulty(&self) -> bool {
        self.crossover > 0.0 || self.limit_stop > STOP.get()
    }
}
