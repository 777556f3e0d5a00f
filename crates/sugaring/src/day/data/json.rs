//! Plans and inputs as JSON text.

use crate::{
    day::{inputs::DayInputs, plan::DayPlan},
    error::{Error, ErrorKind},
    form::Tree,
};
use alloc::string::{String, ToString};

impl DayInputs {
    /// The inputs as JSON on one line: units as given, bits that read back.
    ///
    /// # Errors
    /// Not finite, with its path: JSON knows no NaN.
    ///
    /// ```
    /// use sugaring::day::DayInputs;
    /// let text = r#"{"air":{"altitude":"410 m"},"sap":[{"volume":"40 gal","brix":2,"temperature":"38 °F"}],
    ///     "evaporator":{"pan":{"length":"2 ft","width":"4 ft"}},"target":{"brix":66.9}}"#;
    /// let json = DayInputs::from_json(text)?.to_json()?;
    /// assert!(json.contains(r#""volume":{"value":40,"unit":"gal"}"#));
    /// assert_eq!(DayInputs::from_json(&json)?.to_json()?, json);
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[cfg_attr(docsrs, doc(cfg(feature = "json")))]
    pub fn to_json(&self) -> Result<String, Error> {
        self.tree().to_json()
    }
}

impl DayPlan {
    /// The plan as JSON on one line.
    ///
    /// # Errors
    /// Not finite, with its path; no plan holds such a number.
    #[cfg_attr(docsrs, doc(cfg(feature = "json")))]
    pub fn to_json(&self) -> Result<String, Error> {
        self.tree()?.to_json()
    }

    /// The same with a line for each value.
    ///
    /// # Errors
    /// As [`DayPlan::to_json`].
    #[cfg_attr(docsrs, doc(cfg(feature = "json")))]
    pub fn to_json_pretty(&self) -> Result<String, Error> {
        self.tree()?.to_json_pretty()
    }

    /// Through the tree, so that a whole number is written without ".0", as in the inputs.
    fn tree(&self) -> Result<Tree, Error> {
        let text = serde_json::to_string(self).map_err(|error| {
            Error::new(ErrorKind::Unreadable, "plan", " cannot be written").with_hint(error.to_string())
        })?;
        Tree::from_json(&text)
    }
}
