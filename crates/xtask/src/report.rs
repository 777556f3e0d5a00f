//! Runs steps one after the other, streams what they say, and adds up.

use std::{
    io::{BufRead as _, BufReader},
    process::{Command, Stdio},
    time::Instant,
};

use crate::judged::Judged;

/// The steps that ran.
#[derive(Debug, Default)]
pub(crate) struct Report {
    steps: Vec<Step>,
    judged: Judged,
}

#[derive(Debug)]
struct Step {
    name: String,
    seconds: f64,
    passed: usize,
    failed: usize,
}

/// What a step's output is searched for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Counting {
    Tests,
    Exit,
}

impl Report {
    /// A step that passes or fails as a whole.
    pub(crate) fn check(&mut self, name: &str, command: &mut Command) {
        self.run(name, command, Counting::Exit);
    }

    /// A run of test programs, whose results are counted.
    pub(crate) fn tests(&mut self, name: &str, command: &mut Command) {
        self.run(name, command, Counting::Tests);
    }

    /// A step that could not be started.
    pub(crate) fn fail(&mut self, name: &str, reason: &str) {
        println!("\n== {name}\n{reason}");
        self.steps.push(Step {
            name: name.to_owned(),
            seconds: 0.0,
            passed: 0,
            failed: 1,
        });
    }

    fn run(&mut self, name: &str, command: &mut Command, counting: Counting) {
        println!("\n== {name}");
        let start = Instant::now();
        let (passed, failed) = match self.stream(command) {
            // Test programs that do not compile or break off count as one failure.
            Ok(Seen {
                well: false,
                failed: 0,
                passed,
            }) => (passed, 1),
            Ok(Seen { well: true, .. }) if counting == Counting::Exit => (1, 0),
            Ok(Seen { passed, failed, .. }) => (passed, failed),
            Err(error) => {
                println!("cannot start: {error}");
                (0, 1)
            }
        };
        self.steps.push(Step {
            name: name.to_owned(),
            seconds: start.elapsed().as_secs_f64(),
            passed,
            failed,
        });
    }

    fn stream(&mut self, command: &mut Command) -> std::io::Result<Seen> {
        let mut child = command.stdout(Stdio::piped()).spawn()?;
        let (mut passed, mut failed) = (0, 0);
        let mut quiet = false;
        if let Some(stdout) = child.stdout.take() {
            for line in BufReader::new(stdout).lines() {
                let line = line?;
                // With `--show-output` what passing tests said is repeated: read it, do not show it.
                match line.as_str() {
                    "successes:" => quiet = true,
                    "failures:" => quiet = false,
                    _ => {}
                }
                if let Some((well, ill)) = result(&line) {
                    quiet = false;
                    passed += well;
                    failed += ill;
                }
                self.judged.read(&line);
                if !quiet {
                    println!("{line}");
                }
            }
        }
        Ok(Seen {
            well: child.wait()?.success(),
            passed,
            failed,
        })
    }

    /// Prints the sums; true when nothing failed.
    pub(crate) fn close(self) -> bool {
        println!("\n{:<48} {:>8} {:>7} {:>7}", "step", "seconds", "passed", "failed");
        for step in &self.steps {
            println!(
                "{:<48} {:>8.1} {:>7} {:>7}",
                step.name, step.seconds, step.passed, step.failed
            );
        }
        let sum = |part: fn(&Step) -> usize| self.steps.iter().map(part).sum::<usize>();
        let (passed, failed) = (sum(|s| s.passed), sum(|s| s.failed));
        println!(
            "{:<48} {:>8.1}",
            "in all",
            self.steps.iter().map(|s| s.seconds).sum::<f64>()
        );
        self.judged.print();
        println!("\n{passed} passed, {failed} failed");
        failed == 0
    }
}

struct Seen {
    well: bool,
    passed: usize,
    failed: usize,
}

/// Passed and failed of `test result: ok. 5 passed; 0 failed; ...`.
fn result(line: &str) -> Option<(usize, usize)> {
    let line = line.strip_prefix("test result: ")?;
    let mut words = line.split_whitespace();
    let mut before = |unit: &str| {
        let mut last = "";
        words.by_ref().find_map(|word| {
            let found = word.trim_end_matches(';') == unit;
            let count = last;
            last = word;
            found.then(|| count.parse().ok()).flatten()
        })
    };
    Some((before("passed")?, before("failed")?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn results_are_read() {
        let line = "test result: FAILED. 5 passed; 2 failed; 0 ignored; 0 measured; 0 filtered out; finished in 0.00s";
        assert_eq!(result(line), Some((5, 2)));
        assert_eq!(result("test a ... ok"), None);
    }
}
