//! The known names that a misspelt one most likely means.

use alloc::{vec, vec::Vec};

/// Nobody misspells at length, and the work grows with it.
const LONGEST: usize = 40;

/// Those of `known` that are nearest to `given`, at most three.
pub(crate) fn nearest<'a>(given: &str, known: &[&'a str]) -> Vec<&'a str> {
    let near = known
        .iter()
        .filter_map(|name| distance(given, name).map(|slips| (slips, *name)));
    closest(near.collect())
}

/// At most three: the nearest, and those one slip further; where letters differ in case alone, nothing else.
pub(crate) fn closest<T>(mut near: Vec<(usize, T)>) -> Vec<T> {
    near.sort_by_key(|(slips, _)| *slips);
    let least = near.first().map_or(0, |(slips, _)| *slips);
    let most = if least == 0 { 0 } else { least + 1 };
    let kept = near.into_iter().filter(|(slips, _)| *slips <= most);
    kept.take(3).map(|(_, name)| name).collect()
}

/// How far `given` lies from `known`; `None` where it is too far for a slip of the pen.
///
/// Letters in another case cost nothing; a swap of neighbours is one slip. A spelling that holds the
/// whole of `given` is near too, after those that differ by one slip.
pub(crate) fn distance(given: &str, known: &str) -> Option<usize> {
    let letters = |text: &str| -> Vec<char> {
        let start: Vec<char> = text.chars().take(LONGEST + 1).collect();
        start.into_iter().flat_map(char::to_lowercase).collect()
    };
    let (given, known) = (letters(given), letters(known));
    if given.is_empty() || given.len() > LONGEST {
        return None;
    }
    let slips = slips(&given, &known);
    let most = match given.len() {
        1 => 0,
        2..=5 => 1,
        length => length / 3,
    };
    if slips <= most {
        return Some(slips);
    }
    let holds = given.len() >= 3 && known.windows(given.len()).any(|part| part == given);
    holds.then_some(most.max(2))
}

/// Letters to insert, drop, change or swap with their neighbour (Damerau 1964, each letter in one slip at most).
fn slips(given: &[char], known: &[char]) -> usize {
    let width = known.len() + 1;
    let mut before: Vec<usize> = vec![usize::MAX; width];
    let mut last: Vec<usize> = (0..width).collect();
    let mut previous = None;
    for (row, &g) in given.iter().enumerate() {
        let mut now = Vec::with_capacity(width);
        let mut left = row + 1;
        now.push(left);
        let mut known_before = None;
        for (column, &k) in known.iter().enumerate() {
            let at = |line: &[usize], index: usize| line.get(index).copied().unwrap_or(usize::MAX);
            let changed = at(&last, column) + usize::from(g != k);
            let mut best = changed.min(left + 1).min(at(&last, column + 1) + 1);
            if previous == Some(k) && known_before == Some(g) && g != k {
                let swapped = at(&before, column.wrapping_sub(1)).saturating_add(1);
                best = best.min(swapped);
            }
            now.push(best);
            left = best;
            known_before = Some(k);
        }
        before = last;
        last = now;
        previous = Some(g);
    }
    last.last().copied().unwrap_or(usize::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn between(a: &str, b: &str) -> usize {
        let letters = |t: &str| t.chars().collect::<Vec<_>>();
        slips(&letters(a), &letters(b))
    }

    #[test]
    fn slips_are_counted() {
        assert_eq!(between("", ""), 0);
        assert_eq!(between("", "gal"), 3);
        assert_eq!(between("gall", "gal"), 1);
        assert_eq!(between("presure", "pressure"), 1);
        assert_eq!(between("perssure", "pressure"), 1);
        assert_eq!(between("kitten", "sitting"), 3);
        assert_eq!(between("ca", "abc"), 3);
    }

    #[test]
    fn near_is_a_slip_of_the_pen() {
        assert_eq!(
            nearest("presure", &["parallel", "pressure", "pressure_limit"]),
            ["pressure"]
        );
        assert_eq!(
            nearest("suger maple", &["silver maple", "sugar maple"]),
            ["sugar maple"]
        );
        assert_eq!(nearest("BRIX", &["brix", "volume"]), ["brix"]);
        assert_eq!(nearest("limit", &["pressure", "pressure_limit"]), ["pressure_limit"]);
        assert!(nearest("x", &["m", "g", "L"]).is_empty());
        assert!(nearest(&"a".repeat(100_000), &["a"]).is_empty());
    }

    proptest! {
        #[test]
        fn any_text_is_taken(given in ".*") {
            let _ = nearest(&given, &["pressure", "°Bx"]);
        }

        #[test]
        fn slips_are_a_distance(a in "[a-d]{0,6}", b in "[a-d]{0,6}") {
            prop_assert_eq!(between(&a, &b), between(&b, &a));
            prop_assert_eq!(between(&a, &b) == 0, a == b);
            prop_assert!(between(&a, &b) <= a.len().max(b.len()));
        }
    }
}
