// Written by `cargo xtask surface`.

import type { Figure, Given, PriceGiven, QuantityData } from "../quantity.js";

/** Today's air: one reading at least; the first that stands, in this order, is used, the others are checks. */
export interface Air {
  /** Mean temperature of the air over the last 12 hours. */
  air_temperature?: Given<"temperature">;
  /** The airport's or home station's number; needs the altitude. */
  altimeter_setting?: Given<"pressure">;
  /** Altitude of the sugarhouse; alone it leaves the weather out. */
  altitude?: Given<"length">;
  /** The weather map's number; needs the altitude and the air temperature. */
  sea_level_pressure?: Given<"pressure">;
  /** A barometer in the sugarhouse, not adjusted to sea level. */
  station_pressure?: Given<"pressure">;
  /** What plain water boils at, here, now: the best reading. */
  water_boils_at?: Given<"temperature">;
}

/** A container at hand. */
export interface Container {
  /** What it holds to the brim. */
  brimful?: Given<"volume">;
  /** Its own mass. */
  mass?: Given<"mass">;
  /** Its material, such as `glass`. */
  material?: string;
  /** Its name. */
  name?: string;
  /** Price of one. */
  price?: PriceGiven;
  /** How many there are. */
  stock: number;
  /** Its temperature before filling; default 20 °C. */
  temperature?: Given<"temperature">;
  /** Contents on the label, at 20 °C. */
  volume: Given<"volume">;
}

/** Of the gross heat. */
export interface EfficiencyOfGross {
  of_gross: Given<"ratio">;
}

/** Of the net heat. */
export interface EfficiencyOfNet {
  of_net: Given<"ratio">;
}

/** Heat into the liquid per heat of the fuel. */
export type Efficiency = EfficiencyOfGross | EfficiencyOfNet;

/** Water per total mass. */
export interface MoistureWetBasis {
  wet_basis: Given<"ratio">;
}

/** Water per dry mass, as pin meters show it. */
export interface MoistureDryBasis {
  dry_basis: Given<"ratio">;
}

/** Water in wood. */
export type Moisture = MoistureWetBasis | MoistureDryBasis;

/** Wood. */
export interface Wood {
  /** Its moisture; default 25 % wet basis. */
  moisture?: Moisture;
  /** Its species; default `hardwood`. */
  species?: string;
}

/** A fuel, how well it is used, what it costs. */
export interface Fuel {
  /** Share of the fuel's heat that reaches the liquid. */
  efficiency?: Efficiency;
  /** A fuel by name, such as `propane`; or `wood`. */
  named?: string;
  /** Price per any quantity of it. */
  price?: PriceGiven;
  /** Wood; or `named`. */
  wood?: Wood;
}

export interface HeatHeldLevelHeldLevelKeys {
  /** Water added per time. */
  added: Given<"mass_flow">;
  /** Its temperature. */
  feed_temperature: Given<"temperature">;
}

/** Cold water added to hold the level of boiling water. */
export interface HeatHeldLevel {
  held_level: HeatHeldLevelHeldLevelKeys;
}

/** Water boiled off without any feed. */
export interface HeatLevelDrop {
  level_drop: Given<"mass_flow">;
}

/** The heat itself. */
export interface HeatPower {
  power: Given<"power">;
}

/** Kinds of pan of the rule by area. */
export type PanKind = "flat" | "flat_blower" | "flue";

/** The rule by area, assumed. */
export interface HeatAreaRule {
  area_rule: PanKind;
}

/** Heat into the liquid, however it is known. */
export type Heat = HeatHeldLevel | HeatLevelDrop | HeatPower | HeatAreaRule;

/** What stood in the pan from before. */
export interface LeftInPan {
  /** Its °Brix. */
  brix: Given<"brix">;
  /** Its temperature. */
  temperature: Given<"temperature">;
  /** Its volume. */
  volume: Given<"volume">;
}

/** The big pan. */
export interface Pan {
  /** Least depth over the fire, 5 to 500 mm; default 25 mm. */
  least_depth?: Given<"length">;
  /** Inner length, 50 mm to 20 m. */
  length: Given<"length">;
  /** Depth of the boiling liquid while topping up, 5 to 500 mm; default 50 mm. */
  running_depth?: Given<"length">;
  /** Inner width, 50 mm to 20 m. */
  width: Given<"length">;
}

/** How a pan is run. */
export type PanRun = "batch";

/** The big pan, its fire and what stood in it. */
export interface Evaporator {
  /** The fire's fuel; default hardwood. */
  fuel?: Fuel;
  /** Heat into the liquid; default the rule by area for a flat pan. */
  heat?: Heat;
  /** What stood in the pan from before. */
  left_in_pan?: LeftInPan;
  /** The pan. */
  pan: Pan;
  /** How it is run; this version knows the batch with topping up. */
  run?: PanRun;
}

/** The small pan that finishes. */
export interface Finishing {
  /** What it holds; unchecked where it is left out. */
  capacity?: Given<"volume">;
  /** Its fuel; default propane. */
  fuel?: Fuel;
  /** Heat into the syrup, 0.1 to 100 kW; default 3 kW. */
  heat?: Given<"power">;
}

/** Scales of a hydrometer. */
export type HydrometerScale = "brix" | "density" | "baume_20_20" | "baume_60_60_f" | "relative_density_20_20" | "relative_density_60_60_f" | "relative_density_20_4" | "apparent_relative_density_20_20";

/** Where the paper of a hydrometer begins and ends. */
export interface Span {
  /** The greatest mark. */
  high: number;
  /** The least mark. */
  low: number;
}

/** What an instrument showed, and what a right one would have. */
export interface CheckPoint {
  /** What a right one would have shown. */
  expected: number;
  /** What it showed. */
  shown: number;
}

/** A hydrometer. */
export interface Hydrometer {
  /** Temperature of its calibration. */
  calibrated_at: Given<"temperature">;
  /** Cubical expansion of its glass; default 25e-6 per kelvin. */
  glass_expansion?: Given<"per_kelvin">;
  /** What it reads too high, in its own marks; default 0. */
  offset?: number;
  /** Step to which it is read, in its own marks; adds step/√12 to the uncertainty. */
  resolution?: number;
  /** Its scale. */
  scale: HydrometerScale;
  /** The least and the greatest mark on its paper. */
  span?: Span;
  /** Or two checks of it, the lower first; it is read between them only. */
  two_point?: readonly CheckPoint[];
  /** Standard uncertainty of its scale, in its own marks. */
  uncertainty?: number;
}

/** A glass hydrometer. */
export interface InstrumentHydrometer {
  hydrometer: Hydrometer;
}

/** The range of a refractometer's own correction. */
export interface Compensated {
  /** To this temperature of the prism. */
  high: Given<"temperature">;
  /** From this temperature of the prism. */
  low: Given<"temperature">;
}

/** A refractometer: `compensated`, or `uncompensated`. */
export interface Refractometer {
  /** Between which temperatures of its prism it corrects itself. */
  compensated?: Compensated;
  /** Step to which it is read, °Bx; adds step/√12 to the uncertainty. */
  resolution?: number;
  /** Or the temperature of its prism at which its screw was turned to 0 in water. */
  set_to_zero_at?: Given<"temperature">;
  /** Or two checks of it, the lower first; it is read between them only. */
  two_point?: readonly CheckPoint[];
  /** Standard uncertainty of its scale, °Bx. */
  uncertainty?: number;
  /** True where it does not: what it shows is right with its prism at 20 °C. */
  uncompensated?: string;
  /** What it shows in water; default 0. */
  zero?: number;
}

/** A refractometer. */
export interface InstrumentRefractometer {
  refractometer: Refractometer;
}

/** An instrument at hand. */
export type Instrument = InstrumentHydrometer | InstrumentRefractometer;

/** A membrane element as its label describes it. */
export interface Element {
  /** Permeate flow of the rating test. */
  flow: Given<"flow">;
  /** Permeance from your own test; the rating then only anchors the film. */
  permeance?: Given<"permeance">;
  /** Pressure of the rating test. */
  pressure: Given<"gauge_pressure">;
  /** Recovery of the rating test. */
  recovery: Given<"ratio">;
  /** Rejection of the rating test. */
  rejection: Given<"ratio">;
  /** Salt in the water of the rating test. */
  salt: Given<"concentration">;
  /** Temperature of the rating test. */
  temperature: Given<"temperature">;
}

/** A fixed ratio of the °Brix at the wall. */
export interface PolarisationModulus {
  modulus: number;
}

/** A fixed film coefficient times area of one element, in m³/s. */
export interface PolarisationCoefficient {
  coefficient: number;
}

/** How sugar gathers at the membrane. */
export type Polarisation = "rating_anchored" | PolarisationModulus | PolarisationCoefficient | "none";

/** A point of a pump's curve. */
export interface PumpPoint {
  /** It delivers this flow. */
  flow: Given<"flow">;
  /** And draws this electrical power. */
  power?: Given<"power">;
  /** At this pressure. */
  pressure: Given<"gauge_pressure">;
}

/** The pump: a flow or a table of points, an efficiency or a power. */
export interface Pump {
  /** Efficiency of pump and motor; default 35 %. */
  efficiency?: Given<"ratio">;
  /** Its flow at the pressure of the run; default 250 L/h into each housing side by side. */
  flow?: Given<"flow">;
  /** Its flow at several pressures, in place of one flow. */
  points?: readonly PumpPoint[];
  /** Electrical power, in place of an efficiency. */
  power?: Given<"power">;
}

/** At this °Brix of the tank. */
export interface UntilBrix {
  brix: Given<"brix">;
}

/** At this volume left in the tank. */
export interface UntilVolume {
  volume: Given<"volume">;
}

/** At this share of permeate per sap, by volume. */
export interface UntilRecovery {
  recovery: Given<"ratio">;
}

/** After this time. */
export interface UntilDuration {
  duration: Given<"time">;
}

/** When recirculation ends. */
export type Until = UntilBrix | UntilVolume | UntilRecovery | UntilDuration;

/** The concentrate goes back to the tank until an aim is met. */
export interface RunRecirculateUntil {
  recirculate_until: Until;
}

export interface RunSinglePassSinglePassKeys {
  /** Permeate volume per feed volume. */
  recovery: Given<"ratio">;
}

/** Once through, at this share of permeate. */
export interface RunSinglePass {
  single_pass: RunSinglePassSinglePassKeys;
}

/** How the rig is run. */
export type Run = RunRecirculateUntil | RunSinglePass;

/** The same with one constant, in kelvin. */
export interface TemperatureModelSingle {
  single: number;
}

/** How permeance depends on temperature. */
export type TemperatureModel = "makers" | TemperatureModelSingle | "viscosity" | "per_degree";

/** Whether the tank's warming is counted in the hours. */
export type Warming = "isothermal" | "coupled";

/** The membrane rig and how it is run. */
export interface Membrane {
  /** Pressure on the permeate, to 2 bar; default none. */
  back_pressure?: Given<"pressure">;
  /** One element, from its label. */
  element: Element;
  /** Pressure lost along one element, to 2 bar; default none. */
  element_drop?: Given<"pressure">;
  /** Factor on the film, 0.1 to 4; default 1. */
  film_factor?: Given<"ratio">;
  /** Volume that stays in the housings, to 100 L; default none. */
  hold_up?: Given<"volume">;
  /** Housings side by side, 1 to 64; default 1. */
  parallel?: number;
  /** How sugar gathers at the membrane; default a film anchored at the rating. */
  polarisation?: Polarisation;
  /** Pressure lost in the prefilter, to 2 bar; default none. */
  prefilter_drop?: Given<"pressure">;
  /** Pressure on the gauge. */
  pressure: Given<"gauge_pressure">;
  /** What the rig's weakest part allows; without it nothing is checked. */
  pressure_limit?: Given<"gauge_pressure">;
  /** The pump. */
  pump?: Pump;
  /** Share of the sugar that the membrane keeps, 0.5 to 1; default 1. */
  retention?: Given<"ratio">;
  /** Share of the sap volume kept as permeate for the rinse; default 15 %. */
  rinse?: Given<"ratio">;
  /** How it is run. */
  run: Run;
  /** Elements one after another, 1 to 8; default 1. */
  series?: number;
  /** How permeance falls in the cold; default the makers' formula. */
  temperature_model?: TemperatureModel;
  /** Whether the hours count the warming of the tank; default not. */
  warming?: Warming;
}

/** What an instrument of the day showed in the sap. */
export interface SapReading {
  /** The instrument's name among `instruments`. */
  instrument: string;
  /** Temperature of the sap in a hydrometer's jar, of the prism of a refractometer; default the sap's. */
  temperature?: Given<"temperature">;
  /** The number on the instrument's own scale. */
  value: number;
}

/** A lot of sap. */
export interface Sap {
  /** Its true °Brix; or `reading`. */
  brix?: Given<"brix">;
  /** Its mass; or `volume`. */
  mass?: Given<"mass">;
  /** Its name; numbered where it has none. */
  name?: string;
  /** What an instrument showed; or `brix`. */
  reading?: SapReading;
  /** Its temperature. */
  temperature?: Given<"temperature">;
  /** Its volume at its own temperature; or `mass`. */
  volume?: Given<"volume">;
}

/** When the syrup is done. */
export interface Target {
  /** °Brix of the syrup, 50 to 70. */
  brix: Given<"brix">;
  /** How far above it to aim, 0 to 3 °Bx; default 0. */
  guard?: Given<"brix">;
  /** How much hotter than pure sucrose this syrup boils, 0 to 1 K; default 0. */
  non_sucrose_rise?: Given<"temperature_difference">;
  /** Share of the syrup left in pans and filters, 0 to 0.2; default 0. */
  sugar_lost?: Given<"ratio">;
}

/** Everything a day is planned from. */
export interface DayInputs {
  /** Today's air. */
  air: Air;
  /** Containers at hand; without them there is no packing step. */
  containers?: readonly Container[];
  /** Price of electricity. */
  electricity?: PriceGiven;
  /** The big pan and its fire. */
  evaporator: Evaporator;
  /** Temperature at which the containers are filled; default 85 °C. */
  fill_temperature?: Given<"temperature">;
  /** The small pan; without it the plan ends at the draw. */
  finishing?: Finishing;
  /** Instruments at hand, by name; default a Brix hydrometer for 60 °F. */
  instruments?: { readonly [name: string]: Instrument };
  /** Price of an hour of work. */
  labour?: PriceGiven;
  /** The membrane rig; without it raw sap is boiled. */
  membrane?: Membrane;
  /** Number of draws behind the ranges, 0 to 1 000 000; 0 leaves the ranges out; default 1000. */
  samples?: number;
  /** The lots of sap, one at least. */
  sap: readonly Sap[];
  /** Version of this shape; 1. */
  schema_version?: number;
  /** Seed of the draws behind the ranges; default 1. */
  seed?: number;
  /** `YYYY-MM-DDThh:mm`; printed and counted from, never compared with a clock. */
  start?: string;
  /** When the syrup is done. */
  target: Target;
  /** Printed on top; to 80 characters. */
  title?: string;
}

/** Today's air. */
export interface AirToday {
  /** How it was come by. */
  readonly origin: string;
  /** Station pressure. */
  readonly pressure: Figure<"pressure", "kPa">;
  /** What plain water boils at. */
  readonly water_boils_at: Figure<"temperature", "°C">;
}

/** What came in less what went out. */
export interface Balance {
  /** Mass. */
  readonly mass: Figure<"mass", "kg">;
  /** Sugar. */
  readonly sugar: Figure<"mass", "kg">;
}

/** Containers of one kind. */
export interface Filled {
  /** How many. */
  readonly count: number;
  /** In each. */
  readonly fill_mass: Figure<"mass", "g">;
  /** Or least temperature of filling, where the syrup bears it. */
  readonly fill_needed?: Figure<"temperature", "°C">;
  /** Hot, in each. */
  readonly fill_volume: Figure<"volume", "mL">;
  /** Least temperature of the container that keeps the syrup hot enough. */
  readonly glass_needed?: Figure<"temperature", "°C">;
  /** Between the hot fill and the brim. */
  readonly headspace?: Figure<"volume", "mL">;
  /** Their name. */
  readonly name: string;
  /** Where syrup and container settle. */
  readonly settled?: Figure<"temperature", "°C">;
}

/** What an instrument shows in finished syrup. */
export interface Mark {
  /** Its name. */
  readonly instrument: string;
  /** It shows this. */
  readonly reading: number;
  /** At this temperature. */
  readonly temperature: QuantityData;
}

/** Hours of the other arrangements that this day can offer. */
export interface OtherHours {
  /** One step after another. */
  readonly in_sequence?: Figure<"time", "h">;
  /** The pan fed as concentrate comes. */
  readonly overlapped?: Figure<"time", "h">;
  /** Rig and pan on one tank at once. */
  readonly together?: Figure<"time", "h">;
}

/** What stays in the pans. */
export interface Remains {
  /** Mass. */
  readonly mass: Figure<"mass", "kg">;
  /** Sugar. */
  readonly sugar: Figure<"mass", "kg">;
}

/** How grave a remark is. */
export type Level = "limit" | "caution" | "notice";

/** A step of a day. */
export type StepKind = "concentrate" | "rinse" | "boil" | "finish" | "mend" | "filter" | "bottle";

/** A limit met, a caution or a notice. */
export interface Remark {
  /** Which. */
  readonly key: string;
  /** How grave. */
  readonly level: Level;
  /** At which step. */
  readonly step?: StepKind;
  /** In words. */
  readonly text: string;
}

/** Syrup left over. */
export interface Rest {
  /** `less_than_one_container`, `stock_used_up` or `no_containers`. */
  readonly because: string;
  /** Its mass. */
  readonly mass: Figure<"mass", "kg">;
  /** At 20 °C. */
  readonly volume: Figure<"volume", "L">;
}

/** How a number is known. */
export type How = "assumed" | "calibrated" | "given";

/** What a number rests on. */
export interface RestsOn {
  /** How it is known. */
  readonly how: How;
  /** Path of the input. */
  readonly input: string;
  /** In words. */
  readonly text: string;
}

/** What to set at a step, and what follows from it. */
export interface Settings {
  /** Of a single pass. */
  readonly concentrate?: Figure<"flow", "L/h">;
  /** Sugar this pan would hold if it ran continuously. */
  readonly continuous_hold_up?: Figure<"mass", "kg">;
  /** Where all the syrup would stand in this pan. */
  readonly depth_if_finished?: Figure<"length", "mm">;
  /** With the warming counted. */
  readonly duration_coupled?: Figure<"time", "h">;
  /** Into the rig. */
  readonly feed?: Figure<"flow", "L/h">;
  /** Of the syrup. */
  readonly fill_temperature?: Figure<"temperature", "°C">;
  /** Cold, to start with. */
  readonly first_fill?: Figure<"volume", "L">;
  /** Into the liquid. */
  readonly heat?: Figure<"power", "kW">;
  /** °Brix that this pressure cannot pass. */
  readonly osmotic_limit?: number;
  /** Of one element, at 25 °C. */
  readonly permeance?: Figure<"permeance", "L/h/bar">;
  /** Of a single pass. */
  readonly permeate?: Figure<"flow", "L/h">;
  /** At the start of a recirculation. */
  readonly permeate_first?: Figure<"flow", "L/h">;
  /** For the rinse, and a pan full beside the fire. */
  readonly permeate_kept?: Figure<"volume", "L">;
  /** At its end. */
  readonly permeate_last?: Figure<"flow", "L/h">;
  /** On the gauge. */
  readonly pressure?: Figure<"gauge_pressure", "bar gauge">;
  /** Hot, at the running depth. */
  readonly running_volume?: Figure<"volume", "L">;
  /** Share of it at the sap's temperature. */
  readonly temperature_factor?: number;
  /** To hold. */
  readonly volume?: Figure<"volume", "L">;
  /** The tank at the end. */
  readonly warms_to?: Figure<"temperature", "°C">;
  /** Water boiled off while the level is held with cold water. */
  readonly water_rate?: Figure<"mass_flow", "kg/h">;
}

/** A stage of a boil, and the pan at its end. */
export interface StageState {
  /** °Brix at the end. */
  readonly brix: number;
  /** Of the boiling liquid at the end. */
  readonly depth: Figure<"length", "mm">;
  /** How long it takes. */
  readonly duration: Figure<"time", "h">;
  /** `heat_up`, `top_up` or `boil_down`. */
  readonly kind: string;
  /** In the pan at the end. */
  readonly mass: Figure<"mass", "kg">;
  /** Of the boiling liquid at the end. */
  readonly temperature: Figure<"temperature", "°C">;
  /** Water boiled off. */
  readonly water: Figure<"mass", "kg">;
}

/** A sign that a step is done. */
export interface Stop {
  /** At this depth. */
  readonly depth?: Figure<"length", "mm">;
  /** So far above boiling water. */
  readonly elevation?: Figure<"temperature_difference", "Δ°C">;
  /** At this reading. */
  readonly reading?: number;
  /** At this temperature. */
  readonly temperature?: Figure<"temperature", "°C">;
  /** At this volume. */
  readonly volume?: Figure<"volume", "L">;
  /** Where to see it. */
  readonly what: string;
}

/** A stream. */
export interface Stream {
  /** Its °Brix. */
  readonly brix?: number;
  /** Its mass. */
  readonly mass: Figure<"mass", "kg">;
  /** Its name. */
  readonly name: string;
  /** Its sugar. */
  readonly sugar?: Figure<"mass", "kg">;
  /** Its temperature. */
  readonly temperature?: Figure<"temperature", "°C">;
  /** Its volume at its temperature. */
  readonly volume?: Figure<"volume", "L">;
}

/** A number to watch. */
export interface Watch {
  /** At the start. */
  readonly first: number;
  /** At the end; left out where nothing passes any more. */
  readonly last?: number;
  /** What it is. */
  readonly what: string;
}

/** One step. */
export interface Step {
  /** Keys of the cautions. */
  readonly cautions?: readonly string[];
  /** How long it takes. */
  readonly duration: Figure<"time", "h">;
  /** Which. */
  readonly kind: StepKind;
  /** What its numbers rest on. */
  readonly rests_on: How;
  /** What to set, and what follows from it. */
  readonly settings: Settings;
  /** Stages of a boil. */
  readonly stages?: readonly StageState[];
  /** After the start of the day. */
  readonly start: Figure<"time", "h">;
  /** When it ends; any of these. */
  readonly stop_when?: readonly Stop[];
  /** What goes in. */
  readonly streams_in?: readonly Stream[];
  /** What comes out. */
  readonly streams_out?: readonly Stream[];
  /** What to watch. */
  readonly watch?: readonly Watch[];
}

/** Containers used. */
export interface ContainerCost {
  /** What they cost. */
  readonly cost?: number;
}

/** Money, in the user's own currency. */
export interface Cost {
  /** Upper end of the range. */
  readonly high?: number;
  /** Lines without a price. */
  readonly left_out: readonly string[];
  /** Lower end of the range. */
  readonly low?: number;
  /** Per litre of syrup made today. */
  readonly per_litre?: number;
  /** Per litre of syrup packed. */
  readonly per_litre_packed?: number;
  /** The sum of all lines that have a price. */
  readonly value: number;
}

/** Electricity. */
export interface Electricity {
  /** What it costs. */
  readonly cost?: number;
  readonly high?: number;
  readonly low?: number;
  readonly median?: number;
  readonly unit: "kWh";
  readonly value: number;
}

/** A fuel's volume in the unit it is sold by. */
export type FuelVolume = Figure<"volume", "cord"> | Figure<"volume", "gal">;

/** A step's fuel. */
export interface FuelLine {
  /** What it costs. */
  readonly cost?: number;
  /** Its energy, where it is sold so. */
  readonly energy?: Figure<"energy", "kWh">;
  /** Its mass, as burned. */
  readonly mass?: Figure<"mass", "kg">;
  /** The fuel. */
  readonly name: string;
  /** The step. */
  readonly step: StepKind;
  /** Its volume, as it is sold. */
  readonly volume?: FuelVolume;
}

/** Syrup. */
export interface SyrupMade {
  /** Its mass. */
  readonly mass: Figure<"mass", "kg">;
  /** At 20 °C. */
  readonly volume: Figure<"volume", "L">;
}

/** A draw that is not syrup yet. */
export interface ToFinish {
  /** Its °Brix. */
  readonly brix: number;
  /** Its mass. */
  readonly mass: Figure<"mass", "kg">;
  /** The syrup it is enough for, at 20 °C. */
  readonly syrup: Figure<"volume", "L">;
  /** Its volume, hot. */
  readonly volume: Figure<"volume", "L">;
}

/** Water taken out. */
export interface WaterRemoved {
  /** Boiled off in the big pan. */
  readonly evaporator: Figure<"mass", "kg">;
  /** Boiled off in the small pan. */
  readonly finishing?: Figure<"mass", "kg">;
  /** Permeate. */
  readonly membrane?: Figure<"mass", "kg">;
}

/** Sums of the day. */
export interface Totals {
  /** Containers used. */
  readonly containers?: ContainerCost;
  /** All that has a price. */
  readonly cost: Cost;
  /** Electricity of the pump. */
  readonly electricity?: Electricity;
  /** Fuel, by step. */
  readonly fuel: readonly FuelLine[];
  /** Heat into the liquid. */
  readonly heat: Figure<"energy", "MJ">;
  /** From the start to the syrup. */
  readonly hours: Figure<"time", "h">;
  /** Hours of the fire. */
  readonly hours_fired: Figure<"time", "h">;
  /** Syrup made. */
  readonly syrup?: SyrupMade;
  /** Where no finishing pan was given: what is drawn, to be finished. */
  readonly to_finish?: ToFinish;
  /** Water taken out, by station. */
  readonly water_removed: WaterRemoved;
}

/** The same day without the rig. */
export interface WithoutMembrane {
  /** All that has a price. */
  readonly cost: number;
  /** Of the big pan's fuel. */
  readonly fuel_mass?: Figure<"mass", "kg">;
  /** Of the big pan's fuel. */
  readonly fuel_volume?: FuelVolume;
  /** From the start to the syrup. */
  readonly hours: Figure<"time", "h">;
  /** Hours of the fire. */
  readonly hours_fired: Figure<"time", "h">;
}

/** A planned day: steps in order, amounts, hours, fuel, marks, ranges, remarks and what it rests on. */
export interface DayPlan {
  /** Today's air. */
  readonly air: AirToday;
  /** What came in less what went out: rounding alone. */
  readonly balance: Balance;
  /** Containers filled, largest first. */
  readonly containers?: readonly Filled[];
  /** Share of the draws that the ranges hold. */
  readonly coverage: number;
  /** The inputs as read, units as given. */
  readonly inputs: DayInputs;
  /** What each instrument shows when the syrup is done. */
  readonly marks: readonly Mark[];
  /** Version of the results: the same inputs give the same bits under the same version. */
  readonly numbers: string;
  /** Hours of the other ways to arrange the day. */
  readonly other_hours: OtherHours;
  /** What stays in the pans. */
  readonly remains: Remains;
  /** Limits met, cautions and notices. */
  readonly remarks: readonly Remark[];
  /** Syrup that fills no container. */
  readonly rest?: Rest;
  /** What was assumed, and what rests on the user's own measurement. */
  readonly rests_on: readonly RestsOn[];
  /** Number of draws. */
  readonly samples: number;
  /** Version of this shape. */
  readonly schema_version: number;
  /** Seed of the draws. */
  readonly seed: number;
  /** As given; every time counts from it. */
  readonly start?: string;
  /** The steps, in order of their start. */
  readonly steps: readonly Step[];
  /** As given. */
  readonly title?: string;
  /** Sums of the day. */
  readonly totals: Totals;
  /** Draws whose day could not be planned; they are left out of the ranges. */
  readonly unreachable_draws: number;
  /** The same day without the rig. */
  readonly without_membrane?: WithoutMembrane;
}
