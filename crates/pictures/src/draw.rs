//! One look for all pictures.

use std::ops::Range;

use plotters::{
    chart::{ChartBuilder, ChartContext, LabelAreaPosition},
    coord::{
        Shift,
        cartesian::Cartesian2d,
        ranged1d::{DefaultFormatting, KeyPointHint, Ranged},
    },
    element::{Circle, PathElement, Polygon, Rectangle, Text},
    prelude::{DrawingArea, IntoDrawingArea, SVGBackend},
    style::{
        Color, IntoFont, RGBColor, ShapeStyle, TextStyle,
        text_anchor::{HPos, Pos, VPos},
    },
};

use crate::{
    axis::Axis,
    plot::{Below, Kind, Plot},
    svg::{INK, LINE, PAPER, ROW},
};

/// The plotting library counts in whole steps; so fine ones that a curve has no stairs.
const FINE: i32 = 10;
/// Width and height, in these steps.
pub(crate) const SIZE: [i32; 2] = [760 * FINE, 660 * FINE];
const UPPER: i32 = 372 * FINE;
const LOWER: i32 = 628 * FINE;
const LEFT: i32 = 98 * FINE;
/// With labels of curves, and without.
const RIGHT: [i32; 2] = [112 * FINE, 36 * FINE];
const TEXT: i32 = 21 * FINE;
const WIDTH: u32 = FINE.unsigned_abs();
const BETWEEN_LABELS: i32 = 20 * FINE;

type Area<'a> = DrawingArea<SVGBackend<'a>, Shift>;

pub(crate) fn drawing(plot: &Plot) -> String {
    let mut text = String::new();
    {
        let whole =
            SVGBackend::with_string(&mut text, (SIZE[0].unsigned_abs(), SIZE[1].unsigned_abs())).into_drawing_area();
        let (upper, rest) = whole.split_vertically(UPPER);
        let (lower, key) = rest.split_vertically(LOWER - UPPER);
        over(&upper, plot);
        match plot.below {
            Below::Nothing(why) => label(&lower, (LEFT, 60 * FINE), why, INK, HPos::Left),
            _ => under(&lower, plot),
        }
        legend(&key, plot);
        whole.present().expect("drawn");
    }
    text
}

/// The curves and the rows.
fn over(area: &Area, plot: &Plot) {
    heading(area, &plot.y.heading());
    let chart = chart(area, plot, &plot.y, 26 * FINE);
    for curve in &plot.curves {
        let line = curve.line.iter().map(|&(x, y)| (plot.x.place(x), plot.y.place(y)));
        let style = LINE.stroke_width(3 * WIDTH);
        chart
            .plotting_area()
            .draw(&PathElement::new(line.collect::<Vec<_>>(), style))
            .expect("drawn");
    }
    let at = |x, y| within(area, chart.backend_coord(&(plot.x.place(x), plot.y.place(y))));
    let mut ends: Vec<_> = plot
        .curves
        .iter()
        .filter_map(|curve| {
            let &(x, y) = curve.line.last()?;
            let (x, y) = at(x, y);
            Some((x + 9 * FINE, y, curve.label.as_str()))
        })
        .collect();
    apart(&mut ends);
    for row in &plot.marks {
        mark(area, row.kind, at(row.x, row.value));
    }
    for (x, y, text) in ends {
        label(area, (x, y), text, LINE, HPos::Left);
    }
    let (x, y) = at(plot.x.high, plot.y.low);
    label(area, (x, y + 40 * FINE), &plot.x.heading(), INK, HPos::Right);
}

/// How far the rows lie from the relation.
fn under(area: &Area, plot: &Plot) {
    let deviations = plot.marks.iter().map(|mark| plot.below.deviation(mark).abs());
    let halves = plot.below.steps().iter().map(|step| step.half);
    let size = deviations.chain(halves).fold(0.0, f64::max);
    let axis = Axis::about_zero(plot.below.unit(), if size > 0.0 { size } else { 1.0 });
    heading(area, &axis.heading());
    let chart = chart(area, plot, &axis, 6 * FINE);
    let mut from = plot.x.place(plot.x.low);
    for step in plot.below.steps() {
        let to = plot.x.place(step.to);
        let corners = [(from, -step.half), (to, -step.half), (to, step.half), (from, step.half)];
        let band = Polygon::new(corners.to_vec(), LINE.mix(0.22).filled());
        chart.plotting_area().draw(&band).expect("drawn");
        from = to;
    }
    let zero = [plot.x.low, plot.x.high].map(|x| (plot.x.place(x), 0.0));
    chart
        .plotting_area()
        .draw(&PathElement::new(zero.to_vec(), LINE.stroke_width(2 * WIDTH)))
        .expect("drawn");
    for row in &plot.marks {
        let place = chart.backend_coord(&(plot.x.place(row.x), plot.below.deviation(row)));
        mark(area, row.kind, within(area, place));
    }
}

type Chart<'a, 'b> = ChartContext<'a, SVGBackend<'b>, Cartesian2d<Scale, Scale>>;

/// An axis as the plotting library wants it: from end to end, marked where we say.
struct Scale {
    ends: [f64; 2],
    marks: Vec<f64>,
}

impl Scale {
    fn of(axis: &Axis) -> Self {
        Self {
            ends: [axis.low, axis.high].map(|x| axis.place(x)),
            marks: axis.marks.iter().map(|&x| axis.place(x)).collect(),
        }
    }
}

impl Ranged for Scale {
    type FormatOption = DefaultFormatting;
    type ValueType = f64;

    fn map(&self, value: &f64, (from, to): (i32, i32)) -> i32 {
        let [low, high] = self.ends;
        from + ((value - low) / (high - low) * f64::from(to - from)).round() as i32
    }

    /// Nothing between the marks.
    fn key_points<Hint: KeyPointHint>(&self, hint: Hint) -> Vec<f64> {
        if hint.weight().allow_light_points() {
            Vec::new()
        } else {
            self.marks.clone()
        }
    }

    fn range(&self) -> Range<f64> {
        self.ends[0]..self.ends[1]
    }
}

/// The frame of a part: thin lines at the marks, and their texts.
fn chart<'a, 'b>(area: &'a Area<'b>, plot: &Plot, y: &Axis, bottom: i32) -> Chart<'a, 'b> {
    let x = &plot.x;
    let labelled = plot.curves.iter().any(|curve| !curve.label.is_empty());
    let right = if labelled { RIGHT[0] } else { RIGHT[1] };
    let mut chart = ChartBuilder::on(area)
        .margin_top(40 * FINE)
        .margin_right(right)
        .margin_bottom(bottom)
        .set_label_area_size(LabelAreaPosition::Left, LEFT)
        .set_label_area_size(LabelAreaPosition::Bottom, 26 * FINE)
        .build_cartesian_2d(Scale::of(x), Scale::of(y))
        .expect("a frame");
    chart
        .configure_mesh()
        .max_light_lines(0)
        .bold_line_style(INK.mix(0.16).stroke_width(WIDTH))
        .axis_style(INK.mix(0.45).stroke_width(WIDTH))
        .set_all_tick_mark_size(5 * FINE)
        .label_style(style(INK))
        .x_label_formatter(&|place| x.text(*place))
        .y_label_formatter(&|place| y.text(*place))
        .draw()
        .expect("drawn");
    chart
}

fn style(colour: RGBColor) -> TextStyle<'static> {
    ("sans-serif", TEXT).into_font().color(&colour)
}

/// What stands up the side, written above it, where it is read without turning the head.
fn heading(area: &Area, text: &str) {
    label(area, (12 * FINE, 18 * FINE), text, INK, HPos::Left);
}

fn label(area: &Area, place: (i32, i32), text: &str, colour: RGBColor, h: HPos) {
    let style = style(colour).pos(Pos::new(h, VPos::Center));
    area.draw(&Text::new(String::from(text), place, style)).expect("drawn");
}

/// A place in the whole, seen from the corner of `area`.
fn within(area: &Area, (x, y): (i32, i32)) -> (i32, i32) {
    let (left, top) = area.get_base_pixel();
    (x - left, y - top)
}

/// Filled what was seen, hollow what was remembered, a cross what was computed.
fn mark(area: &Area, kind: Kind, place: (i32, i32)) {
    let line = ShapeStyle::from(&ROW).stroke_width(2 * WIDTH);
    let (x, y) = place;
    let size = 4 * FINE;
    match kind {
        Kind::Seen => area.draw(&Circle::new(place, size, ROW.filled())),
        Kind::FromMemory => area
            .draw(&Circle::new(place, size, PAPER.filled()))
            .and_then(|()| area.draw(&Circle::new(place, size, line))),
        Kind::Derived => [[(-size, -size), (size, size)], [(-size, size), (size, -size)]]
            .into_iter()
            .map(|ends| ends.map(|(right, down)| (x + right, y + down)))
            .try_for_each(|ends| area.draw(&PathElement::new(ends.to_vec(), line))),
    }
    .expect("drawn");
}

/// What the marks mean.
fn legend(area: &Area, plot: &Plot) {
    // From the edge: all of it is wider than the frame.
    let (mut x, y) = (16 * FINE, 14 * FINE);
    let shown = |kind: &Kind| plot.marks.iter().any(|mark| mark.kind == *kind);
    for kind in Kind::ALL.into_iter().filter(shown) {
        mark(area, kind, (x, y));
        label(area, (x + 12 * FINE, y), kind.name(), INK, HPos::Left);
        x += (38 + 10 * kind.name().len() as i32) * FINE;
    }
    if !plot.below.steps().is_empty() {
        let corners = [(x, y - 7 * FINE), (x + 22 * FINE, y + 7 * FINE)];
        area.draw(&Rectangle::new(corners, LINE.mix(0.22).filled()))
            .expect("drawn");
        label(area, (x + 30 * FINE, y), "declared accuracy", INK, HPos::Left);
    }
}

/// Moves labels that would stand on one another.
fn apart(labels: &mut [(i32, i32, &str)]) {
    labels.sort_by_key(|&(_, y, _)| y);
    for _ in 0..40 {
        for at in 1..labels.len() {
            let gap = labels[at].1 - labels[at - 1].1;
            if gap < BETWEEN_LABELS && (labels[at].0 - labels[at - 1].0).abs() < 60 * FINE {
                let push = (BETWEEN_LABELS - gap + 1) / 2;
                labels[at - 1].1 -= push;
                labels[at].1 += push;
            }
        }
    }
}
