//! Drills: made from a seed and choices, handed out as codes or files, recorded as attempts, scored by replay.

pub mod attempt;
pub mod belief;
pub mod class;
pub mod code;
pub mod cure;
pub mod debrief;
pub mod exam;
pub mod grade;
mod house;
mod left;
pub mod licence;
pub mod make;
pub mod order;
pub mod procedure;
pub mod replay;
pub mod rubric;
pub mod score;
pub mod second;
mod showcase;
pub mod wish;

pub use attempt::{Attempt, AttemptError, Seal};
pub use class::{Row, commonest, csv};
pub use code::CodeError;
pub use cure::Cure;
pub use debrief::{Debrief, debrief};
pub use exam::Opening;
pub use grade::{Graded, Grader};
pub use house::DEALT;
pub use make::{Drill, Settled, Title, make, settle};
pub use order::{Order, OrderError, RULES, Wanted};
pub use replay::{judge, replay};
pub use rubric::{Account, Rubric, RuleId};
pub use score::{Case, Detail, Score, ScoreLine, Truth};
pub use second::Second;
pub use showcase::showcase;
pub use wish::{Family, Level};
