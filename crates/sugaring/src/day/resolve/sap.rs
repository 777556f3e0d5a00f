//! Lots of sap: readings become true °Brix, volumes or masses become lots.

use crate::{
    day::{
        data,
        inputs::{self, DayInputs},
        resolve::{Resolver, exact, limits as range, uncertainty},
        slots::{Shape, Slot},
    },
    digits::significant,
    error::{Error, ErrorKind},
    form::Node,
    instrument::{Hydrometer, Instrument, Reading, reading},
    sucrose,
    units::{Temperature, Value, brix, table},
};
use alloc::{format, string::String, vec::Vec};

/// A lot in slots.
#[derive(Clone, Copy, Debug)]
pub(crate) struct LotModel {
    pub(crate) amount: Amount,
    pub(crate) brix: Slot,
    /// An error that this lot shares with others, °Bx.
    pub(crate) shared: Option<Slot>,
    pub(crate) kelvin: Slot,
}

#[derive(Clone, Copy, Debug)]
pub(crate) enum Amount {
    Volume(Slot),
    Mass(Slot),
}

/// Standard uncertainties where the user gave none.
const AMOUNT: f64 = 0.02;
const BRIX: f64 = 0.1;
const KELVIN: f64 = 0.5;

/// The instruments of the day; a Brix hydrometer for 60 °F where none is given.
pub(crate) fn instruments(inputs: &DayInputs) -> Result<Vec<(String, Instrument)>, Error> {
    if inputs.instruments.is_empty() {
        let usual = Hydrometer::brix(crate::units::deg_f(60.0))?;
        return Ok(Vec::from([(
            String::from("syrup hydrometer"),
            Instrument::Hydrometer(usual),
        )]));
    }
    let mut made = Vec::new();
    for (name, given) in &inputs.instruments {
        let instrument = instrument(given).map_err(|e| e.within(&format!("instruments.{name}")))?;
        made.push((name.clone(), instrument));
    }
    Ok(made)
}

fn instrument(given: &inputs::Instrument) -> Result<Instrument, Error> {
    let tree = data::echo_of_instrument(given);
    Instrument::read(&Node::argument(&tree, ""))
}

pub(crate) fn resolve(
    resolver: &mut Resolver,
    inputs: &DayInputs,
    instruments: &[(String, Instrument)],
) -> Result<Vec<LotModel>, Error> {
    if inputs.sap.is_empty() {
        return Err(Error::missing("sap").with_hint("give one lot at least"));
    }
    let mut shared = Shared::default();
    let mut lots = Vec::new();
    for (i, sap) in inputs.sap.iter().enumerate() {
        let made = lot(resolver, sap, instruments, &mut shared).map_err(|e| e.within(&format!("sap[{i}]")))?;
        lots.push(made);
    }
    Ok(lots)
}

/// Errors of °Brix that several lots share: one draw for the day, and one for each instrument.
#[derive(Default)]
struct Shared {
    day: Option<Slot>,
    by_instrument: Vec<(String, Slot)>,
}

fn lot(
    resolver: &mut Resolver,
    sap: &inputs::Sap,
    instruments: &[(String, Instrument)],
    shared: &mut Shared,
) -> Result<LotModel, Error> {
    let amount = match (&sap.volume, &sap.mass) {
        (None, None) => return Err(Error::missing("volume").with_hint("give volume or mass")),
        (Some(_), Some(_)) => return Err(both_amounts(sap)),
        (Some(volume), None) => {
            let usual = Shape::Normal(AMOUNT * volume.si());
            Amount::Volume(resolver.take(volume, &range::SAP_VOLUME, Some(usual))?)
        }
        (None, Some(mass)) => {
            let usual = Shape::Normal(AMOUNT * mass.si());
            Amount::Mass(resolver.take(mass, &range::SAP_MASS, Some(usual))?)
        }
    };
    let temperature = sap.temperature.ok_or_else(|| Error::missing("temperature"))?;
    let (true_brix, slot, offset) = match (&sap.brix, &sap.reading) {
        (None, None) => return Err(Error::missing("brix").with_hint("give brix, or reading")),
        (Some(given), Some(_)) => {
            return Err(Error::inconsistent(
                "brix",
                &table::deg_brix.show(given.si()),
                "reading; give one of them",
            ));
        }
        (Some(given), None) => {
            let slot = resolver.take(given, &range::SAP_BRIX, None)?;
            let offset = given.uncertainty.is_none().then(|| {
                *shared
                    .day
                    .get_or_insert_with(|| resolver.slots.spread(0.0, Some(Shape::Normal(BRIX)), -5.0, 5.0))
            });
            (given.si(), slot, offset)
        }
        (None, Some(read)) => {
            let (truth, u) = truth(read, temperature.value, instruments).map_err(|e| e.within("reading"))?;
            let truth = range::SAP_BRIX.check(truth)?;
            let known = shared.by_instrument.iter().find(|(name, _)| *name == read.instrument);
            let offset = if let Some((_, slot)) = known {
                *slot
            } else {
                let slot = resolver.slots.spread(0.0, Some(Shape::Normal(u)), -5.0, 5.0);
                shared.by_instrument.push((read.instrument.clone(), slot));
                slot
            };
            (truth, resolver.slots.fixed(truth), Some(offset))
        }
    };
    let kelvin = sap_temperature(resolver, &temperature, true_brix)?;
    Ok(LotModel {
        amount,
        brix: slot,
        shared: offset,
        kelvin,
    })
}

fn sap_temperature(
    resolver: &mut Resolver,
    given: &crate::units::Given<Temperature>,
    true_brix: f64,
) -> Result<Slot, Error> {
    let si = given.si();
    let freezing = sucrose::freezing_temperature(brix(true_brix)?)?.si();
    let warmest = table::deg_c.to_si(range::SAP_WARMEST);
    if !(si >= freezing && si <= warmest) {
        let celsius = |k| table::deg_c.from_si(k);
        let error = Error::out_of_limits(
            "temperature",
            celsius(si),
            &table::deg_c,
            celsius(freezing),
            range::SAP_WARMEST,
        );
        return Err(if si < freezing {
            error.with_hint(format!(
                "sap of {} °Bx freezes below: give the ice under ice",
                significant(true_brix, 4)
            ))
        } else {
            error
        });
    }
    let own = uncertainty(given, &range::SAP_TEMPERATURE)?.unwrap_or(KELVIN);
    Ok(resolver.slots.spread(si, Some(Shape::Normal(own)), freezing, warmest))
}

fn truth(
    read: &inputs::SapReading,
    sap: Temperature,
    instruments: &[(String, Instrument)],
) -> Result<(f64, f64), Error> {
    if !read.value.is_finite() {
        return Err(Error::not_finite("value", read.value));
    }
    let Some((_, instrument)) = instruments.iter().find(|(name, _)| *name == read.instrument) else {
        let names: Vec<&str> = instruments.iter().map(|(name, _)| name.as_str()).collect();
        return Err(Error::new(
            ErrorKind::UnknownName,
            "instrument",
            format!(" has the unknown name \"{}\"", read.instrument),
        )
        .with_hint(format!("at hand: {}", names.join(", "))));
    };
    let shown: Reading = reading(read.value);
    if let Some(temperature) = &read.temperature {
        exact(temperature, "temperature")?;
    }
    let at = read.temperature.map_or(sap, |t| t.value);
    let measured = match instrument {
        Instrument::Hydrometer(hydrometer) => hydrometer.truth(shown, at)?,
        Instrument::Refractometer(refractometer) => refractometer.truth(shown, at)?,
    };
    Ok((measured.value.get(), measured.uncertainty))
}

/// Volume and mass both: the text says what the volume weighs.
fn both_amounts(sap: &inputs::Sap) -> Error {
    let (Some(volume), Some(mass)) = (&sap.volume, &sap.mass) else {
        return Error::missing("volume");
    };
    let kg = table::kg.show(mass.si());
    let litres = table::litre.show(table::litre.from_si(volume.si()));
    let error = Error::inconsistent("mass", &kg, &format!("volume = {litres}"));
    let (Some(strength), Some(temperature)) = (&sap.brix, &sap.temperature) else {
        return error.with_hint("give one of them");
    };
    let density = sucrose::density_at(strength.si(), temperature.si());
    let means = significant(density * volume.si(), 4);
    if means.parse::<f64>().is_ok_and(f64::is_finite) {
        let celsius = table::deg_c.show(table::deg_c.from_si(temperature.si()));
        error.with_hint(format!(
            "{litres} at {} and {celsius} is {means} kg: give one of them",
            table::deg_brix.show(strength.si())
        ))
    } else {
        error.with_hint("give one of them")
    }
}
