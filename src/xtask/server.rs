//! A static server for one folder, as strict as the page's best host would be.
//!
//! It listens on this machine only. It answers a missing file with "not here"
//! and never with the page, revalidates everything by digest (the worker, not
//! the browser's cache, is what makes the page work offline), and sends the
//! page's own content policy as a header.

use std::fs;
use std::io::Cursor;
use std::net::{Ipv4Addr, SocketAddr};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread;

use percent_encoding::percent_decode_str;
use sha2::{Digest, Sha256};
use tiny_http::{Header, Method, Request, Response, Server};

use crate::page::content_policy;
use crate::run::{Outcome, Trouble};

/// How many ports after the wanted one are tried.
const PORTS_TRIED: u16 = 20;

/// Browsers open half a dozen connections at once; each keeps one thread busy
/// only while it is answered.
const THREADS: usize = 4;

/// Which port to listen on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Port {
    /// This one or the next that is free.
    From(u16),
    /// This one or none; 0 stands for any free one.
    Exactly(u16),
}

/// A server that has its port.
pub struct FolderServer {
    server: Arc<Server>,
    folder: PathBuf,
    policy: Option<String>,
    port: u16,
}

impl FolderServer {
    /// Takes a port for a folder that holds a page.
    pub fn open(folder: &Path, port: Port) -> Outcome<Self> {
        let index = folder.join("index.html");
        let text = fs::read_to_string(&index).map_err(|error| {
            Trouble::new(
                format!("{}: {error}", index.display()),
                "build the page first: cargo xtask build",
            )
        })?;
        let (server, port) = listen(port)?;
        Ok(Self {
            server: Arc::new(server),
            folder: folder.to_path_buf(),
            policy: content_policy(&text).map(|policy| format!("{policy}; frame-ancestors 'none'")),
            port,
        })
    }

    /// The address to open. Browsers give `localhost` all that they give https.
    pub fn address(&self) -> String {
        format!("http://localhost:{}/", self.port)
    }

    /// Answers until the process ends.
    pub fn answer(&self) {
        thread::scope(|scope| {
            for _ in 0..THREADS {
                scope.spawn(|| {
                    while let Ok(request) = self.server.recv() {
                        let response = self.response(&request);
                        // The browser may have gone away; nothing is lost.
                        let _ = request.respond(response);
                    }
                });
            }
        });
    }

    fn response(&self, request: &Request) -> Response<Cursor<Vec<u8>>> {
        if !matches!(request.method(), Method::Get | Method::Head) {
            return self.refusal(405, "only reading here");
        }
        let Some(path) = file_in(&self.folder, request.url()) else {
            return self.refusal(404, "not here");
        };
        let Ok(bytes) = fs::read(&path) else {
            return self.refusal(404, "not here");
        };
        let tag = tag(&bytes);
        let known = request
            .headers()
            .iter()
            .any(|header| header.field.equiv("If-None-Match") && header.value == tag.as_str());
        let response = if known {
            Response::from_data(Vec::new()).with_status_code(304)
        } else {
            Response::from_data(bytes)
        };
        self.with_headers(response, &[("Content-Type", kind(&path)), ("ETag", &tag)])
    }

    fn refusal(&self, status: u16, text: &str) -> Response<Cursor<Vec<u8>>> {
        let response = Response::from_data(text.as_bytes()).with_status_code(status);
        self.with_headers(response, &[("Content-Type", "text/plain; charset=utf-8")])
    }

    fn with_headers(
        &self,
        mut response: Response<Cursor<Vec<u8>>>,
        own: &[(&str, &str)],
    ) -> Response<Cursor<Vec<u8>>> {
        let always = [
            ("Cache-Control", "no-cache"),
            ("X-Content-Type-Options", "nosniff"),
            ("Referrer-Policy", "no-referrer"),
        ];
        let policy = self
            .policy
            .as_deref()
            .map(|policy| ("Content-Security-Policy", policy));
        for (name, value) in own.iter().chain(&always).copied().chain(policy) {
            if let Some(header) = header(name, value) {
                response.add_header(header);
            }
        }
        response
    }
}

fn listen(port: Port) -> Outcome<(Server, u16)> {
    let (first, last) = match port {
        Port::From(port) => (port, port.saturating_add(PORTS_TRIED)),
        Port::Exactly(port) => (port, port),
    };
    let mut reason = String::new();
    for candidate in first..=last {
        match Server::http(SocketAddr::from((Ipv4Addr::LOCALHOST, candidate))) {
            Ok(server) => {
                let port = server
                    .server_addr()
                    .to_ip()
                    .map_or(candidate, |address| address.port());
                return Ok((server, port));
            }
            Err(error) => reason = error.to_string(),
        }
    }
    Err(Trouble::new(
        format!("no port from {first} to {last} is free: {reason}"),
        "name another one: cargo xtask serve --port 9000",
    ))
}

/// The file for a request's target, if there is one inside the folder.
fn file_in(folder: &Path, target: &str) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?.strip_prefix('/')?;
    let path = percent_decode_str(path).decode_utf8().ok()?;
    let mut file = folder.to_path_buf();
    for part in path.split('/').filter(|part| !part.is_empty()) {
        // Each part must be one plain name: no way up, no drive, no root.
        if part == ".." || part.contains(['\\', ':', '\0']) {
            return None;
        }
        file.push(part);
    }
    if file.is_dir() {
        file.push("index.html");
    }
    file.is_file().then_some(file)
}

fn tag(bytes: &[u8]) -> String {
    let digest = Sha256::digest(bytes);
    let hex: String = digest
        .iter()
        .take(12)
        .map(|byte| format!("{byte:02x}"))
        .collect();
    format!("\"{hex}\"")
}

/// The content type of a file, by its name.
fn kind(path: &Path) -> &'static str {
    match path.extension().and_then(|kind| kind.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js" | "mjs") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("json") => "application/json",
        Some("webmanifest") => "application/manifest+json",
        Some("wasm") => "application/wasm",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

/// One header; none if its value has a byte that a header may not have.
fn header(name: &str, value: &str) -> Option<Header> {
    Header::from_bytes(name, value).ok()
}
