//! A bench for trying the finished page in a real browser.
//!
//! [`Bench`] starts three programs of its own: the server of `cargo xtask
//! serve` on a free port, a driver on a free port, and a browser with an empty
//! profile: Chromium unless another [`Engine`] is asked for. [`Page`] finds things as a person or a screen reader does,
//! by role and accessible name, and waits for them; markup and class names are
//! none of a test's business. Killing the server is killing a process, so that
//! "offline" is a refused connection and no emulation.
//!
//! Everything is ended when the bench is dropped, after a failure too.
//!
//! ```no_run
//! # async fn example() -> anyhow::Result<()> {
//! use coldseat_browser_tests::{Bench, Role, Setting};
//!
//! let mut bench = Bench::open(Setting::default()).await?;
//! bench.page().tap(Role::Link, "Cold drop").await?;
//! bench.page().write("Sleeve OD", "4.2600").await?;
//! bench.page().picture("cold-drop").await?;
//! bench.server.kill()?;
//! bench.page().reload().await?;
//! # Ok(())
//! # }
//! ```

mod bench;
mod devtools;
mod driver;
mod engine;
mod finger;
mod host;
mod jobs;
mod key;
mod long_words;
mod page;
mod part;
mod places;
mod proxy;
mod role;
mod server;

pub use bench::{Bench, Folder, Frames, Setting, Size, Theme, Visitor, dist_folder};
pub use engine::Engine;
pub use host::{Fault, Host, file_of_page, read_request};
pub use jobs::job_slot;
pub use key::{Key, PAD_PRESSES, REST, SELECT_ALL};
pub use page::Page;
pub use part::Part;
pub use places::places;
pub use proxy::Proxy;
pub use role::{Name, Role, containing};
pub use server::PageServer;

/// Runs what measures, for a bench's `main`: its error is told, not thrown.
pub fn measured(measuring: impl Future<Output = anyhow::Result<()>>) -> std::process::ExitCode {
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build();
    let done = match runtime {
        Ok(runtime) => runtime.block_on(measuring),
        Err(error) => Err(error.into()),
    };
    match done {
        Ok(()) => std::process::ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error:#}");
            std::process::ExitCode::FAILURE
        }
    }
}
