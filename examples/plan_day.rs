//! Plans a day: the demo day of Far Orchard, or the JSON file that is named.

use std::{fs, path::PathBuf, process::ExitCode};

use clap::Parser;
use sugaring::{
    Error,
    day::{self, DayInputs, DayPlan, System},
};

const FAR_ORCHARD: &str = include_str!("far_orchard.json");

/// Plans a day of sugaring, from sap to bottles.
#[derive(Parser)]
struct Arguments {
    /// Inputs as JSON; without it the demo day of Far Orchard is planned.
    file: Option<PathBuf>,
    /// Print the plan as JSON instead of the page.
    #[arg(long)]
    json: bool,
    /// Units of the page, whatever the inputs were in.
    #[arg(long, value_parser = ["us", "metric"])]
    system: Option<String>,
    /// Number of draws behind the ranges; 0 leaves them out.
    #[arg(long)]
    samples: Option<u32>,
}

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    let text = match &arguments.file {
        None => FAR_ORCHARD.to_owned(),
        Some(path) => match fs::read_to_string(path) {
            Ok(text) => text,
            Err(error) => return refuse(&format!("{}: {error}", path.display())),
        },
    };
    match plan(&text, arguments.samples) {
        Ok(plan) => show(&plan, &arguments),
        Err(error) => refuse(&error.to_string()),
    }
}

fn plan(text: &str, samples: Option<u32>) -> Result<DayPlan, Error> {
    let mut inputs = DayInputs::from_json(text)?;
    if samples.is_some() {
        inputs.samples = samples;
    }
    day::plan(&inputs)
}

fn show(plan: &DayPlan, arguments: &Arguments) -> ExitCode {
    if arguments.json {
        match plan.to_json_pretty() {
            Ok(text) => println!("{text}"),
            Err(error) => return refuse(&error.to_string()),
        }
    } else {
        let system = match arguments.system.as_deref() {
            Some("us") => System::Us,
            Some(_) => System::Metric,
            None => System::AsGiven,
        };
        print!("{}", plan.page(system));
    }
    ExitCode::SUCCESS
}

fn refuse(error: &str) -> ExitCode {
    eprintln!("{error}");
    ExitCode::from(2)
}
