import init, { day, sucrose, air, SugaringError, uncertainty } from "sugaring";
import { deg_c, deg_f, kg_per_m3, litre, metre, kpa, measured, price, cord, delta_c, kg, mg_per_litre } from "sugaring/units";
await init();
const a: string = sucrose.density(66.9, deg_c(20)).to(kg_per_m3).toFixed(2);
const station = air.StationPressure.measured(kpa(96.5));
const b: number = sucrose.brixFromBoiling(deg_f(217), station);
const c: Float64Array = sucrose.density(new Float64Array(3), deg_c(20)).to(kg_per_m3);
const c2: Float64Array = sucrose.density([1,2], deg_c([20, 30]), { on_error: "nan" }).to(kg_per_m3);
const d = sucrose.heatToWarm(2, deg_c(4), { to_temperature: deg_c(90) });
const e = measured(deg_c(4), delta_c(0.5));
const plan = day.plan({ air: { altitude: metre(410) }, sap: [{ volume: litre(265), brix: 1.98, temperature: deg_c(4) }, { volume: measured(litre(95), litre(2)), brix: measured(1.98, 0.1), temperature: e }],
  evaporator: { pan: { length: metre(0.61), width: "1.22 m" }, fuel: { wood: { species: "hardwood" }, price: price(280, cord(1)) } }, target: { brix: 66.9 } }, { progress: (share) => share < 2 });
const low: number | undefined = plan.totals.to_finish?.volume.low;
const p: string = plan.page("us") + `${plan}`;
console.log(a, b, c, c2, d, low, p, SugaringError, uncertainty.fromLimits(1));
const back = sucrose.density(66.9, { value: 20, unit: "°C" });
