//! A shop's host with a line that fails: the page lies on it, its folder is another
//! server's, and what goes there and back is cut, refused or spoilt by chance.

use std::io::{Read, Write};
use std::net::{Ipv4Addr, Shutdown, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, AtomicU16, AtomicU32, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;

use anyhow::Result;
use fastrand::Rng;

use crate::host::{file_of_page, read_request};

#[derive(Debug)]
struct Shared {
    dist: PathBuf,
    behind: AtomicU16,
    /// Of a hundred calls to the folder so many go wrong.
    share: AtomicU32,
    is_dead: AtomicBool,
    rng: Mutex<Rng>,
    asked: Mutex<Vec<String>>,
    /// Milliseconds each way.
    way: AtomicU32,
    /// Bytes a second of the one line that all share; 0: as many as there are.
    rate: AtomicU32,
    line: Mutex<()>,
    port: u16,
}

/// The host; it ends when it is dropped.
#[derive(Debug)]
pub struct Proxy(Arc<Shared>);

impl Proxy {
    /// On any free port, with a finished page; by which seed things go wrong.
    pub fn start(dist: &Path, seed: u64) -> Result<Self> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?;
        let shared = Arc::new(Shared {
            dist: dist.to_path_buf(),
            behind: AtomicU16::new(0),
            share: AtomicU32::new(0),
            is_dead: AtomicBool::new(false),
            rng: Mutex::new(Rng::with_seed(seed)),
            asked: Mutex::new(Vec::new()),
            way: AtomicU32::new(0),
            rate: AtomicU32::new(0),
            line: Mutex::new(()),
            port: listener.local_addr()?.port(),
        });
        let own = Arc::clone(&shared);
        std::thread::spawn(move || {
            for stream in listener.incoming().map_while(Result::ok) {
                if own.is_dead.load(Ordering::SeqCst) {
                    return;
                }
                let own = Arc::clone(&own);
                // A browser that hangs up is no news.
                std::thread::spawn(move || answer(stream, &own));
            }
        });
        Ok(Self(shared))
    }

    /// Where the page is.
    #[must_use]
    pub fn address(&self) -> String {
        format!("http://localhost:{}/", self.0.port)
    }

    /// The server of the folder, by its port; 0 for none.
    pub fn is_before(&self, port: u16) {
        self.0.behind.store(port, Ordering::SeqCst);
    }

    /// Of a hundred calls so many go wrong.
    pub fn fails(&self, share: u32) {
        self.0.share.store(share, Ordering::SeqCst);
    }

    /// Calls to the folder take a slow line: so many milliseconds each way, and all
    /// of them together so many bytes a second. None of both: the line is fast again.
    pub fn crawls(&self, way_ms: u32, bytes_a_second: u32) {
        self.0.way.store(way_ms, Ordering::SeqCst);
        self.0.rate.store(bytes_a_second, Ordering::SeqCst);
    }

    /// Calls to the folder since this was asked last, and their bytes both ways.
    #[must_use]
    pub fn asked(&self) -> Vec<String> {
        let mut asked = self.0.asked.lock().unwrap_or_else(PoisonError::into_inner);
        std::mem::take(&mut asked)
    }
}

impl Drop for Proxy {
    fn drop(&mut self) {
        self.0.is_dead.store(true, Ordering::SeqCst);
        let _ = TcpStream::connect((Ipv4Addr::LOCALHOST, self.0.port));
    }
}

/// What goes wrong with a call.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Mishap {
    None,
    CutBefore,
    CutInAsking,
    CutAfter,
    CutInAnswer,
    Fails,
    Slow,
}

fn mishap(shared: &Shared) -> Mishap {
    let mut rng = shared.rng.lock().unwrap_or_else(PoisonError::into_inner);
    if rng.u32(0..100) >= shared.share.load(Ordering::SeqCst) {
        return Mishap::None;
    }
    let all = [
        Mishap::CutBefore,
        Mishap::CutInAsking,
        Mishap::CutAfter,
        Mishap::CutInAnswer,
        Mishap::Fails,
        Mishap::Slow,
    ];
    all[rng.usize(0..all.len())]
}

/// Waits as long as so many bytes take one way.
fn travels(shared: &Shared, bytes: usize) {
    let rate = shared.rate.load(Ordering::SeqCst);
    if rate > 0 {
        let _one = shared.line.lock().unwrap_or_else(PoisonError::into_inner);
        std::thread::sleep(Duration::from_secs_f64(bytes as f64 / f64::from(rate)));
    }
    let way = shared.way.load(Ordering::SeqCst);
    std::thread::sleep(Duration::from_millis(u64::from(way)));
}

fn answer(mut stream: TcpStream, shared: &Shared) -> std::io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(20)))?;
    let Some((head, body)) = read_request(&mut stream)? else {
        return Ok(());
    };
    let mut words = head.split(' ');
    let (method, target) = (words.next(), words.next().unwrap_or_default());
    if !target.starts_with("/shop/") {
        return page(&mut stream, &shared.dist, target);
    }
    let note = |bytes: usize| {
        let line = format!("{} {target} {bytes}", method.unwrap_or_default());
        let mut asked = shared.asked.lock().unwrap_or_else(PoisonError::into_inner);
        asked.push(line);
    };
    let mishap = mishap(shared);
    let failing = b"HTTP/1.1 503 -\r\nContent-Length: 0\r\nConnection: close\r\n\r\n";
    match mishap {
        Mishap::CutBefore => return stream.shutdown(Shutdown::Both),
        Mishap::Fails => return stream.write_all(failing),
        Mishap::Slow => std::thread::sleep(Duration::from_millis(400)),
        _ => {}
    }
    travels(shared, head.len() + body.len());
    let port = shared.behind.load(Ordering::SeqCst);
    let Ok(mut behind) = TcpStream::connect((Ipv4Addr::LOCALHOST, port)) else {
        return stream.shutdown(Shutdown::Both);
    };
    behind.set_read_timeout(Some(Duration::from_secs(20)))?;
    // One call a line: the end of the answer is the end of the line.
    let passed = head.lines().filter(|line| {
        let line = line.to_ascii_lowercase();
        !line.starts_with("connection:") && !line.starts_with("accept-encoding:")
    });
    let passed: Vec<&str> = passed.filter(|line| !line.is_empty()).collect();
    behind.write_all(format!("{}\r\nConnection: close\r\n\r\n", passed.join("\r\n")).as_bytes())?;
    if mishap == Mishap::CutInAsking {
        behind.write_all(&body[..body.len() / 2])?;
        behind.shutdown(Shutdown::Both)?;
        return stream.shutdown(Shutdown::Both);
    }
    behind.write_all(&body)?;
    let mut reply = Vec::new();
    behind.read_to_end(&mut reply)?;
    note(head.len() + body.len() + reply.len());
    travels(shared, reply.len());
    let until = match mishap {
        Mishap::CutAfter => 0,
        Mishap::CutInAnswer => reply.len() / 2,
        _ => reply.len(),
    };
    stream.write_all(&reply[..until])?;
    stream.shutdown(Shutdown::Both)
}

fn page(stream: &mut TcpStream, dist: &Path, target: &str) -> std::io::Result<()> {
    let path = target.split(['?', '#']).next().unwrap_or_default();
    let (status, kind, bytes) = match file_of_page(dist, path) {
        Some((kind, bytes)) => (200, kind, bytes),
        None => (404, "text/plain", b"not here".to_vec()),
    };
    let head = format!(
        "HTTP/1.1 {status} -\r\nContent-Type: {kind}\r\nContent-Length: {}\r\n\
         Cache-Control: no-cache\r\nConnection: close\r\n\r\n",
        bytes.len()
    );
    stream.write_all(head.as_bytes())?;
    stream.write_all(&bytes)?;
    stream.shutdown(Shutdown::Both)
}
