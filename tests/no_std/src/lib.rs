//! Links the core for `wasm32-unknown-unknown` with a panic handler and an allocator of its own.
//!
//! Should any dependency bring std along, there are two panic handlers and the compiler stops with
//! E0152. On other targets this library is empty; `cargo xtask test` builds it for the right one.
#![cfg_attr(target_arch = "wasm32", no_std)]

#[cfg(target_arch = "wasm32")]
mod image;
