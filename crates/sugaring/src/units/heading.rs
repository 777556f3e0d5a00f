//! Headings of columns, such as "temp [°F]".

use super::{Unit, refusal};
use crate::error::Error;

/// Name and unit of a column's heading, `"temp [°F]"`: the unit stands in brackets at its end, by symbol, word or alias.
/// A heading without brackets names no unit.
///
/// # Errors
/// Unknown unit, with the nearest spelling; unreadable where the brackets hold nothing.
///
/// # Examples
/// ```
/// use sugaring::units::{self, table};
/// assert_eq!(units::heading("temp [°F]")?, ("temp", Some(&table::deg_f)));
/// assert_eq!(units::heading("brix")?, ("brix", None));
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// use sugaring::units;
/// let error = units::heading("sap [gall]").unwrap_err();
/// assert_eq!(error.to_string(), "sap has the unknown unit \"gall\"; nearest: gal (US gallon), imp gal");
/// ```
pub fn heading(text: &str) -> Result<(&str, Option<&'static Unit>), Error> {
    let text = text.trim();
    let Some((name, unit)) = text.strip_suffix(']').and_then(|head| head.rsplit_once('[')) else {
        return Ok((text, None));
    };
    let name = name.trim_end();
    match Unit::named(unit) {
        Some(found) => Ok((name, Some(found))),
        None => Err(refusal::no_unit_in_heading(text, name, unit)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::table;
    use proptest::prelude::*;

    #[test]
    fn headings_are_read_as_people_write_them() {
        for (text, name, unit) in [
            ("sap_volume [L]", "sap_volume", Some(&table::litre)),
            ("  rig pressure[psig] ", "rig pressure", Some(&table::psi_gauge)),
            ("T [ºF]", "T", Some(&table::deg_f)),
            ("mark [°Bé 20/20]", "mark", Some(&table::baume_20_20)),
            ("[L]", "", Some(&table::litre)),
            ("run [1] [min]", "run [1]", Some(&table::minutes)),
            ("moisture [%]", "moisture", Some(&table::percent)),
            ("note", "note", None),
            ("a ] b", "a ] b", None),
            ("", "", None),
        ] {
            assert_eq!(heading(text), Ok((name, unit)), "{text}");
        }
    }

    #[test]
    fn what_is_no_unit_is_refused() {
        let said = |text| heading(text).unwrap_err().to_string();
        assert_eq!(
            said("temp []"),
            "heading = \"temp []\" cannot be read; write the unit in the brackets, or leave them out"
        );
        assert!(
            said("temp [F]").starts_with("temp has the unknown unit \"F\""),
            "{}",
            said("temp [F]")
        );
        assert!(said("run [1]").starts_with("run has the unknown unit \"1\""));
    }

    proptest! {
        #[test]
        fn any_text_is_taken(text in ".*") {
            let _ = heading(&text);
        }

        #[test]
        fn every_spelling_is_found(index in 0..table::ALL.len()) {
            let unit = table::ALL[index];
            for spelling in unit.spellings().filter(|spelling| !spelling.is_empty()) {
                let text = alloc::format!("x [{spelling}]");
                prop_assert_eq!(heading(&text), Ok(("x", Some(unit))));
            }
        }
    }
}
