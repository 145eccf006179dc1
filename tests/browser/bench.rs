//! Server, driver and browser together.

use std::path::{Path, PathBuf};

use anyhow::{Context, Result, anyhow, ensure};
use serde_json::json;
use tempfile::TempDir;
use url::Url;

use crate::driver::Driver;
use crate::engine::Engine;
use crate::long_words;
use crate::page::Page;
use crate::server::PageServer;

/// The size of the screen in CSS pixels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Size {
    /// A phone held upright, 360 wide.
    Phone,
    /// A tablet held upright, 820 wide.
    Tablet,
    /// A laptop, 1280 wide.
    Laptop,
    /// Another size.
    Other(u32, u32),
}

impl Size {
    fn pixels(self) -> (u32, u32) {
        match self {
            Self::Phone => (360, 780),
            Self::Tablet => (820, 1180),
            Self::Laptop => (1280, 800),
            Self::Other(width, height) => (width, height),
        }
    }
}

/// What the person's device asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Theme {
    /// Dark on light.
    Light,
    /// Light on dark.
    Dark,
}

/// Which page is served.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Folder {
    /// The finished page itself.
    Dist,
    /// A copy of it that the test may change.
    Copy,
    /// A copy whose English is written two fifths longer.
    LongWords,
    /// The page as one file, opened from the disk with no server at all.
    OneFile,
}

/// How often the browser paints.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Frames {
    /// As a screen asks: sixty times a second.
    Screen,
    /// As often as it can, for measuring.
    Unbounded,
}

/// How a bench is set up.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Setting {
    /// The size of the screen.
    pub size: Size,
    /// Light or dark.
    pub theme: Theme,
    /// The page that is served.
    pub folder: Folder,
    /// How often it paints.
    pub frames: Frames,
}

impl Default for Setting {
    /// A phone in the light, the page as it is; as one file where
    /// `COLDSEAT_FORM` says so, so that a test of the one is a test of the other.
    fn default() -> Self {
        Self {
            size: Size::Phone,
            theme: Theme::Light,
            folder: match std::env::var("COLDSEAT_FORM").as_deref() {
                Ok("one-file") => Folder::OneFile,
                _ => Folder::Dist,
            },
            frames: Frames::Screen,
        }
    }
}

/// A server, a browser and the page in it.
#[derive(Debug)]
pub struct Bench {
    /// The page's server.
    pub server: PageServer,
    page: Option<Page>,
    driver: Driver,
    engine: Engine,
    setting: Setting,
    profile: TempDir,
    copy: Option<TempDir>,
}

impl Bench {
    /// Starts everything and opens the page.
    pub async fn open(setting: Setting) -> Result<Self> {
        Self::open_at(setting, "").await
    }

    /// As [`Bench::open`], at a place in the page such as `#/cold-drop`.
    pub async fn open_at(setting: Setting, place: &str) -> Result<Self> {
        Self::open_in(Engine::Chromium, setting, place).await
    }

    /// As [`Bench::open_at`], in a browser of any family. Screen and theme can
    /// be set in Chromium only.
    pub async fn open_in(engine: Engine, setting: Setting, place: &str) -> Result<Self> {
        let dist = dist_folder()?;
        let (folder, copy) = match setting.folder {
            Folder::Dist => (dist, None),
            Folder::OneFile => {
                let folder = TempDir::new()?;
                xtask::one_file::write(&dist, folder.path())?;
                (dist, Some(folder))
            }
            Folder::Copy | Folder::LongWords => {
                let copy = TempDir::new()?;
                xtask::page::copy_folder(&dist, copy.path())?;
                if setting.folder == Folder::LongWords {
                    long_words::put_into(copy.path())?;
                }
                (copy.path().to_path_buf(), Some(copy))
            }
        };
        let mut bench = Self {
            server: PageServer::start(&folder)?,
            page: None,
            driver: Driver::start(engine)?,
            engine,
            setting,
            profile: TempDir::new()?,
            copy,
        };
        if setting.folder == Folder::OneFile {
            bench.server.kill()?;
        }
        bench.open_browser().await?;
        bench.page().go(place).await?;
        Ok(bench)
    }

    /// The page in the browser.
    ///
    /// # Panics
    /// When the browser is closed: a slip in the test, not in the page.
    #[expect(clippy::expect_used, reason = "a test's slip should stop it there")]
    pub fn page(&self) -> &Page {
        self.page.as_ref().expect("the browser is open")
    }

    /// Closes the browser as a person does.
    pub fn close_browser(&mut self) {
        self.page = None;
        self.driver.close();
    }

    /// Kills the browser, as a phone does whose battery falls out.
    pub fn kill_browser(&mut self) -> Result<()> {
        self.page = None;
        self.driver.kill_browser()
    }

    /// Opens the browser again, with all that it kept, on an empty tab.
    pub async fn open_browser(&mut self) -> Result<()> {
        self.page = None;
        let client = self
            .driver
            .open(self.profile.path(), self.setting.frames)
            .await?;
        let page = Page::new(client, self.engine, self.address()?);
        if self.engine != Engine::Chromium {
            self.page = Some(page);
            return Ok(());
        }
        let (width, height) = self.setting.size.pixels();
        page.devtools(
            "Emulation.setDeviceMetricsOverride",
            json!({
                "width": width,
                "height": height,
                "deviceScaleFactor": 1,
                "mobile": self.setting.size != Size::Laptop,
            }),
        )
        .await?;
        self.page = Some(page);
        self.set_theme(self.setting.theme).await
    }

    /// Changes what the device asks for.
    pub async fn set_theme(&mut self, theme: Theme) -> Result<()> {
        self.setting.theme = theme;
        let value = match theme {
            Theme::Light => "light",
            Theme::Dark => "dark",
        };
        self.page()
            .devtools(
                "Emulation.setEmulatedMedia",
                json!({ "features": [{ "name": "prefers-color-scheme", "value": value }] }),
            )
            .await?;
        Ok(())
    }

    /// Writes the worker of a changed copy anew, as a build would.
    pub fn release_change(&self) -> Result<String> {
        ensure!(
            self.setting.folder == Folder::Copy,
            "only a copy may be changed: Setting {{ folder: Folder::Copy, .. }}"
        );
        let template = xtask::layout::checkout().join("src/page/shell/sw.js");
        let template = std::fs::read_to_string(template)?;
        Ok(xtask::precache::write_worker(self.folder(), &template)?)
    }

    /// The page's address.
    fn address(&self) -> Result<String> {
        match &self.copy {
            Some(folder) if self.setting.folder == Folder::OneFile => {
                let path = folder.path().join(xtask::one_file::NAME);
                let address = Url::from_file_path(&path);
                let address = address.map_err(|()| anyhow!("{} is no address", path.display()))?;
                Ok(address.into())
            }
            _ => Ok(self.server.address()),
        }
    }

    /// The folder that is served.
    pub fn folder(&self) -> &Path {
        self.server.folder()
    }
}

/// A browser at a host of the test's own, such as [`crate::Host`].
#[derive(Debug)]
pub struct Visitor {
    page: Page,
    driver: Driver,
    profile: TempDir,
    address: String,
    engine: Engine,
    frames: Frames,
}

impl Visitor {
    /// Opens a browser and the page at an address in it.
    pub async fn at(engine: Engine, address: String) -> Result<Self> {
        Self::painting(engine, address, Frames::Screen).await
    }

    /// As [`Visitor::at`], painting so often.
    pub async fn painting(engine: Engine, address: String, frames: Frames) -> Result<Self> {
        let mut driver = Driver::start(engine)?;
        let profile = TempDir::new()?;
        let client = driver.open(profile.path(), frames).await?;
        let page = Page::new(client, engine, address.clone());
        page.go("").await?;
        Ok(Self {
            page,
            driver,
            profile,
            address,
            engine,
            frames,
        })
    }

    /// The page.
    pub fn page(&self) -> &Page {
        &self.page
    }

    /// Closes the browser as a person does, and opens it again at the page. Of
    /// WebKit, which would keep nothing, only the tab.
    pub async fn come_again(&mut self) -> Result<()> {
        if self.engine == Engine::WebKit {
            self.page.leave_for_an_empty_tab().await?;
            return self.page.go("").await;
        }
        let profile = self.profile.path();
        let client = self.driver.open(profile, self.frames).await?;
        self.page = Page::new(client, self.engine, self.address.clone());
        self.page.go("").await
    }
}

/// The finished page, as named by `cargo xtask test` or in its usual place.
pub fn dist_folder() -> Result<PathBuf> {
    let folder =
        std::env::var_os("COLDSEAT_DIST").map_or_else(xtask::layout::dist_folder, PathBuf::from);
    ensure!(
        folder.join("index.html").is_file(),
        "no finished page in {}; run `cargo xtask build`",
        folder.display()
    );
    folder
        .canonicalize()
        .with_context(|| format!("{}", folder.display()))
}
