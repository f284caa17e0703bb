//! A place: its detail, what was seen there, the point under the hand, and everything that can be done there.

mod acts;
mod compartment;
mod go;
mod offer;
mod panel;
mod places;
mod point_card;
mod seen;
mod water;

pub use acts::{Group, groups};
pub use go::go;
pub use offer::{Offer, Offers};
pub use panel::PlacePanel;
pub use places::{Places, is_there};
#[cfg(test)]
pub use point_card::offers as point_offers;
