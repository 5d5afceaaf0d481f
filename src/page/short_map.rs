//! What belongs to each of a few keys.
//!
//! A list that is searched from its front: the library's maps are made for many keys, and take ten kilobytes of
//! program.

/// A map of a few keys, in the order in which they came.
#[derive(Clone, Debug)]
pub(crate) struct ShortMap<K, V> {
    pairs: Vec<(K, V)>,
}

impl<K, V> Default for ShortMap<K, V> {
    fn default() -> Self {
        Self { pairs: Vec::new() }
    }
}

impl<K: Copy + PartialEq, V> ShortMap<K, V> {
    /// What belongs to a key.
    pub(crate) fn get(&self, key: K) -> Option<&V> {
        let pair = self.pairs.iter().find(|(of, _)| *of == key);
        pair.map(|(_, value)| value)
    }

    /// Puts a value in the place of the one that was there.
    pub(crate) fn insert(&mut self, key: K, value: V) {
        match self.pairs.iter_mut().find(|(of, _)| *of == key) {
            Some((_, old)) => *old = value,
            None => self.pairs.push((key, value)),
        }
    }

    /// Takes a key and what belongs to it out.
    pub(crate) fn remove(&mut self, key: K) {
        self.retain(|of| of != key);
    }

    /// Keeps those keys alone.
    pub(crate) fn retain(&mut self, keep: impl Fn(K) -> bool) {
        self.pairs.retain(|(of, _)| keep(*of));
    }

    /// Gives each key its new name, which no other may get; `None` takes it out.
    pub(crate) fn move_keys(&mut self, to: impl Fn(K) -> Option<K>) {
        self.pairs.retain_mut(|(of, _)| match to(*of) {
            Some(name) => {
                *of = name;
                true
            }
            None => false,
        });
    }

    pub(crate) const fn is_empty(&self) -> bool {
        self.pairs.is_empty()
    }

    pub(crate) fn clear(&mut self) {
        self.pairs.clear();
    }
}
