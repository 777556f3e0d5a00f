//! Pictures of the book: the curves of a relation over its range, the rows of published tables as points, below them
//! how far these lie from the relation, with the declared accuracy as a band; and the same in words.
//!
//! Everything drawn comes from the library's own output and from the tables of `tests`, so that a picture cannot
//! show what the library does not say.

mod axis;
mod draw;
mod formula;
mod list;
mod plot;
mod svg;
mod words;

pub use plot::Picture;

/// Every picture, in the order of the book.
pub fn pictures() -> Vec<Picture> {
    list::plots().iter().map(plot::Plot::picture).collect()
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    #[test]
    fn pictures_have_names_of_their_own_and_words_with_numbers() {
        let pictures = super::pictures();
        let names: BTreeSet<_> = pictures.iter().map(|picture| picture.name).collect();
        assert_eq!(names.len(), pictures.len());
        for picture in &pictures {
            assert!(picture.words.chars().any(|c| c.is_ascii_digit()), "{}", picture.name);
            assert!(
                picture.svg.contains("<title") && picture.svg.contains("<desc"),
                "{}",
                picture.name
            );
        }
    }

    /// A blank line would end the block of HTML that the page puts it into.
    #[test]
    fn a_picture_has_no_blank_line_and_no_colour_of_its_own() {
        for picture in super::pictures() {
            assert!(
                picture.svg.lines().all(|line| !line.trim().is_empty()),
                "{}",
                picture.name
            );
            let bare = picture.svg.lines().find(|line| line.contains("=\"#"));
            assert_eq!(bare, None, "{}", picture.name);
        }
    }

    /// The band is drawn from numbers of its own, which must be those that the relation states.
    #[test]
    fn bands_are_what_relations_declare() {
        for plot in super::list::plots() {
            let accuracy = plot.accuracy.replace("1 ppm", "0.0001 %");
            for step in plot.below.steps() {
                assert!(
                    accuracy.contains(&step.half.to_string()),
                    "{}: {} in {accuracy}",
                    plot.name,
                    step.half
                );
            }
        }
    }

    #[test]
    fn everything_lies_within_the_axes() {
        for plot in super::list::plots() {
            let curves = plot.curves.iter().flat_map(|curve| curve.line.iter().copied());
            let rows = plot.marks.iter().map(|mark| (mark.x, mark.value));
            for (x, y) in curves.chain(rows) {
                let inside = x >= plot.x.low && x <= plot.x.high && y >= plot.y.low && y <= plot.y.high;
                assert!(inside, "{}: {x}, {y}", plot.name);
            }
        }
    }

    #[test]
    fn the_same_each_time() {
        let (once, again) = (super::pictures(), super::pictures());
        for (a, b) in once.iter().zip(&again) {
            assert_eq!(a.svg, b.svg);
        }
    }
}
