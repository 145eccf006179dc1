//! Rust as tokens, for the tests that read the page's sources.

use proc_macro2::{Delimiter, TokenTree};

/// Past what begins with a `#` at a place of a source: an attribute or a comment of
/// documentation, with the test or its module where it is `cfg(test)`.
pub(crate) fn past_attribute(trees: &[TokenTree], at: usize) -> usize {
    let after = match trees.get(at + 1) {
        Some(TokenTree::Punct(p)) if p.as_char() == '!' => at + 2,
        _ => at + 1,
    };
    let Some(TokenTree::Group(group)) = trees.get(after) else {
        return at + 1;
    };
    if group.delimiter() != Delimiter::Bracket {
        return at + 1;
    }
    if group.stream().to_string().replace(' ', "") != "cfg(test)" {
        return after + 1;
    }
    let is_body =
        |tree: &TokenTree| matches!(tree, TokenTree::Group(g) if g.delimiter() == Delimiter::Brace);
    let rest = trees.get(after + 1..).unwrap_or_default();
    after + 2 + rest.iter().position(is_body).unwrap_or(rest.len())
}
