//! What the device keeps of a job and cannot be read: set aside as it was found, until somebody has saved or cleared it.

use std::collections::BTreeMap;

use web_sys::Storage;

use super::journal::{self, get};

/// Keys of what was set aside begin so. What follows is how many entries lay there before, and the end of the entry's own
/// key: no longer than that was, so that a full storage has room for what moves.
const ASIDE: &str = "tw.old.";
/// What every key of a job begins with.
const OURS: &str = "tankwright.";

/// Sets the job on the device aside as it is found, before anything of it is written over. Entry by entry it moves, which
/// a full storage bears; the head and the acts up to `kept` stay as well, where the job goes on with them.
pub(super) fn set_aside(storage: &Storage, kept: Option<usize>) {
    let before = journal::keys(storage, &[ASIDE]).len();
    let all = journal::keys(storage, journal::JOB);
    // What moves comes first: it takes no room, a copy does.
    for stays in [false, true] {
        for key in all.iter().filter(|key| journal::goes_on(key, kept) == stays) {
            let text = get(storage, key).unwrap_or_default();
            if !stays {
                let _ = storage.remove_item(key);
            }
            // A full storage refuses a copy, whose entry is still where it was.
            let _ = storage.set_item(&format!("{ASIDE}{before}.{}", key.trim_start_matches(OURS)), &text);
        }
    }
}

/// What could not be read, as a file's text: what was set aside, and the job on the device if that cannot be opened.
pub fn unread(unopened: bool) -> Option<String> {
    let storage = journal::storage().ok()?;
    let mut keys = journal::keys(&storage, &[ASIDE]);
    if unopened {
        keys.extend(journal::keys(&storage, journal::JOB));
    }
    let entry = |key: String| Some((key.clone(), get(&storage, &key)?));
    let all: BTreeMap<String, String> = keys.into_iter().filter_map(entry).collect();
    (!all.is_empty()).then(|| serde_json::to_string(&all).unwrap_or_default())
}

/// Clears what was set aside.
pub fn forget_unread() {
    let Ok(storage) = journal::storage() else { return };
    for key in journal::keys(&storage, &[ASIDE]) {
        let _ = storage.remove_item(&key);
    }
}
