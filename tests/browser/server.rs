//! The page's server as a process that can be killed and started again.

use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};

use anyhow::{Context, Result, bail};

/// `xtask serve-folder`, on a port that it keeps over restarts.
#[derive(Debug)]
pub struct PageServer {
    folder: PathBuf,
    port: u16,
    process: Option<Child>,
}

impl PageServer {
    /// Starts a server for a folder on any free port.
    pub fn start(folder: &Path) -> Result<Self> {
        let mut server = Self {
            folder: folder.to_path_buf(),
            port: 0,
            process: None,
        };
        server.restart()?;
        Ok(server)
    }

    /// The page's address.
    pub fn address(&self) -> String {
        format!("http://localhost:{}/", self.port)
    }

    /// The folder that is served.
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Ends the server as a power cut would.
    pub fn kill(&mut self) -> Result<()> {
        if let Some(mut process) = self.process.take() {
            process.kill().context("ending the page's server")?;
            process.wait().context("waiting for the page's server")?;
        }
        Ok(())
    }

    /// Starts the server again, on the port it had.
    pub fn restart(&mut self) -> Result<()> {
        self.kill()?;
        let program = xtask_program()?;
        let mut process = Command::new(&program)
            .arg("serve-folder")
            .arg(&self.folder)
            .args(["--port", &self.port.to_string()])
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .spawn()
            .with_context(|| format!("starting {}", program.display()))?;
        let output = process.stdout.take().context("the server's output")?;
        self.process = Some(process);
        for line in BufReader::new(output).lines() {
            let line = line.context("reading what the server says")?;
            let port = line
                .split_once("http://localhost:")
                .and_then(|(_, rest)| rest.split('/').next())
                .and_then(|port| port.parse().ok());
            if let Some(port) = port {
                self.port = port;
                return Ok(());
            }
        }
        bail!("the server of {} did not start", self.folder.display());
    }
}

impl Drop for PageServer {
    fn drop(&mut self) {
        // It may be dead already; nothing else can be done here.
        let _ = self.kill();
    }
}

/// The program named by `cargo xtask test`, or the one cargo built beside us.
fn xtask_program() -> Result<PathBuf> {
    if let Some(program) = std::env::var_os("COLDSEAT_XTASK") {
        return Ok(PathBuf::from(program));
    }
    let own = std::env::current_exe().context("this test's own path")?;
    let beside = own
        .ancestors()
        .nth(2)
        .map(|folder| folder.join(format!("xtask{}", std::env::consts::EXE_SUFFIX)));
    match beside {
        Some(program) if program.is_file() => Ok(program),
        _ => bail!("no xtask beside this test; run `cargo xtask test --only browser`"),
    }
}
