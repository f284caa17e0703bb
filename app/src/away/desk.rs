//! The page's side: sends letters to the worker and hands its answers to whoever asked.

use std::cell::RefCell;

use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use js_sys::Uint8Array;
use wasm_bindgen::JsCast;
use web_sys::{MessageEvent, Worker, WorkerOptions, WorkerType};
use yew::Callback;

use super::door::{Letter, Reply, perform};
use super::pack::pack;
use super::unpack::unpack;
use super::{Answer, Task};

/// The worker's script, from the page's folder.
const SCRIPT: &str = "assets/worker.js";
/// Where there is no worker the page first shows what it is about to do.
const AFTER_MS: u32 = 40;

/// The worker, and the listeners that go with it.
struct Hired {
    worker: Worker,
    _heard: [EventListener; 2],
}

/// Something asked for and not yet answered.
struct Waiting {
    task: Task,
    told: Callback<Answer>,
    /// The page's own turn at it, where there is no worker.
    _turn: Option<Timeout>,
}

#[derive(Default)]
struct Office {
    hired: Option<Hired>,
    /// A worker could not be had: the page computes everything itself.
    alone: bool,
    last: u32,
    waiting: Vec<(u32, Waiting)>,
}

thread_local! {
    static OFFICE: RefCell<Office> = RefCell::default();
}

/// A question under way. When it is dropped nobody wants the answer any more.
#[derive(Debug)]
pub struct Asked(u32);

impl Drop for Asked {
    fn drop(&mut self) {
        // While the page closes the office may be gone already.
        let _ = OFFICE.try_with(|office| office.try_borrow_mut().ok()?.taken(self.0));
    }
}

/// Starts the worker ahead of the first question, so that its module is there when it is needed.
pub fn prepare() {
    OFFICE.with_borrow_mut(Office::hire);
}

/// Asks; the answer comes later.
pub fn ask(task: Task, told: Callback<Answer>) -> Asked {
    OFFICE.with_borrow_mut(|office| {
        office.last = office.last.wrapping_add(1);
        let number = office.last;
        office.waiting.push((number, Waiting { task, told, _turn: None }));
        office.send(number);
        Asked(number)
    })
}

/// Stops whatever is being computed: the worker is dismissed in the middle of it and a fresh one takes its place.
/// Nothing that was asked is answered.
pub fn stop() {
    OFFICE.with_borrow_mut(|office| {
        office.waiting.clear();
        office.dismiss();
        office.hire();
    });
}

impl Office {
    fn hire(&mut self) {
        if self.alone || self.hired.is_some() {
            return;
        }
        let options = WorkerOptions::new();
        options.set_type(WorkerType::Module);
        self.hired = Worker::new_with_options(SCRIPT, &options).ok().map(|worker| {
            let heard = [
                EventListener::new(&worker, "message", |event| {
                    let data = event.dyn_ref::<MessageEvent>().map(MessageEvent::data);
                    let bytes = data.and_then(|data| data.dyn_into::<Uint8Array>().ok());
                    match bytes.and_then(|bytes| unpack(&bytes.to_vec()).ok()) {
                        // To whoever asked, in a turn of its own.
                        Some(reply) => drop(Timeout::new(0, move || deliver(reply)).forget()),
                        None => OFFICE.with_borrow_mut(Office::go_alone),
                    }
                }),
                EventListener::new(&worker, "error", |_| OFFICE.with_borrow_mut(Office::go_alone)),
            ];
            Hired { worker, _heard: heard }
        });
        self.alone = self.hired.is_none();
    }

    fn dismiss(&mut self) {
        if let Some(hired) = self.hired.take() {
            hired.worker.terminate();
        }
    }

    fn send(&mut self, number: u32) {
        self.hire();
        let Some((_, waiting)) = self.waiting.iter_mut().find(|(one, _)| *one == number) else { return };
        if let Some(why) = waiting.task.refused() {
            let answer = Answer::Failed(why);
            waiting._turn = Some(Timeout::new(0, move || deliver(Reply { number, answer })));
            return;
        }
        let letter = Letter { number, task: waiting.task.clone() };
        let bytes = self.hired.as_ref().zip(pack(&letter).ok());
        let sent = bytes.is_some_and(|(hired, bytes)| {
            hired.worker.post_message(&Uint8Array::from(bytes.as_slice())).is_ok()
        });
        if !sent {
            waiting._turn = Some(Timeout::new(AFTER_MS, move || {
                let answer = perform(&letter.task);
                deliver(Reply { number, answer });
            }));
        }
    }

    /// A question that waits no longer.
    fn taken(&mut self, number: u32) -> Option<Waiting> {
        let at = self.waiting.iter().position(|(one, _)| *one == number)?;
        Some(self.waiting.remove(at).1)
    }

    /// Without a worker from now on; what waits is computed here.
    fn go_alone(&mut self) {
        self.alone = true;
        self.dismiss();
        let numbers: Vec<u32> = self.waiting.iter().map(|(number, _)| *number).collect();
        numbers.into_iter().for_each(|number| self.send(number));
    }
}

/// Hands an answer over, outside the office: whoever gets it may ask again.
fn deliver(reply: Reply) {
    let waiting = OFFICE.with_borrow_mut(|office| office.taken(reply.number));
    if let Some(waiting) = waiting {
        waiting.told.emit(reply.answer);
    }
}
