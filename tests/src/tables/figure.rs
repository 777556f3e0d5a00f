use sugaring::{
    Relation,
    units::{Unit, table},
};

/// What a row judges.
#[derive(Clone, Copy, Debug)]
pub struct Subject {
    /// Path of the relation.
    pub name: &'static str,
    /// What is judged, where it is not the relation's result but something that follows from it.
    pub part: Option<&'static str>,
    /// How well it is stated to hold.
    pub accuracy: &'static str,
    /// Unit of the result; a part stays in the unit of its rows.
    pub output: Option<&'static Unit>,
    /// Whether the rows say by how many kelvins the result lies below 0 °C.
    pub(super) is_depression: bool,
}

impl Subject {
    /// The relation's result.
    pub fn of(relation: &'static Relation) -> Self {
        Self {
            name: relation.name,
            part: None,
            accuracy: relation.accuracy,
            output: Some(relation.output),
            is_depression: false,
        }
    }
}

/// Our figure for a row, in the row's unit, and what it judges.
#[derive(Clone, Copy, Debug)]
pub enum Figure {
    /// A figure.
    Of(Subject, f64),
    /// None, and why.
    NotOffered(&'static str),
}

impl Figure {
    pub(crate) fn value(self) -> Option<f64> {
        match self {
            Self::Of(_, value) => Some(value),
            Self::NotOffered(_) => None,
        }
    }
}

/// A figure that is the result of `relation`.
pub fn of(relation: &'static Relation, value: f64) -> Figure {
    Figure::Of(Subject::of(relation), value)
}

/// A figure that says how far the result of `relation` lies below 0 °C.
pub fn depression_of(relation: &'static Relation, value: f64) -> Figure {
    let subject = Subject {
        is_depression: true,
        ..Subject::of(relation)
    };
    Figure::Of(subject, value)
}

/// A figure that follows from `relation`: `part` says what.
pub fn part_of(relation: &'static Relation, part: &'static str, value: f64) -> Figure {
    let subject = Subject {
        part: Some(part),
        output: None,
        ..Subject::of(relation)
    };
    Figure::Of(subject, value)
}

/// The unit that a table spells so, and how many of it one of the table's is.
pub(super) fn unit(word: &str) -> Option<(&'static Unit, f64)> {
    let unit = match word {
        "1" => &table::fraction,
        "K" => &table::kelvin,
        "degC" => &table::deg_c,
        "Pa" => &table::pa,
        "kPa" => &table::kpa,
        "atm" => &table::atm,
        "kg/m3" => &table::kg_per_m3,
        "lb_per_us_gal_in_air" | "lb_sucrose_per_us_gal" => &table::lb_per_gal,
        "g/L" => &table::gram_per_litre,
        "m" => &table::metre,
        "J/kg" => &table::joule_per_kg,
        "kJ/kg" => &table::kj_per_kg,
        "J/(kg K)" => &table::joule_per_kg_k,
        "kJ/(kg K)" => &table::kj_per_kg_k,
        "W/(m K)" => &table::w_per_m_k,
        "Pa s" => &table::pascal_s,
        "mPa s" => &table::mpa_s,
        "uPa s" => return Some((&table::mpa_s, 1e-3)),
        "brix_pct" | "brix_pct_reading" | "delta_brix_pct" => &table::deg_brix,
        // By relative density 20/20, as every table that prints pairs has it.
        "baume_145" | "degBe" => &table::baume_20_20,
        "apparent_relative_density_20_20" => &table::apparent_relative_density_20_20,
        "pct_of_hot_volume" => &table::percent,
        _ => return None,
    };
    Some((unit, 1.0))
}
