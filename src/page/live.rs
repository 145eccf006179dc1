//! Closures that follow signals, brought to one type each. Leptos compiles its
//! machinery anew for every closure type it meets; boxed, it meets three, and
//! the program is a good deal smaller.
//!
//! Whoever reads a memo and another one that is worked out from it reads the first
//! one first. The other way round (leptos 0.8.23, reactive_graph 0.2.16) a change of
//! the first that leaves the second as it is never arrives: asking the second
//! brings the first up to date, which then tells all but the one that asks. A heading
//! named the cylinder before for a week.

use crate::tag::Tag;
use crate::words::Word;
use leptos::prelude::*;

/// What a live part may show.
pub trait Shown {
    /// As a view.
    fn shown(self) -> AnyView;
}

impl Shown for AnyView {
    fn shown(self) -> AnyView {
        self
    }
}

impl Shown for Tag {
    fn shown(self) -> AnyView {
        self.into_any()
    }
}

impl<T: Shown> Shown for Option<T> {
    fn shown(self) -> AnyView {
        self.map_or_else(|| ().into_any(), Shown::shown)
    }
}

impl Shown for Word {
    fn shown(self) -> AnyView {
        self.get().into_any()
    }
}

impl Shown for String {
    fn shown(self) -> AnyView {
        self.into_any()
    }
}

impl Shown for &'static str {
    fn shown(self) -> AnyView {
        self.into_any()
    }
}

/// A part of a view that follows signals.
pub fn live<T: Shown>(mut part: impl FnMut() -> T + Send + 'static) -> AnyView {
    let boxed: Box<dyn FnMut() -> AnyView + Send> = Box::new(move || part().shown());
    boxed.into_any()
}

/// The value of an attribute, a class or a property that follows signals.
pub type Words = Box<dyn FnMut() -> String + Send>;

/// A text that follows signals, for attributes.
pub fn words<T: Into<String>>(mut text: impl FnMut() -> T + Send + 'static) -> Words {
    Box::new(move || text().into())
}

/// An attribute that comes and goes with signals.
pub type Maybe = Box<dyn FnMut() -> Option<String> + Send>;

/// A text that is there or not, for attributes.
pub fn maybe<T: Into<String>>(mut text: impl FnMut() -> Option<T> + Send + 'static) -> Maybe {
    Box::new(move || text().map(Into::into))
}
