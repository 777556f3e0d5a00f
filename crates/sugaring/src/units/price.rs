use super::{Quantity, Unit, Value, Word};

/// An amount of the user's own currency per a quantity; nothing is converted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Price {
    /// The amount, a plain number.
    pub amount: f64,
    /// What it buys.
    pub per: Quantity,
}

/// `amount` per `per`.
///
/// ```
/// use sugaring::units::*;
/// let wood = price(280.0, cord(1.0));
/// let bottle = price(1.6, each(1.0));
/// # let _ = (wood, bottle);
/// ```
pub fn price<T: Value>(amount: f64, per: T) -> Price {
    Price {
        amount,
        per: Quantity::of(per, Unit::base(T::DIMENSION)),
    }
}

impl Price {
    /// The price in a unit other than SI, as the words of `W`.
    #[must_use]
    pub fn per<W: Word>(amount: f64) -> Self {
        Self {
            amount,
            per: Quantity::new(1.0, W::unit()),
        }
    }
}
