//! From the pan to the bottles.
use crate::{
    day::{
        data::read::keys::{given, needed, optional, price, text, whole},
        inputs::{
            Container, Efficiency, Evaporator, Finishing, Fuel, Heat, LeftInPan, Moisture, Pan, PanKind, PanRun,
            Target, Wood,
        },
    },
    error::Error,
    form::Node,
};

pub(crate) fn evaporator(node: &Node<'_>) -> Result<Evaporator, Error> {
    node.keys(&["pan", "heat", "left_in_pan", "fuel", "run"], &["preheated_to"])?;
    let pan = node.required("pan")?;
    pan.keys(&["length", "width", "running_depth", "least_depth"], &["sections"])?;
    Ok(Evaporator {
        pan: Pan {
            length: needed(&pan, "length")?,
            width: needed(&pan, "width")?,
            running_depth: given(&pan, "running_depth")?,
            least_depth: given(&pan, "least_depth")?,
            sections: None,
        },
        heat: optional(node, "heat", heat)?,
        left_in_pan: optional(node, "left_in_pan", |left| {
            left.keys(&["volume", "brix", "temperature"], &[])?;
            Ok(LeftInPan {
                volume: needed(left, "volume")?,
                brix: needed(left, "brix")?,
                temperature: needed(left, "temperature")?,
            })
        })?,
        fuel: optional(node, "fuel", fuel)?,
        run: optional(node, "run", |run| {
            run.choice(&["batch"], &["continuous"]).map(|_| PanRun::Batch)
        })?,
    })
}

pub(crate) fn heat(node: &Node<'_>) -> Result<Heat, Error> {
    let (name, inner) = node.one_of(
        &["held_level", "level_drop", "power", "area_rule"],
        &["sap_rate", "fuel_rate"],
    )?;
    Ok(match name {
        "held_level" => {
            inner.keys(&["added", "feed_temperature"], &[])?;
            Heat::HeldLevel {
                added: needed(&inner, "added")?,
                feed_temperature: needed(&inner, "feed_temperature")?,
            }
        }
        "level_drop" => Heat::LevelDrop(inner.quantity()?),
        "power" => Heat::Power(inner.quantity()?),
        _ => Heat::AreaRule(match inner.choice(&["flat", "flat_blower", "flue"], &[])? {
            "flat_blower" => PanKind::FlatBlower,
            "flue" => PanKind::Flue,
            _ => PanKind::Flat,
        }),
    })
}

pub(crate) fn fuel(node: &Node<'_>) -> Result<Fuel, Error> {
    node.keys(&["wood", "named", "efficiency", "price"], &[])?;
    node.either(&["wood", "named"])?;
    Ok(Fuel {
        wood: optional(node, "wood", |wood| {
            wood.keys(&["species", "moisture"], &[])?;
            Ok(Wood {
                species: text(wood, "species")?,
                moisture: optional(wood, "moisture", |moisture| {
                    let (name, share) = moisture.one_of(&["wet_basis", "dry_basis"], &[])?;
                    let share = share.quantity()?;
                    Ok(match name {
                        "dry_basis" => Moisture::DryBasis(share),
                        _ => Moisture::WetBasis(share),
                    })
                })?,
            })
        })?,
        named: text(node, "named")?,
        efficiency: optional(node, "efficiency", |efficiency| {
            let (name, share) = efficiency.one_of(&["of_gross", "of_net"], &[])?;
            let share = share.quantity()?;
            Ok(match name {
                "of_net" => Efficiency::OfNet(share),
                _ => Efficiency::OfGross(share),
            })
        })?,
        price: price(node, "price")?,
    })
}

pub(crate) fn finishing(node: &Node<'_>) -> Result<Finishing, Error> {
    node.keys(&["heat", "capacity", "fuel"], &[])?;
    Ok(Finishing {
        heat: given(node, "heat")?,
        capacity: given(node, "capacity")?,
        fuel: optional(node, "fuel", fuel)?,
    })
}

pub(crate) fn target(node: &Node<'_>) -> Result<Target, Error> {
    node.keys(&["brix", "guard", "non_sucrose_rise", "sugar_lost"], &["jurisdiction"])?;
    Ok(Target {
        brix: needed(node, "brix")?,
        guard: given(node, "guard")?,
        non_sucrose_rise: given(node, "non_sucrose_rise")?,
        sugar_lost: given(node, "sugar_lost")?,
    })
}

pub(crate) fn container(node: &Node<'_>) -> Result<Container, Error> {
    node.keys(
        &[
            "name",
            "volume",
            "stock",
            "brimful",
            "material",
            "mass",
            "temperature",
            "price",
        ],
        &[],
    )?;
    Ok(Container {
        name: text(node, "name")?,
        volume: needed(node, "volume")?,
        stock: match whole(node, "stock", 0, 1_000_000)? {
            Some(stock) => stock,
            None => return Err(Error::missing("stock").within(node.path())),
        },
        brimful: given(node, "brimful")?,
        material: text(node, "material")?,
        mass: given(node, "mass")?,
        temperature: given(node, "temperature")?,
        price: price(node, "price")?,
    })
}
