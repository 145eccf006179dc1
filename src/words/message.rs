//! A language and its messages, as they were read.

use std::collections::BTreeMap;

/// A language by the name of its folder, with the cases its plurals need.
#[derive(Clone, Debug)]
pub struct Language {
    /// As in BCP 47: `en-US`.
    pub name: String,
    /// Its messages by name.
    pub messages: BTreeMap<String, Message>,
}

/// A message: what is said, with slots.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Message {
    /// The subject it stands under: the name of its file.
    pub subject: String,
    /// Its pieces, in order.
    pub pieces: Vec<Piece>,
}

/// A piece of a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Piece {
    /// Words.
    Text(String),
    /// What is filled in, by name.
    Slot(String),
    /// Words that follow a count: the slot it is in, and the pieces of each case.
    Forms(String, Vec<(String, Vec<Piece>)>),
}

impl Message {
    /// The names of its slots, each once, in alphabetical order.
    #[must_use]
    pub fn slots(&self) -> Vec<&str> {
        fn walk<'a>(pieces: &'a [Piece], found: &mut Vec<&'a str>) {
            for piece in pieces {
                match piece {
                    Piece::Text(_) => {}
                    Piece::Slot(name) => found.push(name),
                    Piece::Forms(name, forms) => {
                        found.push(name);
                        for (_, inside) in forms {
                            walk(inside, found);
                        }
                    }
                }
            }
        }
        let mut found = Vec::new();
        walk(&self.pieces, &mut found);
        found.sort_unstable();
        found.dedup();
        found
    }

    /// The slot that a plural follows, if one does.
    #[must_use]
    pub fn count(&self) -> Option<&str> {
        self.pieces.iter().find_map(|piece| match piece {
            Piece::Forms(name, _) => Some(name.as_str()),
            _ => None,
        })
    }

    /// Its words with each slot's name in braces, one text for each case.
    #[must_use]
    pub fn readings(&self) -> Vec<String> {
        fn plain(pieces: &[Piece], case: &str) -> String {
            pieces
                .iter()
                .map(|piece| match piece {
                    Piece::Text(text) => text.clone(),
                    Piece::Slot(name) => format!("{{{name}}}"),
                    Piece::Forms(_, forms) => forms
                        .iter()
                        .find(|(name, _)| name == case)
                        .map_or_else(String::new, |(_, inside)| plain(inside, case)),
                })
                .collect()
        }
        let cases = self.pieces.iter().find_map(|piece| match piece {
            Piece::Forms(_, forms) => Some(forms),
            _ => None,
        });
        match cases {
            None => vec![plain(&self.pieces, "")],
            Some(forms) => forms
                .iter()
                .map(|(case, _)| plain(&self.pieces, case))
                .collect(),
        }
    }
}
