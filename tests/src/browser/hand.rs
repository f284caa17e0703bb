//! The three ways to work the page: mouse, keyboard alone, touch. Each presses and chooses as a learner does.

use serde_json::{Value, json};

use super::element::REFERENCE;
use super::{Browser, Element};

/// How the page is worked.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Hand {
    /// Points and clicks.
    Mouse,
    /// Tab, arrows, Enter and the space bar; never a click.
    Keys,
    /// One finger.
    Touch,
}

/// What answers to a selector and can be used now: in view of the layout, inside the dialog that is open if one
/// is, at the place where the technician stands before anywhere else. Else what stands in the way of the first.
const REACH: &str = "
const [selector] = arguments;
const seen = (one) => one.checkVisibility({ visibilityProperty: true }) && one.getClientRects().length > 0;
const dialog = document.querySelector('dialog[open]');
const all = [...document.querySelectorAll(selector)];
const usable = all.filter((one) => seen(one) && (!dialog || dialog.contains(one)));
const best = usable.find((one) => one.closest('.place')) ?? usable[0];
if (best) return { found: best };
for (const one of all) {
    const closed = one.closest('details:not([open])');
    const summary = closed?.querySelector('summary');
    if (summary && seen(summary)) return { first: summary };
}
const tabs = {
    '.call': 'Call', '.log-part': 'Log', '.meter-part': 'Meter', '.kit-part': 'Kit',
    '.suspects-part': 'Log', '.finding-part': 'Log', '.bench': 'Heater',
};
for (const one of all) {
    const back = document.querySelector('[data-act=whole-drawing]');
    if (one.closest('.drawing') && back && seen(back)) return { first: back };
    const part = one.closest('.part')?.className.match(/(\\w+)-part/)?.[1];
    const other = part && document.querySelector(`.debrief-tabs [data-tab='${part}']`);
    if (other && seen(other)) return { first: other };
    for (const [section, name] of Object.entries(tabs)) {
        if (!one.closest(section)) continue;
        const tab = document.querySelector(`[data-tab='${name}']`);
        if (tab && seen(tab) && tab.getAttribute('aria-current') !== 'page') return { first: tab };
    }
}
return {};
";

/// How many times Tab leads from the focus to an element or the row of buttons that it is in, and how many times an
/// arrow from there: forwards positive, backwards negative. The first is null when the focus is nowhere or Tab never
/// stops there.
const WAY: &str = "
const [target] = arguments;
const active = document.activeElement;
const row = (one) => one?.closest('[role=toolbar]');
const buttons = (of) => [...of.querySelectorAll('button:not([disabled]), [role=button]')];
const stop = (of) => buttons(of).find((one) => one === active) ?? of.querySelector('[data-stop]') ?? buttons(of)[0];
const to = row(target) ? stop(row(target)) : target;
const arrows = row(target) ? buttons(row(target)).indexOf(target) - buttons(row(target)).indexOf(to) : 0;
if (active === to) return [0, arrows];
const root = document.querySelector('dialog[open]') ?? document;
const stops = [...root.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex]')]
    .filter((one) => (row(one) ? stop(row(one)) === one : one.tabIndex >= 0) && !one.disabled
        && one.checkVisibility({ visibilityProperty: true }) && one.getClientRects().length > 0)
    .filter((one) => one.type !== 'radio' || one === target || one.checked);
const [from, at] = [stops.indexOf(active), stops.indexOf(to)];
if (at < 0) return [null, arrows];
if (from >= 0) return [at - from, arrows];
if (!active || active === document.body) return [null, arrows];
const after = stops.findIndex((one) =>
    active.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING);
return [after < 0 ? null : at >= after ? at - after + 1 : at - after, arrows];
";

impl Browser {
    /// Something that a selector fits and that can be used now; opens the section, the fold or the drawing that
    /// it is behind, by this hand. Waits for it.
    #[track_caller]
    pub fn reach(&self, hand: Hand, selector: &str) -> Element<'_> {
        for _ in 0..6 {
            let answer = self.wait(|| {
                let answer = self.run(REACH, &[json!(selector)]);
                answer.as_object().is_some_and(|one| !one.is_empty()).then_some(answer)
            });
            let Some(answer) = answer else { break };
            if let Some(found) = self.named(&answer["found"]) {
                return found;
            }
            let first = self.named(&answer["first"]).expect("something is found or stands in the way");
            self.press(hand, &first);
        }
        panic!(
            "{selector:?} cannot be reached by {hand:?}; the page says:\n{}\nConsole: {:?}",
            self.text(),
            self.messages()
        );
    }

    /// Whether something that a selector fits is there, in view or not.
    #[track_caller]
    pub fn has(&self, selector: &str) -> bool {
        !self.all_css(selector).is_empty()
    }

    /// Presses a button, a link, a box.
    #[track_caller]
    pub fn press(&self, hand: Hand, element: &Element<'_>) {
        match hand {
            Hand::Mouse => {
                element.scroll_into_view();
                element.click();
            }
            Hand::Touch => element.tap(),
            Hand::Keys => {
                self.tab_to(element);
                let box_or_not = element.attribute("type").is_some_and(|kind| kind == "checkbox");
                self.key(if box_or_not { "Space" } else { "Enter" });
            }
        }
    }

    /// Reaches and presses what a selector fits.
    #[track_caller]
    pub fn press_at(&self, hand: Hand, selector: &str) {
        let element = self.reach(hand, selector);
        self.press(hand, &element);
    }

    /// Chooses from a list by the value of its option.
    #[track_caller]
    pub fn choose(&self, hand: Hand, list: &Element<'_>, value: &str) {
        let values =
            self.run("return [...arguments[0].options].map((one) => one.value);", &[list.reference()]);
        let wanted = values.as_array().into_iter().flatten().position(|one| one == value);
        let wanted = wanted.unwrap_or_else(|| panic!("no option {value:?} in {values}"));
        let now = list.property("selectedIndex").as_i64().unwrap_or(-1);
        match hand {
            // The list that the browser itself opens is outside the page; the driver picks from it.
            Hand::Mouse | Hand::Touch => {
                list.scroll_into_view();
                self.option(list, wanted).click();
            }
            Hand::Keys => {
                self.tab_to(list);
                let steps = wanted as i64 - now;
                let key = if steps < 0 { "ArrowUp" } else { "ArrowDown" };
                self.keys(key, steps.unsigned_abs() as usize);
            }
        }
        let chosen = self.wait(|| (list.property("value") == json!(value)).then_some(()));
        assert!(chosen.is_some(), "chose {value:?} and the list shows {}", list.property("value"));
    }

    /// Writes into a field, in place of what is there.
    #[track_caller]
    pub fn write(&self, hand: Hand, field: &Element<'_>, text: &str) {
        match hand {
            Hand::Mouse => field.click(),
            Hand::Touch => field.tap(),
            Hand::Keys => self.tab_to(field),
        }
        self.key("Control+a");
        self.type_keys(text);
        assert_eq!(field.property("value"), json!(text));
    }

    /// Moves the focus to an element by Tab, and by the arrows within a row of buttons.
    #[track_caller]
    pub fn tab_to(&self, element: &Element<'_>) {
        for _ in 0..8 {
            let way = self.run(WAY, &[element.reference()]);
            let along = |steps: i64, on: &str, back: &str| {
                self.keys(if steps < 0 { back } else { on }, steps.unsigned_abs() as usize);
            };
            match (way[0].as_i64(), way[1].as_i64().unwrap_or_default()) {
                (Some(0), 0) => return,
                (Some(0), arrows) => along(arrows, "ArrowRight", "ArrowLeft"),
                (Some(tabs), _) => along(tabs, "Tab", "Shift+Tab"),
                // The browser knows where the focus was lost; one step gets it back.
                (None, _) => self.key("Tab"),
            }
        }
        panic!(
            "Tab never stops at the {} {:?}; it stands on the {} {:?}",
            element.role(),
            element.name(),
            self.focused().role(),
            self.focused().name()
        );
    }

    fn option(&self, list: &Element<'_>, at: usize) -> Element<'_> {
        let option = self.run("return arguments[0].options[arguments[1]];", &[list.reference(), json!(at)]);
        self.named(&option).expect("the option is there")
    }

    fn named(&self, value: &Value) -> Option<Element<'_>> {
        value[REFERENCE].as_str().map(|id| Element { browser: self, id: id.to_owned() })
    }
}
