//! One number that stands for many: a digest of deterministic results, to hold one target against another.

use crate::{Chain, Digest, Draw, det};

/// Digest of `count` draws put through every function of [`det`]; the same bytes on every target.
pub fn maths(count: u32) -> Digest {
    let mut draw = Draw::new(1, "maths witness");
    let mut bytes = Vec::new();
    for _ in 0..count {
        let x = draw.between(-20.0, 20.0);
        let y = draw.between(1e-6, 40.0);
        let results = [
            det::exp(x),
            det::ln(y),
            det::pow(y, x),
            det::sin(x),
            det::cos(x),
            det::tanh(x),
            det::atan2(y, x),
            det::hypot(x, y),
            x.sqrt().abs().max(y.sqrt()),
        ];
        bytes.extend(results.iter().flat_map(|result| result.to_bits().to_le_bytes()));
    }
    Chain::start(&bytes).link()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_draw_counts() {
        assert_ne!(maths(1), maths(2));
        assert_eq!(maths(100), maths(100));
    }
}
