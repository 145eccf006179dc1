//! The words of the language that is shown: loaded beside the program, found by
//! their place. What they are called and which slots they have is made at build
//! time out of `languages/` (`build.rs`, `src/words`); code knows names, not words.

mod decimal;
pub use decimal::{
    Decimal, choose as choose_decimal, here as decimal, mark, marked, marked_where_counted,
};

use crate::browser;
use coldseat_words::{fill, plural_case};
use leptos::prelude::document;
use std::cell::{Cell, RefCell};
use std::fmt::{self, Display};
use std::ops::Deref;

/// What is made of the files of all languages.
#[allow(
    unreachable_pub,
    dead_code,
    clippy::doc_markdown,
    clippy::must_use_candidate,
    reason = "made, and documented by its English"
)]
pub mod made {
    use super::{Word, say};
    include!(concat!(env!("OUT_DIR"), "/words.rs"));
}
use made::{DIGEST, MESSAGES};

/// Where this device keeps the language it chose; `boot.js` reads it.
const CHOSEN: &str = "coldseat/language";

/// A language of the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Language {
    /// American English.
    English,
    /// Spanish as in shops of the US and Mexico.
    Spanish,
}

impl Language {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// Its tag (BCP 47), which is its folder's name too.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en-US",
            Self::Spanish => "es-US",
        }
    }

    /// A language by its tag.
    #[must_use]
    pub fn from_tag(tag: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|language| language.tag() == tag)
    }

    /// Its name in itself: whoever looks for it reads it.
    #[must_use]
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Espa\u{f1}ol",
        }
    }
}

type Lines = &'static [&'static str];

thread_local! {
    /// What is shown, and its words.
    static SHOWN: Cell<(Language, Lines)> = const { Cell::new((Language::English, &[])) };
    /// The language of this device.
    static HOME: Cell<Language> = const { Cell::new(Language::English) };
    /// Every language that was loaded, with each mark it was shown with.
    static LOADED: RefCell<Vec<(Language, Decimal, Lines)>> = const { RefCell::new(Vec::new()) };
}

/// Words without slots.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Word(u16);

impl Word {
    /// By its place among all messages.
    pub(crate) const fn at(place: u16) -> Self {
        Self(place)
    }

    /// As it is said in the language shown.
    #[must_use]
    pub fn get(self) -> &'static str {
        line(self.0)
    }
}

impl Deref for Word {
    type Target = str;

    fn deref(&self) -> &str {
        self.get()
    }
}

impl Display for Word {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.get())
    }
}

impl From<Word> for String {
    fn from(word: Word) -> Self {
        word.get().to_owned()
    }
}

fn line(place: u16) -> &'static str {
    let (_, lines) = SHOWN.get();
    lines.get(usize::from(place)).copied().unwrap_or_default()
}

/// A message with its slots filled, in the order of their names.
#[inline(never)]
pub(crate) fn say(place: u16, slots: &[&dyn Display], count: usize) -> String {
    fill(line(place), slots, plural_case(shown().tag(), count))
}

/// The language that is shown.
#[must_use]
pub fn shown() -> Language {
    SHOWN.get().0
}

/// The language that `boot.js` found: what this device chose, else the first of the
/// browser's own that the page has, else English.
fn found() -> Language {
    let tag = document()
        .document_element()
        .and_then(|root| root.get_attribute("lang"));
    tag.and_then(|tag| Language::from_tag(&tag))
        .unwrap_or(Language::English)
}

/// Takes the words that `boot.js` put into the page.
///
/// # Errors
/// They are not there, or of another version than the program.
pub fn start() -> Result<(), &'static str> {
    let language = found();
    let text = document()
        .get_element_by_id(&element(language))
        .and_then(|inside| inside.text_content())
        .ok_or("the page's words are missing")?;
    take(language, text)?;
    HOME.set(language);
    decimal::start();
    show(language);
    Ok(())
}

fn element(language: Language) -> String {
    format!("words-{}", language.tag())
}

/// Whether the words of a language are here.
#[must_use]
pub fn is_here(language: Language) -> bool {
    lines_of(language, Decimal::Point).is_some()
}

/// Loads a language; whether it is there now.
pub async fn load(language: Language) -> bool {
    if is_here(language) {
        return true;
    }
    let address = format!("./words/{}.{DIGEST}.txt", language.tag());
    match browser::beside(&element(language), &address).await {
        Some(text) => take(language, text).is_ok(),
        None => false,
    }
}

fn lines_of(language: Language, decimal: Decimal) -> Option<Lines> {
    LOADED.with_borrow(|loaded| {
        let mut all = loaded.iter();
        let found = all.find(|(tongue, mark, _)| (*tongue, *mark) == (language, decimal));
        found.map(|(.., lines)| *lines)
    })
}

fn keep(language: Language, decimal: Decimal, lines: Vec<&'static str>) -> Lines {
    // Kept for as long as the page lives: each is made once.
    let lines: Lines = lines.leak();
    LOADED.with_borrow_mut(|loaded| loaded.push((language, decimal, lines)));
    lines
}

fn take(language: Language, text: String) -> Result<(), &'static str> {
    const OTHER: &str = "the page's words are of another version than its program";
    let text: &'static str = text.leak();
    let mut lines = text.trim_start().lines();
    if lines.next() != Some(DIGEST) {
        return Err(OTHER);
    }
    let lines: Vec<&'static str> = lines.collect();
    if lines.len() != MESSAGES {
        return Err(OTHER);
    }
    keep(language, Decimal::Point, lines);
    Ok(())
}

/// Shows a language that is loaded, its numbers with this device's mark.
pub fn show(language: Language) {
    if let Some(root) = document().document_element() {
        let _ = root.set_attribute("lang", language.tag());
    }
    take_lines(language);
}

fn take_lines(language: Language) {
    let decimal = decimal::here();
    let lines = lines_of(language, decimal).or_else(|| {
        let plain = lines_of(language, Decimal::Point)?;
        let marked = plain
            .iter()
            .map(|line| -> &'static str { marked((*line).to_owned()).leak() })
            .collect();
        Some(keep(language, decimal, marked))
    });
    if let Some(lines) = lines {
        SHOWN.set((language, lines));
    }
}

/// Keeps a language that is loaded for this device.
pub fn choose(language: Language) {
    browser::set_local_text(CHOSEN, language.tag());
    HOME.set(language);
}

/// The language of this device, whatever is shown for now.
#[must_use]
pub fn home() -> Language {
    HOME.get()
}

/// Shows a language as it stands in its files, without a browser.
///
/// # Panics
/// They cannot be read.
#[cfg(test)]
#[allow(clippy::panic, reason = "a test's slip should stop it there")]
pub fn show_for_test(language: Language) {
    let languages = match coldseat_words::all(std::path::Path::new("languages")) {
        Ok(languages) => languages,
        Err(wrong) => panic!("{wrong:?}"),
    };
    for read in languages {
        if let Some(known) = Language::from_tag(&read.name) {
            let taken = take(known, coldseat_words::pack(&read, DIGEST));
            assert_eq!(taken, Ok(()), "{}", read.name);
        }
    }
    take_lines(language);
}
