/// An axis: its title with the unit, its limits and where it is marked.
pub(crate) struct Axis {
    pub(crate) title: &'static str,
    pub(crate) unit: &'static str,
    pub(crate) low: f64,
    pub(crate) high: f64,
    pub(crate) marks: Vec<f64>,
    pub(crate) logarithmic: bool,
    decimals: usize,
}

impl Axis {
    /// From `low` to `high`, marked each `step`.
    pub(crate) fn new(title: &'static str, unit: &'static str, low: f64, high: f64, step: f64) -> Self {
        let first = (low / step - 1e-9).ceil() as i64;
        let last = (high / step + 1e-9).floor() as i64;
        Self {
            title,
            unit,
            low,
            high,
            marks: (first..=last).map(|n| n as f64 * step).collect(),
            logarithmic: false,
            decimals: decimals(step),
        }
    }

    /// A logarithmic one, marked at `marks`.
    pub(crate) fn logarithmic(title: &'static str, unit: &'static str, low: f64, high: f64, marks: &[f64]) -> Self {
        Self {
            title,
            unit,
            low,
            high,
            marks: marks.to_vec(),
            logarithmic: true,
            decimals: 0,
        }
    }

    /// One about zero that holds `size` on both sides.
    pub(crate) fn about_zero(unit: &'static str, size: f64) -> Self {
        let size = 1.12 * size;
        let rough = size / 2.0;
        let decade = 10_f64.powi(rough.log10().floor() as i32);
        let step = [1.0, 2.0, 5.0, 10.0].map(|n| n * decade);
        let step = step
            .into_iter()
            .find(|step| size / step < 2.99)
            .unwrap_or(decade * 10.0);
        Self::new("Table minus relation", unit, -size, size, step)
    }

    /// Where `value` stands, on a linear scale.
    pub(crate) fn place(&self, value: f64) -> f64 {
        if self.logarithmic { value.log10() } else { value }
    }

    pub(crate) fn heading(&self) -> String {
        if self.unit.is_empty() {
            String::from(self.title)
        } else {
            format!("{}, {}", self.title, self.unit)
        }
    }

    /// The text at the mark of this place.
    pub(crate) fn text(&self, place: f64) -> String {
        if self.logarithmic {
            let value = 10_f64.powf(place);
            let decimals = if value < 0.999 {
                (-value.log10() + 0.999).floor() as usize
            } else {
                0
            };
            return grouped(&format!("{value:.decimals$}"));
        }
        let text = format!("{place:.*}", self.decimals);
        let zero = text.trim_start_matches('-').chars().all(|c| matches!(c, '0' | '.'));
        grouped(if zero { text.trim_start_matches('-') } else { &text })
    }
}

/// With a thin space between thousands and a true minus.
pub(crate) fn grouped(text: &str) -> String {
    let (sign, digits) = text.strip_prefix('-').map_or(("", text), |digits| ("−", digits));
    let (whole, rest) = digits.find('.').map_or((digits, ""), |at| digits.split_at(at));
    let mut shown = String::from(sign);
    for (at, digit) in whole.chars().enumerate() {
        if at > 0 && whole.len() > 4 && (whole.len() - at) % 3 == 0 {
            shown.push('\u{202f}');
        }
        shown.push(digit);
    }
    shown + rest
}

fn decimals(step: f64) -> usize {
    (0..9)
        .find(|&n| (step * 10_f64.powi(n) - (step * 10_f64.powi(n)).round()).abs() < 1e-6)
        .unwrap_or(9) as usize
}
