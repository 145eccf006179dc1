//! The families of browsers, and how the driver of each is begun and told.

use std::io::{BufRead, BufReader};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use anyhow::{Context, Result, bail};
use serde_json::{Map, Value, json};
use xtask::layout::on_path;
use xtask::setup::Browser;

use crate::bench::Frames;

/// How long a driver may take to answer for the first time.
const PATIENCE: Duration = Duration::from_secs(20);

/// A family of browsers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Engine {
    /// Chromium: most phones and laptops.
    Chromium,
    /// Firefox.
    Firefox,
    /// WebKit, here WebKitGTK: every browser of an iPhone is made of it. It
    /// keeps nothing when it is closed.
    WebKit,
}

impl Engine {
    /// The variable that names the driver, and its usual name.
    fn driver(self) -> (&'static str, &'static str) {
        match self {
            Self::Chromium => ("CHROMEDRIVER", "chromedriver"),
            Self::Firefox => ("GECKODRIVER", "geckodriver"),
            Self::WebKit => ("COLDSEAT_WEBKITDRIVER", "WebKitWebDriver"),
        }
    }

    /// Starts the driver on a free port; what it draws on goes with it.
    pub(crate) fn start_driver(self) -> Result<(Child, u16, Option<Screen>)> {
        let (variable, name) = self.driver();
        let program = std::env::var_os(variable)
            .map(PathBuf::from)
            .or_else(|| on_path(name))
            .with_context(|| {
                format!("no {name} for {self:?} on this machine; see `cargo xtask setup`")
            })?;
        let mut command = Command::new(&program);
        command.stdin(Stdio::null()).stderr(Stdio::null());
        let started = format!("starting {}", program.display());
        if self == Self::WebKit {
            // It cannot choose a port itself, so one is found that is free.
            let free = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?;
            let port = free.local_addr()?.port();
            drop(free);
            let screen = Screen::start()?;
            command
                .arg(format!("--port={port}"))
                .env("DISPLAY", &screen.name)
                // No graphics processor behind that screen.
                .env("LIBGL_ALWAYS_SOFTWARE", "1");
            let process = command.stdout(Stdio::null()).spawn().context(started)?;
            let begun = Instant::now();
            while TcpStream::connect((Ipv4Addr::LOCALHOST, port)).is_err() {
                if begun.elapsed() > PATIENCE {
                    bail!("{} does not answer", program.display());
                }
                std::thread::sleep(Duration::from_millis(20));
            }
            return Ok((process, port, Some(screen)));
        }
        let mut process = command
            .arg("--port=0")
            .stdout(Stdio::piped())
            .spawn()
            .context(started)?;
        let output = process.stdout.take().context("the driver's output")?;
        let mut lines = BufReader::new(output).lines();
        let port = lines.by_ref().map_while(Result::ok).find_map(|line| {
            let told = ["started successfully on port ", "Listening on 127.0.0.1:"];
            let (_, rest) = told.iter().find_map(|words| line.split_once(words))?;
            rest.trim_end_matches('.').parse().ok()
        });
        // A pipe that nobody reads would stop it one day.
        std::thread::spawn(move || lines.map_while(Result::ok).for_each(drop));
        match port {
            Some(port) => Ok((process, port, None)),
            None => {
                process.kill()?;
                process.wait()?;
                bail!("{} did not start", program.display())
            }
        }
    }

    /// What the driver is asked for: a browser on a profile folder.
    pub(crate) fn wishes(self, profile: &Path, frames: Frames) -> Map<String, Value> {
        let named = |variable: &str| std::env::var_os(variable).map(PathBuf::from);
        // Left open: a test that meets a dialog should say so.
        let mut wishes = Map::new();
        wishes.insert("unhandledPromptBehavior".to_owned(), json!("ignore"));
        let (key, mut options, browser) = match self {
            Self::Chromium => {
                let mut arguments: Vec<String> = Browser::arguments()
                    .into_iter()
                    .map(str::to_owned)
                    .collect();
                if frames == Frames::Unbounded {
                    arguments.push("--disable-frame-rate-limit".to_owned());
                    arguments.push("--disable-gpu-vsync".to_owned());
                }
                arguments.push(format!("--user-data-dir={}", profile.display()));
                wishes.insert("goog:loggingPrefs".to_owned(), json!({ "browser": "ALL" }));
                let options = json!({ "args": arguments });
                ("goog:chromeOptions", options, named("COLDSEAT_BROWSER"))
            }
            Self::Firefox => {
                let options = json!({
                    "args": ["-headless", "-profile", profile],
                    "prefs": {
                        // Off in the version of long support, on in today's.
                        "dom.security.trusted_types.enabled": true,
                        // Looks for a new worker at once, not a second later.
                        "dom.serviceWorkers.update_delay": 0,
                    },
                });
                ("moz:firefoxOptions", options, named("COLDSEAT_FIREFOX"))
            }
            Self::WebKit => {
                let options = json!({ "args": ["--automation"] });
                let browser = named("COLDSEAT_MINIBROWSER");
                ("webkitgtk:browserOptions", options, browser)
            }
        };
        if let Some(browser) = browser {
            options["binary"] = json!(browser);
        }
        wishes.insert(key.to_owned(), options);
        wishes
    }
}

/// A screen in memory, for a browser that must have one.
#[derive(Debug)]
pub(crate) struct Screen {
    process: Child,
    name: String,
}

impl Screen {
    fn start() -> Result<Self> {
        let program = on_path("Xvfb").context("no Xvfb; see `cargo xtask setup`")?;
        let mut process = Command::new(program)
            // Tells the number that it took.
            .args(["-displayfd", "1", "-screen", "0", "1280x1024x24"])
            .args(["-nolisten", "tcp"])
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .context("starting Xvfb")?;
        let output = process.stdout.take().context("Xvfb's output")?;
        let mut number = String::new();
        BufReader::new(output).read_line(&mut number)?;
        let screen = Self {
            process,
            name: format!(":{}", number.trim()),
        };
        if number.trim().is_empty() {
            bail!("Xvfb did not start");
        }
        Ok(screen)
    }
}

impl Drop for Screen {
    fn drop(&mut self) {
        // It may be dead already; nothing else can be done here.
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}
