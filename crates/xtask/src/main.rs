//! Builds and checks of the workspace: `cargo xtask test` is all of them.

use std::process::ExitCode;

use clap::{Parser, Subcommand};

mod book;
mod chain;
mod command;
mod counts;
mod javascript;
mod judged;
mod machine;
mod mutate;
mod no_std;
mod python;
mod report;
mod schema;
mod surface;
mod test;
mod wasm_target;

/// Builds and checks of the workspace.
#[derive(Debug, Parser)]
#[command(name = "cargo xtask", bin_name = "cargo xtask")]
struct Arguments {
    #[command(subcommand)]
    task: Task,
}

#[derive(Debug, Subcommand)]
enum Task {
    /// Builds and runs everything that checks this repository; ends with `N passed, N failed`.
    Test {
        /// Only the core's unit tests and the judged tables: the inner loop.
        #[arg(long)]
        quick: bool,
    },
    /// Writes the JSON Schemas of inputs and plans from their types into `crates/sugaring/schema`.
    Schema,
    /// Writes what follows from the table of public functions: stubs, types, tables of the book, vectors.
    Surface,
    /// Draws the pictures of the book from the library's own output, then builds the book where mdbook is installed.
    Book,
    /// Changes the last digit of each coefficient in turn and says who sees it: some minutes. Writes the book's page.
    Mutate {
        /// Only places that contain this, such as `water/` or `density.rs B1`.
        only: Option<String>,
        /// Only those of which nothing is recorded.
        #[arg(long)]
        rest: bool,
        /// Tries none: writes the page from what is recorded.
        #[arg(long)]
        page: bool,
    },
    /// Builds the wheel, installs it and runs its tests: the inner loop of `bindings/python`.
    Python {
        /// Also types, stubs and source distribution, as `test` has them.
        #[arg(long)]
        all: bool,
    },
    /// Builds the npm package and runs its tests: the inner loop of `bindings/wasm`.
    Javascript {
        /// Also types, a new project and the page in Chromium, as `test` has them.
        #[arg(long)]
        all: bool,
    },
}

fn main() -> ExitCode {
    let well = match Arguments::parse().task {
        Task::Test { quick: true } => test::quick(),
        Task::Test { quick: false } => test::everything(),
        Task::Schema => schema::write(),
        Task::Mutate { page: true, .. } => mutate::run(|_, _| false),
        Task::Mutate { only, rest, .. } => {
            mutate::run(|place, is_known| !(rest && is_known) && only.as_ref().is_none_or(|part| place.contains(part)))
        }
        Task::Surface => surface::write(),
        Task::Book => book::build(),
        Task::Python { all: true } => test::face(python::all),
        Task::Python { all: false } => test::face(python::inner_loop),
        Task::Javascript { all: true } => test::face(javascript::all),
        Task::Javascript { all: false } => test::face(javascript::inner_loop),
    };
    if well { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
