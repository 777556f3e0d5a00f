use std::{fmt, ops::Range, path::Path};

use syn::{
    Attribute, Expr, ExprCall, ImplItemFn, ItemConst, ItemFn, ItemMod, ItemStatic, LitFloat, Local, Macro,
    visit::{self, Visit},
};

use super::source;
use crate::command::entries;

/// Names of constants that are limits, brackets, starts or steps of a solver, and no coefficients.
const NO_COEFFICIENTS: [&str; 13] = [
    "STRONGEST",
    "WEAKEST",
    "ROUNDING",
    "HARD_STOP",
    "END",
    "LOWEST",
    "HIGHEST",
    "CRITICAL",
    "TOLERANCE",
    "START",
    "START_WARM",
    "COLDEST",
    "HOTTEST",
];

/// How well a pressure is known by where it comes from: no formula.
const UNCERTAINTIES: &str = "air/origin.rs";

/// A number of a formula.
#[derive(Clone, Debug)]
pub(crate) struct Coefficient {
    /// Its file below the core's `src`.
    pub(crate) file: String,
    /// The constant or function it stands in, with its number there.
    pub(crate) name: String,
    /// As it is written.
    pub(crate) text: String,
    /// Where it is written.
    pub(crate) bytes: Range<usize>,
}

/// Place, number and changed number: what a record of it is found by.
impl fmt::Display for Coefficient {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {} -> {}", self.place(), self.text, self.changed())
    }
}

impl Coefficient {
    pub(crate) fn place(&self) -> String {
        format!("{} {}", self.file, self.name)
    }

    pub(crate) fn room(&self) -> &str {
        self.file.split('/').next().unwrap_or_default()
    }

    /// With its last digit one more, or one less where it is a nine.
    pub(crate) fn changed(&self) -> String {
        let digits = self.text.find(['e', 'E']).unwrap_or(self.text.len());
        let (digits, power) = self.text.split_at(digits);
        let last = digits.rfind(|sign: char| sign.is_ascii_digit()).unwrap_or(0);
        let (before, from) = digits.split_at(last);
        let (digit, after) = from.split_at(1);
        let other = match digit.parse::<u8>() {
            Ok(9) | Err(_) => 8,
            Ok(digit) => digit + 1,
        };
        format!("{before}{other}{after}{power}")
    }
}

/// The files of all rooms.
pub(crate) fn files(core: &Path) -> Vec<String> {
    super::ROOMS.iter().flat_map(|room| of_room(core, room)).collect()
}

fn of_room(core: &Path, room: &str) -> Vec<String> {
    let paths = entries(&core.join(room));
    let names = paths.iter().filter_map(|path| path.file_name());
    names.map(|name| format!("{room}/{}", name.to_string_lossy())).collect()
}

/// The coefficients of a room, in the order of its files.
pub(crate) fn coefficients(core: &Path, room: &str) -> Result<Vec<Coefficient>, String> {
    let mut all = Vec::new();
    for file in of_room(core, room) {
        if file == UNCERTAINTIES {
            continue;
        }
        let text = source(core, &file)?;
        let parsed = syn::parse_file(&text).map_err(|error| format!("{file}: {error}"))?;
        let mut finder = Finder {
            file,
            ..Finder::default()
        };
        finder.visit_file(&parsed);
        all.extend(finder.found);
    }
    Ok(all)
}

#[derive(Default)]
struct Finder {
    file: String,
    /// The item that is being read.
    name: String,
    /// Whether every number counts: constants are coefficients, in formulas 1, 2 and 1000 are structure.
    is_constant: bool,
    count: usize,
    found: Vec<Coefficient>,
}

impl Finder {
    fn within(&mut self, name: String, is_constant: bool, read: impl FnOnce(&mut Self)) {
        let before = (std::mem::replace(&mut self.name, name), self.is_constant, self.count);
        (self.is_constant, self.count) = (is_constant, 0);
        read(self);
        (self.name, self.is_constant, self.count) = before;
    }
}

impl<'ast> Visit<'ast> for Finder {
    fn visit_item_mod(&mut self, item: &'ast ItemMod) {
        if !is_test(&item.attrs) {
            visit::visit_item_mod(self, item);
        }
    }

    fn visit_attribute(&mut self, _: &'ast Attribute) {}

    fn visit_macro(&mut self, _: &'ast Macro) {}

    /// Statics are relations: ranges and texts.
    fn visit_item_static(&mut self, _: &'ast ItemStatic) {}

    fn visit_item_const(&mut self, item: &'ast ItemConst) {
        let name = item.ident.to_string();
        // In the boiling line of water the name is that of its lower limit.
        let is_limit = name == "FREEZING" && self.file == "water/saturation.rs";
        if !is_limit && !NO_COEFFICIENTS.contains(&name.as_str()) {
            self.within(name, true, |finder| visit::visit_item_const(finder, item));
        }
    }

    fn visit_item_fn(&mut self, item: &'ast ItemFn) {
        let name = format!("{}()", item.sig.ident);
        self.within(name, false, |finder| visit::visit_item_fn(finder, item));
    }

    fn visit_impl_item_fn(&mut self, item: &'ast ImplItemFn) {
        let name = format!("{}()", item.sig.ident);
        self.within(name, false, |finder| visit::visit_impl_item_fn(finder, item));
    }

    /// Limits of a range, and the bracket and tolerance of a solver.
    fn visit_expr_call(&mut self, call: &'ast ExprCall) {
        if let Expr::Path(path) = call.func.as_ref() {
            let named = |name: &str| path.path.segments.iter().any(|segment| segment.ident == name);
            if named("Range") || named("Error") {
                return;
            }
            if named("solve") {
                // The function to solve may hold coefficients; the numbers beside it are none.
                for argument in call.args.iter().filter(|argument| matches!(argument, Expr::Closure(_))) {
                    self.visit_expr(argument);
                }
                return;
            }
        }
        visit::visit_expr_call(self, call);
    }

    fn visit_expr_range(&mut self, _: &'ast syn::ExprRange) {}

    /// Comparisons are with limits and tolerances.
    fn visit_expr_binary(&mut self, binary: &'ast syn::ExprBinary) {
        use syn::BinOp::{Ge, Gt, Le, Lt};
        if !matches!(binary.op, Lt(_) | Le(_) | Gt(_) | Ge(_)) {
            visit::visit_expr_binary(self, binary);
        }
    }

    fn visit_local(&mut self, local: &'ast Local) {
        visit::visit_local(self, local);
    }

    fn visit_lit_float(&mut self, number: &'ast LitFloat) {
        let text = number.to_string();
        if !self.is_constant && is_structure(&text) {
            return;
        }
        self.count += 1;
        let bytes = number.span().byte_range();
        self.found.push(Coefficient {
            file: self.file.clone(),
            name: format!("{}, number {}", self.name, self.count),
            text,
            bytes,
        });
    }
}

/// Halves, small whole numbers, powers of ten.
fn is_structure(text: &str) -> bool {
    let text = text.replace('_', "");
    let digits: String = text.split(['e', 'E']).next().unwrap_or_default().replace('.', "");
    let is_power_of_ten = digits.trim_matches('0') == "1";
    let is_small_and_whole = text.len() == 3 && text.ends_with(".0");
    is_power_of_ten || is_small_and_whole || text == "0.5" || text == "0.0"
}

pub(super) fn is_test(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|attribute| attribute.path().is_ident("cfg"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_digit_changes() {
        let of = |text: &str| {
            Coefficient {
                file: String::new(),
                name: String::new(),
                text: text.to_owned(),
                bytes: 0..0,
            }
            .changed()
        };
        for (text, changed) in [
            ("0.116_705_214_527_67e4", "0.116_705_214_527_68e4"),
            ("-19.1".trim_start_matches('-'), "19.2"),
            ("6006.69", "6006.68"),
            ("40.0", "40.1"),
            ("1e5", "2e5"),
        ] {
            assert_eq!(of(text), changed);
        }
    }

    #[test]
    fn limits_and_tests_are_no_coefficients() {
        let text = "const A: [f64; 2] = [1.5, -2.0];
            const RANGE: Range = Range::new(\"t\", &deg_c, 0.0, 99.5);
            fn f(x: f64) -> f64 { if x < 12.5 { return 0.0; } solve::root(|y| y * 1.25, 3.75, 95.5, 1.5e-9) + 2.0 * x / 1e3 + 30.0 * 273.15 }
            #[cfg(test)] mod tests { const B: f64 = 7.5; }";
        let mut finder = Finder::default();
        finder.visit_file(&syn::parse_file(text).expect("a file"));
        let found: Vec<_> = finder.found.iter().map(|found| found.text.as_str()).collect();
        assert_eq!(found, ["1.5", "2.0", "1.25", "30.0", "273.15"]);
        assert!(
            finder
                .found
                .iter()
                .all(|found| text.get(found.bytes.clone()) == Some(&found.text))
        );
    }
}
