//! What the book shows of the lists: a page of all functions, and marked blocks in the pages that people write.

pub(crate) use files::files;

mod blocks;
mod card;
mod files;
mod functions;
mod lists;
