//! Complex numbers with the few operations a network needs, each with the same bits on every target.

use std::ops::{Add, AddAssign, Mul, Neg, Sub};

use quantity::det;

/// A complex number: an admittance in siemens, a voltage in volts RMS or a current in amperes RMS.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Complex {
    /// Real part.
    pub re: f64,
    /// Imaginary part.
    pub im: f64,
}

impl Complex {
    /// Nothing.
    pub const ZERO: Self = Self::new(0.0, 0.0);

    /// From its parts.
    #[inline]
    pub const fn new(re: f64, im: f64) -> Self {
        Self { re, im }
    }

    /// A real number.
    #[inline]
    pub const fn real(re: f64) -> Self {
        Self::new(re, 0.0)
    }

    /// From a length and an angle in degrees. Quarter turns are exact.
    pub fn polar(length: f64, degrees: f64) -> Self {
        let (cos, sin) = match degrees % 360.0 {
            0.0 => (1.0, 0.0),
            90.0 | -270.0 => (0.0, 1.0),
            180.0 | -180.0 => (-1.0, 0.0),
            270.0 | -90.0 => (0.0, -1.0),
            rest => (det::cos(rest.to_radians()), det::sin(rest.to_radians())),
        };
        Self::new(length * cos, length * sin)
    }

    /// Admittance of a resistance in ohms. Zero ohms gives an infinite value, which a network refuses.
    pub fn resistor(ohms: f64) -> Self {
        Self::real(1.0 / ohms)
    }

    /// Admittance of a capacitance in farads at a frequency in hertz.
    pub fn capacitor(farads: f64, hertz: f64) -> Self {
        Self::new(0.0, std::f64::consts::TAU * hertz * farads)
    }

    /// Square of the length.
    #[inline]
    pub fn norm_squared(self) -> f64 {
        self.re * self.re + self.im * self.im
    }

    /// Length.
    pub fn norm(self) -> f64 {
        det::hypot(self.re, self.im)
    }

    /// Angle in degrees, in (-180, 180].
    pub fn degrees(self) -> f64 {
        det::atan2(self.im, self.re).to_degrees()
    }

    /// Mirrored in the real axis.
    #[inline]
    pub fn conjugate(self) -> Self {
        Self::new(self.re, -self.im)
    }

    /// One over this number; zero when there is nothing to divide by, so that a node without an
    /// admittance stays at 0 V instead of spreading NaN.
    #[inline]
    pub fn reciprocal_or_zero(self) -> Self {
        let square = self.norm_squared();
        if square > 1e-280 && square < 1e280 {
            let scale = 1.0 / square;
            Self::new(self.re * scale, -(self.im * scale))
        } else {
            self.scaled_reciprocal()
        }
    }

    /// The reciprocal of numbers whose square leaves the range of a double.
    #[cold]
    fn scaled_reciprocal(self) -> Self {
        let size = self.re.abs().max(self.im.abs());
        if size < 1e-290 {
            return Self::ZERO;
        }
        let (re, im) = (self.re / size, self.im / size);
        let square = re * re + im * im;
        Self::new(re / square / size, -(im / square / size))
    }

    /// Whether both parts are ordinary numbers.
    #[inline]
    pub fn is_finite(self) -> bool {
        self.re.is_finite() && self.im.is_finite()
    }
}

impl Add for Complex {
    type Output = Self;
    #[inline]
    fn add(self, other: Self) -> Self {
        Self::new(self.re + other.re, self.im + other.im)
    }
}

impl Sub for Complex {
    type Output = Self;
    #[inline]
    fn sub(self, other: Self) -> Self {
        Self::new(self.re - other.re, self.im - other.im)
    }
}

impl Mul for Complex {
    type Output = Self;
    #[inline]
    fn mul(self, other: Self) -> Self {
        Self::new(self.re * other.re - self.im * other.im, self.re * other.im + self.im * other.re)
    }
}

impl Mul<f64> for Complex {
    type Output = Self;
    #[inline]
    fn mul(self, factor: f64) -> Self {
        Self::new(self.re * factor, self.im * factor)
    }
}

impl Neg for Complex {
    type Output = Self;
    #[inline]
    fn neg(self) -> Self {
        Self::new(-self.re, -self.im)
    }
}

impl AddAssign for Complex {
    #[inline]
    fn add_assign(&mut self, other: Self) {
        self.re += other.re;
        self.im += other.im;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quarter_turns_are_exact() {
        assert_eq!(Complex::polar(120.0, 180.0), Complex::new(-120.0, 0.0));
        assert_eq!(Complex::polar(120.0, -90.0), Complex::new(0.0, -120.0));
        let third = Complex::polar(120.0, 120.0);
        assert!((third.re + 60.0).abs() < 1e-12 && (third.degrees() - 120.0).abs() < 1e-12);
    }

    #[test]
    fn reciprocal_survives_the_ends_of_the_range() {
        for size in [1e-285, 1e-200, 1e-12, 1.0, 200.0, 1e200, 1e300] {
            let z = Complex::new(3.0 * size, 4.0 * size);
            let one = z * z.reciprocal_or_zero();
            assert!((one.re - 1.0).abs() < 1e-14 && one.im.abs() < 1e-14, "{size:e}: {one:?}");
        }
        assert_eq!(Complex::ZERO.reciprocal_or_zero(), Complex::ZERO);
        assert_eq!(Complex::new(0.0, 5e-324).reciprocal_or_zero(), Complex::ZERO);
    }
}
