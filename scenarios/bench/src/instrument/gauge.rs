//! The pressure gauge: a dial to 200 psi with a lazy hand, read to the pound.

use quantity::{Constant, Tag};

quantity::constants! {
    /// End of the dial.
    pub const SPAN: Constant = Constant::new("gauge span", 200.0, "psi", Tag::CommonPractice);
    /// Largest error anywhere on it, in per cent of the span.
    pub const CLASS: Constant = Constant::new(
        "gauge class",
        2.0,
        "%",
        Tag::Published("ASME B40.100 grade A: 2 % of the span at the ends, 1 % in the middle half"),
    );
    /// Largest error in the middle half of the dial.
    pub const MIDDLE: Constant = Constant::new(
        "gauge class in the middle half",
        1.0,
        "%",
        Tag::Published("ASME B40.100 grade A, as sellers print it"),
    );
    /// To what it is read.
    pub const DIGIT: Constant = Constant::new("gauge read to", 1.0, "psi", Tag::CommonPractice);
}

/// What the dial shows of a pressure in psi; the hand stops at its pin. `error` is the specimen's place within
/// its class.
pub fn read(psi: f64, error: f64) -> f64 {
    let span = SPAN.get();
    let end = (psi / span - 0.5).abs().clamp(0.25, 0.5);
    // From the middle half outwards the error grows evenly, so that the hand never jumps.
    let class = MIDDLE.get() + (CLASS.get() - MIDDLE.get()) * (end - 0.25) / 0.25;
    let shown = psi + error * class / 100.0 * span;
    // A stop pin holds the hand at nought and at the end.
    super::class::to_digit(shown.clamp(0.0, span), DIGIT.get())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_hand_rises_with_the_pressure_and_stops_at_the_pin() {
        for error in [-1.0, 0.0, 1.0] {
            let mut last = 0.0;
            for psi in 0..260 {
                let shown = read(f64::from(psi), error);
                assert!(shown >= last && shown <= SPAN.get(), "{psi} psi: {shown}");
                assert!(psi > 200 || (shown - f64::from(psi)).abs() <= 4.5);
                last = shown;
            }
        }
        assert_eq!(read(150.0, 0.0), 150.0);
        assert_eq!(read(100.0, 1.0), 102.0);
    }
}
