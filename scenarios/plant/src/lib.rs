//! The simulated heater and the house around it, as data with provenance.
//!
//! Knows parts, wires, water and people at home. Knows nothing of the technician, of screens or of scores.

pub mod branch;
mod build;
pub mod climate;
pub mod conductor;
pub mod controls;
pub mod electrical;
pub mod fault;
mod handiwork;
pub mod heater;
pub mod home;
pub mod household;
pub mod in_line;
mod installation;
pub mod layout;
mod location;
pub mod named;
pub mod parts;
pub mod points;
mod sources;
pub mod state;
pub mod supply;
pub mod thermal;
pub mod waterworks;
pub mod wire;

pub use conductor::{Conductor, Metal};
pub use fault::FaultId;
pub use handiwork::Handiwork;
pub use heater::{HeaterModel, Plate};
pub use home::{Home, Setting};
pub use in_line::{BoxKind, InLineBox};
pub use installation::{Discharge, Installation};
pub use layout::Layout;
pub use location::Location;
pub use parts::*;
pub use points::{End, Place, Point, Screw};
pub use sources::sources;
pub use state::Happening;
pub use state::Plant;
pub use supply::{Breaker, Circuit, Handle, Panel, Service, ServiceKind, Stab};
pub use waterworks::{
    Anode, AnodeMetal, DipTube, ExpansionTank, Fixture, HeatTraps, Ledger, MixingValve, Plumbing,
    Recirculation, Regulator, ReliefValve, Stand, Store, Tap, Vessel,
};
pub use wire::Wire;
