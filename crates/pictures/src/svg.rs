//! From what the plotting library writes to what stands in a page.

use plotters::style::RGBColor;

/// The colours, as the drawing names them; the page's theme says what they are.
pub(crate) const INK: RGBColor = RGBColor(1, 2, 3);
pub(crate) const LINE: RGBColor = RGBColor(1, 2, 4);
pub(crate) const ROW: RGBColor = RGBColor(1, 2, 5);
pub(crate) const PAPER: RGBColor = RGBColor(1, 2, 6);

/// Name in the style sheet, and what stands in where none is.
const COLOURS: [(RGBColor, &str, &str); 4] = [
    (INK, "ink", "#333333"),
    (LINE, "line", "#1d6a96"),
    (ROW, "row", "#a4480f"),
    (PAPER, "paper", "#ffffff"),
];

pub(crate) fn themed(drawn: &str, name: &str, title: &str, words: &str) -> String {
    let body = drawn.split_once('>').map_or(drawn, |(_, body)| body);
    let [width, height] = crate::draw::SIZE;
    let mut text = format!(
        "<svg class=\"picture\" role=\"img\" aria-labelledby=\"{name}-title {name}-words\" viewBox=\"0 0 {width} {height}\" \
         font-family=\"system-ui, sans-serif\" xmlns=\"http://www.w3.org/2000/svg\">\n\
         <title id=\"{name}-title\">{}</title>\n<desc id=\"{name}-words\">{}</desc>\n",
        escaped(title),
        escaped(words)
    );
    for line in body.lines().map(str::trim_end).filter(|line| !line.trim().is_empty()) {
        text += line;
        text.push('\n');
    }
    for (colour, role, plain) in COLOURS {
        let drawn = format!("\"#{:02X}{:02X}{:02X}\"", colour.0, colour.1, colour.2);
        text = text.replace(&drawn, &format!("\"var(--picture-{role}, {plain})\""));
    }
    text.replace(" font-family=\"sans-serif\"", "")
        .replace(" opacity=\"1\"", "")
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;")
}
