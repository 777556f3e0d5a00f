//! The card of marks as it is printed, and the law beside it.

use std::{env, fs, path::Path};

use proptest::prelude::*;
use roxmltree::{Document, Node};
use sugaring::{
    catalogue,
    finish::{JurisdictionRow, legal},
    instrument::{Card, Hydrometer, Instrument, Refractometer, card, chart, usual_temperatures},
    units::*,
};
use sugaring_tests::rows;

fn on_brix() -> Instrument {
    Hydrometer::brix(deg_f(60.0)).unwrap().into()
}

fn on_baume() -> Instrument {
    Hydrometer::on_scale::<baume_20_20>(deg_f(60.0)).unwrap().into()
}

fn marks(instrument: &Instrument, temperatures: &[Temperature]) -> Card {
    card(brix(66.9).unwrap(), instrument, temperatures).unwrap()
}

/// The cards that are kept, each in all its forms.
fn kept() -> Vec<(&'static str, System, Card)> {
    let vermont = chart("vermont").unwrap();
    let metric = usual_temperatures(System::Metric);
    let beside = |card: Card| card.with_name("Far Orchard").with_chart(&vermont).unwrap();
    vec![
        ("brix_us", System::Us, beside(marks(&on_brix(), &[]))),
        ("brix_metric", System::Metric, marks(&on_brix(), &metric)),
        ("baume_us", System::Us, beside(marks(&on_baume(), &[]))),
        ("baume_metric", System::Metric, marks(&on_baume(), &metric)),
    ]
}

/// What a card looked like when it was last looked at; `SUGARING_WRITE=1` writes it anew.
#[test]
fn cards_are_as_they_were() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("regression/card");
    let mut changed = Vec::new();
    for (name, system, card) in kept() {
        let forms = [
            ("txt", card.page(system)),
            ("csv", card.to_csv()),
            ("json", card.to_json().unwrap() + "\n"),
            ("svg", card.to_svg(system)),
        ];
        for (ending, text) in forms {
            let file = folder.join(format!("{name}.{ending}"));
            if env::var_os("SUGARING_WRITE").is_some() {
                fs::create_dir_all(&folder).unwrap();
                fs::write(&file, &text).unwrap();
            }
            if fs::read_to_string(&file).ok().as_ref() != Some(&text) {
                changed.push(format!("{name}.{ending}"));
            }
        }
    }
    assert!(changed.is_empty(), "changed: {}", changed.join(", "));
}

fn texts(svg: &str) -> Vec<String> {
    let document = Document::parse(svg).unwrap();
    let inside = |node: &Node| node.has_tag_name(("http://www.w3.org/2000/svg", "text"));
    let found = document.descendants().filter(inside);
    found.map(|node| node.text().unwrap_or_default().to_owned()).collect()
}

#[test]
fn a_card_stands_by_itself() {
    for (name, system, card) in kept() {
        let svg = card.to_svg(system);
        let document = Document::parse(&svg).unwrap();
        let tags: Vec<&str> = document
            .descendants()
            .filter(Node::is_element)
            .map(|n| n.tag_name().name())
            .collect();
        assert!(
            tags.iter()
                .all(|tag| ["svg", "title", "desc", "rect", "path", "text"].contains(tag)),
            "{name}: {tags:?}"
        );
        assert_eq!(tags[1..3], ["title", "desc"]);
        // Nothing but grey, and no address but that of the format.
        assert!(!svg.contains("url(") && !svg.contains("href") && svg.matches("http").count() == 1);
        let height: f64 = document
            .root_element()
            .attribute("viewBox")
            .unwrap()
            .rsplit(' ')
            .next()
            .unwrap()
            .parse()
            .unwrap();
        for node in document.descendants() {
            let number = |name| {
                node.attribute(name)
                    .map_or(0.0, |text: &str| text.parse::<f64>().unwrap())
            };
            assert!(
                (0.0..=105.0).contains(&number("x")) && (0.0..=height).contains(&number("y")),
                "{name}"
            );
        }
        let texts = texts(&svg);
        for mark in &card.marks {
            let printed = format!("{:.1}", mark.readable);
            assert!(texts.contains(&printed), "{name} {printed}");
        }
        assert!(texts.iter().any(|text| text.contains("scalds")));
        assert_eq!(svg.contains("check your local"), card.chart.is_some());
    }
}

#[test]
fn columns_are_read_by_their_headings() {
    for (name, _, card) in kept() {
        let csv = card.to_csv();
        assert_eq!(csv.matches("\r\n").count(), card.marks.len() + 1);
        let mut reader = csv::Reader::from_reader(csv.as_bytes());
        let units: Vec<_> = reader
            .headers()
            .unwrap()
            .iter()
            .map(|head| heading(head).unwrap().1.unwrap())
            .collect();
        assert_eq!(units[..3], [&table::deg_f, &table::deg_c, card.unit()], "{name}");
        for (record, mark) in reader.records().zip(&card.marks) {
            let record = record.unwrap();
            let number = |column: usize| record[column].parse::<f64>().unwrap();
            assert!((number(0) - mark.temperature.get::<deg_f>()).abs() < 1e-9);
            assert!((number(1) - mark.temperature.get::<deg_c>()).abs() < 1e-9);
            assert_eq!((number(2), number(3)), (mark.readable.get(), mark.reading.get()));
            if card.chart.is_some() {
                assert_eq!(record[5].is_empty(), mark.chart.is_none());
            }
        }
    }
}

/// Each printed row of the chart stands in the data; the hot-test marks beside it are another thing.
#[test]
fn the_chart_is_the_printed_one() {
    let vermont = chart("vermont").unwrap();
    let mut seen = 0;
    for row in rows(
        "hydrometer_syrup_chart_60f",
        include_str!("../published/hydrometer_syrup_chart_60f.csv"),
    ) {
        let temperature = deg_f(row.number("temp_f"));
        if !row.text("source").starts_with("state density chart") {
            assert!(vermont.mark(temperature).is_err(), "211 °F is beyond the chart");
            continue;
        }
        let mark = vermont.mark(temperature).unwrap();
        let found = if row.text("unit") == "brix_pct_reading" {
            mark.brix
        } else {
            mark.baume
        };
        assert!(
            (found.get() - row.number("value")).abs() < 1e-9,
            "{}",
            row.number("temp_f")
        );
        seen += 1;
    }
    assert_eq!(seen, 20);
    // What the table here leaves out: °Baumé falls by a quarter a row, as its note says, and no °Brix lies further from
    // the equation than the misses that are known.
    for (row, quarters) in vermont.rows().iter().zip(0_u8..) {
        assert_eq!(row.mark().baume.get(), 36.25 - 0.25 * f64::from(quarters));
        let ours = on_brix().reading(brix(66.9).unwrap(), row.temperature()).unwrap();
        let apart = ours.get() - row.mark().brix.get();
        assert!((-0.12..0.33).contains(&apart), "{apart}");
    }
}

/// The law's chart is not the equation: syrup that just meets it at 120 °F is 66.57 °Bx when cold.
#[test]
fn the_chart_asks_for_too_little_in_the_middle() {
    let vermont = chart("vermont").unwrap();
    let asked = vermont.mark(deg_f(120.0)).unwrap().brix;
    let truth = on_brix().truth(asked, deg_f(120.0)).unwrap();
    assert_eq!(format!("{:.2}", truth.value), "66.57 °Bx");
    let apart = |row: &sugaring::instrument::ChartRow| {
        let ours = on_brix().reading(brix(66.9).unwrap(), row.temperature()).unwrap();
        ours.get() - row.mark().brix.get()
    };
    let largest = vermont.rows().iter().map(apart).fold(0.0, f64::max);
    assert_eq!(format!("{largest:.2}"), "0.33");
}

/// 36 °Bé is not 66.9 °Bx: to the tenth it is, and a rule in °Brix is not met by it.
#[test]
fn legality_is_decided_in_brix() {
    let baume = on_baume()
        .truth(sugaring::instrument::reading(36.0), deg_f(60.0))
        .unwrap();
    assert_eq!(format!("{:.2}", baume.value), "66.85 °Bx");
    let found = legal(baume, "vermont").unwrap();
    assert!(!found.legal && found.probability > 0.4);
    let data = found.to_tree().to_json().unwrap();
    assert!(
        data.contains("\"density\":\"too_thin\"") && data.contains("\"jurisdiction\":\"vermont\""),
        "{data}"
    );
    // A hydrometer for 20 °C floats at 67.24 in the same lawful syrup at 60 °F: the truth is what counts.
    let metric = Instrument::from(Hydrometer::brix(deg_c(20.0)).unwrap());
    let shown = metric.reading(brix(66.9).unwrap(), deg_f(60.0)).unwrap();
    assert_eq!(format!("{shown:.2}"), "67.24");
    assert!(
        legal(metric.truth(shown, deg_f(60.0)).unwrap(), "vermont")
            .unwrap()
            .legal
    );
}

/// °Bx least and most, and °C: 7 CFR 52.5961 and USDA AMS; CFIA compendium, volume 7; P-29 r. 1 (from memory); Ontario's
/// ministry; Vermont's rule as quoted; 1 NYCRR 270.1; 7 MRSA 892-A.
#[test]
fn limits_are_those_of_the_laws() {
    let known = [
        ("us", 66.0, None, None),
        ("us_grade_a", 66.0, Some(68.9), Some(20.0)),
        ("canada", 66.0, Some(68.9), Some(20.0)),
        ("quebec", 66.0, Some(68.9), Some(20.0)),
        ("ontario", 66.0, None, None),
        ("vermont", 66.9, Some(68.9), Some(15.556)),
        ("new_york", 66.0, Some(68.9), None),
        ("maine", 66.0, Some(69.0), Some(20.0)),
    ];
    assert_eq!(catalogue::jurisdictions().len(), known.len());
    for ((key, min, max, celsius), row) in known.into_iter().zip(catalogue::jurisdictions()) {
        assert_eq!((key, min, max), (row.key, row.min.get(), row.max.map(Brix::get)));
        let named = row
            .reference_temperature()
            .map(|t| (t.get::<deg_c>() * 1e3).round() / 1e3);
        assert_eq!(named, celsius, "{key}");
        assert_eq!(chart(key).is_ok(), row.has_chart, "{key}");
    }
    assert!(
        JurisdictionRow::named("new_hampshire").is_err(),
        "its text was not seen"
    );
}

#[test]
fn usual_instruments_say_where_their_figures_come_from() {
    let instruments = catalogue::instruments();
    assert_eq!(instruments.len(), 12);
    let sources: Vec<String> = instruments.iter().map(|row| row.source.to_string()).collect();
    assert_eq!(
        sources
            .iter()
            .filter(|text| *text == "common practice, no source")
            .count(),
        11
    );
    // What the library takes where nobody said more is the list's figure.
    let row = |key: &str| instruments.iter().find(|row| row.key == key).unwrap().uncertainty.high;
    let u = |instrument: &Instrument, shown, t| {
        instrument
            .truth(sugaring::instrument::reading(shown), t)
            .unwrap()
            .uncertainty
    };
    // Where the scale is true, a °Bx of it is one of the liquid.
    assert!((u(&on_brix(), 66.0, deg_f(60.0)) - row("syrup_hydrometer_untested")).abs() < 1e-12);
    let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap().into();
    assert!((u(&hand, 66.0, deg_c(20.0)) - row("hand_refractometer")).abs() < 1e-12);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    #[test]
    fn any_name_is_printed_well_formed(name in "\\PC*|[\u{0}-\u{ff}]*|[<>&\"'\\]]*", system in 0..3_usize) {
        let card = marks(&on_brix(), &[deg_f(211.0), deg_f(60.0)]).with_name(&name);
        let svg = card.to_svg([System::AsGiven, System::Us, System::Metric][system]);
        let document = Document::parse(&svg).unwrap();
        let title = document.descendants().find(|node| node.has_tag_name("title")).unwrap();
        let kept = card.name.clone().map_or_else(String::new, |name| format!("{name}: "));
        prop_assert_eq!(title.text().unwrap_or_default(), format!("{kept}Marks for syrup of 66.9 °Bx"));
        prop_assert!(card.to_json().is_ok());
    }
}
