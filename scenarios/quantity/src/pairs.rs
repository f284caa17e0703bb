//! Short lists of keys and values, in few bytes: a tree is fast with thousands and large for each type it holds.

/// Values by their keys, in the order of the keys. For some dozens.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Pairs<K, V>(Vec<(K, V)>);

impl<K, V> Default for Pairs<K, V> {
    fn default() -> Self {
        Self(Vec::new())
    }
}

impl<K: Ord, V> Pairs<K, V> {
    /// The value of a key.
    pub fn get(&self, key: &K) -> Option<&V> {
        self.0.iter().find(|(one, _)| one == key).map(|(_, value)| value)
    }

    /// Keeps a value under a key, in place of the one before.
    pub fn put(&mut self, key: K, value: V) {
        self.0.retain(|(one, _)| *one != key);
        let at = self.0.iter().position(|(one, _)| *one > key).unwrap_or(self.0.len());
        self.0.insert(at, (key, value));
    }

    /// All of them.
    pub fn iter(&self) -> std::slice::Iter<'_, (K, V)> {
        self.0.iter()
    }

    /// Whether there is none.
    pub const fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Forgets all.
    pub fn clear(&mut self) {
        self.0.clear();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn values_are_found_by_their_keys_and_stand_in_their_order() {
        let mut pairs = Pairs::default();
        pairs.put(3, 'c');
        pairs.put(1, 'x');
        pairs.put(1, 'a');
        pairs.put(2, 'b');
        assert_eq!(pairs.get(&3), Some(&'c'));
        assert_eq!(pairs.iter().copied().collect::<Vec<_>>(), [(1, 'a'), (2, 'b'), (3, 'c')]);
        assert_eq!((pairs.get(&2), pairs.get(&4)), (Some(&'b'), None));
        pairs.clear();
        assert!(pairs.is_empty());
    }
}
