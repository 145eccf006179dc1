//! A browser's driver as a process, and the commands that the client lacks.

use std::io::{Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Child, Command};
use std::time::Duration;

use crate::bench::Frames;
use crate::engine::{Engine, Screen};
use anyhow::{Context, Result, bail};
use fantoccini::error::NewSessionError;
use fantoccini::wd::WebDriverCompatibleCommand;
use fantoccini::{Client, ClientBuilder};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use url::{ParseError, Url};

/// How long a browser that did not begin is given before it is begun again.
const RESTS: [Duration; 4] = [
    Duration::from_secs(1),
    Duration::from_secs(3),
    Duration::from_secs(10),
    Duration::from_secs(20),
];

/// A driver on a port of its own, and the one session it holds.
#[derive(Debug)]
pub(crate) struct Driver {
    engine: Engine,
    process: Child,
    port: u16,
    session: Option<String>,
    browser: Option<u64>,
    _screen: Option<Screen>,
}

impl Driver {
    /// Starts the driver of a family of browsers on any free port.
    pub(crate) fn start(engine: Engine) -> Result<Self> {
        let (process, port, screen) = engine.start_driver()?;
        Ok(Self {
            engine,
            process,
            port,
            session: None,
            browser: None,
            _screen: screen,
        })
    }

    /// Opens a browser on a profile folder. One that dies before it has shown
    /// anything of the page (no room on a busy machine, or its predecessor still
    /// lets go of the profile) is begun again, and says so.
    pub(crate) async fn open(&mut self, profile: &Path, frames: Frames) -> Result<Client> {
        self.close();
        let mut rests = RESTS.iter();
        let client = loop {
            let begun = ClientBuilder::new(HttpConnector::new())
                .capabilities(self.engine.wishes(profile, frames))
                .connect(&format!("http://127.0.0.1:{}", self.port))
                .await;
            match (begun, rests.next()) {
                (Ok(client), _) => break client,
                (Err(NewSessionError::SessionNotCreated(why)), Some(rest)) => {
                    eprintln!(
                        "{:?} did not begin, once more in {rest:?}: {why}",
                        self.engine
                    );
                    tokio::time::sleep(*rest).await;
                }
                (Err(why), _) => {
                    return Err(why).with_context(|| format!("opening {:?}", self.engine));
                }
            }
        };
        self.session = client.session_id().await?;
        self.browser = client.capabilities().and_then(|told| {
            ["goog:processID", "moz:processID"]
                .iter()
                .find_map(|name| told.get(*name)?.as_u64())
        });
        Ok(client)
    }

    /// Ends the browser at once, as a phone that dies does: SIGKILL.
    pub(crate) fn kill_browser(&mut self) -> Result<()> {
        let process = self.browser.take().context("the browser's process")?;
        let killed = Command::new("kill")
            .args(["-KILL", &process.to_string()])
            .status()?;
        if !killed.success() {
            bail!("process {process} could not be killed");
        }
        self.close();
        Ok(())
    }

    /// Closes the browser. Blocking and without the client, so that it works
    /// while a failed test is being unwound.
    pub(crate) fn close(&mut self) {
        let Some(session) = self.session.take() else {
            return;
        };
        let request = format!(
            // With the port: geckodriver answers no other host.
            "DELETE /session/{session} HTTP/1.1\r\nHost: 127.0.0.1:{}\r\nConnection: close\r\n\r\n",
            self.port
        );
        if let Ok(mut stream) = TcpStream::connect(("127.0.0.1", self.port)) {
            // A browser that does not close in time dies with its driver.
            let _ = stream.set_read_timeout(Some(Duration::from_secs(10)));
            let _ = stream.write_all(request.as_bytes());
            let _ = stream.read(&mut [0; 512]);
        }
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        self.close();
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}

/// A command that the client does not know.
#[derive(Debug)]
pub(crate) struct Ask {
    path: String,
    body: Option<Value>,
}

impl Ask {
    /// What the browser computes for an element: `computedrole`, `computedlabel`.
    pub(crate) fn element(id: &str, what: &str) -> Self {
        Self {
            path: format!("element/{id}/{what}"),
            body: None,
        }
    }

    /// The console's messages since the last call.
    pub(crate) fn console() -> Self {
        Self {
            path: "se/log".to_owned(),
            body: Some(json!({ "type": "browser" })),
        }
    }

    /// A command of the browser's own protocol.
    pub(crate) fn devtools(command: &str, parameters: Value) -> Self {
        Self {
            path: "goog/cdp/execute".to_owned(),
            body: Some(json!({ "cmd": command, "params": parameters })),
        }
    }
}

impl WebDriverCompatibleCommand for Ask {
    fn endpoint(&self, base: &Url, session: Option<&str>) -> Result<Url, ParseError> {
        base.join(&format!(
            "session/{}/{}",
            session.unwrap_or_default(),
            self.path
        ))
    }

    fn method_and_body(&self, _: &Url) -> (http::Method, Option<String>) {
        match &self.body {
            None => (http::Method::GET, None),
            Some(body) => (http::Method::POST, Some(body.to_string())),
        }
    }
}
