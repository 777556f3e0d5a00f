//! `sugaring-bindgen MODULE FOLDER`: writes `sugaring.wasm` and `glue.js` for a built module into a folder.
//!
//! A program of its own, so that its many dependencies are compiled only where the package for JavaScript is built.
#![forbid(unsafe_code)]

use core::error::Error;
use std::{env, fs, path::Path};

use wasm_bindgen_cli_support::Bindgen;

fn main() -> Result<(), Box<dyn Error>> {
    let arguments = env::args().skip(1).collect::<Vec<_>>();
    let [module, folder] = arguments.as_slice() else {
        return Err("give the built module and the folder to write to".into());
    };
    let folder = Path::new(folder);
    fs::create_dir_all(folder)?;
    Bindgen::new()
        .input_path(module)
        .out_name("glue")
        .web(true)?
        .typescript(false)
        .omit_default_module_path(true)
        // After a trap the facade drops the instance and makes a new one.
        .reset_state_function(true)
        .remove_name_section(true)
        .remove_producers_section(true)
        .generate(folder)?;
    fs::rename(folder.join("glue_bg.wasm"), folder.join("sugaring.wasm"))?;
    Ok(())
}
