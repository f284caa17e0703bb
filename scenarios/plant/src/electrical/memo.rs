//! Answers kept: while a plant's electrical fingerprint stays the same, so does every answer of its network. A job asks
//! the same network at every act, and the houses of many suspects, and of many learners' attempts, share one; keeping an
//! answer changes no result, only the time it takes.

use std::cell::RefCell;
use std::rc::Rc;

use quantity::{Constant, Ohms, Tag, Volts};

use super::{Bridge, Live};
use crate::{Plant, Point};

quantity::constants! {
    /// How many networks with nothing across them are remembered whole.
    const WHOLE: Constant<usize> =
        Constant::new("networks remembered whole", 12, "", Tag::Model("the states one job goes back and forth between"));
    /// How many single answers are remembered: a power of two.
    const ANSWERS: Constant<usize> = Constant::new(
        "answers of networks remembered",
        16_384,
        "",
        Tag::Model("every reading of a job in the houses of its suspects"),
    );
    /// Factors that spread a question over the table.
    const SPREAD: Constant<[u64; 3]> = Constant::new(
        "factors of a question's place",
        [0x9e37_79b9_7f4a_7c15, 0xbf58_476d_1ce4_e5b9, 0x94d0_49bb_1331_11eb],
        "",
        Tag::Published("Steele, Lea and Flood 2014, Fast splittable pseudorandom number generators"),
    );
    /// Shift that brings the well mixed bits down.
    const SHIFT: Constant<u32> = Constant::new("shift of a question's place", 32, "", Tag::Model("half a word"));
}

/// What was asked.
#[derive(Clone, Copy, PartialEq)]
enum Question {
    /// Ohms between two points, for direct current.
    Ohms(Point, Point),
    /// Volts across bridges.
    Across([Option<Bridge>; 2]),
}

/// What came of it.
#[derive(Clone, Copy)]
enum Answer {
    Ohms(Option<Ohms>),
    Across([Volts; 2]),
}

#[derive(Default)]
struct Memo {
    /// The one used last comes first.
    whole: Vec<(u64, Rc<Live>)>,
    answers: Vec<Option<(u64, Question, Answer)>>,
}

thread_local! {
    static MEMO: RefCell<Memo> = RefCell::default();
}

impl Question {
    /// Its place in the table, on a plant of some fingerprint.
    fn place(&self, state: u64) -> usize {
        let [first, second, third] = SPREAD.get();
        let mix = |so_far: u64, word: u64| (so_far ^ word).wrapping_mul(first).rotate_left(SHIFT.get());
        let number = |point: Point| match point {
            Point::Screw(screw) => screw.index() as u64,
            Point::End(end) => second ^ ((end.wire.index() as u64) << 1) ^ u64::from(end.side),
        };
        let mixed = match self {
            Self::Ohms(a, b) => mix(mix(state, number(*a)), number(*b)),
            Self::Across(bridges) => bridges.iter().flatten().fold(state ^ third, |so_far, bridge| {
                let so_far = mix(mix(so_far, number(bridge.a)), number(bridge.b));
                mix(mix(so_far, bridge.resistance.get().to_bits()), bridge.capacitance.to_bits())
            }),
        };
        (mixed >> SHIFT.get()) as usize & (ANSWERS.get() - 1)
    }
}

impl Memo {
    fn known(&mut self, place: usize, state: u64, question: &Question) -> Option<Answer> {
        if self.answers.is_empty() {
            self.answers.resize(ANSWERS.get(), None);
        }
        let (of, asked, answer) = self.answers.get(place)?.as_ref()?;
        (*of == state && asked == question).then_some(*answer)
    }
}

/// An answer, remembered or worked out now.
fn answer(plant: &Plant, question: Question, work: impl FnOnce() -> Answer) -> Answer {
    let state = plant.electrical_state();
    let place = question.place(state);
    let known = MEMO.with(|memo| memo.try_borrow_mut().ok()?.known(place, state, &question));
    known.unwrap_or_else(|| {
        let answer = work();
        MEMO.with(|memo| {
            let mut memo = memo.try_borrow_mut().ok();
            if let Some(entry) = memo.as_mut().and_then(|memo| memo.answers.get_mut(place)) {
                *entry = Some((state, question, answer));
            }
        });
        answer
    })
}

impl Plant {
    /// The network as it stands, nothing bridging it.
    pub fn standing(&self) -> Rc<Live> {
        let state = self.electrical_state();
        let known = MEMO.with(|memo| {
            let mut memo = memo.try_borrow_mut().ok()?;
            let place = memo.whole.iter().position(|(of, _)| *of == state)?;
            memo.whole.get_mut(..=place)?.rotate_right(1);
            memo.whole.first().map(|(_, live)| Rc::clone(live))
        });
        known.unwrap_or_else(|| {
            let live = Rc::new(self.energise(&[]));
            MEMO.with(|memo| {
                if let Ok(mut memo) = memo.try_borrow_mut() {
                    memo.whole.truncate(WHOLE.get() - 1);
                    memo.whole.insert(0, (state, Rc::clone(&live)));
                }
            });
            live
        })
    }

    /// Size of the voltage across one bridge with it in place.
    pub fn across(&self, bridge: Bridge) -> Volts {
        self.across_both([Some(bridge), None])[0]
    }

    /// The same with up to two bridges in place at once; none where there is no bridge.
    pub fn across_both(&self, bridges: [Option<Bridge>; 2]) -> [Volts; 2] {
        let work = || {
            let placed: Vec<Bridge> = bridges.iter().flatten().copied().collect();
            let live = self.energise(&placed);
            Answer::Across(bridges.map(|one| one.map_or(Volts(0.0), |one| live.volts(one.a, one.b).abs())))
        };
        match answer(self, Question::Across(bridges), work) {
            Answer::Across(volts) => volts,
            Answer::Ohms(_) => [Volts(0.0); 2],
        }
    }

    /// Resistance between two points with every source at zero, for direct current, breakers as they
    /// stand; `None` without a path, which is to say beyond 100 gigaohms.
    pub fn resistance(&self, a: Point, b: Point) -> Option<Ohms> {
        match answer(self, Question::Ohms(a, b), || Answer::Ohms(self.path(a, b))) {
            Answer::Ohms(ohms) => ohms,
            Answer::Across(_) => None,
        }
    }
}
