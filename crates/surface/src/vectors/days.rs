//! Whole days: the plan and its pages to the letter, and days that are refused.

use sugaring::{
    Error,
    day::{self, DayInputs, DayPlan, System},
};

use super::json::{error, line, object, text};
use crate::{File, file::top};

const DEMO: &str = "examples/far_orchard.json";

/// Days that can be planned, under the name of their files.
const PLANNED: [(&str, &str); 3] = [
    (
        "least",
        r#"{"air":{"altitude":"410 m"},"sap":[{"volume":"265 L","brix":1.98,"temperature":"4 °C"}],"evaporator":{"pan":{"length":"0.61 m","width":"1.22 m"}},"target":{"brix":66.9}}"#,
    ),
    (
        "us",
        r#"{"title":"US units","air":{"altimeter_setting":"30.02 inHg","altitude":"1345 ft"},"sap":[{"volume":{"value":95,"unit":"gal","uncertainty":1.5},"brix":{"value":2.1,"uncertainty":0.1},"temperature":"38 °F"}],"evaporator":{"pan":{"length":"8 ft","width":"3 ft"},"heat":{"power":"120000 Btu/h"}},"target":{"brix":67},"containers":[{"name":"quart jar","volume":"1 qt","brimful":"34 fl oz","material":"glass","mass":"1 lb","stock":3}],"samples":200,"seed":7}"#,
    ),
    (
        "no_ranges",
        r#"{"air":{"water_boils_at":"98.6 °C"},"sap":[{"mass":"300 kg","brix":2.4,"temperature":"2 °C"}],"evaporator":{"pan":{"length":"1.2 m","width":"0.8 m"}},"target":{"brix":66.5},"samples":0}"#,
    ),
];

/// Texts that are no day at all.
const NO_DAYS: [&str; 4] = ["{}", "[]", r#"{"air": {"altitude": "410 m"}"#, "{\"air\":\n  nothing}"];

/// A day of which each of the [`CHANGED`] is refused.
const SMALL: &str = r#"{"air":{"altitude":"410 m"},"sap":[{"volume":"40 gal","brix":2,"temperature":"38 °F"}],"evaporator":{"pan":{"length":"2 ft","width":"4 ft"}},"target":{"brix":66.9}}"#;

/// Changes of the small day: the text there, and the text instead.
const CHANGED: [(&str, &str); 15] = [
    (r#""410 m""#, "410"),
    (r#""410 m""#, r#""410 kPa""#),
    (r#"{"altitude""#, r#"{"station_pressure":"30.02 inHg","altitude""#),
    (r#""altitude":"410 m""#, r#""station_pressure":"0.97 bar gauge""#),
    ("40 gal", "40 gall"),
    ("40 gal", "2,5 L"),
    ("40 gal", "15 L"),
    (r#""volume":"40 gal""#, r#""volume":"170 L","mass":"180 kg""#),
    (r#""40 gal""#, "null"),
    (r#""brix":2"#, r#""brix":0.02"#),
    (r#""brix":2"#, r#""brix":1e999"#),
    (r#""brix":2"#, r#""brix":true"#),
    ("temperature", "temprature"),
    (r#""brix":66.9"#, r#""jurisdiction":"nowhere""#),
    (r#"[{"volume""#, r#"["170 L",{"volume""#),
];

/// Changes of the demo day, likewise.
const CHANGED_DEMO: [(&str, &str); 5] = [
    (r#""recovery": "15 %""#, r#""recovery": 15"#),
    (r#"{"brix": 4}"#, r#"{"brix": 12}"#),
    (r#""pressure": "7.6 bar gauge","#, r#""presure": "7.6 bar gauge","#),
    (r#""pressure": "7.6 bar gauge","#, r#""pressure": "7.6 bar","#),
    (r#""material": "glass""#, r#""material": "glas""#),
];

/// The files of the plans and pages, and the lines of the calls.
pub(super) fn files_and_lines() -> (Vec<File>, Vec<String>) {
    let demo = std::fs::read_to_string(top().join(DEMO)).unwrap_or_default();
    let (mut files, mut lines) = (Vec::new(), Vec::new());
    let mut add = |name: &str, argument: String, day: &str| match planned(name, &argument, day) {
        Ok((more, line)) => {
            files.extend(more);
            lines.push(line);
        }
        // A day that ought to be planned: the test of this module finds it.
        Err(refusal) => lines.push(refused(&argument, day, &refusal)),
    };
    add("far_orchard", object([("file", text(DEMO))]), &demo);
    for (name, day) in PLANNED {
        add(name, text(day), day);
    }
    let of_small = CHANGED.map(|(from, to)| SMALL.replacen(from, to, 1));
    let of_demo = CHANGED_DEMO.map(|(from, to)| demo.replacen(from, to, 1));
    for day in NO_DAYS.map(String::from).into_iter().chain(of_small).chain(of_demo) {
        let refusal = plan(&day).err();
        lines.extend(refusal.map(|refusal| refused(&text(&day), &day, &refusal)));
    }
    (files, lines)
}

fn plan(day: &str) -> Result<DayPlan, Error> {
    day::plan(&DayInputs::from_json(day)?)
}

fn planned(name: &str, argument: &str, day: &str) -> Result<(Vec<File>, String), Error> {
    let plan = plan(day)?;
    let file = |ending: &str, text: String| File::new(format!("tests/conformance/days/{name}.{ending}"), text);
    let json = file("json", plan.to_json()? + "\n");
    let pages = [
        ("as_given", System::AsGiven),
        ("us", System::Us),
        ("metric", System::Metric),
    ]
    .map(|(key, system)| (key, file(&format!("{key}.txt"), plan.page(system))));
    let places = object(pages.iter().map(|(key, page)| (*key, text(&page.path))));
    let outcome = [("plan", text(&json.path)), ("pages", places)];
    let line = line("day.plan", [argument.to_owned()], outcome);
    let pages = pages.into_iter().map(|(_, page)| page);
    Ok(([json].into_iter().chain(pages).collect(), line))
}

fn refused(argument: &str, day: &str, refusal: &Error) -> String {
    let is_json = serde_json::from_str::<serde_json::Value>(day).is_ok();
    let note = (!is_json).then(|| ("json", String::from("false")));
    let outcome = note.into_iter().chain([("error", error(refusal))]);
    line("day.plan", [argument.to_owned()], outcome)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_are_planned_or_refused_as_meant() {
        let (files, lines) = files_and_lines();
        assert_eq!(files.len(), 4 * (1 + PLANNED.len()), "{lines:#?}");
        assert_eq!(
            lines.len(),
            1 + PLANNED.len() + NO_DAYS.len() + CHANGED.len() + CHANGED_DEMO.len()
        );
    }
}
