//! The page's way to its words: which sentence of the book a screen shows. The sentences themselves stand in
//! `assets/words`, one book a language.

mod act;
mod bench;
mod fit;
mod label;
mod language;
mod name;
mod page;
mod place;
mod sheet;
mod voice;

pub use act::{act_caution, heater_option, part_option};
pub use bench::*;
pub use fit::*;
pub use label::Label;
pub use language::*;
pub use name::*;
pub use page::*;
pub use place::*;
pub use sheet::*;
pub use voice::*;
