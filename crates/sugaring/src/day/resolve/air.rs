//! Today's air: which of several readings is used, and whether the others fit.

use crate::{
    air::StationPressure,
    day::{
        inputs::Air,
        plan::{Level, Remark},
        resolve::{Resolver, limits as range, uncertainty},
        slots::{Shape, Slot},
    },
    digits::{Toward, rounded, significant},
    error::Error,
    math,
    units::{Given, Pressure, Temperature, Value, table},
    water,
};
use alloc::{format, string::String, vec::Vec};

/// The pressure of the day and how it was come by.
#[derive(Clone, Debug)]
pub(crate) struct TodaysAir {
    pub(crate) pressure: Slot,
    pub(crate) origin: &'static str,
}

/// One reading of the air: its path, what it shows, the pressure it means.
struct Reading {
    key: &'static str,
    shown: String,
    origin: &'static str,
    /// "boiling water at 98.3 °C means 95.4 kPa"
    says: String,
    used: &'static str,
    pressure: f64,
    uncertainty: f64,
}

pub(crate) fn resolve(resolver: &mut Resolver, air: &Air) -> Result<TodaysAir, Error> {
    let readings = readings(air)?;
    let Some((first, others)) = readings.split_first() else {
        return Err(Error::missing("")
            .with_hint("give water_boils_at, station_pressure, altimeter_setting with altitude, or altitude"));
    };
    for other in others {
        fits(first, other)?;
        if let Some(remark) = differs(first, other) {
            resolver.remarks.push(remark);
        }
    }
    let (low, high) = range::STATION_PRESSURE.limits_si();
    if first.origin == "boiling_water" {
        resolver.calibrated("air.water_boils_at", "pressure from your boiling water");
    }
    if first.origin == "altitude" {
        resolver.assume(
            "air.altitude",
            "pressure from the altitude alone: the weather is unknown",
        );
    }
    Ok(TodaysAir {
        pressure: resolver
            .slots
            .spread(first.pressure, Some(Shape::Normal(first.uncertainty)), low, high),
        origin: first.origin,
    })
}

/// Pa that the standard atmosphere loses with a metre near the ground.
const PER_METRE: f64 = 12.0;
/// Pa that a kelvin of air temperature moves a reduction over some hundred metres.
const PER_KELVIN: f64 = 20.0;

/// Every reading that stands, best first.
fn readings(air: &Air) -> Result<Vec<Reading>, Error> {
    let mut readings = Vec::new();
    let altitude = match &air.altitude {
        Some(altitude) => Some(checked(altitude, &range::ALTITUDE)?),
        None => None,
    };
    if let Some(station) = &air.typed {
        let pressure = range::STATION_PRESSURE.check(station.pressure().si())?;
        readings.push(barometer(
            "station_pressure",
            station.origin().name(),
            pressure,
            station.uncertainty().si(),
        ));
    }
    if let Some(boils) = &air.water_boils_at {
        let kelvin = checked(boils, &range::WATER_BOILS_AT)?;
        let station = StationPressure::from_boiling_water(boils.value).map_err(|e| e.named("water_boils_at"))?;
        let pressure = in_a_plan("water_boils_at", boils.value, station.pressure())?;
        // 3.5 kPa a kelvin is the slope of the boiling line.
        let own = uncertainty(boils, &range::WATER_BOILS_AT)?.map(|u| 3500.0 * u);
        let shown = table::deg_c.show(table::deg_c.from_si(kelvin));
        readings.push(Reading {
            key: "water_boils_at",
            says: format!("boiling water at {shown} means {}", kilopascal(pressure)),
            shown,
            origin: "boiling_water",
            used: "the boiling water is used",
            pressure,
            uncertainty: own.unwrap_or_else(|| station.uncertainty().si()),
        });
    }
    if let Some(given) = &air.station_pressure {
        let pressure = checked(given, &range::STATION_PRESSURE)?;
        not_reduced(pressure, altitude)?;
        let own = uncertainty(given, &range::STATION_PRESSURE)?;
        readings.push(barometer(
            "station_pressure",
            "measured",
            pressure,
            own.unwrap_or(100.0),
        ));
    }
    let reduced = reduced_readings(air)?;
    let altitude_is_spent = !reduced.is_empty();
    readings.extend(reduced);
    if let (Some(altitude), false) = (&air.altitude, altitude_is_spent) {
        let station = StationPressure::from_altitude(altitude.value)?;
        let pressure = station.pressure().si();
        let own = uncertainty(altitude, &range::ALTITUDE)?.map_or(0.0, |u| PER_METRE * u);
        let weather = station.uncertainty().si();
        readings.push(Reading {
            key: "altitude",
            shown: table::metre.show(altitude.si()),
            origin: "altitude",
            says: format!("the altitude alone means {}", kilopascal(pressure)),
            used: "the altitude is used",
            pressure,
            uncertainty: math::sqrt(weather * weather + own * own),
        });
    }
    Ok(readings)
}

fn checked<T: Value>(given: &Given<T>, range: &crate::relation::Range) -> Result<f64, Error> {
    range.check(given.si())
}

fn needed<T: Value>(given: Option<&Given<T>>, key: &'static str) -> Result<T, Error> {
    given.map(|g| g.value).ok_or_else(|| Error::missing(key))
}

fn in_a_plan(key: &'static str, boils: Temperature, pressure: Pressure) -> Result<f64, Error> {
    range::STATION_PRESSURE.check(pressure.si()).map_err(|_| {
        let (low, high) = range::STATION_PRESSURE.limits_si();
        let celsius = |pa| table::deg_c.from_si(water::saturation_temperature_at(pa));
        Error::out_of_limits(
            key,
            table::deg_c.from_si(boils.si()),
            &table::deg_c,
            celsius(low),
            celsius(high),
        )
    })
}

fn barometer(key: &'static str, origin: &'static str, pressure: f64, uncertainty: f64) -> Reading {
    Reading {
        key,
        shown: table::kpa.show(table::kpa.from_si(pressure)),
        origin,
        says: format!("the barometer says {}", kilopascal(pressure)),
        used: "the barometer is used",
        pressure,
        uncertainty,
    }
}

/// An altimeter setting and a sea-level pressure, where they stand.
fn reduced_readings(air: &Air) -> Result<Vec<Reading>, Error> {
    let mut readings = Vec::new();
    // What the altitude adds to a reduced pressure.
    let height = match &air.altitude {
        Some(altitude) => uncertainty(altitude, &range::ALTITUDE)?.map_or(0.0, |u| PER_METRE * u),
        None => 0.0,
    };
    if let Some(setting) = &air.altimeter_setting {
        checked(setting, &range::ALTIMETER_SETTING)?;
        let station =
            StationPressure::from_altimeter_setting(setting.value, needed(air.altitude.as_ref(), "altitude")?)?;
        let own = uncertainty(setting, &range::ALTIMETER_SETTING)?;
        let usual = own.unwrap_or_else(|| station.uncertainty().si());
        readings.push(reduced(
            [
                "altimeter_setting",
                "altimeter_setting",
                "altimeter setting",
                "the altimeter setting is used",
            ],
            setting,
            &station,
            math::sqrt(usual * usual + height * height),
        )?);
    }
    if let Some(sea_level) = &air.sea_level_pressure {
        checked(sea_level, &range::SEA_LEVEL_PRESSURE)?;
        let mut warmth = 0.0;
        if let Some(temperature) = &air.air_temperature {
            checked(temperature, &range::AIR_TEMPERATURE)?;
            warmth = uncertainty(temperature, &range::AIR_TEMPERATURE)?.map_or(0.0, |u| PER_KELVIN * u);
        }
        let station = StationPressure::from_sea_level(
            sea_level.value,
            needed(air.altitude.as_ref(), "altitude")?,
            needed(air.air_temperature.as_ref(), "air_temperature")?,
        )?;
        let own = uncertainty(sea_level, &range::SEA_LEVEL_PRESSURE)?;
        let usual = own.unwrap_or_else(|| station.uncertainty().si());
        readings.push(reduced(
            [
                "sea_level_pressure",
                "sea_level",
                "sea-level pressure",
                "the sea-level pressure is used",
            ],
            sea_level,
            &station,
            math::sqrt(usual * usual + height * height + warmth * warmth),
        )?);
    }
    Ok(readings)
}

/// Key, origin, name and use of a reading that was reduced to sea level.
fn reduced(
    [key, origin, name, used]: [&'static str; 4],
    given: &Given<Pressure>,
    station: &StationPressure,
    uncertainty: f64,
) -> Result<Reading, Error> {
    let pressure = range::STATION_PRESSURE.check(station.pressure().si())?;
    Ok(Reading {
        key,
        shown: table::kpa.show(table::kpa.from_si(given.si())),
        origin,
        says: format!("the {name} means {}", kilopascal(pressure)),
        used,
        pressure,
        uncertainty,
    })
}

/// A barometer above 100 kPa above 250 m is almost surely reduced to sea level.
fn not_reduced(pressure: f64, altitude: Option<f64>) -> Result<(), Error> {
    let Some(altitude) = altitude.filter(|z| *z > 250.0 && pressure > 100_000.0) else {
        return Ok(());
    };
    let shown = table::kpa.show(table::kpa.from_si(pressure));
    let error = Error::inconsistent(
        "station_pressure",
        &shown,
        &format!("altitude = {}", table::metre.show(altitude)),
    );
    let meant = StationPressure::from_altimeter_setting(crate::units::pa(pressure), crate::units::metre(altitude));
    Err(match meant {
        Ok(station) => error.with_hint(format!(
            "it looks like an altimeter setting, which means {} kPa here: write altimeter_setting",
            significant(table::kpa.from_si(station.pressure().si()), 4)
        )),
        Err(_) => error.with_hint("it looks like an altimeter setting: write altimeter_setting"),
    })
}

/// Two readings that put boiling water more than a kelvin apart contradict one another.
fn fits(first: &Reading, other: &Reading) -> Result<(), Error> {
    let boils = |r: &Reading| water::saturation_temperature_at(r.pressure);
    if (boils(first) - boils(other)).abs() <= 1.0 {
        return Ok(());
    }
    let celsius = significant(rounded(table::deg_c.from_si(boils(other)), 4, Toward::Nearest), 4);
    let check = if first.key == "water_boils_at" {
        "check the thermometer in boiling water and the kind of pressure"
    } else {
        "check the kind of pressure and the altitude"
    };
    Err(
        Error::inconsistent(first.key, &first.shown, &format!("{} = {}", other.key, other.shown))
            .with_hint(format!("water boils at {celsius} °C there: {check}")),
    )
}

fn differs(first: &Reading, other: &Reading) -> Option<Remark> {
    let both = math::sqrt(first.uncertainty * first.uncertainty + other.uncertainty * other.uncertainty);
    ((first.pressure - other.pressure).abs() > 2.0 * both).then(|| Remark {
        level: Level::Notice,
        key: "pressures_differ",
        step: None,
        text: format!("{}, {}: {}", first.says, other.says, first.used),
    })
}

fn kilopascal(pressure: f64) -> String {
    table::kpa.with_symbol(&significant(table::kpa.from_si(pressure), 3))
}
