//! Where the heater's outline lies on the drawing: every heater to the same scale, standing on the same floor.

use plant::Plate;

/// Pixels of a meter.
pub const SCALE: f64 = 255.0;
/// The middle of the heater.
pub const MIDDLE: f64 = 248.0;
/// The bottom of the jacket.
pub const BOTTOM: f64 = 596.0;
/// The bottom of the water.
pub const WATER: f64 = 574.0;
/// Foam and jacket at the sides, and above the water.
const FOAM: f64 = 11.0;
const LID: f64 = 34.0;
/// Height of a cover where there is room, and where two covers lie close together; its width.
const COVER: (f64, f64) = (96.0, 68.0);
/// Room that a cover's two lines take below it.
const LINES: f64 = 36.0;
/// Room below the lowest cover, so that its lines stay inside the tank.
const LOWEST: f64 = 52.0;

/// The outline of a heater.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Frame {
    /// Left side of the jacket; the right one lies as far on the other side of the middle.
    pub half: f64,
    /// Half the width of the tank inside.
    pub tank: f64,
    /// Top of the jacket.
    pub top: f64,
    /// Top of the tank.
    pub tank_top: f64,
    /// Height of a cover.
    pub cover: f64,
    /// Heights of the upper and lower element.
    pub elements: [f64; 2],
}

impl Frame {
    /// From the dimensions of a heater.
    pub fn of(plate: &Plate) -> Self {
        let height = plate.height.get();
        // A round tank: its content over its height is its cross-section.
        let radius = (plate.content().get() / height / std::f64::consts::PI).sqrt();
        let tank_top = WATER - height * SCALE;
        let at = |above: f64| WATER - above * SCALE;
        let elements = [at(plate.upper_element.get()), at(plate.lower_element.get())];
        let apart = elements[1] - elements[0];
        let two = plate.has(plant::Level::Lower);
        Self {
            half: radius * SCALE + FOAM,
            tank: radius * SCALE,
            top: tank_top - LID,
            tank_top,
            cover: if two && apart < COVER.0 + LINES { COVER.1 } else { COVER.0 },
            elements,
        }
    }

    /// The outline of the jacket.
    pub fn jacket(&self) -> String {
        let (left, half) = (self.left(), self.half);
        format!("M{left} {}q0 -26 {half} -26t{half} 26V574q0 22 -{half} 22t-{half} -22Z", self.top + 26.0)
    }

    /// The outline of the tank in it.
    pub fn shell(&self) -> String {
        let (left, tank) = (MIDDLE - self.tank, self.tank);
        format!(
            "M{left} {}q0 -15 {tank} -15t{tank} 15V562q0 14 -{tank} 14t-{tank} -14Z",
            self.tank_top + 12.0
        )
    }

    /// Left side of the jacket.
    pub fn left(&self) -> f64 {
        MIDDLE - self.half
    }

    /// Right side of the jacket.
    pub fn right(&self) -> f64 {
        MIDDLE + self.half
    }

    /// The relief valve, near the top of the side.
    pub fn relief(&self) -> f64 {
        self.tank_top + 22.0
    }

    /// The top of a cover: the element comes out at its foot.
    pub fn cover_top(&self, level: plant::Level) -> f64 {
        let [upper, lower] = self.elements;
        let element = if level == plant::Level::Upper { upper } else { lower };
        // A low element's cover still leaves room for its two lines.
        (element - self.cover * 0.8).min(BOTTOM - self.cover - LOWEST)
    }
}

#[cfg(test)]
mod tests {
    use plant::{HeaterModel, Level};

    use super::*;

    #[test]
    fn every_heater_fits_the_drawing_in_true_proportion() {
        let mut sizes = Vec::new();
        for model in HeaterModel::ALL {
            let plate = model.plate();
            let frame = Frame::of(&plate);
            assert!(frame.left() > 158.0 && frame.right() < 338.0, "{model}: {frame:?}");
            assert!(frame.top > 140.0, "{model}: {frame:?}");
            let water = (WATER - frame.tank_top) * frame.tank * frame.tank;
            sizes.push((plate.nominal.get(), water / plate.nominal.get()));
            if plate.has(Level::Lower) {
                let [upper, lower] = [Level::Upper, Level::Lower].map(|level| frame.cover_top(level));
                assert!(lower - upper >= frame.cover + LINES - 8.0, "{model}: {frame:?}");
                assert!(upper > frame.top + 10.0, "{model}: {frame:?}");
            }
        }
        // What is drawn holds what the plate says, to one scale.
        for (gallons, share) in &sizes {
            assert!((share / sizes[0].1 - 1.0).abs() < 1e-9, "{gallons} {share}");
        }
    }
}
