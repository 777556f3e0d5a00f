use alloc::string::String;

use crate::{
    error::Error,
    units::{Mass, Price, Temperature, Volume, deg_c},
};

/// A kind of container at hand. All but name, volume and stock may be left out; a check without its number is skipped,
/// and the packing says so.
///
/// ```
/// use sugaring::{finish::{Container, Material}, units::*};
/// let bottle = Container {
///     brimful: Some(ml(530.0)),
///     material: Some(Material::Glass),
///     mass: Some(gram(320.0)),
///     ..Container::new("500 mL glass", ml(500.0), 12)
/// };
/// assert_eq!(bottle.temperature, deg_c(20.0));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Container {
    /// What it is called.
    pub name: String,
    /// Contents on the label, at 20 °C.
    pub volume: Volume,
    /// What it holds to the brim, at 20 °C.
    pub brimful: Option<Volume>,
    /// What it is made of.
    pub material: Option<Material>,
    /// Its own mass.
    pub mass: Option<Mass>,
    /// Its temperature when it is filled.
    pub temperature: Temperature,
    /// How many there are.
    pub stock: u32,
    /// What one costs.
    pub price: Option<Price>,
}

impl Container {
    /// `stock` containers for `volume`, at 20 °C; nothing else known.
    pub fn new(name: impl Into<String>, volume: Volume, stock: u32) -> Self {
        Self {
            name: name.into(),
            volume,
            brimful: None,
            material: None,
            mass: None,
            temperature: deg_c(20.0),
            stock,
            price: None,
        }
    }
}

/// What a container is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Material {
    /// Glass: how far it cools the syrup and how it grows is known.
    Glass,
    /// Plastic: thin and light; neither is computed.
    Plastic,
    /// Metal: neither is computed.
    Metal,
    /// Stoneware: neither is computed.
    Stoneware,
}

impl Material {
    /// Every material.
    pub const ALL: [Self; 4] = [Self::Glass, Self::Plastic, Self::Metal, Self::Stoneware];

    /// Its name in data.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Glass => "glass",
            Self::Plastic => "plastic",
            Self::Metal => "metal",
            Self::Stoneware => "stoneware",
        }
    }

    /// The material of that name.
    ///
    /// # Errors
    /// Unknown name, with the nearest one.
    ///
    /// ```
    /// use sugaring::finish::Material;
    /// assert_eq!(Material::named("glass")?, Material::Glass);
    /// assert_eq!(
    ///     Material::named("glas").unwrap_err().to_string(),
    ///     "material has the unknown name \"glas\"; nearest: glass",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn named(name: &str) -> Result<Self, Error> {
        let found = Self::ALL.into_iter().find(|m| m.name().eq_ignore_ascii_case(name));
        found.ok_or_else(|| Error::unknown_name("material", name, Self::ALL.map(Self::name)))
    }

    /// Specific heat, J/(kg K), where it is known. Glass: common practice.
    pub(crate) const fn specific_heat(self) -> Option<f64> {
        match self {
            Self::Glass => Some(840.0),
            Self::Plastic | Self::Metal | Self::Stoneware => None,
        }
    }

    /// Cubical expansion, 1/K, where it is known. Glass: ISO 1768:1975, clause 3.
    pub(crate) const fn expansion(self) -> Option<f64> {
        match self {
            Self::Glass => Some(25e-6),
            Self::Plastic | Self::Metal | Self::Stoneware => None,
        }
    }
}
