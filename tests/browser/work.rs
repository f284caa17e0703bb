//! Doing an act of the attempt file on the page, by any hand, and holding what the page kept against it.

use std::collections::BTreeSet;

use bench::{Action, Clamped, Cover, MeterFunction, NewPart};
use plant::{Place, Point, Screw};
use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Hand};

/// What covers both compartments, in the order it comes off.
pub const COMPARTMENTS: [Cover; 6] = [
    Cover::Upper,
    Cover::UpperInsulation,
    Cover::UpperShield,
    Cover::Lower,
    Cover::LowerInsulation,
    Cover::LowerShield,
];

/// Puts a job on the browser's device, as the page keeps it: found again as after a crash.
pub fn keep(browser: &Browser, drill: &str, learner: &str, actions: &[Action]) {
    let head = json!({ "attempt": "1", "drill": drill, "learner": learner });
    let acts: Vec<String> =
        actions.iter().map(|action| serde_json::to_string(action).expect("an act")).collect();
    browser.run(
        "localStorage.clear();
         localStorage.setItem('tankwright.job', arguments[0]);
         arguments[1].forEach((act, at) => localStorage.setItem(`tankwright.act.${at + 1}`, act));",
        &[json!(head.to_string()), json!(acts)],
    );
}

/// The page with a drill under way, worked by one hand.
pub struct Work<'a> {
    pub browser: &'a Browser,
    pub hand: Hand,
    done: usize,
}

impl<'a> Work<'a> {
    /// A drill that has just begun.
    pub fn begun(browser: &'a Browser, hand: Hand) -> Self {
        browser.wait_until("document.querySelector('.drill')");
        Self { browser, hand, done: 0 }
    }

    /// Does one act and waits until the page has kept it.
    #[track_caller]
    pub fn act(&mut self, action: &Action) {
        match action {
            Action::Meter { function, red, black } => self.meter(*function, *red, *black, action),
            Action::Clamp { around } => self.clamp(*around, action),
            Action::Finding { fault, evidence } => {
                self.tick(evidence);
                let list = self.browser.reach(self.hand, "[data-choice=finding]");
                let name = fault.map_or("nothing", |fault| fault.name());
                self.browser.choose(self.hand, &list, name);
                self.press(&act(action));
            }
            Action::HandOver => {
                self.press("[data-act=hand-over-asked]");
                self.press(&act(action));
            }
            _ => self.plain(action),
        }
        self.done += 1;
        self.assert_kept(action);
    }

    /// A button, or a list with a button, where the technician has to stand for it.
    fn plain(&self, action: &Action) {
        if let Some(place) = stands_at(action) {
            self.go(place);
        }
        if let Some(point) = has_in_hand(action) {
            self.pick(point);
        }
        if let Action::Replace { part: NewPart::Element { length, mount, .. } } = action {
            for (name, value) in [("length", length.name()), ("mount", mount.name())] {
                let list = self.browser.reach(self.hand, &format!("[data-choice=element-{name}]"));
                self.browser.choose(self.hand, &list, value);
            }
        }
        let slug = slug(action);
        let listed = format!("select:has(option[value='{slug}'])");
        // What can be done at a place is drawn in several turns.
        self.browser.wait_until(&format!("document.querySelector(\"{}, {listed}\")", act(action)));
        if !self.browser.has(&act(action)) && self.browser.has(&listed) {
            let list = self.browser.reach(self.hand, &listed);
            self.browser.choose(self.hand, &list, &slug);
        }
        self.press(&act(action));
    }

    /// Sets the meter, puts the leads, reads.
    fn meter(&self, function: MeterFunction, red: Point, black: Point, action: &Action) {
        self.set(function_name(function));
        for (name, point) in [("red", red), ("black", black)] {
            match self.hand {
                // By the lists, which need no drawing.
                Hand::Keys => {
                    let list = self.browser.reach(self.hand, &format!("[data-choice=lead-{name}]"));
                    self.browser.choose(self.hand, &list, &point.to_string());
                }
                // By taking the lead in hand and pointing at the drawing.
                Hand::Mouse => {
                    let arm = format!("[data-act=arm-{name}]");
                    if self.browser.css(&arm).attribute("aria-pressed").as_deref() != Some("true") {
                        self.press(&arm);
                    }
                    self.pick(point);
                }
                // By picking the point first.
                Hand::Touch => {
                    self.pick(point);
                    self.press(&format!("[data-act=put-{name}]"));
                }
            }
        }
        self.take(action);
    }

    fn clamp(&self, around: Clamped, action: &Action) {
        self.set("clamp");
        let list = self.browser.reach(self.hand, "[data-choice=clamp]");
        let (value, too) = match around {
            Clamped::BothLegs => ("both", None),
            Clamped::Wire { wire } => (wire.name(), None),
            Clamped::Pair { first, second } => (first.name(), Some(second)),
        };
        self.browser.choose(self.hand, &list, value);
        if let Some(wire) = too {
            let list = self.browser.reach(self.hand, "[data-choice=clamp-too]");
            self.browser.choose(self.hand, &list, wire.name());
        }
        self.take(action);
    }

    fn set(&self, label: &str) {
        self.press(&format!("[data-setting='{label}']"));
    }

    fn take(&self, action: &Action) {
        let ready = format!("[data-act=take-reading][data-reading='{}']", slug(action));
        self.press(&ready);
    }

    /// Goes to a place, unless already there.
    fn go(&self, place: Place) {
        let here = format!("[data-at={}]", place.name());
        if place == Place::Customer || self.browser.has(&here) {
            return;
        }
        let target = match self.hand {
            Hand::Mouse | Hand::Touch => format!(".spot[data-place={}] .hit", place.name()),
            Hand::Keys => format!("[data-go={}]", place.name()),
        };
        self.press(&target);
        self.browser.reach(self.hand, &here);
    }

    /// Puts the hand on a point of the drawing.
    fn pick(&self, point: Point) {
        let on_drawing = format!(".detail [data-point='{point}']");
        if !self.browser.has(&on_drawing) {
            // The tank's bare metal is within reach in both compartments.
            let place =
                if point == Point::Screw(Screw::Shell) { Place::UpperCompartment } else { point.place() };
            self.go(place);
        }
        match self.hand {
            Hand::Keys => self.press(&on_drawing),
            Hand::Mouse | Hand::Touch => self.press(&format!("{on_drawing} circle:not(.hit)")),
        }
        let picked =
            format!("document.querySelector(\"{on_drawing}\")?.getAttribute('aria-pressed') === 'true'");
        self.browser.wait_until(&picked);
    }

    fn tick(&self, evidence: &[u32]) {
        let wanted: BTreeSet<u32> = evidence.iter().copied().collect();
        for step in wanted {
            self.press(&format!("input[data-step='{step}']"));
        }
    }

    #[track_caller]
    fn press(&self, selector: &str) {
        self.browser.press_at(self.hand, selector);
    }

    /// The page has kept exactly this act as its last one, and nothing that it does loses the focus.
    #[track_caller]
    fn assert_kept(&self, action: &Action) {
        let key = format!("tankwright.act.{}", self.done);
        self.browser.wait_until(&format!("localStorage.getItem('{key}')"));
        let kept = self.browser.run("return localStorage.getItem(arguments[0]);", &[key.into()]);
        let kept: Action = serde_json::from_str(kept.as_str().unwrap_or_default()).expect("an act");
        assert_eq!(&kept, action, "act {} of the page", self.done);
        let next = format!("!localStorage.getItem('tankwright.act.{}')", self.done + 1);
        self.browser.wait_until(&next);
        if self.hand == Hand::Keys {
            let lost = self.browser.run("return document.activeElement === document.body;", &[]);
            assert_eq!(lost, Value::Bool(false), "the focus is lost after act {}: {action:?}", self.done);
        }
    }

    /// Loads the page again: everything done is still there.
    #[track_caller]
    pub fn reload(&self) {
        let before = self.clock_and_log();
        self.browser.reload();
        self.browser.wait_until("document.querySelector('.drill')");
        assert_eq!(self.clock_and_log(), before, "the drill is another one after the page was loaded again");
    }

    fn clock_and_log(&self) -> (Value, usize) {
        let clock = "return document.querySelector('.top .clock').textContent;";
        let acts = self.browser.all_css("ol.log > li").len();
        assert_eq!(acts, self.done, "acts in the log");
        (self.browser.run(clock, &[]), acts)
    }
}

/// Where the technician has to stand for an act that is not on the table of the kit.
fn stands_at(action: &Action) -> Option<Place> {
    use bench::{Cover, Writing};
    use plant::Level;
    let at = |level| if level == Level::Upper { Place::UpperCompartment } else { Place::LowerCompartment };
    Some(match action {
        Action::Look { at } | Action::Listen { at } | Action::Smell { at } => *at,
        Action::Read { what } => match what {
            Writing::Plate => return None,
            Writing::Directory => Place::LoadCenter,
            Writing::StampLower => Place::LowerCompartment,
            Writing::Diagram | Writing::StampUpper | Writing::Dials => Place::UpperCompartment,
        },
        Action::Cover { which, .. } => match which {
            Cover::PanelFront => Place::LoadCenter,
            Cover::JunctionBox => Place::JunctionBox,
            Cover::BoxDoor => Place::InLineBox,
            Cover::Upper | Cover::UpperInsulation | Cover::UpperShield => Place::UpperCompartment,
            Cover::Lower | Cover::LowerInsulation | Cover::LowerShield => Place::LowerCompartment,
        },
        Action::Breaker { .. } | Action::Lock { .. } | Action::Relabel { .. } => Place::LoadCenter,
        Action::MoveBreaker { .. } | Action::PortableHeater { .. } => Place::LoadCenter,
        Action::BoxHandle { .. }
        | Action::BoxLock { .. }
        | Action::PullFuse { .. }
        | Action::TestFuse { .. }
        | Action::SetClock => Place::InLineBox,
        Action::Dial { level, .. } | Action::Seat { level } => at(*level),
        Action::PressReset => Place::UpperCompartment,
        Action::ColdValve { .. } => Place::HeaterTop,
        Action::ReliefLever { .. } => Place::Relief,
        Action::Drain { .. } => Place::Drain,
        Action::Tap { .. } | Action::Bucket { .. } | Action::MainValve { .. } => Place::Taps,
        Action::Replace { .. }
        | Action::PartPipes
        | Action::CarryOut { .. }
        | Action::SetHeater { .. }
        | Action::JoinPipes { .. }
        | Action::ReuseRelief => Place::Van,
        _ => return None,
    })
}

/// The point that an act is done with.
fn has_in_hand(action: &Action) -> Option<Point> {
    match action {
        Action::Lift { end }
        | Action::Label { end }
        | Action::Land { end, .. }
        | Action::Remake { end, .. } => Some(Point::End(*end)),
        _ => None,
    }
}

const fn function_name(function: MeterFunction) -> &'static str {
    match function {
        MeterFunction::Volts => "volts",
        MeterFunction::LowVolts => "low-volts",
        MeterFunction::Ohms => "ohms",
        MeterFunction::Continuity => "continuity",
        MeterFunction::Insulation => "insulation",
        MeterFunction::Amps => "amps",
    }
}

fn act(action: &Action) -> String {
    format!("[data-act='{}']", slug(action))
}

/// An act as the page names it in `data-act`: `breaker on=false slot=2`.
fn slug(action: &Action) -> String {
    let Ok(Value::Object(mut fields)) = serde_json::to_value(action) else { return String::new() };
    let name = fields.remove("do").unwrap_or_default();
    let mut words = vec![name.as_str().unwrap_or_default().to_owned()];
    flatten(&Value::Object(fields), "", &mut words);
    words.join(" ")
}

fn flatten(value: &Value, name: &str, words: &mut Vec<String>) {
    match value {
        Value::Object(fields) => {
            let sorted: std::collections::BTreeMap<_, _> = fields.iter().collect();
            for (key, value) in sorted {
                let path = if name.is_empty() { key.clone() } else { format!("{name}.{key}") };
                flatten(value, &path, words);
            }
        }
        Value::String(text) => words.push(format!("{name}={text}")),
        other => words.push(format!("{name}={other}")),
    }
}
