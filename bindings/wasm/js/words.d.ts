// Written by `cargo xtask surface`.

import type { Word } from "./quantity.js";

/** The symbols of each dimension. */
export interface Symbols {
  volume: "gal" | "imp gal" | "qt" | "fl oz" | "L" | "mL" | "m³" | "cord";
  mass: "kg" | "g" | "lb" | "oz" | "t" | "short ton";
  temperature: "°C" | "°F" | "K";
  temperature_difference: "Δ°C" | "Δ°F";
  pressure: "Pa" | "hPa" | "kPa" | "bar" | "psi" | "inHg" | "mmHg" | "atm";
  length: "mm" | "cm" | "m" | "in" | "ft";
  area: "m²" | "ft²";
  time: "s" | "min" | "h" | "d";
  flow: "gal/h" | "gal/min" | "gal/d" | "L/h" | "L/min" | "m³/d" | "m³/s";
  mass_flow: "kg/h" | "lb/h" | "kg/s";
  power: "W" | "kW" | "Btu/h";
  energy: "J" | "kJ" | "MJ" | "kWh" | "Btu" | "million Btu";
  density: "kg/m³" | "lb/gal";
  concentration: "mg/L" | "g/L";
  energy_per_mass: "J/kg" | "kJ/kg" | "MJ/kg" | "Btu/lb";
  specific_heat: "J/(kg K)" | "kJ/(kg K)";
  viscosity: "Pa·s" | "mPa·s";
  conductivity: "W/(m K)";
  per_kelvin: "1/K";
  ratio: "" | "%";
  gauge_pressure: "Pa gauge" | "kPa gauge" | "bar gauge" | "psi gauge";
  permeance: "L/h/bar" | "m³/s/Pa";
  count: "each";
  baume_20_20: "°Bé 20/20";
  baume_60_60_f: "°Bé 60/60 °F";
  relative_density_20_20: "SG 20/20";
  relative_density_60_60_f: "SG 60/60 °F";
  relative_density_20_4: "SG 20/4";
  apparent_relative_density_20_20: "SG 20/20 in air";
  brix: "°Bx";
}

/** Everything that a unit measures. */
export type Dimension = keyof Symbols;

/** gal: 231 in³ exactly. */
export declare const gal: Word<"volume">;

/** imp gal: exact by definition. */
export declare const imp_gal: Word<"volume">;

/** qt: a quarter of a US gallon. */
export declare const quart: Word<"volume">;

/** fl oz: a US gallon / 128. */
export declare const fl_oz: Word<"volume">;

/** L: 1e-3 m³. */
export declare const litre: Word<"volume">;

/** mL: 1e-6 m³. */
export declare const ml: Word<"volume">;

/** m³: SI. */
export declare const cubic_metre: Word<"volume">;

/** cord: 128 ft³ stacked. */
export declare const cord: Word<"volume">;

/** kg: SI. */
export declare const kg: Word<"mass">;

/** g: 1e-3 kg. */
export declare const gram: Word<"mass">;

/** lb: exact by the agreement of 1959. */
export declare const lb: Word<"mass">;

/** oz: a pound / 16. */
export declare const oz: Word<"mass">;

/** t: 1000 kg. */
export declare const tonne: Word<"mass">;

/** short ton: 2000 lb. */
export declare const short_ton: Word<"mass">;

/** °C: K − 273.15. */
export declare const deg_c: Word<"temperature">;

/** °F: (x − 32)/1.8 °C. */
export declare const deg_f: Word<"temperature">;

/** K: SI. */
export declare const kelvin: Word<"temperature">;

/** Δ°C: 1 K. */
export declare const delta_c: Word<"temperature_difference">;

/** Δ°F: 5/9 K. */
export declare const delta_f: Word<"temperature_difference">;

/** Pa: SI. */
export declare const pa: Word<"pressure">;

/** hPa: 100 Pa. */
export declare const hpa: Word<"pressure">;

/** kPa: 1000 Pa. */
export declare const kpa: Word<"pressure">;

/** bar: 1e5 Pa. */
export declare const bar: Word<"pressure">;

/** psi: lb · 9.80665 m/s² / in². */
export declare const psi: Word<"pressure">;

/** inHg: 25.4 mm of conventional mercury. */
export declare const in_hg: Word<"pressure">;

/** mmHg: 13 595.1 kg/m³ · 9.80665 m/s² · 1 mm. */
export declare const mm_hg: Word<"pressure">;

/** atm: exact by definition. */
export declare const atm: Word<"pressure">;

/** mm: 1e-3 m. */
export declare const mm: Word<"length">;

/** cm: 1e-2 m. */
export declare const cm: Word<"length">;

/** m: SI. */
export declare const metre: Word<"length">;

/** in: exact by the agreement of 1959. */
export declare const inch: Word<"length">;

/** ft: 12 in. */
export declare const foot: Word<"length">;

/** m²: SI. */
export declare const square_metre: Word<"area">;

/** ft²: ft². */
export declare const square_foot: Word<"area">;

/** s: SI. */
export declare const seconds: Word<"time">;

/** min: 60 s. */
export declare const minutes: Word<"time">;

/** h: 3600 s. */
export declare const hours: Word<"time">;

/** d: 24 h. */
export declare const days: Word<"time">;

/** gal/h: US gallons per 3600 s. */
export declare const gal_per_h: Word<"flow">;

/** gal/min: US gallons per 60 s. */
export declare const gal_per_min: Word<"flow">;

/** gal/d: US gallons per 24 h. */
export declare const gal_per_day: Word<"flow">;

/** L/h: 1e-3 m³ per 3600 s. */
export declare const litre_per_h: Word<"flow">;

/** L/min: 1e-3 m³ per 60 s. */
export declare const litre_per_min: Word<"flow">;

/** m³/d: 1 m³ per 24 h. */
export declare const cubic_metre_per_day: Word<"flow">;

/** m³/s: SI. */
export declare const cubic_metre_per_s: Word<"flow">;

/** kg/h: 1 kg per 3600 s. */
export declare const kg_per_h: Word<"mass_flow">;

/** lb/h: 1 lb per 3600 s. */
export declare const lb_per_h: Word<"mass_flow">;

/** kg/s: SI. */
export declare const kg_per_s: Word<"mass_flow">;

/** W: SI. */
export declare const watt: Word<"power">;

/** kW: 1000 W. */
export declare const kw: Word<"power">;

/** Btu/h: Btu (IT) per 3600 s. */
export declare const btu_per_h: Word<"power">;

/** J: SI. */
export declare const joule: Word<"energy">;

/** kJ: 1000 J. */
export declare const kj: Word<"energy">;

/** MJ: 1e6 J. */
export declare const mj: Word<"energy">;

/** kWh: 3.6 MJ. */
export declare const kwh: Word<"energy">;

/** Btu: international table: 4.1868 kJ/(kg K) · lb · 5/9 K. */
export declare const btu: Word<"energy">;

/** million Btu: 1e6 Btu (IT). */
export declare const million_btu: Word<"energy">;

/** kg/m³: SI. */
export declare const kg_per_m3: Word<"density">;

/** lb/gal: 1 lb per US gallon. */
export declare const lb_per_gal: Word<"density">;

/** mg/L: 1e-3 kg/m³. */
export declare const mg_per_litre: Word<"concentration">;

/** g/L: 1 kg/m³. */
export declare const gram_per_litre: Word<"concentration">;

/** J/kg: SI. */
export declare const joule_per_kg: Word<"energy_per_mass">;

/** kJ/kg: 1000 J/kg. */
export declare const kj_per_kg: Word<"energy_per_mass">;

/** MJ/kg: 1e6 J/kg. */
export declare const mj_per_kg: Word<"energy_per_mass">;

/** Btu/lb: Btu (IT) per lb, exactly 2326 J/kg. */
export declare const btu_per_lb: Word<"energy_per_mass">;

/** J/(kg K): SI. */
export declare const joule_per_kg_k: Word<"specific_heat">;

/** kJ/(kg K): 1000 J/(kg K). */
export declare const kj_per_kg_k: Word<"specific_heat">;

/** Pa·s: SI. */
export declare const pascal_s: Word<"viscosity">;

/** mPa·s: 1e-3 Pa s. */
export declare const mpa_s: Word<"viscosity">;

/** W/(m K): SI. */
export declare const w_per_m_k: Word<"conductivity">;

/** 1/K: SI. */
export declare const per_kelvin: Word<"per_kelvin">;

/** a bare number: a plain number. */
export declare const fraction: Word<"ratio">;

/** %: 1/100. */
export declare const percent: Word<"ratio">;

/** Pa gauge: 1 Pa above the room. */
export declare const pa_gauge: Word<"gauge_pressure">;

/** kPa gauge: 1000 Pa above the room. */
export declare const kpa_gauge: Word<"gauge_pressure">;

/** bar gauge: 1e5 Pa above the room. */
export declare const bar_gauge: Word<"gauge_pressure">;

/** psi gauge: psi above the room. */
export declare const psi_gauge: Word<"gauge_pressure">;

/** L/h/bar: 1 L/h per bar. */
export declare const litre_per_h_bar: Word<"permeance">;

/** m³/s/Pa: SI. */
export declare const cubic_metre_per_s_pa: Word<"permeance">;

/** each: a count. */
export declare const each: Word<"count">;

/** °Bé 20/20: modulus 145, solution and water at 20 °C. */
export declare const baume_20_20: Word<"baume_20_20">;

/** °Bé 60/60 °F: modulus 145, solution and water at 60 °F. */
export declare const baume_60_60_f: Word<"baume_60_60_f">;

/** SG 20/20: density over that of water, both at 20 °C. */
export declare const relative_density_20_20: Word<"relative_density_20_20">;

/** SG 60/60 °F: density over that of water, both at 60 °F. */
export declare const relative_density_60_60_f: Word<"relative_density_60_60_f">;

/** SG 20/4: density at 20 °C over that of water at 4 °C. */
export declare const relative_density_20_4: Word<"relative_density_20_4">;

/** SG 20/20 in air: weights in air over that of water, both at 20 °C. */
export declare const apparent_relative_density_20_20: Word<"apparent_relative_density_20_20">;

/** °Bx: mass per cent of dissolved solids. */
export declare const brix: Word<"brix">;
