//! Programs that show the library at work; each is a file beside this one.
