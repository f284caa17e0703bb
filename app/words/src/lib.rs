//! Words: turns typed facts into sentences. The only place where what is computed becomes language.
//!
//! Sentences live in `assets/words/`, one file a language; this crate picks them and fills in the numbers in
//! the reader's units. Nothing here computes physics or a score.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use bench::Lost;
use plant::{Layout, Plant, ServiceKind};
use quantity::{Kelvins, Pressure, Seconds, Temperature};

mod acts;
mod book;
mod harms;
mod language;
pub mod letters;
mod names;
mod outcomes;
mod people;
mod score;
mod sights;
pub mod sources;
mod trace;
mod units;
mod wrong;

pub use book::{Book, Fill};
#[cfg(not(target_family = "wasm"))]
pub use book::{LATER, SPANISH};
pub use language::Language;
pub use units::Units;

/// What dials are set to, in degrees Fahrenheit: the setting that warning labels of heaters name. Common practice.
const SAFE_HEAT: f64 = 120.0;
/// What burns through skin in about five seconds, in degrees Fahrenheit (U.S. Consumer Product Safety Commission,
/// document 5098, from memory).
const BURNING_HEAT: f64 = 140.0;
/// Usual rating of a high limit, in degrees Fahrenheit (a control maker's bulletin).
const LIMIT_HEAT: f64 = 170.0;
/// Where a relief valve opens by heat, in degrees Fahrenheit (ANSI Z21.22/CSA 4.4).
const RELIEF_HEAT: f64 = 210.0;
/// The fall after which a bucket says that the hot water gave out, in degrees Fahrenheit; `bench` measures by it.
const FALL: f64 = 15.0;
/// The highest pressure a house is fed at, in psi (2021 International Plumbing Code, 604.8, from memory).
const STREET_LIMIT: f64 = 80.0;

/// What of a heater its words follow: how it is wired inside, and how it is fed.
pub type Heater = (Layout, ServiceKind);

/// A heater as most are: two elements in turn, on two legs.
pub const MOST: Heater = (Layout::NonSimultaneous, ServiceKind::Split240);

/// The heater of a plant, as far as words follow it.
pub const fn heater_of(plant: &Plant) -> Heater {
    (plant.wiring.layout, plant.service.kind)
}

/// A language and a choice of units, with the figures that stand in sentences whatever they are about.
pub struct Voice {
    book: Rc<Book>,
    units: Units,
    standing: [(&'static str, Fill); 6],
    /// The heater spoken of: a sentence may choose by `$layout`, `$feed` and `$service`.
    heater: Cell<Heater>,
    /// Wire ends of the job under way that lost their names.
    lost: RefCell<Rc<[Lost]>>,
    /// The time into it that is told of.
    at: Cell<Seconds>,
    /// Fixed texts already said: a screen asks for hundreds of them each time it is drawn.
    said: RefCell<BTreeMap<String, String>>,
}

impl Voice {
    /// English, in the given units.
    pub fn english(units: Units) -> Self {
        Self::new(Rc::new(Book::english()), units)
    }

    /// The voice of a book, in the given units.
    pub fn new(book: Rc<Book>, units: Units) -> Self {
        let heat = |fahrenheit| units.temperature(Temperature::fahrenheit(fahrenheit)).into();
        let standing = [
            ("safe-heat", heat(SAFE_HEAT)),
            ("burning-heat", heat(BURNING_HEAT)),
            ("limit-heat", heat(LIMIT_HEAT)),
            ("relief-heat", heat(RELIEF_HEAT)),
            ("fall", units.rise(Kelvins::fahrenheit(FALL)).into()),
            ("street-limit", units.pressure(Pressure::psi(STREET_LIMIT)).into()),
        ];
        let (heater, at) = (Cell::new(MOST), Cell::new(Seconds(f64::INFINITY)));
        Self { book, units, standing, heater, lost: RefCell::default(), at, said: RefCell::default() }
    }

    /// Speaks of this heater from now on.
    pub fn about(&self, heater: Heater) {
        if self.heater.replace(heater) != heater {
            self.said.borrow_mut().clear();
        }
    }

    /// Calls these wire ends by their letters from now on.
    pub fn lose(&self, lost: Rc<[Lost]>) {
        self.lost.replace(lost);
    }

    /// Tells of a time into the job: what had its name then is called by it.
    pub fn at<T>(&self, at: Seconds, tell: impl FnOnce(&Self) -> T) -> T {
        let now = self.at.replace(at);
        let told = tell(self);
        self.at.set(now);
        told
    }

    /// The units it speaks.
    pub const fn units(&self) -> Units {
        self.units
    }

    /// Sentences asked for and not in the book, for tests.
    pub fn missing(&self) -> Vec<String> {
        self.book.missing()
    }

    /// Whether the book, or the English one behind it, has a text.
    pub fn has(&self, id: &str) -> bool {
        self.book.has(id)
    }

    /// A fixed text by its name in the book.
    pub fn text(&self, id: &str) -> String {
        if let Some(said) = self.said.borrow().get(id) {
            return said.clone();
        }
        let said = self.filled(id, &[]);
        self.said.borrow_mut().insert(id.to_owned(), said.clone());
        said
    }

    /// A text with places to fill.
    pub fn filled(&self, id: &str, fills: &[(&str, Fill)]) -> String {
        let (layout, service) = self.heater.get();
        let feed = if service.hot_neutral() { "neutral" } else { "legs" };
        let about =
            [("layout", layout.name().into()), ("feed", feed.into()), ("service", service.name().into())];
        self.book.say(id, &[fills, &self.standing, &about])
    }
}
