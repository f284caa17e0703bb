//! Every text of the page, in one folder: sentences come from the crate `words`, labels stand here.

mod act;
mod bench;
mod fit;
mod name;
mod page;
mod place;
mod sheet;
mod voice;

pub use act::{act_caution, part_option};
pub use bench::*;
pub use fit::*;
pub use name::*;
pub use page::*;
pub use place::*;
pub use sheet::*;
pub use voice::*;
