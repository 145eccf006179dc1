//! The page in Spanish and in a longer language than any; switching in the middle of
//! work; numbers with a comma; a record for a reader of the other language.

use std::collections::BTreeSet;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Folder, Page, Role, Setting, Size, containing, places};
use coldseat_words::{Language, all};
use serde_json::json;

use crate::everyone::{UNFOLD, broken_rules, screens_fit, twice_the_text};

/// Every language, by the page's own files.
fn languages() -> Result<Vec<Language>> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../src/page/languages");
    all(folder.as_ref()).map_err(|wrong| anyhow::anyhow!(wrong.join("\n")))
}

/// Chooses a language as a person does.
async fn choose(page: &Page, label: &str, language: &str, heading: &str) -> Result<()> {
    page.go("#/settings").await?;
    page.choose(label, language).await?;
    page.find(Role::Heading, heading).await?;
    Ok(())
}

async fn in_spanish(page: &Page) -> Result<()> {
    choose(page, "Language", "Espa\u{f1}ol", "Ajustes").await
}

/// Opens a demo job, whatever the page speaks.
async fn demo(page: &Page, which: &str) -> Result<()> {
    page.go("#/").await?;
    page.tap(Role::Button, containing(which)).await?;
    page.until("the strip of a job", async || {
        let rings = page.script(
            "return document.querySelectorAll('.strip a').length",
            vec![],
        );
        Ok((rings.await?.as_u64() > Some(4)).then_some(()))
    })
    .await
}

/// What stands on the screen or is said of it, piece by piece.
const SAID: &str = "
    const said = new Set();
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) said.add(walk.currentNode.data.trim());
    for (const e of document.querySelectorAll('[aria-label],[title],[placeholder]'))
        for (const name of ['aria-label', 'title', 'placeholder'])
            said.add((e.getAttribute(name) ?? '').trim());
    return [...said];
";

/// Messages without slots that are said otherwise in the other language.
fn only_in(languages: &[Language], which: usize) -> Result<BTreeSet<String>> {
    let (here, there) = match (languages, which) {
        ([first, second, ..], 0) => (first, second),
        ([first, second, ..], _) => (second, first),
        _ => anyhow::bail!("two languages"),
    };
    let others: BTreeSet<String> = there.messages.values().flat_map(|m| m.readings()).collect();
    Ok(here
        .messages
        .values()
        .filter(|message| message.slots().is_empty())
        .flat_map(|message| message.readings())
        .map(|said| said.trim().to_owned())
        // "mm" and "psi" are the same everywhere, "no" too.
        .filter(|said| said.chars().count() > 3 && !others.contains(said))
        .collect())
}

/// Walks every screen of both demo jobs in each language: a screen says its own
/// language and nothing of the other.
#[tokio::test]
async fn no_screen_speaks_two_languages() -> Result<()> {
    let languages = languages()?;
    for which in [0, 1] {
        let (own, other) = (only_in(&languages, which)?, only_in(&languages, 1 - which)?);
        let bench = Bench::open(Setting::default()).await?;
        let page = bench.page();
        let mut heard = BTreeSet::new();
        if which == 1 {
            in_spanish(page).await?;
        }
        for (job, cylinder) in [("Demo 1", 3), ("Demo 2", 6)] {
            demo(page, job).await?;
            for place in places(page, cylinder).await? {
                page.go(&place).await?;
                page.script_awaiting(UNFOLD).await?;
                let said = page.script(SAID, vec![]).await?;
                for said in said.as_array().context("a list")? {
                    let said = said.as_str().context("a text")?;
                    // A language names itself.
                    let is_name = ["English", "Espa\u{f1}ol"].contains(&said);
                    ensure!(is_name || !other.contains(said), "{place}: {said:?}");
                    if own.contains(said) {
                        heard.insert(said.to_owned());
                    }
                }
            }
        }
        // A walk that met no words proved nothing.
        ensure!(heard.len() > 350, "{} messages were seen", heard.len());
        page.is_quiet().await?;
    }
    Ok(())
}

#[tokio::test]
async fn every_screen_keeps_the_rules_in_spanish() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    in_spanish(page).await?;
    demo(page, "Demo 1").await?;
    let mut broken = Vec::new();
    for place in places(page, 3).await? {
        page.go(&place).await?;
        broken.extend(broken_rules(page, &place).await?);
    }
    ensure!(broken.is_empty(), "{}", broken.join("\n"));
    Ok(())
}

/// As in English: no screen scrolls sideways, no number is cut.
async fn fits(page: &Page, width: u32) -> Result<()> {
    demo(page, "Demo 2").await?;
    screens_fit(page, width).await
}

#[tokio::test]
async fn spanish_fits_from_320_to_1600_and_at_twice_the_text() -> Result<()> {
    for (width, twice) in [(320, false), (1600, false), (320, true)] {
        let bench = Bench::open(Setting {
            size: Size::Other(width, 640),
            ..Setting::default()
        })
        .await?;
        let page = bench.page();
        if twice {
            twice_the_text(page).await?;
        }
        in_spanish(page).await?;
        fits(page, width).await?;
    }
    Ok(())
}

#[tokio::test]
async fn a_language_two_fifths_longer_fits_too() -> Result<()> {
    for (width, twice) in [(320, false), (390, true), (820, false)] {
        let bench = Bench::open(Setting {
            size: Size::Other(width, 640),
            folder: Folder::LongWords,
            ..Setting::default()
        })
        .await?;
        let page = bench.page();
        if twice {
            twice_the_text(page).await?;
        }
        page.find(Role::Heading, containing("J\u{f4}\u{f4}bs"))
            .await?;
        fits(page, width).await?;
    }
    Ok(())
}

/// The text of a reading of the pulls.
async fn reading(page: &Page) -> Result<String> {
    let text = "return document.querySelector('input[data-place]').value";
    Ok(page
        .script(text, vec![])
        .await?
        .as_str()
        .context("a text")?
        .to_owned())
}

/// Types digits on the pad into the first reading of the screen that is open.
async fn type_on_pad(page: &Page, digits: &[&str]) -> Result<()> {
    page.script(
        "document.querySelector('input[data-place]').focus()",
        vec![],
    )
    .await?;
    for digit in digits {
        page.tap(Role::Button, *digit).await?;
    }
    Ok(())
}

#[tokio::test]
async fn switching_in_mid_reading_loses_nothing_and_works_without_a_network() -> Result<()> {
    let mut bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page, "Demo 1").await?;
    let step = format!("{}/cylinder/1/chamfer", page.job().await?);
    page.go(&step).await?;
    type_on_pad(page, &["3", "1"]).await?;
    let half = reading(page).await?;
    page.is_kept_offline().await?;
    bench.server.kill()?;
    let page = bench.page();
    in_spanish(page).await?;
    page.go(&step).await?;
    page.find(Role::Heading, containing("Chafl\u{e1}n")).await?;
    ensure!(
        reading(page).await? == half,
        "{} was {half}",
        reading(page).await?
    );
    // It stays chosen, and the way back needs no network either.
    page.reload().await?;
    page.find(Role::Heading, containing("Chafl\u{e1}n")).await?;
    choose(page, "Idioma", "English", "Settings").await?;
    page.go(&step).await?;
    page.find(Role::Heading, containing("chamfer")).await?;
    ensure!(reading(page).await? == half, "{}", reading(page).await?);
    Ok(())
}

#[tokio::test]
async fn a_comma_is_written_by_the_page_and_what_was_typed_stays() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page, "Demo 1").await?;
    let step = format!("{}/cylinder/3/pull", page.job().await?);
    page.go(&step).await?;
    page.says("0.0042").await?;
    let typed = reading(page).await?;
    let all = "return [...document.querySelectorAll('input[data-place]')].map((e) => e.value)";
    let before = page.script(all, vec![]).await?;
    page.go("#/settings").await?;
    page.choose("Decimals", "4,3731").await?;
    page.go(&step).await?;
    page.says("0,0042").await?;
    ensure!(reading(page).await? == typed, "the first reading changed");
    ensure!(
        page.script(all, vec![]).await? == before,
        "a typed reading changed"
    );
    // The pad's own keys write it too, and it is read.
    page.go(&format!("{}/cylinder/1/chamfer", page.job().await?))
        .await?;
    type_on_pad(page, &["4", "3"]).await?;
    ensure!(reading(page).await? == "0,0043", "{}", reading(page).await?);
    page.is_quiet().await
}

#[tokio::test]
async fn a_record_is_read_in_the_other_language_and_the_page_goes_on_in_its_own() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page, "Demo 1").await?;
    let job = page.job().await?;
    page.go(&format!("{job}/record")).await?;
    page.choose("Language of this record", "Espa\u{f1}ol")
        .await?;
    page.find(Role::ComboBox, "Idioma de este registro").await?;
    let lang = "return document.documentElement.lang";
    ensure!(page.script(lang, vec![]).await? == json!("es-US"));
    page.long_picture("record-spanish").await?;
    page.go(&format!("{job}/cylinder/3/pull")).await?;
    page.find(Role::Heading, containing("Pull")).await?;
    ensure!(page.script(lang, vec![]).await? == json!("en-US"));
    page.reload().await?;
    page.find(Role::Heading, containing("Pull")).await?;
    page.is_quiet().await
}

#[tokio::test]
async fn a_language_whose_words_cannot_be_had_is_said_and_nothing_changes() -> Result<()> {
    // A copy without a worker, which would have them.
    let bench = Bench::open(Setting {
        folder: Folder::LongWords,
        ..Setting::default()
    })
    .await?;
    let words = bench.folder().join("words");
    for entry in std::fs::read_dir(words)? {
        let path = entry?.path();
        if path.to_string_lossy().contains("es-US") {
            std::fs::remove_file(path)?;
        }
    }
    let page = bench.page();
    page.go("#/settings").await?;
    let choose = "
        const choice = document.querySelector('#shop-language');
        choice.value = 'es-US';
        choice.dispatchEvent(new Event('change', { bubbles: true }));
    ";
    page.script(choose, vec![]).await?;
    page.find(Role::Alert, containing("")).await?;
    let shown = "return [document.querySelector('#shop-language').value,
        document.documentElement.lang, localStorage.getItem('coldseat/language')]";
    let shown = page.script(shown, vec![]).await?;
    ensure!(shown == json!(["en-US", "en-US", null]), "{shown}");
    Ok(())
}
