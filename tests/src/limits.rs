use sugaring::{Error, ErrorKind, Relation, units::table};

/// Holds a public function to the limits its relation declares for input `index`.
///
/// `call` gets that input in SI, all others being inside. A limit and four units in the last place about it are
/// accepted, also as the limit comes out of °F; a little beyond is out of range; NaN and the infinities are not finite.
pub fn limits<T>(relation: &Relation, index: usize, call: impl Fn(f64) -> Result<T, Error>) {
    let range = &relation.inputs[index];
    let refused = |si, kind| call(si).is_err_and(|error| error.kind() == kind && error.argument() == range.argument);
    let place = format!("{} {}", relation.name, range.argument);
    for (limit, outwards) in [(range.low, -1.0), (range.high, 1.0)] {
        let si = range.unit.to_si(limit);
        for steps in 0..=4 {
            assert!(
                call(beside(si, steps, true)).is_ok(),
                "{place}: {limit} and {steps} ulp above"
            );
            assert!(
                call(beside(si, steps, false)).is_ok(),
                "{place}: {limit} and {steps} ulp below"
            );
        }
        if *range.unit == table::deg_c {
            let typed = limit * 1.8 + 32.0;
            assert!(
                call(table::deg_f.to_si(typed)).is_ok(),
                "{place}: {limit} °C as {typed} °F"
            );
        }
        let beyond = range.unit.to_si(limit + outwards * 1e-6 * (range.high - range.low));
        // °Brix has limits of its own, which the type keeps.
        if beyond >= 0.0 || *range.unit != table::deg_brix {
            assert!(refused(beyond, ErrorKind::OutOfRange), "{place}: beyond {limit}");
        }
    }
    for odd in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert!(refused(odd, ErrorKind::NotFinite), "{place}: {odd}");
    }
}

/// The number `steps` units in the last place above or below.
fn beside(si: f64, steps: u64, above: bool) -> f64 {
    if si == 0.0 {
        return 0.0;
    }
    let bits = si.to_bits();
    f64::from_bits(if above == (si > 0.0) {
        bits + steps
    } else {
        bits - steps
    })
}
