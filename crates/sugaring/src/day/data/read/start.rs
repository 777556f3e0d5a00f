//! The start of a day.

/// Minutes after midnight of a `YYYY-MM-DDThh:mm`.
pub(crate) fn start_minutes(start: &str) -> Option<f64> {
    let (date, time) = start.split_once('T')?;
    let mut date = date.split('-');
    let (year, month, day) = (date.next()?, date.next()?, date.next()?);
    let (hour, minute) = time.split_once(':')?;
    let digits = |text: &str, count: usize, low: u32, high: u32| -> Option<u32> {
        let plain = text.len() == count && text.bytes().all(|b| b.is_ascii_digit());
        let number = text.parse().ok()?;
        (plain && (low..=high).contains(&number)).then_some(number)
    };
    digits(year, 4, 0, 9999)?;
    let month = digits(month, 2, 1, 12)?;
    let longest = match month {
        2 => 29,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    };
    digits(day, 2, 1, longest)?;
    if date.next().is_some() {
        return None;
    }
    let (hour, minute) = (digits(hour, 2, 0, 23)?, digits(minute, 2, 0, 59)?);
    Some(f64::from(60 * hour + minute))
}
