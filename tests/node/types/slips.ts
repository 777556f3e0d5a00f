// Slips: each line after a mark must be refused, or the mark itself is an error.
import { air, day, sucrose } from "sugaring";
import { bar_gauge, baume_20_20, baume_60_60_f, deg_c, delta_c, delta_f, gal, kg, kg_per_m3, kpa, litre, measured, metre } from "sugaring/units";

// @ts-expect-error a number without its unit
sucrose.density(66.9, 20);
// @ts-expect-error a word of no density scale
sucrose.onScale(66.9, litre);
// @ts-expect-error read on another scale
sucrose.onScale(66.9, baume_20_20).to(baume_60_60_f);
// @ts-expect-error a bare number for a mark
sucrose.brixFromScale(36);
// @ts-expect-error a pressure for a temperature
sucrose.density(66.9, kpa(100));
// @ts-expect-error a difference for a point on the scale
sucrose.density(66.9, delta_c(20));
// @ts-expect-error a pressure of no known kind
sucrose.boilingTemperature(66.9, kpa(96.5));
// @ts-expect-error a gauge's reading for an absolute pressure
air.StationPressure.measured(bar_gauge(0.97));
// @ts-expect-error read in a unit of something else
sucrose.density(66.9, deg_c(20)).to(kpa);
// @ts-expect-error data in a unit of something else
sucrose.density(66.9, { value: 20, unit: "kPa" });
// @ts-expect-error a text is for plans
sucrose.density(66.9, "20 °C");
// @ts-expect-error a third argument goes by its name
sucrose.heatToWarm(2, deg_c(4), deg_c(90));
// @ts-expect-error a mode nobody knows
sucrose.density([66.9], deg_c(20), { on_error: "skip" });
// @ts-expect-error no arithmetic on quantities
export const sum = gal(1) + gal(2);
// @ts-expect-error nor comparison
export const more = gal(1) < 2;
// @ts-expect-error quantities are frozen
gal(1).value = 2;
// @ts-expect-error a column is no number
export const one: number = sucrose.density([1, 2], deg_c(20)).to(kg_per_m3);
// @ts-expect-error an uncertainty of another kind
measured(litre(95), kg(2));
// @ts-expect-error a temperature's uncertainty is a difference
measured(deg_c(4), deg_c(1));
export const fine = measured(deg_c(4), delta_f(1));

const pan = { length: metre(0.61), width: metre(1.22) };
const sap = { volume: litre(265), brix: 1.98, temperature: deg_c(4) };
const rest = { evaporator: { pan }, target: { brix: 66.9 } };
// @ts-expect-error a misspelt key
day.plan({ air: { altitud: metre(410) }, sap: [sap], ...rest });
// @ts-expect-error a mass where a volume stands
day.plan({ air: {}, sap: [{ ...sap, volume: kg(265) }], ...rest });
// @ts-expect-error a bare number
day.plan({ air: {}, sap: [{ ...sap, volume: 265 }], ...rest });
// @ts-expect-error a gauge pressure for an absolute one
day.plan({ air: { station_pressure: bar_gauge(1) }, sap: [sap], ...rest });
// @ts-expect-error no target
day.plan({ air: {}, sap: [sap], evaporator: { pan } });
// @ts-expect-error a system nobody knows
day.plan({ air: {}, sap: [sap], ...rest }).page("imperial");
