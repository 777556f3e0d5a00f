//! What follows from the table of public functions: stubs, types, tables of the documentation, vectors.
//!
//! Each module makes the texts of its files from `sugaring::catalogue`; the program writes them, and a test
//! finds a file that is not as it would be written.

mod book;
mod check;
mod file;
mod javascript;
mod python;
mod shapes;
mod trust;
mod vectors;

pub use check::differences;
pub use file::File;

/// The rows behind `sucrose::on_scale` and `sucrose::brix_from_scale`, a module that nobody calls by name.
const SCALE: &str = "scale";

/// Every generated file.
pub fn files() -> Vec<File> {
    [
        book::files(),
        trust::files(),
        python::files(),
        javascript::files(),
        vectors::files(),
    ]
    .concat()
}

#[cfg(test)]
mod tests {
    /// Run `cargo xtask surface` and read the difference.
    #[test]
    fn what_is_committed_is_what_would_be_written() {
        let stale: Vec<_> = super::files()
            .into_iter()
            .filter(|file| !file.is_current())
            .map(|file| file.path)
            .collect();
        assert!(stale.is_empty(), "run `cargo xtask surface`: {stale:?}");
    }
}
