//! Sorting of short lists, in few bytes: the library's sort is fast on long ones and large for each type it sorts.

/// Sorts by a key, from the least to the greatest; what is equal keeps its order. For lists of some dozens.
pub fn sort_by_key<T, K: PartialOrd>(items: &mut [T], key: impl Fn(&T) -> K) {
    for end in 1..items.len() {
        for at in (1..=end).rev() {
            let [.., before, here] = &items[..=at] else { break };
            if key(here) >= key(before) {
                break;
            }
            items.swap(at - 1, at);
        }
    }
}

/// Sorts from the least to the greatest.
pub fn sort<T: PartialOrd + Clone>(items: &mut [T]) {
    sort_by_key(items, T::clone);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_is_sorted_and_equals_keep_their_order() {
        let mut list = [(3, 'a'), (1, 'b'), (3, 'c'), (2, 'd'), (1, 'e')];
        sort_by_key(&mut list, |one| one.0);
        assert_eq!(list, [(1, 'b'), (1, 'e'), (2, 'd'), (3, 'a'), (3, 'c')]);
        let mut numbers = [2.5, -1.0, 7.0, 0.0];
        sort(&mut numbers);
        assert_eq!(numbers, [-1.0, 0.0, 2.5, 7.0]);
    }
}
