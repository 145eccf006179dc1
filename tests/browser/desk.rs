//! What several tests do at the page: open the demo, wait until it is kept, look
//! into the second store, take what is handed over as a file.

use anyhow::{Context, Result};
use coldseat_browser_tests::{Page, Role, containing};
use serde_json::{Value, json};

/// A reading of the demo that is typed into.
pub(crate) const READING: &str = "Counterbore depth: 12 o'clock";

/// Opens the inch demo; returns its key.
pub(crate) async fn demo(page: &Page) -> Result<String> {
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 3")).await?;
    let address = page.script("return location.hash", vec![]).await?;
    let address = address.as_str().unwrap_or_default();
    let id = address.split('/').nth(2).context("the job's key")?;
    Ok(id.to_owned())
}

/// The step at which [`READING`] stands.
pub(crate) fn at_reading(id: &str) -> String {
    format!("#/job/{id}/cylinder/1/counterbore")
}

/// Waits until the page says one of these of what it keeps.
pub(crate) async fn keeping(page: &Page, words: &[&str]) -> Result<()> {
    page.until(&words.join(" or "), async || {
        let script = "return document.querySelector('.keeping').innerText";
        let now = page.script(script, vec![]).await?;
        Ok(words
            .contains(&now.as_str().unwrap_or_default())
            .then_some(()))
    })
    .await
}

pub(crate) async fn saved(page: &Page) -> Result<()> {
    keeping(page, &["saved"]).await
}

/// Runs `body` with `slots` and `heads` of the second store at hand.
pub(crate) async fn durable(page: &Page, body: &str) -> Result<Value> {
    page.script_awaiting(&format!(
        "const answer = (request) => new Promise((yes, no) => {{
            request.onsuccess = () => yes(request.result);
            request.onerror = () => no(request.error);
        }});
        const base = await answer(indexedDB.open('coldseat', 1));
        const change = base.transaction(['heads', 'slots'], 'readwrite');
        const [heads, slots] = ['heads', 'slots'].map((name) => change.objectStore(name));
        const found = await (async () => {{ {body} }})();
        await new Promise((yes) => {{ change.oncomplete = yes; change.commit?.(); }});
        base.close();
        return found;"
    ))
    .await
}

/// Keeps what the page saves as files, for the test to look into.
pub(crate) async fn keep_files(page: &Page) -> Result<()> {
    let script = "window.handed = [];
        const make = URL.createObjectURL;
        URL.createObjectURL = (blob) => { window.handed.push(blob); return make(blob); };
        HTMLAnchorElement.prototype.click = function () { window.named = this.download; };";
    page.script(script, vec![]).await?;
    Ok(())
}

/// The next file that was saved: its name and its content.
pub(crate) async fn file(page: &Page) -> Result<(String, String)> {
    page.until("a file", async || {
        let there = page
            .script("return window.handed.length > 0", vec![])
            .await?;
        Ok((there == json!(true)).then_some(()))
    })
    .await?;
    let text = page
        .script_awaiting("return await window.handed.shift().text()")
        .await?;
    let name = page.script("return window.named", vec![]).await?;
    let own = |v: Value| v.as_str().unwrap_or_default().to_owned();
    Ok((own(name), own(text)))
}
