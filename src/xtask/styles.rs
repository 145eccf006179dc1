//! One style sheet instead of ten: a phone in a shop with a poor network asks
//! once. The sources stay one file a part of the page.

use std::fs;
use std::path::Path;

use sha2::{Digest, Sha256};

use crate::run::{Outcome, Trouble};

/// A style sheet that the page names.
#[derive(Debug, PartialEq, Eq)]
struct Sheet<'a> {
    line: &'a str,
    file: &'a str,
    media: Option<&'a str>,
}

/// The value of an attribute.
fn attribute<'a>(tag: &'a str, name: &str) -> Option<&'a str> {
    let (_, rest) = tag.split_once(&format!(" {name}=\""))?;
    rest.split_once('"').map(|(value, _)| value)
}

/// The style sheets of a page, in order; each stands on a line of its own.
fn sheets(index: &str) -> Vec<Sheet<'_>> {
    index
        .lines()
        .filter(|line| line.trim_start().starts_with("<link rel=\"stylesheet\""))
        .filter_map(|line| {
            Some(Sheet {
                line,
                file: attribute(line, "href")?.trim_start_matches("./"),
                media: attribute(line, "media"),
            })
        })
        .collect()
}

/// Joins the style sheets of the page in `stage` into one, named by its
/// content; what is for print only stays so.
pub fn join(stage: &Path) -> Outcome<()> {
    let path = stage.join("index.html");
    let index = fs::read_to_string(&path).map_err(|error| Trouble::with_file(&path, &error))?;
    let found = sheets(&index);
    let mut joined = String::new();
    for sheet in &found {
        let file = stage.join(sheet.file);
        let text = fs::read_to_string(&file).map_err(|error| Trouble::with_file(&file, &error))?;
        match sheet.media {
            Some(media) => joined.push_str(&format!("@media {media}{{{text}}}\n")),
            None => {
                joined.push_str(&text);
                joined.push('\n');
            }
        }
        fs::remove_file(&file).map_err(|error| Trouble::with_file(&file, &error))?;
    }
    let digest: String = Sha256::digest(&joined)
        .iter()
        .take(8)
        .map(|byte| format!("{byte:02x}"))
        .collect();
    let name = format!("style-{digest}.css");
    let file = stage.join(&name);
    fs::write(&file, joined).map_err(|error| Trouble::with_file(&file, &error))?;
    fs::write(&path, with_one(&index, &name)).map_err(|error| Trouble::with_file(&path, &error))
}

/// The page naming one sheet, where the first one stood.
fn with_one(index: &str, name: &str) -> String {
    let found = sheets(index);
    let mut page = String::with_capacity(index.len());
    let mut named = false;
    for line in index.lines() {
        if !found.iter().any(|sheet| sheet.line == line) {
            page.push_str(line);
            page.push('\n');
        } else if !named {
            named = true;
            page.push_str(&format!(
                "    <link rel=\"stylesheet\" href=\"./{name}\"/>\n"
            ));
        }
    }
    page
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = "<head>
    <link rel=\"icon\" href=\"i.svg\">
    <link rel=\"stylesheet\" href=\"./a-1.css\"/>
    <link rel=\"stylesheet\" href=\"./b-2.css\" media=\"print\"/>
</head>
";

    #[test]
    fn sheets_are_found_with_their_medium() {
        let found = sheets(PAGE);
        assert_eq!(found.len(), 2);
        assert_eq!((found[0].file, found[0].media), ("a-1.css", None));
        assert_eq!((found[1].file, found[1].media), ("b-2.css", Some("print")));
    }

    #[test]
    fn the_page_names_one_and_keeps_the_rest() {
        let page = with_one(PAGE, "style-9.css");
        assert_eq!(
            page,
            "<head>\n    <link rel=\"icon\" href=\"i.svg\">\n    \
             <link rel=\"stylesheet\" href=\"./style-9.css\"/>\n</head>\n"
        );
    }
}
