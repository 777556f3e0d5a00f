//! The book's page on how far the functions can be trusted: what the judges find, added up.

use std::collections::BTreeSet;

use sugaring::catalogue;
use sugaring_tests::{
    Row, Standing,
    tables::{Judged, ROOMS, Room, Subject, Table},
};

use crate::File;

const HEAD: &str = "<!-- Written by `cargo xtask surface`. -->
# How far can it be trusted?

Every number here was found by the tests that run on each change: they hold our functions against rows that others have printed, and the build fails when a row is missed. Nothing was fitted to these rows unless its table says so, and no tolerance was widened to pass one.

A row counts by where it comes from:

- **seen**: somebody published it, and we read it there or in a copy of it.
- **from memory**: published too, but remembered and not seen again; it may be misquoted.
- **derived**: computed apart from this library, out of another model or another program. It shows that two ways of computing agree, not that either is true.
- **own equation**: the equation that we use, typed a second time from its source and evaluated in 40 digits. It shows that we compute what is printed, to the last digit of each coefficient, and says nothing about sap.

A **known miss** is a row that we do not meet and whose reason is understood, mostly that the older table is worse than what it is held against. It is listed with its size, and the tests ask for exactly this size: a miss that moves or heals is an error. Rows **between** lie further off than their source's last digit and still within what our function states: they are the honest distance between two good sources.

The **largest deviation** is that of the rows that stand; it is relative where the accuracy is. What is **allowed** there is the larger of what the source and what our function states, row by row: old measurements known to lie off are allowed more than the function states of itself. What maple is beside sucrose, some salts and hexoses, is not in these tables: they are about pure sucrose.
";

pub(crate) fn files() -> Vec<File> {
    let mut text = String::from(HEAD);
    text += &total();
    for room in ROOMS {
        text += &section(room);
    }
    text += "\n## The tables and their sources\n\nThe files lie in `tests/published` and `tests/derived`, with their provenance in full.\n";
    for room in ROOMS {
        text += &sources(room);
    }
    vec![File::new("book/src/trust.md", text)]
}

fn total() -> String {
    let tables = || ROOMS.iter().flat_map(|room| room.tables);
    let judged: Vec<_> = tables().flat_map(Table::judged).collect();
    let count = |standing| judged.iter().filter(|row| row.standing == standing).count();
    let (between, known) = (count(Standing::Between), count(Standing::KnownMiss));
    let stand = between + count(Standing::Stands);
    let misses = ROOMS.iter().map(|room| room.misses().len()).sum::<usize>();
    let rejected = tables().map(Table::rejected).sum::<usize>();
    format!(
        "\n{} tables, {} judged rows: {stand} stand, {between} of them between tolerance and stated accuracy; {known} known misses; {misses} other misses. {rejected} more rows contradict better sources and are kept as documentation only.\n",
        tables().count(),
        judged.len(),
    )
}

fn section(room: &Room) -> String {
    let judged: Vec<_> = room.tables.iter().flat_map(Table::judged).collect();
    let mut text = format!(
        "\n## {}\n\n| what | seen | from memory | derived | own equation | largest deviation | allowed | there | stated accuracy | between | known misses |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n",
        room.name
    );
    let mut stated = "";
    for subject in subjects(&judged) {
        let rows: Vec<_> = judged.iter().filter(|row| key(&row.subject) == key(&subject)).collect();
        let same = subject.accuracy == stated;
        stated = subject.accuracy;
        text += &line(room, &subject, &rows, if same { "the same" } else { stated });
    }
    text += &known_misses(&judged);
    text += &not_judged(room);
    text
}

/// In the order of the functions' table, parts after what they follow from.
fn subjects(judged: &[Judged]) -> Vec<Subject> {
    let order = |subject: &Subject| {
        let place = catalogue::relations().position(|relation| relation.name == subject.name);
        (place.unwrap_or(usize::MAX), subject.name, subject.part)
    };
    let mut found: Vec<Subject> = Vec::new();
    for row in judged {
        if !found.iter().any(|subject| key(subject) == key(&row.subject)) {
            found.push(row.subject);
        }
    }
    found.sort_by_key(order);
    found
}

fn key(subject: &Subject) -> (&'static str, Option<&'static str>) {
    (subject.name, subject.part)
}

fn line(room: &Room, subject: &Subject, rows: &[&Judged], stated: &str) -> String {
    let of = |kind: &str| {
        rows.iter()
            .filter(|row| !is_own_equation(row) && row.row.kind() == kind)
            .count()
    };
    let own = rows.iter().filter(|row| is_own_equation(row)).count();
    let known: Vec<_> = rows.iter().filter(|row| row.standing == Standing::KnownMiss).collect();
    let worst = known
        .iter()
        .max_by(|a, b| a.deviation.abs().total_cmp(&b.deviation.abs()));
    let known = match worst {
        None => String::new(),
        Some(row) => format!("{}, to {}", known.len(), signed(row.deviation, &symbol(row))),
    };
    let [largest, allowed, place] = largest(subject, rows);
    let practice = match of("common practice") {
        0 => String::new(),
        n => format!(" and {n} of practice"),
    };
    let between = rows.iter().filter(|row| row.standing == Standing::Between).count();
    let cells = [
        name(room, subject),
        count(of("published")),
        format!("{}{practice}", count(of("from memory"))),
        count(of("derived")),
        count(own),
        largest,
        allowed,
        place,
        stated.to_owned(),
        count(between),
        known,
    ];
    format!("| {} |\n", cells.map(|cell| in_cell(&cell)).join(" | "))
}

/// The function by its name and in words, or what is judged of it.
fn name(room: &Room, subject: &Subject) -> String {
    let own = subject
        .name
        .rsplit_once(&format!("{}::", room.name))
        .map_or(subject.name, |(_, own)| own);
    let functions = catalogue::functions();
    let known = functions.iter().find(|function| function.relation.name == subject.name);
    match (subject.part, known) {
        (Some(part), _) => format!("`{own}`, {part}"),
        (None, Some(function)) => {
            let summary = function.summary.split(": ").next().unwrap_or_default();
            format!("`{own}`: {}", summary.trim_end_matches('.'))
        }
        (None, None) if room.name == "units" => own.to_owned(),
        (None, None) => format!("`{own}`"),
    }
}

/// The largest deviation of the rows that stand, and where it is.
fn largest(subject: &Subject, rows: &[&Judged]) -> [String; 3] {
    let stand = rows
        .iter()
        .filter(|row| matches!(row.standing, Standing::Stands | Standing::Between));
    let share = |row: &Judged, of: f64| {
        if row.value == 0.0 {
            0.0
        } else {
            of.abs() / row.value.abs()
        }
    };
    let stated_as_share = subject.accuracy.contains('%') || subject.accuracy.contains("ppm");
    let is_factor = subject.name == "factors";
    let is_relative = is_factor || subject.part.is_none() && stated_as_share;
    let size = |row: &Judged| {
        if is_relative {
            share(row, row.deviation)
        } else {
            row.deviation.abs()
        }
    };
    let Some(worst) = stand.max_by(|a, b| size(a).total_cmp(&size(b))) else {
        return Default::default();
    };
    let place = format!("{} (`{}`)", place(&worst.row), stem(worst.table));
    let off = share(worst, worst.deviation);
    if off < 1e-12 {
        let shown = if off == 0.0 {
            String::from("none")
        } else {
            format!("rounding: {} of the value", significant(off))
        };
        return [shown, String::new(), place];
    }
    let shown = |size: f64| {
        let amount = amount(size.abs(), &symbol(worst));
        if is_factor {
            format!("{} %", significant(100.0 * share(worst, size)))
        } else if is_relative {
            format!("{} % ({amount})", significant(100.0 * share(worst, size)))
        } else {
            amount
        }
    };
    [shown(worst.deviation), shown(worst.allowed), place]
}

fn known_misses(judged: &[Judged]) -> String {
    let mut text = String::new();
    for row in judged.iter().filter(|row| row.standing == Standing::KnownMiss) {
        if text.is_empty() {
            text += "\nKnown misses, ours minus the printed:\n\n| table | where | printed | ours minus printed |\n| --- | --- | --- | --- |\n";
        }
        let unit = row_unit(&row.row);
        let printed = with_unit(row.row.text("value"), &unit);
        let miss = with_unit(row.row.text("known_miss"), &unit);
        text += &format!(
            "| `{}` | {} | {} | {} |\n",
            stem(row.table),
            in_cell(&place(&row.row)),
            in_cell(&minus(&printed)),
            in_cell(&minus(&miss))
        );
    }
    text
}

fn not_judged(room: &Room) -> String {
    let mut text = String::new();
    for table in room.tables {
        let left = table.not_offered();
        let reasons: BTreeSet<_> = left.iter().map(|(_, why)| *why).collect();
        for reason in reasons {
            let rows: Vec<_> = left.iter().filter(|(_, why)| *why == reason).collect();
            let places: Vec<_> = rows.iter().map(|(row, _)| place(row)).collect();
            text += &format!(
                "\nNot judged, {} of `{}`, {reason}: {}.\n",
                if rows.len() == 1 {
                    String::from("1 row")
                } else {
                    format!("{} rows", rows.len())
                },
                stem(table.name),
                places.join("; ")
            );
        }
    }
    text
}

fn sources(room: &Room) -> String {
    let mut text = format!(
        "\n### {}\n\n| table | rows | what it is | its sources |\n| --- | --- | --- | --- |\n",
        room.name
    );
    for table in room.tables {
        let rows = sugaring_tests::rows(table.name, table.text);
        let mut named: Vec<String> = Vec::new();
        for row in &rows {
            let source = row.optional_text("source").unwrap_or("NIST SP 811, Appendix B.8");
            // What one row says more of itself stands in the file.
            let short = [" (", ": ", "; "]
                .iter()
                .fold(source, |text, end| text.split(end).next().unwrap_or(text));
            if !named.iter().any(|known| known == short) {
                named.push(short.to_owned());
            }
        }
        let title = table.head().next().unwrap_or_default();
        let cells = [
            format!("`{}/{}`", table.folder, table.name),
            rows.len().to_string(),
            title.to_owned(),
            named.join("; "),
        ];
        text += &format!("| {} |\n", cells.map(|cell| in_cell(&cell)).join(" | "));
    }
    text
}

fn is_own_equation(row: &Judged) -> bool {
    row.table.ends_with("_equations.csv") || row.table == "hydrometer_floating.csv"
}

fn count(n: usize) -> String {
    if n == 0 { String::new() } else { n.to_string() }
}

fn stem(table: &str) -> &str {
    table.strip_suffix(".csv").unwrap_or(table)
}

/// What the row is about, by its columns.
fn place(row: &Row) -> String {
    const COLUMNS: [(&str, &str); 20] = [
        ("from_unit", ""),
        ("quantity", ""),
        ("input", ""),
        ("reading_brix_pct", " °Bx read"),
        ("brix_pct", " °Bx"),
        ("true_brix_pct", " °Bx"),
        ("molality_mol_kg", " mol/kg"),
        ("conc_g_l", " g/L"),
        ("density_kg_m3", " kg/m³"),
        ("index", " index"),
        ("mark", " on the scale"),
        ("apparent_sg_2020", " apparent 20/20"),
        ("baume_145", " °Bé"),
        ("hot_c", " °C hot"),
        ("cold_c", " °C cold"),
        ("temp_f", " °F"),
        ("temp_c", " °C"),
        ("pressure_kpa", " kPa"),
        ("altitude_m", " m"),
        ("reported_kpa", " kPa reported"),
    ];
    let is_units = row.optional_text("from_unit").is_some();
    let mut said = Vec::new();
    for (column, unit) in COLUMNS {
        // A quantity says what is judged, which stands in the line already; degrees Celsius beside Fahrenheit are rounded.
        let is_doubled = column == "quantity" || column == "temp_c" && row.optional_text("temp_f").is_some();
        let unit = match row.optional_text("direction") {
            Some("brix_to_baume") => " °Bx",
            Some("baume_to_brix") => " °Bé",
            _ => unit,
        };
        if let Some(text) = row.optional_text(column).filter(|_| !is_doubled) {
            said.push(format!(
                "{}{unit}",
                if is_units { text.to_owned() } else { minus(text) }
            ));
        }
    }
    if let (Some(celsius), None) = (
        row.optional_number("temp_k").and(row.celsius()),
        row.optional_text("temp_c"),
    ) {
        said.push(minus(&format!("{} °C", (1e6 * celsius).round() / 1e6)));
    }
    if let Some(pascal) = row.optional_number("pressure_pa") {
        said.push(format!("{} kPa", pascal / 1e3));
    }
    said.join(", ")
}

fn symbol(row: &Judged) -> String {
    match row.subject.output {
        // Of deviations.
        Some(unit) if matches!(unit.symbol, "°C" | "Δ°C") => String::from("K"),
        Some(unit) => unit.symbol.to_owned(),
        None => row_unit(&row.row),
    }
}

/// The unit as people write it.
fn row_unit(row: &Row) -> String {
    match row.optional_text("unit").unwrap_or_default() {
        "1" | "apparent_relative_density_20_20" => String::new(),
        "brix_pct" | "brix_pct_reading" | "delta_brix_pct" => String::from("°Bx"),
        "baume_145" | "baume_145_reading" => String::from("°Bé"),
        "degC" => String::from("°C"),
        "degF" => String::from("°F"),
        "kg/m3" => String::from("kg/m³"),
        "mPa s" => String::from("mPa·s"),
        "uPa s" => String::from("µPa·s"),
        "pct_of_hot_volume" => String::from("%"),
        // Factors: a share of the factor is what tells.
        other if other.contains(" per ") => String::new(),
        other => other.to_owned(),
    }
}

fn amount(size: f64, symbol: &str) -> String {
    with_unit(&significant(size), symbol)
}

fn signed(size: f64, symbol: &str) -> String {
    let sign = if size < 0.0 { "−" } else { "+" };
    format!("{sign}{}", amount(size.abs(), symbol))
}

fn with_unit(number: &str, symbol: &str) -> String {
    if symbol.is_empty() {
        number.to_owned()
    } else {
        format!("{number} {symbol}")
    }
}

fn minus(text: &str) -> String {
    text.replace('-', "−")
}

/// Two digits that count.
fn significant(x: f64) -> String {
    if x == 0.0 {
        return String::from("0");
    }
    let scientific = format!("{x:.1e}");
    let (digits, power) = scientific.split_once('e').unwrap_or((&scientific, "0"));
    let power: i32 = power.parse().unwrap_or(0);
    match power {
        2.. => format!("{x:.0}"),
        -5..=1 => format!("{x:.*}", usize::try_from(1 - power).unwrap_or(0)),
        _ => format!("{digits}·10{}", superscript(power)),
    }
}

fn superscript(power: i32) -> String {
    let digits = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];
    let raised = |sign: char| match sign.to_digit(10) {
        Some(digit) => digits.get(digit as usize).copied().unwrap_or(sign),
        None => '⁻',
    };
    power.to_string().chars().map(raised).collect()
}

/// A text that ends no cell and no line.
fn in_cell(text: &str) -> String {
    let words: Vec<_> = text.split_whitespace().collect();
    words.join(" ").replace('|', "\\|")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_short() {
        for (x, text) in [
            (0.0, "0"),
            (0.1234, "0.12"),
            (12.34, "12"),
            (1234.0, "1234"),
            (2.1e-15, "2.1·10⁻¹⁵"),
        ] {
            assert_eq!(significant(x), text);
        }
    }
}
