//! The plan from its numbers: steps with streams, settings, signs to stop at, marks and totals.

use alloc::{
    string::{String, ToString},
    vec,
    vec::Vec,
};

use super::{
    figure::{Figure, Interval},
    inputs::DayInputs,
    model::{FuelModel, Model},
    outcome::{FuelOutcome, Outcome, PanOutcome, RigOutcome, State},
    plan::{
        AirToday, Balance, ContainerCost, Cost, DayPlan, Electricity, Filled, FuelLine, FuelVolume, How, Mark,
        OtherHours, Remains, Remark, Rest, Settings, StageState, Step, Stop, Stream, SyrupMade, ToFinish, Totals,
        Watch, WaterRemoved, WithoutMembrane,
    },
    ranges::{Quantity as Of, Ranges},
    slots::Values,
};
use crate::{
    finish,
    instrument::Instrument,
    safety::{StepKind, cautions_for},
    units::{Quantity, Temperature, Unit, Value, Word, brix, deg_c, kelvin, table},
};

/// What the plan is put together from.
pub(super) struct Parts<'a> {
    pub(super) inputs: &'a DayInputs,
    pub(super) model: &'a Model,
    pub(super) values: &'a Values,
    pub(super) outcome: &'a Outcome,
    pub(super) without: Option<&'a Outcome>,
    pub(super) ranges: &'a Ranges,
    pub(super) remarks: Vec<Remark>,
}

impl Parts<'_> {
    pub(super) fn plan(self) -> DayPlan {
        let (model, outcome) = (self.model, self.outcome);
        let marks = self.marks();
        let packing = outcome.packing.as_ref();
        DayPlan {
            schema_version: super::SCHEMA_VERSION,
            numbers: super::NUMBERS,
            title: self.inputs.title.clone(),
            start: self.inputs.start.clone(),
            coverage: 0.95,
            seed: model.seed,
            samples: model.samples,
            unreachable_draws: self.ranges.unreachable,
            inputs: self.inputs.clone(),
            air: AirToday {
                pressure: Figure::of_si(outcome.pressure),
                origin: model.air.origin,
                water_boils_at: Figure::of_si(outcome.water_boils_at),
            },
            totals: self.totals(),
            steps: self.steps(&marks),
            containers: packing.map_or_else(Vec::new, |p| p.packing.rows.iter().map(filled).collect()),
            rest: packing.map(|p| Rest {
                volume: Figure::of_si(p.packing.rest.volume.si()),
                mass: Figure::of_si(p.packing.rest.mass.si()),
                because: p.packing.rest.because.name(),
            }),
            marks,
            remains: Remains {
                sugar: Figure::of_si(0.0),
                mass: Figure::of_si(0.0),
            },
            without_membrane: self.without.map(|without| WithoutMembrane {
                hours: self.range(without.clock.end, Of::HoursWithout),
                hours_fired: Figure::of_si(without.pan.duration),
                fuel_mass: without.fire.mass.map(|m| self.range(m, Of::FuelMassWithout)),
                fuel_volume: fuel_volume(&model.fuel, &without.fire, None),
                cost: without.cost.sum,
            }),
            other_hours: self.other_hours(),
            rests_on: model.rests_on.clone(),
            balance: balance(outcome),
            remarks: self.remarks,
        }
    }

    fn range<W: Word>(&self, si: f64, of: Of) -> Figure<W> {
        Figure::of_si(si).with_interval(self.ranges.interval(of))
    }

    /// Hours that the film's default makes too short carry their median.
    fn range_with_median<W: Word>(&self, si: f64, of: Of) -> Figure<W> {
        let one_sided = self
            .model
            .rests_on
            .iter()
            .any(|r| r.input == "membrane.film_factor" && r.how == How::Assumed);
        Figure::of_si(si).with_interval(if one_sided && self.outcome.rig.is_some() {
            self.ranges.interval_with_median(of)
        } else {
            self.ranges.interval(of)
        })
    }

    fn totals(&self) -> Totals {
        let outcome = self.outcome;
        let made = outcome.is_finished();
        let rig = outcome.rig.as_ref();
        let mut fuel = vec![self.fuel_line(
            StepKind::Boil,
            &self.model.fuel,
            &outcome.fire,
            Of::FireMass,
            Of::FireVolume,
        )];
        if let (Some(finishing), Some(burner)) = (&self.model.finishing, &outcome.burner) {
            fuel.push(self.fuel_line(
                StepKind::Finish,
                &finishing.fuel,
                burner,
                Of::BurnerMass,
                Of::BurnerVolume,
            ));
        }
        let finish_energy = outcome.finish.map_or(0.0, |f| f.energy);
        Totals {
            syrup: made.then(|| SyrupMade {
                volume: self.range(outcome.syrup.volume, Of::SyrupVolume),
                mass: self.range(outcome.syrup.mass, Of::SyrupMass),
            }),
            to_finish: (!made).then(|| ToFinish {
                mass: Figure::of_si(outcome.pan.draw.mass),
                brix: outcome.pan.draw.brix,
                volume: Figure::of_si(outcome.pan.draw.volume),
                syrup: self.range(outcome.syrup.volume, Of::SyrupVolume),
            }),
            water_removed: WaterRemoved {
                membrane: rig.map(|r| self.range(r.permeate_mass, Of::Permeate)),
                evaporator: Figure::of_si(outcome.pan.water),
                finishing: outcome.finish.map(|f| Figure::of_si(f.water)),
            },
            heat: Figure::of_si(outcome.pan.energy + finish_energy),
            hours: self.range_with_median(outcome.clock.end, Of::Hours),
            hours_fired: self.range(outcome.pan.duration, Of::HoursFired),
            fuel,
            electricity: rig.map(|r| Electricity {
                energy: self.range(r.energy, Of::Electricity),
                cost: outcome.cost.electricity,
            }),
            containers: outcome.packing.is_some().then(|| ContainerCost {
                cost: outcome.cost.containers,
            }),
            cost: self.cost(made),
        }
    }

    fn cost(&self, made: bool) -> Cost {
        let outcome = self.outcome;
        let sum = outcome.cost.sum;
        let interval = self.ranges.interval(Of::Cost);
        let per = |si: f64| (made && si > 0.0 && sum > 0.0).then(|| sum / table::litre.from_si(si));
        Cost {
            value: sum,
            low: interval.map(|i| i.low),
            high: interval.map(|i| i.high),
            per_litre: per(outcome.syrup.volume),
            per_litre_packed: outcome.packing.as_ref().and_then(|p| per(p.packed)),
            left_out: outcome.cost.left_out.clone(),
        }
    }

    fn fuel_line(&self, step: StepKind, fuel: &FuelModel, burned: &FuelOutcome, mass: Of, volume: Of) -> FuelLine {
        FuelLine {
            step,
            name: fuel.name.clone(),
            mass: burned.mass.map(|m| self.range(m, mass)),
            volume: fuel_volume(fuel, burned, self.ranges.interval(volume)),
            energy: (burned.mass.is_none() && burned.volume.is_none()).then(|| Figure::of_si(burned.energy)),
            cost: burned.cost,
        }
    }

    fn other_hours(&self) -> OtherHours {
        let clock = &self.outcome.clock;
        let single = self.outcome.rig.as_ref().is_some_and(|r| r.single_pass);
        OtherHours {
            in_sequence: single.then(|| Figure::of_si(clock.in_sequence)),
            overlapped: (!single && self.outcome.rig.is_some()).then(|| Figure::of_si(clock.overlapped)),
            together: clock.together.map(Figure::of_si),
        }
    }

    fn steps(&self, marks: &[Mark]) -> Vec<Step> {
        let outcome = self.outcome;
        let mut steps = Vec::new();
        if let Some(rig) = &outcome.rig {
            steps.push(self.concentrate(rig));
            steps.push(self.rinse(rig));
        }
        steps.push(self.boil());
        steps.extend(self.finish(marks));
        if let Some(packing) = &outcome.packing {
            steps.push(Step {
                kind: StepKind::Bottle,
                start: Figure::of_si(outcome.clock.end),
                duration: Figure::of_si(0.0),
                streams_in: vec![liquid("syrup", syrup_state(outcome, packing.fill_temperature))],
                streams_out: Vec::new(),
                settings: Settings {
                    fill_temperature: Some(Figure::of_si(packing.fill_temperature)),
                    ..Settings::default()
                },
                stages: Vec::new(),
                watch: Vec::new(),
                stop_when: Vec::new(),
                cautions: filter_and_bottle(),
                rests_on: How::Given,
            });
        }
        steps
    }

    fn concentrate(&self, rig: &RigOutcome) -> Step {
        let outcome = self.outcome;
        let concentrate = rig.concentrate;
        let both = |first| (!rig.single_pass).then_some(first);
        let mut stop_when = vec![
            Stop {
                volume: Some(Figure::of_si(rig.permeate_volume)),
                ..stop("permeate")
            },
            Stop {
                volume: Some(Figure::of_si(concentrate.volume)),
                ..stop("tank")
            },
        ];
        if let Some((name, reading)) = self.tank_reading(concentrate) {
            stop_when.push(Stop {
                reading: Some(reading),
                ..stop(&name)
            });
        }
        let seconds = |flow: f64| 1e-3 / flow;
        let permeate = State {
            mass: rig.permeate_mass,
            brix: rig.permeate_brix,
            kelvin: outcome.tank.kelvin,
            volume: rig.permeate_volume,
        };
        Step {
            kind: StepKind::Concentrate,
            start: Figure::of_si(0.0),
            duration: self.range_with_median(rig.duration, Of::RigHours),
            streams_in: vec![liquid("sap", outcome.tank)],
            streams_out: vec![liquid("concentrate", concentrate), liquid("permeate", permeate)],
            settings: Settings {
                pressure: self
                    .model
                    .rig
                    .as_ref()
                    .map(|r| Figure::of_si(self.values.of(r.pressure))),
                feed: Some(Figure::of_si(rig.feed)),
                permeate: rig.single_pass.then(|| self.range(rig.first_flow, Of::PermeateFirst)),
                concentrate: rig.single_pass.then(|| Figure::of_si(rig.feed - rig.first_flow)),
                permeate_first: both(self.range(rig.first_flow, Of::PermeateFirst)),
                permeate_last: (!rig.single_pass).then(|| self.range(rig.last_flow, Of::PermeateLast)),
                permeate_kept: Some(Figure::of_si(rig.kept)),
                permeance: Some(Figure::of_si(rig.permeance)),
                temperature_factor: Some(rig.temperature_factor),
                osmotic_limit: Some(rig.osmotic_limit),
                warms_to: rig.warms_to.map(Figure::of_si),
                duration_coupled: rig.duration_coupled.map(Figure::of_si),
                ..Settings::default()
            },
            stages: Vec::new(),
            watch: vec![Watch {
                what: "seconds_per_litre",
                first: seconds(rig.first_flow),
                last: Some(seconds(rig.last_flow)).filter(|s| *s < 1e6),
            }],
            stop_when,
            cautions: keys(StepKind::Concentrate),
            rests_on: self.model.rig.as_ref().map_or(How::Assumed, |r| r.how),
        }
    }

    /// What a refractometer at hand shows in the tank at the end.
    fn tank_reading(&self, tank: State) -> Option<(String, f64)> {
        let (name, instrument) = self
            .model
            .instruments
            .iter()
            .find(|(_, kind)| matches!(kind, Instrument::Refractometer(_)))?;
        let Instrument::Refractometer(refractometer) = instrument else {
            return None;
        };
        let strength = brix(tank.brix).ok()?;
        // The drop takes the prism's temperature, and the prism is used within the range it corrects.
        let reading = refractometer.reading(strength, deg_c(20.0)).ok()?;
        Some((name.clone(), reading.get()))
    }

    fn rinse(&self, rig: &RigOutcome) -> Step {
        let permeate = State {
            mass: rig.rinse * rig.permeate_mass / rig.permeate_volume,
            brix: rig.permeate_brix,
            kelvin: self.outcome.tank.kelvin,
            volume: rig.rinse,
        };
        Step {
            kind: StepKind::Rinse,
            start: Figure::of_si(rig.duration),
            duration: Figure::of_si(rig.rinse / rig.feed),
            streams_in: vec![liquid("permeate", permeate)],
            streams_out: Vec::new(),
            settings: Settings {
                volume: Some(Figure::of_si(rig.rinse)),
                ..Settings::default()
            },
            stages: Vec::new(),
            watch: Vec::new(),
            stop_when: Vec::new(),
            cautions: keys(StepKind::Rinse),
            rests_on: How::Assumed,
        }
    }

    fn boil(&self) -> Step {
        let outcome = self.outcome;
        let pan = &outcome.pan;
        let name = if outcome.rig.is_some() { "concentrate" } else { "sap" };
        let mut streams_in = vec![liquid(name, pan.fed)];
        streams_in.extend(outcome.left.map(|left| liquid("left_in_pan", left)));
        let drawn = if pan.finishes { "syrup" } else { "draw" };
        let stop_when = if pan.finishes {
            self.syrup_signs()
        } else {
            vec![Stop {
                depth: Some(Figure::of_si(pan.least_depth)),
                ..stop("depth")
            }]
        };
        Step {
            kind: StepKind::Boil,
            start: Figure::of_si(outcome.clock.boil),
            duration: self.range(pan.duration, Of::PanHours),
            streams_in,
            streams_out: vec![liquid(drawn, pan.draw), vapour(pan.water)],
            settings: pan_settings(pan),
            stages: pan
                .stages
                .iter()
                .map(|s| StageState {
                    kind: s.kind,
                    duration: Figure::of_si(s.duration),
                    water: Figure::of_si(s.water),
                    brix: s.brix,
                    mass: Figure::of_si(s.mass),
                    depth: Figure::of_si(s.depth),
                    temperature: Figure::of_si(s.kelvin),
                })
                .collect(),
            watch: Vec::new(),
            stop_when,
            cautions: keys(StepKind::Boil),
            rests_on: self.model.pan.how,
        }
    }

    fn finish(&self, marks: &[Mark]) -> Option<Step> {
        let outcome = self.outcome;
        let finish = outcome.finish?;
        let mut stop_when = self.syrup_signs();
        if let Some(mark) = marks.iter().find(|m| m.temperature.si() > 350.0) {
            stop_when.push(Stop {
                reading: Some(mark.reading),
                ..stop(&mark.instrument)
            });
        }
        let mut cautions = keys(StepKind::Finish);
        let gas = self
            .model
            .finishing
            .as_ref()
            .is_some_and(|f| matches!(f.fuel.name.as_str(), "propane" | "natural gas"));
        cautions.retain(|key| gas || *key != "fuel_gas");
        Some(Step {
            kind: StepKind::Finish,
            start: Figure::of_si(outcome.clock.finish),
            duration: self.range(finish.duration, Of::FinishHours),
            streams_in: vec![liquid("draw", outcome.pan.draw)],
            streams_out: vec![
                liquid("syrup", syrup_state(outcome, outcome.finishing_temperature)),
                vapour(finish.water),
            ],
            settings: Settings {
                heat: Some(Figure::of_si(finish.heat)),
                volume: Some(Figure::of_si(outcome.pan.draw.volume)),
                ..Settings::default()
            },
            stages: Vec::new(),
            watch: Vec::new(),
            stop_when,
            cautions,
            rests_on: self.model.finishing.as_ref().map_or(How::Assumed, |f| f.how),
        })
    }

    fn syrup_signs(&self) -> Vec<Stop> {
        vec![Stop {
            temperature: Some(self.range(self.outcome.finishing_temperature, Of::FinishingTemperature)),
            elevation: Some(Figure::of_si(self.outcome.rise)),
            ..stop("thermometer")
        }]
    }

    /// What each instrument shows in finished syrup, at the temperatures it is read at.
    fn marks(&self) -> Vec<Mark> {
        let mut marks = Vec::new();
        let Ok(target) = brix(self.model.target.brix) else {
            return marks;
        };
        let places: [(f64, &'static Unit); 5] = [
            (211.0, &table::deg_f),
            (85.0, &table::deg_c),
            (50.0, &table::deg_c),
            (20.0, &table::deg_c),
            (60.0, &table::deg_f),
        ];
        for (name, instrument) in &self.model.instruments {
            match instrument {
                Instrument::Hydrometer(hydrometer) => {
                    for (value, unit) in places {
                        let at = kelvin(unit.to_si(value));
                        if let Ok(reading) = hydrometer.reading(target, at) {
                            marks.push(Mark {
                                instrument: name.clone(),
                                temperature: Quantity::new(value, unit),
                                reading: reading.get(),
                            });
                        }
                    }
                }
                Instrument::Refractometer(refractometer) => {
                    if let Ok(reading) = refractometer.reading(target, deg_c(20.0)) {
                        marks.push(Mark {
                            instrument: name.clone(),
                            temperature: Quantity::new(20.0, &table::deg_c),
                            reading: reading.get(),
                        });
                    }
                }
            }
        }
        marks
    }
}

fn filled(row: &finish::PackedRow) -> Filled {
    let temperature = |t: Option<Temperature>| t.map(|t| Figure::of_si(t.si()));
    Filled {
        name: row.name.clone(),
        count: row.count,
        fill_volume: Figure::of_si(row.fill_volume.si()),
        fill_mass: Figure::of_si(row.fill_mass.si()),
        headspace: row.headspace.map(|v| Figure::of_si(v.si())),
        settled: temperature(row.settled),
        glass_needed: temperature(row.glass_needed),
        fill_needed: temperature(row.fill_needed),
    }
}

fn pan_settings(pan: &PanOutcome) -> Settings {
    Settings {
        heat: Some(Figure::of_si(pan.heat)),
        water_rate: Some(Figure::of_si(pan.water_rate)),
        running_volume: Some(Figure::of_si(pan.running_volume)),
        first_fill: Some(Figure::of_si(pan.first_fill)),
        depth_if_finished: Some(Figure::of_si(pan.depth_if_finished)),
        continuous_hold_up: Some(Figure::of_si(pan.continuous_hold_up)),
        ..Settings::default()
    }
}

fn fuel_volume(fuel: &FuelModel, burned: &FuelOutcome, interval: Option<Interval>) -> Option<FuelVolume> {
    let volume = burned.volume?;
    Some(match fuel.kind {
        super::model::FuelKind::Wood { .. } => FuelVolume::Cords(Figure::of_si(volume).with_interval(interval)),
        super::model::FuelKind::Named => FuelVolume::Gallons(Figure::of_si(volume).with_interval(interval)),
    })
}

/// The syrup is filtered hot on its way into the bottles.
fn filter_and_bottle() -> Vec<&'static str> {
    let mut all = keys(StepKind::Filter);
    all.extend(keys(StepKind::Bottle));
    let mut once: Vec<&'static str> = Vec::new();
    for key in all {
        if !once.contains(&key) {
            once.push(key);
        }
    }
    once
}

fn keys(step: StepKind) -> Vec<&'static str> {
    cautions_for(step).iter().map(|c| c.key).collect()
}

fn stop(what: &str) -> Stop {
    Stop {
        what: what.to_string(),
        volume: None,
        reading: None,
        depth: None,
        temperature: None,
        elevation: None,
    }
}

fn liquid(name: &'static str, state: State) -> Stream {
    Stream {
        name,
        mass: Figure::of_si(state.mass),
        volume: Some(Figure::of_si(state.volume)),
        brix: Some(state.brix),
        sugar: Some(Figure::of_si(state.sugar())),
        temperature: Some(Figure::of_si(state.kelvin)),
    }
}

fn vapour(mass: f64) -> Stream {
    Stream {
        name: "vapour",
        mass: Figure::of_si(mass),
        volume: None,
        brix: None,
        sugar: None,
        temperature: None,
    }
}

fn syrup_state(outcome: &Outcome, at: f64) -> State {
    let syrup = &outcome.syrup;
    State {
        mass: syrup.mass,
        brix: syrup.brix,
        kelvin: at,
        volume: syrup.mass / crate::sucrose::density_at(syrup.brix, at),
    }
}

/// What came in less what went out, over the whole day.
fn balance(outcome: &Outcome) -> Balance {
    let left = outcome.left.unwrap_or_default();
    let (permeate, permeate_sugar) = outcome.rig.as_ref().map_or((0.0, 0.0), |r| {
        (r.permeate_mass, r.permeate_mass * r.permeate_brix / 100.0)
    });
    let draw = outcome.pan.draw;
    let (out, out_sugar) = match (&outcome.finish, outcome.pan.finishes) {
        (Some(finish), _) => (
            finish.water + outcome.syrup.mass + outcome.syrup.lost,
            (outcome.syrup.mass + outcome.syrup.lost) * outcome.syrup.brix / 100.0,
        ),
        (None, true) => (
            outcome.syrup.mass + outcome.syrup.lost,
            (outcome.syrup.mass + outcome.syrup.lost) * outcome.syrup.brix / 100.0,
        ),
        (None, false) => (draw.mass, draw.sugar()),
    };
    Balance {
        mass: Figure::of_si(outcome.tank.mass + left.mass - permeate - outcome.pan.water - out),
        sugar: Figure::of_si(outcome.tank.sugar() + left.sugar() - permeate_sugar - out_sugar),
    }
}
