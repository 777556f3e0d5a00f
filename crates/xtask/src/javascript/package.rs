//! The npm package, put together from what is written, generated and built.

use std::{
    fs,
    path::{Path, PathBuf},
    process::Command,
};

use super::node;
use crate::{
    chain::Prepared,
    command::{cargo, done, emptied, entries, kilobytes, program, read, said, target, top, without_folders, write},
    wasm_target,
};

/// One build of the package: the folder it lies in, and the features of its module.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Package {
    folder: &'static str,
    features: &'static str,
}

/// What is published.
pub(crate) const PUBLISHED: Package = Package {
    folder: "sugaring",
    features: "",
};
/// The same with a function that makes the core panic, for the test of what the caller then sees.
pub(crate) const WITH_FAULT: Package = Package {
    folder: "sugaring_with_fault",
    features: "fault",
};

/// Smaller by what the browsers of the last years can do anyway.
const SHRINK: &str = "-Oz --enable-bulk-memory --enable-nontrapping-float-to-int --enable-sign-ext \
                      --enable-mutable-globals --enable-reference-types --enable-multivalue";

impl Package {
    pub(crate) fn folder(self) -> PathBuf {
        target().join("npm").join(self.folder)
    }

    fn built(self) -> PathBuf {
        target().join("npm/built").join(self.folder)
    }

    /// The module as the compiler makes it.
    pub(crate) fn module(self) -> Prepared<Command> {
        let (mut build, _) = wasm_target::builder()?;
        build.args([
            "--profile",
            "wasm",
            "--package",
            "sugaring-wasm",
            "--features",
            self.features,
        ]);
        without_folders(&mut build);
        Ok(build)
    }

    /// Module and JavaScript beside it, in a folder of their own; the compiler's module is overwritten by the next
    /// build.
    pub(crate) fn glue(self) -> Prepared<Command> {
        let (_, folder) = wasm_target::builder()?;
        emptied(&self.built())?;
        let mut glue = cargo("run --quiet --locked --package sugaring-bindgen --");
        glue.arg(folder.join(wasm_target::TARGET).join("wasm/sugaring_wasm.wasm"))
            .arg(self.built());
        Ok(glue)
    }

    /// Whether size counts.
    pub(crate) fn is_published(self) -> bool {
        self.features.is_empty()
    }

    pub(crate) fn shrink(self) -> Command {
        let module = self.built().join("sugaring.wasm");
        let mut shrink = node::tool("wasm-opt", SHRINK);
        shrink.arg(&module).arg("-o").arg(&module);
        shrink
    }

    /// Puts all of it into one folder.
    pub(crate) fn assemble(self) -> Prepared<()> {
        let (folder, bindings) = (self.folder(), top().join("bindings/wasm"));
        emptied(&folder)?;
        for from in [bindings.join("js"), self.built()] {
            copy_all(&from, &folder)?;
        }
        schemas(&folder.join("schema"))?;
        for licence in ["LICENSE-APACHE", "LICENSE-MIT"] {
            copy(&top().join(licence), &folder.join(licence))?;
        }
        copy(&bindings.join("README.md"), &folder.join("README.md"))?;
        let module = fs::read(folder.join("sugaring.wasm")).map_err(|error| format!("sugaring.wasm: {error}"))?;
        write(&folder.join("inline.js"), inline(&module))?;
        let manifest = read(&bindings.join("package.json"))?;
        write(&folder.join("package.json"), versioned(&manifest)?)
    }

    /// The file that is published.
    pub(crate) fn tarball(self) -> PathBuf {
        target().join("npm").join(format!("{}-{}.tgz", self.folder, version()))
    }

    pub(crate) fn pack(self) -> Command {
        let mut pack = node::npm("pack --silent");
        pack.arg("--pack-destination")
            .arg(target().join("npm"))
            .current_dir(self.folder());
        pack
    }

    /// Bytes of `file` as they are and as a server sends them.
    pub(crate) fn sizes(self, file: &str) -> Prepared<String> {
        let path = self.folder().join(file);
        let raw = fs::metadata(&path).map_err(|error| format!("{file}: {error}"))?.len();
        let sent = said(program("sh", "-c").arg("gzip -9 -c \"$0\" | wc -c").arg(&path));
        let sent = sent
            .and_then(|text| text.trim().parse().ok())
            .ok_or("gzip does not answer")?;
        Ok(format!("{}, {} gzip", kilobytes(raw), kilobytes(sent)))
    }
}

/// A new project that has the packed package and nothing else, tried with one line.
pub(crate) fn project() -> Prepared<()> {
    let project = target().join("npm/project");
    emptied(&project)?;
    write(
        &project.join("package.json"),
        "{\"private\": true, \"type\": \"module\"}\n",
    )?;
    done(
        node::npm("install --offline --silent")
            .arg(PUBLISHED.tarball())
            .current_dir(&project),
    )?;
    let line =
        "import init, { catalogue } from \"sugaring\"; await init(); console.log(`numbers ${catalogue.numbers()}`);";
    done(
        program("node", "--input-type=module --eval")
            .arg(line)
            .current_dir(&project),
    )
}

/// The workspace's version, which is that of every face.
fn version() -> &'static str {
    env!("CARGO_PKG_VERSION")
}

/// The manifest with the version of Cargo; it has none of its own.
fn versioned(manifest: &str) -> Prepared<String> {
    if manifest.contains("\"version\"") {
        return Err(String::from(
            "bindings/wasm/package.json has a version: it comes from Cargo.toml",
        ));
    }
    let head = "\"name\": \"sugaring\",";
    let with = manifest.replacen(head, &format!("{head}\n  \"version\": \"{}\",", version()), 1);
    let well = with != manifest;
    well.then_some(with)
        .ok_or_else(|| format!("bindings/wasm/package.json has no {head}"))
}

/// The module inside a file of JavaScript: nothing to fetch.
fn inline(module: &[u8]) -> String {
    format!(
        "// The module sugaring.wasm as text.\nconst TEXT =\n  \"{}\";\n\n\
         export function bytes() {{\n  \
         const text = atob(TEXT);\n  \
         const bytes = new Uint8Array(text.length);\n  \
         for (let i = 0; i < text.length; i += 1) bytes[i] = text.charCodeAt(i);\n  \
         return bytes;\n}}\n",
        base64(module)
    )
}

fn base64(bytes: &[u8]) -> String {
    const DIGITS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let mut text = String::with_capacity(bytes.len() * 4 / 3 + 4);
    for three in bytes.chunks(3) {
        let at = |index: usize| three.get(index).copied().map_or(0, u32::from);
        let bits = at(0) << 16 | at(1) << 8 | at(2);
        for digit in 0..4 {
            let six = (bits >> (18 - 6 * digit)) & 63;
            let shown = DIGITS.get(six as usize).copied().map_or('=', char::from);
            text.push(if digit > three.len() { '=' } else { shown });
        }
    }
    text
}

/// The schemas as they are, and as modules for those that import them.
fn schemas(to: &Path) -> Prepared<()> {
    let from = top().join("crates/sugaring/schema");
    copy_all(&from, to)?;
    for path in entries(&from) {
        let place = to.join(path.file_name().unwrap_or_default()).with_extension("js");
        write(&place, format!("export default {};\n", read(&path)?.trim_end()))?;
    }
    Ok(())
}

fn copy_all(from: &Path, to: &Path) -> Prepared<()> {
    fs::create_dir_all(to).map_err(|error| format!("{}: {error}", to.display()))?;
    for path in entries(from) {
        let place = to.join(path.file_name().unwrap_or_default());
        if path.is_dir() {
            copy_all(&path, &place)?;
        } else {
            copy(&path, &place)?;
        }
    }
    Ok(())
}

fn copy(from: &Path, to: &Path) -> Prepared<()> {
    fs::copy(from, to)
        .map(drop)
        .map_err(|error| format!("{}: {error}", from.display()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bytes_as_text() {
        let texts = [
            ("", ""),
            ("f", "Zg=="),
            ("fo", "Zm8="),
            ("foo", "Zm9v"),
            ("foobar", "Zm9vYmFy"),
        ];
        for (bytes, text) in texts {
            assert_eq!(base64(bytes.as_bytes()), text);
        }
    }

    #[test]
    fn the_version_comes_from_cargo() {
        let text = versioned("{\n  \"name\": \"sugaring\",\n  \"type\": \"module\"\n}").unwrap_or_default();
        assert!(text.contains(&format!("\"sugaring\",\n  \"version\": \"{}\",\n", version())));
        assert!(versioned("{\"version\": \"1.0.0\"}").is_err());
    }
}
