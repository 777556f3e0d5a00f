use roots::{SimpleConvergency, find_root_brent};

/// kg/m³ of sucrose solution: the ICUMSA SPS-4 double polynomial.
pub fn density(brix: f64, celsius: f64) -> f64 {
    let t = celsius;
    let water = (999.83952
        + t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12)))))
        / (1.0 + 16.887236e-3 * t);
    let (w, u) = (brix / 100.0, (t - 20.0) / 100.0);
    let mut power = 1.0;
    let mut sum = water;
    for row in &DENSITY {
        sum += power * w * row.iter().rev().fold(0.0, |inner, b| inner * w + b);
        power *= u;
    }
    sum
}

const DENSITY: [&[f64]; 5] = [
    &[385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890],
    &[-46.2720, -7.1720, 1.1597, 5.1126, 17.5254],
    &[59.7712, 7.2491, 12.3630, -35.4791],
    &[-47.2207, -21.6977, 27.6301],
    &[18.3184, 12.3081],
];

/// °Bx of a density in kg/m³, by Brent's method.
pub fn brix_from_density(density: f64, celsius: f64) -> f64 {
    let mut settled = SimpleConvergency {
        eps: 1e-11,
        max_iter: 60,
    };
    find_root_brent(
        -1e-6,
        85.000001,
        |brix| self::density(brix, celsius) - density,
        &mut settled,
    )
    .expect("a bracketed root")
}

/// Pa of osmotic pressure: −R T ln `a_w` `ρ_w` / `M_w`, squeezed; water as the IAPWS has it at 1 bar.
pub fn osmotic_pressure(brix: f64, kelvin: f64) -> f64 {
    let (a, b) = (10.0 / (593.0 - kelvin), 10.0 / (kelvin - 232.0));
    let cold = b
        * (5.78545292e-3
            + b * (-1.53195665e-2
                + b * (3.11337859e-2 + b * (-4.23546241e-2 + b * (3.38713507e-2 - b * 1.19946761e-2)))));
    let hot = a.powi(4)
        * (6.74458446e3 + a * (-2.22521604e5 + a * a * (1.00231247e8 + a * (-1.63552118e9 + a * 8.32299658e9))));
    let water = 1e5 / 4615.1805 / (1.93763157e-2 + hot + cold);
    let ideal = -8.31446261815324 * kelvin * water / 0.018015268 * ln_activity(brix / 100.0, kelvin);
    ideal * (1.0 + 0.5 * 4.6e-10 * ideal)
}

/// K at which sucrose solution boils under `pascal`: ln `p_sat` + ln `a_w` = ln p, by Brent's method.
pub fn boiling_temperature(brix: f64, pascal: f64) -> f64 {
    let w = brix / 100.0;
    let goal = pascal.ln();
    let water = seuif97::px2t(pascal / 1e6, 0.0) + 273.15;
    let excess = |kelvin: f64| saturation_pressure(kelvin).ln() + ln_activity(w, kelvin) - goal;
    let mut settled = SimpleConvergency {
        eps: 1e-11,
        max_iter: 60,
    };
    find_root_brent(water - 1e-6, water + 40.0, excess, &mut settled).expect("a bracketed root")
}

/// Pa at which water of `kelvin` boils: IAPWS R7-97, equation 30.
pub fn saturation_pressure(kelvin: f64) -> f64 {
    let theta = kelvin - 0.23855557567849 / (kelvin - 650.17534844798);
    let a = (theta + 1167.0521452767) * theta - 724213.16703206;
    let b = (-17.073846940092 * theta + 12020.82470247) * theta - 3232555.0322333;
    let c = (14.91510861353 * theta - 4823.2657361591) * theta + 405113.40542057;
    (2.0 * c / (-b + (b * b - 4.0 * a * c).sqrt())).powi(4) * 1e6
}

/// Natural logarithm of the water activity, the model of `sugaring::sucrose`.
fn ln_activity(w: f64, kelvin: f64) -> f64 {
    let sugar = w / 0.3422965;
    let x = sugar / (sugar + (1.0 - w) / 0.018015268);
    let u = 298.15 / kelvin - 1.0;
    let v = (kelvin / 298.15).ln() + 298.15 / kelvin - 1.0;
    let a = -5.1469 + w * (1.8184 + w * (-19.1023 + w * 20.3519));
    let b = -16.2427 + 18.9561 * w;
    (-x).ln_1p() + x * x * (a + u * b + 24.4732 * v)
}
