//! Steps that need one another: once one that the others need has failed, the rest are named as not run, and fail.

use std::process::Command;

use crate::report::Report;

/// What a step prepares, or why it cannot.
pub(crate) type Prepared<T> = Result<T, String>;

/// A row of steps on a report.
#[derive(Debug)]
pub(crate) struct Chain<'a> {
    pub(crate) report: &'a mut Report,
    face: &'static str,
    broken: Option<String>,
}

impl<'a> Chain<'a> {
    pub(crate) fn new(report: &'a mut Report, face: &'static str) -> Self {
        Self {
            report,
            face,
            broken: None,
        }
    }

    /// A command that what follows needs.
    pub(crate) fn need(&mut self, name: &str, command: impl FnOnce() -> Prepared<Command>) {
        if !self.run(name, command, Report::check) {
            self.broken.get_or_insert_with(|| name.to_owned());
        }
    }

    /// Work of our own that what follows needs.
    pub(crate) fn need_work(&mut self, name: &str, work: impl FnOnce() -> Prepared<()>) {
        if !self.work(name, work) {
            self.broken.get_or_insert_with(|| name.to_owned());
        }
    }

    /// A check that nothing else needs.
    pub(crate) fn check(&mut self, name: &str, command: impl FnOnce() -> Prepared<Command>) {
        self.run(name, command, Report::check);
    }

    /// Tests that are counted.
    pub(crate) fn tests(&mut self, name: &str, command: impl FnOnce() -> Prepared<Command>) {
        self.run(name, command, Report::tests);
    }

    /// Work of our own that nothing else needs.
    pub(crate) fn work(&mut self, name: &str, work: impl FnOnce() -> Prepared<()>) -> bool {
        let full = self.full(name);
        self.stands(&full) && self.report.work(&full, work)
    }

    /// A figure for the end, if what it is of was made.
    pub(crate) fn figure(&mut self, label: &str, figure: Prepared<String>) {
        if self.broken.is_some() {
            return;
        }
        match figure {
            Ok(figure) => self.report.figure(&self.full(label), figure),
            Err(reason) => self.report.fail(&self.full(label), &reason),
        }
    }

    fn run(
        &mut self,
        name: &str,
        command: impl FnOnce() -> Prepared<Command>,
        run: impl FnOnce(&mut Report, &str, &mut Command) -> bool,
    ) -> bool {
        let full = self.full(name);
        if !self.stands(&full) {
            return false;
        }
        match command() {
            Ok(mut command) => run(self.report, &full, &mut command),
            Err(reason) => {
                self.report.fail(&full, &reason);
                false
            }
        }
    }

    fn stands(&mut self, full: &str) -> bool {
        if let Some(broken) = &self.broken {
            self.report
                .fail(full, &format!("not run: it needs \"{broken}\", which failed"));
        }
        self.broken.is_none()
    }

    fn full(&self, name: &str) -> String {
        format!("{}: {name}", self.face)
    }
}
