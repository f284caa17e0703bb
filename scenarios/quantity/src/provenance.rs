//! Where a number comes from, carried beside the number.

mod figure;

pub use figure::Figure;

/// How far a number can be trusted.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Tag {
    /// Seen in a published document, which is named with its table or section.
    Published(&'static str),
    /// Worked out from the stated inputs.
    Computed(&'static str),
    /// Usual in the trade; no document names it.
    CommonPractice,
    /// Recalled; to be looked up in the document named, if one is.
    Memory(&'static str),
    /// A choice of this simulation's own, with its reason.
    Model(&'static str),
    /// Made up for practice: people, places and equipment that do not exist.
    Invented(&'static str),
}

impl Tag {
    /// One word for the kind of source.
    pub const fn kind(self) -> Kind {
        match self {
            Self::Published(_) => Kind::Published,
            Self::Computed(_) => Kind::Computed,
            Self::CommonPractice => Kind::CommonPractice,
            Self::Memory(_) => Kind::Memory,
            Self::Model(_) => Kind::Model,
            Self::Invented(_) => Kind::Invented,
        }
    }

    /// The document, the inputs or the reason; empty where there is none.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Published(words)
            | Self::Computed(words)
            | Self::Memory(words)
            | Self::Model(words)
            | Self::Invented(words) => words,
            Self::CommonPractice => "",
        }
    }
}

/// The kind of a [`Tag`], without its words.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Kind {
    /// [`Tag::Published`].
    Published,
    /// [`Tag::Computed`].
    Computed,
    /// [`Tag::CommonPractice`].
    CommonPractice,
    /// [`Tag::Memory`].
    Memory,
    /// [`Tag::Model`].
    Model,
    /// [`Tag::Invented`].
    Invented,
}

impl Kind {
    /// All of them, the best supported first.
    pub const ALL: [Self; 6] =
        [Self::Published, Self::Computed, Self::CommonPractice, Self::Memory, Self::Model, Self::Invented];

    /// Its name in lists and addresses.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Published => "published",
            Self::Computed => "computed",
            Self::CommonPractice => "common-practice",
            Self::Memory => "memory",
            Self::Model => "model",
            Self::Invented => "invented",
        }
    }
}

/// A tagged constant of the simulated world: a bare number, a quantity, or a small table of either.
///
/// Bare numbers are in SI units unless `unit` says otherwise. Written inside [`constants!`](crate::constants).
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Constant<T = f64> {
    /// What it is, in a few words.
    pub name: &'static str,
    /// Its value.
    pub value: T,
    /// Its unit, as printed.
    pub unit: &'static str,
    /// Where it comes from.
    pub tag: Tag,
}

impl<T: Copy> Constant<T> {
    /// A bare number, or a table of bare numbers, with everything that belongs to it. Where the columns of a
    /// table differ in their units, `unit` names them all with commas between, `1` for a pure number.
    pub const fn new(name: &'static str, value: T, unit: &'static str, tag: Tag) -> Self {
        Self { name, value, unit, tag }
    }

    /// Its value.
    pub const fn get(&self) -> T {
        self.value
    }
}

/// Between the units of a table's columns, and between the parts of a row.
const COMMA: &str = ", ";
/// The unit of a pure number, which is not written.
const PURE: &str = "1";

/// Each part of each row with the unit of its column; `1` stands for a pure number.
fn paired(rows: &str, units: &str) -> String {
    let row = |row: &str| {
        let parts = row.split(COMMA).zip(units.split(COMMA));
        let told =
            parts.map(|(part, unit)| if unit == PURE { part.to_owned() } else { format!("{part} {unit}") });
        told.collect::<Vec<_>>().join(COMMA)
    };
    rows.split("; ").map(row).collect::<Vec<_>>().join("; ")
}

impl<T> Constant<T> {
    /// Whether the unit names one for each column.
    fn in_columns(&self) -> bool {
        self.unit.contains(COMMA)
    }
}

impl<T: Figure> Constant<T> {
    /// A quantity, which knows its own unit, or a table of quantities.
    pub const fn of(name: &'static str, value: T, tag: Tag) -> Self {
        Self { name, value, unit: T::UNIT, tag }
    }
}

/// A constant as a list of sources shows it.
pub trait Shown {
    /// What it is, in a few words.
    fn name(&self) -> &'static str;
    /// Its value in the unit of [`unit`](Self::unit).
    fn value(&self) -> String;
    /// Its unit; empty for a pure number and for a table whose columns differ in theirs.
    fn unit(&self) -> &'static str;
    /// The same in the units people read, where those differ.
    fn usual(&self) -> Option<String>;
    /// Where it comes from.
    fn tag(&self) -> Tag;
}

impl<T: Figure> Shown for Constant<T> {
    fn name(&self) -> &'static str {
        self.name
    }
    fn value(&self) -> String {
        if self.in_columns() { paired(&self.value.si(), self.unit) } else { self.value.si() }
    }
    fn unit(&self) -> &'static str {
        if self.in_columns() || self.unit == PURE { "" } else { self.unit }
    }
    fn usual(&self) -> Option<String> {
        self.value.usual()
    }
    fn tag(&self) -> Tag {
        self.tag
    }
}

/// A constant with the place in the source where it stands.
#[derive(Clone, Copy)]
pub struct Listed {
    /// The module, as the compiler names it: `plant::thermal::ways`.
    pub module: &'static str,
    /// Its name there.
    pub ident: &'static str,
    /// The constant.
    pub constant: &'static (dyn Shown + Sync),
}

/// Defines the tagged constants of a module and, beside them, their list `CONSTANTS`.
///
/// One use in a module. A crate chains its modules' lists into its `sources()`; the compiler calls a list that
/// nobody chained dead code.
///
/// ```
/// # mod heat {
/// use quantity::{Constant, Tag, Temperature};
///
/// quantity::constants! {
///     /// Air around the heater.
///     pub const ROOM: Constant<Temperature> =
///         Constant::of("air around the heater", Temperature::celsius(20.0), Tag::Invented("a basement"));
///     /// Heads that fit, in metres.
///     pub const HEADS: Constant<[f64; 2]> = Constant::new("heads", [1.5, 2.5], "m", Tag::CommonPractice);
/// }
/// # pub fn check() {
/// assert_eq!(CONSTANTS.len(), 2);
/// assert_eq!((CONSTANTS[0].constant.value().as_str(), CONSTANTS[0].constant.unit()), ("293.15", "K"));
/// # }
/// # }
/// # heat::check();
/// ```
#[macro_export]
macro_rules! constants {
    ($($(#[$meta:meta])* $vis:vis const $name:ident: $kind:ty = $value:expr;)+) => {
        $($(#[$meta])* $vis const $name: $kind = $value;)+
        /// The constants of this module, for the list of sources.
        pub(crate) const CONSTANTS: &[$crate::Listed] = &[$(
            $crate::Listed { module: module_path!(), ident: stringify!($name), constant: &$name },
        )+];
    };
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Seconds, Volume, Watts};

    crate::constants! {
        /// A wait.
        const WAIT: Constant<Seconds> = Constant::of("a wait", Seconds::minutes(3.0), Tag::Model("a test"));
        /// Rows of a table whose columns have units of their own.
        const ROWS: Constant<[(Volume, Watts); 2]> = Constant::of(
            "rows",
            [(Volume::gallons(40.0), Watts(4500.0)), (Volume::gallons(50.0), Watts(5500.0))],
            Tag::Invented("a test"),
        );
        /// A bare number.
        const SMALL: Constant = Constant::new("small", 2.5e-9, "1/Pa", Tag::CommonPractice);
        /// Columns of bare numbers.
        const COLUMNS: Constant<[(f64, f64); 2]> =
            Constant::new("columns", [(0.4, 0.01), (0.5, 0.02)], "1, 1/K", Tag::CommonPractice);
    }

    #[test]
    fn each_constant_says_its_value_in_si_and_as_people_read_it() {
        let shown = |i: usize| {
            let c = CONSTANTS[i].constant;
            (c.value(), c.unit(), c.usual())
        };
        assert_eq!(shown(0), ("180".to_owned(), "s", Some("3 min".to_owned())));
        let (value, unit, usual) = shown(1);
        assert_eq!((value.as_str(), unit), ("0.151416 m³, 4500 W; 0.189271 m³, 5500 W", ""));
        assert_eq!(usual.as_deref(), Some("151.416 L = 40 gal, 4500 W; 189.271 L = 50 gal, 5500 W"));
        assert_eq!(shown(2), ("2.5 × 10⁻⁹".to_owned(), "1/Pa", None));
        assert_eq!(shown(3), ("0.4, 0.01 1/K; 0.5, 0.02 1/K".to_owned(), "", None));
        assert_eq!(COLUMNS.get()[1], (0.5, 0.02));
        assert_eq!(CONSTANTS[2].ident, "SMALL");
        assert!(CONSTANTS[2].module.ends_with("provenance::tests"));
        assert_eq!((WAIT.get(), ROWS.get()[1].1, SMALL.get()), (Seconds(180.0), Watts(5500.0), 2.5e-9));
    }

    #[test]
    fn a_tag_tells_its_kind_and_its_words() {
        let tag = Tag::Published("NIST SP 811, appendix B");
        assert_eq!((tag.kind(), tag.words()), (Kind::Published, "NIST SP 811, appendix B"));
        assert_eq!(Tag::CommonPractice.words(), "");
        assert_eq!(Kind::ALL.map(Kind::name)[2], "common-practice");
    }
}
