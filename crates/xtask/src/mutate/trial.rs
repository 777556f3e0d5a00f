use std::{
    fmt, fs,
    path::{Path, PathBuf},
    process::{Command, Stdio},
    str::FromStr,
    thread,
    time::{Duration, Instant},
};

use super::{find::Coefficient, rewrite::rewrite};
use crate::command::{done, emptied, read, top, write};

/// Who saw a changed digit.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Outcome {
    /// Rows of tables, and how many.
    Rows(usize),
    /// Vectors alone: how many, the largest relative change and the function that has it.
    Vectors(usize, f64, String),
    /// The build or the judge did not end well.
    Broken,
    /// Nobody.
    Unseen,
}

impl fmt::Display for Outcome {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Rows(rows) => write!(f, "rows {rows}"),
            Self::Vectors(vectors, change, name) => write!(f, "vectors {vectors} {change:.1e} {name}"),
            Self::Broken => f.write_str("broken"),
            Self::Unseen => f.write_str("unseen"),
        }
    }
}

impl FromStr for Outcome {
    type Err = ();

    fn from_str(text: &str) -> Result<Self, ()> {
        let words: Vec<_> = text.split(' ').collect();
        let count = |text: &str| text.parse().map_err(drop);
        match words[..] {
            ["rows", rows] => Ok(Self::Rows(count(rows)?)),
            ["vectors", vectors, change, name] => Ok(Self::Vectors(
                count(vectors)?,
                change.parse().map_err(drop)?,
                name.to_owned(),
            )),
            ["broken"] => Ok(Self::Broken),
            ["unseen"] => Ok(Self::Unseen),
            _ => Err(()),
        }
    }
}

/// A copy of the core and its judges, with a folder of its own for what is built.
pub(crate) struct Workspace(PathBuf);

/// What is copied of the member of the judges; its tests are not needed.
const JUDGES: [&str; 5] = ["Cargo.toml", "src", "published", "derived", "conformance"];
/// No debug information and nothing optimised: what is built is run once.
const PROFILE: [&str; 4] = [
    "--config",
    "profile.dev.package.sugaring.opt-level=0",
    "--config",
    "profile.dev.debug=false",
];
/// What the copy's judge does first.
const CHOOSE: &str = "fn main() {
    let number = std::env::var(\"MUTANT\").ok().and_then(|number| number.parse().ok());
    sugaring::mutant::CHOSEN.store(number.unwrap_or(usize::MAX), std::sync::atomic::Ordering::Relaxed);
";
const PATIENCE: Duration = Duration::from_secs(60);

impl Workspace {
    pub(crate) fn copied(folder: &Path, all: &[Coefficient]) -> Result<Self, String> {
        emptied(&folder.join("crates"))?;
        emptied(&folder.join("tests"))?;
        copy(&top().join("crates/sugaring"), &folder.join("crates/sugaring"))?;
        for part in JUDGES {
            copy(&top().join("tests").join(part), &folder.join("tests").join(part))?;
        }
        let manifest = read(&top().join("Cargo.toml"))?;
        let members = |line: &str| {
            if line.starts_with("members") {
                String::from("members = [\"crates/sugaring\", \"tests\"]\n")
            } else if line.starts_with("default-members") {
                String::new()
            } else {
                format!("{line}\n")
            }
        };
        write(
            &folder.join("Cargo.toml"),
            manifest.lines().map(members).collect::<String>(),
        )?;
        copy(&top().join("Cargo.lock"), &folder.join("Cargo.lock"))?;
        rewrite(&folder.join("crates/sugaring/src"), all)?;
        let judge = folder.join("tests/src/bin/judge.rs");
        write(&judge, read(&judge)?.replacen("fn main() {\n", CHOOSE, 1))?;
        let workspace = Self(folder.to_path_buf());
        workspace.built()?;
        Ok(workspace)
    }

    fn built(&self) -> Result<(), String> {
        let mut build = Command::new("cargo");
        build
            .args("build --quiet --offline --package sugaring-tests --bin judge".split(' '))
            .args(PROFILE)
            .env("CARGO_TARGET_DIR", self.0.join("target"))
            .env("RUSTFLAGS", "--cap-lints allow")
            .current_dir(&self.0);
        done(&mut build)
    }

    /// The judges' word on the copy with the last digit of one coefficient changed, or of none.
    pub(crate) fn judged(&self, number: Option<usize>) -> Result<Outcome, String> {
        let said = self.0.join("said");
        let output = fs::File::create(&said).map_err(|error| error.to_string())?;
        let mut judge = Command::new(self.0.join("target/debug/judge"))
            .env("MUTANT", number.unwrap_or(usize::MAX).to_string())
            .stdout(output)
            .stderr(Stdio::null())
            .spawn()
            .map_err(|error| format!("cannot start the judge: {error}"))?;
        let start = Instant::now();
        let ended = loop {
            match judge.try_wait() {
                Ok(Some(status)) => break status.success(),
                Ok(None) if start.elapsed() < PATIENCE => thread::sleep(Duration::from_millis(20)),
                _ => {
                    let _ = judge.kill();
                    let _ = judge.wait();
                    break false;
                }
            }
        };
        if !ended {
            return Ok(Outcome::Broken);
        }
        let said = read(&said)?;
        outcome(&said).ok_or_else(|| format!("the judge said: {said}"))
    }
}

/// `rows 0 vectors 12 change 1e-9 water.density`.
fn outcome(said: &str) -> Option<Outcome> {
    let words: Vec<_> = said.split_whitespace().collect();
    let ["rows", rows, "vectors", vectors, "change", change, name] = words[..] else {
        return None;
    };
    Some(match (rows.parse().ok()?, vectors.parse().ok()?) {
        (0, 0) => Outcome::Unseen,
        (0, vectors) => Outcome::Vectors(vectors, change.parse().ok()?, name.to_owned()),
        (rows, _) => Outcome::Rows(rows),
    })
}

fn copy(from: &Path, to: &Path) -> Result<(), String> {
    let slip = |error: std::io::Error| format!("{}: {error}", from.display());
    if !from.is_dir() {
        return fs::copy(from, to).map(drop).map_err(slip);
    }
    fs::create_dir_all(to).map_err(slip)?;
    for entry in fs::read_dir(from).map_err(slip)? {
        let entry = entry.map_err(slip)?;
        copy(&entry.path(), &to.join(entry.file_name()))?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_judge_is_understood() {
        assert_eq!(outcome("rows 0 vectors 0 change 0 none\n"), Some(Outcome::Unseen));
        assert_eq!(outcome("rows 3 vectors 9 change 1e-3 a.b\n"), Some(Outcome::Rows(3)));
        let vectors = Outcome::Vectors(2, 1e-9, String::from("a.b"));
        assert_eq!(outcome("rows 0 vectors 2 change 1e-9 a.b\n"), Some(vectors));
        assert_eq!(outcome("nothing"), None);
    }

    #[test]
    fn an_outcome_is_read_as_written() {
        let vectors = Outcome::Vectors(2, 2.1e-9, String::from("a.b"));
        for outcome in [Outcome::Rows(3), vectors, Outcome::Broken, Outcome::Unseen] {
            assert_eq!(outcome.to_string().parse(), Ok(outcome));
        }
    }
}
