//! The branch circuit a heater's plate asks for, by the code's rules (trade sheet 6.1 to 6.3).

use quantity::{Amps, Constant, Tag};

quantity::constants! {
    /// Standard ratings of breakers and fuses, amperes.
    pub const SIZES: Constant<[f64; 9]> = Constant::new(
        "standard ratings of overcurrent devices",
        [15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 60.0],
        "A",
        Tag::Memory("NEC 240.6(A)"),
    );
    /// What a rating may lack of the current worked out.
    const ROUNDED: Constant = Constant::new(
        "what a rating may lack of the current worked out",
        0.01,
        "A",
        Tag::Model("1.5 times 16.67 A is 25 A"),
    );
    /// Those usually on the shelf.
    const STOCKED: Constant<[f64; 6]> =
        Constant::new("ratings usually stocked", [15.0, 20.0, 30.0, 40.0, 50.0, 60.0], "A", Tag::CommonPractice);
    /// A fixed storage heater is a continuous load.
    pub const CONTINUOUS: Constant = Constant::new(
        "continuous load, of the rating",
        1.25,
        "",
        Tag::Published("NEC 422.13 with 210.20(A)"),
    );
    /// The most a single appliance's overcurrent device may have, before the next standard size.
    pub const MOST: Constant = Constant::new(
        "overcurrent device of one appliance, of its rating",
        1.50,
        "",
        Tag::Published("NEC 422.11(E)(3)"),
    );
    /// Below this the rule of 150 % does not apply: 20 A is the most.
    const SMALL: Constant<(Amps, Amps)> = Constant::of(
        "up to this rating 20 A is the most",
        (Amps(13.3), Amps(20.0)),
        Tag::Published("NEC 422.11(E)(2)"),
    );
    /// Copper conductors: AWG, ampacity at 60, 75 and 90 °C, most overcurrent protection (0: none named).
    pub const COPPER: Constant<[(f64, [f64; 3], f64); 5]> = Constant::new(
        "copper: AWG, ampacity at 60, 75, 90 °C, overcurrent limit",
        [
            (14.0, [15.0, 20.0, 25.0], 15.0),
            (12.0, [20.0, 25.0, 30.0], 20.0),
            (10.0, [30.0, 35.0, 40.0], 30.0),
            (8.0, [40.0, 50.0, 55.0], 0.0),
            (6.0, [55.0, 65.0, 75.0], 0.0),
        ],
        "A",
        Tag::Published("NEC 310.16 and 240.4(D)"),
    );
}

/// The next standard rating at or above a current.
fn next(amps: f64) -> Option<f64> {
    SIZES.get().into_iter().find(|size| *size + ROUNDED.get() >= amps)
}

/// The least and the most the overcurrent device of a heater of this current may have.
pub fn allowed(current: Amps) -> Option<(Amps, Amps)> {
    let (small, at_most) = SMALL.get();
    let least = next(CONTINUOUS.get() * current.get())?;
    let most = if current <= small { at_most.get() } else { next(MOST.get() * current.get())? };
    Some((Amps(least), Amps(most.max(least))))
}

/// The device fitted: of the sizes allowed the smallest usually stocked, else the least.
pub fn fitted(current: Amps) -> Option<Amps> {
    let (least, most) = allowed(current)?;
    let stocked = STOCKED.get().into_iter().find(|size| *size >= least.get() && *size <= most.get());
    Some(stocked.map_or(least, Amps))
}

/// The largest device that may protect a copper cable of a gauge; `None` for a gauge not in the table.
pub fn protects(awg: u8) -> Option<Amps> {
    let row = COPPER.get().into_iter().find(|(gauge, ..)| *gauge as u8 == awg)?;
    let (_, [cool, ..], most) = row;
    Some(Amps(if most > 0.0 { most } else { next(cool).unwrap_or(cool) }))
}

/// Gauge of the copper cable for a heater of this current behind a device: its ampacity at 60 °C carries the
/// continuous load, and the device protects it.
pub fn copper(current: Amps, device: Amps) -> Option<u8> {
    let load = CONTINUOUS.get() * current.get();
    let mut rows = COPPER.get().into_iter();
    let row = rows.find(|(_, [cool, ..], most)| {
        let protected = if *most > 0.0 { *most } else { next(*cool).unwrap_or(*cool) };
        *cool >= load && protected >= device.get()
    });
    row.map(|(awg, ..)| awg as u8)
}
