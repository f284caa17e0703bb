//! The tables of body impedance, hand to hand, and the way between their rows.

use quantity::{Constant, Ohms, Tag, Volts};

use super::{Percentile, Wetness};

/// Volts and the ohms of 5, 50 and 95 % of the population, hand to hand.
pub type Row = (f64, [f64; 3]);

quantity::constants! {
    /// IEC 60479-1:2005, table 1, from memory (7.2): dry.
    pub const TABLE_1: Constant<[Row; 11]> = Constant::new(
        "body impedance by touch voltage, dry, hand to hand: 5, 50, 95 % of people",
        [
            (25.0, [1750.0, 3250.0, 6100.0]),
            (50.0, [1375.0, 2500.0, 4600.0]),
            (75.0, [1125.0, 2000.0, 3600.0]),
            (100.0, [990.0, 1725.0, 3125.0]),
            (125.0, [900.0, 1550.0, 2675.0]),
            (150.0, [850.0, 1400.0, 2350.0]),
            (175.0, [825.0, 1325.0, 2175.0]),
            (200.0, [800.0, 1275.0, 2050.0]),
            (225.0, [775.0, 1225.0, 1900.0]),
            (400.0, [700.0, 950.0, 1275.0]),
            (1000.0, [575.0, 775.0, 1050.0]),
        ],
        "V, Ω",
        Tag::Memory("IEC 60479-1:2005, table 1"),
    );
    /// Table 2, from memory (7.2): water-wet; from 125 V as dry.
    const WATER: Constant<[Row; 11]> = Constant::new(
        "body impedance by touch voltage, water-wet, hand to hand: 5, 50, 95 % of people",
        [
            (25.0, [1175.0, 2175.0, 4100.0]),
            (50.0, [1100.0, 2000.0, 3675.0]),
            (75.0, [1025.0, 1825.0, 3275.0]),
            (100.0, [975.0, 1675.0, 2950.0]),
            TABLE_1.get()[4],
            TABLE_1.get()[5],
            TABLE_1.get()[6],
            TABLE_1.get()[7],
            TABLE_1.get()[8],
            TABLE_1.get()[9],
            TABLE_1.get()[10],
        ],
        "V, Ω",
        Tag::Memory("IEC 60479-1:2005, table 2"),
    );
    /// Table 3, from memory (7.2): salt-wet; from 400 V as dry.
    const SALT: Constant<[Row; 7]> = Constant::new(
        "body impedance by touch voltage, salt-wet, hand to hand: 5, 50, 95 % of people",
        [
            (25.0, [960.0, 1300.0, 1755.0]),
            (50.0, [940.0, 1275.0, 1720.0]),
            (100.0, [880.0, 1225.0, 1655.0]),
            (125.0, [850.0, 1200.0, 1620.0]),
            (225.0, [770.0, 1115.0, 1505.0]),
            TABLE_1.get()[9],
            TABLE_1.get()[10],
        ],
        "V, Ω",
        Tag::Memory("IEC 60479-1:2005, table 3"),
    );
    /// IEC 479-1:1984/1994, table 1, dry (7.1, published: a typed copy). The last row is its asymptote.
    const TABLE_1994: Constant<[Row; 9]> = Constant::new(
        "body impedance by touch voltage, dry, older edition: 5, 50, 95 % of people",
        [
            (25.0, [1750.0, 3250.0, 6100.0]),
            (50.0, [1450.0, 2625.0, 4375.0]),
            (75.0, [1250.0, 2200.0, 3500.0]),
            (100.0, [1200.0, 1875.0, 3200.0]),
            (125.0, [1125.0, 1625.0, 2875.0]),
            (220.0, [1000.0, 1350.0, 2125.0]),
            (700.0, [750.0, 1100.0, 1550.0]),
            (1000.0, [700.0, 1050.0, 1500.0]),
            (2000.0, [650.0, 750.0, 850.0]),
        ],
        "V, Ω",
        Tag::Published("IEC 479-1:1984 and 1994, table 1, in a typed copy"),
    );
}

/// Impedance of the body alone, hand to hand: straight between the rows, held outside them.
pub fn hand_to_hand(across: Volts, percentile: Percentile, wetness: Wetness) -> Ohms {
    let rows: &[Row] = match wetness {
        Wetness::Dry => &TABLE_1.get(),
        Wetness::Water => &WATER.get(),
        Wetness::Salt => &SALT.get(),
    };
    along(rows, across, percentile)
}

/// The same by table 1 of the edition of 1984 and 1994, dry: an older count of the same thing, and the one that
/// was read in public.
pub fn hand_to_hand_1994(across: Volts, percentile: Percentile) -> Ohms {
    along(&TABLE_1994.get(), across, percentile)
}

/// What the skin has no part in: the impedance at which the table ends, where the skin is broken through.
pub fn internal(percentile: Percentile) -> Ohms {
    along(&TABLE_1.get(), Volts(1000.0), percentile)
}

/// Straight between the rows, held outside them.
fn along(rows: &[Row], across: Volts, percentile: Percentile) -> Ohms {
    let pick = |row: &Row| match percentile {
        Percentile::P5 => row.1[0],
        Percentile::P50 => row.1[1],
        Percentile::P95 => row.1[2],
    };
    let volts = across.get().abs();
    let mut before: Option<&Row> = None;
    for row in rows {
        if volts <= row.0 {
            return Ohms(before.map_or(pick(row), |low| {
                pick(low) + (pick(row) - pick(low)) * (volts - low.0) / (row.0 - low.0)
            }));
        }
        before = Some(row);
    }
    Ohms(before.map_or(f64::INFINITY, pick))
}
