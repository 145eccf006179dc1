//! A worker that comes late from a host that dies meanwhile: the page stands at
//! every load all the same, out of what is kept on the device.
//!
//! `COLDSEAT_LATE` says how many rounds, `COLDSEAT_SEED` from which seed.

use std::time::Duration;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Engine, Fault, Host, Role, Visitor, dist_folder};

/// Rounds in the check.
const ROUNDS: u64 = 2;

fn number(name: &str, usual: u64) -> Result<u64> {
    Ok(std::env::var(name).map_or(Ok(usual), |text| text.parse())?)
}

/// One visitor: kept at the first visit, then loaded again and again while its
/// worker is late, the host dying at any moment of that.
async fn round(engine: Engine, seed: u64) -> Result<()> {
    let mut rng = fastrand::Rng::with_seed(seed);
    let folder = dist_folder()?;
    let mut host = Host::start(&folder)?;
    let visitor = Visitor::at(engine, host.address()).await?;
    let page = visitor.page();
    page.is_kept_offline().await?;
    for load in 0..4 {
        let at = || format!("{engine:?}, seed {seed}, load {load}");
        let late = Duration::from_millis(rng.u64(50..3000));
        host.serve(&folder, &folder, Fault::Late("/sw.js".to_owned(), late));
        page.reload().await.with_context(at)?;
        // It is being looked for anew, or was just now, or is about to be.
        tokio::time::sleep(Duration::from_millis(rng.u64(0..1500))).await;
        host.kill();
        for _ in 0..2 {
            page.reload().await.with_context(at)?;
            page.find(Role::Heading, "Jobs on this device")
                .await
                .with_context(at)?;
        }
        let complaints = page.complaints().await?;
        ensure!(complaints.is_empty(), "{}: {complaints:?}", at());
        host.restart()?;
    }
    Ok(())
}

async fn rounds(engine: Engine) -> Result<()> {
    let seed = number("COLDSEAT_SEED", 1)?;
    for seed in seed..seed + number("COLDSEAT_LATE", ROUNDS)? {
        round(engine, seed).await?;
        println!("{engine:?}: seed {seed} stands");
    }
    Ok(())
}

mod chromium {
    use super::*;

    #[tokio::test]
    async fn a_late_worker_of_a_dying_host_leaves_the_page_standing() -> Result<()> {
        rounds(Engine::Chromium).await
    }
}

mod firefox {
    use super::*;

    #[tokio::test]
    async fn a_late_worker_of_a_dying_host_leaves_the_page_standing() -> Result<()> {
        rounds(Engine::Firefox).await
    }
}
