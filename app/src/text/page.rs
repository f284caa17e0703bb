//! The page's own labels and sentences.

use bench::Mode;

use super::label::labels;
use super::{Label, filled, text};
use crate::store::{Keeping, Setting, Standing, Tab};

/// The program's name.
pub const NAME: &str = "Tankwright";

labels! {
    CAUTION = "shell-caution";
    CUSTOMER_SAYS = "job-customer-says";
    GO_TO = "job-go-to";
    PLATE = "job-plate";
    LOG = "job-log";
    METER = "job-meter";
    KIT = "job-kit";
    SUSPECTS = "job-suspects";
    FINDING = "job-finding";
    TIME = "job-time";
    TELL = "job-tell";
    CALL = "job-call";
    CALL_ASKED = "job-call-asked";
    HINT = "job-hint";
    SHOW = "show-link";
    HAND_OVER = "job-hand-over";
    HINT_SHORT = "job-hint-short";
    HAND_OVER_SHORT = "job-hand-over-short";
    HAND_OVER_ASKED = "job-hand-over-asked";
    UNWRITTEN = "here-unwritten";
    NOT_YET = "job-not-yet";
    CLOSE = "shell-close";
    WHOLE_DRAWING = "job-whole-drawing";
    NOTHING_YET = "job-nothing-yet";
    SEEN = "job-seen";
    DEBRIEF = "job-debrief";
    CLEAR = "shell-clear";
    CLEAR_ASKED = "shell-clear-asked";
    LEFT_UNREAD = "unread";
    SAVE_UNREAD = "unread-save";
    CLEAR_UNREAD = "unread-clear";
    OPENING = "job-opening";
    WAITING = "page-waiting";
    UNDER_WAY = "shell-under-way";
    RESUME = "page-resume";
    WORDS_COMING = "shell-words-coming";
    WORDS_FAILED = "shell-words-failed";
    NO_JOB = "job-no-job";
    TO_DOORS = "shell-to-doors";
    LICENCE = "job-licence";
    NOT_LOOKED = "job-not-looked";
    SKIP = "shell-skip";
    TO_METER = "shell-to-meter";
    UNITS_US = "shell-units-us";
    UNITS_SI = "shell-units-si";
    LANGUAGE = "shell-language";
    LANGUAGE_FAILED = "shell-language-failed";
    LEFT = "job-left";
    RIGHT = "job-right";
    BENCH = "job-bench";
    THE_JOB = "job-the-job";
    SECTIONS = "job-sections";
    CLOCK = "job-clock";
    READ_PLATE = "job-read-plate";
    PLATE_STORAGE = "job-plate-storage";
    PLATE_VOLTS = "job-plate-volts";
    PLATE_ELEMENTS = "job-plate-elements";
    PLATE_MOUNT = "job-plate-mount";
    PLATE_BOTH = "job-plate-both";
    PLATE_CIRCUITS = "job-plate-circuits";
    PLATE_CONTROL = "job-plate-control";
    ELECTRONIC = "plate-electronic";
    TWO_CIRCUITS = "plate-two-circuits";
    PLATE_PRESSURE = "job-plate-pressure";
    NO = "job-no";
    YES = "job-yes";
    TELL_HOUSEHOLD = "job-tell-household";
    TELL_RESULT = "job-tell-result";
    AGREE_COST = "job-agree-cost";
    ASK = "job-ask";
    IS_SO = "job-is-so";
    IS_NOT_SO = "job-is-not-so";
    ADVISE = "job-advise";
    REPORT = "job-report";
}

/// What a job is called.
pub fn job_title(title: &drill::Title) -> String {
    filled(
        "job-title",
        &[
            ("call", title.call.to_string().into()),
            ("house", title.house.to_string().into()),
            ("street", title.street_name().into()),
        ],
    )
}

/// A drill's code.
pub fn drill_code(code: &str) -> String {
    filled("job-code", &[("code", code.into())])
}

/// Whether a hint may be asked for.
pub const fn may_hint(mode: Mode) -> bool {
    matches!(mode, Mode::Coached)
}

/// A section.
pub const fn tab(tab: Tab) -> Label {
    Label(match tab {
        Tab::Call => "tab-call",
        Tab::Heater => "tab-heater",
        Tab::Meter => "tab-meter",
        Tab::Kit => "tab-kit",
        Tab::Log => "tab-log",
    })
}

/// A setting of the meter.
pub const fn setting(setting: Setting) -> Label {
    match setting {
        Setting::Leads(function) => super::function(function),
        Setting::Clamp => Label("dial-clamp"),
    }
}

/// A standing of a suspect.
pub const fn standing(standing: Standing) -> Label {
    Label(match standing {
        Standing::Open => "standing-open",
        Standing::Likely => "standing-likely",
        Standing::Out => "standing-out",
    })
}

/// What to say when the device does not keep the job; nothing while it does.
pub const fn keeping(keeping: Keeping) -> Option<Label> {
    Some(Label(match keeping {
        Keeping::Kept => return None,
        Keeping::Blocked => "keeping-blocked",
        Keeping::Full => "keeping-full",
        Keeping::Elsewhere => "keeping-elsewhere",
    }))
}

/// What to say when a kept job cannot be opened.
pub fn unopened(why: &str) -> String {
    filled("keeping-unopened", &[("why", why.into())])
}

/// Why a job whose head cannot be read cannot be opened.
pub fn unreadable() -> String {
    text("keeping-unreadable")
}

/// What to say when a kept job could only be read up to a step.
pub fn broken(step: u32) -> String {
    filled("keeping-broken", &[("step", step.into())])
}

/// The title of a page.
pub fn title(route: crate::route::Route) -> String {
    use crate::route::Route;
    let page = text(match route {
        Route::Doors => "window-doors",
        Route::Drill => "window-drill",
        Route::Debrief => "window-debrief",
        Route::Instructor => "window-instructor",
        Route::Exam => "window-exam",
        Route::Sources => "window-sources",
        Route::Atlas => "window-atlas",
        Route::Glossary => "window-glossary",
        Route::Show => "window-show",
    });
    format!("{page} · {NAME}")
}

/// How the job ended.
pub fn ended(how: bench::Ending) -> String {
    use bench::Ending;
    match how {
        Ending::HandedOver => text("job-ended-handed-over"),
        Ending::Called { whom } => filled("job-ended-called", &[("whom", super::helper(whom).into())]),
        Ending::Injured => text("job-ended-injured"),
        Ending::TimeOut => text("job-ended-time-out"),
        Ending::ClockOut => text("job-ended-clock-out"),
    }
}

/// The coach's hint.
pub const fn hint(step: crate::drill::hint::Step) -> Label {
    use crate::drill::hint::Step;
    Label(match step {
        Step::Ask => "hint-ask",
        Step::Plate => "hint-plate",
        Step::Watch => "hint-watch",
        Step::Tell => "hint-tell",
        Step::Lock => "hint-lock",
        Step::Prove => "hint-prove",
        Step::Dead => "hint-dead",
        Step::Find => "hint-find",
        Step::Repair => "hint-repair",
        Step::Refill => "hint-refill",
        Step::Show => "hint-show",
        Step::Result => "hint-result",
        Step::HandOver => "hint-hand-over",
    })
}
