//! How finely, and how surely, a scale is read.

/// Step and standard uncertainty of a scale, in its own marks.
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

    /// Square of the standard uncertainty of a reading: a step's is step/√12 (JCGM 100, F.2.2.1).
    pub(super) fn squares(self) -> f64 {
        self.uncertainty * self.uncertainty + self.resolution * self.resolution / 12.0
    }
}
