//! What has been chosen for a drill so far.

use std::collections::BTreeSet;
use std::rc::Rc;

use bench::{Licence, Mode, Trap};
use drill::{Family, Level, Order, OrderError, Second, Wanted};
use plant::climate::Climate;
use plant::fault::FaultId;
use plant::household::HouseholdKind;
use plant::{HeaterModel, Location};
use yew::prelude::*;

/// The choices of a drill. What is `None` is left to chance.
#[derive(Clone, PartialEq, Debug)]
pub struct OrderForm {
    /// The seed.
    pub seed: u32,
    /// How it is run.
    pub mode: Mode,
    /// The learner's licence.
    pub licence: Licence,
    /// The heater.
    pub heater: Option<HeaterModel>,
    /// The people.
    pub household: Option<HouseholdKind>,
    /// The place.
    pub climate: Option<Climate>,
    /// Where the heater stands.
    pub location: Option<Location>,
    /// The fault is one of `faults`; else any, by its weight in the field.
    pub named: bool,
    /// Faults ticked.
    pub faults: BTreeSet<FaultId>,
    /// How hard it shall be.
    pub level: Option<Level>,
    /// Of which family.
    pub family: Option<Family>,
    /// What it shall look like.
    pub like: Option<FaultId>,
    /// What shall be wrong besides.
    pub second: Option<Second>,
    /// Traps ticked.
    pub traps: BTreeSet<Trap>,
    /// Simulated minutes, as typed.
    pub limit: String,
    /// Minutes on the wall clock, as typed.
    pub clock: String,
}

/// One choice made.
#[derive(Clone, PartialEq, Debug)]
pub enum Field {
    /// The seed.
    Seed(u32),
    /// How it is run.
    Mode(Mode),
    /// The licence.
    Licence(Licence),
    /// The heater.
    Heater(Option<HeaterModel>),
    /// The people.
    Household(Option<HouseholdKind>),
    /// The place.
    Climate(Option<Climate>),
    /// Where the heater stands.
    Location(Option<Location>),
    /// By name, or left to chance.
    Named(bool),
    /// A fault ticked or unticked.
    Fault(FaultId, bool),
    /// How hard.
    Level(Option<Level>),
    /// Of which family.
    Family(Option<Family>),
    /// What it shall look like.
    Like(Option<FaultId>),
    /// What shall be wrong besides.
    Second(Option<Second>),
    /// A trap ticked or unticked.
    Trap(Trap, bool),
    /// Simulated minutes.
    Limit(String),
    /// Minutes on the wall clock.
    Clock(String),
}

impl OrderForm {
    /// Everything left to chance.
    pub const fn chance(seed: u32, mode: Mode) -> Self {
        Self {
            seed,
            mode,
            licence: Licence::Plumber,
            heater: None,
            household: None,
            climate: None,
            location: None,
            named: false,
            faults: BTreeSet::new(),
            level: None,
            family: None,
            like: None,
            second: None,
            traps: BTreeSet::new(),
            limit: String::new(),
            clock: String::new(),
        }
    }

    /// The drill that was asked for.
    pub fn order(&self) -> Result<Order, OrderError> {
        let one_or_more = || match self.faults.first() {
            Some(one) if self.faults.len() == 1 => Wanted::One(*one),
            _ => Wanted::List(self.faults.iter().copied().collect()),
        };
        let order = Order {
            heater: self.heater,
            household: self.household,
            climate: self.climate,
            location: self.location,
            licence: self.licence,
            fault: if self.named { one_or_more() } else { Wanted::Chance },
            // What is named needs no wishes.
            level: self.level.filter(|_| !self.named),
            family: self.family.filter(|_| !self.named),
            like: self.like.filter(|_| !self.named),
            second: self.second,
            traps: self.traps.iter().copied().collect(),
            limit_minutes: minutes("limit-minutes", &self.limit)?,
            clock_minutes: minutes("clock-minutes", &self.clock)?,
            ..Order::chance(self.seed, self.mode)
        };
        order.check()?;
        Ok(order)
    }

    fn set(&mut self, field: Field) {
        match field {
            Field::Seed(seed) => self.seed = seed,
            Field::Mode(mode) => self.mode = mode,
            Field::Licence(licence) => self.licence = licence,
            Field::Heater(heater) => self.heater = heater,
            Field::Household(household) => self.household = household,
            Field::Climate(climate) => self.climate = climate,
            Field::Location(location) => self.location = location,
            Field::Named(named) => self.named = named,
            Field::Fault(fault, true) => drop(self.faults.insert(fault)),
            Field::Fault(fault, false) => self.faults = without(&self.faults, fault),
            Field::Level(level) => self.level = level,
            Field::Family(family) => self.family = family,
            Field::Like(like) => self.like = like,
            Field::Second(second) => self.second = second,
            Field::Trap(trap, true) => drop(self.traps.insert(trap)),
            Field::Trap(trap, false) => self.traps = without(&self.traps, trap),
            Field::Limit(limit) => self.limit = limit,
            Field::Clock(clock) => self.clock = clock,
        }
    }
}

/// Minutes as typed; nothing typed is no limit, and what is no number is out of range.
fn minutes(name: &'static str, typed: &str) -> Result<Option<u16>, OrderError> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    let low = if name == "limit-minutes" { 5.0 } else { 1.0 };
    let value = quantity::decimal::read(typed).unwrap_or(f64::NAN);
    match typed.parse() {
        Ok(whole) => Ok(Some(whole)),
        Err(_) => Err(OrderError::OutOfRange { name, low, high: 1023.0, value }),
    }
}

impl Reducible for OrderForm {
    type Action = Field;

    fn reduce(self: Rc<Self>, field: Field) -> Rc<Self> {
        let mut next = (*self).clone();
        next.set(field);
        if next == *self { self } else { Rc::new(next) }
    }
}

/// What components hold to read the choices and to change them.
pub type FormHandle = UseReducerHandle<OrderForm>;

/// A form with everything left to chance.
#[hook]
pub fn use_order_form(mode: Mode) -> FormHandle {
    use_reducer(|| OrderForm::chance(super::fresh_seed(), mode))
}

/// The ticks but for one. A few are soon written anew, and taking one out of a tree costs the page a kilobyte.
fn without<T: Ord + Copy>(ticked: &BTreeSet<T>, gone: T) -> BTreeSet<T> {
    ticked.iter().copied().filter(|one| *one != gone).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn choices_make_an_order() {
        let mut form = OrderForm::chance(9, Mode::Solo);
        assert_eq!(form.order(), Ok(Order::chance(9, Mode::Solo)));
        form.set(Field::Level(Some(Level::Hard)));
        assert_eq!(form.order().unwrap().level, Some(Level::Hard));
        form.set(Field::Named(true));
        assert_eq!(form.order(), Err(OrderError::EmptyList));
        form.set(Field::Fault(FaultId::F13, true));
        assert_eq!(form.order().unwrap().fault, Wanted::One(FaultId::F13));
        assert_eq!(form.order().unwrap().level, None, "what is named needs no wishes");
        form.set(Field::Fault(FaultId::F01, true));
        assert_eq!(form.order().unwrap().fault, Wanted::List(vec![FaultId::F01, FaultId::F13]));
        form.set(Field::Limit(" 240 ".into()));
        assert_eq!(form.order().unwrap().limit_minutes, Some(240));
        for wrong in ["2", "soon", "-5", "1e9"] {
            form.set(Field::Limit(wrong.into()));
            assert!(matches!(form.order(), Err(OrderError::OutOfRange { .. })), "{wrong}");
        }
    }
}
