use alloc::vec::Vec;

use super::Function;
use crate::{
    error::Error,
    units::{Quantity, Unit},
};

/// A [`Function`] as the model of a propagation: numbers in the units that its inputs are given in, to a number in the
/// unit of its relation.
///
/// ```
/// use sugaring::{catalogue, uncertainty::{Spread, propagate}, units::table};
/// let density = catalogue::function("sucrose.density")?;
/// let model = density.model(&[&table::deg_brix, &table::deg_f])?;
/// let inputs = [Spread::new("brix", 66.9, 0.15)?, Spread::new("temperature", 68.0, 1.0)?];
/// let found = propagate(|x| model.value(x), &inputs)?;
/// assert_eq!(format!("{:.1} ± {:.1}", found.value, found.uncertainty), "1328.2 ± 1.0");
/// # Ok::<(), sugaring::Error>(())
/// ```
#[derive(Clone, Debug)]
pub struct Model<'a> {
    function: &'a Function,
    units: Vec<&'static Unit>,
}

impl Function {
    /// This one as a model of inputs in `units`.
    ///
    /// # Errors
    /// Missing, where there are not as many as arguments; wrong dimension.
    pub fn model(&self, units: &[&'static Unit]) -> Result<Model<'_>, Error> {
        if units.len() != self.arguments.len() {
            return Err(super::function::arity(self, units.len()));
        }
        for (argument, unit) in self.arguments.iter().zip(units) {
            let wanted = argument.kind.dimension();
            if unit.dimension != wanted {
                return Err(Error::wrong_dimension(&Quantity::new(1.0, unit), wanted).named(argument.name));
            }
        }
        Ok(Model {
            function: self,
            units: units.to_vec(),
        })
    }
}

impl Model<'_> {
    /// The unit of the result.
    #[must_use]
    pub fn unit(&self) -> &'static Unit {
        self.function.relation.output
    }

    /// The result of numbers in the units of the inputs.
    ///
    /// # Errors
    /// Those of the function.
    pub fn value(&self, inputs: &[f64]) -> Result<f64, Error> {
        let mut si = [0.0; MOST];
        let Some(si) = si.get_mut(..inputs.len()) else {
            return Err(super::function::arity(self.function, inputs.len()));
        };
        for ((si, number), unit) in si.iter_mut().zip(inputs).zip(&self.units) {
            *si = unit.to_si(*number);
        }
        self.function.value(si).map(|found| self.unit().from_si(found))
    }
}

/// Arguments of a function, at most.
const MOST: usize = 8;
