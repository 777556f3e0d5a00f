/// Version of the shape of inputs and plans.
pub const SCHEMA_VERSION: u32 = 1;
/// Version of the results: under the same version and lock file the same inputs give the same bits.
pub const NUMBERS: &str = "0.1";
