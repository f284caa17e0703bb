//! Numbers in texts.

/// A finite number as people write it: `5`, `+5`, `-0.5`, `.5`, `5.`, `1.5e3`.
pub fn read(text: &str) -> Option<f64> {
    text.parse().ok().filter(|number: &f64| number.is_finite())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_read_to_the_bit_as_files_are() {
        for text in ["5", "-0.5", "1.5e3", "0.1", "37.77777777777778", "4.9e-324", "123456789.123456789"] {
            let filed: f64 = serde_json::from_str(text).unwrap();
            assert_eq!(read(text).map(f64::to_bits), Some(filed.to_bits()), "{text}");
        }
        for (text, number) in [("+5", 5.0), (".5", 0.5), ("5.", 5.0)] {
            assert_eq!(read(text), Some(number), "{text}");
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
