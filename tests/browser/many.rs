//! Many tabs, kills and files in the finished page. How many is told by
//! `COLDSEAT_BURSTS`, `COLDSEAT_KILLS` and `COLDSEAT_FILES`; fewer in the usual run.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Page, Role, Setting};
use serde_json::json;

use crate::desk::{READING, at_reading, file, keep_files};
use crate::saved::{GAUGE, OTHER, changed_elsewhere, demo, give, quiet, shows, type_into};

fn times(name: &str, usual: usize) -> Result<usize> {
    Ok(std::env::var(name).map_or(Ok(usual), |n| n.parse())?)
}

/// Two tabs in one program: a second one opened by the first, so that both are
/// at hand without a driver between them.
const TWO_TABS: &str = "
    const second = window.second ??= window.open(location.href);
    await new Promise((yes) => { const t = setInterval(() => {
        if (second.document?.querySelector('[data-place]')) { clearInterval(t); yes(); }
    }, 50); });
    const pause = (ms) => new Promise((yes) => setTimeout(yes, ms));
    const place = (tab, n) => tab.document.querySelectorAll('[data-place]')[n];
    const put = (tab, n, text) => {
        const input = place(tab, n);
        input.focus();
        input.value = text;
        input.dispatchEvent(new tab.Event('input', { bubbles: true }));
    };
    const undo = (tab) => [...tab.document.querySelectorAll('button')]
        .find((b) => b.innerText.trim() === 'Undo').click();
    const word = (tab) => tab.document.querySelector('.keeping').innerText;
    const rests = async () => {
        for (let i = 0; i < 200; i++) {
            await pause(25);
            const same = [0, 1].every((n) => place(window, n).value === place(second, n).value);
            if (same && word(window) === 'saved' && word(second) === 'saved') return true;
        }
        return false;
    };
    const disputed = () => [window, second]
        .some((tab) => tab.document.body.innerText.includes('Two values in one place'));";

/// So many rounds in one script: the driver waits half a minute for one.
const AT_ONCE: usize = 5;

/// Plays rounds of two tabs; `body` is one of them and puts what is wrong into
/// `wrong`.
async fn rounds(page: &Page, count: usize, body: &str) -> Result<()> {
    for from in (0..count).step_by(AT_ONCE) {
        let to = (from + AT_ONCE).min(count);
        let script = format!(
            "{TWO_TABS}
            const wrong = [];
            for (let round = {from}; round < {to}; round++) {{ {body} }}
            return wrong;"
        );
        let wrong = page.script_awaiting(&script).await?;
        ensure!(wrong == json!([]), "{wrong}");
    }
    page.script("window.second.close()", vec![]).await?;
    Ok(())
}

#[tokio::test]
async fn bursts_of_two_tabs_with_undo_lose_nothing() -> Result<()> {
    let count = times("COLDSEAT_BURSTS", 20)?;
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page).await?;
    // One types, the other types elsewhere and takes it back at once.
    let burst = "
        const mine = `0.3${String(round).padStart(3, '0')}`;
        const before = place(second, 1).value;
        put(window, 0, mine);
        await pause(round % 7 * 5);
        put(second, 1, '0.2999');
        await pause(round % 11 * 5);
        undo(second);
        if (!await rests()) wrong.push(`${round}: no rest, ${word(window)}, ${word(second)}`);
        for (const tab of [window, second]) {
            const [first, other] = [place(tab, 0).value, place(tab, 1).value];
            if (first !== mine) wrong.push(`${round}: ${first} for ${mine} in ${tab === second ? 2 : 1}`);
            if (other !== before) wrong.push(`${round}: back to ${other} for ${before}`);
        }
        if (disputed()) wrong.push(`${round}: a dispute`);";
    rounds(page, count, burst).await?;
    quiet(page).await
}

#[tokio::test]
async fn what_was_cleared_while_another_tab_writes_stays_cleared() -> Result<()> {
    let count = times("COLDSEAT_BURSTS", 20)? / 2;
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    demo(page).await?;
    let burst = "
        put(window, 0, '0.30');
        await rests();
        put(window, 0, '0.3055');
        await pause(round % 5 * 20);
        put(second, 1, `0.2${String(round).padStart(3, '0')}`);
        await pause(round % 3 * 15);
        put(window, 0, '');
        if (!await rests()) wrong.push(`${round}: no rest`);
        if (place(window, 0).value !== '') wrong.push(`${round}: ${place(window, 0).value} is back`);
        put(window, 0, '0.3066');
        if (!await rests()) wrong.push(`${round}: no rest`);
        if (place(second, 0).value !== '0.3066') wrong.push(`${round}: ${place(second, 0).value}`);
        if (disputed()) wrong.push(`${round}: a dispute`);";
    rounds(page, count, burst).await?;
    quiet(page).await
}

#[tokio::test]
async fn kills_lose_neither_job_nor_settings() -> Result<()> {
    let rounds = times("COLDSEAT_KILLS", 5)?;
    let mut bench = Bench::open(Setting::default()).await?;
    let id = demo(bench.page()).await?;
    for round in 0..rounds {
        let page = bench.page();
        let (reading, gauge) = (format!("0.3{round:03}"), format!("0.0{round:03}1"));
        page.go("#/settings").await?;
        type_into(page, GAUGE, &gauge).await?;
        page.go(&at_reading(&id)).await?;
        type_into(page, READING, &reading).await?;
        bench.kill_browser()?;
        bench.open_browser().await?;
        let page = bench.page();
        page.go(&at_reading(&id)).await?;
        shows(page, READING, &reading)
            .await
            .with_context(|| format!("round {round}"))?;
        page.go("#/settings").await?;
        shows(page, GAUGE, &gauge)
            .await
            .with_context(|| format!("round {round}"))?;
    }
    let text = bench.page().text().await?;
    ensure!(!text.contains("could not be read"), "something is torn");
    quiet(bench.page()).await
}

#[tokio::test]
async fn files_between_devices_lose_nothing_and_ask_only_what_is_to_be_asked() -> Result<()> {
    let rounds = times("COLDSEAT_FILES", 12)?;
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let id = demo(page).await?;
    keep_files(page).await?;
    for round in 0..rounds {
        page.go(&format!("#/job/{id}/record")).await?;
        page.tap(Role::Button, "Save to a file").await?;
        let (_, out) = file(page).await?;
        // Elsewhere the one place, here the other: nothing to ask.
        let theirs = format!("0.31{:02}", round % 100);
        let mine = format!("0.22{:02}", round % 100);
        page.go(&at_reading(&id)).await?;
        type_into(page, OTHER, &mine).await?;
        page.go("#/files").await?;
        let at = 1_800_000_000_000 + round as u64 * 1000;
        give(
            page,
            &changed_elsewhere(&out, &theirs, at, 9 + round as u32),
        )
        .await?;
        page.tap(Role::Button, "Take these changes").await?;
        page.go(&at_reading(&id)).await?;
        shows(page, READING, &theirs)
            .await
            .with_context(|| format!("round {round}"))?;
        shows(page, OTHER, &mine).await?;
        // The same file once more: nothing returns, nothing is asked.
        page.go("#/files").await?;
        give(page, &out).await?;
        page.says("nothing would change").await?;
        page.tap(Role::Button, "Leave all as it is").await?;
        quiet(page)
            .await
            .with_context(|| format!("round {round}"))?;
    }
    Ok(())
}
