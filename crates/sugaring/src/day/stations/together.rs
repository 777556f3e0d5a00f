//! Rig and pan on one tank at once: the hours of a day arranged so.
//!
//! The pan is filled with raw sap and topped up from the tank while the rig circulates on the same tank: two sinks.
//! dM/dt = −P − F, dS/dt = −F x/100 with permeate P and the pan's intake F; the rig stops at its aim, or when the
//! tank no longer covers its inlet.
use crate::{
    day::stations::{FinishOutcome, PanOutcome, RigOutcome},
    evaporator::{FedPan, Fineness},
    lot::Lot,
    membrane::Rig,
    sucrose,
    units::{Value, brix, kelvin},
    water,
};

/// Least volume that covers the pump's inlet, m³: our choice, no source.
const INLET: f64 = 0.020;
/// Steps of the fourth order over the run; twice as many change the hours by less than 1e-4 of them.
const STEPS: f64 = 48.0;
/// More than any day needs.
const MOST_STEPS: u32 = 400;

/// What the arrangement is made of.
pub(crate) struct Together<'a> {
    pub(crate) rig: &'a Rig,
    pub(crate) aim: f64,
    pub(crate) tank: &'a Lot,
    pub(crate) pascal: f64,
    pub(crate) pan: &'a PanOutcome,
    pub(crate) finish: Option<&'a FinishOutcome>,
    pub(crate) run: &'a RigOutcome,
}

/// The tank and the pan beside it.
#[derive(Clone, Copy)]
struct State {
    mass: f64,
    sugar: f64,
    pan_brix: f64,
}

impl State {
    fn brix(&self) -> f64 {
        100.0 * self.sugar / self.mass
    }

    fn stepped(&self, rate: State, seconds: f64) -> Self {
        Self {
            mass: self.mass + seconds * rate.mass,
            sugar: self.sugar + seconds * rate.sugar,
            pan_brix: self.pan_brix + seconds * rate.pan_brix,
        }
    }
}

impl Together<'_> {
    /// Seconds to the syrup; `None` where the day does not allow it: too little sap, or an aim that is not met.
    pub(crate) fn seconds(&self) -> Option<f64> {
        let pan = self.pan;
        let topped_up = pan.stages.iter().find(|s| s.kind == "top_up")?;
        let boil_down = pan.stages.iter().find(|s| s.kind == "boil_down")?;
        let strength = self.tank.brix().get();
        let fed = FedPan::new(
            pan.running_volume,
            pan.heat,
            self.pascal,
            strength,
            topped_up.brix,
            Fineness::Draw,
        )?;
        let fill = fed.mass(strength);
        let mut state = State {
            mass: self.tank.mass().si() - fill,
            sugar: (self.tank.mass().si() - fill) * strength / 100.0,
            pan_brix: strength,
        };
        if state.mass <= 0.0 {
            return None;
        }
        let flow = Flow::of(self.rig, strength, self.aim, self.tank.temperature().si())?;
        let heat_up = fed.warm_up(strength, self.tank.temperature().si()) / pan.heat;
        // While the pan comes to the boil the rig has the tank for itself.
        let mut time = 0.0;
        let step = (self.run.duration + topped_up.duration) / STEPS;
        let mut running = true;
        let mut boiling = false;
        for _ in 0..MOST_STEPS {
            let until = if boiling { f64::INFINITY } else { heat_up - time };
            let slice = step.min(until.max(0.0));
            if slice <= 0.0 {
                boiling = true;
                continue;
            }
            let rate = |s: &State| self.rate(s, &fed, &flow, running, boiling);
            let next = runge_kutta(&state, slice, rate);
            if boiling && next.mass <= 0.0 {
                // The last of the tank, by the rate at which it goes.
                time += slice * state.mass / (state.mass - next.mass);
                return Some(time + boil_down.duration + self.finish.map_or(0.0, |f| f.duration));
            }
            if running {
                if let Some(share) = self.stops(&state, &next) {
                    state = runge_kutta(&state, share * slice, rate);
                    time += share * slice;
                    running = false;
                    continue;
                }
            }
            state = next;
            time += slice;
        }
        None
    }

    /// The share of a step after which the rig stops, if it does: at its aim, or with its inlet bare.
    fn stops(&self, from: &State, to: &State) -> Option<f64> {
        let volume = |s: &State| s.mass / sucrose::density_at(s.brix(), self.tank.temperature().si());
        let crossing = |from: f64, to: f64, at: f64| ((at - from) / (to - from)).clamp(0.0, 1.0);
        if to.brix() >= self.aim {
            Some(crossing(from.brix(), to.brix(), self.aim))
        } else if volume(to) <= INLET {
            Some(crossing(volume(from), volume(to), INLET))
        } else {
            None
        }
    }

    fn rate(&self, state: &State, fed: &FedPan, flow: &Flow, running: bool, boiling: bool) -> State {
        let x = state.brix();
        let permeate = if running { flow.mass(x) } else { 0.0 };
        let intake = if boiling {
            fed.intake(state.pan_brix, x, self.tank.temperature().si())
        } else {
            0.0
        };
        let sugar = intake * x / 100.0;
        State {
            mass: -permeate - intake,
            sugar: -sugar,
            pan_brix: fed.climb(state.pan_brix, sugar),
        }
    }
}

fn runge_kutta(at: &State, seconds: f64, rate: impl Fn(&State) -> State) -> State {
    let a = rate(at);
    let b = rate(&at.stepped(a, 0.5 * seconds));
    let c = rate(&at.stepped(b, 0.5 * seconds));
    let d = rate(&at.stepped(c, seconds));
    let mean = State {
        mass: (a.mass + 2.0 * b.mass + 2.0 * c.mass + d.mass) / 6.0,
        sugar: (a.sugar + 2.0 * b.sugar + 2.0 * c.sugar + d.sugar) / 6.0,
        pan_brix: (a.pan_brix + 2.0 * b.pan_brix + 2.0 * c.pan_brix + d.pan_brix) / 6.0,
    };
    at.stepped(mean, seconds)
}

/// Permeate of the rig against the tank's °Brix: five points joined by their polynomial.
struct Flow {
    points: [(f64, f64); 5],
}

impl Flow {
    fn of(rig: &Rig, from: f64, to: f64, temperature: f64) -> Option<Self> {
        // Chebyshev points keep the polynomial close.
        const NODES: [f64; 5] = [
            0.024_471_741_852_423_2,
            0.206_107_373_853_763_4,
            0.5,
            0.793_892_626_146_236_6,
            0.975_528_258_147_576_8,
        ];
        let density = water::density_at(temperature);
        let mut points = [(0.0, 0.0); 5];
        for (point, node) in points.iter_mut().zip(NODES) {
            let x = from + node * (to - from);
            let flow = rig.permeate_flow(brix(x).ok()?, kelvin(temperature)).ok()?;
            *point = (x, flow.si() * density);
        }
        Some(Self { points })
    }

    /// kg/s
    fn mass(&self, brix: f64) -> f64 {
        let mut sum = 0.0;
        for (i, (x, y)) in self.points.iter().enumerate() {
            let mut term = *y;
            for (j, (other, _)) in self.points.iter().enumerate() {
                if i != j {
                    term *= (brix - other) / (x - other);
                }
            }
            sum += term;
        }
        sum
    }
}
