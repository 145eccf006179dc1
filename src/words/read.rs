//! Reading the files of a language, and holding languages against each other.

use crate::packed::is_mark;
use crate::{Language, Message, Piece, plural_cases};
use fluent_syntax::ast::{
    Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey,
};
use fluent_syntax::parser;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// The languages of the page; the first is the one the others are held against.
pub const LANGUAGES: [&str; 2] = ["en-US", "es-US"];

/// Reads every language below `languages` and holds them against each other.
///
/// # Errors
/// Everything that is wrong, a line each.
pub fn all(languages: &Path) -> Result<Vec<Language>, Vec<String>> {
    let (mut read, mut wrong) = (Vec::new(), Vec::new());
    for name in LANGUAGES {
        match folder(&languages.join(name)) {
            Ok(language) => read.push(language),
            Err(more) => wrong.extend(more),
        }
    }
    if wrong.is_empty() {
        wrong = check(&read);
    }
    if wrong.is_empty() {
        Ok(read)
    } else {
        Err(wrong)
    }
}

/// Reads the folder of a language.
///
/// # Errors
/// Everything that is wrong with it, a line each, file and message named.
pub fn folder(path: &Path) -> Result<Language, Vec<String>> {
    let name = path
        .file_name()
        .map(|name| name.to_string_lossy().into_owned())
        .unwrap_or_default();
    let mut language = Language {
        name,
        messages: BTreeMap::new(),
    };
    let mut wrong = Vec::new();
    let mut files: Vec<_> = match fs::read_dir(path) {
        Ok(entries) => entries.flatten().map(|entry| entry.path()).collect(),
        Err(error) => return Err(vec![format!("{}: {error}", path.display())]),
    };
    files.retain(|file| file.extension().is_some_and(|kind| kind == "ftl"));
    files.sort();
    for file in files {
        let stem = file.file_stem().unwrap_or_default().to_string_lossy();
        match fs::read_to_string(&file) {
            Ok(text) => {
                if let Err(more) = subject(&mut language, &stem, &text) {
                    wrong.extend(more);
                }
            }
            Err(error) => wrong.push(format!("{}: {error}", file.display())),
        }
    }
    if language.messages.is_empty() && wrong.is_empty() {
        wrong.push(format!("{}: no message in it", path.display()));
    }
    if wrong.is_empty() {
        Ok(language)
    } else {
        Err(wrong)
    }
}

/// Adds the text of one subject's file to a language.
///
/// # Errors
/// What is wrong in it, a line each.
pub fn subject(language: &mut Language, name: &str, text: &str) -> Result<(), Vec<String>> {
    let mut wrong = Vec::new();
    let resource = match parser::parse(text) {
        Ok(resource) => resource,
        Err((resource, errors)) => {
            for error in errors {
                let line = text
                    .get(..error.pos.start)
                    .map_or(0, |before| before.lines().count());
                wrong.push(format!("{name}.ftl, line {line}: {error}"));
            }
            resource
        }
    };
    for entry in resource.body {
        let Entry::Message(message) = entry else {
            if matches!(entry, Entry::Term(_)) {
                wrong.push(format!("{name}.ftl: terms (-name) are not taken here"));
            }
            continue;
        };
        let id = message.id.name.to_owned();
        let at = format!("{name}.ftl: {id}");
        if !message.attributes.is_empty() {
            wrong.push(format!("{at}: attributes are not taken here"));
        }
        let Some(pattern) = message.value else {
            wrong.push(format!("{at}: says nothing"));
            continue;
        };
        let mut pieces = Vec::new();
        if let Err(why) = pattern_into(&pattern, false, &mut pieces) {
            wrong.push(format!("{at}: {why}"));
            continue;
        }
        let message = Message {
            subject: name.to_owned(),
            pieces: joined(pieces),
        };
        if message
            .readings()
            .iter()
            .any(|said| said.trim().is_empty() || said.chars().any(is_mark))
        {
            wrong.push(format!("{at}: says nothing, or holds a mark of ours"));
        }
        if language.messages.insert(id, message).is_some() {
            wrong.push(format!("{at}: stands twice"));
        }
    }
    if wrong.is_empty() { Ok(()) } else { Err(wrong) }
}

/// Lines of a wrapped text are one line: where it is broken is the file's business.
fn unwrapped(text: &str) -> String {
    text.replace('\n', " ")
}

fn pattern_into(
    pattern: &Pattern<&str>,
    is_inside: bool,
    pieces: &mut Vec<Piece>,
) -> Result<(), String> {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => pieces.push(Piece::Text(unwrapped(value))),
            PatternElement::Placeable { expression } => match expression {
                Expression::Inline(inline) => pieces.push(inline_piece(inline)?),
                Expression::Select { .. } if is_inside => {
                    return Err("a choice inside a choice is not taken here".to_owned());
                }
                Expression::Select { selector, variants } => {
                    let InlineExpression::VariableReference { id } = selector else {
                        return Err("a choice follows a slot only".to_owned());
                    };
                    if pieces.iter().any(|p| matches!(p, Piece::Forms(..))) {
                        return Err("two choices in one message are not taken here".to_owned());
                    }
                    let mut forms = Vec::new();
                    for variant in variants {
                        let VariantKey::Identifier { name } = variant.key else {
                            return Err("a case is named: one, many, other".to_owned());
                        };
                        let mut inside = Vec::new();
                        pattern_into(&variant.value, true, &mut inside)?;
                        forms.push((name.to_owned(), joined(inside)));
                    }
                    pieces.push(Piece::Forms(id.name.to_owned(), forms));
                }
            },
        }
    }
    Ok(())
}

fn inline_piece(inline: &InlineExpression<&str>) -> Result<Piece, String> {
    match inline {
        InlineExpression::StringLiteral { value } if value.contains('\\') => {
            Err("escapes are not taken here: write the letter".to_owned())
        }
        InlineExpression::StringLiteral { value } => Ok(Piece::Text((*value).to_owned())),
        InlineExpression::VariableReference { id } => Ok(Piece::Slot(id.name.to_owned())),
        _ => Err("only a slot or quoted text stands between braces here".to_owned()),
    }
}

/// Texts side by side as one.
fn joined(pieces: Vec<Piece>) -> Vec<Piece> {
    let mut out: Vec<Piece> = Vec::new();
    for piece in pieces {
        match (out.last_mut(), piece) {
            (Some(Piece::Text(before)), Piece::Text(more)) => before.push_str(&more),
            (_, piece) => out.push(piece),
        }
    }
    out
}

/// Holds languages against the first: the same names, the same slots, a plural
/// where it has one, with the cases of its own language.
#[must_use]
pub fn check(languages: &[Language]) -> Vec<String> {
    let Some((first, others)) = languages.split_first() else {
        return vec!["no language".to_owned()];
    };
    let mut wrong = Vec::new();
    for language in languages {
        cases(language, &mut wrong);
    }
    for other in others {
        for (id, message) in &first.messages {
            let at = format!("{}, {id}", other.name);
            match other.messages.get(id) {
                None => wrong.push(format!("{at}: is missing ({}.ftl)", message.subject)),
                Some(its) => {
                    let (here, there) = (message.slots(), its.slots());
                    if here != there {
                        wrong.push(format!(
                            "{at}: its slots are {there:?}, in {} {here:?}",
                            first.name
                        ));
                    }
                    if message.count() != its.count() {
                        wrong.push(format!(
                            "{at}: follows the count {:?}, in {} {:?}",
                            its.count(),
                            first.name,
                            message.count()
                        ));
                    }
                    if message.subject != its.subject {
                        wrong.push(format!(
                            "{at}: stands in {}.ftl, in {} in {}.ftl",
                            its.subject, first.name, message.subject
                        ));
                    }
                }
            }
        }
        for (id, message) in &other.messages {
            if !first.messages.contains_key(id) {
                wrong.push(format!(
                    "{}, {id}: not known in {} ({}.ftl)",
                    other.name, first.name, message.subject
                ));
            }
        }
    }
    wrong
}

/// Whether plurals have the cases of their language.
fn cases(language: &Language, wrong: &mut Vec<String>) {
    let wanted = plural_cases(&language.name);
    for (id, message) in &language.messages {
        for piece in &message.pieces {
            let Piece::Forms(_, forms) = piece else {
                continue;
            };
            let mut have: Vec<&str> = forms.iter().map(|(name, _)| name.as_str()).collect();
            let mut want = wanted.to_vec();
            have.sort_unstable();
            want.sort_unstable();
            if have != want {
                wrong.push(format!(
                    "{}, {id}: a plural has the cases {want:?}, this one {have:?}",
                    language.name
                ));
            }
        }
    }
}
