//! A whole service call and its debrief by what a screen reader is told and nothing else: roles, names and rows of the
//! browser's accessibility tree, worked by keys. No place on the screen, no mark of the page's code. In each language.

use bench::{Action, Clamped, Cover, KnownSource, MeterFunction, NewPart, Writing};
use plant::{End, Level, Place, Point, Screw, Tap};
use quantity::Seconds;
use serde_json::json;
use tankwright_tests::browser::{Browser, Element, Screen};
use words::{Language, Units, Voice};

use super::work::keep;
use super::{calls, speech};

/// Enter, the space bar and the arrows as the driver takes them.
const ENTER: &str = "\u{e007}";
const SPACE: &str = " ";
const DOWN: &str = "\u{e015}";
const UP: &str = "\u{e013}";
const RIGHT: &str = "\u{e014}";

/// Somebody who hears the page.
struct Ear<'a> {
    browser: &'a Browser,
    voice: Voice,
    at: Option<Place>,
    done: usize,
}

impl Ear<'_> {
    fn text(&self, id: &str) -> String {
        self.voice.text(id)
    }

    /// The first that is so called: what stands on the drawing stands in the list of places too.
    #[track_caller]
    fn find(&self, role: &str, name: &str) -> Element<'_> {
        self.browser.first_role(None, role, name)
    }

    #[track_caller]
    fn press(&self, name: &str) {
        self.find("button", name).type_text(ENTER);
    }

    /// A button of a row.
    #[track_caller]
    fn press_in(&self, row: &str, name: &str) {
        let row = self.find("toolbar", row);
        self.browser.first_role(Some(&row), "button", name).type_text(ENTER);
    }

    /// Chooses from a list by what the option says, with the arrows.
    #[track_caller]
    fn choose(&self, list: &str, option: &str) {
        let list = self.find("combobox", list);
        let told = self.browser.run(
            "return [arguments[0].selectedIndex, [...arguments[0].options].map((one) => one.label)];",
            &[list.reference()],
        );
        let all: Vec<_> = told[1].as_array().into_iter().flatten().filter_map(|one| one.as_str()).collect();
        let wanted = all.iter().position(|one| *one == option);
        let wanted = wanted.unwrap_or_else(|| panic!("no option {option:?} in {all:?}")) as i64;
        let steps = wanted - told[0].as_i64().unwrap_or_default();
        if steps != 0 {
            list.type_text(&if steps < 0 { UP } else { DOWN }.repeat(steps.unsigned_abs() as usize));
        }
        let chosen = self.browser.run("return arguments[0].selectedIndex;", &[list.reference()]);
        assert_eq!(chosen, json!(wanted), "chose {option:?}");
    }

    fn place(&self, place: Place) -> String {
        self.text(&format!("title-{place}"))
    }

    #[track_caller]
    fn go(&mut self, place: Place) {
        if self.at != Some(place) {
            self.press(&self.place(place));
            self.find("heading", &self.place(place));
            self.at = Some(place);
        }
    }

    fn point(&self, point: Point) -> String {
        match point {
            Point::Screw(screw) => {
                let mark = match screw {
                    Screw::Shell => self.text("mark-shell"),
                    Screw::Pipe => self.text("mark-pipe"),
                    other => other.name().to_owned(),
                };
                let what = self.text(&format!("point-{}", screw.name()));
                self.voice.filled("point-full", &[("mark", mark.into()), ("what", what.into())])
            }
            Point::End(end) => self.voice.filled("point-end", &[("end", self.voice.end(end).into())]),
        }
    }

    /// Takes a wire's end in hand.
    #[track_caller]
    fn take(&mut self, end: End) {
        self.go(end.home().place());
        self.choose(&self.text("do-point"), &self.point(Point::End(end)));
    }

    fn of_wire(&self, id: &str, end: End) -> String {
        self.voice.filled(id, &[("wire", self.voice.wire(end.wire).into())])
    }

    fn opening(&self, opening: f64) -> String {
        self.text(if opening > 0.9 { "do-full" } else { "do-shut" })
    }

    #[track_caller]
    fn cover(&mut self, which: Cover, off: bool) {
        self.go(match which {
            Cover::PanelFront => Place::LoadCenter,
            Cover::JunctionBox => Place::JunctionBox,
            Cover::BoxDoor => Place::InLineBox,
            Cover::Upper | Cover::UpperInsulation | Cover::UpperShield => Place::UpperCompartment,
            Cover::Lower | Cover::LowerInsulation | Cover::LowerShield => Place::LowerCompartment,
        });
        let cover = words::letters::capital(&self.voice.cover(which));
        let id = if off { "do-cover-off" } else { "do-cover-on" };
        self.press(&self.voice.filled(id, &[("cover", cover.into())]));
    }

    #[track_caller]
    fn meter(&self, function: MeterFunction, red: Point, black: Point) {
        self.press(&self.text(match function {
            MeterFunction::Volts => "dial-volts",
            MeterFunction::LowVolts => "dial-low-volts",
            MeterFunction::Ohms => "dial-ohms",
            MeterFunction::Continuity => "dial-continuity",
            MeterFunction::Insulation => "dial-insulation",
            MeterFunction::Amps => "dial-amps",
        }));
        self.choose(&self.text("kit-red-lead-on"), &self.point(red));
        self.choose(&self.text("kit-black-lead-on"), &self.point(black));
        self.press(&self.text("kit-take-reading"));
    }

    #[track_caller]
    fn replace(&mut self, part: &NewPart) {
        let NewPart::Element { level, rating, length, mount, seat_cleaned } = part else {
            panic!("no shelf for {part:?}")
        };
        assert_eq!((*level, *seat_cleaned), (Level::Lower, true));
        self.go(Place::Van);
        let shelf = words::letters::capital(&self.voice.part_kind(part.kind()));
        // What it costs stands beside its name, and is heard with it.
        let priced = format!("{shelf} ${:.0}", bench::prices::of(part));
        self.choose(&self.text("kit-length"), &self.text(&format!("kit-length-{length}")));
        self.choose(&self.text("kit-mount"), &self.voice.mount(*mount));
        let fills = [
            ("rating", self.voice.rating(*rating).into()),
            ("length", self.voice.units().length(length.reach(rating.watts)).into()),
            ("seat", self.text("kit-seat-cleaned").into()),
        ];
        self.choose(&priced, &self.voice.filled("kit-option-element", &fills));
        self.press(&self.voice.filled("kit-fit-part", &[("part", self.voice.part_kind(part.kind()).into())]));
    }

    /// Does one act and hears what came of it.
    #[track_caller]
    fn act(&mut self, action: &Action) {
        match action {
            Action::Ask { question } => self.press(&self.voice.question(*question)),
            Action::Read { what: Writing::Plate } => self.press(&self.text("job-read-plate")),
            Action::Read { what: Writing::Directory } => {
                self.go(Place::LoadCenter);
                self.press(&self.text("do-read-directory"));
            }
            Action::TellHousehold => self.press(&self.text("job-tell-household")),
            Action::TellResult => self.press(&self.text("job-tell-result")),
            Action::EyeProtection { .. } => self.press(&self.text("kit-eyes")),
            Action::Gloves { .. } => self.press(&self.text("kit-gloves")),
            Action::Hose { .. } => self.press(&self.text("kit-hose-kit")),
            Action::TryStart => self.press(&self.text("do-try-start")),
            Action::ProveMeter { on: KnownSource::Receptacle } => {
                self.press(&self.text("kit-prove-receptacle"))
            }
            Action::Look { at } => {
                self.go(*at);
                self.press(&self.text("do-look"));
            }
            Action::Cover { which, off } => self.cover(*which, *off),
            Action::Meter { function, red, black } => self.meter(*function, *red, *black),
            Action::Clamp { around: Clamped::Wire { wire } } => {
                self.press(&self.text("dial-clamp"));
                self.choose(&self.text("kit-around"), &self.voice.wire(*wire));
                self.press(&self.text("kit-take-reading"));
            }
            Action::Breaker { slot, on } => {
                self.go(Place::LoadCenter);
                let id = if *on { "do-breaker-on" } else { "do-breaker-off" };
                self.press(&self.voice.filled(id, &[("slot", (slot + 1).into())]));
            }
            Action::Lock { slot, .. } => {
                self.go(Place::LoadCenter);
                self.press(&self.voice.filled("do-lock-and-tag", &[("slot", (slot + 1).into())]));
            }
            Action::Label { end } => {
                self.take(*end);
                self.press(&self.of_wire("do-label", *end));
            }
            Action::Lift { end } => {
                self.take(*end);
                self.press(&self.of_wire("do-lift", *end));
            }
            Action::Land { end, screw, torqued: true } => {
                self.take(*end);
                let fills = [("screw", screw.name().into()), ("wire", self.voice.wire(end.wire).into())];
                self.press(&self.voice.filled("do-land-torqued", &fills));
            }
            Action::Finding { fault: Some(fault), evidence } => {
                for step in evidence {
                    let name = self.voice.filled("kit-evidence", &[("step", (*step).into())]);
                    self.find("checkbox", &name).type_text(SPACE);
                }
                self.choose(&self.text("kit-wrong"), &self.voice.fault(*fault));
                self.press(&self.text("kit-write-finding"));
            }
            Action::ColdValve { opening } => {
                self.go(Place::HeaterTop);
                self.press_in(&self.text("sheet-cold-valve"), &self.opening(*opening));
            }
            Action::MainValve { opening } => {
                self.go(Place::Taps);
                self.press_in(&self.text("do-main-valve"), &self.opening(*opening));
            }
            Action::Tap { tap, opening } => {
                self.go(Place::Taps);
                self.press_in(&self.tap(*tap), &self.opening(*opening));
            }
            Action::Drain { opening } => {
                self.go(Place::Drain);
                self.press_in(&self.text("do-drain-valve"), &self.opening(*opening));
            }
            Action::ReliefLever { up } => {
                self.go(Place::Relief);
                self.press(&self.text(if *up { "do-lever-up" } else { "do-lever-down" }));
            }
            Action::Wait { minutes } => {
                let minutes = Units::Si.duration(Seconds::minutes(*minutes));
                self.press_in(&self.text("job-time"), &minutes);
            }
            Action::WaitForCutOut => self.press(&self.text("kit-wait-cut-out")),
            Action::Replace { part } => self.replace(part),
            Action::Bucket { tap, volume } => {
                self.go(Place::Taps);
                let bucket = self.voice.filled("do-bucket", &[("tap", self.voice.tap(*tap).into())]);
                self.choose(&bucket, &Units::Customary.size(*volume));
                let run = self.voice.filled("do-run-bucket", &[("tap", self.voice.tap(*tap).into())]);
                self.press(&run);
            }
            Action::HandOver => {
                self.press(&self.text("job-hand-over"));
                let asked = self.find("dialog", &self.text("job-hand-over"));
                self.browser.first_role(Some(&asked), "button", &self.text("job-hand-over")).type_text(ENTER);
            }
            other => panic!("nobody told how to do {other:?} by ear"),
        }
        self.done += 1;
        let key = format!("tankwright.act.{}", self.done);
        self.browser.wait_until(&format!("localStorage.getItem('{key}')"));
        let kept = self.browser.run("return localStorage.getItem(arguments[0]);", &[key.into()]);
        let kept: Action = serde_json::from_str(kept.as_str().unwrap_or_default()).expect("an act");
        assert_eq!(&kept, action, "act {}", self.done);
    }

    fn tap(&self, tap: Tap) -> String {
        words::letters::capital(&self.voice.tap(tap))
    }

    /// The debrief: its headings, the four accounts with their points, the acts, and the job moved along by the arrows.
    #[track_caller]
    fn debrief(&self, call: &calls::Call) {
        self.find("link", &self.text("job-debrief")).type_text(ENTER);
        self.find("heading", &self.text("debrief-title"));
        // Headings of cards are in capitals, and so they are told.
        self.find("heading", &self.text("debrief-steps").to_uppercase());
        let said = self.browser.heard();
        let score = call.score();
        for (got, of) in score.reached.iter().zip(score.of) {
            let of = self.voice.filled("debrief-of", &[("of", of.to_string().into())]);
            assert!(said.contains(&got.to_string()) && said.contains(&of), "{got} {of} in {said}");
        }
        let strip = self.browser.roles("slider").into_iter().next().expect("the job can be moved along");
        let before = strip.attribute("aria-valuetext");
        strip.type_text(&RIGHT.repeat(30));
        assert_ne!(strip.attribute("aria-valuetext"), before, "the arrows move the job along");
        let last = call.attempt.actions.last().expect("the call has acts");
        let last = words::letters::capital(&self.voice.action(last));
        let acts = self.browser.names("button").into_iter().filter(|name| name.contains(&last)).count();
        assert!(acts > 0, "{last:?} is among the acts of the debrief");
    }
}

fn a_whole_call(language: Language) {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let call = calls::whole();
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    keep(&browser, &code, &call.attempt.learner, &[]);
    browser.run("localStorage.setItem('tankwright.language', arguments[0]);", &[json!(language.short())]);
    browser.go("?ear#/drill");
    browser.wait_until_started();
    let voice = speech::voice(language);
    let mut ear = Ear { browser: &browser, voice, at: None, done: 0 };
    ear.find("button", &ear.text("job-read-plate"));
    for action in &call.attempt.actions {
        ear.act(action);
    }
    ear.debrief(&call);
    browser.assert_quiet();
}

#[test]
fn a_whole_call_by_ear_in_english() {
    a_whole_call(Language::English);
}

#[test]
fn a_whole_call_by_ear_in_spanish() {
    a_whole_call(Language::Spanish);
}
