//! Runs steps one after the other, streams what they say, and adds up.

use std::{
    io::{BufRead as _, BufReader},
    process::{Command, Stdio},
    time::Instant,
};

use crate::{counts::Counts, judged::Judged};

/// The steps that ran.
#[derive(Debug, Default)]
pub(crate) struct Report {
    steps: Vec<Step>,
    figures: Vec<(String, String)>,
    judged: Judged,
}

#[derive(Debug)]
struct Step {
    name: String,
    seconds: f64,
    counts: Counts,
}

/// What a step's output is searched for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Counting {
    Tests,
    Exit,
}

const ONE_PASSED: Counts = Counts {
    passed: 1,
    failed: 0,
    skipped: 0,
};
const ONE_FAILED: Counts = Counts {
    passed: 0,
    failed: 1,
    skipped: 0,
};

impl Report {
    /// A step that passes or fails as a whole; whether it passed.
    pub(crate) fn check(&mut self, name: &str, command: &mut Command) -> bool {
        self.run(name, command, Counting::Exit)
    }

    /// A run of test programs, whose results are counted.
    pub(crate) fn tests(&mut self, name: &str, command: &mut Command) -> bool {
        self.run(name, command, Counting::Tests)
    }

    /// A step of our own; an error says why it failed.
    pub(crate) fn work(&mut self, name: &str, work: impl FnOnce() -> Result<(), String>) -> bool {
        println!("\n== {name}");
        let start = Instant::now();
        let outcome = work();
        if let Err(reason) = &outcome {
            println!("{reason}");
        }
        let well = outcome.is_ok();
        self.close_step(name, start, if well { ONE_PASSED } else { ONE_FAILED });
        well
    }

    /// A step that could not be started.
    pub(crate) fn fail(&mut self, name: &str, reason: &str) {
        println!("\n== {name}\n{reason}");
        self.close_step(name, Instant::now(), ONE_FAILED);
    }

    /// A figure that is printed with the sums, such as a size.
    pub(crate) fn figure(&mut self, label: &str, figure: String) {
        println!("{label}: {figure}");
        self.figures.push((label.to_owned(), figure));
    }

    fn run(&mut self, name: &str, command: &mut Command, counting: Counting) -> bool {
        println!("\n== {name}");
        let start = Instant::now();
        let counts = match self.stream(name, command) {
            // Test programs that do not compile or break off count as one failure.
            Ok((false, counts)) if counts.failed == 0 => Counts { failed: 1, ..counts },
            Ok((true, _)) if counting == Counting::Exit => ONE_PASSED,
            // A run of tests without a test is a test program that was not found.
            Ok((true, counts)) if counts == Counts::default() => ONE_FAILED,
            Ok((_, counts)) => counts,
            Err(error) => {
                println!("cannot start {}: {error}", command.get_program().to_string_lossy());
                ONE_FAILED
            }
        };
        self.close_step(name, start, counts);
        counts.failed == 0
    }

    fn close_step(&mut self, name: &str, start: Instant, counts: Counts) {
        self.steps.push(Step {
            name: name.to_owned(),
            seconds: start.elapsed().as_secs_f64(),
            counts,
        });
    }

    /// Whether the program ended well, and what it counted.
    fn stream(&mut self, name: &str, command: &mut Command) -> std::io::Result<(bool, Counts)> {
        let mut child = command.stdout(Stdio::piped()).spawn()?;
        let mut counts = Counts::default();
        let mut quiet = false;
        if let Some(stdout) = child.stdout.take() {
            for line in BufReader::new(stdout).split(b'\n') {
                let line = line?;
                let line = String::from_utf8_lossy(&line);
                // With `--show-output` what passing tests said is repeated: read it, do not show it.
                match line.as_ref() {
                    "successes:" => quiet = true,
                    "failures:" => quiet = false,
                    _ => {}
                }
                if let Some(more) = Counts::of(&line) {
                    quiet = false;
                    counts.add(more);
                }
                self.judged.read(&line);
                if let Some(vectors) = conformance(&line) {
                    self.figures.push((name.to_owned(), vectors.to_owned()));
                }
                if !quiet {
                    println!("{line}");
                }
            }
        }
        Ok((child.wait()?.success(), counts))
    }

    /// Prints the sums; true when nothing failed.
    pub(crate) fn close(self) -> bool {
        println!("\n{:<56} {:>8} {:>7} {:>7}", "step", "seconds", "passed", "failed");
        for Step { name, seconds, counts } in &self.steps {
            let skipped = match counts.skipped {
                0 => String::new(),
                some => format!("   {some} skipped"),
            };
            println!(
                "{name:<56} {seconds:>8.1} {:>7} {:>7}{skipped}",
                counts.passed, counts.failed
            );
        }
        let mut all = Counts::default();
        self.steps.iter().for_each(|step| all.add(step.counts));
        println!(
            "{:<56} {:>8.1}",
            "in all",
            self.steps.iter().map(|s| s.seconds).sum::<f64>()
        );
        if !self.figures.is_empty() {
            println!();
        }
        for (label, figure) in &self.figures {
            println!("{label:<56} {figure}");
        }
        self.judged.print();
        println!("\n{} passed, {} failed", all.passed, all.failed);
        all.failed == 0
    }
}

/// What a judge of the vectors says of their number: `conformance: 5668 vectors of 43 functions`, in Node behind a `#`.
fn conformance(line: &str) -> Option<&str> {
    line.trim_start_matches("# ").strip_prefix("conformance: ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_number_of_vectors_is_read() {
        assert_eq!(conformance("# conformance: 211 calls"), Some("211 calls"));
        assert_eq!(conformance("conformance: 211 calls"), Some("211 calls"));
        assert_eq!(conformance("# the conformance: 1"), None);
    }
}
