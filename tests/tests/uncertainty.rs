//! Quantiles against another build of the same algorithm; propagation, Monte Carlo and lines against worked examples.

use std::sync::OnceLock;

use sugaring::{
    Error,
    uncertainty::{
        Distribution, Line, Propagated, Sampled, Samples, Spread, line_fit, monte_carlo, normal_quantile, propagate,
        t_quantile,
    },
    units::{fraction, percent},
};
use sugaring_tests::judge;

#[test]
fn normal_quantiles() {
    let table = include_str!("../derived/normal_quantile.csv");
    judge("derived/normal_quantile.csv", table, |row| {
        normal_quantile(fraction(row.number("probability"))).map(Some)
    });
}

#[test]
fn thermometer_and_masses() {
    let table = include_str!("../published/thermometer_gum.csv");
    judge("published/thermometer_gum.csv", table, |row| {
        let line = line()?;
        let [[a, _], [_, b]] = line.covariance;
        Ok(Some(match (row.text("example"), row.text("quantity")) {
            ("GUM H.3", "intercept at t0=20 C") => line.intercept,
            ("GUM H.3", "u(intercept)") => a.sqrt(),
            ("GUM H.3", "u(slope)") => b.sqrt(),
            ("GUM H.3", "correlation") => line.correlation(),
            ("GUM H.3", "sum of squared residuals") => line.residual_deviation.powi(2) * line.degrees_of_freedom,
            ("JCGM 101 9.2.2", _) => sum(Distribution::Normal, 1.0)?.uncertainty,
            ("JCGM 101 9.2.3", _) => {
                let found = sum(Distribution::Rectangular, 1.0)?;
                0.5 * (found.high - found.low)
            }
            ("JCGM 101 9.2.4", _) => sum(Distribution::Rectangular, 10.0)?.uncertainty,
            ("JCGM 101 9.3", "delta_m first order") => mass_of_first_order()?.value,
            ("JCGM 101 9.3", "u first order") => mass_of_first_order()?.uncertainty,
            ("JCGM 101 9.3", "95 % high first order") => mass_of_first_order()?.interval(percent(95.0))?.1,
            ("JCGM 101 9.3", "u Monte Carlo") => mass().uncertainty,
            ("GUM H.1", "u_c") => length(false)?.uncertainty,
            ("GUM H.1", "effective degrees of freedom") => length(false)?.degrees_of_freedom.floor(),
            ("QUAM A1", "c(Cd)") => cadmium()?.value,
            // Of the volume as the source rounds it; of its three causes it is 0.8352, see below.
            ("QUAM A1", "u(c)") => cadmium_of_rounded()?.uncertainty,
            (example, quantity) => panic!("{example}, {quantity}: nobody judges it"),
        }))
    });
}

#[test]
fn components() {
    let table = include_str!("../published/gum_examples.csv");
    judge("published/gum_examples.csv", table, |row| {
        let part = |found: Propagated, name: &str| {
            let part = found.contributions.into_iter().find(|part| part.name == name);
            part.map(|part| part.uncertainty.abs())
        };
        Ok(match (row.text("example"), row.text("quantity")) {
            ("GUM H.1", "u first order") => Some(length(true)?.uncertainty),
            // First order is what is offered, and it says so.
            ("GUM H.1", "u with second-order terms") => None,
            ("GUM H.1", "component d alpha") => part(length(false)?, "d alpha"),
            ("GUM H.1", "component d theta") => part(length(false)?, "d theta"),
            ("GUM H.1", "component d1") => part(length(false)?, "d1"),
            ("GUM H.1", "component d2") => part(length(false)?, "d2"),
            ("QUAM A1", "component mass") => part(cadmium()?, "mass"),
            ("QUAM A1", "component temperature of flask") => part(cadmium()?, "temperature"),
            ("QUAM A1", "component repeatability of filling") => part(cadmium()?, "repeatability"),
            ("QUAM A1", "component purity") => part(cadmium()?, "purity"),
            (example, quantity) => panic!("{example}, {quantity}: nobody judges it"),
        })
    });
}

/// GUM H.3 at 30 °C, as printed: −0.1494(41); without the covariance it would be far larger.
#[test]
fn a_correction_at_30_degrees_needs_the_covariance() {
    let at = line().unwrap().at(30.0);
    assert_eq!(format!("{:.4}({:.0})", at.value, at.uncertainty * 1e4), "-0.1494(41)");
}

/// GUM H.1: expanded uncertainty of 99 %, 92.6 nm of the rounded components (seen in a public library).
#[test]
fn a_gauge_block_is_known_to_93_nanometres() {
    let found = length(true).unwrap();
    let expanded = found.coverage_factor(percent(99.0)).unwrap() * found.uncertainty;
    assert!((expanded - 92.6).abs() < 0.05, "{expanded}");
    assert!((found.value - 50_000_838.0).abs() < 0.5);
}

/// JCGM 101:2008, 9.3: near a turning point of the model first order misses most of the spread (from memory).
#[test]
fn first_order_is_28_percent_too_small_near_zero() {
    let (first, drawn) = (mass_of_first_order().unwrap(), mass());
    let short = 1.0 - first.uncertainty / drawn.uncertainty;
    assert!((short - 0.285).abs() < 0.005, "{short}");
    // Half of the last printed digit, and three of the 0.002 that either end scatters by at 10⁶ draws.
    for (end, printed) in [(drawn.shortest_low, 1.083), (drawn.shortest_high, 1.383)] {
        assert!((end - printed).abs() < 0.0005 + 0.006, "{end} for {printed}");
    }
}

/// `scipy.stats.t.ppf` of `SciPy` 1.17 (derived).
#[test]
fn students_quantiles() {
    for (p, freedom, t) in STUDENT {
        let found = t_quantile(fraction(p), freedom).unwrap();
        assert!((found / t - 1.0).abs() < 1e-12, "{p} {freedom}: {found} for {t}");
    }
}

fn line() -> Result<Line, Error> {
    let reading = [
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511,
    ];
    let correction = [
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160,
    ];
    line_fit(&reading, &correction, 20.0)
}

/// Four inputs of mean 0, the last of standard deviation `last`, 10⁶ draws.
fn sum(distribution: Distribution, last: f64) -> Result<Sampled, Error> {
    let inputs = [("a", 1.0), ("b", 1.0), ("c", 1.0), ("d", last)]
        .map(|(name, u)| Spread::new(name, 0.0, u).map(|spread| spread.with_distribution(distribution)));
    let inputs: Result<Vec<Spread>, Error> = inputs.into_iter().collect();
    monte_carlo(|x| x.iter().sum::<f64>(), &inputs?, 1, Samples::Count(1_000_000))
}

fn mass_inputs() -> Result<Vec<Spread>, Error> {
    let within = |name: &str, low: f64, high: f64| {
        let u = 0.5 * (high - low) / 3.0_f64.sqrt();
        Spread::new(name, 0.5 * (low + high), u).map(|spread| spread.with_distribution(Distribution::Rectangular))
    };
    Ok(vec![
        Spread::new("reference mass", 100_000.0, 0.050)?,
        Spread::new("balancing mass", 1.234, 0.020)?,
        within("air density", 1.10, 1.30)?,
        within("density of the weight", 7000.0, 9000.0)?,
        within("density of the reference", 7950.0, 8050.0)?,
    ])
}

fn mass_model(x: &[f64]) -> f64 {
    (x[0] + x[1]) * (1.0 + (x[2] - 1.2) * (1.0 / x[3] - 1.0 / x[4])) - 100_000.0
}

fn mass_of_first_order() -> Result<Propagated, Error> {
    propagate(mass_model, &mass_inputs()?)
}

fn mass() -> &'static Sampled {
    static MASS: OnceLock<Sampled> = OnceLock::new();
    MASS.get_or_init(|| {
        let inputs = mass_inputs().unwrap();
        monte_carlo(mass_model, &inputs, 1, Samples::Count(1_000_000)).unwrap()
    })
}

/// The gauge block, nm; of components as printed to two digits, or of the limits they come from.
fn length(rounded: bool) -> Result<Propagated, Error> {
    let third = |limit: f64, printed: f64| if rounded { printed } else { limit / 3.0_f64.sqrt() };
    let inputs = [
        Spread::new("standard", 50_000_623.0, 25.0)?.with_degrees_of_freedom(18.0)?,
        Spread::new("d", 215.0, 5.8)?.with_degrees_of_freedom(24.0)?,
        Spread::new("d1", 0.0, 3.9)?.with_degrees_of_freedom(5.0)?,
        Spread::new("d2", 0.0, 6.7)?.with_degrees_of_freedom(8.0)?,
        Spread::new("d alpha", 0.0, third(1e-6, 0.58e-6))?.with_degrees_of_freedom(50.0)?,
        Spread::new("theta", -0.1, 0.41)?,
        Spread::new("alpha", 11.5e-6, 1.2e-6)?,
        Spread::new("d theta", 0.0, third(0.05, 0.029))?.with_degrees_of_freedom(2.0)?,
    ];
    let model = |x: &[f64]| x[0] + x[1] + x[2] + x[3] - x[0] * (x[4] * x[5] + x[6] * x[7]);
    propagate(model, &inputs)
}

/// The calibration standard: 100.28 mg in 100 mL, whose volume has three causes.
fn cadmium() -> Result<Propagated, Error> {
    let inputs = [
        Spread::new("mass", 100.28, 0.05)?,
        Spread::new("purity", 0.9999, 0.0001 / 3.0_f64.sqrt())?,
        Spread::new("calibration", 100.0, 0.1 / 6.0_f64.sqrt())?,
        Spread::new("repeatability", 0.0, 0.02)?,
        Spread::new("temperature", 0.0, 100.0 * 2.1e-4 * 4.0 / 3.0_f64.sqrt())?,
    ];
    propagate(|x| 1000.0 * x[0] * x[1] / (x[2] + x[3] + x[4]), &inputs)
}

fn cadmium_of_rounded() -> Result<Propagated, Error> {
    let inputs = [
        Spread::new("mass", 100.28, 0.05)?,
        Spread::new("purity", 0.9999, 0.000_058)?,
        Spread::new("volume", 100.0, 0.07)?,
    ];
    propagate(|x| 1000.0 * x[0] * x[1] / x[2], &inputs)
}

/// Root sum of squares of the five components of the EURACHEM example.
#[test]
fn a_standard_is_known_to_the_sum_of_its_components() {
    assert!((cadmium().unwrap().uncertainty - 0.8352).abs() < 5e-5);
}

const STUDENT: [(f64, f64, f64); 150] = [
    (1e-10, 1.0, -3183098861.8379064),
    (0.001, 1.0, -318.30883898555044),
    (0.025, 1.0, -12.706204736174705),
    (0.2, 1.0, -1.3763819204711736),
    (0.3, 1.0, -0.7265425280053609),
    (0.45, 1.0, -0.15838444032453633),
    (0.6, 1.0, 0.32491969623290634),
    (0.9, 1.0, 3.0776835371752544),
    (0.975, 1.0, 12.706204736174694),
    (0.995, 1.0, 63.656741162871526),
    (1e-10, 1.5, -2422663.1011343943),
    (0.001, 1.5, -52.18443000899265),
    (0.025, 1.5, -6.016663104427933),
    (0.2, 1.5, -1.1533643782954688),
    (0.3, 1.5, -0.651795482602357),
    (0.45, 1.5, -0.1476266434609474),
    (0.6, 1.5, 0.30074539256979543),
    (0.9, 1.5, 2.1963984175655376),
    (0.975, 1.5, 6.016663104427929),
    (0.995, 1.5, 17.820310514462804),
    (1e-10, 2.0, -70710.67810804816),
    (0.001, 2.0, -22.327124770119873),
    (0.025, 2.0, -4.302652729749464),
    (0.2, 2.0, -1.060660171779821),
    (0.3, 2.0, -0.6172133998483678),
    (0.45, 2.0, -0.14213381090374025),
    (0.6, 2.0, 0.2886751345948128),
    (0.9, 2.0, 1.8856180831641272),
    (0.975, 2.0, 4.302652729749462),
    (0.995, 2.0, 9.924843200918287),
    (1e-10, 3.0, -2225.769284683093),
    (0.001, 3.0, -10.214531852407385),
    (0.025, 3.0, -3.1824463052837086),
    (0.2, 3.0, -0.9784723123633038),
    (0.3, 3.0, -0.5843897274398188),
    (0.45, 3.0, -0.1365981993536989),
    (0.6, 3.0, 0.2766706623326898),
    (0.9, 3.0, 1.637744353696209),
    (0.975, 3.0, 3.1824463052837078),
    (0.995, 3.0, 5.840909309733355),
    (1e-10, 5.0, -156.82559270889433),
    (0.001, 5.0, -5.893429531356009),
    (0.025, 5.0, -2.5705818356363155),
    (0.2, 5.0, -0.9195437802408267),
    (0.3, 5.0, -0.5594296444693604),
    (0.45, 5.0, -0.1321751752316873),
    (0.6, 5.0, 0.2671808657041451),
    (0.9, 5.0, 1.4758840488244815),
    (0.975, 5.0, 2.5705818356363146),
    (0.995, 5.0, 4.032142983555228),
    (1e-10, 10.0, -25.466008021697725),
    (0.001, 10.0, -4.143700494046589),
    (0.025, 10.0, -2.2281388519862753),
    (0.2, 10.0, -0.8790578285505889),
    (0.3, 10.0, -0.5415280387550154),
    (0.45, 10.0, -0.1288901892932738),
    (0.6, 10.0, 0.2601848294920803),
    (0.9, 10.0, 1.372183641110336),
    (0.975, 10.0, 2.228138851986274),
    (0.995, 10.0, 3.16927267261695),
    (1e-10, 16.0, -14.0639751757549),
    (0.001, 16.0, -3.6861547926860134),
    (0.025, 16.0, -2.1199052992212546),
    (0.2, 16.0, -0.8646670017982919),
    (0.3, 16.0, -0.535010452901308),
    (0.45, 16.0, -0.127671256688462),
    (0.6, 16.0, 0.25759919485514193),
    (0.9, 16.0, 1.3367571673273153),
    (0.975, 16.0, 2.1199052992212546),
    (0.995, 16.0, 2.9207816224251),
    (1e-10, 25.6, -10.10839210177782),
    (0.001, 25.6, -3.440917621453154),
    (0.025, 25.6, -2.0570937309039485),
    (0.2, 25.6, -0.8558881664026984),
    (0.3, 25.6, -0.5309939896915473),
    (0.45, 25.6, -0.12691409561327555),
    (0.6, 25.6, 0.2559957443279635),
    (0.9, 25.6, 1.3155079347390166),
    (0.975, 25.6, 2.0570937309039476),
    (0.995, 25.6, 2.7821154363016474),
    (1e-10, 50.0, -7.948243747646223),
    (0.001, 50.0, -3.2614090557983184),
    (0.025, 50.0, -2.008559112100761),
    (0.2, 50.0, -0.8488692445086644),
    (0.3, 50.0, -0.5277604527065978),
    (0.45, 50.0, -0.12630123999765916),
    (0.6, 50.0, 0.254699342988588),
    (0.9, 50.0, 1.2987136941948096),
    (0.975, 50.0, 2.008559112100761),
    (0.995, 50.0, 2.677793270940844),
    (1e-10, 120.0, -6.953862245486067),
    (0.001, 120.0, -3.15953874331711),
    (0.025, 120.0, -1.9799304050824411),
    (0.2, 120.0, -0.8446268377431313),
    (0.3, 120.0, -0.5257963906071055),
    (0.45, 120.0, -0.12592756825220935),
    (0.6, 120.0, 0.25390952321492877),
    (0.9, 120.0, 1.288646233656378),
    (0.975, 120.0, 1.9799304050824402),
    (0.995, 120.0, 2.6174211451068654),
    (1e-10, 1000.0, -6.427876283134213),
    (0.001, 1000.0, -3.0984021639129233),
    (0.025, 1000.0, -1.9623390808264085),
    (0.2, 1000.0, -0.8419808221624284),
    (0.3, 1000.0, -0.524567707309227),
    (0.45, 1000.0, -0.1256932625187162),
    (0.6, 1000.0, 0.25341451583949876),
    (0.9, 1000.0, 1.2823987214609247),
    (0.975, 1000.0, 1.9623390808264083),
    (0.995, 1000.0, 2.580754698065951),
    (1e-10, 12345.0, -6.366686657997505),
    (0.001, 12345.0, -3.0908926321648442),
    (0.025, 12345.0, -1.960156167600567),
    (0.2, 12345.0, -0.8416503508578577),
    (0.3, 12345.0, -0.5244140530537055),
    (0.45, 12345.0, -0.12566393184933783),
    (0.6, 12345.0, 0.2533525630707043),
    (0.9, 12345.0, 1.281620146428643),
    (0.975, 12345.0, 1.9601561676005668),
    (0.995, 12345.0, 2.576227623786519),
    (1e-10, 99000.0, -6.362007082233635),
    (0.001, 99000.0, -3.0903146327125772),
    (0.025, 99000.0, -1.959987947163697),
    (0.2, 99000.0, -0.8416248643043647),
    (0.3, 99000.0, -0.5244022011176851),
    (0.45, 99000.0, -0.12566166919297525),
    (0.6, 99000.0, 0.2533477839654878),
    (0.9, 99000.0, 1.2815601169641333),
    (0.975, 99000.0, 1.9599879471636965),
    (0.995, 99000.0, 2.575878966547283),
    (1e-10, 101000.0, -6.361993889393862),
    (0.001, 101000.0, -3.0903130024449674),
    (0.025, 101000.0, -1.9599874726507083),
    (0.2, 101000.0, -0.8416247924083998),
    (0.3, 101000.0, -0.5244021676837468),
    (0.45, 101000.0, -0.12566166281003807),
    (0.6, 101000.0, 0.2533477704836906),
    (0.9, 101000.0, 1.281559947627962),
    (0.975, 101000.0, 1.959987472650708),
    (0.995, 101000.0, 2.5758779831040752),
    (1e-10, 1000000.0, -6.361406848876743),
    (0.001, 1000000.0, -3.09024045631652),
    (0.025, 1000000.0, -1.9599663568141072),
    (0.2, 1000000.0, -0.8416215930139841),
    (0.3, 1000000.0, -0.5244006798602092),
    (0.45, 1000000.0, -0.1256613787664875),
    (0.6, 1000000.0, 0.25334717053784184),
    (0.9, 1000000.0, 1.281552412129939),
    (0.975, 1000000.0, 1.959966356814107),
    (0.995, 1000000.0, 2.5758342201053344),
];
