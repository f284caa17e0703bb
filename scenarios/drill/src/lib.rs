//! Drills: made from a seed and choices, handed out as codes or files, recorded as attempts, scored by replay.

pub mod attempt;
pub mod class;
pub mod code;
pub mod licence;
pub mod order;
pub mod rubric;
pub mod score;

pub use attempt::{Attempt, AttemptError, Seal};
pub use class::{Row, commonest, csv};
pub use code::CodeError;
pub use order::{Order, OrderError, RULES, Wanted};
pub use rubric::{Account, Rubric, RuleId};
pub use score::{Case, Detail, Score, ScoreLine};
