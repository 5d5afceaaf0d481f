//! Sorting of short lists, alike staying in their order.
//!
//! The lists here are a few dozen long. The library's sort is made for long ones, and takes four kilobytes of program for
//! every kind of item; this takes a hundred bytes.

use core::cmp::Ordering;

/// Sorts numbers, the lowest first.
pub(crate) fn numbers(items: &mut [f64]) {
    by(items, f64::total_cmp);
}

/// Sorts by a number of each item, the lowest first.
pub(crate) fn by_number<T>(items: &mut [T], number: impl Fn(&T) -> f64) {
    by(items, |a, b| number(a).total_cmp(&number(b)));
}

/// Sorts by any comparison. Insertion: the time grows with the square of the length.
pub(crate) fn by<T>(items: &mut [T], compare: impl Fn(&T, &T) -> Ordering) {
    for end in 1..items.len() {
        let mut at = end;
        while let Some([before, after]) = at.checked_sub(1).and_then(|from| items.get(from..=at)) {
            if compare(before, after) != Ordering::Greater {
                break;
            }
            items.swap(at - 1, at);
            at -= 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    proptest! {
        /// As the library's stable sort does it.
        #[test]
        fn lists_come_in_order(items in proptest::collection::vec((0..9_u8, any::<u16>()), 0..40)) {
            let (mut ours, mut theirs) = (items.clone(), items);
            super::by(&mut ours, |a, b| a.0.cmp(&b.0));
            theirs.sort_by_key(|item| item.0);
            prop_assert_eq!(ours, theirs);
        }
    }
}
