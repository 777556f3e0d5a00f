//! The vectors by which every language is judged.

use crate::File;

pub(crate) fn files() -> Vec<File> {
    Vec::new()
}
