//! The worker's side: what its script calls with each message.

use std::cell::RefCell;

use drill::Grader;
use serde::{Deserialize, Serialize};
use wasm_bindgen::prelude::wasm_bindgen;

use super::pack::pack;
use super::unpack::unpack;
use super::{Answer, Task};

/// A message to the worker.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Letter {
    /// Its number.
    pub number: u32,
    /// What is asked for.
    pub task: Task,
}

/// A message from the worker.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub struct Reply {
    /// The number of the letter.
    pub number: u32,
    /// What came of it.
    pub answer: Answer,
}

thread_local! {
    static GRADER: RefCell<Grader> = RefCell::new(Grader::new());
}

/// Computes a task where the call is made.
pub fn perform(task: &Task) -> Answer {
    GRADER.with_borrow_mut(|grader| task.perform(grader))
}

/// Answers a letter; no bytes when it cannot be read or written.
#[wasm_bindgen]
pub fn answer_letter(letter: &[u8]) -> Vec<u8> {
    let Ok(Letter { number, task }) = unpack(letter) else { return Vec::new() };
    pack(&Reply { number, answer: perform(&task) }).unwrap_or_default()
}
