use std::{
    fs, io,
    path::{Path, PathBuf},
};

/// A generated file.
#[derive(Clone, Debug)]
pub struct File {
    /// Its path from the top folder, with slashes.
    pub path: String,
    /// Its text.
    pub text: String,
}

impl File {
    /// The file of `path` with `text`.
    pub fn new(path: impl Into<String>, text: impl Into<String>) -> Self {
        Self {
            path: path.into(),
            text: text.into(),
        }
    }

    /// Whether it lies there as it would be written.
    pub fn is_current(&self) -> bool {
        fs::read_to_string(self.place()).is_ok_and(|text| text == self.text)
    }

    /// Writes it, if it differs.
    ///
    /// # Errors
    /// Those of the file system.
    pub fn write(&self) -> io::Result<()> {
        if self.is_current() {
            return Ok(());
        }
        let place = self.place();
        if let Some(folder) = place.parent() {
            fs::create_dir_all(folder)?;
        }
        fs::write(place, &self.text)
    }

    fn place(&self) -> PathBuf {
        top().join(&self.path)
    }
}

/// The top folder of the workspace.
pub(crate) fn top() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_path_buf()
}
