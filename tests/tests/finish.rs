//! Where syrup is done, hot fills and the bottles of the worked day.

use sugaring::{
    Error,
    air::StationPressure,
    finish::{self, Container, Material, finishing_point, hot_fill, pack},
    instrument::Hydrometer,
    lot::{Lot, blend, blend_to},
    sucrose,
    units::*,
};
use sugaring_tests::{Row, judge, limits};

const EQUIVALENTS: &str = include_str!("../published/finish_equivalents.csv");
const GLASS: &str = include_str!("../derived/finish_glass.csv");
const HOT_VOLUME: &str = include_str!("../derived/pack_hot_volume_ratio.csv");
const MEND: &str = include_str!("../derived/finish_mend.csv");
const ORCHARD: &str = include_str!("../derived/day_far_orchard.csv");
const RATIO: &str = include_str!("../published/evaporator_ratio.csv");

#[test]
fn hot_volumes() {
    judge("pack_hot_volume_ratio.csv", HOT_VOLUME, |row| {
        let hot = hot_fill(litre(1.0), brix(row.number("brix_pct"))?, deg_f(row.number("temp_f")))?;
        Ok(Some(hot.get::<litre>()))
    });
}

/// Rows above 85 °Bx document the solver of another implementation: the library refuses them.
#[test]
fn what_boils_so_far_above_water() {
    judge("finish_equivalents.csv", EQUIVALENTS, |row| {
        let station = StationPressure::measured(kpa(row.number("pressure_kpa")))?;
        let water = sugaring::water::saturation_temperature(station.pressure())?;
        let rise = row.number("rise_f") / 1.8;
        let boiling = kelvin(water.get::<kelvin>() + rise);
        match sucrose::brix_from_boiling(boiling, station) {
            Ok(found) => {
                let done = finishing_point(found, station, None)?;
                assert!((done.elevation.get::<delta_c>() - rise).abs() < 1e-8, "the way back");
                Ok(Some(found.get()))
            }
            Err(error) => {
                assert!(
                    row.number("value") >= 85.0 && error.to_string().contains("is outside"),
                    "{error}"
                );
                Ok(None)
            }
        }
    });
}

/// Diluting, boiling off and blending are the lot's own balances.
#[test]
fn mending_a_batch() {
    judge("finish_mend.csv", MEND, |row| {
        let lot = |mass, strength| Lot::of_mass(kg(row.number(mass)), brix(row.number(strength))?, deg_c(20.0));
        let target = || brix(row.number("c"));
        Ok(Some(match row.text("case") {
            "dilute_mass_to_add_kg" => {
                let diluent = Lot::of_mass(kg(1.0), brix(row.number("d"))?, deg_c(20.0))?;
                lot("a", "b")?.dilute_to(target()?, &diluent)?.diluent_mass.get::<kg>()
            }
            "boil_mass_to_remove_kg" => lot("a", "b")?.concentrate_to(target()?)?.water.get::<kg>(),
            "blend_brix_pct" => blend(&[lot("a", "b")?, lot("c", "d")?])?.brix().get(),
            "pearson_fraction_of_first" => {
                let of = |column| Lot::of_mass(kg(1.0), brix(row.number(column))?, deg_c(20.0));
                blend_to(&of("a")?, &of("c")?, brix(row.number("b"))?)?.get::<fraction>()
            }
            other => panic!("no case {other}"),
        }))
    });
}

fn bottles() -> [Container; 2] {
    let glass = |name: &str, volume, brimful, mass, stock| Container {
        brimful: Some(ml(brimful)),
        material: Some(Material::Glass),
        mass: Some(gram(mass)),
        ..Container::new(name, ml(volume), stock)
    };
    [
        glass("500 mL glass", 500.0, 530.0, 320.0, 12),
        glass("250 mL glass", 250.0, 268.0, 200.0, 6),
    ]
}

#[test]
fn the_worked_day_from_the_finish_on() {
    judge("day_far_orchard.csv", ORCHARD, |row| {
        let station = StationPressure::measured(kpa(96.5))?;
        let syrup = Lot::of_mass(kg(7.902_31), brix(66.9)?, deg_c(102.0))?;
        let packing = pack(&syrup, &bottles(), deg_c(85.0))?;
        let [half, quarter] = packing.rows.as_slice() else {
            panic!("two kinds of bottles");
        };
        let celsius = |t: Option<Temperature>| t.expect("glass of known mass").get::<deg_c>();
        let done = finishing_point(brix(66.9)?, station, None)?;
        let mark = |at| -> Result<f64, Error> { Ok(Hydrometer::brix(deg_f(60.0))?.reading(brix(66.9)?, at)?.get()) };
        Ok(Some(match row.text("quantity") {
            "finishing_temperature" => done.temperature.get::<deg_c>(),
            "finishing_rise" => done.elevation.get::<delta_c>(),
            "water_boiling_point" => done.water_boils_at.get::<deg_c>(),
            "hydrometer_mark_60f_scale_at_211f" => mark(deg_f(211.0))?,
            "hydrometer_mark_60f_scale_at_20c" => mark(deg_c(20.0))?,
            "bottles_500ml" => f64::from(half.count),
            "bottles_250ml" => f64::from(quarter.count),
            "rest_volume" => packing.rest.volume.get::<litre>(),
            "hot_fill_500ml" => half.fill_volume.get::<ml>(),
            "settled_500ml_cold_glass" => celsius(half.settled),
            "glass_needed_500ml" => celsius(half.glass_needed),
            "settled_250ml_cold_glass" => celsius(quarter.settled),
            _ => return Ok(None),
        }))
    });
}

#[test]
fn remarks_of_the_worked_day() -> Result<(), Error> {
    let syrup = Lot::of_mass(kg(7.902_31), brix(66.9)?, deg_c(102.0))?;
    let packing = pack(&syrup, &bottles(), deg_c(85.0))?;
    let texts: Vec<String> = packing.remarks.iter().map(ToString::to_string).collect();
    assert_eq!(
        texts,
        [
            "a 500 mL glass at 20 °C settles at 77.1 °C: warm it to 61 °C, or fill at 90.6 °C",
            "a 250 mL glass at 20 °C settles at 75.4 °C: warm it to 65 °C, or fill at 92.7 °C",
        ]
    );
    Ok(())
}

/// Rows that a change in the last digit of any figure of glass breaks.
#[test]
fn glass_evaluated_apart() {
    judge("finish_glass.csv", GLASS, |row| {
        let syrup = Lot::of_mass(kg(1.0), brix(66.9)?, deg_c(102.0))?;
        let with = |brimful| Container {
            brimful,
            material: Some(Material::Glass),
            mass: Some(gram(row.number("glass_g"))),
            temperature: deg_c(row.number("glass_c")),
            ..Container::new("glass", ml(row.number("label_ml")), 1)
        };
        let fill = deg_c(row.number("fill_c"));
        if row.text("quantity") == "least_brimful" {
            // Between the two, the fill just goes in.
            let (mut low, mut high) = (row.number("label_ml"), 2.0 * row.number("label_ml"));
            while high - low > 1e-9 {
                let middle = 0.5 * (low + high);
                match pack(&syrup, &[with(Some(ml(middle)))], fill) {
                    Ok(_) => high = middle,
                    Err(_) => low = middle,
                }
            }
            return Ok(Some(high));
        }
        let row_of = pack(&syrup, &[with(None)], fill)?.rows.remove(0);
        Ok(Some(match row.text("quantity") {
            "settled" => row_of.settled.expect("known").get::<deg_c>(),
            "glass_needed" => row_of.glass_needed.expect("too cold").get::<deg_c>(),
            "fill_needed" => row_of.fill_needed.expect("not too hot").get::<deg_c>(),
            other => panic!("no quantity {other}"),
        }))
    });
}

/// Sap for syrup by the lot; what the trade's rules say is printed beside it and never computed by the library.
#[test]
fn sap_to_syrup_and_the_rules_of_the_trade() {
    judge("evaporator_ratio.csv", RATIO, |row| {
        let syrup = || brix(row.number("syrup_brix_pct"));
        let sap = || Lot::of_mass(kg(100.0), brix(row.number("sap_brix_pct"))?, deg_c(20.0));
        let ratio = || sap()?.sap_per_syrup(syrup()?);
        // C. H. Jones, Vermont: gallons of sap for a gallon of syrup of 65.5 °Bx.
        let rule_of_86 = 86.0 / row.optional_number("sap_brix_pct").unwrap_or(1.0);
        Ok(Some(match row.text("quantity") {
            "rule_of_86" => rule_of_86,
            "rule_of_86_deviation" => (rule_of_86 / ratio()?.by_volume.get::<fraction>() - 1.0) * 100.0,
            "sap_volume_per_syrup_volume" => ratio()?.by_volume.get::<fraction>(),
            "water_mass_per_syrup_mass" => sap()?.concentrate_to(syrup()?)?.water.get::<kg>() / syrup_mass(row)?,
            "water_volume_per_syrup_volume" => {
                let water = sap()?.concentrate_to(syrup()?)?.water.get::<kg>() / 998.2;
                let made = syrup_mass(row)? / sucrose::density(syrup()?, deg_c(20.0))?.get::<kg_per_m3>();
                water / made
            }
            // A weight in air is not offered: brass weights of 8400 kg/m³ in air of 1.2 kg/m³.
            "syrup_weight_in_air" => {
                let density = sucrose::density(syrup()?, deg_c(20.0))?.get::<kg_per_m3>();
                (density - 1.2) / (1.0 - 1.2 / 8400.0) * 0.003_785_411_784 / 0.453_592_37
            }
            other => panic!("no quantity {other}"),
        }))
    });
}

fn syrup_mass(row: &Row) -> Result<f64, Error> {
    let sap = Lot::of_mass(kg(100.0), brix(row.number("sap_brix_pct"))?, deg_c(20.0))?;
    Ok(sap.sugar().get::<kg>() / row.number("syrup_brix_pct") * 100.0)
}

#[test]
fn limits_hold_as_written() {
    let station = || StationPressure::measured(kpa(96.5));
    limits(&finish::FINISHING_POINT, 0, |b| {
        finishing_point(brix(b).map_err(|e| e.named("target"))?, station()?, None)
    });
    limits(&finish::FINISHING_POINT, 2, |rise| {
        finishing_point(brix(66.9)?, station()?, Some(delta_c(rise)))
    });
    limits(&finish::HOT_FILL, 0, |v| {
        hot_fill(cubic_metre(v), brix(66.9)?, deg_c(85.0))
    });
    limits(&finish::HOT_FILL, 1, |b| hot_fill(ml(500.0), brix(b)?, deg_c(85.0)));
    limits(&finish::HOT_FILL, 2, |t| hot_fill(ml(500.0), brix(66.9)?, kelvin(t)));
    limits(&finish::PACK, 1, |t| {
        pack(&Lot::of_mass(kg(1.0), brix(66.9)?, deg_c(99.0))?, &[], kelvin(t))
    });
}
