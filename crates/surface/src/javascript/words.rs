//! The unit words, as code and as types.

use sugaring::catalogue;

use super::{comment, data::dimensions, file, quoted};
use crate::File;

pub(super) fn script() -> File {
    let mut text = String::from("\nimport { word } from \"./quantity.js\";\n\n");
    for (index, unit) in catalogue::units().iter().enumerate() {
        text += &format!("export const {} = word({index});\n", unit.word);
    }
    file("words.js", &text)
}

pub(super) fn types() -> File {
    let mut text = String::from("\nimport type { Word } from \"./quantity.js\";\n\n");
    text += "/** The symbols of each dimension. */\nexport interface Symbols {\n";
    for dimension in dimensions() {
        let units = catalogue::units().iter().filter(|unit| unit.dimension == dimension);
        let symbols: Vec<_> = units.map(|unit| quoted(unit.symbol)).collect();
        text += &format!("  {}: {};\n", dimension.name(), symbols.join(" | "));
    }
    text += "}\n\n/** Everything that a unit measures. */\nexport type Dimension = keyof Symbols;\n";
    for unit in catalogue::units() {
        let symbol = if unit.symbol.is_empty() {
            "a bare number"
        } else {
            unit.symbol
        };
        text += "\n";
        text += &comment("", &[format!("{symbol}: {}.", unit.definition)]);
        text += &format!(
            "export declare const {}: Word<{}>;\n",
            unit.word,
            quoted(unit.dimension.name())
        );
    }
    file("words.d.ts", &text)
}
