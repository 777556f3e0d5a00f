use super::{blocks, functions};
use crate::File;

/// The page of the functions, and every page with blocks, as it is once they are filled.
pub(crate) fn files() -> Vec<File> {
    let mut files = vec![functions::file()];
    files.extend(blocks::filled());
    files
}
