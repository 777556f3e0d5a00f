//! What follows from the table of public functions is made where the core is linked, by the member
//! `sugaring-surface`; its tests find a drift.

use crate::command::{cargo, done};

pub(crate) fn write() -> bool {
    done(&mut cargo("run --quiet --locked --package sugaring-surface")).is_ok()
}
