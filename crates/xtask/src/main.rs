//! Builds and checks of the workspace: `cargo xtask test`, `cargo xtask schema`.

use std::process::ExitCode;

use clap::{Parser, Subcommand};

mod command;
mod judged;
mod no_std;
mod report;
mod schema;
mod test;

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
}

fn main() -> ExitCode {
    let well = match Arguments::parse().task {
        Task::Test { quick: true } => test::quick(),
        Task::Test { quick: false } => test::everything(),
        Task::Schema => schema::write(),
    };
    if well { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
