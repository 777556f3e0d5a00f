//! The read-me, the guide and every page of the book, run as doc tests.

#![expect(missing_docs, reason = "a page is its own documentation")]

include!(concat!(env!("OUT_DIR"), "/pages.rs"));
