use alloc::{format, string::String, vec::Vec};

use super::{
    Container, Material, PackingRemark,
    bottles::{Bottle, Filled, bottled},
    fill::{REFERENCE, hot_fill_at},
};
use crate::{
    digits,
    error::Error,
    lot::Lot,
    relation::{Range, Relation, Source},
    units::{Mass, Si, Temperature, Value, Volume, table},
};

/// Syrup in containers.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Packing {
    /// The containers that are filled, the largest first.
    pub rows: Vec<PackedRow>,
    /// What is left over.
    pub rest: Rest,
    /// What to mind.
    pub remarks: Vec<PackingRemark>,
}

/// Containers of one kind.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct PackedRow {
    /// Which of the given containers.
    pub container: usize,
    /// What it is called.
    pub name: String,
    /// How many are filled.
    pub count: u32,
    /// How much to fill into one, hot.
    pub fill_volume: Volume,
    /// The same by the scale.
    pub fill_mass: Mass,
    /// What stays empty above the hot syrup; `None` without a brimful volume.
    pub headspace: Option<Volume>,
    /// Temperature that syrup and glass come to; `None` where mass or heat of the container is not known.
    pub settled: Option<Temperature>,
    /// Temperature that the glass needs first, where it settles too cold.
    pub glass_needed: Option<Temperature>,
    /// Or the temperature to fill at; `None` where that would be above 93 °C.
    pub fill_needed: Option<Temperature>,
}

/// Syrup that is left over.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Rest {
    /// Its volume at 20 °C.
    pub volume: Volume,
    /// Its mass.
    pub mass: Mass,
    /// Why it is left over.
    pub because: Because,
}

/// Why syrup is left over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Because {
    /// The smallest container would not be full.
    LessThanOneContainer,
    /// There are no more containers.
    StockUsedUp,
}

impl Because {
    /// The reason's name in data.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::LessThanOneContainer => "less_than_one_container",
            Self::StockUsedUp => "stock_used_up",
        }
    }
}

/// How a lot of syrup goes into containers: counts, fills, what is left over, and whether the glass is warm enough.
///
/// `n = ⌊left / V⌋`, the largest containers first;  the hot fill as [`hot_fill`](super::hot_fill);
/// `T = (m c T_fill + m_g c_g T_g) / (m c + m_g c_g)`
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | V | contents on the label, at 20 °C | mL | 10 to 250 000 |
/// | `T_fill` | temperature of filling | °C | 82 to 93 |
/// | m | syrup in one container, ρ(B, 20 °C) V | kg | |
/// | c | specific heat of the syrup, 5 K below the fill | J/(kg K) | |
/// | `m_g`, `c_g`, `T_g` | mass, specific heat (glass 840 J/(kg K)), temperature of the container | | |
/// | T | where both settle; below 82 °C the glass wants warming | °C | |
///
/// # Errors
/// Out of range or not finite; inconsistent where the hot fill does not go into a brimful container, whose glass is
/// grown by 25·10⁻⁶/K.
/// # Source
/// Common practice: 82 °C (180 °F) after filling, never above 93 °C (200 °F). Contents hold at 20 °C.
/// # Examples
/// ```
/// use sugaring::{finish::{self, Container, Material}, lot::Lot, units::*};
/// let syrup = Lot::of_mass(kg(7.902), brix(66.9)?, deg_c(99.0))?;
/// let glass = Container {
///     material: Some(Material::Glass),
///     mass: Some(gram(320.0)),
///     ..Container::new("500 mL glass", ml(500.0), 12)
/// };
/// let packing = finish::pack(&syrup, &[glass], deg_c(85.0))?;
/// assert_eq!(packing.rows[0].count, 11);
/// assert_eq!(
///     packing.remarks[0].to_string(),
///     "a 500 mL glass at 20 °C settles at 77.1 °C: warm it to 61 °C, or fill at 90.6 °C",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{finish::{self, Container}, lot::Lot, units::*};
/// # let syrup = Lot::of_mass(kg(7.902), brix(66.9)?, deg_c(99.0))?;
/// let tight = Container { brimful: Some(ml(510.0)), ..Container::new("500 mL glass", ml(500.0), 12) };
/// assert_eq!(
///     finish::pack(&syrup, &[tight], deg_c(85.0)).unwrap_err().to_string(),
///     "containers[0].brimful = 510 mL does not fit volume = 500 mL; at 85 °C the fill is 514.9 mL: take a larger container",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn pack(syrup: &Lot, containers: &[Container], fill_temperature: Temperature) -> Result<Packing, Error> {
    let brix = PACK.check(0, syrup.brix().get()).map_err(|e| e.within("syrup"))?;
    let kelvin = PACK.check(1, fill_temperature.si())?;
    let mut bottles = Vec::with_capacity(containers.len());
    for (index, container) in containers.iter().enumerate() {
        let bottle = checked(container, brix, kelvin).map_err(|e| e.within(&format!("containers[{index}]")))?;
        bottles.push(bottle);
    }
    let bottled = bottled(syrup.mass().si(), brix, kelvin, &bottles);
    let rows: Vec<PackedRow> = bottled
        .rows
        .iter()
        .filter_map(|row| containers.get(row.index).map(|container| packed(container, row)))
        .collect();
    let rest = Rest {
        volume: Volume::of_si(bottled.rest_volume),
        mass: Mass::of_si(bottled.rest_mass),
        because: bottled.because,
    };
    let remarks = PackingRemark::of(&rows, &rest, containers);
    Ok(Packing { rows, rest, remarks })
}

/// What [`pack`] covers.
pub static PACK: Relation = Relation {
    name: "finish::pack",
    inputs: &[
        Range::new("brix", &table::deg_brix, 50.0, 80.0),
        Range::new("fill_temperature", &table::deg_c, 82.0, 93.0),
        Range::new("volume", &table::ml, 10.0, 250_000.0),
        Range::new("brimful", &table::ml, 10.0, 300_000.0),
        Range::new("mass", &table::gram, 1.0, 100_000.0),
        Range::new("temperature", &table::deg_c, -30.0, 100.0),
    ],
    output: &table::each,
    source: Source::CommonPractice,
    accuracy: "volumes 0.12 % as the hot density; where glass settles 1 K",
};

fn checked(container: &Container, brix: f64, kelvin: f64) -> Result<Bottle, Error> {
    let optional = |index, si: Option<f64>| si.map(|si| PACK.check(index, si)).transpose();
    let label = PACK.check(2, container.volume.si())?;
    let brimful = optional(3, container.brimful.map(Value::si))?;
    let mass = optional(4, container.mass.map(Value::si))?;
    let temperature = PACK.check(5, container.temperature.si())?;
    let material = container.material;
    let bottle = Bottle {
        label,
        brimful,
        expansion: material.and_then(Material::expansion).unwrap_or(0.0),
        heat_capacity: mass.zip(material.and_then(Material::specific_heat)).map(|(m, c)| m * c),
        kelvin: temperature,
        stock: container.stock,
    };
    bottle.holds_the_fill(brix, kelvin)?;
    Ok(bottle)
}

impl Bottle {
    /// Refuses a container that the hot syrup would run over.
    pub(crate) fn holds_the_fill(&self, brix: f64, kelvin: f64) -> Result<(), Error> {
        let Some(brimful) = self.brimful else {
            return Ok(());
        };
        let fill = hot_fill_at(self.label, brix, kelvin);
        if brimful * (1.0 + self.expansion * (kelvin - REFERENCE)) >= fill {
            return Ok(());
        }
        let ml = |si| table::ml.show(table::ml.from_si(si));
        let hint = format!(
            "at {} the fill is {}: take a larger container",
            table::deg_c.show(table::deg_c.from_si(kelvin)),
            table::ml.with_symbol(&digits::significant(table::ml.from_si(fill), 4))
        );
        Err(Error::inconsistent("brimful", &ml(brimful), &format!("volume = {}", ml(self.label))).with_hint(hint))
    }
}

fn packed(container: &Container, row: &Filled) -> PackedRow {
    PackedRow {
        container: row.index,
        name: container.name.clone(),
        count: row.count,
        fill_volume: Volume::of_si(row.volume),
        fill_mass: Mass::of_si(row.mass),
        headspace: row.headspace.map(Volume::of_si),
        settled: row.settled.map(Temperature::of_si),
        glass_needed: row.container_needed.map(Temperature::of_si),
        fill_needed: row.fill_needed.map(Temperature::of_si),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{brix, deg_c, gram, kg, litre, ml};
    use proptest::prelude::*;

    fn syrup(litres: f64) -> Lot {
        Lot::of_volume(litre(litres), brix(66.9).unwrap(), deg_c(20.0)).unwrap()
    }

    fn glass(volume: f64, mass: f64, stock: u32) -> Container {
        Container {
            material: Some(Material::Glass),
            mass: Some(gram(mass)),
            ..Container::new(format!("{volume} mL glass"), ml(volume), stock)
        }
    }

    #[test]
    fn a_heavy_cold_glass_can_only_be_warmed() {
        let packing = pack(&syrup(1.0), &[glass(500.0, 600.0, 12)], deg_c(85.0)).unwrap();
        assert_eq!(packing.rows[0].fill_needed, None);
        assert_eq!(
            packing.remarks[0].to_string(),
            "a 500 mL glass at 20 °C settles at 71.6 °C: warm it to 71 °C"
        );
    }

    #[test]
    fn a_fill_above_93_degrees_is_not_proposed() {
        let needed = |mass| pack(&syrup(1.0), &[glass(500.0, mass, 12)], deg_c(85.0)).unwrap().rows[0].fill_needed;
        assert!((needed(409.3).unwrap().get::<deg_c>() - 92.996).abs() < 1e-3);
        assert_eq!(needed(409.6), None);
    }

    #[test]
    fn stock_used_up_is_said() {
        let containers = [glass(500.0, 320.0, 8), glass(250.0, 200.0, 2)];
        let packing = pack(&syrup(5.9497), &containers, deg_c(85.0)).unwrap();
        assert_eq!(packing.rest.because, Because::StockUsedUp);
        assert_eq!(
            packing.remarks.last().unwrap().to_string(),
            "the containers hold 4.5 L of 5.95 L: 1.45 L are left over"
        );
    }

    #[test]
    fn what_is_not_known_is_not_checked_and_said_so() {
        let plain = Container::new("can", litre(1.0), 3);
        let packing = pack(&syrup(2.5), &[plain], deg_c(85.0)).unwrap();
        assert_eq!(packing.rows[0].count, 2);
        assert_eq!(packing.rest.because, Because::LessThanOneContainer);
        let texts: Vec<String> = packing.remarks.iter().map(|remark| format!("{remark}")).collect();
        assert_eq!(
            texts,
            [
                "how far the can cools the syrup is not checked: its mass or the heat of its material is not known",
                "whether the can holds the hot fill is not checked: brimful is not given"
            ]
        );
    }

    #[test]
    fn an_even_division_leaves_nothing() {
        let packing = pack(&syrup(6.0), &[glass(500.0, 320.0, 12)], deg_c(85.0)).unwrap();
        assert_eq!(packing.rows[0].count, 12);
        assert!(packing.rest.mass.get::<kg>() < 1e-8);
        assert_eq!(packing.rest.because, Because::LessThanOneContainer);
    }

    #[test]
    fn no_containers_leave_it_all() {
        let packing = pack(&syrup(6.0), &[], deg_c(85.0)).unwrap();
        assert!((packing.rest.mass / syrup(6.0).mass()).get::<crate::units::fraction>() > 0.999);
    }

    proptest! {
        #[test]
        fn mass_is_conserved(
            litres in 0.01..500.0_f64,
            sizes in proptest::collection::vec((10.0..5000.0_f64, 0_u32..40), 0..5),
            hot in 82.0..93.0_f64,
        ) {
            let containers: Vec<Container> = sizes.iter().map(|(v, n)| glass(*v, 300.0, *n)).collect();
            let syrup = syrup(litres);
            let packing = pack(&syrup, &containers, deg_c(hot)).unwrap();
            let filled: f64 = packing.rows.iter().map(|r| f64::from(r.count) * r.fill_mass.get::<kg>()).sum();
            let rest = packing.rest.mass.get::<kg>();
            let all = syrup.mass().get::<kg>();
            prop_assert!(rest >= 0.0 && ((filled + rest) / all - 1.0).abs() < 1e-12);
            for row in &packing.rows {
                prop_assert!(row.count <= containers[row.container].stock);
                prop_assert!(row.fill_volume >= containers[row.container].volume);
            }
        }

        #[test]
        fn warmer_glass_settles_warmer(cold in -30.0..99.0_f64, step in 1e-3..1.0_f64, mass in 10.0..2000.0_f64) {
            let settled = |celsius| {
                let container = Container { temperature: deg_c(celsius), ..glass(500.0, mass, 1) };
                pack(&syrup(1.0), &[container], deg_c(85.0)).unwrap().rows[0].settled.unwrap()
            };
            prop_assert!(settled(cold + step) > settled(cold));
        }

        #[test]
        fn what_is_needed_is_enough(cold in -30.0..60.0_f64, mass in 200.0..1000.0_f64) {
            let container = |celsius| Container { temperature: deg_c(celsius), ..glass(500.0, mass, 1) };
            let row = |celsius, hot| pack(&syrup(1.0), &[container(celsius)], hot).unwrap().rows.remove(0);
            let first = row(cold, deg_c(85.0));
            if let Some(needed) = first.glass_needed {
                let warm = row(needed.get::<deg_c>(), deg_c(85.0));
                prop_assert!((warm.settled.unwrap().get::<deg_c>() - 82.0).abs() < 1e-9);
            }
            if let Some(needed) = first.fill_needed {
                // Hotter syrup also carries a little more heat per kelvin.
                let settled = row(cold, needed).settled.unwrap().get::<deg_c>();
                prop_assert!((82.0 - 1e-9..82.2).contains(&settled), "{settled}");
            }
        }

        #[test]
        fn any_number_is_taken(a in any::<f64>(), b in any::<f64>(), c in any::<f64>(), d in any::<f64>(), n in any::<u32>()) {
            let odd = Container {
                brimful: Some(ml(b)),
                material: Some(Material::Glass),
                mass: Some(gram(c)),
                temperature: deg_c(d),
                ..Container::new("odd", ml(a), n)
            };
            let _ = pack(&syrup(1.0), &[odd], deg_c(85.0));
            let _ = pack(&syrup(1.0), &[], deg_c(d));
        }
    }
}
