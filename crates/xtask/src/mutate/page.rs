use std::fmt::Write as _;

use super::{ROOMS, Tried, explained::why, trial::Outcome};

const HEAD: &str = "<!-- Written by `cargo xtask mutate`. -->
# Would anybody notice a wrong digit?

A formula with one wrong digit gives results that look right. So a program has changed the last digit of every coefficient of the rooms water, air and sucrose, one at a time, by one, and has asked the judges of [How far can it be trusted?](trust.md) and then the conformance vectors. A changed digit that a published or derived row sees is **seen by rows**. What only the vectors see, the bits that this library gave before, is listed here with the largest change it makes in any function and the reason why no row can see it: most often the digit lies below what anybody prints.

Coefficients are the constants of the formulas and the numbers in them that are more than one digit; limits of ranges, brackets and tolerances of solvers are none.
";

pub(crate) fn page(all: &[Tried]) -> String {
    let mut text = String::from(HEAD);
    text += "\n| room | coefficients | seen by rows | seen by vectors alone | unseen | not tried |\n| --- | --- | --- | --- | --- | --- |\n";
    for room in ROOMS {
        text += &line(room, all.iter().filter(|tried| tried.coefficient.room() == room));
    }
    text += &line("all", all.iter());
    let left: Vec<_> = all
        .iter()
        .filter_map(|tried| match &tried.outcome {
            Some(Outcome::Rows(_) | Outcome::Broken) | None => None,
            Some(outcome) => Some((&tried.coefficient, outcome)),
        })
        .collect();
    if left.is_empty() {
        text += "\nRows see every one that was tried.\n";
        return text;
    }
    text += "\n| where | as it stands | changed to | largest change, relative | why no row sees it |\n| --- | --- | --- | --- | --- |\n";
    for (coefficient, outcome) in left {
        let change = match outcome {
            Outcome::Vectors(vectors, change, name) => format!("{change:.1e} in `{name}` ({vectors} vectors)"),
            _ => String::from("none"),
        };
        let why = why(&coefficient.file, &coefficient.name).unwrap_or("**not explained yet**");
        let _ = writeln!(
            text,
            "| `{}`, {} | {} | {} | {change} | {why} |",
            coefficient.file,
            coefficient.name,
            coefficient.text,
            coefficient.changed()
        );
    }
    text
}

/// One line for who started the run.
pub(crate) fn counts(all: &[Tried]) -> String {
    line("all", all.iter()).trim_end().to_owned()
}

fn line<'a>(room: &str, tried: impl Iterator<Item = &'a Tried>) -> String {
    let (mut rows, mut vectors, mut unseen, mut untried) = (0, 0, 0, 0);
    for tried in tried {
        match tried.outcome {
            // A value at which the judges do not even end well is seen too.
            Some(Outcome::Rows(_) | Outcome::Broken) => rows += 1,
            Some(Outcome::Vectors(..)) => vectors += 1,
            Some(Outcome::Unseen) => unseen += 1,
            None => untried += 1,
        }
    }
    let count = rows + vectors + unseen + untried;
    format!("| {room} | {count} | {rows} | {vectors} | {unseen} | {untried} |\n")
}
