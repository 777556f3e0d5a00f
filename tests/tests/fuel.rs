//! Heat of fuels, the cord and moist wood against printed tables and against an evaluation of the equations apart.

use sugaring::{
    Error,
    fuel::{self, Efficiency, Fuel, Moisture, SPECIES, WoodGroup},
    units::*,
};
use sugaring_tests::{Row, judge, limits, rows};

const CORD: &str = include_str!("../published/fuel_cord.csv");
const FUEL: &str = include_str!("../derived/fuel.csv");
const HEATING_VALUES: &str = include_str!("../published/fuel_heating_values.csv");
const SPECIES_TABLE: &str = include_str!("../published/fuel_species.csv");
const WOOD_NCV: &str = include_str!("../published/fuel_wood_ncv.csv");

fn dry() -> Moisture {
    Moisture::wet_basis(fraction(0.0)).expect("dry wood")
}

fn btu_per_gal(key: &str) -> Result<f64, Error> {
    Ok(Fuel::named(key)?
        .heat()
        .per_volume
        .expect("a volume")
        .gross
        .get::<btu>())
}

/// The printed figures that are not ours: another source of the same fuel, cords of no species, and heats that
/// already carry a boiler's efficiency, which an evaporator is not.
#[test]
fn heating_values_as_printed() {
    judge("fuel_heating_values.csv", HEATING_VALUES, |row| {
        if row.text("basis") == "after typical boiler efficiency" {
            return Ok(None);
        }
        Ok(match (row.text("fuel"), row.text("value")) {
            ("heating oil no. 2", _) => Some(btu_per_gal("heating_oil")?),
            ("propane", "91452" | "91000") => Some(btu_per_gal("propane")?),
            ("natural gas", "1037") => {
                let cubic_foot = Fuel::named("natural_gas")?.heat().per_volume.expect("a volume");
                assert!((cubic_foot.volume.get::<cubic_metre>() / 0.3048_f64.powi(3) - 1.0).abs() < 1e-12);
                Some(cubic_foot.gross.get::<btu>())
            }
            ("electricity", _) => {
                let burned = Fuel::named("electricity")?.needed(kwh(1.0), Efficiency::of_gross(fraction(1.0))?)?;
                Some(burned.energy.get::<btu>())
            }
            ("wood pellets 10 % moisture", _) => {
                let gross = Fuel::named("wood_pellets")?.heat().gross.expect("a mass");
                Some(gross.get::<btu_per_lb>() * 2000.0)
            }
            ("hardwood, oven dry", _) => Some(dry_heat("hardwood")?),
            ("resinous wood, oven dry", _) => Some(dry_heat("eastern white pine")?),
            _ => None,
        })
    });
}

fn dry_heat(species: &str) -> Result<f64, Error> {
    Ok(Fuel::wood(species, dry())?
        .heat()
        .gross
        .expect("a mass")
        .get::<btu_per_lb>())
}

/// Heats from air-dry weights are one printed number times another: they show how cord tables are made, and no relation of ours.
#[test]
fn the_cord_as_printed() {
    judge("fuel_cord.csv", CORD, |row| {
        let species = || -> Result<Fuel, Error> {
            let moisture = match row.text("quantity") {
                "air_dry_weight" => Moisture::dry_basis(percent(20.0))?,
                _ => dry(),
            };
            let name = match row.text("species") {
                "basswood" => "American basswood",
                name => name,
            };
            let solid = fraction(row.number("solid_ft3") / 128.0);
            // The row names its heat of dry wood; ours for resinous wood is higher.
            Fuel::wood(name, moisture)?
                .with_solid_share(solid)?
                .with_dry_heat(btu_per_lb(8600.0))
        };
        Ok(match row.text("quantity") {
            "air_dry_weight" => Some(mass_of_a_cord(&species()?)?.get::<lb>()),
            "gross_heat" => Some(
                species()?
                    .heat()
                    .per_volume
                    .expect("a volume")
                    .gross
                    .get::<million_btu>(),
            ),
            _ => None,
        })
    });
}

fn mass_of_a_cord(wood: &Fuel) -> Result<Mass, Error> {
    let heat = wood.heat().per_volume.expect("a volume").gross;
    let burned = wood.needed(heat, Efficiency::of_gross(fraction(1.0))?)?;
    assert!((burned.volume.expect("a volume").get::<cord>() - 1.0).abs() < 1e-12);
    Ok(burned.mass.expect("a mass"))
}

#[test]
fn net_heat_of_moist_wood_as_printed() {
    judge("fuel_wood_ncv.csv", WOOD_NCV, |row| {
        // The table starts from net heat of dry wood; gross is higher by the steam of its hydrogen.
        let gross = row.number("ncv_dry_kwh_per_kg") * 3.6 + 2.443 * 8.937 * 0.06;
        let moisture = Moisture::wet_basis(percent(row.number("moisture_wet_pct")))?;
        let wood = Fuel::wood("red spruce", moisture)?.with_dry_heat(mj_per_kg(gross))?;
        Ok(Some(wood.heat().net.expect("a mass").get::<mj_per_kg>() / 3.6))
    });
}

#[test]
fn the_species_are_the_tables() {
    let table = rows("fuel_species.csv", SPECIES_TABLE);
    assert_eq!(table.len() + 1, SPECIES.len(), "and plain hardwood");
    judge("fuel_species.csv", SPECIES_TABLE, |row| {
        let ours = SPECIES.iter().find(|species| species.name == row.text("species"));
        let ours = ours.unwrap_or_else(|| panic!("{} is not offered", row.text("species")));
        let group = match row.text("group") {
            "hardwood" => WoodGroup::Hardwood,
            _ => WoodGroup::Softwood,
        };
        assert_eq!(
            (f64::from(ours.inventory_code), ours.group),
            (row.number("fia_code"), group)
        );
        // The table's tolerance is that of its own source; what we carry is the printed number.
        Ok(Some(
            row.number("value") + 1000.0 * (ours.specific_gravity - row.number("value")),
        ))
    });
}

/// Rows that a change in the last digit of any coefficient breaks.
#[test]
fn the_equations_evaluated_apart() {
    judge("fuel.csv", FUEL, |row| relation(row).map(Some));
}

fn relation(row: &Row) -> Result<f64, Error> {
    let efficiency = |basis: &str| match basis {
        "net" => Efficiency::of_net(percent(row.number("efficiency_pct"))),
        _ => Efficiency::of_gross(percent(row.number("efficiency_pct"))),
    };
    let fuel = match row.optional_number("moisture_wet_pct") {
        Some(wet) => Fuel::wood(row.text("fuel"), Moisture::wet_basis(percent(wet))?)?,
        None => Fuel::named(row.text("fuel"))?,
    };
    let heat = fuel.heat();
    Ok(match row.text("quantity") {
        "gross" => heat.gross.expect("a mass").get::<mj_per_kg>(),
        "net" => heat.net.expect("a mass").get::<mj_per_kg>(),
        "gross_per_volume" => heat.per_volume.expect("a volume").gross.get::<mj>(),
        "net_per_volume" => heat.per_volume.expect("a volume").net.get::<mj>(),
        "mass_for" => {
            let burned = fuel.needed(mj(row.number("heat_mj")), efficiency(row.text("basis"))?)?;
            burned.mass.expect("a mass").get::<kg>()
        }
        "cords_for" => {
            let burned = fuel.needed(mj(row.number("heat_mj")), efficiency(row.text("basis"))?)?;
            burned.volume.expect("a volume").get::<cord>()
        }
        "gallons_for" => {
            let burned = fuel.needed(mj(row.number("heat_mj")), efficiency(row.text("basis"))?)?;
            burned.volume.expect("a volume").get::<gal>()
        }
        "energy_for" => {
            let burned = fuel.needed(mj(row.number("heat_mj")), efficiency(row.text("basis"))?)?;
            burned.energy.get::<mj>()
        }
        other => panic!("no quantity {other}"),
    })
}

#[test]
fn limits_hold_as_written() {
    let wood = || Fuel::wood("hardwood", dry());
    limits(&fuel::WET_BASIS, 0, |m| Moisture::wet_basis(fraction(m)));
    limits(&fuel::DRY_BASIS, 0, |m| Moisture::dry_basis(fraction(m)));
    limits(&fuel::EFFICIENCY, 0, |e| Efficiency::of_gross(fraction(e)));
    limits(&fuel::EFFICIENCY, 0, |e| Efficiency::of_net(fraction(e)));
    limits(&fuel::WOOD, 1, |h| wood()?.with_dry_heat(joule_per_kg(h)));
    limits(&fuel::WOOD, 2, |g| wood()?.with_specific_gravity(fraction(g)));
    limits(&fuel::WOOD, 3, |v| wood()?.with_solid_share(fraction(v)));
    limits(&fuel::NEEDED, 0, |q| {
        wood()?.needed(joule(q), Efficiency::of_gross(percent(45.0))?)
    });
    limits(&fuel::HEAT_RATE, 0, |m| {
        wood()?.heat_rate(kg_per_s(m), Efficiency::of_gross(percent(45.0))?)
    });
}
