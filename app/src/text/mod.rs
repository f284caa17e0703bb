//! Every sentence of the page, in one folder. Nothing outside it holds a word that a user reads.

mod act;
mod bench;
mod fault;
mod harm;
mod name;
mod outcome;
mod page;
mod person;
mod place;
mod sheet;
mod sight;

pub use act::{act, act_caution};
pub use bench::*;
pub use fault::{advice, fault, helper, observation, part};
pub use harm::harm;
pub use name::*;
pub use outcome::shown;
pub use page::*;
pub use person::{answer, question};
pub use place::*;
pub use sheet::*;
pub use sight::{noticed, sight};
