//! One element of the page.

use serde_json::{Value, json};

use super::Browser;

/// The protocol's name for a reference to an element.
pub(super) const REFERENCE: &str = "element-6066-11e4-a52e-4f735466cecf";

/// Brings an element to the middle, again in each frame until nothing is still to move it, half a minute at most: what is
/// being drawn, what a debrief computes besides, and what a browser lays out only as it comes into view.
const STAND: &str = "
const [one] = arguments;
const skipped = (part) => {
    const { top, bottom } = part.parentElement.getBoundingClientRect();
    return top < innerHeight && bottom > 0 && part.checkVisibility() && !part.checkVisibility({ contentVisibilityAuto: true });
};
return new Promise((done) => {
    let waits = 1800;
    const look = () => {
        one.scrollIntoView({ block: 'center', inline: 'nearest', behavior: 'instant' });
        const moves = document.querySelector('.filling, .would [role=status]') || [...document.querySelectorAll('.part > *')].some(skipped);
        waits -= 1;
        if (moves && waits > 0) requestAnimationFrame(look); else done();
    };
    look();
});
";

/// An element found on the page; stale once the page has replaced it.
#[derive(Clone)]
pub struct Element<'a> {
    pub(super) browser: &'a Browser,
    pub(super) id: String,
}

impl Element<'_> {
    /// Clicks in its middle, as a mouse does; fails when something covers it.
    #[track_caller]
    pub fn click(&self) {
        self.post("click", &json!({}));
    }

    /// Touches its middle with one finger, after scrolling it into view.
    #[track_caller]
    pub fn tap(&self) {
        self.scroll_into_view();
        self.browser.pointer("touch", &[self.reference()]);
    }

    /// Types into it, after giving it the focus.
    #[track_caller]
    pub fn type_text(&self, text: &str) {
        self.post("value", &json!({ "text": text }));
    }

    /// Empties a text field.
    #[track_caller]
    pub fn clear(&self) {
        self.post("clear", &json!({}));
    }

    /// The text it shows.
    #[track_caller]
    pub fn text(&self) -> String {
        self.string("text")
    }

    /// The role that assistive technology is told.
    #[track_caller]
    pub fn role(&self) -> String {
        self.string("computedrole")
    }

    /// The name that assistive technology is told.
    #[track_caller]
    pub fn name(&self) -> String {
        self.string("computedlabel")
    }

    /// An attribute as written.
    #[track_caller]
    pub fn attribute(&self, name: &str) -> Option<String> {
        self.get(&format!("attribute/{name}")).as_str().map(str::to_owned)
    }

    /// A property of the object, such as `value` or `checked`.
    #[track_caller]
    pub fn property(&self, name: &str) -> Value {
        self.get(&format!("property/{name}"))
    }

    /// Whether it can be used.
    #[track_caller]
    pub fn is_enabled(&self) -> bool {
        self.get("enabled") == Value::Bool(true)
    }

    /// Left, top, width and height in CSS pixels.
    #[track_caller]
    pub fn bounds(&self) -> [f64; 4] {
        let all = self.get("rect");
        ["x", "y", "width", "height"].map(|side| all[side].as_f64().unwrap_or_default())
    }

    /// Brings it into view, and waits until it stands still there.
    #[track_caller]
    pub fn scroll_into_view(&self) {
        self.browser.run(STAND, &[self.reference()]);
    }

    /// How it is named in scripts and actions.
    pub fn reference(&self) -> Value {
        json!({ REFERENCE: self.id })
    }

    #[track_caller]
    fn string(&self, what: &str) -> String {
        self.get(what).as_str().unwrap_or_default().to_owned()
    }

    #[track_caller]
    fn get(&self, what: &str) -> Value {
        self.browser.driver.get(&format!("element/{}/{what}", self.id)).unwrap()
    }

    #[track_caller]
    fn post(&self, what: &str, body: &Value) {
        self.browser.driver.post(&format!("element/{}/{what}", self.id), body).unwrap();
    }
}
