//! Keys and pointers that belong to no element.

use serde_json::{Value, json};

use super::Browser;

/// Keys with names, and the characters that the protocol gives them.
const NAMED: [(&str, char); 16] = [
    ("Backspace", '\u{e003}'),
    ("Tab", '\u{e004}'),
    ("Enter", '\u{e007}'),
    ("Shift", '\u{e008}'),
    ("Control", '\u{e009}'),
    ("Alt", '\u{e00a}'),
    ("Escape", '\u{e00c}'),
    ("Space", '\u{e00d}'),
    ("PageUp", '\u{e00e}'),
    ("PageDown", '\u{e00f}'),
    ("End", '\u{e010}'),
    ("Home", '\u{e011}'),
    ("ArrowLeft", '\u{e012}'),
    ("ArrowUp", '\u{e013}'),
    ("ArrowRight", '\u{e014}'),
    ("ArrowDown", '\u{e015}'),
];

impl Browser {
    /// Presses one key, or several held together: `Enter`, `a`, `Shift+Tab`.
    #[track_caller]
    pub fn key(&self, chord: &str) {
        self.keys(chord, 1);
    }

    /// Presses a key several times.
    #[track_caller]
    pub fn keys(&self, chord: &str, times: usize) {
        let keys: Vec<String> = chord.split('+').map(|name| key_value(name).to_string()).collect();
        let down = keys.iter().map(|key| json!({ "type": "keyDown", "value": key }));
        let up = keys.iter().rev().map(|key| json!({ "type": "keyUp", "value": key }));
        let once: Vec<Value> = down.chain(up).collect();
        let actions: Vec<Value> = std::iter::repeat_n(once, times).flatten().collect();
        self.act(json!({ "type": "key", "id": "keyboard", "actions": actions }));
    }

    /// Types a text wherever the focus is.
    #[track_caller]
    pub fn type_keys(&self, text: &str) {
        let press = |c: char| {
            let key = c.to_string();
            [json!({ "type": "keyDown", "value": key }), json!({ "type": "keyUp", "value": key })]
        };
        let actions: Vec<Value> = text.chars().flat_map(press).collect();
        self.act(json!({ "type": "key", "id": "keyboard", "actions": actions }));
    }

    /// Presses a key until the element with the focus has this role and name, as one does without a mouse.
    #[track_caller]
    pub fn key_until(&self, key: &str, role: &str, name: &str) {
        let mut passed = Vec::new();
        for _ in 0..300 {
            self.key(key);
            let here = self.focused();
            let found = (here.role(), here.name());
            if found.0 == role && found.1 == name {
                return;
            }
            passed.push(found);
        }
        passed.truncate(40);
        panic!("{key} never reached the {role} {name:?}; it passed {passed:?}");
    }

    /// Drags by mouse or `touch` from the middle of one element to the middle of another.
    #[track_caller]
    pub fn drag(&self, kind: &str, from: &super::Element<'_>, to: &super::Element<'_>) {
        from.scroll_into_view();
        self.pointer(kind, &[from.reference(), to.reference()]);
    }

    /// Puts a pointer down on the first element, moves it over the others and lifts it.
    #[track_caller]
    pub(super) fn pointer(&self, kind: &str, over: &[Value]) {
        let glide = |origin: &Value| json!({ "type": "pointerMove", "duration": 30, "x": 0, "y": 0, "origin": origin });
        let mut moves = over.iter().map(glide);
        let mut actions: Vec<Value> = moves.next().into_iter().collect();
        actions.push(json!({ "type": "pointerDown", "button": 0 }));
        actions.extend(moves);
        actions.push(json!({ "type": "pointerUp", "button": 0 }));
        self.act(json!({ "type": "pointer", "id": kind, "parameters": { "pointerType": kind }, "actions": actions }));
    }

    #[track_caller]
    fn act(&self, source: Value) {
        self.driver.post("actions", &json!({ "actions": [source] })).unwrap();
    }
}

#[track_caller]
fn key_value(name: &str) -> char {
    if let Some((_, value)) = NAMED.iter().find(|(known, _)| *known == name) {
        return *value;
    }
    let mut chars = name.chars();
    match (chars.next(), chars.next()) {
        (Some(single), None) => single,
        _ => panic!("no key is named {name:?}"),
    }
}
