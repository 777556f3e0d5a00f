//! What the plan says in words.

use crate::safety::StepKind;
use alloc::string::String;

/// A limit met, a caution or a notice.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Remark {
    /// How grave.
    pub level: Level,
    /// Which.
    pub key: &'static str,
    /// At which step.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub step: Option<StepKind>,
    /// In words.
    pub text: String,
}

/// How grave a remark is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Level {
    /// It ends a step, or cannot be met.
    Limit,
    /// Food, fire, people.
    Caution,
    /// Worth knowing.
    Notice,
}

/// What a number rests on.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct RestsOn {
    /// Path of the input.
    pub input: String,
    /// How it is known.
    pub how: How,
    /// In words.
    pub text: String,
}

/// How a number is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum How {
    /// A default stands in for what was not given.
    Assumed,
    /// The user's own measurement.
    Calibrated,
    /// Given.
    Given,
}
