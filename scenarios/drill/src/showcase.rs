//! A house to show a fault in: the plain heater where it can live there, else the first house and day that it fits.

use bench::Mode;
use plant::HeaterModel;
use plant::fault::FaultId;

use crate::make::{Drill, make, settle};
use crate::order::{Order, Wanted};

/// Where the drawings begin; any number would do.
const FIRST: u32 = 5000;
/// Drawings tried, each another town and day.
const DRAWINGS: u32 = 120;

/// The drill of such a house, with the fault in it. The same fault gives the same house everywhere.
pub fn showcase(fault: FaultId) -> Option<Drill> {
    let plain = HeaterModel::Plain40;
    let heaters =
        || std::iter::once(plain).chain(HeaterModel::ALL.iter().copied().filter(move |one| *one != plain));
    let orders = (FIRST..FIRST + DRAWINGS).flat_map(|seed| {
        heaters().map(move |heater| Order {
            heater: Some(heater),
            fault: Wanted::One(fault),
            ..Order::chance(seed, Mode::Solo)
        })
    });
    let order = orders.into_iter().find(|order| settle(order).is_ok())?;
    make(&order).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_fault_has_a_house() {
        for &fault in FaultId::ALL {
            let drill = showcase(fault).unwrap_or_else(|| panic!("{fault} fits nowhere"));
            assert_eq!(drill.fault.id, fault);
        }
    }
}
