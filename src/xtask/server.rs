//! A static server for one folder, as strict as the page's best host would be.
//!
//! It listens on this machine only. It answers a missing file with "not here"
//! and never with the page, revalidates everything by digest (the worker, not
//! the browser's cache, is what makes the page work offline), and sends the
//! page's own content policy as a header.

use std::collections::HashMap;
use std::convert::Infallible;
use std::fs;
use std::io::Write as _;
use std::net::{Ipv4Addr, SocketAddr, TcpListener, UdpSocket};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

use flate2::Compression;
use flate2::write::GzEncoder;
use http_body_util::Full;
use hyper::body::Bytes;
use hyper::header::{HeaderName, HeaderValue};
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper::{Method, Request, Response, StatusCode, header};
use hyper_util::rt::TokioIo;
use percent_encoding::percent_decode_str;
use sha2::{Digest, Sha256};

use crate::page::content_policy;
use crate::run::{Outcome, Trouble};

/// The header of what a page may ask the device for.
const PERMISSIONS: HeaderName = HeaderName::from_static("permissions-policy");
/// The camera, for reading codes, and nothing else; in every header file for hosts.
pub const PERMITTED: &str =
    "camera=(self), microphone=(), geolocation=(), payment=(), usb=(), display-capture=()";

/// How many ports after the wanted one are tried.
const PORTS_TRIED: u16 = 20;

/// Which port to listen on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Port {
    /// This one or the next that is free.
    From(u16),
    /// This one or none; 0 stands for any free one.
    Exactly(u16),
}

/// Who may reach the server.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reach {
    /// This machine.
    Here,
    /// Every machine of the network that it is in.
    Network,
}

/// A server that has its port.
#[derive(Debug)]
pub struct FolderServer {
    listener: TcpListener,
    folder: Folder,
    port: u16,
}

/// What is served, and under which content policy.
#[derive(Debug, Clone)]
struct Folder {
    path: PathBuf,
    policy: Option<String>,
    /// What was compressed already, by its digest; nothing where it is not to be.
    packed: Option<Arc<Mutex<HashMap<String, Bytes>>>>,
}

impl FolderServer {
    /// Takes a port for a folder that holds a page.
    pub fn open(path: &Path, port: Port, reach: Reach) -> Outcome<Self> {
        let index = path.join("index.html");
        let text = fs::read_to_string(&index).map_err(|error| {
            Trouble::new(
                format!("{}: {error}", index.display()),
                "build the page first: cargo xtask build",
            )
        })?;
        let (listener, port) = listen(port, reach)?;
        let policy = content_policy(&text);
        Ok(Self {
            listener,
            folder: Folder {
                path: path.to_path_buf(),
                policy: policy.map(|policy| format!("{policy}; frame-ancestors 'none'")),
                packed: None,
            },
            port,
        })
    }

    /// The same, sending what can be compressed as a host of the web does: for
    /// phones over the air, and for judging the page as they will meet it.
    #[must_use]
    pub fn packing(mut self) -> Self {
        self.folder.packed = Some(Arc::default());
        self
    }

    /// The address to open. Browsers give `localhost` all that they give https.
    pub fn address(&self) -> String {
        format!("http://localhost:{}/", self.port)
    }

    /// The address for another machine of the network, where this one knows its own.
    pub fn address_in_network(&self) -> Option<String> {
        address_in_network(self.port)
    }

    /// Answers until the process ends; returns only if it cannot begin.
    pub fn answer(self) -> Outcome<()> {
        let trouble = |error: std::io::Error| {
            Trouble::new(
                format!("the server did not start: {error}"),
                "start it again",
            )
        };
        // One thread is plenty for one person's browser; what each connection
        // waits for, it waits for without holding up the others.
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_io()
            .build()
            .map_err(trouble)?;
        let folder = Arc::new(self.folder);
        runtime.block_on(async {
            self.listener.set_nonblocking(true).map_err(trouble)?;
            let listener = tokio::net::TcpListener::from_std(self.listener).map_err(trouble)?;
            loop {
                // A connection that was given up before it was taken.
                let Ok((stream, _)) = listener.accept().await else {
                    tokio::task::yield_now().await;
                    continue;
                };
                let folder = Arc::clone(&folder);
                tokio::spawn(async move {
                    let service = service_fn(move |request| {
                        let response = folder.response(&request);
                        async move { Ok::<_, Infallible>(response) }
                    });
                    // A browser that hangs up in the middle is no news.
                    let _ = http1::Builder::new()
                        .serve_connection(TokioIo::new(stream), service)
                        .await;
                });
            }
        })
    }
}

/// The address of a port for another machine of the network, where this one knows its
/// own. Nothing is sent: a datagram socket only picks the way out.
pub fn address_in_network(port: u16) -> Option<String> {
    let socket = UdpSocket::bind((Ipv4Addr::UNSPECIFIED, 0)).ok()?;
    // An address for documentation (RFC 5737): any outside one would do.
    socket.connect((Ipv4Addr::new(192, 0, 2, 1), 9)).ok()?;
    let own = socket.local_addr().ok()?.ip();
    Some(format!("http://{own}:{port}/"))
}

impl Folder {
    fn response<B>(&self, request: &Request<B>) -> Response<Full<Bytes>> {
        if !matches!(*request.method(), Method::GET | Method::HEAD) {
            return self.refusal(StatusCode::METHOD_NOT_ALLOWED, "only reading here");
        }
        let file = file_in(&self.path, request.uri().path());
        let read = |path: PathBuf| fs::read(&path).ok().map(|bytes| (path, bytes));
        let Some((path, bytes)) = file.and_then(read) else {
            return self.refusal(StatusCode::NOT_FOUND, "not here");
        };
        let tag = tag(&bytes);
        let known = request
            .headers()
            .get(header::IF_NONE_MATCH)
            .is_some_and(|value| value == tag.as_str());
        let mut response = if known {
            let mut response = Response::new(Full::default());
            *response.status_mut() = StatusCode::NOT_MODIFIED;
            response
        } else {
            let accepts = request.headers().get(header::ACCEPT_ENCODING);
            let accepts = accepts.and_then(|value| value.to_str().ok());
            let accepts_gzip = accepts.is_some_and(|value| value.contains("gzip"));
            match self.packed(&tag, &bytes, kind(&path)) {
                Some(packed) if accepts_gzip => {
                    let mut response = Response::new(Full::from(packed));
                    set(&mut response, header::CONTENT_ENCODING, "gzip");
                    response
                }
                _ => Response::new(Full::from(bytes)),
            }
        };
        set(&mut response, header::VARY, "Accept-Encoding");
        set(&mut response, header::ETAG, &tag);
        self.with_headers(response, kind(&path))
    }

    /// A file compressed, once; pictures are already.
    fn packed(&self, tag: &str, bytes: &[u8], kind: &str) -> Option<Bytes> {
        let held = self.packed.as_ref().filter(|_| !kind.ends_with("/png"))?;
        let mut held = held.lock().ok()?;
        if let Some(packed) = held.get(tag) {
            return Some(packed.clone());
        }
        let mut packer = GzEncoder::new(Vec::new(), Compression::best());
        packer.write_all(bytes).ok()?;
        let packed = Bytes::from(packer.finish().ok()?);
        held.insert(tag.to_owned(), packed.clone());
        Some(packed)
    }

    fn refusal(&self, status: StatusCode, text: &'static str) -> Response<Full<Bytes>> {
        let mut response = Response::new(Full::from(text));
        *response.status_mut() = status;
        self.with_headers(response, "text/plain; charset=utf-8")
    }

    fn with_headers(
        &self,
        mut response: Response<Full<Bytes>>,
        kind: &str,
    ) -> Response<Full<Bytes>> {
        set(&mut response, header::CONTENT_TYPE, kind);
        set(&mut response, header::CACHE_CONTROL, "no-cache");
        set(&mut response, header::X_CONTENT_TYPE_OPTIONS, "nosniff");
        set(&mut response, header::REFERRER_POLICY, "no-referrer");
        set(&mut response, PERMISSIONS, PERMITTED);
        if let Some(policy) = &self.policy {
            set(&mut response, header::CONTENT_SECURITY_POLICY, policy);
        }
        response
    }
}

/// Sets a header, unless its value has a byte that no header may have.
fn set(response: &mut Response<Full<Bytes>>, name: HeaderName, value: &str) {
    if let Ok(value) = HeaderValue::from_str(value) {
        response.headers_mut().insert(name, value);
    }
}

fn listen(port: Port, reach: Reach) -> Outcome<(TcpListener, u16)> {
    let from = match reach {
        Reach::Here => Ipv4Addr::LOCALHOST,
        Reach::Network => Ipv4Addr::UNSPECIFIED,
    };
    let (first, last) = match port {
        Port::From(port) => (port, port.saturating_add(PORTS_TRIED)),
        Port::Exactly(port) => (port, port),
    };
    let mut reason = String::new();
    for candidate in first..=last {
        let address = SocketAddr::from((from, candidate));
        match TcpListener::bind(address).and_then(|found| Ok((found.local_addr()?.port(), found))) {
            Ok((port, listener)) => return Ok((listener, port)),
            Err(error) => reason = error.to_string(),
        }
    }
    let what = if first == last {
        format!("port {first} is not free: {reason}")
    } else {
        format!("no port from {first} to {last} is free: {reason}")
    };
    Err(Trouble::new(
        what,
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
pub fn kind(path: &Path) -> &'static str {
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

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, reason = "a test says enough by failing")]

    use super::*;

    fn folder() -> Folder {
        Folder {
            path: crate::layout::checkout().join("src/page/shell"),
            policy: Some("default-src 'none'".to_owned()),
            packed: Some(Arc::default()),
        }
    }

    fn answer(method: &str, target: &str) -> Response<Full<Bytes>> {
        let request = Request::builder().method(method).uri(target).body(());
        folder().response(&request.unwrap())
    }

    #[track_caller]
    fn check(target: &str, status: u16, kind: &str) {
        let response = answer("GET", target);
        assert_eq!(response.status().as_u16(), status, "{target}");
        assert_eq!(response.headers()["content-type"], kind, "{target}");
        assert_eq!(
            response.headers()["content-security-policy"],
            "default-src 'none'"
        );
    }

    #[test]
    fn files_have_their_types() {
        check(
            "/manifest.webmanifest?v=1",
            200,
            "application/manifest+json",
        );
        check("/icons/icon-192.png", 200, "image/png");
        check("/icons/icon%2Esvg", 200, "image/svg+xml");
        check("/boot.js", 200, "text/javascript; charset=utf-8");
    }

    #[test]
    fn what_is_missing_is_never_a_page() {
        check("/missing.js", 404, "text/plain; charset=utf-8");
        check("/icons/", 404, "text/plain; charset=utf-8");
    }

    #[test]
    fn no_path_leads_out_of_the_folder() {
        for target in [
            "/../Cargo.toml",
            "/%2e%2e/Cargo.toml",
            "/icons/..%2f..%2fCargo.toml",
        ] {
            check(target, 404, "text/plain; charset=utf-8");
        }
    }

    #[test]
    fn what_can_be_compressed_is_where_it_is_understood() {
        for (target, accepts, packed) in [
            ("/boot.js", "br, gzip", true),
            ("/boot.js", "identity", false),
            ("/icons/icon-192.png", "gzip", false),
        ] {
            let request = Request::builder()
                .uri(target)
                .header("Accept-Encoding", accepts)
                .body(());
            let response = folder().response(&request.unwrap());
            let is = response.headers().contains_key("content-encoding");
            assert_eq!(is, packed, "{target} {accepts}");
        }
    }

    #[test]
    fn what_is_known_is_not_sent_again() {
        let first = answer("GET", "/boot.js");
        let request = Request::builder()
            .uri("/boot.js")
            .header("If-None-Match", &first.headers()["etag"])
            .body(());
        let second = folder().response(&request.unwrap());
        assert_eq!(second.status(), StatusCode::NOT_MODIFIED);
    }

    #[test]
    fn nothing_can_be_written() {
        assert_eq!(answer("POST", "/boot.js").status(), 405);
    }

    #[test]
    fn a_port_in_use_is_passed_over_or_refused() {
        let (_held, port) = listen(Port::Exactly(0), Reach::Here).unwrap();
        assert!(
            listen(Port::Exactly(port), Reach::Here).is_err_and(|t| t.what.contains("not free"))
        );
        let (_next, next) = listen(Port::From(port), Reach::Here).unwrap();
        assert!(next > port);
    }
}
