//! Texts and data from outside: one small tree of keys, numbers, texts and quantities.
