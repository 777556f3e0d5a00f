// Station pressures: frozen data that says how it was come by.

import { encoded } from "./data.js";
import { isOurs, quantityOf, result, unitNamed } from "./quantity.js";
import { picking } from "./options.js";
import { Argument } from "./reading.js";
import { guarded, refusal, refused } from "./runtime.js";
import { DIMENSIONS } from "./surface.js";

const BRAND = Symbol.for("sugaring.station_pressure");
const OWN = Symbol("made here");

const argument = (name, dimension) => new Argument(name, DIMENSIONS.find(([known]) => known === dimension));
const PRESSURE = argument("pressure", "pressure");
const SETTING = argument("setting", "pressure");
const ALTITUDE = argument("altitude", "length");
const AIR_TEMPERATURE = argument("air_temperature", "temperature");
const TEMPERATURE = argument("temperature", "temperature");
const UNCERTAINTY = argument("uncertainty", "pressure");

let pascalOf, isStation;

export class StationPressure {
  #pascal;

  constructor(key, pascal, uncertainty, origin) {
    if (key !== OWN) throw new TypeError("a station pressure is made by StationPressure.measured and its sisters");
    const kpa = unitNamed("kpa");
    this.#pascal = pascal;
    this.pressure = result(pascal, kpa);
    this.uncertainty = result(uncertainty, kpa);
    this.origin = origin;
    Object.freeze(this);
  }

  static measured(pressure) {
    const { si, numbers, unit } = PRESSURE.read(pressure);
    return numbers === undefined ? made("measured", si) : new StationPressures(OWN, numbers, unit);
  }

  static fromAltimeterSetting(setting, altitude) {
    return made("altimeter_setting", SETTING.single(setting), ALTITUDE.single(altitude));
  }

  static fromSeaLevel(pressure, altitude, options) {
    const { air_temperature } = picking(options, ["air_temperature"]);
    return made("sea_level", PRESSURE.single(pressure), ALTITUDE.single(altitude), AIR_TEMPERATURE.single(air_temperature));
  }

  static fromAltitude(altitude) {
    return made("altitude", ALTITUDE.single(altitude));
  }

  static fromBoilingWater(temperature) {
    return made("boiling_water", TEMPERATURE.single(temperature));
  }

  static withUncertainty(station, uncertainty) {
    const known = stationFrom("station", station);
    return new StationPressure(OWN, pascalOf(known), UNCERTAINTY.single(uncertainty), known.origin);
  }

  // For another copy of this package: the very bits of the pressure.
  get [BRAND]() {
    return this.#pascal;
  }

  static {
    pascalOf = (station) => station.#pascal;
    isStation = (value) => typeof value === "object" && value !== null && #pascal in value;
  }
}

Object.freeze(StationPressure);

let columnOf;

// A column of a barometer's readings; each is checked by the function that takes it.
export class StationPressures {
  #column;

  constructor(key, numbers, unit) {
    if (key !== OWN) throw new TypeError("station pressures are made by StationPressure.measured");
    this.#column = { numbers, unit };
    this.pressure = quantityOf(numbers, unit);
    // It does not depend on the reading.
    this.uncertainty = made("measured", 1e5).uncertainty;
    this.origin = "measured";
    Object.freeze(this);
  }

  static {
    columnOf = (value) => (typeof value === "object" && value !== null && #column in value ? value.#column : undefined);
  }
}

Object.freeze(StationPressures);

// An argument that takes a station pressure, or a column of them.
export class StationArgument {
  constructor(name) {
    this.name = name;
  }

  quick(value) {
    return isStation(value) ? pascalOf(value) : undefined;
  }

  read(value) {
    if (value === undefined) throw refused("missing", this.name);
    return columnOf(value) ?? columnFrom(this.name, value) ?? { si: pascalOf(stationFrom(this.name, value)) };
  }
}

// A station pressure, or what is one in another form.
export function stationOf(name, value) {
  if (value === undefined) throw refused("missing", name);
  return stationFrom(name, value);
}

// A station pressure as the core's functions of data take it; undefined where it is none.
export function stationData(value) {
  if (!isStation(value)) return undefined;
  const pa = (number) => ({ value: number, unit: "pa" });
  return { pressure: pa(pascalOf(value)), uncertainty: pa(value.uncertainty.to(unitNamed("pa"))), origin: value.origin };
}

// One that such a function answered.
export function stationFromData({ pressure, uncertainty, origin }) {
  return new StationPressure(OWN, pressure.value, uncertainty.value, origin);
}

function made(origin, a, b = 0, c = 0) {
  const station = guarded((core) => core.station(origin, a, b, c));
  if (station === undefined) throw refusal();
  return new StationPressure(OWN, station[0], station[1], origin);
}

// A station pressure, one of another copy of this package, or its plain data; all else is refused.
function stationFrom(name, value) {
  if (isStation(value)) return value;
  const data = plainly(value);
  if (data === undefined) throw noStation(name, value);
  const of = (part, dimension) => argument(`${name}.${part}`, dimension).single(data[part]);
  const pascal = data.pascal ?? of("pressure", "pressure");
  const origin = data.origin === undefined ? "measured" : String(data.origin);
  const station = guarded((core) => core.station_again(`${name}.origin`, origin, pascal));
  if (station === undefined) throw refusal();
  const uncertainty = data.uncertainty === undefined ? station[1] : of("uncertainty", "pressure");
  return new StationPressure(OWN, station[0], uncertainty, origin);
}

// A column of another copy of this package, or its plain data.
function columnFrom(name, value) {
  const data = isStation(value) ? undefined : plainly(value);
  if (data === undefined || data.pascal !== undefined) return undefined;
  const column = argument(`${name}.pressure`, "pressure").column(data.pressure);
  return column?.numbers && column;
}

function plainly(value) {
  try {
    const { pressure, uncertainty, origin, [BRAND]: pascal } = value;
    return pressure === undefined ? undefined : { pressure, uncertainty, origin, pascal };
  } catch {
    // The core is asked what to say of it.
    return undefined;
  }
}

function noStation(name, value) {
  const pressure = isOurs(value) ? value : undefined;
  const known = pressure && typeof pressure.value === "number";
  const json = encoded(known ? { value: pressure.value, unit: unitNamed(pressure.unit).word } : value, name);
  guarded((core) => core.no_station(name, json));
  return refusal();
}
