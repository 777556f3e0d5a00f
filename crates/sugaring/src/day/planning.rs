use crate::{
    day::{
        assemble::Parts,
        inputs::DayInputs,
        plan::DayPlan,
        ranges::Ranges,
        remarks::remarks,
        resolve::Model,
        stations::{self, Fidelity},
    },
    error::Error,
};

/// The day's plan: sap through membrane, pan and finish into bottles, with what each step needs.
///
/// Lots are blended; the membrane is integrated along its elements; the big pan boils as a batch with topping up,
/// down to its least depth; the small pan finishes; containers are filled hot. Mass and sugar are conserved to
/// rounding. With `samples` above 0 (default 1000) the whole day is planned again for that many seeded draws of the
/// inputs, and the results carry the middle 95 %.
///
/// # Errors
/// The first input, in the order of the keys, that is out of range, missing or inconsistent, with its path; an aim
/// that the rig cannot reach; a depth that the pan cannot keep.
///
/// # Examples
/// ```
/// use sugaring::{air::StationPressure, day::{self, DayInputs, Sap, Target}, evaporator::Pan, units::*};
/// let air = StationPressure::from_altitude(metre(410.0))?;
/// let sap = Sap::of_volume(litre(265.0), brix(1.98)?, deg_c(4.0));
/// let inputs = DayInputs::new(air, vec![sap], Pan::new(metre(0.61), metre(1.22))?, Target::brix(brix(66.9)?));
/// let plan = day::plan(&inputs.with_samples(0))?;
/// let draw = plan.totals.to_finish.unwrap();
/// assert_eq!(format!("{:.1} L at {:.1} °Bx", draw.volume.value(), draw.brix), "18.6 L at 26.6 °Bx");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// Too little sap to cover the pan:
/// ```
/// # use sugaring::{air::StationPressure, day::{self, DayInputs, Sap, Target}, evaporator::Pan, units::*};
/// # let air = StationPressure::from_altitude(metre(410.0))?;
/// let sap = Sap::of_volume(litre(15.0), brix(1.98)?, deg_c(4.0));
/// # let inputs = DayInputs::new(air, vec![sap], Pan::new(metre(0.61), metre(1.22))?, Target::brix(brix(66.9)?));
/// let error = day::plan(&inputs).unwrap_err();
/// assert!(error.to_string().starts_with("evaporator.pan.least_depth = 25 mm cannot be kept; 15 L of sap stand"));
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn plan(inputs: &DayInputs) -> Result<DayPlan, Error> {
    plan_watched(inputs, &mut |_| true)
}

/// [`plan`], watched: `progress` is called with the share done, 0 to 1, about a hundred times, and every 200 draws where
/// there are many; false stops the work.
///
/// # Errors
/// As [`plan`]; and [`Cancelled`](crate::ErrorKind::Cancelled) when `progress` said so.
pub fn plan_watched(inputs: &DayInputs, progress: &mut dyn FnMut(f64) -> bool) -> Result<DayPlan, Error> {
    let model = Model::of(inputs)?;
    let values = model.slots.nominal();
    let (outcome, without) = stations::day(&model, &values, Fidelity::Full)?;
    let already_there = (model.rig.is_some() && outcome.rig.is_none()).then_some(outcome.tank.brix);
    let ranges = Ranges::of(&model, progress)?;
    let remarks = remarks(&model, &values, &outcome, already_there);
    let parts = Parts {
        inputs,
        model: &model,
        values: &values,
        outcome: &outcome,
        without: without.as_ref(),
        ranges: &ranges,
        remarks,
    };
    Ok(parts.plan())
}
