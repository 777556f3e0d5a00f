//! Steps with streams, settings and signs to stop at.

use crate::{
    day::{
        assemble::{
            Parts,
            streams::{filter_and_bottle, keys, liquid, stop, syrup_state, vapour},
        },
        plan::{Figure, How, Mark, Settings, StageState, Step, Stop, Watch},
        ranges::Quantity as Of,
        stations::{PanOutcome, RigOutcome, State},
    },
    instrument::Instrument,
    safety::StepKind,
    units::{Quantity, Unit, brix, deg_c, kelvin, table},
};
use alloc::{string::String, vec, vec::Vec};

impl Parts<'_> {
    pub(crate) fn steps(&self, marks: &[Mark]) -> Vec<Step> {
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

    pub(crate) fn concentrate(&self, rig: &RigOutcome) -> Step {
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
    pub(crate) fn tank_reading(&self, tank: State) -> Option<(String, f64)> {
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

    pub(crate) fn rinse(&self, rig: &RigOutcome) -> Step {
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

    pub(crate) fn boil(&self) -> Step {
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

    pub(crate) fn finish(&self, marks: &[Mark]) -> Option<Step> {
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

    pub(crate) fn syrup_signs(&self) -> Vec<Stop> {
        vec![Stop {
            temperature: Some(self.range(self.outcome.finishing_temperature, Of::FinishingTemperature)),
            elevation: Some(Figure::of_si(self.outcome.rise)),
            ..stop("thermometer")
        }]
    }

    /// What each instrument shows in finished syrup, at the temperatures it is read at.
    pub(crate) fn marks(&self) -> Vec<Mark> {
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
