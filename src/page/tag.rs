//! A tag with its attributes, handlers and children: what `view!` makes.
//!
//! All tags are of one type, all attributes that follow signals of another, so
//! Leptos' machinery is compiled once for each and not once for each place; the
//! calls here are kept out of line, for there are a thousand places.

use crate::live::{Shown, live};
use crate::words::Word;
use leptos::attr::any_attribute::{AnyAttribute, IntoAnyAttribute};
use leptos::attr::custom::custom_attribute;
use leptos::ev::{Custom, on};
use leptos::prelude::*;
use leptos::tachys::html::property::prop;
use leptos::tachys::view::iterators::StaticVec;
use leptos::{html, svg};
use wasm_bindgen::{JsCast, JsValue};

/// A tag in the making.
pub struct Tag(Box<Parts>);

struct Parts {
    name: Name,
    attributes: Vec<AnyAttribute>,
    children: Vec<AnyView>,
}

enum Name {
    /// No tag: what stands side by side.
    Several,
    /// A tag of the page.
    Page(&'static str),
    /// A tag of a drawing.
    Drawn(&'static str),
}

/// A handler.
pub type Hand = Box<dyn FnMut(web_sys::Event)>;
/// A text that follows signals, or nothing.
type Follows = Box<dyn FnMut() -> Option<String> + Send>;
/// A property that follows signals.
type Property = Box<dyn FnMut() -> JsValue + Send>;

/// A closure as a handler of an event.
pub fn hand<E: JsCast + 'static>(mut act: impl FnMut(E) + 'static) -> Hand {
    Box::new(move |event| act(event.unchecked_into()))
}

impl Tag {
    #[inline(never)]
    fn named(name: Name) -> Self {
        Self(Box::new(Parts {
            name,
            attributes: Vec::new(),
            children: Vec::new(),
        }))
    }

    /// A tag of the page, its name in capitals.
    #[inline(never)]
    pub fn new(name: &'static str) -> Self {
        Self::named(Name::Page(name))
    }

    /// A tag of a drawing.
    #[inline(never)]
    pub fn drawn(name: &'static str) -> Self {
        Self::named(Name::Drawn(name))
    }

    /// What stands side by side, without a tag round it.
    #[inline(never)]
    pub fn several() -> Self {
        Self::named(Name::Several)
    }

    /// Sets an attribute.
    pub fn set(self, name: &'static str, value: impl Value) -> Self {
        Value::put(value, self, name)
    }

    /// Sets a property.
    pub fn prop(self, name: &'static str, value: impl PropertyValue) -> Self {
        self.property(name, value.follow())
    }

    /// Adds a handler.
    #[inline(never)]
    pub fn on(self, name: &'static str, hand: Hand) -> Self {
        self.attribute(on(Custom::<web_sys::Event>::new(name), hand).into_any_attr())
    }

    /// Adds a child.
    pub fn child(self, child: impl Child) -> Self {
        Child::put(child, self)
    }

    #[inline(never)]
    fn property(self, name: &'static str, value: Property) -> Self {
        self.attribute(prop(name, value).into_any_attr())
    }

    #[inline(never)]
    fn attribute(mut self, attribute: AnyAttribute) -> Self {
        self.0.attributes.push(attribute);
        self
    }

    #[inline(never)]
    fn view(mut self, view: AnyView) -> Self {
        self.0.children.push(view);
        self
    }

    /// As a view.
    #[inline(never)]
    pub fn into_any(self) -> AnyView {
        let Parts {
            name,
            attributes,
            mut children,
        } = *self.0;
        let inside = match children.len() {
            0 => None,
            1 => children.pop(),
            _ => Some(StaticVec::from(children).into_any()),
        };
        // The tags of a drawing are told apart by Leptos' own types.
        macro_rules! drawn {
            ($tag:expr) => {
                $tag.child(inside).add_any_attr(attributes).into_any()
            };
        }
        match name {
            Name::Several => inside.into_any(),
            Name::Page(name) => match inside {
                Some(inside) => html::custom(name)
                    .child(inside)
                    .add_any_attr(attributes)
                    .into_any(),
                None => html::custom(name).add_any_attr(attributes).into_any(),
            },
            Name::Drawn("circle") => svg::circle().add_any_attr(attributes).into_any(),
            Name::Drawn("path") => svg::path().add_any_attr(attributes).into_any(),
            Name::Drawn("defs") => drawn!(svg::defs()),
            Name::Drawn("pattern") => drawn!(svg::pattern()),
            Name::Drawn("text") => drawn!(svg::text()),
            Name::Drawn(_) => drawn!(svg::svg()),
        }
    }
}

/// What an attribute may be given.
pub trait Value {
    /// Puts it into a tag.
    fn put(self, tag: Tag, name: &'static str) -> Tag;
}

impl Value for &'static str {
    #[inline(never)]
    fn put(self, tag: Tag, name: &'static str) -> Tag {
        tag.attribute(custom_attribute(name, self).into_any_attr())
    }
}

impl Value for Word {
    fn put(self, tag: Tag, name: &'static str) -> Tag {
        Value::put(self.get(), tag, name)
    }
}

impl Value for String {
    #[inline(never)]
    fn put(self, tag: Tag, name: &'static str) -> Tag {
        tag.attribute(custom_attribute(name, self).into_any_attr())
    }
}

impl Value for bool {
    fn put(self, tag: Tag, name: &'static str) -> Tag {
        if self { Value::put("", tag, name) } else { tag }
    }
}

impl<V: Value> Value for Option<V> {
    fn put(self, tag: Tag, name: &'static str) -> Tag {
        match self {
            Some(value) => Value::put(value, tag, name),
            None => tag,
        }
    }
}

impl<F, T> Value for F
where
    F: FnMut() -> T + Send + 'static,
    T: Said,
{
    fn put(mut self, tag: Tag, name: &'static str) -> Tag {
        follow(tag, name, Box::new(move || self().said()))
    }
}

#[inline(never)]
fn follow(tag: Tag, name: &'static str, value: Follows) -> Tag {
    tag.attribute(custom_attribute(name, value).into_any_attr())
}

/// What a closure may say an attribute is.
pub trait Said {
    /// Its text; `None`: the attribute is not there.
    fn said(self) -> Option<String>;
}

impl Said for &'static str {
    fn said(self) -> Option<String> {
        Some(self.to_owned())
    }
}

impl Said for Word {
    fn said(self) -> Option<String> {
        Some(self.into())
    }
}

impl Said for String {
    fn said(self) -> Option<String> {
        Some(self)
    }
}

impl Said for bool {
    fn said(self) -> Option<String> {
        self.then(String::new)
    }
}

impl<T: Said> Said for Option<T> {
    fn said(self) -> Option<String> {
        self.and_then(Said::said)
    }
}

/// What a property may be given.
pub trait PropertyValue {
    /// As a closure.
    fn follow(self) -> Property;
}

impl PropertyValue for bool {
    fn follow(self) -> Property {
        Box::new(move || self.into())
    }
}

impl PropertyValue for String {
    fn follow(self) -> Property {
        Box::new(move || self.as_str().into())
    }
}

impl<F, T> PropertyValue for F
where
    F: FnMut() -> T + Send + 'static,
    T: Into<JsValue>,
{
    fn follow(mut self) -> Property {
        Box::new(move || self().into())
    }
}

/// What may stand between tags.
pub trait Child {
    /// Puts it into a tag.
    fn put(self, tag: Tag) -> Tag;
}

impl Child for AnyView {
    fn put(self, tag: Tag) -> Tag {
        tag.view(self)
    }
}

impl Child for Tag {
    #[inline(never)]
    fn put(self, tag: Tag) -> Tag {
        tag.view(self.into_any())
    }
}

impl Child for &'static str {
    #[inline(never)]
    fn put(self, tag: Tag) -> Tag {
        tag.view(self.into_any())
    }
}

impl Child for Word {
    fn put(self, tag: Tag) -> Tag {
        Child::put(self.get(), tag)
    }
}

impl Child for String {
    #[inline(never)]
    fn put(self, tag: Tag) -> Tag {
        tag.view(self.into_any())
    }
}

impl Child for u8 {
    fn put(self, tag: Tag) -> Tag {
        Child::put(self.to_string(), tag)
    }
}

impl Child for Vec<AnyView> {
    #[inline(never)]
    fn put(self, tag: Tag) -> Tag {
        tag.view(self.into_any())
    }
}

impl<C: Child> Child for Option<C> {
    fn put(self, tag: Tag) -> Tag {
        match self {
            Some(child) => Child::put(child, tag),
            None => tag.view(().into_any()),
        }
    }
}

impl<F, T> Child for F
where
    F: FnMut() -> T + Send + 'static,
    T: Shown,
{
    fn put(self, tag: Tag) -> Tag {
        tag.view(live(self))
    }
}
