// Right uses: all of this compiles.
import init, { SugaringError, StationPressure, StationPressures, air, catalogue, day, finish, sucrose, uncertainty, type Quantity } from "sugaring";
import { baume_20_20, cord, deg_c, deg_f, delta_c, heading, kg_per_m3, kpa, litre, measured, metre, parse, price } from "sugaring/units";

await init();

export const shown: string = sucrose.density(66.9, deg_c(20)).to(kg_per_m3).toFixed(2);
const station: StationPressure = air.StationPressure.measured(kpa(96.5));
export const brix: number = sucrose.brixFromBoiling(deg_f(217), station);
export const warm: Quantity<"energy_per_mass"> = sucrose.heatToWarm(2, deg_c(4), { to_temperature: deg_c(90) });

export const trade: Quantity<"baume_20_20"> = sucrose.onScale(66.9, baume_20_20);
export const strengths: Float64Array = sucrose.brixFromScale(baume_20_20([35, 36]));
export const done: number = finish.finishingPoint(66.9, station, { non_sucrose_rise: delta_c(0.2) }).temperature.to(deg_c);
export const unit = heading("temp [°F]").unit?.symbol;

export const column: Float64Array = sucrose.density(new Float64Array(3), deg_c(20)).to(kg_per_m3);
export const holes: Float64Array = sucrose.density([1, 2], deg_c([20, 30]), { on_error: "nan" }).to(kg_per_m3);
export const found: Float64Array = sucrose.brixFromBoiling(deg_c([100, 101]), station);
const stations: StationPressures = air.StationPressure.measured(kpa([96.5, 97.1]));
export const boils: Float64Array = sucrose.boilingTemperature(66.9, stations).to(deg_c);

// What structured cloning leaves of a quantity.
sucrose.density(66.9, { value: 20, unit: "°C" });
sucrose.boilingTemperature(66.9, { pressure: { value: 96.5, unit: "kPa" }, uncertainty: { value: 0.1, unit: "kPa" }, origin: "measured" });

const inputs: day.DayInputs = {
  air: { altitude: metre(410) },
  sap: [
    { volume: litre(265), brix: 1.98, temperature: deg_c(4) },
    { volume: measured(litre(95), litre(2)), brix: measured(1.98, 0.1), temperature: measured(deg_c(4), delta_c(0.5)) },
    { volume: "95 L", brix: "2.3 °Bx", temperature: { value: 5, unit: "°C", uncertainty: 0.5 } },
  ],
  evaporator: {
    pan: { length: metre(0.61), width: "1.22 m" },
    fuel: { wood: { species: "hardwood" }, price: price(280, cord(1)) },
    heat: { held_level: { added: "20 kg/h", feed_temperature: deg_c(4) } },
  },
  target: { brix: 66.9 },
};
const plan: day.Plan = day.plan(inputs, { progress: (share: number) => share < 2 });
export const low: number | undefined = plan.totals.to_finish?.volume.low;
export const kinds: readonly string[] = plan.steps.map((step) => step.kind);
export const page: string = plan.page("us") + `${plan}`;
export const limits: number = catalogue.functions()[0]?.arguments[0]?.high ?? uncertainty.fromLimits(1);
export const text: Quantity<"volume"> | Quantity = parse("40 gal");
export const kind = (error: unknown) => (error instanceof SugaringError ? error.kind === "out_of_range" && error.range : undefined);
