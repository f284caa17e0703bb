//! Every sentence of the page, in one folder. Nothing outside it holds a word that a user reads.

mod act;
mod fault;
mod harm;
mod name;
mod outcome;
mod page;
mod person;
mod sight;

pub use act::{act, act_caution, new_part};
pub use fault::{advice, fault, helper, observation, part};
pub use harm::harm;
pub use name::*;
pub use outcome::{refusal, shown};
pub use page::*;
pub use person::{answer, question};
pub use sight::{noticed, sight, sights};
