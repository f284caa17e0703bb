//! Letters for the acts that the accounts speak of, so that a line and the drawing name the same moment.

use std::collections::BTreeMap;

/// Letters by step, 1 the first step. Without `l` and `o`, which look like figures.
pub fn letters(steps: impl IntoIterator<Item = u32>) -> BTreeMap<u32, String> {
    const ALPHABET: &[u8] = b"abcdefghijkmnpqrstuvwxyz";
    let mut sorted: Vec<u32> = steps.into_iter().filter(|step| *step > 0).collect();
    sorted.sort_unstable();
    sorted.dedup();
    let name = |at: usize| {
        let letter = ALPHABET.get(at % ALPHABET.len()).map_or('z', |byte| char::from(*byte));
        let round = at / ALPHABET.len();
        if round == 0 { letter.to_string() } else { format!("{letter}{round}") }
    };
    sorted.into_iter().enumerate().map(|(at, step)| (step, name(at))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_follow_the_steps_and_do_not_run_out() {
        let some = letters([9, 3, 3, 0]);
        assert_eq!(some.into_iter().collect::<Vec<_>>(), [(3, "a".to_owned()), (9, "b".to_owned())]);
        let many = letters(1..=30);
        assert_eq!((many[&12].as_str(), many[&25].as_str()), ("m", "a1"));
    }
}
