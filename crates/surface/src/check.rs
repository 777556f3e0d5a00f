//! What the compiler cannot see: that a row names its function's arguments, says what the function's documentation says
//! and hands out the relation that the function checks, and that no public function of numbers is without a row.

use std::{
    collections::{BTreeMap, BTreeSet},
    fs,
    path::Path,
};

use sugaring::{
    catalogue::{self, Function},
    units::Unit,
};
use syn::{Expr, FnArg, GenericArgument, Item, Pat, PathArguments, ReturnType, Type, Visibility, visit::Visit};

use crate::{SCALE, file::top};

/// Public functions of numbers that have no row, and why.
const WITHOUT_ROW: [(&str, &str); 1] = [(
    "units::brix",
    "it makes what other languages hand over as a bare number",
)];

/// Types that one number carries, beside those of the dimensions.
const NUMBERS: [&str; 3] = ["f64", "Brix", "StationPressure"];

/// Rows that differ from the source, one a line; none is well.
pub fn differences() -> Vec<String> {
    let rooms = rooms();
    let mut found: Vec<String> = catalogue::functions()
        .iter()
        .filter_map(|row| differs(row, &rooms))
        .collect();
    let rows: BTreeSet<String> = catalogue::functions()
        .iter()
        .map(|row| format!("{}::{}", room_of(row), row.name))
        .collect();
    let public = rooms.iter().flat_map(|(room, source)| {
        let numeric = source
            .functions
            .iter()
            .filter(|(_, function)| function.is_public && function.is_of_numbers);
        numeric.map(move |(name, _)| format!("{room}::{name}"))
    });
    let left_out: BTreeSet<String> = public.filter(|path| !rows.contains(path)).collect();
    let known = |path: &String| WITHOUT_ROW.iter().any(|(known, _)| known == path);
    found.extend(
        left_out
            .iter()
            .filter(|path| !known(path))
            .map(|path| format!("{path} has no row")),
    );
    let gone = WITHOUT_ROW.iter().filter(|(path, _)| !left_out.contains(*path));
    found.extend(gone.map(|(path, why)| format!("{path} is listed as without a row ({why}), and is not")));
    found
}

fn differs(row: &Function, rooms: &BTreeMap<String, Source>) -> Option<String> {
    let path = format!("{}::{}", row.module, row.name);
    let room = rooms.get(room_of(row));
    let function = room.and_then(|room| room.functions.get(row.name));
    let (Some(room), Some(function)) = (room, function.filter(|function| function.is_public)) else {
        return Some(format!("{path}: no public function of that name"));
    };
    let named: Vec<_> = row.arguments.iter().map(|argument| argument.name).collect();
    if function.arguments != named {
        return Some(format!(
            "{path}: the row names {named:?}, the function {:?}",
            function.arguments
        ));
    }
    let summary = plain(row.summary);
    if function.summary != summary {
        return Some(format!(
            "{path}: the row says \"{summary}\", the function \"{}\"",
            function.summary
        ));
    }
    let checked = room.checked(row.name);
    if !checked.contains(row.relation.name) {
        return Some(format!(
            "{path}: the row has {}, the function checks {checked:?}",
            row.relation.name
        ));
    }
    None
}

/// The density scales are rows of their own module, written in the room of the functions they stand behind.
fn room_of(row: &Function) -> &'static str {
    if row.module == SCALE { "sucrose" } else { row.module }
}

/// What the files of a module of the core say.
#[derive(Default)]
struct Source {
    functions: BTreeMap<String, Found>,
    /// The `name` of each relation, by its static.
    relations: BTreeMap<String, String>,
}

#[derive(Default)]
struct Found {
    is_public: bool,
    is_of_numbers: bool,
    arguments: Vec<String>,
    summary: String,
    /// Every name in its body.
    names: BTreeSet<String>,
}

impl Source {
    /// Names of the relations in the function's body, or else in those of the functions it calls.
    fn checked(&self, function: &str) -> BTreeSet<&str> {
        let mut seen = BTreeSet::new();
        let mut calls = vec![function];
        while !calls.is_empty() {
            let bodies: Vec<&Found> = calls.drain(..).filter_map(|name| self.functions.get(name)).collect();
            let names = || bodies.iter().flat_map(|found| &found.names);
            let relations: BTreeSet<&str> = names()
                .filter_map(|name| self.relations.get(name))
                .map(String::as_str)
                .collect();
            if !relations.is_empty() {
                return relations;
            }
            calls = names().map(String::as_str).filter(|name| seen.insert(*name)).collect();
        }
        BTreeSet::new()
    }

    fn read(&mut self, item: &Item) {
        match item {
            Item::Fn(item) => {
                let mut names = Names::default();
                names.visit_block(&item.block);
                let inputs = || item.sig.inputs.iter();
                let is_of_numbers = item.sig.generics.params.is_empty()
                    && inputs().all(|input| matches!(input, FnArg::Typed(typed) if is_number(&typed.ty)))
                    && returns_number(&item.sig.output);
                let found = Found {
                    is_public: matches!(item.vis, Visibility::Public(_)),
                    is_of_numbers,
                    arguments: inputs().filter_map(argument).collect(),
                    summary: summary(&item.attrs),
                    names: names.0,
                };
                self.functions.insert(item.sig.ident.to_string(), found);
            }
            Item::Static(item) if last(&item.ty).as_deref() == Some("Relation") => {
                let Expr::Struct(value) = item.expr.as_ref() else {
                    return;
                };
                let name = value
                    .fields
                    .iter()
                    .find_map(|field| match (&field.member, &field.expr) {
                        (syn::Member::Named(member), Expr::Lit(literal)) if member == "name" => text(&literal.lit),
                        _ => None,
                    });
                self.relations.extend(name.map(|name| (item.ident.to_string(), name)));
            }
            _ => {}
        }
    }
}

#[derive(Default)]
struct Names(BTreeSet<String>);

impl<'ast> Visit<'ast> for Names {
    fn visit_ident(&mut self, name: &'ast syn::Ident) {
        self.0.insert(name.to_string());
    }
}

fn rooms() -> BTreeMap<String, Source> {
    let folder = top().join("crates/sugaring/src");
    let entries = fs::read_dir(&folder).into_iter().flatten().flatten();
    let folders = entries.map(|entry| entry.path()).filter(|path| path.is_dir());
    let named = folders.filter_map(|path| Some((path.file_name()?.to_str()?.to_owned(), path)));
    named.map(|(name, path)| (name, source(&path))).collect()
}

fn source(folder: &Path) -> Source {
    let mut source = Source::default();
    for path in fs::read_dir(folder)
        .into_iter()
        .flatten()
        .flatten()
        .map(|entry| entry.path())
    {
        let text = fs::read_to_string(&path).unwrap_or_default();
        let items = syn::parse_file(&text).map(|file| file.items).unwrap_or_default();
        for item in &items {
            source.read(item);
        }
    }
    source
}

fn argument(input: &FnArg) -> Option<String> {
    match input {
        FnArg::Typed(typed) => match typed.pat.as_ref() {
            Pat::Ident(name) => Some(name.ident.to_string()),
            _ => None,
        },
        FnArg::Receiver(_) => None,
    }
}

/// The first paragraph of the documentation.
fn summary(attributes: &[syn::Attribute]) -> String {
    let lines = attributes.iter().filter_map(|attribute| match &attribute.meta {
        syn::Meta::NameValue(pair) if pair.path.is_ident("doc") => match &pair.value {
            Expr::Lit(literal) => text(&literal.lit),
            _ => None,
        },
        _ => None,
    });
    let paragraph: Vec<_> = lines
        .map(|line| line.trim().to_owned())
        .take_while(|line| !line.is_empty())
        .collect();
    plain(&paragraph.join(" "))
}

/// Words alone: links of the documentation go nowhere in another language.
fn plain(text: &str) -> String {
    let text = text.replace("[`", "`").replace("`]", "`");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn text(literal: &syn::Lit) -> Option<String> {
    match literal {
        syn::Lit::Str(text) => Some(text.value()),
        _ => None,
    }
}

/// `Result<T, Error>` with a T that one number carries.
fn returns_number(output: &ReturnType) -> bool {
    let ReturnType::Type(_, returned) = output else {
        return false;
    };
    let Type::Path(path) = returned.as_ref() else {
        return false;
    };
    let Some(segment) = path.path.segments.last() else {
        return false;
    };
    let PathArguments::AngleBracketed(generics) = &segment.arguments else {
        return false;
    };
    segment.ident == "Result" && matches!(generics.args.first(), Some(GenericArgument::Type(inner)) if is_number(inner))
}

fn is_number(kind: &Type) -> bool {
    let name = last(kind).unwrap_or_default();
    let written = |unit: &Unit| unit.dimension.name().replace('_', "") == name.to_lowercase();
    NUMBERS.contains(&name.as_str()) || catalogue::units().iter().any(|unit| written(unit))
}

fn last(kind: &Type) -> Option<String> {
    match kind {
        Type::Path(path) => path.path.segments.last().map(|segment| segment.ident.to_string()),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_are_as_their_functions() {
        let differences = differences();
        assert!(differences.is_empty(), "{differences:#?}");
    }

    #[test]
    fn a_swapped_name_is_found() {
        let swapped = "/// Heat.\npub fn heat_to_warm(brix: Brix, to: Temperature) -> Result<Energy, Error> { HEAT.check(0, 1.0) }
            pub static HEAT: Relation = Relation { name: \"sucrose::heat_to_warm\" };";
        let mut source = Source::default();
        for item in syn::parse_file(swapped).map(|file| file.items).unwrap_or_default() {
            source.read(&item);
        }
        let found = source
            .functions
            .get("heat_to_warm")
            .map(|found| (found.is_of_numbers, found.arguments.join(" ")));
        assert_eq!(found, Some((true, String::from("brix to"))));
        assert!(source.checked("heat_to_warm").contains("sucrose::heat_to_warm"));
        let rooms = BTreeMap::from([(String::from("sucrose"), source)]);
        let row = catalogue::functions().iter().find(|row| row.name == "heat_to_warm");
        let said = row.and_then(|row| differs(row, &rooms)).unwrap_or_default();
        assert!(said.contains("the row names"), "{said}");
    }
}
