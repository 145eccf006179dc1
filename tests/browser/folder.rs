//! Browsers that share a shop's folder, against real servers: Apache's mod_dav, nginx
//! with its dav modules, rclone. Lines are cut, answers fail, the server ends and
//! begins again, a browser too; when it is quiet all show the same and nothing typed
//! is lost. How many edits is told by `COLDSEAT_SHOP_EDITS`, by which seed by
//! `COLDSEAT_SEED`; a few in the usual run.

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Engine, Page, Proxy, Role, Visitor, containing, dist_folder};
use fastrand::Rng;
use serde_json::json;
use tempfile::TempDir;
use xtask::server::Reach;
use xtask::shop::{Kind, ShopServer};

use crate::desk::{READING, at_reading};
use crate::saved::{OTHER, shows};

const NAMES: [&str; 3] = ["Surfacer tablet", "Bench phone", "Office laptop"];
/// Each types at its own place: what is lost or comes back is seen at once.
const PLACES: [&str; 3] = [READING, OTHER, "Counterbore depth: 3 o'clock"];
/// In so many edits the server ends once and a page is loaded anew once.
const BETWEEN: u64 = 120;

/// Three browsers, each with its driver. Beside other checks two do before the second
/// and the third server: they wait for frames, and with more of them some starve.
fn devices(kind: Kind) -> usize {
    let is_asked = std::env::var_os("COLDSEAT_SHOP_EDITS").is_some();
    if is_asked || kind == Kind::Apache {
        NAMES.len()
    } else {
        2
    }
}

fn number(name: &str, usual: u64) -> Result<u64> {
    Ok(std::env::var(name).map_or(Ok(usual), |n| n.parse())?)
}

/// A port that is free now.
fn free_port() -> Result<u16> {
    let listener = std::net::TcpListener::bind(("127.0.0.1", 0))?;
    Ok(listener.local_addr()?.port())
}

async fn line(page: &Page) -> Result<String> {
    let script = "return document.querySelector('.keeping').innerText";
    let said = page.script(script, vec![]).await?;
    Ok(said.as_str().unwrap_or_default().to_owned())
}

/// Waits until the quiet line says this.
async fn says(page: &Page, words: &str) -> Result<()> {
    let wanted = format!("the line to say `{words}`");
    let found = page
        .until(&wanted, async || {
            Ok(line(page).await?.contains(words).then_some(()))
        })
        .await;
    match found {
        Ok(()) => Ok(()),
        Err(error) => Err(error.context(line(page).await?)),
    }
}

async fn join(page: &Page, name: &str) -> Result<()> {
    page.go("#/settings").await?;
    page.write("Name of this device", name).await?;
    page.tap(Role::Button, "Join").await?;
    says(page, "in the shop's folder").await
}

/// Types as a hand does, without waiting for anything.
async fn put(page: &Page, label: &str, text: &str) -> Result<()> {
    page.write(containing(label), text).await
}

async fn share(kind: Kind) -> Result<()> {
    if !kind.is_there() {
        anyhow::bail!("{kind:?} is not on this machine: cargo xtask setup");
    }
    let seed = number("COLDSEAT_SEED", 20)?;
    let edits = number("COLDSEAT_SHOP_EDITS", 16)?;
    let root = TempDir::new()?;
    std::fs::set_permissions(
        root.path(),
        std::os::unix::fs::PermissionsExt::from_mode(0o755),
    )?;
    let port = free_port()?;
    let mut server = Some(ShopServer::start(kind, root.path(), port, Reach::Here)?);
    let proxy = Proxy::start(&dist_folder()?, seed)?;
    proxy.is_before(port);
    let mut visitors = Vec::new();
    for _ in 0..devices(kind) {
        visitors.push(Visitor::at(Engine::Chromium, proxy.address()).await?);
    }
    let id = crate::desk::demo(visitors[0].page()).await?;
    ensure!(proxy.asked().is_empty(), "asked without having joined");
    for (visitor, name) in visitors.iter().zip(NAMES) {
        join(visitor.page(), name).await?;
    }
    // The job of the one is in the list of the others, and said to be new.
    for other in &visitors[1..] {
        other.page().go("#/").await?;
        other.page().says("New from another device").await?;
    }
    for visitor in &visitors {
        visitor.page().go(&at_reading(&id)).await?;
    }
    let mut rng = Rng::with_seed(seed);
    let mut typed: [Vec<String>; 3] = Default::default();
    let between = edits.min(BETWEEN);
    proxy.fails(25);
    for edit in 0..edits {
        let which = rng.usize(0..visitors.len());
        // Near to what stands there: what is asked about says nothing else.
        let text = format!("0.2{:04}", 800 + edit % 150);
        put(visitors[which].page(), PLACES[which], &text).await?;
        typed[which].push(text);
        if edit % between == between / 3 {
            // The server ends while things are under way, and begins again.
            drop(server.take());
            says(visitors[0].page(), "folder not reached since").await?;
            server = Some(ShopServer::start(kind, root.path(), port, Reach::Here)?);
        }
        if edit % between == between / 2 {
            let which = rng.usize(1..visitors.len());
            visitors[which].page().reload().await?;
        }
        let rest = rng.u64(0..300);
        tokio::time::sleep(std::time::Duration::from_millis(rest)).await;
    }
    proxy.fails(0);
    all_have(&visitors, &typed)
        .await
        .with_context(|| format!("after {edits} edits; {kind:?}"))?;
    let page = visitors[0].page();
    for visitor in &visitors {
        says(visitor.page(), "in the shop's folder").await?;
        let text = visitor.page().text().await?;
        ensure!(!text.contains("Two values in one place"), "a false dispute");
    }
    if !typed[1].is_empty() {
        page.says("Entered on Bench phone").await?;
    }
    for (visitor, name) in visitors.iter().zip(["one", "other", "third"]) {
        visitor
            .page()
            .picture(&format!("shop-{kind:?}-{name}"))
            .await?;
    }
    one_is_offline(&proxy, &visitors, port).await?;
    idle(&proxy, visitors.len()).await?;
    drop(server);
    Ok(())
}

/// All show what each typed last. What one of them typed earlier has come back;
/// anything else is lost.
async fn all_have(visitors: &[Visitor], typed: &[Vec<String>]) -> Result<()> {
    let (mut lost, mut returned) = (Vec::new(), Vec::new());
    for (which, typed) in typed.iter().enumerate() {
        let Some(last) = typed.last() else { continue };
        for (reader, visitor) in visitors.iter().enumerate() {
            let page = visitor.page();
            if shows(page, PLACES[which], last).await.is_ok() {
                continue;
            }
            let there = page.value(containing(PLACES[which])).await?;
            let what = format!("{there} for {last} of {which} on {reader}");
            let list = match typed.contains(&there) {
                true => &mut returned,
                false => &mut lost,
            };
            list.push(what);
        }
    }
    let edits: usize = typed.iter().map(Vec::len).sum();
    let (devices, count) = (visitors.len(), (lost.len(), returned.len()));
    eprintln!(
        "{edits} edits, {devices} devices: {} lost, {} came back",
        count.0, count.1
    );
    ensure!(count == (0, 0), "lost {lost:?}, came back {returned:?}");
    Ok(())
}

/// A device without a line types on, and says so; then all have it.
async fn one_is_offline(proxy: &Proxy, visitors: &[Visitor], port: u16) -> Result<()> {
    let one = visitors[0].page();
    proxy.is_before(1);
    put(one, PLACES[0], "0.20999").await?;
    says(one, "folder not reached since").await?;
    one.picture("shop-offline").await?;
    proxy.is_before(port);
    for other in &visitors[1..] {
        shows(other.page(), PLACES[0], "0.20999").await?;
    }
    says(one, "in the shop's folder").await
}

/// An idle look costs no more than 2 kB a device.
async fn idle(proxy: &Proxy, devices: usize) -> Result<()> {
    // What was under way comes to its end.
    tokio::time::sleep(std::time::Duration::from_secs(6)).await;
    let _ = proxy.asked();
    tokio::time::sleep(std::time::Duration::from_secs(6)).await;
    let asked = proxy.asked();
    ensure!(!asked.is_empty(), "nobody looks");
    for line in &asked {
        let bytes: usize = line.rsplit(' ').next().context("bytes")?.parse()?;
        let most = 2_000 * devices;
        ensure!(line.starts_with("PROPFIND") && bytes <= most, "{line}");
    }
    eprintln!("an idle look: {}", asked[0]);
    Ok(())
}

#[tokio::test]
async fn devices_share_a_folder_of_apache() -> Result<()> {
    share(Kind::Apache).await
}

#[tokio::test]
async fn devices_share_a_folder_of_nginx() -> Result<()> {
    share(Kind::Nginx).await
}

#[tokio::test]
async fn devices_share_a_folder_of_rclone() -> Result<()> {
    share(Kind::Rclone).await
}

#[tokio::test]
async fn a_page_without_a_folder_makes_no_request_for_one() -> Result<()> {
    let proxy = Proxy::start(&dist_folder()?, 1)?;
    let visitor = Visitor::at(Engine::Chromium, proxy.address()).await?;
    let page = visitor.page();
    let id = crate::desk::demo(page).await?;
    page.go(&at_reading(&id)).await?;
    put(page, READING, "0.3123").await?;
    for place in ["#/settings", "#/files", "#/"] {
        page.go(place).await?;
    }
    tokio::time::sleep(std::time::Duration::from_secs(3)).await;
    ensure!(proxy.asked().is_empty(), "the folder was asked for");
    let kept = page
        .script(
            "return Object.keys(localStorage).filter((k) => k.includes('folder'))",
            vec![],
        )
        .await?;
    ensure!(kept == json!([]), "{kept}");
    Ok(())
}
