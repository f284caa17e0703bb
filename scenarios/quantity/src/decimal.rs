//! Numbers in texts, read by the library that reads files: the standard one's tables would come to the page as well.

/// A number as people write it: `5`, `+5`, `-0.5`, `.5`, `5.`, `1.5e3`.
pub fn read(text: &str) -> Option<f64> {
    let plain = text.strip_prefix('+').unwrap_or(text).trim_end_matches('.');
    if plain.starts_with('.') {
        return read(&format!("0{plain}"));
    }
    serde_json::from_str(plain).ok().filter(|_| !text.starts_with("+-"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_read_to_the_bit() {
        for text in [
            "5",
            "+5",
            "-0.5",
            ".5",
            "5.",
            "1.5e3",
            "0.1",
            "37.77777777777778",
            "4.9e-324",
            "123456789.123456789",
        ] {
            let standard: f64 = text.parse().unwrap();
            assert_eq!(read(text).map(f64::to_bits), Some(standard.to_bits()), "{text}");
        }
    }

    #[test]
    fn what_is_no_finite_number_is_none() {
        for text in
            ["", ".", "+", "+-5", "--5", "5 5", "five", "inf", "nan", "1e999", "null", "[5]", "+.", "\"5\""]
        {
            assert_eq!(read(text), None, "{text}");
        }
    }
}
