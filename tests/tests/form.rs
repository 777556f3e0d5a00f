//! Texts and JSON from outside: what is read, what is refused and with which words, and that every bit survives.

use proptest::prelude::*;
use sugaring::{
    Error, ErrorKind,
    form::Tree,
    units::{
        self, Brix, GaugePressure, Length, Pressure, Quantity, Ratio, Temperature, Unit, Volume, deg_f, gal, percent,
    },
};

fn refused<T: std::fmt::Debug>(result: Result<T, Error>, kind: ErrorKind, says: &str) {
    let error = result.expect_err(says);
    assert_eq!((error.kind(), error.to_string().as_str()), (kind, says));
}

#[test]
fn texts_are_read_as_people_write_them() {
    let volume = |text| units::parse::<Volume>(text).expect(text);
    for text in ["40 gal", "40gal", " 40  gallons ", "4e1 gal", "40.0 US gal", "+40 gal"] {
        assert_eq!(volume(text), gal(40.0), "{text}");
    }
    for text in ["7.6 bar gauge", "7.6 bar_gauge", "7.6bargauge", "7.6 barg"] {
        assert_eq!(
            units::parse::<GaugePressure>(text).expect(text),
            units::bar_gauge(7.6),
            "{text}"
        );
    }
    for text in ["60 °F", "60ºF", "60 ℉", "60 deg_f", "60 degF", "60 ˚F", "60 ° F"] {
        assert_eq!(units::parse::<Temperature>(text).expect(text), deg_f(60.0), "{text}");
    }
    assert_eq!(units::parse::<Ratio>("0.25 %"), Ok(percent(0.25)));
    assert_eq!(units::parse::<Ratio>("0.25"), Ok(percent(25.0)));
    assert_eq!(units::parse::<Brix>("66.9").map(Brix::get), Ok(66.9));
    assert_eq!(
        "0.9 m3/d".parse::<Quantity>().map(|q| q.to_string()),
        Ok(String::from("0.9 m³/d"))
    );
}

#[test]
fn slips_of_the_pen_give_their_texts() {
    use ErrorKind::{OutOfRange, UnknownUnit, Unreadable, WrongDimension};
    let volume = |text| units::parse::<Volume>(text).map_err(|e| e.within("sap[0].volume"));
    let temperature = |text| units::parse::<Temperature>(text).map_err(|e| e.within("temperature"));
    refused(
        volume("40 gall"),
        UnknownUnit,
        "sap[0].volume has the unknown unit \"gall\"; nearest: gal (US gallon), imp gal",
    );
    refused(
        temperature("20"),
        WrongDimension,
        "temperature = 20 needs a unit: write deg_c(20) or deg_f(20)",
    );
    refused(
        units::parse::<Pressure>("0.97 bar gauge").map_err(|e| e.within("pressure")),
        WrongDimension,
        "pressure = 0.97 bar gauge is a gauge pressure; an absolute one is needed: a barometer's 970 hPa is hpa(970)",
    );
    refused(
        volume("2,5 L"),
        Unreadable,
        "sap[0].volume = \"2,5 L\" cannot be read; is it 2.5 L or 25 L?",
    );
    refused(
        units::parse::<Length>("1/2 in").map_err(|e| e.within("depth")),
        Unreadable,
        "depth = \"1/2 in\" cannot be read; write 0.5 in",
    );
    refused(
        units::parse::<Length>("5 ft 3 in").map_err(|e| e.within("length")),
        Unreadable,
        "length = \"5 ft 3 in\" cannot be read; write 5.25 ft",
    );
    refused(
        volume("gal"),
        Unreadable,
        "sap[0].volume = \"gal\" cannot be read; write a number before it, such as 40 gal",
    );
    refused(
        temperature("20 C"),
        UnknownUnit,
        "temperature has the unknown unit \"C\"; write 20 °C",
    );
    refused(
        units::parse::<Brix>("120").map_err(|e| e.within("target.brix")),
        OutOfRange,
        "target.brix = 120 °Bx is outside 0 to 100 °Bx",
    );
}

#[test]
fn json_that_is_none_says_where() {
    let unreadable = |text: &str, says: &str| refused(Tree::from_json(text), ErrorKind::Unreadable, says);
    unreadable(
        "",
        "json = \"\" cannot be read; line 1 column 0: the text ends within a value",
    );
    unreadable(
        "{\"air\": {\"altitude\": \"410 m\"},\n \"sap\": [}",
        "json = \"\"sap\": [}\" cannot be read; line 2 column 10: expected value",
    );
    unreadable(
        "{\"samples\": 1e999}",
        "json = \"{\"samples\": 1e999}\" cannot be read; line 1 column 17: number out of range",
    );
    unreadable("NaN", "json = \"NaN\" cannot be read; line 1 column 1: expected value");
    unreadable(
        "1 2",
        "json = \"1 2\" cannot be read; line 1 column 3: trailing characters",
    );
    assert!(Tree::from_json("\u{feff}{}").is_ok());
}

#[test]
fn deep_data_is_refused() {
    for depth in [65, 200, 1_000_000] {
        let error = Tree::from_json(&"[".repeat(depth)).unwrap_err();
        assert_eq!(error.kind(), ErrorKind::Unreadable);
        assert!(error.to_string().contains("nested more than 64 levels deep"), "{error}");
    }
    let deep = format!("{}{}", "[".repeat(64), "]".repeat(64));
    assert!(Tree::from_json(&deep).is_ok());
}

#[test]
fn numbers_are_written_in_their_shortest_digits() {
    let cases = [
        (11.0, "11"),
        (0.5, "0.5"),
        (-2.0, "-2"),
        (0.0, "0"),
        (-0.0, "-0.0"),
        (1e15, "1000000000000000"),
        (1e300, "1e+300"),
        (1e-7, "1e-7"),
        (0.1 + 0.2, "0.30000000000000004"),
    ];
    for (number, text) in cases {
        assert_eq!(Tree::from(number).to_json().as_deref(), Ok(text));
    }
    let quantity = |value, word| Tree::from(Quantity::new(value, Unit::named(word).expect(word)));
    assert_eq!(
        quantity(40.0, "gal").to_json().as_deref(),
        Ok("{\"value\":40,\"unit\":\"gal\"}")
    );
    assert_eq!(quantity(1.8, "brix").to_json().as_deref(), Ok("1.8"));
    assert_eq!(quantity(0.25, "fraction").to_json().as_deref(), Ok("0.25"));
    assert_eq!(
        quantity(25.0, "%").to_json().as_deref(),
        Ok("{\"value\":25,\"unit\":\"%\"}")
    );
    assert_eq!(
        Tree::map([("a", Tree::from(1.0))]).to_json_pretty().as_deref(),
        Ok("{\n  \"a\": 1\n}")
    );
}

#[test]
fn no_output_holds_nan() {
    let tree = Tree::map([("steps", Tree::List(vec![Tree::map([("hours", Tree::from(f64::NAN))])]))]);
    refused(
        tree.to_json(),
        ErrorKind::NotFinite,
        "steps[0].hours = NaN is not a finite number",
    );
    assert!(serde_json::to_string(&tree).is_err());
}

#[test]
fn quantities_are_data() {
    let read = |json: &str| serde_json::from_str::<Quantity>(json).map_err(|e| e.to_string());
    let tank = read("\"40 gal\"").expect("a quantity");
    assert_eq!(read("{\"value\": 40, \"unit\": \"gal\"}").as_ref(), Ok(&tank));
    assert_eq!(
        serde_json::to_string(&tank).expect("JSON"),
        "{\"value\":40,\"unit\":\"gal\"}"
    );
    assert_eq!(
        read("{\"value\": 40, \"unit\": \"gall\"}").unwrap_err(),
        "quantity has the unknown unit \"gall\"; nearest: gal (US gallon), imp gal"
    );
    assert_eq!(
        read("40").unwrap_err(),
        "quantity = 40 needs a unit: write it behind, as in 40 gal"
    );
}

/// As `serde_json` hands numbers out once any crate in the build has turned on `arbitrary_precision`.
#[test]
fn a_number_in_a_map_of_its_own_is_a_number() {
    let json = "{\"brix\": {\"$serde_json::private::Number\": \"1.8\"}}";
    assert_eq!(Tree::from_json(json), Ok(Tree::map([("brix", Tree::from(1.8))])));
    assert!(Tree::from_json("{\"$serde_json::private::Number\": \"much\"}").is_err());
}

/// Digits of a generator of our own (Marsaglia 2003, xorshift), so that the texts are the same in every run.
fn number_texts(count: usize) -> impl Iterator<Item = String> {
    let mut state = 88_172_645_463_325_252_u64;
    let mut next = move |below: u64| {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        state % below
    };
    (0..count).map(move |_| {
        let minus = if next(2) == 0 { "-" } else { "" };
        match next(4) {
            0 => format!("{minus}{}", next(u64::MAX)),
            1 => format!("{minus}{}.{:017}", next(1000), next(100_000_000_000_000_000)),
            2 => format!(
                "{minus}{}.{}e{}",
                next(10),
                next(u64::MAX),
                i64::try_from(next(600)).unwrap() - 310
            ),
            _ => {
                let number = f64::from_bits(next(u64::MAX));
                let number = if number.is_finite() { number } else { 1.5 };
                format!("{number:e}")
            }
        }
    })
}

#[test]
fn numbers_come_in_to_the_bit() {
    let mut read = 0;
    for text in number_texts(100_000) {
        let Ok(tree) = Tree::from_json(&text) else {
            assert!(text.parse::<f64>().is_ok_and(f64::is_infinite), "{text}");
            continue;
        };
        let Tree::Number(number) = tree else {
            panic!("{text} is no number: {tree:?}")
        };
        assert_eq!(
            number.to_bits(),
            text.parse::<f64>().expect("a number").to_bits(),
            "{text}"
        );
        read += 1;
    }
    assert!(read > 99_000, "{read}");
    println!("{read} number texts read to the bit");
}

fn trees() -> impl Strategy<Value = Tree> {
    let number = any::<f64>().prop_filter("finite", |x| x.is_finite());
    let leaf = prop_oneof![
        Just(Tree::Null),
        any::<bool>().prop_map(Tree::Bool),
        number.prop_map(Tree::Number),
        (-1_000_000_i32..1_000_000).prop_map(|whole| Tree::Number(f64::from(whole))),
        any::<String>().prop_map(Tree::Text),
    ];
    leaf.prop_recursive(4, 64, 6, |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(Tree::List),
            prop::collection::vec(("[a-z_]{1,8}", inner), 0..6).prop_map(Tree::Map),
        ]
    })
}

/// The same tree, numbers compared by their bits.
fn same(one: &Tree, other: &Tree) -> bool {
    match (one, other) {
        (Tree::Number(a), Tree::Number(b)) => a.to_bits() == b.to_bits(),
        (Tree::List(a), Tree::List(b)) => a.len() == b.len() && a.iter().zip(b).all(|(a, b)| same(a, b)),
        (Tree::Map(a), Tree::Map(b)) => {
            a.len() == b.len() && a.iter().zip(b).all(|((k, a), (l, b))| k == l && same(a, b))
        }
        _ => one == other,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    #[test]
    fn a_tree_survives_json(tree in trees()) {
        for json in [tree.to_json(), tree.to_json_pretty()] {
            let back = Tree::from_json(&json.expect("JSON")).expect("a tree");
            prop_assert!(same(&tree, &back), "{tree:?} {back:?}");
        }
    }

    #[test]
    fn any_text_is_json_or_refused(text in any::<String>()) {
        let _ = Tree::from_json(&text).map_err(|e| e.to_string());
    }

    #[test]
    fn broken_json_is_refused_without_a_panic(tree in trees(), cut in 0usize..400, put in any::<char>()) {
        let mut json: Vec<char> = tree.to_json().expect("JSON").chars().collect();
        let at = cut.min(json.len());
        json.insert(at, put);
        let changed: String = json.iter().collect();
        json.truncate(at);
        let cut: String = json.into_iter().collect();
        for text in [changed, cut] {
            if let Err(error) = Tree::from_json(&text) {
                prop_assert!(error.to_string().chars().count() < 300);
            }
        }
    }
}
