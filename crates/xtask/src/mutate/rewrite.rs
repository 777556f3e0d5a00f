//! One build for all: in the copy every coefficient becomes a call that gives the number as it stands or, for the one
//! that is asked for, with its last digit changed; constants that hold one become functions.

use std::{
    collections::{BTreeMap, BTreeSet},
    ops::Range,
    path::Path,
};

use proc_macro2::Span;
use syn::{
    Block, ExprPath, File, Ident, ImplItemFn, ItemConst, ItemFn, ItemMod, ItemStatic, ItemUse, Signature, UseTree,
    visit::{self, Visit},
};

use super::{
    find::{self, Coefficient, is_test},
    source,
};
use crate::command::write;

/// What the copy's core has beside.
const CHOICE: &str = "
/// The coefficient that is changed.
#[doc(hidden)]
pub mod mutant {
    use core::sync::atomic::{AtomicUsize, Ordering};
    pub static CHOSEN: AtomicUsize = AtomicUsize::new(usize::MAX);
    #[must_use]
    pub fn at(number: usize, as_it_stands: f64, changed: f64) -> f64 {
        if CHOSEN.load(Ordering::Relaxed) == number { changed } else { as_it_stands }
    }
}
";

/// Rewrites the copy of the core in `core`; a coefficient's number is its place in `all`.
pub(crate) fn rewrite(core: &Path, all: &[Coefficient]) -> Result<(), String> {
    let mut files = BTreeMap::new();
    for file in find::files(core) {
        let text = source(core, &file)?;
        let parsed = syn::parse_file(&text).map_err(|error| format!("{file}: {error}"))?;
        files.insert(file, (text, parsed));
    }
    let of_file = |file: &str| {
        let file = file.to_owned();
        let numbered = all.iter().enumerate();
        numbered.filter(move |(_, coefficient)| coefficient.file == file)
    };
    let holding = |file: &str, bytes: &Range<usize>| {
        of_file(file).any(|(_, coefficient)| bytes.contains(&coefficient.bytes.start))
    };
    let mut constants: BTreeMap<&str, BTreeSet<String>> = BTreeMap::new();
    loop {
        let before: BTreeSet<String> = constants.values().flatten().cloned().collect();
        let mut grown = false;
        for (file, (_, parsed)) in &files {
            let mut found = Constants::default();
            found.visit_file(parsed);
            let own = constants.entry(file).or_default();
            let known: BTreeSet<String> = own.union(&imported(parsed, &before)).cloned().collect();
            for constant in found.0 {
                if holding(file, &constant.bytes) || !constant.names.is_disjoint(&known) {
                    grown |= own.insert(constant.name);
                }
            }
        }
        if !grown {
            break;
        }
    }
    let everywhere: BTreeSet<String> = constants.values().flatten().cloned().collect();
    for (file, (text, parsed)) in &files {
        let own = constants.get(file.as_str()).cloned().unwrap_or_default();
        let mut edits = Edits {
            calls: own.union(&imported(parsed, &everywhere)).cloned().collect(),
            own,
            coefficients: of_file(file).map(|(_, coefficient)| coefficient.bytes.start).collect(),
            list: Vec::new(),
        };
        edits.visit_file(parsed);
        for (number, coefficient) in of_file(file) {
            let call = format!(
                "crate::mutant::at({number}, {}, {})",
                coefficient.text,
                coefficient.changed()
            );
            edits.list.push((coefficient.bytes.clone(), call));
        }
        write(&core.join(file), edited(text, edits.list))?;
    }
    let root = source(core, "lib.rs")? + CHOICE;
    write(&core.join("lib.rs"), root)
}

fn edited(text: &str, mut edits: Vec<(Range<usize>, String)>) -> String {
    edits.sort_by_key(|(bytes, _)| bytes.start);
    let mut new = text.to_owned();
    for (bytes, by) in edits.into_iter().rev() {
        new.replace_range(bytes, &by);
    }
    new
}

/// Names in `use` declarations that are constants elsewhere.
fn imported(file: &File, everywhere: &BTreeSet<String>) -> BTreeSet<String> {
    let mut uses = Uses::default();
    uses.visit_file(file);
    uses.0.intersection(everywhere).cloned().collect()
}

#[derive(Default)]
struct Uses(BTreeSet<String>);

impl<'ast> Visit<'ast> for Uses {
    fn visit_item_mod(&mut self, item: &'ast ItemMod) {
        if !is_test(&item.attrs) {
            visit::visit_item_mod(self, item);
        }
    }

    fn visit_item_use(&mut self, item: &'ast ItemUse) {
        let mut trees = vec![&item.tree];
        while let Some(tree) = trees.pop() {
            match tree {
                UseTree::Path(path) => trees.push(&path.tree),
                UseTree::Group(group) => trees.extend(&group.items),
                UseTree::Name(name) => {
                    self.0.insert(name.ident.to_string());
                }
                _ => {}
            }
        }
    }
}

/// Constants of a file.
#[derive(Default)]
struct Constants(Vec<Constant>);

struct Constant {
    name: String,
    bytes: Range<usize>,
    /// The names in its expression.
    names: BTreeSet<String>,
}

impl<'ast> Visit<'ast> for Constants {
    fn visit_item_mod(&mut self, item: &'ast ItemMod) {
        if !is_test(&item.attrs) {
            visit::visit_item_mod(self, item);
        }
    }

    fn visit_item_const(&mut self, item: &'ast ItemConst) {
        let mut names = Names::default();
        names.visit_expr(&item.expr);
        self.0.push(Constant {
            name: item.ident.to_string(),
            bytes: item.const_token.span.byte_range().start..item.semi_token.span.byte_range().end,
            names: names.0,
        });
    }
}

#[derive(Default)]
struct Names(BTreeSet<String>);

impl<'ast> Visit<'ast> for Names {
    fn visit_ident(&mut self, name: &'ast Ident) {
        self.0.insert(name.to_string());
    }
}

struct Edits {
    /// Constants of this file that become functions.
    own: BTreeSet<String>,
    /// Those, and what is imported of them.
    calls: BTreeSet<String>,
    /// Where coefficients begin.
    coefficients: Vec<usize>,
    list: Vec<(Range<usize>, String)>,
}

impl Edits {
    fn put(&mut self, token: Span, by: &str) {
        self.list.push((token.byte_range(), by.to_owned()));
    }

    fn called(&mut self, name: &Ident) {
        if self.calls.contains(&name.to_string()) {
            self.put(name.span(), &format!("{name}()"));
        }
    }

    /// What holds a coefficient or calls such a function is no `const fn` itself.
    fn freed(&mut self, signature: &Signature, block: &Block, before: usize) {
        let bytes = signature.fn_token.span.byte_range().start..block.brace_token.span.close().byte_range().end;
        let holds = self.coefficients.iter().any(|start| bytes.contains(start));
        if let (Some(constant), true) = (&signature.constness, holds || self.list.len() > before) {
            self.put(constant.span, "");
        }
    }
}

impl<'ast> Visit<'ast> for Edits {
    fn visit_item_mod(&mut self, item: &'ast ItemMod) {
        if !is_test(&item.attrs) {
            visit::visit_item_mod(self, item);
        }
    }

    fn visit_item_static(&mut self, _: &'ast ItemStatic) {}

    fn visit_item_const(&mut self, item: &'ast ItemConst) {
        if self.own.contains(&item.ident.to_string()) {
            self.put(item.const_token.span, "fn");
            self.put(item.ident.span(), &format!("{}()", item.ident));
            self.put(item.colon_token.span, " ->");
            self.put(item.eq_token.span, "{");
            self.put(item.semi_token.span, "}");
            self.visit_expr(&item.expr);
        }
    }

    fn visit_item_fn(&mut self, item: &'ast ItemFn) {
        let before = self.list.len();
        visit::visit_item_fn(self, item);
        self.freed(&item.sig, &item.block, before);
    }

    fn visit_impl_item_fn(&mut self, item: &'ast ImplItemFn) {
        let before = self.list.len();
        visit::visit_impl_item_fn(self, item);
        self.freed(&item.sig, &item.block, before);
    }

    fn visit_expr_path(&mut self, path: &'ast ExprPath) {
        if let Some(last) = path.path.segments.last() {
            self.called(&last.ident);
        }
    }
}
