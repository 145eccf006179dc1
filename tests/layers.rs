//! The order of the layers, the size of the files, and what must not be in
//! them. A leak is told by name.

use coldseat_tests::{files, root};
use std::fs;
use std::path::{Path, PathBuf};

/// Modules of the core, lowest first; a module may use those before it and
/// those on its own step.
const STEPS: &[&[&str]] = &[
    &["quantity"],
    &["numerics"],
    &["materials"],
    &["thermal", "mechanics", "metrology"],
    &["planning"],
    &["job"],
    &["document"],
    &["storage"],
    &["ask", "evaluator"],
];

fn sources(folder: &str) -> Vec<(PathBuf, String)> {
    let found = files(&root().join(folder), ".rs");
    assert!(!found.is_empty(), "nothing in {folder}");
    found
        .into_iter()
        .map(|p| (p.clone(), fs::read_to_string(p).expect("text")))
        .collect()
}

/// Code without comments (doc examples may reach across layers).
fn code(text: &str) -> String {
    text.lines()
        .filter(|l| !l.trim_start().starts_with("//"))
        .collect::<Vec<_>>()
        .join("\n")
}

fn step_of(module: &str) -> Option<usize> {
    STEPS.iter().position(|step| step.contains(&module))
}

#[test]
fn no_layer_uses_a_higher_one() {
    let core = root().join("src/core");
    for (path, text) in sources("src/core") {
        let inside = path.strip_prefix(&core).expect("inside core");
        let module = inside
            .components()
            .next()
            .map(|c| c.as_os_str().to_string_lossy().into_owned());
        let Some(own) = module.as_deref().and_then(step_of) else {
            continue;
        };
        for used in code(&text).split("crate::").skip(1) {
            let name: String = used
                .chars()
                .take_while(|c| c.is_ascii_lowercase() || *c == '_')
                .collect();
            if let Some(step) = step_of(&name) {
                assert!(
                    step <= own,
                    "{} uses {name}, a higher layer",
                    inside.display()
                );
            }
        }
    }
}

/// Folders of `job`, lowest first.
const JOB: &[&[&str]] = &[&["model"], &["verdict"], &["steps"], &["advice", "demo"]];

/// Files of `job` by what they use of it, tests aside: `model/job` uses
/// `model/entries`.
fn uses_in_job() -> Vec<(String, Vec<String>)> {
    let job = root().join("src/core/job");
    sources("src/core/job")
        .into_iter()
        .filter(|(path, _)| !path.to_string_lossy().ends_with("tests.rs"))
        .map(|(path, text)| {
            let own = path
                .strip_prefix(&job)
                .expect("inside job")
                .with_extension("");
            let text = code(text.split("\nmod tests {").next().unwrap_or(&text));
            let used = text
                .split("crate::job::")
                .skip(1)
                .map(|rest| {
                    let path: String = rest
                        .chars()
                        .take_while(|c| c.is_ascii_alphanumeric() || "_:".contains(*c))
                        .collect();
                    let mut parts = path.split("::");
                    let folder = parts.next().unwrap_or_default().to_owned();
                    format!("{folder}/{}", parts.next().unwrap_or_default())
                })
                .collect();
            (own.to_string_lossy().replace('\\', "/"), used)
        })
        .collect()
}

#[test]
fn the_job_is_laid_out_from_model_to_advice_and_no_file_of_it_runs_in_a_circle() {
    let all = uses_in_job();
    let step = |name: &str| {
        let folder = name.split('/').next().unwrap_or_default();
        JOB.iter().position(|step| step.contains(&folder))
    };
    for (own, used) in &all {
        for used in used {
            assert!(
                step(used) <= step(own) || step(own).is_none(),
                "job/{own} uses job/{used}, which stands above it"
            );
        }
    }
    // Whom a file reaches, and whom they reach; an index of a folder is no file.
    for (start, _) in all.iter().filter(|(name, _)| name.contains('/')) {
        let mut reached: Vec<&str> = Vec::new();
        let mut open: Vec<&str> = vec![start];
        while let Some(next) = open.pop() {
            let of = all.iter().find(|(name, _)| name == next);
            for used in of.into_iter().flat_map(|(_, used)| used) {
                assert!(
                    used != start,
                    "job/{start} is used by job/{next}, which it uses"
                );
                if all.iter().any(|(name, _)| name == used) && !reached.contains(&used.as_str()) {
                    reached.push(used);
                    open.push(used);
                }
            }
        }
    }
}

#[test]
fn every_module_of_the_core_has_its_step() {
    let lib = fs::read_to_string(root().join("src/core/lib.rs")).expect("lib.rs");
    for line in lib.lines() {
        if let Some(name) = line
            .strip_prefix("pub mod ")
            .and_then(|l| l.strip_suffix(';'))
        {
            assert!(
                step_of(name).is_some(),
                "{name} stands in no layer: add it to STEPS"
            );
        }
    }
}

#[test]
fn the_core_has_no_clock_no_files_no_browser() {
    for (path, text) in sources("src/core") {
        if path.ends_with("bin/evaluate.rs") {
            continue;
        }
        for word in [
            "std::fs",
            "std::net",
            "std::time",
            "web_sys",
            "js_sys",
            "wasm_bindgen",
            "gloo_",
            "println!",
        ] {
            assert!(
                !code(&text).contains(word),
                "{} uses {word}",
                path.display()
            );
        }
    }
}

/// What the page may import of the core: what it asks, and the code that keeps
/// documents, which it gives stores and a clock.
const OF_CORE: [&str; 2] = ["ask", "storage"];

#[test]
fn the_page_asks_the_core_through_one_door() {
    for (path, text) in sources("src/page") {
        for used in code(&text).split("coldseat_core::").skip(1) {
            let name: String = used
                .chars()
                .take_while(|c| c.is_ascii_lowercase() || *c == '_')
                .collect();
            assert!(
                OF_CORE.contains(&name.as_str()),
                "{} calls {name} of the core: ask it (core/ask)",
                path.display()
            );
        }
    }
}

/// What a part of the page may use of the page: what keeps documents knows no screen,
/// what is open and what lies on the device know no hand.
const OF_PAGE: &[(&str, &[&str])] = &[
    ("storage", &["browser", "storage"]),
    ("library", &["storage"]),
    (
        "session",
        &["browser", "library", "memo", "session", "storage"],
    ),
    ("ui", &["clock", "memo", "parts", "screens", "session"]),
];

#[test]
fn what_keeps_and_what_is_open_know_no_screen() {
    let page = root().join("src/page");
    for (part, may) in OF_PAGE {
        let mut seen = 0;
        for (path, text) in sources("src/page") {
            let inside = path.strip_prefix(&page).expect("inside page");
            let first = inside.components().next().expect("a name");
            if Path::new(first.as_os_str()).with_extension("") != Path::new(part) {
                continue;
            }
            seen += 1;
            for used in code(&text).split("crate::").skip(1) {
                let name: String = used
                    .chars()
                    .take_while(|c| c.is_ascii_lowercase() || *c == '_')
                    .collect();
                assert!(
                    may.contains(&name.as_str()),
                    "{} uses {name} of the page, which stands above it",
                    inside.display()
                );
            }
        }
        assert!(seen > 0, "no file of {part}");
    }
}

/// A new screen is its own file, a line in each list of `screens/mod.rs` and its words:
/// nothing else of the page draws screens or tells their addresses apart.
#[test]
fn a_screen_is_known_to_its_own_file_and_to_one_list() {
    let screens = root().join("src/page/screens");
    let list = fs::read_to_string(screens.join("mod.rs")).expect("text");
    let all = sources("src/page");
    let mut seen = 0;
    for (path, text) in all.iter().filter(|(path, _)| path.starts_with(&screens)) {
        let Some(name) = text
            .lines()
            .filter_map(|line| line.strip_prefix("pub fn ")?.split('(').next())
            .find(|name| name.ends_with("Screen"))
        else {
            continue;
        };
        seen += 1;
        assert!(
            list.contains(&format!("<{name} ")),
            "screens/mod.rs does not draw {name}"
        );
        for (other, text) in &all {
            assert!(
                other == path || other == &screens.join("mod.rs") || !text.contains(name),
                "{} knows {name}: what both need belongs to parts",
                other.display()
            );
        }
    }
    assert!(seen > 10, "no screens found");
    for (path, text) in &all {
        let is_list = path == &screens.join("mod.rs");
        let text = code(text);
        assert!(
            is_list || !text.contains("Route::parse(") || path.ends_with("page/state.rs"),
            "{} reads addresses",
            path.display()
        );
        assert!(
            is_list || !text.contains("Screen::"),
            "{} tells screens apart: ask a method of Screen",
            path.display()
        );
    }
}

#[test]
fn the_page_computes_nothing() {
    for (path, text) in sources("src/page") {
        for word in [
            ".sin()",
            ".cos()",
            ".exp()",
            ".ln()",
            ".sqrt()",
            ".powi(",
            ".powf(",
            ".sum::<f64>()",
            "25.4",
            "0.0254",
            "459.67",
            "273.15",
            "engine_si(",
            ".comparable(",
            "preset_si(",
        ] {
            // The strip of cylinders is drawn as well.
            let drawing = path.to_string_lossy().contains("drawings") || path.ends_with("strip.rs");
            let trigonometry = matches!(word, ".sin()" | ".cos()");
            // The record tells a limit, or the text that is no limit.
            let told = path.ends_with("record_file.rs") && word == "engine_si(";
            assert!(
                (drawing && trigonometry) || told || !code(&text).contains(word),
                "{} computes with {word}: that belongs in the core",
                path.display()
            );
        }
    }
}

/// Leptos' own makes a type of every tag: a tenth more to fetch, unseen.
#[test]
fn markup_is_the_page_s_own() {
    let mut seen = 0;
    for (path, text) in sources("src/page") {
        if code(&text).contains("view! {") {
            seen += 1;
            assert!(
                text.contains("use coldseat_markup::view;"),
                "{} writes Leptos' own markup: import coldseat_markup::view",
                path.display()
            );
        }
        // A kilobyte for each kind of value.
        assert!(
            !code(&text).contains(" Memo::new(") || text.contains("use crate::memo::Memo;"),
            "{} keeps Leptos' own memos: import crate::memo::Memo",
            path.display()
        );
    }
    assert!(seen > 30, "no markup found");
}

#[test]
fn files_stay_short() {
    let mut long = Vec::new();
    for folder in ["src", "tests", "style"] {
        for ending in [".rs", ".css", ".js"] {
            let mut found = Vec::new();
            found.extend(files(&root().join(folder), ending));
            for path in found {
                let lines = fs::read_to_string(&path).expect("text").lines().count();
                if lines > 500 {
                    long.push(format!("{}: {lines} lines", path.display()));
                }
            }
        }
    }
    assert!(long.is_empty(), "{long:#?}");
}
