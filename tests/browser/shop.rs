//! A shop of eight devices and 2,000 jobs, for `cargo xtask bench`: how long a
//! browser takes to join its folder and how the keys answer meanwhile, how soon a
//! reading is on another device, on a fast line and a slow one, and the bytes of an
//! idle look. Prints `bench`, name and microseconds; asserts nothing about time.
//!
//! The folder lies on Apache, behind a host of the bench that counts and can be slow.
//! Seven devices have written into it; the first of them is a browser here.

use std::collections::BTreeMap;
use std::net::TcpListener;
use std::os::unix::fs::PermissionsExt as _;
use std::path::Path;
use std::process::ExitCode;
use std::time::{Duration, Instant};

use anyhow::{Context, Result, bail, ensure};
use coldseat_browser_tests::{
    Engine, Frames, PAD_PRESSES, Page, Proxy, Role, Visitor, containing, dist_folder, job_slot,
    measured,
};
use coldseat_core::document::slot::read_slot;
use coldseat_core::storage::folder::index::Index;
use coldseat_core::storage::folder::names::{file, index_file, short, version_of};
use fastrand::Rng;
use serde_json::{Value, json};
use tempfile::TempDir;
use xtask::server::Reach;
use xtask::shop::{Kind, ShopServer};

/// Jobs in the folder, and those that its first device has named.
const JOBS: usize = 2000;
const HELD: usize = 1400;
/// Devices that have written.
const DEVICES: usize = 7;
/// Jobs handed to the browser at a time.
const BATCH: usize = 100;
/// Key presses between two looks at how far it is.
const PRESSES: usize = 20;
/// Presses while a folder is joined, and once it is.
const TYPED: usize = 300;
/// Readings that are carried over.
const READINGS: usize = 15;
/// Longer is not waited.
const PATIENCE: Duration = Duration::from_secs(600);
/// The slow line: milliseconds each way, bytes a second for all together.
const SLOW: (u32, u32) = (150, 50_000);
/// The field that is typed on one device and waited for on the other.
const READING: &str = "Counterbore depth: 6 o'clock";

/// Jobs of a device in either store, and what the quiet line says.
const STANDING: &str = "
    const ids = new Set(Object.keys(localStorage)
        .filter((key) => key.startsWith('coldseat/job/')).map((key) => key.split('/')[2]));
    const heads = await new Promise((yes) => {
        const open = indexedDB.open('coldseat', 1);
        open.onsuccess = () => {
            const keys = open.result.transaction('heads').objectStore('heads').getAllKeys();
            keys.onsuccess = () => { open.result.close(); yes(keys.result); };
        };
    });
    for (const name of heads) {
        if (String(name).startsWith('coldseat/job/')) ids.add(name.split('/')[2]);
    }
    const line = document.querySelector('.keeping').innerText;
    const standing = [ids.size, line];
";

fn tell(name: &str, ms: f64) {
    println!("bench\t{name}\t{:.0}", 1e3 * ms);
}

/// The time below which this share of the times lies.
fn quantile(times: &mut [f64], share: f64) -> f64 {
    times.sort_by(f64::total_cmp);
    let at = ((times.len() as f64 * share).ceil() as usize).clamp(1, times.len());
    times[at - 1]
}

fn numbers(value: &Value) -> Vec<f64> {
    let all = value.as_array().into_iter().flatten();
    all.filter_map(Value::as_f64).collect()
}

/// Writes the folder as seven devices have left it; what the first of them keeps in
/// its own store.
fn write_folder(root: &Path) -> Result<Vec<(String, String)>> {
    let mut indexes: Vec<Index> = (0..DEVICES)
        .map(|device| Index {
            key: format!("{:012x}", 0xa0_0000 + device),
            name: format!("Device {device}"),
            writer: 70_000 + u32::try_from(device).unwrap_or(0),
            number: 1,
            at: 1_750_000_000_000,
            ..Index::default()
        })
        .collect();
    let shop = root.join("shop");
    for index in &indexes {
        std::fs::create_dir_all(shop.join(&index.key))?;
    }
    let mut held = Vec::new();
    for number in 0..JOBS {
        let (key, slot) = job_slot(number);
        let name = key.strip_suffix("/a").context("a slot's key")?;
        let text = read_slot(&slot).context("a slot")?.text;
        let short = short(name).context("a job's name")?;
        let version = version_of(&text);
        let device = match number < HELD {
            true => 0,
            false => 1 + number % (DEVICES - 1),
        };
        let index = &mut indexes[device];
        std::fs::write(shop.join(&index.key).join(file(&short, version)), &slot)?;
        index.files.insert(short, version);
        if device == 0 {
            held.push((key, slot));
        }
    }
    for index in &indexes {
        std::fs::write(shop.join(index_file(&index.key)), index.text())?;
    }
    let own = format!("{}\n{}\n1\n", indexes[0].key, indexes[0].name);
    held.push(("coldseat/folder".to_owned(), own));
    Ok(held)
}

async fn standing(page: &Page) -> Result<(usize, String)> {
    let told = page
        .script_awaiting(&format!("{STANDING} return standing;"))
        .await?;
    read_standing(&told)
}

fn read_standing(told: &Value) -> Result<(usize, String)> {
    let jobs = told[0].as_u64().context("a number of jobs")?;
    let line = told[1].as_str().context("a line")?;
    Ok((usize::try_from(jobs)?, line.to_owned()))
}

fn has_all((jobs, line): &(usize, String), wanted: usize) -> bool {
    *jobs >= wanted && line.contains("in the shop's folder")
}

/// Waits until a device has all jobs and says that it is in the folder.
async fn has(page: &Page, wanted: usize) -> Result<()> {
    let begun = Instant::now();
    loop {
        let now = standing(page).await?;
        if has_all(&now, wanted) {
            return Ok(());
        }
        ensure!(begun.elapsed() < PATIENCE, "{now:?} of {wanted}");
        tokio::time::sleep(Duration::from_millis(500)).await;
    }
}

async fn phone(page: &Page) -> Result<()> {
    let size = json!({ "width": 360, "height": 780, "deviceScaleFactor": 1, "mobile": true });
    page.devtools("Emulation.setDeviceMetricsOverride", size)
        .await?;
    Ok(())
}

/// The device that holds most: with 1,400 jobs of its own it finds the others'.
async fn first_device(page: &Page, held: &[(String, String)]) -> Result<()> {
    for batch in held.chunks(BATCH) {
        let script = "for (const [key, value] of arguments[0]) localStorage[key] = value";
        page.script(script, vec![json!(batch)]).await?;
    }
    let begun = Instant::now();
    page.reload().await?;
    has(page, JOBS).await?;
    let ms = 1e3 * begun.elapsed().as_secs_f64();
    let name = format!("{} of {JOBS} jobs out of the shop's folder", JOBS - HELD);
    tell(&name, ms);
    Ok(())
}

/// Opens the demo, so that there is a job to type in, and joins.
async fn joins(page: &Page, name: &str) -> Result<(String, Instant)> {
    page.tap(Role::Button, containing("Demo 1")).await?;
    page.find(Role::Link, containing("Cylinder 5")).await?;
    let job = page.job().await?;
    page.go("#/settings").await?;
    page.write("Name of this device", name).await?;
    let begun = Instant::now();
    page.tap(Role::Button, "Join").await?;
    Ok((job, begun))
}

/// A browser with one job joins, and nobody touches it.
async fn joins_untouched(page: &Page) -> Result<String> {
    let (job, begun) = joins(page, "Bench phone").await?;
    has(page, JOBS + 1).await?;
    let ms = 1e3 * begun.elapsed().as_secs_f64();
    tell(&format!("shop's folder of {JOBS} jobs joined"), ms);
    page.go("#/").await?;
    page.find(Role::Link, containing(&format!("Block {}", JOBS - 1)))
        .await?;
    Ok(job)
}

/// Presses keys, and says how many jobs the browser has at the end.
async fn presses(page: &Page, count: usize) -> Result<(Vec<f64>, usize)> {
    let mut times = Vec::new();
    let mut jobs = 0;
    for _ in 0..count / PRESSES {
        let part = format!(
            "const count = {PRESSES}; {PAD_PRESSES} {STANDING} return {{ times, standing }};"
        );
        let told = page.script_awaiting(&part).await?;
        times.extend(numbers(&told["times"]));
        jobs = read_standing(&told["standing"])?.0;
    }
    ensure!(times.len() == count, "{} of {count}", times.len());
    Ok((times, jobs))
}

/// A browser joins while somebody types in a job of it; then the hand rests.
async fn joins_under_the_hand(page: &Page) -> Result<()> {
    phone(page).await?;
    let (job, begun) = joins(page, "Office laptop").await?;
    let sleeve = format!("{job}/cylinder/2/sleeve");
    for (name, is_while) in [
        ("key to paint while a folder is joined", true),
        ("key to paint, joined, all quiet", false),
    ] {
        page.go(&sleeve).await?;
        page.tap(Role::TextBox, containing("top, across")).await?;
        let (mut times, jobs) = presses(page, TYPED).await?;
        tell(&format!("{name}, median"), quantile(&mut times, 0.5));
        tell(&format!("{name}, p95"), quantile(&mut times, 0.95));
        tell(&format!("{name}, slowest"), quantile(&mut times, 1.0));
        let seconds = begun.elapsed().as_secs_f64();
        println!("after {TYPED} presses, {seconds:.0} s: {jobs} jobs");
        ensure!(!is_while || jobs < JOBS, "the folder was joined before");
        page.go("#/").await?;
        has(page, JOBS + 2).await?;
    }
    Ok(())
}

/// Bytes of a look when nothing has changed, heads of both ways counted.
async fn idle(proxy: &Proxy) -> Result<()> {
    tokio::time::sleep(Duration::from_secs(6)).await;
    let _ = proxy.asked();
    tokio::time::sleep(Duration::from_secs(10)).await;
    let asked = proxy.asked();
    let mut all: BTreeMap<String, Vec<f64>> = BTreeMap::new();
    for line in &asked {
        let (what, bytes) = line.rsplit_once(' ').context("bytes")?;
        all.entry(what.to_owned()).or_default().push(bytes.parse()?);
    }
    let looks = all.remove("PROPFIND /shop/").context("nobody looks")?;
    ensure!(all.is_empty(), "not idle: {all:?}");
    let devices = DEVICES + 1;
    let bytes = looks.iter().sum::<f64>() / looks.len() as f64;
    println!(
        "an idle look of {devices} devices: {bytes:.0} bytes, {:.0} a device ({} looks in 10 s)",
        bytes / devices as f64,
        looks.len()
    );
    Ok(())
}

/// From the key on one device to the screen of the other, by the clock of the
/// machine that runs both.
async fn carried(one: &Page, other: &Page, rng: &mut Rng, count: usize) -> Result<Vec<f64>> {
    let mut times = Vec::new();
    for n in 0..count {
        let rest = rng.u64(0..2500);
        tokio::time::sleep(Duration::from_millis(rest)).await;
        let text = format!("0.2{:03}{}", 800 + n, rng.u32(1..10));
        let of_field = format!(
            "const field = () => [...document.querySelectorAll('input[data-place]')]
                .find((field) => field.labels[0]?.textContent.includes({}));",
            json!(READING)
        );
        // A driver waits half a minute for a script: it is asked again before.
        let waits = format!(
            "{of_field} const begun = Date.now();
            while (field()?.value !== '{text}') {{
                if (Date.now() - begun > 20_000) return null;
                await new Promise((done) => setTimeout(done, 5));
            }}
            return Date.now();"
        );
        let types = format!(
            "{of_field} const one = field(); one.focus(); one.value = '{text}';
            one.dispatchEvent(new Event('input', {{ bubbles: true }}));
            return Date.now();"
        );
        let begun = Instant::now();
        let shown = async {
            loop {
                let shown = other.script_awaiting(&waits).await?;
                if shown.is_number() {
                    return Ok(shown);
                }
                ensure!(begun.elapsed() < PATIENCE, "`{text}` did not come");
            }
        };
        let (shown, typed) = tokio::join!(shown, one.script_awaiting(&types));
        let (shown, typed) = (shown?.as_f64(), typed?.as_f64());
        times.push(shown.context("a time")? - typed.context("a time")?);
    }
    Ok(times)
}

async fn measure() -> Result<()> {
    if !Kind::Apache.is_there() {
        bail!("Apache is not on this machine: cargo xtask setup");
    }
    let root = TempDir::new()?;
    std::fs::set_permissions(root.path(), std::fs::Permissions::from_mode(0o755))?;
    let held = write_folder(root.path())?;
    let port = TcpListener::bind(("127.0.0.1", 0))?.local_addr()?.port();
    let _server = ShopServer::start(Kind::Apache, root.path(), port, Reach::Here)?;
    let proxy = Proxy::start(&dist_folder()?, 1)?;
    proxy.is_before(port);
    let one = Visitor::at(Engine::Chromium, proxy.address()).await?;
    first_device(one.page(), &held).await?;
    let other = Visitor::at(Engine::Chromium, proxy.address()).await?;
    let job = joins_untouched(other.page()).await?;
    idle(&proxy).await?;
    has(one.page(), JOBS + 1).await?;
    let mut rng = Rng::with_seed(20);
    for page in [one.page(), other.page()] {
        page.go(&format!("{job}/cylinder/1/counterbore")).await?;
        page.find(Role::TextBox, containing(READING)).await?;
    }
    for (words, (way, rate)) in [("", (0, 0)), (", slow line", SLOW)] {
        proxy.crawls(way, rate);
        let mut times = carried(one.page(), other.page(), &mut rng, READINGS).await?;
        let name = format!("reading to another device{words}");
        tell(&format!("{name}, median"), quantile(&mut times, 0.5));
        tell(&format!("{name}, worst"), quantile(&mut times, 1.0));
    }
    proxy.crawls(0, 0);
    let third = Visitor::painting(Engine::Chromium, proxy.address(), Frames::Unbounded).await?;
    joins_under_the_hand(third.page()).await
}

fn main() -> ExitCode {
    measured(measure())
}
