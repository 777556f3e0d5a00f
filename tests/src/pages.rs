//! The pages of the book and the read-me, run as doc tests.

macro_rules! pages {
    ($($name:ident $file:literal;)+) => { $(
        #[doc = include_str!(concat!("../../", $file))]
        #[derive(Clone, Copy, Debug)]
        pub struct $name;
    )+ };
}

pages! {
    ReadMe "README.md";
    Developers "DEVELOPERS.md";
    BookLanguages "book/src/languages.md";
    BookDay "book/src/day.md";
    BookProperties "book/src/properties.md";
    BookUnits "book/src/units.md";
}
