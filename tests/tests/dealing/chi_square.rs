//! Pearson's chi-square: counts against what was expected, and how likely so much or more by chance alone.

/// Counts against expectations.
#[derive(Default)]
pub struct Chi {
    pub statistic: f64,
    pub freedom: u32,
}

impl Chi {
    /// One table of counts whose expectations sum to the same: one degree of freedom less than it has cells.
    ///
    /// Cells of fewer than five expected are put together, as the approximation asks for (common practice, no source).
    pub fn table(cells: impl IntoIterator<Item = (f64, f64)>) -> Self {
        let (mut rest, mut all) = ((0.0, 0.0), Vec::new());
        for (counted, expected) in cells {
            if expected < 5.0 {
                rest = (rest.0 + counted, rest.1 + expected);
            } else {
                all.push((counted, expected));
            }
        }
        if rest.1 > 0.0 {
            all.push(rest);
        }
        let statistic = all.iter().map(|(counted, expected)| (counted - expected).powi(2) / expected).sum();
        Self { statistic, freedom: (all.len() as u32).saturating_sub(1) }
    }

    /// Independent tables together.
    pub fn and(self, other: Self) -> Self {
        Self { statistic: self.statistic + other.statistic, freedom: self.freedom + other.freedom }
    }

    /// Probability of so much or more.
    pub fn p(&self) -> f64 {
        upper_gamma(f64::from(self.freedom) / 2.0, self.statistic / 2.0)
    }
}

/// Regularised upper incomplete gamma function: by its series below the turn, by its continued fraction above it
/// (NIST Digital Library of Mathematical Functions, 8.7.1 and 8.9.2).
fn upper_gamma(a: f64, x: f64) -> f64 {
    if x <= 0.0 {
        return 1.0;
    }
    let front = (a * x.ln() - x - ln_gamma(a)).exp();
    if x < a + 1.0 {
        let (mut term, mut sum, mut n) = (1.0 / a, 1.0 / a, a);
        while term > sum * 1e-15 {
            n += 1.0;
            term *= x / n;
            sum += term;
        }
        1.0 - front * sum
    } else {
        // Modified Lentz on x + 1 - a - 1(1 - a)/(x + 3 - a - ...).
        let mut b = x + 1.0 - a;
        let (mut c, mut d) = (1e300, 1.0 / b);
        let mut h = d;
        for i in 1..100_000 {
            let n = f64::from(i);
            let step = -n * (n - a);
            b += 2.0;
            d = 1.0 / (step * d + b);
            c = b + step / c;
            let delta = c * d;
            h *= delta;
            if (delta - 1.0).abs() < 1e-15 {
                break;
            }
        }
        front * h
    }
}

/// Logarithm of the gamma function at a multiple of a half, by its recurrence (DLMF 5.5.1, 5.4.6).
fn ln_gamma(a: f64) -> f64 {
    let (mut at, mut sum) =
        if a.fract() == 0.0 { (1.0, 0.0) } else { (0.5, std::f64::consts::PI.sqrt().ln()) };
    while at < a - 0.25 {
        sum += f64::ln(at);
        at += 1.0;
    }
    sum
}

/// Points of the 0.05 and 0.001 columns of the published table (NIST/SEMATECH e-Handbook of Statistical Methods,
/// 1.3.6.7.4, critical values of the chi-square distribution).
#[test]
fn probabilities_are_those_of_the_published_table() {
    for (freedom, statistic, p) in
        [(1, 3.841, 0.05), (10, 18.307, 0.05), (10, 29.588, 0.001), (63, 82.529, 0.05), (100, 149.449, 0.001)]
    {
        let found = Chi { statistic, freedom }.p();
        assert!((found - p).abs() < 0.001 * p + 2e-6 * statistic, "{freedom} {statistic}: {found}, not {p}");
    }
}
