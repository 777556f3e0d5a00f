//! The JSON Schemas are made where the core is linked, by the member `sugaring-tests`; its tests find a drift.

use crate::command::cargo;

pub(crate) fn write() -> bool {
    let status = cargo("run --quiet --locked --package sugaring-tests --bin schema").status();
    status.is_ok_and(|s| s.success())
}
