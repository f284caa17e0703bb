//! The list of faults: one entry each, its number and its file.

use super::Fault;
use crate::named::named;

/// Makes the closed list and the way from a number to its file.
macro_rules! catalogue {
    ($($(#[$doc:meta])* $id:ident $file:ident $text:literal,)*) => {
        named! {
            /// A fault, numbered as in section 9 of the trade sheet.
            FaultId { $($(#[$doc])* $id = $text,)* }
        }

        impl FaultId {
            /// Its catalogue entry.
            pub const fn fault(self) -> &'static Fault {
                match self { $(Self::$id => &super::$file::FAULT,)* }
            }
        }
    };
}

catalogue! {
    /// Lower element open.
    F01 f01 "F01",
    /// Upper element open.
    F02 f02 "F02",
    /// Tank shell corroded through.
    F03 f03 "F03",
    /// Demand beyond capacity.
    F04 f04 "F04",
    /// Upper thermostat welded calling.
    F05 f05 "F05",
    /// Lower thermostat welded calling.
    F06 f06 "F06",
    /// Limit weak.
    F07 f07 "F07",
    /// Limit tripped, cause gone.
    F08 f08 "F08",
    /// Limit, one pole burnt.
    F09 f09 "F09",
    /// Upper thermostat fails to transfer.
    F10 f10 "F10",
    /// Upper thermostat never feeds the upper element.
    F11 f11 "F11",
    /// Lower thermostat open.
    F12 f12 "F12",
    /// Lower element grounded mid-coil.
    F13 f13 "F13",
    /// Element grounded near an end.
    F14 f14 "F14",
    /// Turns of an element shorted.
    F15 f15 "F15",
    /// Upper element fired dry.
    F16 f16 "F16",
    /// Dry-fired upper element failed later.
    F17 f17 "F17",
    /// Breaker off or tripped, no fault behind it.
    F18 f18 "F18",
    /// Breaker, one pole not making.
    F19 f19 "F19",
    /// Breaker tired, or a hot lug on it.
    F20 f20 "F20",
    /// One fuse of a switch in the line melted.
    F21 f21 "F21",
    /// A leg of the service lost.
    F22 f22 "F22",
    /// Burnt splice in the junction box.
    F23 f23 "F23",
    /// Burnt screw at the lower thermostat.
    F24 f24 "F24",
    /// Aluminium in a connector for copper.
    F25 f25 "F25",
    /// A timer in the line keeps the heater off.
    F26 f26 "F26",
    /// 240 V element on a 208 V supply.
    F27 f27 "F27",
    /// Both poles of the breaker on one leg.
    F28 f28 "F28",
    /// Element of the wrong power fitted.
    F29 f29 "F29",
    /// Lower control fed from the wrong screw.
    F30 f30 "F30",
    /// Equipment ground off, and an element leaks.
    F31 f31 "F31",
    /// Wet compartment.
    F32 f32 "F32",
    /// Thermostat off the shell.
    F33 f33 "F33",
    /// Dials set low.
    F34 f34 "F34",
    /// Dial set high.
    F35 f35 "F35",
    /// Dials unequal.
    F36 f36 "F36",
    /// Dip tube broken or missing.
    F37 f37 "F37",
    /// Cold water crosses over through a fixture.
    F38 f38 "F38",
    /// Mixing valve seized.
    F39 f39 "F39",
    /// Hot and cold connections swapped.
    F40 f40 "F40",
    /// Sediment and a crusted lower element.
    F41 f41 "F41",
    /// Water comes in colder than usual.
    F42 f42 "F42",
    /// Hot line leaks out of sight.
    F43 f43 "F43",
    /// Recirculation that never rests.
    F44 f44 "F44",
    /// Thermal expansion in a closed system.
    F45 f45 "F45",
    /// Static pressure high.
    F46 f46 "F46",
    /// Relief valve's seat fouled.
    F47 f47 "F47",
    /// Limit and upper thermostat welded.
    F48 f48 "F48",
    /// Expansion tank waterlogged.
    F49 f49 "F49",
    /// Element gasket leaks.
    F50 f50 "F50",
    /// Drain valve drips.
    F51 f51 "F51",
    /// Nipple corroded through.
    F52 f52 "F52",
    /// Condensation.
    F53 f53 "F53",
    /// Hot water smells of rotten eggs.
    F54 f54 "F54",
    /// Rusty hot water.
    F55 f55 "F55",
    /// Anode spent, nothing felt of it yet.
    F56 f56 "F56",
    /// Hot pipe ticking in its straps.
    F57 f57 "F57",
    /// Heat trap stuck.
    F58 f58 "F58",
    /// Gas in the lines of an empty house.
    F59 f59 "F59",
    /// Thermistor open or shorted.
    F60 f60 "F60",
    /// Relay of a board failed.
    F61 f61 "F61",
    /// Board locked out for want of water.
    F62 f62 "F62",
    /// Frozen pipe and a drained tank.
    F63 f63 "F63",
    /// A measurement that misled.
    F64 f64 "F64",
    /// Neutral of a hot-and-neutral heater open.
    F65 f65 "F65",
    /// 240 V heater fed with 120 V.
    F66 f66 "F66",
    /// Both elements open.
    F67 f67 "F67",
    /// Wires of U2 and U4 swapped.
    F68 f68 "F68",
    /// Wrong breaker switched off by a wrong label.
    F69 f69 "F69",
    /// Limit off the shell, upper thermostat welded.
    F70 f70 "F70",
    /// Hot joint beside the limit.
    F71 f71 "F71",
    /// Thermostat with too wide a differential.
    F72 f72 "F72",
    /// Neutral of the service loose.
    F73 f73 "F73",
    /// One fixture's stop.
    F74 f74 "F74",
    /// Insulation of an element leaks softly.
    F75 f75 "F75",
    /// An element's coil that parts when it is warm.
    F76 f76 "F76",
    /// A thermostat's contact that misses.
    F77 f77 "F77",
}
