//! Reads how many tests passed and failed from what test programs say.

/// Tests by outcome.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Counts {
    pub(crate) passed: usize,
    pub(crate) failed: usize,
    pub(crate) skipped: usize,
}

impl Counts {
    /// What one line of a test program's output adds: of Rust's, pytest's or Node's.
    pub(crate) fn of(line: &str) -> Option<Self> {
        rust(line).or_else(|| pytest(line)).or_else(|| node(line))
    }

    pub(crate) fn add(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
        self.skipped += other.skipped;
    }
}

/// `test result: ok. 5 passed; 0 failed; 1 ignored; ...`.
fn rust(line: &str) -> Option<Counts> {
    let figures = line.strip_prefix("test result: ")?;
    let figures = figures.split_once(". ").map_or(figures, |(_, rest)| rest);
    let count = |unit: &str| labelled(figures.split(';'), unit);
    Some(Counts {
        passed: count("passed")?,
        failed: count("failed")?,
        skipped: count("ignored").unwrap_or(0),
    })
}

/// `==== 1 failed, 12 passed, 2 skipped in 3.21s ====`, with or without the bars.
fn pytest(line: &str) -> Option<Counts> {
    let (figures, time) = line.trim_matches([' ', '=']).rsplit_once(" in ")?;
    if !time.split(' ').next()?.ends_with('s') {
        return None;
    }
    let count = |unit: &str| labelled(figures.split(','), unit);
    let errors = count("errors").or_else(|| count("error"));
    let (passed, failed) = (count("passed"), count("failed"));
    passed.or(failed).or(errors)?;
    let sum = |parts: &[Option<usize>]| parts.iter().flatten().sum();
    Some(Counts {
        passed: sum(&[passed]),
        // An expected failure that passes is a failure: the list of known misses must shrink.
        failed: sum(&[failed, errors, count("xpassed")]),
        skipped: sum(&[count("skipped"), count("xfailed"), count("deselected")]),
    })
}

/// `# pass 12`, `# fail 1`, `# cancelled 0`, `# skipped 0`, `# todo 0`, each on a line of its own.
fn node(line: &str) -> Option<Counts> {
    let (label, count) = line.strip_prefix("# ")?.split_once(' ')?;
    let count = count.parse().ok()?;
    let mut counts = Counts::default();
    match label {
        "pass" => counts.passed = count,
        "fail" | "cancelled" => counts.failed = count,
        "skipped" | "todo" => counts.skipped = count,
        _ => return None,
    }
    Some(counts)
}

/// The number before `unit` among parts such as ` 5 passed`.
fn labelled<'a>(mut parts: impl Iterator<Item = &'a str>, unit: &str) -> Option<usize> {
    parts.find_map(|part| part.trim().strip_suffix(unit)?.trim().parse().ok())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn counts(line: &str) -> Option<(usize, usize, usize)> {
        Counts::of(line).map(figures)
    }

    fn figures(counts: Counts) -> (usize, usize, usize) {
        (counts.passed, counts.failed, counts.skipped)
    }

    #[test]
    fn rust_is_read() {
        let line = "test result: FAILED. 5 passed; 2 failed; 1 ignored; 0 measured; 0 filtered out; finished in 0.00s";
        assert_eq!(counts(line), Some((5, 2, 1)));
        assert_eq!(counts("test a ... ok"), None);
    }

    #[test]
    fn pytest_is_read() {
        assert_eq!(counts("12 passed in 0.41s"), Some((12, 0, 0)));
        let bars = "===== 1 failed, 12 passed, 2 skipped, 1 error in 63.20s (0:01:03) =====";
        assert_eq!(counts(bars), Some((12, 2, 2)));
        assert_eq!(counts("1 error in 0.10s"), Some((0, 1, 0)));
        assert_eq!(counts("no tests ran in 0.01s"), None);
        assert_eq!(counts("Success: no issues found in 3 source files"), None);
    }

    #[test]
    fn node_is_read() {
        let lines = [
            "# tests 14",
            "# pass 12",
            "# fail 1",
            "# cancelled 1",
            "# skipped 0",
            "# duration_ms 12.5",
        ];
        let mut all = Counts::default();
        lines
            .iter()
            .filter_map(|line| Counts::of(line))
            .for_each(|c| all.add(c));
        assert_eq!(figures(all), (12, 2, 0));
    }
}
