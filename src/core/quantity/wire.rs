//! A gauge on a wire: what it sends line by line, and which part of a line is the
//! reading. No maker's protocol: a line of plain text, as a person sees it, of which
//! one number is taught to be the reading. A line that looks otherwise than the one it
//! was taught on is no reading: a word more may say that the gauge is out of range.

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

/// The unit of what a gauge on a wire sends where the line names none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WireUnit {
    /// That of the field the reading goes to.
    OfField,
    /// Inches, whatever the job's.
    Inch,
    /// Millimetres, whatever the job's.
    Millimetre,
}

impl WireUnit {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::OfField, Self::Inch, Self::Millimetre];

    /// Its short name, in documents for ever.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::OfField => "field",
            Self::Inch => "in",
            Self::Millimetre => "mm",
        }
    }

    /// By its short name.
    #[must_use]
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|unit| unit.id() == id)
    }
}

/// What is set of a gauge on a wire.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Wire {
    /// Bits a second, one of [`SPEEDS`].
    pub speed: u32,
    /// Bits of a letter.
    pub frame: Frame,
    /// Which number of a line is the reading; not taught, a line is its number and at
    /// most its unit.
    pub taught: Option<Taught>,
    /// Its unit, where the line names none.
    pub unit: WireUnit,
}

/// Which number of a line is the reading.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Taught {
    /// Which number, counted from 0.
    pub number: u8,
    /// The parts of the line it was taught on: any number, either unit, the same words.
    pub shape: String,
}

impl Default for Wire {
    fn default() -> Self {
        Self {
            speed: 9600,
            frame: Frame::EightNoneOne,
            taught: None,
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
    /// A sign of another kind, or one that belongs to no number.
    Other(char),
}

impl LinePart {
    /// What of it every line has that looks the same.
    fn shape(&self) -> String {
        match self {
            Self::Number(_) => "N".to_owned(),
            Self::Word(word) if unit_of(word).is_some() => "U".to_owned(),
            Self::Word(word) => format!("w{word}"),
            Self::Other(sign) => format!("o{:x}", u32::from(*sign)),
        }
    }
}

fn shape(parts: &[LinePart]) -> String {
    let all: Vec<String> = parts.iter().map(LinePart::shape).collect();
    all.join(",")
}

/// Why a line is no reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoReading {
    /// Longer than a line of a gauge is.
    TooLong,
    /// There is no number where it was taught to be.
    NoNumber,
    /// It is more than a number and its unit, and nobody has said which is the reading.
    Untaught,
    /// It looks otherwise than the line that was taught.
    Otherwise,
    /// It names a unit beside the one that is set, or two.
    TwoUnits,
}

/// The parts of a line, from left to right; blanks part them.
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
            if !is_blank(letter) {
                found.push(LinePart::Other(letter));
            }
            at += 1;
        }
    }
    found
}

const fn is_blank(letter: char) -> bool {
    matches!(letter, ' ' | '\t')
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
        at += count(letters, at, is_blank);
    }
    let whole = count(letters, at, |c| c.is_ascii_digit());
    let mut digits: String = text(letters, at, whole);
    at += whole;
    let point = letters.get(at).copied().filter(|c| matches!(c, '.' | ','));
    let rest = count(letters, at + 1, |c| c.is_ascii_digit());
    // A comma before a number that has a point of its own parts the two.
    let parts_two = point == Some(',') && letters.get(at + 1 + rest) == Some(&'.');
    let point = point.filter(|_| !parts_two);
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
    /// Teaches that this number of a line is the reading, counted from 0.
    pub fn teach(&mut self, line: &str, number: u8) {
        let shape = shape(&parts(line));
        self.taught = Some(Taught { number, shape });
    }

    /// What a line says, as a person would type it: the number and its unit, where the
    /// line or the setting names one.
    ///
    /// # Errors
    /// Why it is no reading.
    ///
    /// # Example
    /// ```
    /// use coldseat_core::quantity::wire::{NoReading, Wire};
    /// let mut wire = Wire::default();
    /// assert_eq!(wire.reading("  -0.0021 in"), Ok("-0.0021 in".to_owned()));
    /// assert_eq!(wire.reading("01A+00012.700"), Err(NoReading::Untaught));
    /// wire.teach("01A+00012.700", 1);
    /// assert_eq!(wire.reading("02A-00012.650"), Ok("-12.650".to_owned()));
    /// assert_eq!(wire.reading("02E-00012.650"), Err(NoReading::Otherwise));
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
                LinePart::Word(_) | LinePart::Other(_) => None,
            })
            .collect();
        let looks = shape(&parts);
        let nth = match &self.taught {
            None if numbers.is_empty() => return Err(NoReading::NoNumber),
            None if looks == "N" || looks == "N,U" => 0,
            None => return Err(NoReading::Untaught),
            Some(taught) if taught.shape != looks => return Err(NoReading::Otherwise),
            Some(taught) => usize::from(taught.number),
        };
        let number = numbers.get(nth).ok_or(NoReading::NoNumber)?;
        let mut named = parts.iter().filter_map(|part| match part {
            LinePart::Word(word) => unit_of(word),
            LinePart::Number(_) | LinePart::Other(_) => None,
        });
        let set = match self.unit {
            WireUnit::OfField => None,
            WireUnit::Inch => Some("in"),
            WireUnit::Millimetre => Some("mm"),
        };
        let unit = match (named.next(), set) {
            (Some(named), Some(set)) if named != set => return Err(NoReading::TwoUnits),
            (Some(named), _) => Some(named),
            (None, set) => set,
        };
        if named.any(|other| Some(other) != unit) {
            return Err(NoReading::TwoUnits);
        }
        Ok(match unit {
            Some(unit) => format!("{number} {unit}"),
            None => (*number).clone(),
        })
    }

    /// As it stands in a document.
    #[must_use]
    pub fn words(&self) -> String {
        let taught = self.taught.as_ref().map_or(String::new(), |taught| {
            format!(" {} {}", taught.number, taught.shape)
        });
        let (speed, frame, unit) = (self.speed, self.frame.id(), self.unit.id());
        format!("{speed} {frame} {unit}{taught}")
    }

    /// Out of a document; `None` where it is anything else.
    #[must_use]
    pub fn from_words(words: &str) -> Option<Self> {
        let mut words = words.split(' ');
        let speed: u32 = words.next()?.parse().ok()?;
        let frame = Frame::from_id(words.next()?)?;
        let unit = WireUnit::from_id(words.next()?)?;
        let taught = match words.next() {
            None => None,
            Some(number) => Some(Taught {
                number: number.parse().ok()?,
                shape: words.next()?.to_owned(),
            }),
        };
        (SPEEDS.contains(&speed) && words.next().is_none()).then_some(Self {
            speed,
            frame,
            taught,
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
            match char::from(*byte) {
                '\r' | '\n' => {
                    self.over = false;
                    let line = std::mem::take(&mut self.begun);
                    if !line.trim().is_empty() {
                        ended.push(line);
                    }
                }
                _ if self.over => {}
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
