//! Details: a compartment, the junction box, the open load center, drawn close, with every point to pick.

mod bodies;
mod covers;
mod layout;
mod panel;
mod path;
mod points;
mod probes;
mod view;
mod wires;

pub use covers::bare;
pub use layout::has_detail;
pub use probes::tip;
pub use view::Detail;
pub use wires::colour_of;
