//! The gallery: every drawing and every part of a screen in each of its states, to be looked at while one works on
//! them. It is in builds with debug assertions only; `#/gallery` opens its list.

mod circuits;
mod desks;
mod drawings;
mod entries;
mod helps;
mod judged;
mod lookups;
mod page;
mod panels;
mod stand;
mod states;
mod tanks;
mod whole;
mod worked;

pub use page::{Gallery, asked};
