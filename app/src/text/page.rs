//! The page's own labels and sentences.

use bench::Mode;

use crate::store::{Keeping, Lead, Setting, Standing, Tab};

/// The program's name.
pub const NAME: &str = "Tankwright";
/// The caution that is always on the screen.
pub const CAUTION: &str =
    "Practice on a simulated heater. On a real one follow local code and work under a licensed person.";
/// Headings and labels of the drill.
pub const CUSTOMER_SAYS: &str = "What the customer says";
/// See above.
pub const ASK: &str = "Ask";
/// See above.
pub const GO_TO: &str = "Go to";
/// See above.
pub const PLATE: &str = "Rating plate";
/// See above.
pub const LOG: &str = "Job log";
/// See above.
pub const METER: &str = "Meter";
/// See above.
pub const KIT: &str = "Kit";
/// See above.
pub const SUSPECTS: &str = "Your suspects";
/// See above.
pub const FINDING: &str = "Finding";
/// See above.
pub const TIME: &str = "Let time pass";
/// See above.
pub const TELL: &str = "Tell the customer";
/// See above.
pub const CALL: &str = "Stop here and call …";
/// See above.
pub const CALL_ASKED: &str = "Stop the work, leave it safe, and call somebody. The job ends here. Whom?";
/// See above.
pub const HINT: &str = "Ask for a hint";
/// See above.
pub const HAND_OVER: &str = "Hand over the job";
/// See above.
pub const HAND_OVER_ASKED: &str = "Hand over the job now? Nothing can be done after it.";
/// See above.
pub const NOT_YET: &str = "Not yet";
/// See above.
pub const CLOSE: &str = "Close";
/// See above.
pub const WHOLE_DRAWING: &str = "Whole drawing";
/// See above.
pub const NOTHING_YET: &str = "Nothing done yet.";
/// See above.
pub const SEEN: &str = "Seen";
/// See above.
pub const DEBRIEF: &str = "To the debrief";
/// See above.
pub const CLEAR: &str = "Finish and clear this device";
/// See above.
pub const CLEAR_ASKED: &str = "This removes the job and its record from this browser. It cannot be undone.";
/// See above.
pub const NO_JOB: &str = "No job is under way.";
/// See above.
pub const TO_DOORS: &str = "To the doors";
/// See above.
pub const LICENCE: &str = "Your licence";
/// See above.
pub const NOT_LOOKED: &str = "not looked at yet";
/// See above.
pub const SKIP: &str = "Skip to the job";

/// What a job is called.
pub fn job_title(title: &drill::Title) -> String {
    format!("Service call {} · {} {}", title.call, title.house, title.street_name())
}

/// A drill's code.
pub fn drill_code(code: &str) -> String {
    format!("Drill code {code}")
}

/// Whether a hint may be asked for.
pub const fn may_hint(mode: Mode) -> bool {
    matches!(mode, Mode::Coached)
}

/// A section.
pub const fn tab(tab: Tab) -> &'static str {
    match tab {
        Tab::Call => "Call",
        Tab::Heater => "Heater",
        Tab::Meter => "Meter",
        Tab::Kit => "Kit",
        Tab::Log => "Log",
    }
}

/// A lead.
pub const fn lead(lead: Lead) -> &'static str {
    match lead {
        Lead::Red => "Red",
        Lead::Black => "Black",
    }
}

/// A setting of the meter.
pub const fn setting(setting: Setting) -> &'static str {
    match setting {
        Setting::Leads(function) => super::function(function),
        Setting::Clamp => "Clamp A",
    }
}

/// A standing of a suspect.
pub const fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Open => "open",
        Standing::Likely => "likely",
        Standing::Out => "out",
    }
}

/// What to say when the device does not keep the job; nothing while it does.
pub const fn keeping(keeping: Keeping) -> Option<&'static str> {
    match keeping {
        Keeping::Kept => None,
        Keeping::Blocked => Some(
            "This browser keeps nothing here (a private window, a frame or a setting). Finish without reloading and save the record as a file.",
        ),
        Keeping::Full => Some(
            "The browser's storage is full: what you do from now on is lost on a reload. Save the record as a file at the end.",
        ),
        Keeping::Elsewhere => Some(
            "Another tab of this browser has taken a job, and that one is kept. What you do here is lost on a reload.",
        ),
    }
}

/// What to say when a kept job cannot be opened.
pub fn unopened(why: &str) -> String {
    format!("A job is kept on this device, but it cannot be opened: {why}")
}

/// What to say when a kept job could only be read up to a step.
pub fn broken(step: u32) -> String {
    format!("The kept job could not be read from step {step} on: the steps before it were restored.")
}

/// The title of a page.
pub fn title(route: crate::route::Route) -> String {
    use crate::route::Route;
    let page = match route {
        Route::Doors => "Practise a service call",
        Route::Drill => "Job",
        Route::Debrief => "Debrief",
        Route::Instructor => "Instructor",
        Route::Exam => "Exam",
        Route::Sources => "Where numbers come from",
    };
    format!("{page} · {NAME}")
}

/// The button that changes the units, while US customary units are shown.
pub const UNITS_US: &str = "Units: °F, gal, psi";
/// The same while SI units are shown.
pub const UNITS_SI: &str = "Units: °C, L, kPa";

/// Names of the columns and parts of the drill's screen.
pub const LEFT: &str = "Customer and job log";
/// See above.
pub const RIGHT: &str = "Meter, kit and notes";
/// See above.
pub const BENCH: &str = "Drawing and place";
/// See above.
pub const THE_JOB: &str = "The job";
/// See above.
pub const SECTIONS: &str = "Sections";
/// See above.
pub const CLOCK: &str = "Time of day ";

/// How the job ended.
pub fn ended(how: bench::Ending) -> String {
    use bench::Ending;
    match how {
        Ending::HandedOver => "The job is handed over.".into(),
        Ending::Called { whom } => {
            format!("The job is over: you stopped and called {}.", super::helper(whom))
        }
        Ending::Injured => "The job is over: somebody was hurt.".into(),
        Ending::TimeOut => "The job is over: its time ran out.".into(),
        Ending::ClockOut => "The job is over: time up by the clock on the wall.".into(),
    }
}

/// The coach's hint.
pub const fn hint(step: crate::drill::hint::Step) -> &'static str {
    use crate::drill::hint::Step;
    match step {
        Step::Ask => "Ask the customer first: when it began, how it fails, who touched it.",
        Step::Plate => "Read the rating plate. Volts and watts say what you should measure.",
        Step::Watch => "Look, listen and measure while it still runs: some things show only under power.",
        Step::Tell => "Tell the household that power and hot water will be off, and to touch nothing.",
        Step::Lock => "Before a hand goes in: breaker off, your own lock and tag on it, then try the start.",
        Step::Prove => "Prove the meter on a source you know is live. A dead meter reads 0 V on everything.",
        Step::Dead => {
            "Show it dead: leg to leg, then each leg and every screw you will touch to a ground you proved. Then prove the meter again. Until then it counts as live."
        }
        Step::Find => {
            "Which two suspects are left? Choose the one reading that would differ between them. Lift a wire where another path would answer for the part."
        }
        Step::Repair => "You have a finding. Change that and nothing else, with what the plate asks for.",
        Step::Refill => {
            "Water before power: fill with a hot tap open until it runs full and steady, without air."
        }
        Step::Show => {
            "Prove the repair: volts and amps while it heats, then wait for the cut-out and see the current gone."
        }
        Step::Result => "Tell the customer what was found, what was done, and that the water will be hot.",
        Step::HandOver => "Covers on, no leak, dials alike: if so, hand over.",
    }
}

/// Acts and rows around the customer and the plate.
pub const READ_PLATE: &str = "Read the rating plate";
/// See above.
pub const PLATE_STORAGE: &str = "Storage";
/// See above.
pub const PLATE_VOLTS: &str = "Supply";
/// See above.
pub const PLATE_ELEMENT: &str = "Element";
/// Plate: rating of both elements.
pub const PLATE_ELEMENTS: &str = "Upper / lower element";
/// See above.
pub const PLATE_BOTH: &str = "Both at once";
/// See above.
pub const PLATE_CIRCUITS: &str = "Circuits";
/// See above.
pub const PLATE_CONTROL: &str = "Control";
/// See above.
pub const PLATE_PRESSURE: &str = "Working pressure";
/// See above.
pub const NO: &str = "no";
/// Said of a plate.
pub const YES: &str = "yes";
/// See above.
pub const TELL_HOUSEHOLD: &str = "Power and water will be off: touch nothing";
/// See above.
pub const TELL_RESULT: &str = "What was found and done; hot water";
/// See above.
pub const ADVISE: &str = "Advise";
/// See above.
pub const REPORT: &str = "Report something seen";
