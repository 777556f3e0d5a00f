//! The known name that a misspelt one most likely means.

use alloc::vec::Vec;

/// The name with the fewest changed letters, if few enough to be the same word; the first of equals.
pub(crate) fn nearest<'a>(given: &str, names: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    // Nobody misspells at length, and the work grows with it.
    const LONGEST: usize = 60;
    let given: Vec<char> = given.chars().take(LONGEST).flat_map(char::to_lowercase).collect();
    let enough = 1 + given.len() / 3;
    let mut best: Option<(usize, &str)> = None;
    for name in names {
        let changes = distance(&given, name);
        if changes <= enough && best.is_none_or(|(least, _)| changes < least) {
            best = Some((changes, name));
        }
    }
    best.map(|(_, name)| name)
}

/// Letters to insert, drop or change (Levenshtein 1966).
fn distance(given: &[char], name: &str) -> usize {
    let mut row: Vec<usize> = (0..=given.len()).collect();
    for (line, letter) in name.chars().flat_map(char::to_lowercase).enumerate() {
        let mut corner = line;
        let mut left = line + 1;
        for (above, &mine) in row.iter_mut().skip(1).zip(given) {
            let changed = corner + usize::from(mine != letter);
            corner = *above;
            left = changed.min(*above + 1).min(left + 1);
            *above = left;
        }
        if let Some(first) = row.first_mut() {
            *first = line + 1;
        }
    }
    row.last().copied().unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_intended_name_is_found() {
        let names = ["pressure", "pressure_limit", "parallel", "pump"];
        assert_eq!(nearest("presure", names), Some("pressure"));
        assert_eq!(nearest("Pumpe", names), Some("pump"));
        assert_eq!(nearest("temperature", names), None);
        assert_eq!(nearest("", names), None);
    }

    #[test]
    fn a_distance_counts_letters() {
        let letters = |text: &str| text.chars().collect::<Vec<_>>();
        for (given, name, changes) in [
            ("", "", 0),
            ("", "abc", 3),
            ("abc", "", 3),
            ("kitten", "sitting", 3),
            ("same", "same", 0),
        ] {
            assert_eq!(distance(&letters(given), name), changes, "{given} {name}");
        }
    }

    proptest! {
        #[test]
        fn any_text_is_taken(given in ".*") {
            let _ = nearest(&given, ["pressure", "°Bx"]);
        }
    }
}
