//! The unit words: one table from which follow the functions that make, the types that read and the data.

#![expect(non_camel_case_types, reason = "a unit word is the same as function and as type")]

use super::{
    ApparentRelativeDensity2020, Baume2020, Baume6060F, RelativeDensity204, RelativeDensity2020, RelativeDensity6060F,
};
use super::{
    Area, Concentration, Conductivity, Count, Density, Energy, EnergyPerMass, Flow, Length, Mass, MassFlow, PerKelvin,
    Power, Pressure, Ratio, SpecificHeat, Temperature, TemperatureDifference, Time, Viscosity, Volume,
};
use super::{Dimension, GaugePressure, Permeance, Si, Unit, Word};

/// Words of a `uom` quantity: `word symbol [aliases] (zero, times, over, offset) definition`.
macro_rules! words {
    ($($dimension:ident in $module:ident { $(
        $word:ident $symbol:literal [$($alias:literal),*]
        ($zero:expr, $times:expr, $over:expr, $offset:expr) $definition:literal;
    )+ })+) => { $(
        mod $module {
            unit! {
                system: crate::uom::si;
                quantity: crate::uom::si::$module;
                $(
                    #[doc = $definition]
                    @$word: $times / $over, $offset * $over / $times - $zero; $symbol, $symbol, $symbol;
                )+
            }
        }
        $( word! {
            $dimension $word ($module::$word) $symbol [$($alias),*] ($zero, $times, $over, $offset) $definition
        } )+
    )+ };
}

/// Words of a quantity of our own.
macro_rules! own_words {
    ($($dimension:ident in $module:ident { $(
        $word:ident $symbol:literal [$($alias:literal),*]
        ($zero:expr, $times:expr, $over:expr, $offset:expr) $definition:literal;
    )+ })+) => { $(
        mod $module { $(
            #[doc = $definition]
            #[derive(Clone, Copy, Debug)]
            pub struct $word;
        )+ }
        $( word! {
            $dimension $word ($module::$word) $symbol [$($alias),*] ($zero, $times, $over, $offset) $definition
        } )+
    )+ };
}

macro_rules! word {
    ($dimension:ident $word:ident ($marker:path) $symbol:literal [$($alias:literal),*]
     ($zero:expr, $times:expr, $over:expr, $offset:expr) $definition:literal) => {
        #[doc = concat!("A value in `", stringify!($word), "` (", $symbol, "): ", $definition, ".")]
        #[must_use]
        pub fn $word(value: f64) -> $dimension {
            $dimension::of_si(table::$word.to_si(value))
        }

        #[doc = concat!("`", stringify!($word), "` (", $symbol, ") for reading with `get`.")]
        pub type $word = $marker;

        impl Word for $marker {
            type Quantity = $dimension;

            fn unit() -> &'static Unit {
                &table::$word
            }

            fn of_si(si: f64) -> $dimension {
                <$dimension as Si>::of_si(si)
            }
        }
    };
}

macro_rules! with_table {
    ($($kind:ident! { $($dimension:ident in $module:ident { $(
        $word:ident $symbol:literal [$($alias:literal),*]
        ($zero:expr, $times:expr, $over:expr, $offset:expr) $definition:literal;
    )+ })+ })+) => {
        $( $kind! { $($dimension in $module { $(
            $word $symbol [$($alias),*] ($zero, $times, $over, $offset) $definition;
        )+ })+ } )+

        /// The units as data, by word.
        pub mod table {
            #![expect(non_upper_case_globals, reason = "named by their words")]

            use super::{Dimension, Unit};

            $( $( $(
                #[doc = concat!($symbol, ": ", $definition)]
                pub static $word: Unit = Unit {
                    dimension: Dimension::$dimension,
                    word: stringify!($word),
                    symbol: $symbol,
                    aliases: &[$($alias),*],
                    definition: $definition,
                    zero: $zero,
                    times: $times,
                    over: $over,
                    offset: $offset,
                };
            )+ )+ )+

            /// °Brix as a unit of data: mass per cent of dissolved solids.
            pub static deg_brix: Unit = Unit {
                dimension: Dimension::Brix,
                word: "brix",
                symbol: "°Bx",
                aliases: &["Bx", "degBx", "Brix", "°Brix"],
                definition: "mass per cent of dissolved solids",
                zero: 0.0,
                times: 1.0,
                over: 1.0,
                offset: 0.0,
            };

            /// Every unit, by dimension.
            pub static ALL: &[&Unit] = &[$( $( $( &$word, )+ )+ )+ &deg_brix];
        }
    };
}

with_table! {
    words! {
        Volume in volume {
            gal "gal" ["gallon", "gallons", "US gal", "US gallon", "US gallons"] (0.0, 3.785_411_784e-3, 1.0, 0.0) "231 in³ exactly";
            imp_gal "imp gal" ["imperial gallon", "imperial gallons"] (0.0, 4.546_09e-3, 1.0, 0.0) "exact by definition";
            quart "qt" ["quarts"] (0.0, 9.463_529_46e-4, 1.0, 0.0) "a quarter of a US gallon";
            fl_oz "fl oz" ["fluid ounce", "fluid ounces"] (0.0, 2.957_352_956_25e-5, 1.0, 0.0) "a US gallon / 128";
            litre "L" ["l", "litres", "liter", "liters"] (0.0, 1.0, 1000.0, 0.0) "1e-3 m³";
            ml "mL" ["millilitre", "millilitres", "milliliter", "milliliters"] (0.0, 1.0, 1e6, 0.0) "1e-6 m³";
            cubic_metre "m³" ["m3", "cubic metres", "cubic meter", "cubic meters"] (0.0, 1.0, 1.0, 0.0) "SI";
            cord "cord" ["cords"] (0.0, 3.624_556_363_776, 1.0, 0.0) "128 ft³ stacked";
        }
        Mass in mass {
            kg "kg" ["kilogram", "kilograms"] (0.0, 1.0, 1.0, 0.0) "SI";
            gram "g" ["grams"] (0.0, 1.0, 1000.0, 0.0) "1e-3 kg";
            lb "lb" ["lbs", "pound", "pounds"] (0.0, 0.453_592_37, 1.0, 0.0) "exact by the agreement of 1959";
            oz "oz" ["ounce", "ounces"] (0.0, 2.834_952_312_5e-2, 1.0, 0.0) "a pound / 16";
            tonne "t" ["tonnes"] (0.0, 1000.0, 1.0, 0.0) "1000 kg";
            short_ton "short ton" ["short tons"] (0.0, 907.184_74, 1.0, 0.0) "2000 lb";
        }
        Temperature in thermodynamic_temperature {
            deg_c "°C" ["º C", "ºC", "˚C", "℃", "degC", "deg C", "celsius"] (0.0, 1.0, 1.0, 273.15) "K − 273.15";
            deg_f "°F" ["ºF", "˚F", "℉", "degF", "deg F", "fahrenheit"] (32.0, 1.0, 1.8, 273.15) "(x − 32)/1.8 °C";
            kelvin "K" ["kelvins"] (0.0, 1.0, 1.0, 0.0) "SI";
        }
        TemperatureDifference in temperature_interval {
            delta_c "Δ°C" ["∆°C", "deltaC", "delta C"] (0.0, 1.0, 1.0, 0.0) "1 K";
            delta_f "Δ°F" ["∆°F", "deltaF", "delta F"] (0.0, 1.0, 1.8, 0.0) "5/9 K";
        }
        Pressure in pressure {
            pa "Pa" ["pascal", "pascals"] (0.0, 1.0, 1.0, 0.0) "SI";
            hpa "hPa" ["mbar", "millibar"] (0.0, 100.0, 1.0, 0.0) "100 Pa";
            kpa "kPa" ["kilopascal", "kPa(a)"] (0.0, 1000.0, 1.0, 0.0) "1000 Pa";
            bar "bar" ["bars", "bara", "bar(a)", "bar a"] (0.0, 1e5, 1.0, 0.0) "1e5 Pa";
            psi "psi" ["psia", "psi(a)", "psi a", "lbf/in²"] (0.0, 6_894.757_293_168_361, 1.0, 0.0) "lb · 9.80665 m/s² / in²";
            in_hg "inHg" ["in Hg", "inches of mercury"] (0.0, 3_386.388_640_341, 1.0, 0.0) "25.4 mm of conventional mercury";
            mm_hg "mmHg" ["mm Hg"] (0.0, 133.322_387_415, 1.0, 0.0) "13 595.1 kg/m³ · 9.80665 m/s² · 1 mm";
            atm "atm" ["atmosphere", "atmospheres"] (0.0, 101_325.0, 1.0, 0.0) "exact by definition";
        }
        Length in length {
            mm "mm" ["millimetre", "millimetres", "millimeter", "millimeters"] (0.0, 1.0, 1000.0, 0.0) "1e-3 m";
            cm "cm" ["centimetre", "centimetres", "centimeter", "centimeters"] (0.0, 1.0, 100.0, 0.0) "1e-2 m";
            metre "m" ["metres", "meter", "meters"] (0.0, 1.0, 1.0, 0.0) "SI";
            inch "in" ["inches"] (0.0, 0.0254, 1.0, 0.0) "exact by the agreement of 1959";
            foot "ft" ["feet"] (0.0, 0.3048, 1.0, 0.0) "12 in";
        }
        Area in area {
            square_metre "m²" ["m2", "square metres", "square meter", "square meters"] (0.0, 1.0, 1.0, 0.0) "SI";
            square_foot "ft²" ["ft2", "square feet"] (0.0, 0.092_903_04, 1.0, 0.0) "ft²";
        }
        Time in time {
            seconds "s" ["second", "sec"] (0.0, 1.0, 1.0, 0.0) "SI";
            minutes "min" ["minute"] (0.0, 60.0, 1.0, 0.0) "60 s";
            hours "h" ["hour", "hr", "hrs"] (0.0, 3600.0, 1.0, 0.0) "3600 s";
            days "d" ["day"] (0.0, 86_400.0, 1.0, 0.0) "24 h";
        }
        Flow in volume_rate {
            gal_per_h "gal/h" ["gph"] (0.0, 3.785_411_784e-3 / 3600.0, 1.0, 0.0) "US gallons per 3600 s";
            gal_per_min "gal/min" ["gpm"] (0.0, 3.785_411_784e-3 / 60.0, 1.0, 0.0) "US gallons per 60 s";
            gal_per_day "gal/d" ["gpd", "gal/day"] (0.0, 3.785_411_784e-3 / 86_400.0, 1.0, 0.0) "US gallons per 24 h";
            litre_per_h "L/h" ["l/h", "L/hr"] (0.0, 1.0, 3.6e6, 0.0) "1e-3 m³ per 3600 s";
            litre_per_min "L/min" ["l/min"] (0.0, 1.0, 6e4, 0.0) "1e-3 m³ per 60 s";
            cubic_metre_per_day "m³/d" ["m3/d", "m³/day", "m3/day"] (0.0, 1.0, 86_400.0, 0.0) "1 m³ per 24 h";
            cubic_metre_per_s "m³/s" ["m3/s"] (0.0, 1.0, 1.0, 0.0) "SI";
        }
        MassFlow in mass_rate {
            kg_per_h "kg/h" ["kg/hr"] (0.0, 1.0, 3600.0, 0.0) "1 kg per 3600 s";
            lb_per_h "lb/h" ["lb/hr"] (0.0, 0.453_592_37 / 3600.0, 1.0, 0.0) "1 lb per 3600 s";
            kg_per_s "kg/s" [] (0.0, 1.0, 1.0, 0.0) "SI";
        }
        Power in power {
            watt "W" ["watts"] (0.0, 1.0, 1.0, 0.0) "SI";
            kw "kW" ["kilowatt", "kilowatts"] (0.0, 1000.0, 1.0, 0.0) "1000 W";
            btu_per_h "Btu/h" ["BTU/h", "btu/h", "Btu/hr"] (0.0, 1_055.055_852_62 / 3600.0, 1.0, 0.0) "Btu (IT) per 3600 s";
        }
        Energy in energy {
            joule "J" ["joules"] (0.0, 1.0, 1.0, 0.0) "SI";
            kj "kJ" ["kilojoule"] (0.0, 1000.0, 1.0, 0.0) "1000 J";
            mj "MJ" ["megajoule"] (0.0, 1e6, 1.0, 0.0) "1e6 J";
            kwh "kWh" ["kilowatt hour", "kilowatt hours"] (0.0, 3.6e6, 1.0, 0.0) "3.6 MJ";
            btu "Btu" ["BTU"] (0.0, 1_055.055_852_62, 1.0, 0.0) "international table: 4.1868 kJ/(kg K) · lb · 5/9 K";
            million_btu "million Btu" ["million BTU"] (0.0, 1_055.055_852_62e6, 1.0, 0.0) "1e6 Btu (IT)";
        }
        Density in mass_density {
            kg_per_m3 "kg/m³" ["kg/m3"] (0.0, 1.0, 1.0, 0.0) "SI";
            lb_per_gal "lb/gal" [] (0.0, 0.453_592_37 / 3.785_411_784e-3, 1.0, 0.0) "1 lb per US gallon";
        }
        Concentration in mass_concentration {
            mg_per_litre "mg/L" ["mg/l"] (0.0, 1.0, 1000.0, 0.0) "1e-3 kg/m³";
            gram_per_litre "g/L" ["g/l"] (0.0, 1.0, 1.0, 0.0) "1 kg/m³";
        }
        EnergyPerMass in available_energy {
            joule_per_kg "J/kg" [] (0.0, 1.0, 1.0, 0.0) "SI";
            kj_per_kg "kJ/kg" [] (0.0, 1000.0, 1.0, 0.0) "1000 J/kg";
            mj_per_kg "MJ/kg" [] (0.0, 1e6, 1.0, 0.0) "1e6 J/kg";
            btu_per_lb "Btu/lb" ["BTU/lb"] (0.0, 2326.0, 1.0, 0.0) "Btu (IT) per lb, exactly 2326 J/kg";
        }
        SpecificHeat in specific_heat_capacity {
            joule_per_kg_k "J/(kg K)" ["J/(kg·K)"] (0.0, 1.0, 1.0, 0.0) "SI";
            kj_per_kg_k "kJ/(kg K)" ["kJ/(kg·K)"] (0.0, 1000.0, 1.0, 0.0) "1000 J/(kg K)";
        }
        Viscosity in dynamic_viscosity {
            pascal_s "Pa·s" ["Pa s"] (0.0, 1.0, 1.0, 0.0) "SI";
            mpa_s "mPa·s" ["mPa s", "cP"] (0.0, 1.0, 1000.0, 0.0) "1e-3 Pa s";
        }
        Conductivity in thermal_conductivity {
            w_per_m_k "W/(m K)" ["W/(m·K)"] (0.0, 1.0, 1.0, 0.0) "SI";
        }
        PerKelvin in temperature_coefficient {
            per_kelvin "1/K" ["/K"] (0.0, 1.0, 1.0, 0.0) "SI";
        }
        Ratio in ratio {
            fraction "" [] (0.0, 1.0, 1.0, 0.0) "a plain number";
            percent "%" ["percent", "per cent"] (0.0, 1.0, 100.0, 0.0) "1/100";
        }
    }
    own_words! {
        GaugePressure in gauge_pressure {
            pa_gauge "Pa gauge" [] (0.0, 1.0, 1.0, 0.0) "1 Pa above the room";
            kpa_gauge "kPa gauge" ["kPag", "kPa(g)"] (0.0, 1000.0, 1.0, 0.0) "1000 Pa above the room";
            bar_gauge "bar gauge" ["barg", "bar(g)", "bar g"] (0.0, 1e5, 1.0, 0.0) "1e5 Pa above the room";
            psi_gauge "psi gauge" ["psig", "psi(g)", "psi g"] (0.0, 6_894.757_293_168_361, 1.0, 0.0) "psi above the room";
        }
        Permeance in permeance {
            litre_per_h_bar "L/h/bar" ["L/(h bar)", "L/h bar"] (0.0, 1.0, 3.6e11, 0.0) "1 L/h per bar";
            cubic_metre_per_s_pa "m³/s/Pa" ["m3/s/Pa"] (0.0, 1.0, 1.0, 0.0) "SI";
        }
        Count in count {
            each "each" ["pieces"] (0.0, 1.0, 1.0, 0.0) "a count";
        }
        Baume2020 in baume_20_20_scale {
            baume_20_20 "°Bé 20/20" ["Bé 20/20", "Be 20/20", "degBe 20/20"] (0.0, 1.0, 1.0, 0.0) "modulus 145, solution and water at 20 °C";
        }
        Baume6060F in baume_60_60_f_scale {
            baume_60_60_f "°Bé 60/60 °F" ["°Bé 60/60", "Bé 60/60 °F", "Be 60/60 °F", "degBe 60/60 degF"] (0.0, 1.0, 1.0, 0.0) "modulus 145, solution and water at 60 °F";
        }
        RelativeDensity2020 in relative_density_20_20_scale {
            relative_density_20_20 "SG 20/20" [] (0.0, 1.0, 1.0, 0.0) "density over that of water, both at 20 °C";
        }
        RelativeDensity6060F in relative_density_60_60_f_scale {
            relative_density_60_60_f "SG 60/60 °F" ["SG 60/60"] (0.0, 1.0, 1.0, 0.0) "density over that of water, both at 60 °F";
        }
        RelativeDensity204 in relative_density_20_4_scale {
            relative_density_20_4 "SG 20/4" [] (0.0, 1.0, 1.0, 0.0) "density at 20 °C over that of water at 4 °C";
        }
        ApparentRelativeDensity2020 in apparent_relative_density_20_20_scale {
            apparent_relative_density_20_20 "SG 20/20 in air" ["apparent SG 20/20"] (0.0, 1.0, 1.0, 0.0) "weights in air over that of water, both at 20 °C";
        }
    }
}

impl Unit {
    /// The SI unit of a dimension.
    #[must_use]
    pub const fn base(dimension: Dimension) -> &'static Self {
        match dimension {
            Dimension::Volume => &table::cubic_metre,
            Dimension::Mass => &table::kg,
            Dimension::Temperature => &table::kelvin,
            Dimension::TemperatureDifference => &table::delta_c,
            Dimension::Pressure => &table::pa,
            Dimension::GaugePressure => &table::pa_gauge,
            Dimension::Length => &table::metre,
            Dimension::Area => &table::square_metre,
            Dimension::Time => &table::seconds,
            Dimension::Flow => &table::cubic_metre_per_s,
            Dimension::MassFlow => &table::kg_per_s,
            Dimension::Power => &table::watt,
            Dimension::Energy => &table::joule,
            Dimension::Density => &table::kg_per_m3,
            Dimension::Concentration => &table::gram_per_litre,
            Dimension::EnergyPerMass => &table::joule_per_kg,
            Dimension::SpecificHeat => &table::joule_per_kg_k,
            Dimension::Viscosity => &table::pascal_s,
            Dimension::Conductivity => &table::w_per_m_k,
            Dimension::Permeance => &table::cubic_metre_per_s_pa,
            Dimension::PerKelvin => &table::per_kelvin,
            Dimension::Ratio => &table::fraction,
            Dimension::Brix => &table::deg_brix,
            Dimension::Count => &table::each,
            Dimension::Baume2020 => &table::baume_20_20,
            Dimension::Baume6060F => &table::baume_60_60_f,
            Dimension::RelativeDensity2020 => &table::relative_density_20_20,
            Dimension::RelativeDensity6060F => &table::relative_density_60_60_f,
            Dimension::RelativeDensity204 => &table::relative_density_20_4,
            Dimension::ApparentRelativeDensity2020 => &table::apparent_relative_density_20_20,
        }
    }
}
