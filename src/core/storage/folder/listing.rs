//! What a server says that lies in a folder: the answer to `PROPFIND` of WebDAV
//! (RFC 4918), as far as it is needed. Servers write it with other prefixes and
//! breaks; tags are known by their local name, whatever else is in it is passed over.

/// A file of a folder.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Entry {
    /// Its name in the folder; a folder's ends with a slash.
    pub name: String,
    /// What changes when it is written, as the server says; empty where it does not.
    pub tag: String,
}

/// Longer answers are not looked into: 16 MiB.
const LONGEST: usize = 16 << 20;
/// Entries that are looked at.
const ENTRIES_MOST: usize = 50_000;

/// The entries of an answer, the folder itself left out; `None` where it is none.
#[must_use]
pub fn listing(text: &str) -> Option<Vec<Entry>> {
    if text.len() > LONGEST {
        return None;
    }
    let mut found = Vec::new();
    let mut open: Option<(String, String)> = None;
    let (mut is_multistatus, mut is_whole) = (false, false);
    let mut inside = String::new();
    let mut rest = text;
    while let Some(at) = rest.find('<') {
        let (words, tag) = rest.split_at(at);
        inside.push_str(words);
        let end = tag.find('>')?;
        let (tag, after) = tag.split_at(end);
        rest = after.get(1..)?;
        let tag = tag.get(1..)?;
        let closes = tag.starts_with('/');
        let name = tag.trim_start_matches('/');
        let name = name.split([' ', '\t', '\r', '\n', '/']).next()?;
        match (name.rsplit(':').next()?, closes) {
            ("multistatus", false) => is_multistatus = true,
            ("multistatus", true) => is_whole = true,
            ("response", false) => open = Some((String::new(), String::new())),
            ("response", true) => {
                let (address, tag) = open.take()?;
                if let Some(name) = last_of(&address).filter(|_| found.len() < ENTRIES_MOST) {
                    found.push((address, Entry { name, tag }));
                }
            }
            ("href", true) => {
                if let Some((address, _)) = &mut open {
                    *address = plain(inside.trim());
                }
            }
            ("getetag", true) => {
                if let Some((_, tag)) = &mut open {
                    // Some call it weak for the second in which it was written.
                    let own = plain(inside.trim());
                    tag.push_str(own.trim_start_matches("W/"));
                }
            }
            // Beside the tag: some tell a second only, some servers have none.
            ("getcontentlength" | "getlastmodified", true) => {
                if let Some((_, tag)) = &mut open {
                    tag.push_str(&format!(" {}", inside.trim()));
                }
            }
            _ => {}
        }
        inside.clear();
    }
    if !(is_multistatus && is_whole) {
        return None;
    }
    // The folder itself is the one whose address all others begin with.
    let own = found.iter().map(|(address, _)| address.len()).min()?;
    let all = found.into_iter().filter(|(address, _)| address.len() > own);
    Some(all.map(|(_, entry)| entry).collect())
}

/// The last part of an address, with the slash of a folder.
fn last_of(address: &str) -> Option<String> {
    let is_folder = address.ends_with('/');
    let name = address.trim_end_matches('/').rsplit('/').next()?;
    let name = decoded(name)?;
    Some(if is_folder { format!("{name}/") } else { name })
}

/// Without the escapes of an address.
fn decoded(text: &str) -> Option<String> {
    let mut bytes = Vec::new();
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        if byte == b'%' {
            let pair = [rest.next()?, rest.next()?];
            let pair = core::str::from_utf8(&pair).ok()?;
            bytes.push(u8::from_str_radix(pair, 16).ok()?);
        } else {
            bytes.push(byte);
        }
    }
    String::from_utf8(bytes).ok()
}

/// Without the escapes of XML.
fn plain(text: &str) -> String {
    [
        ("&quot;", "\""),
        ("&lt;", "<"),
        ("&gt;", ">"),
        ("&apos;", "'"),
        ("&#34;", "\""),
        ("&amp;", "&"),
    ]
    .iter()
    .fold(text.to_owned(), |text, (from, to)| text.replace(from, to))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;

    const APACHE: &str = r#"<?xml version="1.0" encoding="utf-8"?>
<D:multistatus xmlns:D="DAV:" xmlns:ns0="DAV:">
<D:response xmlns:lp1="DAV:"><D:href>/shop/</D:href>
<D:propstat><D:prop><lp1:getetag>"1000-64"</lp1:getetag></D:prop></D:propstat></D:response>
<D:response xmlns:lp1="DAV:"><D:href>/shop/ab12.index</D:href>
<D:propstat><D:prop><lp1:getetag>W/"1c-5"</lp1:getetag><lp1:getcontentlength>28</lp1:getcontentlength></D:prop></D:propstat></D:response>
<D:response xmlns:lp1="DAV:"><D:href>/shop/ab%3112/</D:href></D:response>
</D:multistatus>"#;

    #[test]
    fn a_servers_answer_is_read() {
        let entry = |name: &str, tag: &str| Entry {
            name: name.to_owned(),
            tag: tag.to_owned(),
        };
        let read = listing(APACHE).unwrap();
        assert_eq!(
            read,
            [entry("ab12.index", "\"1c-5\" 28"), entry("ab112/", "")]
        );
        let other = APACHE
            .replace("D:", "")
            .replace("lp1:", "d:")
            .replace('"', "&quot;");
        let tags: Vec<String> = listing(&other)
            .unwrap()
            .into_iter()
            .map(|e| e.tag)
            .collect();
        assert_eq!(tags, ["\"1c-5\" 28", ""]);
    }

    #[test]
    fn half_an_answer_and_what_is_none_is_no_list() {
        for end in 0..APACHE.len() - 1 {
            assert_eq!(listing(&APACHE[..end]), None, "{end}");
        }
        for text in [
            "",
            "<html></html>",
            "<multistatus/>",
            "<",
            "<>",
            "</multistatus>",
        ] {
            assert_eq!(listing(text), None, "{text}");
        }
    }
}
