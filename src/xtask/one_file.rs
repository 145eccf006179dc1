//! The whole page as one HTML file, which runs from a USB stick or an
//! attachment: styles, scripts and program inside it, nothing asked for outside.
//!
//! Made from the finished page, so that it is the same program. Its content
//! policy names the digests of what stands in it and lets nothing else in; the
//! program lies beside the scripts, deflated and in base64, as text that no
//! browser runs. There is no offline worker: the file is its own.

use std::fs;
use std::path::{Path, PathBuf};

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use miniz_oxide::deflate::compress_to_vec_zlib;
use sha2::{Digest, Sha256};

use crate::notices;
use crate::page::content_policy;
use crate::run::{Outcome, Trouble};
use crate::words;

/// The file's name.
pub const NAME: &str = "coldseat.html";

/// Where boot.js loads the program from files of its own.
const LOADED: &str = "  const at = (name) => new URL(script.dataset[name], document.baseURI);
  const address = new URL(at(\"words\").href.replace(\"LANGUAGE\", root.lang));
  const [program, words] = await Promise.all([import(at(\"glue\")), fetchWords(address)]);
  await program.default({ module_or_path: at(\"wasm\") });
  words.remove();
";

/// The same out of this file. The scripts stand on their own, as in the page:
/// where the program's cannot be read, boot.js still says so.
const UNPACKED: &str = "  const packed = document.getElementById(\"program\").textContent;
  const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream(\"deflate\"));
  const wasm = await new Response(stream).arrayBuffer();
  await globalThis.coldseatProgram({ module_or_path: wasm });
";

/// What the program's script gives away at its end.
const EXPORTS: &str = "export { initSync, __wbg_init as default };";

/// Says to the page what it is.
const MARK: &str = "<meta name=\"coldseat-form\" content=\"one file\">";

/// Writes the file of a finished page into a folder; where it lies.
pub fn write(dist: &Path, into: &Path) -> Outcome<PathBuf> {
    let text = one_file(dist)?;
    fs::create_dir_all(into).map_err(|error| Trouble::with_file(into, &error))?;
    let path = into.join(NAME);
    fs::write(&path, text).map_err(|error| Trouble::with_file(&path, &error))?;
    Ok(path)
}

fn one_file(dist: &Path) -> Outcome<String> {
    let read = |name: &str| {
        let path = dist.join(name);
        fs::read(&path).map_err(|error| Trouble::with_file(&path, &error))
    };
    let text = |name: &str| {
        read(name).and_then(|bytes| {
            String::from_utf8(bytes).map_err(|_| changed(&format!("{name} is no text")))
        })
    };
    let index = text("index.html")?;
    let style = attribute(&index, "<link rel=\"stylesheet\"", "href")
        .ok_or_else(|| changed("index.html names no style sheet"))?;
    let boot = attribute(&index, "<script type=\"module\"", "src");
    let boot = boot.ok_or_else(|| changed("index.html names no script"))?;
    let of_script = |name: &str| {
        attribute(&index, "<script type=\"module\"", name)
            .ok_or_else(|| changed(&format!("the script has no {name}")))
    };
    let (glue, wasm) = (of_script("data-glue")?, of_script("data-wasm")?);
    // Nothing in them may end their element, or look like a tag.
    let words = words::of_page(dist, of_script("data-words")?)?
        .into_iter()
        .map(|(language, text)| (language, text.replace('<', "\u{2039}")))
        .collect();
    let pieces = Pieces {
        style: text(style)?,
        glue: closed(&text(glue)?)?,
        boot: replaced(&text(boot)?, LOADED, UNPACKED)?,
        program: STANDARD.encode(compress_to_vec_zlib(&read(wasm)?, 9)),
        icon: STANDARD.encode(read("icons/icon.svg")?),
        words,
        notices: text(notices::NAME)?.replace('<', "\u{2039}"),
    };
    pieces.put_into(&index)
}

/// What stands in the file.
struct Pieces {
    style: String,
    glue: String,
    boot: String,
    program: String,
    icon: String,
    notices: String,
    words: Vec<(&'static str, String)>,
}

impl Pieces {
    fn put_into(&self, index: &str) -> Outcome<String> {
        let policy =
            content_policy(index).ok_or_else(|| changed("index.html has no content policy"))?;
        for piece in [&self.style, &self.glue, &self.boot] {
            let lower = piece.to_ascii_lowercase();
            if ["</script", "</style", "<!--"]
                .iter()
                .any(|end| lower.contains(end))
            {
                return Err(changed("a script or style holds what would end it in HTML"));
            }
        }
        let own = format!(
            "default-src 'none'; script-src '{}' '{}' 'wasm-unsafe-eval'; style-src '{}'; \
             img-src data: blob:; base-uri 'none'; form-action 'none'; \
             require-trusted-types-for 'script'; trusted-types default",
            digest(&self.glue),
            digest(&self.boot),
            digest(&self.style),
        );
        let mut page = String::new();
        for line in replaced(index, policy, &own)?.lines() {
            let tag = line.trim_start();
            // Files of their own, and notes about them.
            let is_outside = [
                "<link rel=\"manifest\"",
                "<link rel=\"apple-touch-icon\"",
                "<link rel=\"icon\"",
            ]
            .iter()
            .any(|start| tag.starts_with(start));
            if is_outside || tag.is_empty() {
                continue;
            }
            if tag.starts_with("<link rel=\"stylesheet\"") {
                page += &format!(
                    "{MARK}\n<link rel=\"icon\" type=\"image/svg+xml\" href=\"data:image/svg+xml;base64,{}\">\n<style>{}</style>\n",
                    self.icon, self.style
                );
            } else if tag.starts_with("<script type=\"module\"") {
                // The program is text to the browser: it is read when the page
                // has been painted.
                page += &format!(
                    "<script type=\"module\">{}</script>\n<script type=\"module\">{}</script>\n",
                    self.glue, self.boot
                );
            } else if tag.starts_with("<link rel=\"modulepreload\"") {
                page += "</head>\n";
            } else if tag.starts_with("</body>") {
                for (language, text) in &self.words {
                    page += &format!(
                        "<script type=\"text/plain\" id=\"words-{language}\">{text}</script>\n"
                    );
                }
                page += &format!(
                    "<script type=\"text/plain\" id=\"program\">{}</script>\n\
                     <script type=\"text/plain\" id=\"notices\">{}</script>\n{line}\n",
                    self.program, self.notices
                );
            } else {
                page += line;
                page.push('\n');
            }
        }
        match outside(&page) {
            None => Ok(page),
            Some(what) => Err(changed(&format!("the file would ask for {what}"))),
        }
    }
}

/// The program's script as one expression that keeps its names to itself.
fn closed(glue: &str) -> Outcome<String> {
    let body = replaced(glue, EXPORTS, "return __wbg_init;")?
        .replace("\nexport class ", "\nclass ")
        .replace("\nexport function ", "\nfunction ");
    let body = body.strip_prefix("export ").unwrap_or(&body);
    if body
        .lines()
        .any(|line| line.starts_with("export ") || line.starts_with("import "))
    {
        return Err(changed(
            "the program's script imports or exports something new",
        ));
    }
    Ok(format!(
        "globalThis.coldseatProgram = (() => {{\n{body}\n}})();\n"
    ))
}

/// `text` with the one `what` in it replaced.
fn replaced(text: &str, what: &str, by: &str) -> Outcome<String> {
    if text.matches(what).count() == 1 {
        return Ok(text.replacen(what, by, 1));
    }
    let begun = what.lines().next().unwrap_or_default();
    Err(changed(&format!("`{begun}` is not there exactly once")))
}

/// An attribute of the first tag that begins so, without `./` in front.
fn attribute<'a>(index: &'a str, tag: &str, name: &str) -> Option<&'a str> {
    let (_, rest) = index.split_once(tag)?;
    let (tag, _) = rest.split_once('>')?;
    let (_, rest) = tag.split_once(&format!(" {name}=\""))?;
    let (value, _) = rest.split_once('"')?;
    Some(value.strip_prefix("./").unwrap_or(value))
}

/// What in a page is asked for from outside it, if anything is.
fn outside(page: &str) -> Option<&str> {
    page.split('<').skip(1).find_map(|tag| {
        let (head, _) = tag.split_once('>')?;
        let asks =
            head.starts_with("link ") || head.starts_with("script ") || head.starts_with("img ");
        let asks = asks && (head.contains(" src=\"") || head.contains(" href=\""));
        (asks && !head.contains("=\"data:")).then_some(head)
    })
}

/// A digest as a content policy names it.
fn digest(text: &str) -> String {
    format!("sha256-{}", STANDARD.encode(Sha256::digest(text)))
}

fn changed(what: &str) -> Trouble {
    Trouble::new(
        what,
        "index.html, boot.js or the builder of the page changed: bring src/xtask/one_file.rs after them",
    )
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "a test says enough by failing")]

    use super::*;

    const INDEX: &str = "<head>\n\
        <meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'\">\n\
        <link rel=\"manifest\" href=\"manifest.webmanifest\">\n\
        <link rel=\"stylesheet\" href=\"./style.css\"/>\n\
        <script type=\"module\" src=\"./boot.js\" data-glue=\"./g.js\" data-wasm=\"./w.wasm\" data-words=\"./words/LANGUAGE.0.txt\"></script>\n\
        <link rel=\"modulepreload\" href=\"./g.js\"></head>\n\
        <body>\n<p>x</p>\n</body>\n";

    fn page() -> tempfile::TempDir {
        let folder = tempfile::tempdir().unwrap();
        let put = |name: &str, text: &str| fs::write(folder.path().join(name), text).unwrap();
        fs::create_dir(folder.path().join("icons")).unwrap();
        fs::create_dir(folder.path().join("words")).unwrap();
        for language in coldseat_words::LANGUAGES {
            put(
                &format!("words/{language}.0.txt"),
                &format!("0\n{language} < words\n"),
            );
        }
        put("index.html", INDEX);
        put("style.css", "p{color:red}");
        put("boot.js", &format!("try {{\n{LOADED}}} catch {{}}\n"));
        put("g.js", &format!("export class A {{}}\n{EXPORTS}\n"));
        put("w.wasm", "program");
        put("icons/icon.svg", "<svg/>");
        put(notices::NAME, "a crate\n</script><link href=\"x\">");
        folder
    }

    #[test]
    fn everything_stands_in_the_file_under_its_digest() {
        let made = one_file(page().path()).unwrap();
        // SHA-256 of the style, by Python's hashlib.
        assert!(
            made.contains("'sha256-p0bF+un5yUb9MBO6xRb8kPHlY2BdpHVtLiFkDrZPF64='"),
            "{made}"
        );
        assert!(made.contains("<style>p{color:red}</style>"));
        assert!(made.contains("return __wbg_init;") && !made.contains("export "));
        assert!(!made.contains("manifest") && outside(&made).is_none());
        assert!(made.contains(MARK));
        for language in coldseat_words::LANGUAGES {
            let held = format!(" id=\"words-{language}\">0\n{language} \u{2039} words\n</script>");
            assert!(made.contains(&held), "{made}");
        }
        assert!(made.contains("a crate\n\u{2039}/script>"));
    }

    #[test]
    fn what_changed_under_it_is_said_and_not_guessed() {
        for (name, text) in [
            ("boot.js", "try { load() } catch {}".to_owned()),
            ("g.js", format!("import a from './snippet.js';\n{EXPORTS}")),
            ("style.css", "p{} /* </style> */".to_owned()),
        ] {
            let folder = page();
            fs::write(folder.path().join(name), text).unwrap();
            assert!(one_file(folder.path()).is_err(), "{name}");
        }
    }

    #[test]
    fn a_request_to_the_outside_is_seen() {
        assert!(outside("<link rel=\"x\" href=\"a.css\">").is_some());
        assert!(outside("<link rel=\"x\" href=\"data:,\"><a href=\"#/\">").is_none());
    }

    #[test]
    fn the_page_s_own_start_script_is_known() {
        let boot = crate::layout::checkout().join("src/page/shell/boot.js");
        let boot = fs::read_to_string(boot).unwrap();
        assert!(replaced(&boot, LOADED, UNPACKED).is_ok());
    }
}
