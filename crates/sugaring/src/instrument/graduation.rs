//! How finely, and how surely, a scale in °Brix is read.

use crate::{error::Error, relation::Range, units::table};

/// Step and standard uncertainty of a scale, °Bx.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Graduation {
    /// 0 where nobody said.
    pub(crate) resolution: f64,
    pub(crate) uncertainty: f64,
}

impl Graduation {
    pub(super) const fn known_to(uncertainty: f64) -> Self {
        Self {
            resolution: 0.0,
            uncertainty,
        }
    }

    pub(super) fn with_resolution(self, step: f64) -> Result<Self, Error> {
        let resolution = RESOLUTION.check(step)?;
        Ok(Self { resolution, ..self })
    }

    pub(super) fn with_uncertainty(self, uncertainty: f64) -> Result<Self, Error> {
        let uncertainty = UNCERTAINTY.check(uncertainty)?;
        Ok(Self { uncertainty, ..self })
    }

    /// Square of the standard uncertainty of a reading: a step's is step/√12 (JCGM 100, F.2.2.1).
    pub(super) fn squares(self) -> f64 {
        self.uncertainty * self.uncertainty + self.resolution * self.resolution / 12.0
    }
}

const RESOLUTION: Range = Range::new("resolution", &table::deg_brix, 0.0, 10.0);
const UNCERTAINTY: Range = Range::new("uncertainty", &table::deg_brix, 0.0, 10.0);
