//! The usual cautions, as data; local codes and licensed trades come first.
