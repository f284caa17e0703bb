//! The journal of the job under way in local storage: a head, then one entry an act, never rewritten.
//!
//! Storage may be missing, blocked or full at any moment; each call says which. Nothing is read back that
//! is not folded again by the world, so a spoilt entry ends the journal at its place.

use bench::Action;
use drill::Practice;
use serde::{Deserialize, Serialize};
use web_sys::Storage;

use super::aside::{forget_unread, set_aside};
use super::{Desk, Keeping};

/// Key of the head.
const HEAD: &str = "tankwright.job";
/// Key of the desk, which is no part of the job.
const DESK: &str = "tankwright.desk";
/// Keys of the acts begin so; the step's number follows.
const ACT: &str = "tankwright.act.";
/// What the keys of a job begin with.
pub(super) const JOB: &[&str] = &[HEAD, ACT];

/// What a job is made from again.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
pub struct Head {
    /// Tells this attempt from any other on the device.
    pub attempt: String,
    /// The drill, as a code or a file's text; see `begin`.
    pub drill: String,
    /// Name or number the learner typed.
    pub learner: String,
    /// What marks it as practice.
    #[serde(default)]
    pub practice: Practice,
}

/// The head of a job is there and cannot be read.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Unreadable;

/// A job found on the device.
#[derive(Clone, PartialEq, Debug)]
pub struct Saved {
    /// What it is made from.
    pub head: Head,
    /// What was done.
    pub actions: Vec<Action>,
    /// The desk, if it was kept too.
    pub desk: Desk,
    /// The step whose entry could not be read; what followed it is lost.
    pub broken: Option<u32>,
}

pub(super) fn storage() -> Result<Storage, Keeping> {
    gloo::utils::window().local_storage().ok().flatten().ok_or(Keeping::Blocked)
}

fn set(storage: &Storage, key: &str, value: &str) -> Result<(), Keeping> {
    // Setting fails for one reason in practice: the quota. A blocked storage fails earlier.
    storage.set_item(key, value).map_err(|_| Keeping::Full)
}

pub(super) fn get(storage: &Storage, key: &str) -> Option<String> {
    storage.get_item(key).ok().flatten()
}

fn act_key(step: usize) -> String {
    format!("{ACT}{step}")
}

fn said(result: Result<(), Keeping>) -> Keeping {
    result.err().unwrap_or(Keeping::Kept)
}

/// Begins a journal; an earlier one is cleared away, or set aside where it could not be opened.
pub fn begin(head: &Head, unopened: bool) -> Keeping {
    said(storage().and_then(|storage| {
        if unopened {
            set_aside(&storage, None);
        }
        clear_acts(&storage);
        set(&storage, HEAD, &serde_json::to_string(head).unwrap_or_default())
    }))
}

/// Appends the act of a step, 1 the first.
pub fn append(head: &Head, step: usize, action: &Action) -> Keeping {
    said(storage().and_then(|storage| {
        if found_head(&storage).as_ref() != Some(head) {
            return Err(Keeping::Elsewhere);
        }
        set(&storage, &act_key(step), &serde_json::to_string(action).unwrap_or_default())
    }))
}

/// Keeps the desk.
pub fn keep_desk(desk: &Desk) -> Keeping {
    said(storage().and_then(|storage| set(&storage, DESK, &serde_json::to_string(desk).unwrap_or_default())))
}

/// Clears everything of the job from the device.
pub fn clear() -> Keeping {
    said(storage().map(|storage| {
        clear_acts(&storage);
        let _ = storage.remove_item(HEAD);
        let _ = storage.remove_item(DESK);
        forget_unread();
    }))
}

/// Whether there is a job on the device, readable or not, and how its desk stands.
pub fn kept() -> (bool, Desk) {
    let Ok(storage) = storage() else { return Default::default() };
    (get(&storage, HEAD).is_some(), found_desk(&storage))
}

/// Finds the job that was under way; an error where its head cannot be read. What of its acts cannot be read is set
/// aside.
pub fn load() -> Option<Result<Saved, Unreadable>> {
    let storage = storage().ok()?;
    get(&storage, HEAD)?;
    Some(found_head(&storage).ok_or(Unreadable).map(|head| found_acts(&storage, head)))
}

fn found_acts(storage: &Storage, head: Head) -> Saved {
    let mut actions = Vec::new();
    let mut broken = None;
    while let Some(text) = get(storage, &act_key(actions.len() + 1)) {
        match serde_json::from_str(&text) {
            Ok(action) => actions.push(action),
            Err(_) => {
                broken = Some(actions.len() as u32 + 1);
                break;
            }
        }
    }
    if broken.is_some() {
        set_aside(storage, Some(actions.len()));
    }
    forget_beyond(storage, actions.len());
    Saved { head, actions, desk: found_desk(storage), broken }
}

fn found_desk(storage: &Storage) -> Desk {
    get(storage, DESK).and_then(|text| serde_json::from_str(&text).ok()).unwrap_or_default()
}

fn found_head(storage: &Storage) -> Option<Head> {
    get(storage, HEAD).and_then(|text| serde_json::from_str(&text).ok())
}

fn clear_acts(storage: &Storage) {
    forget_beyond(storage, 0);
}

/// Removes the acts beyond a step, also those behind a gap: they must not follow what is done next.
fn forget_beyond(storage: &Storage, step: usize) {
    for key in keys(storage, &[ACT]).into_iter().filter(|key| !goes_on(key, Some(step))) {
        let _ = storage.remove_item(&key);
    }
}

/// Whether an entry belongs to a job that goes on with its first `kept` acts; none does where it is `None`.
pub(super) fn goes_on(key: &str, kept: Option<usize>) -> bool {
    let Some(kept) = kept else { return false };
    key.strip_prefix(ACT).is_none_or(|number| number.parse::<usize>().is_ok_and(|at| at <= kept))
}

/// The keys that begin with one of these.
pub(super) fn keys(storage: &Storage, begins: &[&str]) -> Vec<String> {
    let count = storage.length().unwrap_or(0);
    let ours = |key: &String| begins.iter().any(|begin| key.starts_with(begin));
    (0..count).filter_map(|at| storage.key(at).ok().flatten()).filter(ours).collect()
}
