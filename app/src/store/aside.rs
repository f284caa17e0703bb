//! What the device keeps of a job and cannot be read: set aside as it was found, until somebody has saved or cleared it.

use std::collections::BTreeMap;

use web_sys::Storage;

use super::journal;

/// Key of what was set aside: a line of JSON each time, the newest last.
const ASIDE: &str = "tankwright.aside";

/// Sets the job on the device aside as it is found, before anything of it is written over.
pub(super) fn set_aside(storage: &Storage) {
    // A full storage refuses it; there is nowhere else to put it.
    let _ = storage.set_item(ASIDE, &(earlier(storage) + &as_found(storage)));
}

/// What could not be read, as a file's text: what was set aside, and the job on the device if that cannot be opened.
pub fn unread(unopened: bool) -> Option<String> {
    let storage = journal::storage().ok()?;
    let found = if unopened { as_found(&storage) } else { String::new() };
    Some(earlier(&storage) + &found).filter(|text| !text.is_empty())
}

/// Clears what was set aside.
pub fn forget_unread() {
    if let Ok(storage) = journal::storage() {
        let _ = storage.remove_item(ASIDE);
    }
}

fn earlier(storage: &Storage) -> String {
    journal::get(storage, ASIDE).unwrap_or_default()
}

/// Every entry of the journal as the text that it is, by its key: a line.
fn as_found(storage: &Storage) -> String {
    let entry = |key: String| Some((key.clone(), journal::get(storage, &key)?));
    let all: BTreeMap<String, String> = journal::keys(storage).into_iter().filter_map(entry).collect();
    serde_json::to_string(&all).unwrap_or_default() + "\n"
}
