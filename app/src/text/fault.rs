//! Names of faults, parts, advice, things to report and people to call.

use bench::{Helper, Observation};
use plant::FaultId;
use plant::fault::{Advice, PartKind};

/// A fault as a finding names it.
pub const fn fault(fault: FaultId) -> &'static str {
    match fault {
        FaultId::F01 => "Lower element open",
        FaultId::F02 => "Upper element open",
        FaultId::F03 => "Tank corroded through",
        FaultId::F04 => "Demand beyond capacity",
        FaultId::F05 => "Upper thermostat welded calling",
        FaultId::F06 => "Lower thermostat welded calling",
        FaultId::F08 => "Limit tripped, cause gone",
        FaultId::F09 => "Limit, one pole burnt",
        FaultId::F10 => "Upper thermostat does not transfer",
        FaultId::F11 => "Upper thermostat never feeds the upper element",
        FaultId::F12 => "Lower thermostat open",
        FaultId::F13 => "Lower element touching its sheath mid-coil",
        FaultId::F14 => "Element touching its sheath near an end",
        FaultId::F18 => "Breaker off or tripped, no fault behind it",
        FaultId::F19 => "Breaker, one pole not making",
        FaultId::F23 => "Burnt splice in the junction box",
        FaultId::F27 => "240 V element on a 208 V supply",
        FaultId::F35 => "Dial set high",
        FaultId::F36 => "Dials set unequal",
        FaultId::F37 => "Dip tube broken or missing",
        FaultId::F45 => "Thermal expansion in a closed system",
        FaultId::F50 => "Element gasket leaks",
    }
}

/// A part.
pub const fn part(part: PartKind) -> &'static str {
    match part {
        PartKind::UpperElement => "Upper element with gasket",
        PartKind::LowerElement => "Lower element with gasket",
        PartKind::UpperThermostat => "Upper thermostat",
        PartKind::LowerThermostat => "Lower thermostat",
        PartKind::Limit => "High limit",
        PartKind::Breaker => "Two-pole breaker",
        PartKind::Fuse => "Fuse",
        PartKind::DipTube => "Dip tube",
        PartKind::UpperGasket => "Gasket, upper element",
        PartKind::LowerGasket => "Gasket, lower element",
        PartKind::ReliefValve => "Relief valve",
        PartKind::ExpansionTank => "Expansion tank",
        PartKind::Heater => "Whole heater",
    }
}

/// Advice to the customer.
pub const fn advice(advice: Advice) -> &'static str {
    match advice {
        Advice::DemandExceedsCapacity => "The house asks for more hot water than this heater can make",
        Advice::LowSupplyVoltage => {
            "On 208 V a 240 V heater makes three quarters of its power: accept it or fit 208 V elements"
        }
        Advice::SafeTemperature => "Why 120 °F (49 °C), and a mixing valve for anything hotter",
        Advice::NothingWrong => "The heater is sound: what was measured",
    }
}

/// Something to report.
pub const fn observation(what: Observation) -> &'static str {
    match what {
        Observation::MislabelledBreaker => "A breaker feeds something other than its label says",
        Observation::SecondSource => "A second source feeds the heater",
        Observation::BrokenLead => "A lead of the meter is broken",
        Observation::NoExpansionControl => "No expansion control in a closed system",
        Observation::ScaldingWater => "Water above 120 °F (49 °C) at the tap",
    }
}

/// Somebody to call.
pub const fn helper(helper: Helper) -> &'static str {
    match helper {
        Helper::Electrician => "a licensed electrician",
        Helper::Plumber => "a licensed plumber",
        Helper::Utility => "the utility",
        Helper::Ambulance => "an ambulance",
    }
}
