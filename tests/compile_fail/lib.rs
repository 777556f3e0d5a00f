//! The cases are in `cases/`.
