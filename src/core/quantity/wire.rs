//! A gauge on a wire: what it sends line by line, and which part of a line is the
//! reading. No maker's protocol: a line of plain text, as a person sees it, of which
//! one number is taught to be the reading and one word, where there is one, its unit.

/// Letters of a line at most; what is longer is no line of a gauge.
pub const LINE_MOST: usize = 120;

/// Speeds that ports of gauges are set to, bits a second. Common practice, no source.
pub const SPEEDS: [u32; 8] = [1200, 2400, 4800, 9600, 19_200, 38_400, 57_600, 115_200];

/// Bits of a letter: how many of data, which parity, how many to stop.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Frame {
    /// Eight, none, one.
    EightNoneOne,
    /// Seven, even, one.
    SevenEvenOne,
    /// Seven, even, two.
    SevenEvenTwo,
}

impl Frame {
    /// All, the usual one first.
    pub const ALL: [Self; 3] = [Self::EightNoneOne, Self::SevenEvenOne, Self::SevenEvenTwo];

    /// Its short name, in documents for ever.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::EightNoneOne => "8N1",
            Self::SevenEvenOne => "7E1",
            Self::SevenEvenTwo => "7E2",
        }
    }

    /// By its short name.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|frame| frame.id() == id)
    }

    /// Bits of data and bits to stop.
    #[must_use]
    pub const fn bits(self) -> (u8, u8) {
        match self {
            Self::EightNoneOne => (8, 1),
            Self::SevenEvenOne => (7, 1),
            Self::SevenEvenTwo => (7, 2),
        }
    }

    /// Whether its parity is even; else there is none.
    #[must_use]
    pub const fn is_even(self) -> bool {
        !matches!(self, Self::EightNoneOne)
    }
}

/// The unit of what a gauge on a wire sends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WireUnit {
    /// That of the field the reading goes to.
    OfField,
    /// Inches, whatever the job's.
    Inch,
    /// Millimetres, whatever the job's.
    Millimetre,
    /// What this word of the line says, counted from 0.
    Word(u8),
}

/// What is set of a gauge on a wire.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wire {
    /// Bits a second, one of [`SPEEDS`].
    pub speed: u32,
    /// Bits of a letter.
    pub frame: Frame,
    /// Which number of a line is the reading, counted from 0; not taught, it is the
    /// only one of a line.
    pub number: Option<u8>,
    /// Its unit.
    pub unit: WireUnit,
}

impl Default for Wire {
    fn default() -> Self {
        Self {
            speed: 9600,
            frame: Frame::EightNoneOne,
            number: None,
            unit: WireUnit::OfField,
        }
    }
}

/// A part of a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LinePart {
    /// A number, with its sign, without zeros that mean nothing before it.
    Number(String),
    /// A word.
    Word(String),
}

/// Why a line is no reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoReading {
    /// Longer than a line of a gauge is.
    TooLong,
    /// There is no number where it was taught to be.
    NoNumber,
    /// It has several numbers and nobody has said which.
    Several,
    /// The word taught to be its unit is not there, or names none.
    NoUnit,
}

/// The parts of a line, from left to right. What is neither number nor word parts them.
///
/// # Example
/// ```
/// use coldseat_core::quantity::wire::{LinePart, parts};
/// let number = |text: &str| LinePart::Number(text.to_owned());
/// assert_eq!(
///     parts("01A+00012.700 mm"),
///     [
///         number("1"),
///         LinePart::Word("A".to_owned()),
///         number("+12.700"),
///         LinePart::Word("mm".to_owned()),
///     ]
/// );
/// ```
#[must_use]
pub fn parts(line: &str) -> Vec<LinePart> {
    let letters: Vec<char> = line.chars().take(LINE_MOST).collect();
    let mut found = Vec::new();
    let mut at = 0;
    while let Some(letter) = letters.get(at).copied() {
        let from = at;
        let rest = letters.get(at..).unwrap_or_default();
        if let Some((number, length)) = number(rest) {
            found.push(LinePart::Number(number));
            at += length;
        } else if is_word(letter) {
            at += rest.iter().take_while(|c| is_word(**c)).count();
            let word = letters.get(from..at).unwrap_or_default();
            found.push(LinePart::Word(word.iter().collect()));
        } else {
            at += 1;
        }
    }
    found
}

fn is_word(letter: char) -> bool {
    letter.is_alphabetic() || letter == '"'
}

/// A number at the beginning of some letters, and how many of them it is. A sign may
/// stand apart from its digits by blanks.
fn number(letters: &[char]) -> Option<(String, usize)> {
    let sign = letters.first().copied().filter(|c| matches!(c, '+' | '-'));
    let mut at = usize::from(sign.is_some());
    if sign.is_some() {
        at += count(letters, at, |c| c == ' ');
    }
    let whole = count(letters, at, |c| c.is_ascii_digit());
    let mut digits: String = text(letters, at, whole);
    at += whole;
    let point = letters.get(at).copied().filter(|c| matches!(c, '.' | ','));
    let rest = count(letters, at + 1, |c| c.is_ascii_digit());
    if whole == 0 && (point.is_none() || rest == 0) {
        return None;
    }
    // Zeros before the last digit of the whole say nothing.
    let zeros = digits.len() - digits.trim_start_matches('0').len();
    digits.drain(..zeros.min(whole.saturating_sub(1)));
    let mut number: String = sign.into_iter().collect();
    number.push_str(&digits);
    if let (Some(point), 1..) = (point, rest) {
        number.push(point);
        number.push_str(&text(letters, at + 1, rest));
        at += 1 + rest;
    }
    Some((number, at))
}

fn count(letters: &[char], from: usize, is: impl Fn(char) -> bool) -> usize {
    let rest = letters.get(from..).unwrap_or_default();
    rest.iter().take_while(|c| is(**c)).count()
}

fn text(letters: &[char], from: usize, count: usize) -> String {
    letters.iter().skip(from).take(count).collect()
}

/// The unit that a word names.
fn unit_of(word: &str) -> Option<&'static str> {
    match word.to_ascii_lowercase().as_str() {
        "mm" => Some("mm"),
        "in" | "inch" | "\"" => Some("in"),
        _ => None,
    }
}

impl Wire {
    /// What a line says, as a person would type it: the number and its unit, where the
    /// line or the setting names one.
    ///
    /// # Errors
    /// Why it is no reading.
    ///
    /// # Example
    /// ```
    /// use coldseat_core::quantity::wire::{NoReading, Wire, WireUnit};
    /// let mut wire = Wire::default();
    /// assert_eq!(wire.reading("  -0.0021\r"), Ok("-0.0021".to_owned()));
    /// assert_eq!(wire.reading("01A+00012.700"), Err(NoReading::Several));
    /// (wire.number, wire.unit) = (Some(1), WireUnit::Millimetre);
    /// assert_eq!(wire.reading("01A+00012.700"), Ok("+12.700 mm".to_owned()));
    /// ```
    pub fn reading(&self, line: &str) -> Result<String, NoReading> {
        if line.chars().count() > LINE_MOST {
            return Err(NoReading::TooLong);
        }
        let parts = parts(line);
        let numbers: Vec<&String> = parts
            .iter()
            .filter_map(|part| match part {
                LinePart::Number(number) => Some(number),
                LinePart::Word(_) => None,
            })
            .collect();
        let number = match (self.number, numbers.as_slice()) {
            (None, [only]) => *only,
            (None, [_, _, ..]) => return Err(NoReading::Several),
            (None, []) => return Err(NoReading::NoNumber),
            (Some(nth), all) => all.get(usize::from(nth)).ok_or(NoReading::NoNumber)?,
        };
        let unit = match self.unit {
            WireUnit::OfField => None,
            WireUnit::Inch => Some("in"),
            WireUnit::Millimetre => Some("mm"),
            WireUnit::Word(nth) => {
                let mut words = parts.iter().filter_map(|part| match part {
                    LinePart::Word(word) => Some(word),
                    LinePart::Number(_) => None,
                });
                let word = words.nth(usize::from(nth)).ok_or(NoReading::NoUnit)?;
                Some(unit_of(word).ok_or(NoReading::NoUnit)?)
            }
        };
        Ok(match unit {
            Some(unit) => format!("{number} {unit}"),
            None => number.clone(),
        })
    }

    /// As it stands in a document.
    #[must_use]
    pub fn words(&self) -> String {
        let number = self.number.map_or("only".to_owned(), |nth| nth.to_string());
        let unit = match self.unit {
            WireUnit::OfField => "field".to_owned(),
            WireUnit::Inch => "in".to_owned(),
            WireUnit::Millimetre => "mm".to_owned(),
            WireUnit::Word(nth) => format!("word{nth}"),
        };
        format!("{} {} {number} {unit}", self.speed, self.frame.id())
    }

    /// Out of a document; `None` where it is anything else.
    #[must_use]
    pub fn from_words(words: &str) -> Option<Self> {
        let mut words = words.split(' ');
        let speed: u32 = words.next()?.parse().ok()?;
        let frame = Frame::from_id(words.next()?)?;
        let number = match words.next()? {
            "only" => None,
            nth => Some(nth.parse().ok()?),
        };
        let unit = match words.next()? {
            "field" => WireUnit::OfField,
            "in" => WireUnit::Inch,
            "mm" => WireUnit::Millimetre,
            word => WireUnit::Word(word.strip_prefix("word")?.parse().ok()?),
        };
        (SPEEDS.contains(&speed) && words.next().is_none()).then_some(Self {
            speed,
            frame,
            number,
            unit,
        })
    }
}

/// Lines out of what a wire sends, byte by byte.
#[derive(Debug, Default)]
pub struct Lines {
    begun: String,
    /// Whether the line that is begun is too long already: its rest is passed over.
    over: bool,
}

impl Lines {
    /// Takes what came; the lines that ended with it, without their ends and without
    /// empty ones. A line that is too long comes at once, cut, and is no reading.
    pub fn take(&mut self, bytes: &[u8]) -> Vec<String> {
        let mut ended = Vec::new();
        for byte in bytes {
            // Seven bits: some gauges send a parity bit as an eighth.
            match char::from(byte & 0x7f) {
                '\r' | '\n' => {
                    self.over = false;
                    let line = std::mem::take(&mut self.begun);
                    if !line.trim().is_empty() {
                        ended.push(line);
                    }
                }
                _ if self.over => {}
                letter if letter.is_ascii_control() => {}
                letter => {
                    self.begun.push(letter);
                    if self.begun.len() > LINE_MOST {
                        self.over = true;
                        ended.push(std::mem::take(&mut self.begun));
                    }
                }
            }
        }
        ended
    }

    /// What came without its end, as a wire is taken off.
    pub fn rest(&mut self) -> Option<String> {
        self.over = false;
        let rest = std::mem::take(&mut self.begun);
        (!rest.trim().is_empty()).then_some(rest)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Lines as ports of gauges send them; the forms are common practice, no source.
    #[test]
    fn the_taught_number_and_its_unit() {
        let of = |number, unit| Wire {
            number,
            unit,
            ..Wire::default()
        };
        let (field, word) = (WireUnit::OfField, WireUnit::Word);
        let says = |wire: Wire, line: &str, text: &str| {
            assert_eq!(wire.reading(line), Ok(text.to_owned()), "{line}");
        };
        says(of(None, field), "+  12,70", "+12,70");
        says(of(None, field), ".0043", ".0043");
        says(of(None, field), "0000.0043", "0.0043");
        says(of(None, field), "R1", "1");
        says(of(Some(1), word(1)), "N 3; -00.0021 in", "-0.0021 in");
        says(of(Some(0), word(0)), "12.70mm", "12.70 mm");
        says(of(Some(0), word(0)), "0.4375\"", "0.4375 in");
        says(of(Some(2), field), "12:41 0.2091", "0.2091");
        let no = |wire: Wire, line: &str, why| assert_eq!(wire.reading(line), Err(why), "{line}");
        no(of(None, field), "ERR", NoReading::NoNumber);
        no(of(None, field), "1 2", NoReading::Several);
        no(of(Some(2), field), "1 2", NoReading::NoNumber);
        no(of(Some(0), word(0)), "0.4375", NoReading::NoUnit);
        no(of(Some(0), word(0)), "0.4375 psi", NoReading::NoUnit);
        no(
            of(None, field),
            &"1".repeat(LINE_MOST + 1),
            NoReading::TooLong,
        );
    }

    #[test]
    fn lines_end_as_they_may_and_none_is_joined_to_another() {
        let mut lines = Lines::default();
        assert_eq!(lines.take(b"0.00"), Vec::<String>::new());
        assert_eq!(lines.take(b"21\r\n0.0022\n\n\r0.00"), ["0.0021", "0.0022"]);
        assert_eq!(lines.rest().as_deref(), Some("0.00"));
        assert_eq!(lines.rest(), None);
        // An eighth bit of parity.
        assert_eq!(lines.take(&[0xb1, b'.', 0xb2, b'\r']), ["1.2"]);
        // Never an end: said once, then passed over to the next.
        let long = lines.take(&[b'7'; 500]);
        assert_eq!(long.len(), 1);
        assert_eq!(Wire::default().reading(&long[0]), Err(NoReading::TooLong));
        assert_eq!(lines.take(b"7\n0.0023\n"), ["0.0023"]);
    }

    proptest! {
        #[test]
        fn what_is_set_comes_back(
            speed in 0_usize..8, frame in 0_usize..3, number in proptest::option::of(0_u8..),
            unit in 0_u8..4, word in 0_u8..,
        ) {
            let unit = [
                WireUnit::OfField, WireUnit::Inch, WireUnit::Millimetre, WireUnit::Word(word),
            ][usize::from(unit)];
            let wire = Wire { speed: SPEEDS[speed], frame: Frame::ALL[frame], number, unit };
            prop_assert_eq!(Wire::from_words(&wire.words()), Some(wire));
        }

        #[test]
        fn any_bytes_make_lines_that_say_something_or_say_why(
            bytes in proptest::collection::vec(any::<u8>(), 0..600), number in 0_u8..4,
        ) {
            let mut lines = Lines::default();
            for line in lines.take(&bytes) {
                for number in [None, Some(number)] {
                    let wire = Wire { number, unit: WireUnit::Word(0), ..Wire::default() };
                    let _ = wire.reading(&line);
                }
            }
        }
    }
}
