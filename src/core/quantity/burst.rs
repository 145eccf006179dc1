//! Keys that come faster than a hand types: a gauge that speaks as a keyboard.
//!
//! Gauges with a cable or a radio adapter that is a keyboard to the device (USB HID)
//! send a reading as keys, some 1 to 20 ms apart, and end it with Enter or Tab. A
//! [`Burst`] gathers them by their times; whoever holds it has the clock. What the
//! text means is not asked here: [`pieces`] only takes apart what came in one go.

/// Keys farther apart are a hand's, ms: a fast typist's are some 80 ms apart (from
/// memory), an adapter's at most 20.
pub const GAP_MS: f64 = 50.0;
/// Where a gauge is known to be in use its first keys may be so far apart, ms, and
/// those that follow up to [`CUT_MS`]: a radio adapter stutters.
pub const STUTTER_MS: f64 = 80.0;
/// The same reading once more within this time of its end came twice, ms: no hand
/// measures two places as fast.
pub const TWICE_MS: f64 = 250.0;
/// A burst without an end is cut off after so long, ms.
pub const CUT_MS: f64 = 400.0;
/// So many keys in a row without a pause are no hand's (two fingers may roll).
const HAND_MOST: usize = 4;
/// Longer texts are counted on, not kept.
const KEPT_MOST: usize = 80;

/// What a key did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Heard {
    /// It is the first of its kind; what was cut off before it, if anything was.
    Begins(Option<String>),
    /// It goes on with the burst.
    GoesOn,
    /// It ends a burst of this text.
    Ends(String),
    /// It ends a burst that is the one before once more.
    Twice(String),
    /// It ends no burst: a key of the hand's; what was cut off before it, if anything
    /// was.
    Alone(Option<String>),
}

/// Keys gathered so far.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Burst {
    text: String,
    keys: usize,
    first_ms: f64,
    last_ms: f64,
    before: Option<(String, f64)>,
    patient: bool,
}

impl Burst {
    /// Whether a gauge is known to be in use, whose adapter may stutter.
    pub const fn set_patient(&mut self, patient: bool) {
        self.patient = patient;
    }

    /// Whether keys wait for their end.
    #[must_use]
    pub fn waits(&self) -> bool {
        self.keys > 0
    }

    /// Whether so many keys came without a hand's pause that no hand typed them.
    #[must_use]
    pub const fn is_fast(&self) -> bool {
        self.keys >= HAND_MOST
    }

    /// Time of the last key, ms.
    #[must_use]
    pub const fn last_ms(&self) -> f64 {
        self.last_ms
    }

    /// How many keys wait.
    #[must_use]
    pub const fn count(&self) -> usize {
        self.keys
    }

    /// Whether a key at this time goes on with what waits.
    #[must_use]
    pub fn goes_on(&self, at_ms: f64) -> bool {
        let gap_ms = at_ms - self.last_ms;
        let most_ms = match (self.patient, self.is_fast()) {
            (false, _) => GAP_MS,
            (true, false) => STUTTER_MS,
            (true, true) => CUT_MS,
        };
        self.keys > 0 && (0.0..=most_ms).contains(&gap_ms)
    }

    /// A key with a letter, at a time of a steady clock in ms.
    pub fn letter(&mut self, letter: char, at_ms: f64) -> Heard {
        let heard = if self.goes_on(at_ms) {
            Heard::GoesOn
        } else {
            let cut = self.cut();
            self.first_ms = at_ms;
            Heard::Begins(cut)
        };
        if self.text.chars().count() < KEPT_MOST {
            self.text.push(letter);
        }
        self.keys += 1;
        self.last_ms = at_ms;
        heard
    }

    /// Enter or Tab.
    ///
    /// # Example
    /// ```
    /// use coldseat_core::quantity::burst::{Burst, Heard};
    /// let mut burst = Burst::default();
    /// for (letter, at_ms) in [('.', 0.0), ('5', 1.0), ('2', 2.0)] {
    ///     burst.letter(letter, at_ms);
    /// }
    /// assert_eq!(burst.end(3.0), Heard::Ends(".52".to_owned()));
    /// // The adapter sends it once more.
    /// for (letter, at_ms) in [('.', 40.0), ('5', 41.0), ('2', 42.0)] {
    ///     burst.letter(letter, at_ms);
    /// }
    /// assert_eq!(burst.end(43.0), Heard::Twice(".52".to_owned()));
    /// ```
    pub fn end(&mut self, at_ms: f64) -> Heard {
        let follows = self.goes_on(at_ms);
        let Some(text) = self.cut() else {
            return Heard::Alone(None);
        };
        if !follows {
            return Heard::Alone(Some(text));
        }
        let twice = self.before.as_ref().is_some_and(|(before, ended_ms)| {
            *before == text && (0.0..=TWICE_MS).contains(&(self.first_ms - ended_ms))
        });
        // The third of three is compared with the second.
        self.before = Some((text.clone(), at_ms));
        if twice {
            Heard::Twice(text)
        } else {
            Heard::Ends(text)
        }
    }

    /// Takes what waits without its end; nothing waits any more.
    pub fn cut(&mut self) -> Option<String> {
        self.keys = 0;
        Some(std::mem::take(&mut self.text)).filter(|text| !text.is_empty())
    }
}

/// The readings in a text that came in one go: one, unless several numbers stand in
/// it, each with a point or a unit of its own and blanks or marks between them. A
/// fraction is one (`4 17/64`), and what does not come apart cleanly is one, to be
/// judged whole.
///
/// # Example
/// ```
/// use coldseat_core::quantity::burst::pieces;
/// assert_eq!(pieces(" 12.70 mm "), ["12.70 mm"]);
/// assert_eq!(pieces("4 17/64"), ["4 17/64"]);
/// assert_eq!(pieces("0.1234 -0.0021"), ["0.1234", "-0.0021"]);
/// assert_eq!(pieces("12.70 mm; 12.71 mm"), ["12.70 mm", "12.71 mm"]);
/// ```
#[must_use]
pub fn pieces(text: &str) -> Vec<&str> {
    let whole = text.trim();
    let mut found: Vec<&str> = Vec::new();
    let mut begin = None;
    let mut has_mark = false;
    let mut before = ' ';
    for (at, c) in whole.char_indices() {
        let between = before.is_whitespace() || matches!(before, ';' | '\u{a0}');
        let starts = c.is_ascii_digit() || matches!(c, '+' | '-' | '\u{2212}' | '.');
        // A sign stands off its digits: "- .0021".
        let signed_only = begin.is_some_and(|begin: usize| {
            whole
                .get(begin..at)
                .is_some_and(|so_far| !so_far.contains(|c: char| c.is_ascii_digit()))
        });
        match begin {
            None if starts => begin = Some(at),
            None => return vec![whole],
            Some(from) if between && starts && !signed_only => {
                if !has_mark {
                    return vec![whole];
                }
                found.extend(whole.get(from..at));
                begin = Some(at);
                has_mark = false;
            }
            Some(_) => {}
        }
        has_mark |= matches!(c, '.' | ',');
        if c == '/' {
            return vec![whole];
        }
        before = c;
    }
    if found.is_empty() || !has_mark {
        return vec![whole];
    }
    found.extend(begin.and_then(|from| whole.get(from..)));
    let trimmed = |piece: &str| {
        let end = piece.trim_end_matches(|c: char| c.is_whitespace() || c == ';');
        end.len()
    };
    found
        .into_iter()
        .filter_map(|piece| piece.get(..trimmed(piece)))
        .collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn send(burst: &mut Burst, text: &str, from_ms: f64, gap_ms: f64) -> f64 {
        let mut at_ms = from_ms;
        for letter in text.chars() {
            burst.letter(letter, at_ms);
            at_ms += gap_ms;
        }
        at_ms
    }

    #[test]
    fn a_hand_is_no_gauge() {
        let mut burst = Burst::default();
        assert_eq!(burst.letter('4', 0.0), Heard::Begins(None));
        assert_eq!(burst.letter('2', 90.0), Heard::Begins(Some("4".into())));
        assert_eq!(burst.end(180.0), Heard::Alone(Some("2".into())));
        assert_eq!(burst.end(181.0), Heard::Alone(None));
    }

    #[test]
    fn half_a_burst_is_told_at_the_next_key() {
        let mut burst = Burst::default();
        send(&mut burst, "0.12", 0.0, 5.0);
        assert!(burst.is_fast() && burst.waits());
        assert_eq!(
            burst.letter('0', 2000.0),
            Heard::Begins(Some("0.12".into()))
        );
        let end = send(&mut burst, ".1234", 2005.0, 5.0);
        assert_eq!(burst.end(end), Heard::Ends("0.1234".into()));
        send(&mut burst, "0.12", 4000.0, 5.0);
        assert_eq!(burst.end(6000.0), Heard::Alone(Some("0.12".into())));
    }

    #[test]
    fn a_known_gauge_may_stutter() {
        let mut burst = Burst::default();
        burst.set_patient(true);
        send(&mut burst, "0.12", 0.0, 70.0);
        let end = send(&mut burst, "34", 500.0, 5.0);
        assert_eq!(burst.end(end), Heard::Ends("0.1234".into()));
        // Not beyond what is called cut off.
        send(&mut burst, "0.56", 2000.0, 5.0);
        let heard = burst.letter('7', 2500.0);
        assert_eq!(heard, Heard::Begins(Some("0.56".into())));
    }

    #[test]
    fn the_same_reading_of_another_place_is_another_reading() {
        let mut burst = Burst::default();
        let end = send(&mut burst, "0.5", 0.0, 1.0);
        assert_eq!(burst.end(end), Heard::Ends("0.5".into()));
        // 700 ms later a hand has put the gauge on the next place.
        let end = send(&mut burst, "0.5", 700.0, 1.0);
        assert_eq!(burst.end(end), Heard::Ends("0.5".into()));
    }

    #[test]
    fn what_came_in_one_go_comes_apart() {
        for (text, one_by_one) in [
            ("0.1234", vec!["0.1234"]),
            ("- .0021", vec!["- .0021"]),
            ("+0.1234 +0.1236", vec!["+0.1234", "+0.1236"]),
            ("0,1234  0,1236", vec!["0,1234", "0,1236"]),
            (
                "12.70mm 12.71mm 12.72mm",
                vec!["12.70mm", "12.71mm", "12.72mm"],
            ),
            // A date, a part's number, a row of whole numbers: judged whole.
            ("4 17", vec!["4 17"]),
            ("AB 12.5 13.5", vec!["AB 12.5 13.5"]),
            ("0.12340.1234", vec!["0.12340.1234"]),
            ("", vec![""]),
        ] {
            assert_eq!(pieces(text), one_by_one, "{text}");
        }
    }

    proptest! {
        #[test]
        fn whatever_comes_no_letter_is_lost_or_doubled(
            keys in proptest::collection::vec((any::<bool>(), 0.0..200.0_f64, proptest::char::range('0', '9')), 0..60)
        ) {
            let mut burst = Burst::default();
            let (mut sent, mut heard) = (String::new(), String::new());
            let mut at_ms = 0.0;
            for (is_end, gap_ms, letter) in keys {
                at_ms += gap_ms;
                if is_end {
                    match burst.end(at_ms) {
                        Heard::Ends(text) | Heard::Twice(text) | Heard::Alone(Some(text)) => heard += &text,
                        Heard::Alone(None) => {}
                        other => prop_assert!(false, "{other:?}"),
                    }
                } else {
                    sent.push(letter);
                    if let Heard::Begins(Some(cut)) = burst.letter(letter, at_ms) {
                        heard += &cut;
                    }
                }
            }
            heard += &burst.cut().unwrap_or_default();
            prop_assert_eq!(heard, sent);
        }

        #[test]
        fn pieces_hold_every_letter_but_what_stands_between(text in "[-+0-9., m;/]{0,40}") {
            let bare = |text: &str| {
                text.chars().filter(|c| !c.is_whitespace() && *c != ';').collect::<String>()
            };
            let whole: String = pieces(&text).iter().map(|piece| bare(piece)).collect();
            let wanted = bare(&text);
            prop_assert_eq!(whole, wanted);
        }
    }
}
