//! Quantities, ratios, °Brix and prices of a tree.

use alloc::{borrow::ToOwned, format, string::String};

use super::{Node, Tree};
use crate::{
    error::{Error, ErrorKind},
    units::{Dimension, Given, Price, Quantity, Value},
};

impl Node<'_> {
    /// A quantity with the user's own uncertainty, where one is given.
    ///
    /// Read are texts (`"170 L"`), quantities, `{"value": 170, "unit": "L", "uncertainty": 2}`, and bare
    /// numbers for °Brix, ratios and counts.
    pub(crate) fn quantity<T: Value>(&self) -> Result<Given<T>, Error> {
        let (quantity, uncertainty) = self.amount(Some(T::DIMENSION))?;
        let value = quantity.typed().map_err(|error| self.at(error))?;
        let uncertainty = uncertainty.map(|steps| quantity.unit().difference_to_si(steps));
        if let Some(size) = uncertainty.filter(|size| !size.is_finite()) {
            return Err(Error::not_finite(format!("{}.uncertainty", self.path()), size));
        }
        Ok(Given {
            value,
            uncertainty,
            unit: Some(quantity.unit()),
        })
    }

    /// A quantity of any dimension, without uncertainty.
    pub(crate) fn any_quantity(&self) -> Result<Quantity, Error> {
        let (quantity, uncertainty) = self.amount(None)?;
        if uncertainty.is_none() {
            return Ok(quantity);
        }
        let node = self.required("uncertainty")?;
        Err(node.unreadable("a quantity without uncertainty"))
    }

    /// `{"amount": 280, "per": "1 cord"}`.
    pub(crate) fn price(&self) -> Result<Price, Error> {
        self.keys(&["amount", "per"], &[])?;
        let amount = self.required("amount")?.not_negative()?;
        let per_node = self.required("per")?;
        let per = per_node.any_quantity()?;
        if per.value() > 0.0 {
            return Ok(Price { amount, per });
        }
        let finding = format!(" = {} is not above 0", per.unit().show(per.value()));
        Err(Error::new(ErrorKind::OutOfRange, per_node.path().to_owned(), finding)
            .with_value(per.value(), per.unit())
            .with_hint(format!("write {}", Quantity::new(1.0, per.unit()))))
    }

    /// The quantity in the unit it is given in, and its uncertainty in steps of that unit.
    fn amount(&self, wanted: Option<Dimension>) -> Result<(Quantity, Option<f64>), Error> {
        let quantity = match self.tree {
            Tree::Text(text) => Quantity::read(text, wanted),
            Tree::Quantity(quantity) => quantity.checked(wanted),
            Tree::Number(number) => Quantity::plain(*number, wanted),
            Tree::Map(_) => return self.amount_of_keys(wanted),
            _ => return Err(self.unreadable(&example(wanted))),
        };
        Ok((quantity.map_err(|error| self.at(error))?, None))
    }

    fn amount_of_keys(&self, wanted: Option<Dimension>) -> Result<(Quantity, Option<f64>), Error> {
        self.keys(&["value", "unit", "uncertainty"], &[])?;
        let value = self.required("value")?.number()?;
        let quantity = match self.get("unit")? {
            None => Quantity::plain(value, wanted),
            Some(unit) => {
                let symbol = unit.text(usize::MAX)?;
                Quantity::in_unit(value, symbol, wanted)
            }
        };
        let quantity = quantity.map_err(|error| self.at(error))?;
        let uncertainty = match self.get("uncertainty")? {
            None => None,
            Some(node) => Some(node.not_negative()?),
        };
        Ok((quantity, uncertainty))
    }
}

/// What is needed, as an example people can follow.
fn example(wanted: Option<Dimension>) -> String {
    match wanted.map(Dimension::common_units) {
        Some((Some(unit), _)) => format!("a text such as \"40 {}\"", unit.symbol),
        Some((None, _)) => "a number".to_owned(),
        None => "a text such as \"40 gal\"".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Brix, Count, Mass, Ratio, Temperature, Volume, table};
    use proptest::prelude::*;

    fn read<T: Value>(tree: Tree) -> Result<Given<T>, Error> {
        let tree = Tree::map([("x", tree)]);
        Node::top(&tree).required("x")?.quantity()
    }

    fn measured(value: f64, unit: &str, uncertainty: Tree) -> Tree {
        Tree::map([
            ("value", Tree::from(value)),
            ("unit", Tree::from(unit)),
            ("uncertainty", uncertainty),
        ])
    }

    #[test]
    fn every_form_of_a_quantity_is_read() {
        let litres = |tree| read::<Volume>(tree).map(|given| (given.si(), given.unit.map(|u| u.word)));
        let expected = Ok((0.17, Some("litre")));
        assert_eq!(litres(Tree::from("170 L")), expected);
        assert_eq!(litres(Tree::from(Quantity::new(170.0, &table::litre))), expected);
        let plain = Tree::map([("value", Tree::from(170.0)), ("unit", Tree::from("L"))]);
        assert_eq!(litres(plain), expected);
        assert_eq!(read::<Brix>(Tree::from(1.8)).map(|g| g.si()), Ok(1.8));
        assert_eq!(read::<Ratio>(Tree::from(0.25)).map(|g| g.si()), Ok(0.25));
        assert_eq!(read::<Ratio>(Tree::from("25 %")).map(|g| g.si()), Ok(0.25));
        assert_eq!(read::<Count>(Tree::from(12.0)).map(|g| g.si()), Ok(12.0));
    }

    #[test]
    fn an_uncertainty_is_a_difference_in_the_same_unit() {
        let steps = |value: f64, unit: &str| {
            let tree = measured(value, unit, Tree::from(0.9));
            read::<Temperature>(tree).unwrap().uncertainty.unwrap()
        };
        assert_eq!((steps(4.0, "°C"), steps(39.2, "°F")), (0.9, 0.5));
        let brix = Tree::map([("value", Tree::from(1.8)), ("uncertainty", Tree::from(0.1))]);
        assert_eq!(read::<Brix>(brix).unwrap().uncertainty, Some(0.1));
        let exact = measured(25.0, "%", Tree::from(0.0));
        assert_eq!(read::<Ratio>(exact).unwrap().uncertainty, Some(0.0));
    }

    #[test]
    fn what_is_no_quantity_is_refused_with_its_path() {
        let says = |tree, text: &str| assert_eq!(read::<Temperature>(tree).unwrap_err().to_string(), text);
        says(Tree::from(20.0), "x = 20 needs a unit: write deg_c(20) or deg_f(20)");
        says(Tree::from("20"), "x = 20 needs a unit: write deg_c(20) or deg_f(20)");
        says(
            Tree::map([("value", Tree::from(20.0))]),
            "x = 20 needs a unit: write deg_c(20) or deg_f(20)",
        );
        says(Tree::from("68 F"), "x has the unknown unit \"F\"; write 68 °F");
        says(
            measured(68.0, "F", Tree::from(1.0)),
            "x has the unknown unit \"F\"; write 68 °F",
        );
        says(Tree::from("5 L"), "x = 5 L is a volume; a temperature is needed");
        says(
            Tree::from(true),
            "x = true cannot be read; a text such as \"40 °C\" is needed",
        );
        says(Tree::from(f64::NAN), "x = NaN is not a finite number");
        says(
            Tree::from(Quantity::new(f64::INFINITY, &table::deg_c)),
            "x = infinity is not a finite number",
        );
        says(
            measured(4.0, "°C", Tree::from(-0.5)),
            "x.uncertainty = -0.5 is outside 0 and up",
        );
        says(
            measured(4.0, "°C", Tree::from(f64::NAN)),
            "x.uncertainty = NaN is not a finite number",
        );
        says(
            measured(4.0, "°C", Tree::from("0.5 K")),
            "x.uncertainty = \"0.5 K\" cannot be read; a number is needed, without quotes",
        );
        says(
            measured(f64::NAN, "°C", Tree::from(1.0)),
            "x.value = NaN is not a finite number",
        );
        says(Tree::map([("unit", Tree::from("°C"))]), "x.value is missing");
        says(
            Tree::map([("valu", Tree::from(4.0))]),
            "x has the unknown name \"valu\"; nearest: value",
        );
        let beyond = read::<Brix>(Tree::from(120.0)).unwrap_err();
        assert_eq!(beyond.to_string(), "x = 120 °Bx is outside 0 to 100 °Bx");
        let huge = read::<Mass>(Tree::from("1e308 t")).unwrap_err();
        assert_eq!(huge.to_string(), "x = infinity is not a finite number");
    }

    #[test]
    fn prices_are_per_anything() {
        let price = |amount: Tree, per: &str| {
            let tree = Tree::map([("price", Tree::map([("amount", amount), ("per", Tree::from(per))]))]);
            Node::top(&tree).required("price").unwrap().price()
        };
        let wood = price(Tree::from(280.0), "1 cord").unwrap();
        assert_eq!(
            (wood.amount.to_string().as_str(), wood.per),
            ("280", Quantity::new(1.0, &table::cord))
        );
        assert!(price(Tree::from(1.6), "1 each").is_ok());
        let says = |result: Result<Price, Error>, text: &str| assert_eq!(result.unwrap_err().to_string(), text);
        says(
            price(Tree::from(-1.0), "1 cord"),
            "price.amount = -1 is outside 0 and up",
        );
        says(
            price(Tree::from(1.0), "0 cord"),
            "price.per = 0 cord is not above 0; write 1 cord",
        );
        says(
            price(Tree::from(1.0), "cord"),
            "price.per = \"cord\" cannot be read; write a number before it, such as 40 cord",
        );
        says(
            price(Tree::from("280 dollars"), "1 cord"),
            "price.amount = \"280 dollars\" cannot be read; a number is needed, without quotes",
        );
    }

    proptest! {
        #[test]
        fn any_number_in_any_unit_is_read_or_refused(
            value in any::<f64>(),
            uncertainty in any::<f64>(),
            index in 0..table::ALL.len(),
        ) {
            let tree = measured(value, table::ALL[index].symbol, Tree::from(uncertainty));
            for given in [read::<Volume>(tree.clone()).map(|g| (g.si(), g.uncertainty)), read::<Ratio>(tree).map(|g| (g.si(), g.uncertainty))].into_iter().flatten() {
                prop_assert!(given.0.is_finite() && given.1.is_none_or(|u| u >= 0.0));
            }
        }
    }
}
