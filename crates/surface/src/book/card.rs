//! Cards of marks as they are printed, and the lists beside them.

use sugaring::{
    Error, catalogue,
    instrument::{Card, Hydrometer, card, chart, usual_temperatures},
    units::{System, baume_20_20, brix, deg_c, deg_f},
};

use super::functions::in_cell;

/// The card of a scale and a system, `brix us`, drawn; or with `text` behind them, written.
pub(super) fn of(words: &str) -> Option<String> {
    let mut words = words.split(' ');
    let (scale, system) = (words.next()?, System::named(words.next()?).ok()?);
    let card = made(scale, system).ok()??;
    Some(match words.next() {
        Some(_) => format!("\n```text\n{}```\n\n", card.page(system)),
        None => format!("<figure class=\"card\">\n{}</figure>\n", card.to_svg(system)),
    })
}

/// The US card has the chart beside it, since the law that prescribes it thinks in °F.
fn made(scale: &str, system: System) -> Result<Option<Card>, Error> {
    let hydrometer = match scale {
        "brix" => Hydrometer::brix(deg_f(60.0))?,
        "baume" => Hydrometer::on_scale::<baume_20_20>(deg_f(60.0))?,
        _ => return Ok(None),
    };
    let card = card(brix(66.9)?, &hydrometer.into(), &usual_temperatures(system))?.with_name("Far Orchard");
    Ok(Some(if system == System::Us {
        card.with_chart(&chart("vermont")?)?
    } else {
        card
    }))
}

/// What density is lawful where.
pub(super) fn jurisdictions() -> String {
    let mut text = String::from(
        "\n| name | place | law | °Bx | reference | chart | seen | from |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n",
    );
    for row in catalogue::jurisdictions() {
        let limits = match row.max {
            Some(max) => format!("{} to {}", row.min.get(), max.get()),
            None => format!("{} or more", row.min.get()),
        };
        let reference = row.reference_temperature().map_or_else(
            || String::from("not stated"),
            |at| format!("{} °C", (at.get::<deg_c>() * 1e3).round() / 1e3),
        );
        let law = [row.law, row.note]
            .into_iter()
            .filter(|text| !text.is_empty())
            .collect::<Vec<_>>()
            .join("; ");
        let cells = [
            format!("`{}`", row.key),
            row.name.to_owned(),
            law,
            limits,
            reference,
            String::from(if row.has_chart { "yes" } else { "no" }),
            row.seen.to_owned(),
            row.source.to_string(),
        ];
        text += &line(&cells);
    }
    text + "\n"
}

/// What instruments usually show.
pub(super) fn instruments() -> String {
    let mut text = String::from(
        "\n| name | instrument | read to | standard uncertainty | from |\n| --- | --- | --- | --- | --- |\n",
    );
    for row in catalogue::instruments() {
        let of = match row.of.name() {
            "reading" => String::new(),
            of => format!(" of the {of}"),
        };
        text += &line(&[
            format!("`{}`", row.key),
            row.name.to_owned(),
            row.resolution
                .map_or_else(|| String::from("–"), |step| step.to_string()),
            format!("{}{of}", row.uncertainty),
            row.source.to_string(),
        ]);
    }
    text + "\n"
}

fn line(cells: &[String]) -> String {
    let cells: Vec<String> = cells.iter().map(|cell| in_cell(cell)).collect();
    format!("| {} |\n", cells.join(" | "))
}

#[cfg(test)]
mod tests {
    #[test]
    fn a_card_is_one_block_of_html() {
        let drawn = super::of("brix us").unwrap();
        assert!(!drawn.contains("\n\n"), "a blank line would end the block");
        assert!(super::of("brix us text").unwrap().contains("look for"));
        assert!(super::of("brix imperial").is_none() && super::of("plato us").is_none());
    }
}
