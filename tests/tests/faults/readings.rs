//! Readings with the values they must have.

use bench::{Action, Display, MeterFunction, Shown, Sight};
use plant::{Place, Point, Screw, Wire};

use crate::technician as by_the_book;
use crate::work::{Work, near, sights};

impl Work {
    #[track_caller]
    fn display(&mut self, function: MeterFunction, a: Point, b: Point) -> Display {
        match self.act(by_the_book::read(function, a, b)).shown {
            Shown::Meter { display } => display,
            other => panic!("{other:?}"),
        }
    }

    /// Volts on the ordinary function must be these.
    #[track_caller]
    pub fn volts(&mut self, a: impl Into<Point>, b: impl Into<Point>, expected: f64) -> u32 {
        let (a, b) = (a.into(), b.into());
        match self.display(MeterFunction::Volts, a, b) {
            // One per cent of a meter of this class, and half a volt near nothing.
            Display::Volts { volts } => near(&(a, b), volts.get(), expected, 0.5 + 0.01 * expected),
            other => panic!("{a}-{b}: {other:?}"),
        }
        self.step()
    }

    /// What the ordinary function shows.
    #[track_caller]
    pub fn reads(&mut self, a: impl Into<Point>, b: impl Into<Point>) -> f64 {
        let (a, b) = (a.into(), b.into());
        match self.display(MeterFunction::Volts, a, b) {
            Display::Volts { volts } => volts.get(),
            other => panic!("{a}-{b}: {other:?}"),
        }
    }

    /// Volts on the ordinary function must lie between these.
    #[track_caller]
    pub fn between(&mut self, a: impl Into<Point>, b: impl Into<Point>, low: f64, high: f64) -> u32 {
        let (a, b) = (a.into(), b.into());
        let volts = self.reads(a, b);
        assert!((low..=high).contains(&volts), "{a}-{b}: {volts} V, not {low} to {high} V");
        self.step()
    }

    /// Ohms must be over range, or kilohms: no metal path.
    #[track_caller]
    pub fn over_or_kilohms(&mut self, a: impl Into<Point>, b: impl Into<Point>) -> u32 {
        let (a, b) = (a.into(), b.into());
        match self.display(MeterFunction::Ohms, a, b) {
            Display::Over => {}
            Display::Ohms { ohms } => assert!(ohms.get() > 1e3, "{a}-{b}: {ohms:?}"),
            other => panic!("{a}-{b}: {other:?}"),
        }
        self.step()
    }

    /// A floating conductor: some ghost on 10 megohms, nothing on low impedance (1.6, "gh").
    #[track_caller]
    pub fn ghost(&mut self, a: Screw, b: Screw) -> u32 {
        match self.display(MeterFunction::LowVolts, a.into(), b.into()) {
            Display::Volts { volts } => near(&(a, b), volts.get(), 0.0, 0.3),
            other => panic!("{a}-{b}: {other:?}"),
        }
        self.step()
    }

    /// Ohms must be these.
    #[track_caller]
    pub fn ohms(&mut self, a: impl Into<Point>, b: impl Into<Point>, expected: f64, within: f64) -> u32 {
        let (a, b) = (a.into(), b.into());
        match self.display(MeterFunction::Ohms, a, b) {
            Display::Ohms { ohms } => near(&(a, b), ohms.get(), expected, within),
            other => panic!("{a}-{b}: {other:?}"),
        }
        self.step()
    }

    /// Ohms must be over range.
    #[track_caller]
    pub fn over(&mut self, a: impl Into<Point>, b: impl Into<Point>) -> u32 {
        let (a, b) = (a.into(), b.into());
        let display = self.display(MeterFunction::Ohms, a, b);
        assert_eq!(display, Display::Over, "{a}-{b}");
        self.step()
    }

    /// Insulation at 500 V must pass 1 megohm (2.5, published: an element maker's test page).
    #[track_caller]
    pub fn insulated(&mut self, a: Screw, b: Screw) -> u32 {
        match self.display(MeterFunction::Insulation, a.into(), b.into()) {
            Display::Over => {}
            Display::Insulation { ohms } => assert!(ohms.get() >= 1e6, "{a}-{b}: {ohms:?}"),
            other => panic!("{a}-{b}: {other:?}"),
        }
        self.step()
    }

    /// What the clamp shows now.
    #[track_caller]
    pub fn clamped(&mut self, wire: Wire) -> f64 {
        match self.act(by_the_book::clamp(wire)).shown {
            Shown::Clamp { amps } => amps.get(),
            other => panic!("{other:?}"),
        }
    }

    /// Amperes must be these, within 2 %.
    #[track_caller]
    pub fn amps(&mut self, wire: Wire, expected: f64) -> u32 {
        let amps = self.clamped(wire);
        near(&wire, amps, expected, 0.15 + 0.02 * expected);
        self.step()
    }

    /// What is seen at a place.
    #[track_caller]
    pub fn look(&mut self, at: Place) -> Vec<Sight> {
        sights(self.act(Action::Look { at }).shown)
    }

    /// Waits, everything as it is, until a leg carries this much.
    #[track_caller]
    pub fn until(&mut self, wire: Wire, expected: f64) {
        for _ in 0..40 {
            if (self.clamped(wire) - expected).abs() < 0.5 {
                return;
            }
            self.act(Action::Wait { minutes: 6.0 });
        }
        panic!("{wire} never carried {expected} A");
    }
}
