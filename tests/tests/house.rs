//! The house stands as DEVELOPERS.md draws it: floors, folder fronts, no traces of one machine, no forgotten table.

use std::{
    fs,
    path::{Path, PathBuf},
};

/// The room of a name at the root of the core, and the floor it lies on.
const ROOMS: [(&str, u8, &[&str]); 19] = [
    (
        "ground",
        1,
        &[
            "units", "relation", "error", "math", "digits", "nearest", "form", "lanes",
        ],
    ),
    (
        "ground",
        1,
        &["Error", "ErrorKind", "Range", "Relation", "Source", "Brix", "uom"],
    ),
    ("solve", 2, &["solve"]),
    ("uncertainty", 3, &["uncertainty"]),
    ("water", 4, &["water"]),
    ("air", 5, &["air"]),
    ("sucrose", 6, &["sucrose"]),
    ("lot", 7, &["lot", "Lot"]),
    ("instrument", 7, &["instrument"]),
    ("membrane", 8, &["membrane"]),
    ("evaporator", 8, &["evaporator"]),
    ("finish", 8, &["finish"]),
    ("fuel", 8, &["fuel"]),
    ("day", 9, &["day"]),
    ("season", 10, &["season"]),
    // Beside the floors: imports from the ground, and every floor may import it.
    ("safety", 2, &["safety"]),
    // What the law says, beside the physics.
    ("jurisdiction", 2, &["jurisdiction"]),
    ("catalogue", 11, &["catalogue"]),
    ("root", 12, &["lib"]),
];

#[test]
fn rooms_import_from_below() {
    let mut slips = Vec::new();
    for file in sources() {
        let name = shown(&file);
        let own = name.split(['/', '.']).next().unwrap();
        if own == "lib" {
            continue;
        }
        let Some((room, floor)) = room(own) else {
            slips.push(format!("{name}: room {own} is on no floor"));
            continue;
        };
        for (line, imported) in imports(&fs::read_to_string(&file).unwrap()) {
            match self::room(&imported) {
                None => slips.push(format!("{name}:{line}: crate::{imported} is on no floor")),
                Some((other, below)) if below >= floor && other != room && other != "safety" => {
                    slips.push(format!(
                        "{name}:{line}: {room} (floor {floor}) imports {other} (floor {below})"
                    ));
                }
                Some(_) => {}
            }
        }
    }
    assert!(slips.is_empty(), "\n{}", slips.join("\n"));
}

#[test]
fn folder_fronts_hold_docs_modules_and_names_only() {
    let mut slips = Vec::new();
    for file in sources().iter().filter(|file| file.ends_with("mod.rs")) {
        let text = fs::read_to_string(file).unwrap();
        let code = text
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"))
            .collect::<Vec<_>>()
            .join(" ");
        for statement in code.split(';').map(str::trim).filter(|statement| !statement.is_empty()) {
            // Attributes stand before what they belong to.
            let bare = statement.rsplit(']').next().unwrap().trim();
            let bare = bare
                .strip_prefix("pub(crate) ")
                .or(bare.strip_prefix("pub "))
                .unwrap_or(bare);
            if !(bare.starts_with("mod ") || bare.starts_with("use ")) {
                slips.push(format!("{}: {statement}", shown(file)));
            }
        }
    }
    assert!(slips.is_empty(), "\n{}", slips.join("\n"));
}

#[test]
fn nothing_tells_of_one_machine() {
    // Put together, so that this file does not hold what it looks for.
    let traces = [
        ["/wo", "rk/"],
        ["/ho", "me/"],
        ["/tm", "p/"],
        ["index.crates", ".io"],
        ["static.crates", ".io"],
        ["files.pythonhosted", ".org"],
        ["registry.npmjs", ".org"],
    ]
    .map(|parts| parts.concat());
    let mut found = Vec::new();
    for file in texts(&top()) {
        let Ok(text) = fs::read_to_string(&file) else { continue };
        for (number, line) in text.lines().enumerate() {
            if let Some(trace) = traces.iter().find(|trace| line.contains(*trace)) {
                found.push(format!("{}:{}: {trace}", file.display(), number + 1));
            }
        }
    }
    assert!(found.is_empty(), "\n{}", found.join("\n"));
}

/// Tables whose relations are still to come, with what they wait for.
const WAITING: &[(&str, &str)] = &[
    ("fuel_emissions", "carbon dioxide of a fuel"),
    ("membrane_peer", "salt water in the membrane's equations"),
];

#[test]
fn every_table_has_a_judge() {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let judges = ["tests", "src/tables"]
        .iter()
        .flat_map(|folder| texts(&here.join(folder)))
        .filter(|file| !file.ends_with("house.rs"))
        .filter_map(|file| fs::read_to_string(file).ok())
        .collect::<String>();
    let mut slips = Vec::new();
    for file in ["published", "derived"]
        .iter()
        .flat_map(|folder| texts(&here.join(folder)))
    {
        let table = file.file_stem().unwrap().to_string_lossy().into_owned();
        if file.extension().is_none_or(|ending| ending != "csv") {
            continue;
        }
        let judged = [format!("/{table}.csv\""), format!("\"{table}\"")]
            .iter()
            .any(|name| judges.contains(name));
        let waiting = WAITING.iter().any(|(name, _)| *name == table);
        match (judged, waiting) {
            (false, false) => slips.push(format!("{table}: no judge, and not listed as waiting")),
            (true, true) => slips.push(format!("{table}: has a judge: take it off the list")),
            _ => {}
        }
    }
    assert!(slips.is_empty(), "\n{}", slips.join("\n"));
}

fn room(name: &str) -> Option<(&'static str, u8)> {
    ROOMS
        .iter()
        .find(|(_, _, names)| names.contains(&name))
        .map(|(room, floor, _)| (*room, *floor))
}

/// First names after `crate::` in code, with their lines; comments and documentation may point anywhere.
fn imports(text: &str) -> Vec<(usize, String)> {
    let mut found = Vec::new();
    let code = text
        .lines()
        .map(|line| if line.trim_start().starts_with("//") { "" } else { line })
        .collect::<Vec<_>>()
        .join("\n");
    for (at, _) in code.match_indices("crate::") {
        // `$crate::` of a macro and `pub(in crate::…)` count as well.
        let line = code[..at].lines().count().max(1);
        let rest = &code[at + "crate::".len()..];
        if let Some(tree) = rest.strip_prefix('{') {
            found.extend(branches(tree).into_iter().map(|name| (line, name)));
        } else if !rest.starts_with('$') {
            // `crate::$module` is a name that the caller of the macro writes.
            found.push((line, first_name(rest)));
        }
    }
    found
}

/// The first name of each branch of a `{…}` tree of which the opening brace is read.
fn branches(tree: &str) -> Vec<String> {
    let mut depth = 0;
    let mut names = Vec::new();
    let mut start = true;
    for (at, sign) in tree.char_indices() {
        match sign {
            '{' => depth += 1,
            '}' if depth == 0 => break,
            '}' => depth -= 1,
            ',' if depth == 0 => start = true,
            _ if start && !sign.is_whitespace() => {
                names.push(first_name(&tree[at..]));
                start = false;
            }
            _ => {}
        }
    }
    names
}

fn first_name(text: &str) -> String {
    text.chars()
        .take_while(|sign| sign.is_alphanumeric() || *sign == '_')
        .collect()
}

fn top() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn core() -> PathBuf {
    top().join("crates/sugaring/src")
}

fn sources() -> Vec<PathBuf> {
    let found = texts(&core());
    assert!(found.len() > 20, "the core was not found");
    found
}

fn shown(file: &Path) -> String {
    file.strip_prefix(core()).unwrap().to_string_lossy().into_owned()
}

/// Every file under `folder` that is ours: no build output, no version control, no lock files.
fn texts(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap().map(Result::unwrap) {
        let (path, name) = (entry.path(), entry.file_name());
        let name = name.to_string_lossy();
        let foreign = ["target", ".git", "node_modules", "book/book"]
            .iter()
            .any(|f| path.ends_with(f));
        if foreign || name.ends_with(".lock") {
            continue;
        }
        if path.is_dir() {
            found.extend(texts(&path));
        } else {
            found.push(path);
        }
    }
    found.sort();
    found
}

#[test]
fn import_trees_are_read() {
    let text = "use crate::{\n    digits,\n    error::Error,\n    units::{Dimension, Unit},\n};\n/// [`crate::day`]\nlet x = crate::math::exp(1.0);";
    let names = imports(text).into_iter().map(|(_, name)| name).collect::<Vec<_>>();
    assert_eq!(names, ["digits", "error", "units", "math"]);
}
