//! A host inside the test, that fails in the ways hosts and networks do and
//! remembers what it was asked.

use std::fs;
use std::io::{Read, Write};
use std::net::{Ipv4Addr, Shutdown, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::thread::{JoinHandle, spawn};
use std::time::{Duration, Instant};

use anyhow::{Context, Result};
use xtask::page::content_policy;
use xtask::server::kind;

/// Where browsers are told to report breaches of the content policy.
const REPORTS: &str = "/reports";

/// Bytes that are sent at once: a cut may fall between any two of them.
const PIECE: usize = 4096;

/// What goes wrong with one file, by its address (`/` for the page).
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// Nothing.
    None,
    /// The connection ends after so many bytes of it.
    Cut(String, usize),
    /// The host has only so many bytes of it, and says so.
    Short(String, usize),
    /// One bit of it is another.
    Flipped(String, usize, u8),
    /// Not sent; this status instead.
    Status(String, u16),
    /// Some page in its place, as if nothing were wrong.
    Page(String),
    /// Sent so much later, unless the host has died by then.
    Late(String, Duration),
    /// The host dies when it has sent so many bytes in all.
    Dies(usize),
}

impl Fault {
    fn file(&self) -> Option<&str> {
        match self {
            Self::None | Self::Dies(_) => None,
            Self::Cut(file, _)
            | Self::Short(file, _)
            | Self::Flipped(file, ..)
            | Self::Late(file, _)
            | Self::Status(file, _)
            | Self::Page(file) => Some(file),
        }
    }
}

#[derive(Debug)]
struct State {
    folder: PathBuf,
    worker_from: PathBuf,
    fault: Fault,
    asked: Vec<String>,
    reports: Vec<String>,
}

#[derive(Debug)]
struct Shared {
    state: Mutex<State>,
    port: u16,
    dead: AtomicBool,
    sent: AtomicUsize,
}

/// The host. It dies when it is dropped.
#[derive(Debug)]
pub struct Host {
    shared: Arc<Shared>,
    answering: Option<JoinHandle<()>>,
}

impl Host {
    /// Serves a folder on any free port.
    pub fn start(folder: &Path) -> Result<Self> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?;
        let shared = Arc::new(Shared {
            port: listener.local_addr()?.port(),
            state: Mutex::new(State {
                folder: folder.to_path_buf(),
                worker_from: folder.to_path_buf(),
                fault: Fault::None,
                asked: Vec::new(),
                reports: Vec::new(),
            }),
            dead: AtomicBool::new(false),
            sent: AtomicUsize::new(0),
        });
        let answering = Some(answer_on(listener, &shared));
        Ok(Self { shared, answering })
    }

    /// The address of the page.
    pub fn address(&self) -> String {
        format!("http://localhost:{}/", self.shared.port)
    }

    /// Serves the files of one folder and the worker of another, with a fault.
    pub fn serve(&self, folder: &Path, worker_from: &Path, fault: Fault) {
        let mut state = self.shared.state();
        state.folder = folder.to_path_buf();
        state.worker_from = worker_from.to_path_buf();
        state.fault = fault;
        self.shared.sent.store(0, Ordering::SeqCst);
    }

    /// Dies: what is being sent is cut off, and nobody listens.
    pub fn kill(&mut self) {
        self.shared.die();
        if let Some(answering) = self.answering.take() {
            // It has nothing to tell, and a test that fails elsewhere goes on.
            let _ = answering.join();
        }
    }

    /// Lives again, on the port it had.
    pub fn restart(&mut self) -> Result<()> {
        self.kill();
        let begun = Instant::now();
        let listener = loop {
            match TcpListener::bind((Ipv4Addr::LOCALHOST, self.shared.port)) {
                Ok(listener) => break listener,
                Err(_) if begun.elapsed() < Duration::from_secs(5) => {
                    std::thread::sleep(Duration::from_millis(10));
                }
                Err(error) => return Err(error).context("the host's port"),
            }
        };
        self.shared.dead.store(false, Ordering::SeqCst);
        self.answering = Some(answer_on(listener, &self.shared));
        Ok(())
    }

    /// The addresses that it was asked for since the last call.
    pub fn asked(&self) -> Vec<String> {
        std::mem::take(&mut self.shared.state().asked)
    }

    /// The breaches of the content policy that browsers reported since the last
    /// call, from the first byte of the page on.
    pub fn reports(&self) -> Vec<String> {
        std::mem::take(&mut self.shared.state().reports)
    }
}

impl Drop for Host {
    fn drop(&mut self) {
        self.kill();
    }
}

impl Shared {
    fn state(&self) -> MutexGuard<'_, State> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn is_dead(&self) -> bool {
        self.dead.load(Ordering::SeqCst)
    }

    fn die(&self) {
        self.dead.store(true, Ordering::SeqCst);
        // Wakes the listener up, so that it ends; refused if it has ended.
        let _ = TcpStream::connect((Ipv4Addr::LOCALHOST, self.port));
    }
}

fn answer_on(listener: TcpListener, shared: &Arc<Shared>) -> JoinHandle<()> {
    let shared = Arc::clone(shared);
    spawn(move || {
        for stream in listener.incoming().map_while(Result::ok) {
            if shared.is_dead() {
                return;
            }
            let shared = Arc::clone(&shared);
            spawn(move || {
                // A browser that hangs up in the middle is no news.
                let _ = answer(stream, &shared);
            });
        }
    })
}

fn answer(mut stream: TcpStream, shared: &Shared) -> std::io::Result<()> {
    // A connection that a browser opens in advance and never uses.
    stream.set_read_timeout(Some(Duration::from_secs(20)))?;
    let Some((head, body)) = read_request(&mut stream)? else {
        return Ok(());
    };
    let target = head.split(' ').nth(1).unwrap_or_default();
    let path = target.split(['?', '#']).next().unwrap_or_default();
    let (folder, fault) = {
        let mut state = shared.state();
        if path == REPORTS {
            state
                .reports
                .push(String::from_utf8_lossy(&body).into_owned());
            return stream.write_all(b"HTTP/1.1 204 No Content\r\nConnection: close\r\n\r\n");
        }
        state.asked.push(path.to_owned());
        let folder = if path == "/sw.js" {
            &state.worker_from
        } else {
            &state.folder
        };
        (folder.clone(), state.fault.clone())
    };
    let own = fault.file() == Some(path);
    let (status, kind, mut bytes) = match (&fault, file_of_page(&folder, path)) {
        (Fault::Status(_, status), _) if own => (*status, "text/plain", b"not now".to_vec()),
        (Fault::Page(_), _) if own => (
            200,
            "text/html",
            b"<h1>Sign in to the network</h1>".to_vec(),
        ),
        (_, Some((kind, bytes))) => (200, kind, bytes),
        (_, None) => (404, "text/plain", b"not here".to_vec()),
    };
    let mut until = bytes.len();
    if let Fault::Late(_, by) = &fault
        && own
    {
        let begun = Instant::now();
        while begun.elapsed() < *by {
            if shared.is_dead() {
                return stream.shutdown(Shutdown::Both);
            }
            std::thread::sleep(Duration::from_millis(5));
        }
    }
    match fault {
        Fault::Short(_, at) if own => bytes.truncate(at),
        Fault::Flipped(_, at, bit) if own => bytes[at] ^= 1 << bit,
        Fault::Cut(_, at) if own => until = at,
        _ => (),
    }
    until = until.min(bytes.len());
    let index = fs::read_to_string(folder.join("index.html")).unwrap_or_default();
    let policy = content_policy(&index).unwrap_or("default-src 'none'");
    let head = format!(
        "HTTP/1.1 {status} -\r\nContent-Type: {kind}\r\nContent-Length: {}\r\n\
         Cache-Control: no-cache\r\nX-Content-Type-Options: nosniff\r\n\
         Content-Security-Policy: {policy}; frame-ancestors 'none'; report-uri {REPORTS}\r\n\
         Connection: close\r\n\r\n",
        bytes.len()
    );
    stream.write_all(head.as_bytes())?;
    for piece in bytes[..until].chunks(PIECE) {
        let sent = shared.sent.fetch_add(piece.len(), Ordering::SeqCst);
        if matches!(fault, Fault::Dies(after) if sent >= after) {
            shared.die();
        }
        if shared.is_dead() {
            break;
        }
        stream.write_all(piece)?;
    }
    stream.shutdown(Shutdown::Both)
}

/// A request's head and body; nothing where there was no request, the body as far as it
/// came where the line ended before it.
///
/// # Errors
/// A line that fails.
pub fn read_request(stream: &mut TcpStream) -> std::io::Result<Option<(String, Vec<u8>)>> {
    let mut read = Vec::new();
    let mut piece = [0; 16 << 10];
    let end = loop {
        if let Some(at) = read.windows(4).position(|four| four == b"\r\n\r\n") {
            break at + 4;
        }
        match stream.read(&mut piece)? {
            0 => return Ok(None),
            count => read.extend_from_slice(&piece[..count]),
        }
    };
    let head = String::from_utf8_lossy(&read[..end]).into_owned();
    let length = head.lines().find_map(|line| {
        let (name, value) = line.split_once(':')?;
        let is_it = name.eq_ignore_ascii_case("content-length");
        is_it.then(|| value.trim().parse::<usize>().ok())?
    });
    while read.len() < end + length.unwrap_or(0) {
        match stream.read(&mut piece)? {
            0 => break,
            count => read.extend_from_slice(&piece[..count]),
        }
    }
    Ok(Some((head, read.split_off(end))))
}

/// Type and bytes of a file of the page; names with a way up have none.
#[must_use]
pub fn file_of_page(folder: &Path, path: &str) -> Option<(&'static str, Vec<u8>)> {
    let name = path.strip_prefix('/')?;
    if name.split('/').any(|part| part == "..") {
        return None;
    }
    let name = if name.is_empty() { "index.html" } else { name };
    let file = folder.join(name);
    Some((kind(&file), fs::read(&file).ok()?))
}
