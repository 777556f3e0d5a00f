//! Unit mistakes that must not compile, with what the compiler says of them.
//!
//! The `.stderr` files are those of the pinned toolchain; `TRYBUILD=overwrite` writes them anew.

#[test]
fn unit_mistakes_do_not_compile() {
    trybuild::TestCases::new().compile_fail("cases/*.rs");
}
