//! What a day says: errors with path and hint, remarks with their numbers. Each text is the demo day's after one change.

use serde_json::{Value, json};
use sugaring::{
    ErrorKind,
    day::{self, DayInputs, DayPlan, Level},
};

const FAR_ORCHARD: &str = include_str!("../../examples/far_orchard.json");

/// The demo day with values put at JSON pointers; null takes a key away.
fn changed(changes: &[(&str, Value)]) -> String {
    let mut day: Value = serde_json::from_str(FAR_ORCHARD).unwrap();
    day["samples"] = json!(0);
    for (pointer, value) in changes {
        let (parent, key) = pointer.rsplit_once('/').unwrap();
        match day.pointer_mut(parent).unwrap() {
            Value::Object(map) if value.is_null() => {
                map.remove(key);
            }
            Value::Object(map) => {
                map.insert(key.to_owned(), value.clone());
            }
            Value::Array(list) => list[key.parse::<usize>().unwrap()] = value.clone(),
            other => panic!("{other} has no {key}"),
        }
    }
    day.to_string()
}

fn planned(changes: &[(&str, Value)]) -> Result<DayPlan, sugaring::Error> {
    day::plan(&DayInputs::from_json(&changed(changes))?)
}

fn refused(changes: &[(&str, Value)], kind: ErrorKind, text: &str) {
    let error = planned(changes).unwrap_err();
    assert_eq!((error.kind(), error.to_string().as_str()), (kind, text));
    assert!(text.starts_with(error.argument()));
}

fn says(changes: &[(&str, Value)], level: Level, key: &str, text: &str) {
    let plan = planned(changes).unwrap();
    let found: Vec<_> = plan.remarks.iter().filter(|r| r.key == key).collect();
    assert!(!found.is_empty(), "{key} is not said: {:#?}", plan.remarks);
    assert!(
        found.iter().any(|r| r.level == level && r.text == text),
        "wanted {text}\ngot {found:#?}"
    );
}

#[test]
fn air_of_the_wrong_kind() {
    refused(
        &[("/air/station_pressure", json!("101.659 kPa"))],
        ErrorKind::Inconsistent,
        "air.station_pressure = 101.659 kPa does not fit altitude = 410 m; it looks like an altimeter setting, which \
         means 96.82 kPa here: write altimeter_setting",
    );
    refused(
        &[("/air/station_pressure", json!("30.02 inHg"))],
        ErrorKind::Inconsistent,
        "air.station_pressure = 101.659 kPa does not fit altitude = 410 m; it looks like an altimeter setting, which \
         means 96.82 kPa here: write altimeter_setting",
    );
    refused(
        &[("/air/station_pressure", json!("0.97 bar gauge"))],
        ErrorKind::WrongDimension,
        "air.station_pressure = 0.97 bar gauge is a gauge pressure; an absolute one is needed: a barometer's 970 hPa \
         is hpa(970)",
    );
    refused(
        &[("/air/water_boils_at", json!("97.2 °C"))],
        ErrorKind::Inconsistent,
        "air.water_boils_at = 97.2 °C does not fit station_pressure = 96.5 kPa; water boils at 98.61 °C there: check \
         the thermometer in boiling water and the kind of pressure",
    );
    says(
        &[("/air/water_boils_at", json!("98.3 °C"))],
        Level::Notice,
        "pressures_differ",
        "boiling water at 98.3 °C means 95.4 kPa, the barometer says 96.5 kPa: the boiling water is used",
    );
    refused(
        &[("/air", json!({}))],
        ErrorKind::Missing,
        "air is missing; give water_boils_at, station_pressure, altimeter_setting with altitude, or altitude",
    );
    refused(
        &[("/air", json!({"altimeter_setting": "101.9 kPa"}))],
        ErrorKind::Missing,
        "air.altitude is missing",
    );
}

#[test]
fn every_kind_of_air_is_taken() {
    let pressure = |air: Value| planned(&[("/air", air)]).unwrap().air;
    let setting = pressure(json!({"altimeter_setting": "29.92 inHg", "altitude": "410 m"}));
    assert_eq!(
        (setting.origin, format!("{:.1}", setting.pressure.value()).as_str()),
        ("altimeter_setting", "96.5")
    );
    let map = pressure(json!({"sea_level_pressure": "1015.1 hPa", "altitude": "410 m", "air_temperature": "2 °C"}));
    assert_eq!(
        (map.origin, format!("{:.1}", map.pressure.value()).as_str()),
        ("sea_level", "96.5")
    );
    let boiling = pressure(json!({"water_boils_at": "98.613 °C"}));
    assert_eq!(
        (boiling.origin, format!("{:.1}", boiling.pressure.value()).as_str()),
        ("boiling_water", "96.5")
    );
    let alone = pressure(json!({"altitude": "410 m"}));
    assert_eq!(
        (alone.origin, format!("{:.1}", alone.pressure.value()).as_str()),
        ("altitude", "96.5")
    );
}

#[test]
fn sap_that_cannot_be() {
    refused(
        &[("/sap/0/brix", json!(0.018))],
        ErrorKind::OutOfRange,
        "sap[0].brix = 0.018 °Bx is outside 0.5 to 30 °Bx; 1.8 % is written 1.8",
    );
    refused(
        &[("/sap/0/temperature", json!("-2 °C"))],
        ErrorKind::OutOfRange,
        "sap[0].temperature = -2 °C is outside -0.1002 to 40 °C; sap of 1.8 °Bx freezes below: give the ice under ice",
    );
    refused(
        &[("/sap/0/volume", json!("40 gall"))],
        ErrorKind::UnknownUnit,
        "sap[0].volume has the unknown unit \"gall\"; nearest: gal (US gallon), imp gal",
    );
    refused(
        &[("/sap/0/mass", json!("180 kg"))],
        ErrorKind::Inconsistent,
        "sap[0].mass = 180 kg does not fit volume = 170 L; 170 L at 1.8 °Bx and 3 °C is 171.2 kg: give one of them",
    );
    refused(
        &[("/sap", json!([]))],
        ErrorKind::Missing,
        "sap is missing; give one lot at least",
    );
    refused(
        &[("/sap/1/brix", Value::Null)],
        ErrorKind::Missing,
        "sap[1].brix is missing; give brix, or reading",
    );
    refused(
        &[
            ("/sap/0/brix", Value::Null),
            ("/sap/0/reading", json!({"value": 2.0, "instrument": "refractometer"})),
        ],
        ErrorKind::OutOfRange,
        "sap[0].reading.prism = 3 °C is outside 10 to 30 °C; let the instrument come to room temperature",
    );
    let read = json!({"value": 1.8, "instrument": "refractometer", "temperature": "20 °C"});
    let plan = planned(&[("/sap/0/brix", Value::Null), ("/sap/0/reading", read)]).unwrap();
    assert!((plan.totals.syrup.unwrap().volume.value() - 5.950).abs() < 0.001);
}

#[test]
fn a_rig_that_cannot() {
    refused(
        &[("/membrane/presure", json!("7.6 bar gauge"))],
        ErrorKind::UnknownName,
        "membrane has the unknown name \"presure\"; nearest: pressure",
    );
    refused(
        &[("/membrane/element/recovery", json!(15))],
        ErrorKind::OutOfRange,
        "membrane.element.recovery = 15 is outside 0.01 to 0.8; 15 % is written percent(15), \"15 %\" or 0.15",
    );
    refused(
        &[("/membrane/pressure", json!("9 bar gauge"))],
        ErrorKind::OutOfRange,
        "membrane.pressure = 9 bar gauge is outside 0 to 7.6 bar gauge; the rig's weakest part allows no more",
    );
    refused(
        &[("/membrane/run", json!({"recirculate_until": {"brix": 12}}))],
        ErrorKind::Unreachable,
        "membrane.run.recirculate_until.brix = 12 °Bx cannot be reached; at 7.6 bar gauge and 3.716 °C the osmotic \
         limit is 9.866 °Bx, and 9.373 °Bx takes 7.122 h: aim lower, or use a rig rated for more pressure",
    );
    refused(
        &[("/membrane/run", json!({"single_pass": {"recovery": 0.9}}))],
        ErrorKind::Unreachable,
        "membrane.run.single_pass.recovery = 0.9 cannot be reached; the most at this pressure is 0.7921, because of \
         the osmotic limit: ask for less, or recirculate",
    );
}

#[test]
fn remarks_of_the_rig() {
    let to = |brix: f64| [("/membrane/run", json!({"recirculate_until": {"brix": brix}}))];
    says(
        &to(1.9),
        Level::Notice,
        "already_there",
        "the tank is already at 1.98 °Bx: no membrane step",
    );
    says(
        &to(8.0),
        Level::Notice,
        "flow_falls",
        "at the end the permeate runs at 20 % of its first flow (10.9 of 54.2 L/h): 8 °Bx is near the osmotic limit \
         of 9.87 °Bx",
    );
    says(
        &to(8.0),
        Level::Caution,
        "tank_warms",
        "the tank warms from 3.7 to 7.7 °C: cool it, or boil at once",
    );
    says(
        &to(8.0),
        Level::Caution,
        "circulates_long",
        "the sap circulates for 5.5 h: cool it, or boil at once",
    );
    let half = [("/membrane/run", json!({"single_pass": {"recovery": "50 %"}}))];
    says(
        &half,
        Level::Notice,
        "film_range",
        "crossflow falls to 8.1 % of the rated: outside the film model's 10 to 300 %",
    );
    says(
        &half,
        Level::Notice,
        "high_recovery",
        "each element takes out 50 % in one pass at 16 % of the rated crossflow: rinse after use",
    );
}

#[test]
fn a_pan_that_cannot() {
    let little = |litres: f64| {
        [
            ("/membrane", Value::Null),
            (
                "/sap",
                json!([{"volume": format!("{litres} L"), "brix": 1.9795, "temperature": "3.716 °C"}]),
            ),
        ]
    };
    refused(
        &little(15.0),
        ErrorKind::Unreachable,
        "evaporator.pan.least_depth = 25 mm cannot be kept; 15 L of sap stand 21.01 mm deep in this pan when hot: use \
         a smaller pan, or collect 17.85 L",
    );
    assert!(planned(&little(17.85)).is_ok(), "the hint can be followed");
    says(
        &little(30.0),
        Level::Notice,
        "no_topping_up",
        "all of it goes in at once and stands 42 mm deep when hot",
    );
    says(
        &[],
        Level::Limit,
        "least_depth",
        "the pan reaches its least depth of 25 mm at 26.6 °Bx: draw off 19.9 kg (18.6 L) and finish it in a small pan; \
         all the syrup would stand 8.31 mm deep here",
    );
    says(
        &[],
        Level::Notice,
        "hold_up",
        "run as a continuous pan, this one would hold 4.70 kg of the day's 5.29 kg of sugar: run it as a batch",
    );
    refused(
        &[(
            "/evaporator/left_in_pan",
            json!({"volume": "40 L", "brix": 12, "temperature": "5 °C"}),
        )],
        ErrorKind::Inconsistent,
        "evaporator.left_in_pan.volume = 40 L does not fit running_depth = 50 mm; hot it is 41.74 L and the pan holds \
         37.21 L: draw some off first",
    );
    says(
        &[("/finishing/capacity", json!("12 L"))],
        Level::Limit,
        "finishing_pan",
        "the finishing pan of 12 L does not hold the draw of 18.6 L: finish in 2 batches, and leave room for foam",
    );
}

#[test]
fn fuel_that_cannot_be() {
    refused(
        &[("/evaporator/fuel/wood/moisture", json!({"wet_basis": 0.7}))],
        ErrorKind::OutOfRange,
        "evaporator.fuel.wood.moisture = 0.7 is outside 0 to 0.6; if it is dry basis it is 0.4118 wet: write dry_basis",
    );
    assert!(planned(&[("/evaporator/fuel/wood/moisture", json!({"dry_basis": 0.7}))]).is_ok());
    refused(
        &[("/evaporator/fuel/efficiency", json!({"of_gross": 45}))],
        ErrorKind::OutOfRange,
        "evaporator.fuel.efficiency = 45 is outside 0.05 to 1; 45 % is written percent(45), \"45 %\" or 0.45",
    );
    refused(
        &[("/finishing/fuel/named", json!("propan"))],
        ErrorKind::UnknownName,
        "finishing.fuel.named has the unknown name \"propan\"; nearest: propane",
    );
}

#[test]
fn bottles() {
    says(
        &[],
        Level::Caution,
        "cold_container",
        "a 500 mL glass at 20 °C settles at 77.1 °C: warm it to 61 °C, or fill at 90.6 °C",
    );
    let plan = planned(&[("/containers/0/mass", json!("600 g"))]).unwrap();
    let heavy = plan.remarks.iter().find(|r| r.key == "cold_container").unwrap();
    assert!(heavy.text.ends_with(": warm it to 71 °C"), "{}", heavy.text);
    refused(
        &[("/containers/0/brimful", json!("510 mL"))],
        ErrorKind::Inconsistent,
        "containers[0].brimful = 510 mL does not fit volume = 500 mL; at 85 °C the fill is 514.9 mL: take a larger \
         container",
    );
    says(
        &[("/containers/0/stock", json!(8)), ("/containers/1/stock", json!(2))],
        Level::Limit,
        "stock",
        "the containers hold 4.5 L of 5.95 L: 1.45 L are left over",
    );
    says(
        &[("/target/brix", json!(69.5))],
        Level::Notice,
        "may_crystallise",
        "at 69.5 °Bx sugar may crystallise in store",
    );
}

#[test]
fn keys_of_a_later_version_are_refused() {
    for (pointer, value, path) in [
        (
            "/arrangement",
            json!("together"),
            "inputs has the unknown name \"arrangement\"",
        ),
        ("/blend", json!("never"), "inputs has the unknown name \"blend\""),
        ("/sap/0/ice", json!("melts"), "sap[0] has the unknown name \"ice\""),
        (
            "/sap/0/owner",
            json!("next door"),
            "sap[0] has the unknown name \"owner\"",
        ),
        (
            "/membrane/readings",
            json!([]),
            "membrane has the unknown name \"readings\"",
        ),
        (
            "/evaporator/run",
            json!("continuous"),
            "evaporator.run has the unknown name \"continuous\"",
        ),
        (
            "/evaporator/preheated_to",
            json!("60 °C"),
            "evaporator has the unknown name \"preheated_to\"",
        ),
        (
            "/evaporator/heat",
            json!({"sap_rate": {}}),
            "evaporator.heat has the unknown name \"sap_rate\"",
        ),
        (
            "/target/jurisdiction",
            json!("far"),
            "target has the unknown name \"jurisdiction\"",
        ),
    ] {
        refused(
            &[(pointer, value)],
            ErrorKind::UnknownName,
            &format!("{path}; this version does not know it yet"),
        );
    }
}

#[test]
fn other_slips() {
    refused(
        &[("/sap/0/volume", json!(170))],
        ErrorKind::WrongDimension,
        "sap[0].volume = 170 needs a unit: write litre(170) or gal(170)",
    );
    refused(
        &[("/sap/0/volume", json!("170 kg"))],
        ErrorKind::WrongDimension,
        "sap[0].volume = 170 kg is a mass; a volume is needed",
    );
    refused(
        &[("/sap/0/volume", json!("2,5 L"))],
        ErrorKind::Unreadable,
        "sap[0].volume = \"2,5 L\" cannot be read; is it 2.5 L or 25 L?",
    );
    refused(
        &[("/sap/0/volume", json!({"value": 170, "unit": "L", "uncertainty": -2}))],
        ErrorKind::OutOfRange,
        "sap[0].volume.uncertainty = -2 is outside 0 and up",
    );
    refused(
        &[("/start", json!("seven"))],
        ErrorKind::Unreadable,
        "start = \"seven\" cannot be read; write it as 2027-03-14T07:00",
    );
    let error = DayInputs::from_json("{\"air\": }").unwrap_err();
    assert_eq!(error.kind(), ErrorKind::Unreadable);
    assert!(error.to_string().contains("line 1 column 9"), "{error}");
}

/// What a hint says, typed: it works.
#[test]
fn hints_can_be_followed() {
    let works = |changes: &[(&str, Value)]| planned(changes).unwrap();
    let setting = json!({"altimeter_setting": "101.659 kPa", "altitude": "410 m"});
    assert_eq!(
        format!("{:.2}", works(&[("/air", setting)]).air.pressure.value()),
        "96.82"
    );
    works(&[("/sap/0/temperature", json!("-0.1002 °C"))]);
    works(&[("/membrane/element/recovery", json!("15 %"))]);
    works(&[("/membrane/pressure", json!("7.6 bar gauge"))]);
    let near = works(&[("/membrane/run", json!({"recirculate_until": {"brix": 9.373}}))]);
    assert_eq!(format!("{:.3}", near.steps[0].duration.value()), "7.122");
    works(&[("/membrane/run", json!({"single_pass": {"recovery": 0.7921}}))]);
    works(&[("/evaporator/fuel/wood/moisture", json!({"wet_basis": 0.4118}))]);
    works(&[("/evaporator/fuel/efficiency", json!({"of_gross": "45 %"}))]);
    works(&[("/sap/0/volume", Value::Null), ("/sap/0/mass", json!("171.2 kg"))]);
    let warm = [
        ("/containers/0/temperature", json!("61 °C")),
        ("/containers/1/temperature", json!("65 °C")),
    ];
    assert!(works(&warm).remarks.iter().all(|r| r.key != "cold_container"));
    let hot = works(&[("/fill_temperature", json!("90.6 °C"))]);
    let glass = hot.containers[0].settled.unwrap();
    assert!(glass.value() >= 82.0, "{glass:?}");
}
