//! Where a number comes from, carried beside the number.

/// How far a number can be trusted.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Tag {
    /// Seen in a published document, which is named.
    Published(&'static str),
    /// Worked out from the stated inputs.
    Computed(&'static str),
    /// Usual in the trade; no document names it.
    CommonPractice,
    /// Recalled; to be looked up in the document named, if one is.
    Memory(&'static str),
    /// A choice of this simulation's own, with its reason.
    Model(&'static str),
}

/// A tagged constant of the simulated world, in SI units unless `unit` says otherwise.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Constant {
    /// What it is, in a few words.
    pub name: &'static str,
    /// Its value.
    pub value: f64,
    /// Its unit, as printed.
    pub unit: &'static str,
    /// Where it comes from.
    pub tag: Tag,
}

impl Constant {
    /// A constant with everything that belongs to it.
    pub const fn new(name: &'static str, value: f64, unit: &'static str, tag: Tag) -> Self {
        Self { name, value, unit, tag }
    }

    /// Its value.
    pub const fn get(&self) -> f64 {
        self.value
    }
}
