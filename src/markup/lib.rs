//! `view!` for the page: the markup Leptos has, turned into calls of
//! `coldseat-page`'s `tag.rs`.
//!
//! Leptos' own macro makes a type of every tag, attribute and handler, and the
//! compiler writes the machinery of each anew: half of the program a phone
//! fetched. Here a tag is a name given to one type, and what was half of the
//! program is a row of short calls. Components go to Leptos as they stand.

use proc_macro2::TokenStream;
use quote::{quote, quote_spanned};
use rstml::Infallible;
use rstml::node::{KeyedAttribute, Node, NodeAttribute, NodeElement};
use syn::spanned::Spanned;

/// Tags of drawings; they live in a namespace of their own.
const DRAWN: [&str; 6] = ["circle", "defs", "path", "pattern", "svg", "text"];

/// Markup as a `Tag`.
///
/// `name=value` is an attribute, `prop:name=value` a property, `on:name=closure`
/// a handler; a value may be a closure that follows signals. Between tags stand
/// blocks with anything that can be shown.
#[proc_macro]
pub fn view(tokens: proc_macro::TokenStream) -> proc_macro::TokenStream {
    rstml::parse(tokens)
        .and_then(|nodes| whole(&nodes))
        .unwrap_or_else(|error| error.to_compile_error())
        .into()
}

/// What stands in one macro: one tag, or several side by side.
fn whole(nodes: &[Node]) -> syn::Result<TokenStream> {
    if let [Node::Element(element)] = nodes
        && !is_component(element)
    {
        return tag(element);
    }
    let children = children(nodes)?;
    Ok(quote! { crate::tag::Tag::several() #children })
}

fn is_component(element: &NodeElement<Infallible>) -> bool {
    element
        .name()
        .to_string()
        .starts_with(|letter: char| letter.is_ascii_uppercase())
}

fn children(nodes: &[Node]) -> syn::Result<TokenStream> {
    nodes.iter().map(child).collect()
}

fn child(node: &Node) -> syn::Result<TokenStream> {
    let shown = match node {
        Node::Element(element) if is_component(element) => {
            quote! { ::leptos::prelude::IntoAny::into_any(::leptos::prelude::view! { #element }) }
        }
        Node::Element(element) => tag(element)?,
        Node::Block(block) => quote! { #block },
        Node::Text(text) => {
            let text = &text.value;
            quote! { #text }
        }
        other => return Err(syn::Error::new(other.span(), "not part of this markup")),
    };
    Ok(quote_spanned! { node.span() => .child(#[allow(unused_braces)] #shown) })
}

fn tag(element: &NodeElement<Infallible>) -> syn::Result<TokenStream> {
    let name = element.name().to_string();
    let begin = if DRAWN.contains(&name.as_str()) {
        quote! { crate::tag::Tag::drawn(#name) }
    } else {
        // As the browser spells it: so an element is known for the same again.
        let name = name.to_ascii_uppercase();
        quote! { crate::tag::Tag::new(#name) }
    };
    let attributes: TokenStream = element
        .attributes()
        .iter()
        .map(|attribute| match attribute {
            NodeAttribute::Attribute(keyed) => Ok(one(keyed)),
            NodeAttribute::Block(block) => {
                Err(syn::Error::new(block.span(), "an attribute has a name"))
            }
        })
        .collect::<syn::Result<_>>()?;
    let children = children(&element.children)?;
    Ok(quote_spanned! { element.name().span() => #begin #attributes #children })
}

fn one(attribute: &KeyedAttribute) -> TokenStream {
    let key = attribute.key.to_string();
    let value = attribute
        .value()
        .map_or_else(|| quote! { true }, |value| quote! { #value });
    let span = attribute.span();
    if let Some(event) = key.strip_prefix("on:") {
        let kind = kind_of(event);
        quote_spanned! { span =>
            .on(#event, crate::tag::hand::<::web_sys::#kind>(#value))
        }
    } else if let Some(property) = key.strip_prefix("prop:") {
        quote_spanned! { span => .prop(#property, #value) }
    } else {
        quote_spanned! { span => .set(#key, #value) }
    }
}

/// What the browser hands to the handler of an event.
fn kind_of(event: &str) -> TokenStream {
    match event {
        "click" => quote! { MouseEvent },
        "keydown" => quote! { KeyboardEvent },
        "paste" => quote! { ClipboardEvent },
        "pointerdown" => quote! { PointerEvent },
        _ => quote! { Event },
    }
}
