//! A shop's folder by a real server on this machine: Apache's mod_dav, nginx with
//! its dav modules, rclone. For trying the page with it, and for the tests.

use std::fs;
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use crate::layout::on_path;
use crate::page::content_policy;
use crate::run::{Outcome, Trouble, answer};
use crate::server::{PERMITTED, Reach};

/// How long a server may take to begin.
const PATIENCE: Duration = Duration::from_secs(20);

/// Which server.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Apache with mod_dav.
    Apache,
    /// nginx with its own dav module and the one that lists.
    Nginx,
    /// `rclone serve webdav`.
    Rclone,
}

impl Kind {
    /// All three.
    pub const ALL: [Self; 3] = [Self::Apache, Self::Nginx, Self::Rclone];

    fn program(self) -> Option<PathBuf> {
        let (name, folder) = match self {
            Self::Apache => ("apache2", "/usr/sbin"),
            Self::Nginx => ("nginx", "/usr/sbin"),
            Self::Rclone => ("rclone", "/usr/bin"),
        };
        let there = Path::new(folder).join(name);
        on_path(name).or_else(|| there.is_file().then_some(there))
    }

    /// Debian's packages of it.
    #[must_use]
    pub const fn packages(self) -> &'static [&'static str] {
        match self {
            Self::Apache => &["apache2-bin"],
            Self::Nginx => &["nginx", "libnginx-mod-http-dav-ext"],
            Self::Rclone => &["rclone"],
        }
    }

    /// Whether it is on this machine.
    #[must_use]
    pub fn is_there(self) -> bool {
        let module = match self {
            Self::Apache => "/usr/lib/apache2/modules/mod_dav_fs.so",
            Self::Nginx => "/usr/lib/nginx/modules/ngx_http_dav_ext_module.so",
            Self::Rclone => return self.program().is_some(),
        };
        self.program().is_some() && Path::new(module).is_file()
    }
}

/// Lays a finished page out in a folder; a shop's folder that is in it stays.
pub fn lay_out(dist: &Path, root: &Path) -> Outcome<()> {
    make(root)?;
    let list = |folder: &Path| fs::read_dir(folder).map_err(|e| Trouble::with_file(folder, &e));
    for entry in list(root)?.flatten() {
        if entry.path().is_file() {
            fs::remove_file(entry.path()).map_err(|e| Trouble::with_file(root, &e))?;
        }
    }
    let mut folders = vec![(dist.to_path_buf(), root.to_path_buf())];
    while let Some((from, into)) = folders.pop() {
        make(&into)?;
        for entry in list(&from)?.flatten() {
            let (path, to) = (entry.path(), into.join(entry.file_name()));
            if path.is_dir() {
                folders.push((path, to));
            } else {
                fs::copy(&path, &to).map_err(|e| Trouble::with_file(&path, &e))?;
            }
        }
    }
    Ok(())
}

/// A server that runs until it is dropped.
#[derive(Debug)]
pub struct ShopServer {
    process: Child,
    port: u16,
}

impl ShopServer {
    /// Starts a server over a folder: the page lies in it, if there is one, and the
    /// shop's folder is `shop` in it.
    pub fn start(kind: Kind, root: &Path, port: u16, reach: Reach) -> Outcome<Self> {
        let program = kind.program().filter(|_| kind.is_there()).ok_or_else(|| {
            Trouble::new(
                format!("{kind:?} is not on this machine, or not with its modules"),
                format!(
                    "install it; on Debian: apt-get install {}",
                    kind.packages().join(" ")
                ),
            )
        })?;
        let work = root.join("server");
        for folder in [&root.join("shop"), &work, &work.join("body")] {
            make(folder)?;
        }
        let (listen, is_root) = (
            match reach {
                Reach::Here => "127.0.0.1",
                Reach::Network => "0.0.0.0",
            },
            answer(Command::new("id").arg("-u")).as_deref() == Some("0"),
        );
        // Whoever else answers there would be taken for it.
        TcpListener::bind((listen, port)).map_err(|error| {
            Trouble::new(
                format!("port {port} cannot be had: {error}"),
                "end what listens there, or name another with --port",
            )
        })?;
        let mut command = Command::new(program);
        match kind {
            Kind::Apache => {
                let path = work.join("apache.conf");
                write(&path, &apache(root, &work, (listen, port), is_root))?;
                if is_root {
                    give(&[&root.join("shop"), &work])?;
                }
                command.args(["-DFOREGROUND", "-f"]).arg(path);
            }
            Kind::Nginx => {
                let path = work.join("nginx.conf");
                write(&path, &nginx(root, &work, (listen, port), is_root))?;
                command.arg("-c").arg(path).arg("-p").arg(&work);
            }
            Kind::Rclone => {
                command
                    .args(["serve", "webdav", "--addr"])
                    .arg(format!("{listen}:{port}"))
                    .arg(root)
                    .env("RCLONE_CONFIG", work.join("rclone.conf"));
            }
        }
        let log = fs::File::create(work.join("words"))
            .map_err(|error| Trouble::with_file(&work, &error))?;
        let process = command
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .stderr(log)
            .spawn()
            .map_err(|error| Trouble::new(format!("{kind:?}: {error}"), "start it again"))?;
        let mut server = Self { process, port };
        server.begins(kind, &work)?;
        Ok(server)
    }

    /// Waits until it listens.
    fn begins(&mut self, kind: Kind, work: &Path) -> Outcome<()> {
        let begun = Instant::now();
        let address = SocketAddr::from((Ipv4Addr::LOCALHOST, self.port));
        while begun.elapsed() < PATIENCE {
            if TcpStream::connect(address).is_ok() {
                return Ok(());
            }
            if !matches!(self.process.try_wait(), Ok(None)) {
                break;
            }
            std::thread::sleep(Duration::from_millis(30));
        }
        let said = fs::read_to_string(work.join("words")).unwrap_or_default();
        Err(Trouble::new(
            format!("{kind:?} did not begin to listen: {said}"),
            "see what it says above; is its port free?",
        ))
    }

    /// Its port.
    #[must_use]
    pub const fn port(&self) -> u16 {
        self.port
    }

    /// Waits until it ends; it does so by itself only where it fails.
    pub fn ends(mut self) -> Outcome<()> {
        match self.process.wait() {
            Ok(status) if status.success() => Ok(()),
            Ok(status) => Err(Trouble::new(status.to_string(), "start it again")),
            Err(error) => Err(Trouble::new(error.to_string(), "start it again")),
        }
    }
}

impl Drop for ShopServer {
    fn drop(&mut self) {
        // By SIGTERM: a parent that is killed leaves its workers behind.
        let id = self.process.id().to_string();
        let asked = Command::new("kill").args(["-TERM", &id]).status();
        let begun = Instant::now();
        while asked.is_ok() && begun.elapsed() < Duration::from_secs(5) {
            if !matches!(self.process.try_wait(), Ok(None)) {
                return;
            }
            std::thread::sleep(Duration::from_millis(10));
        }
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}

fn make(folder: &Path) -> Outcome<()> {
    fs::create_dir_all(folder).map_err(|error| Trouble::with_file(folder, &error))
}

fn write(path: &Path, text: &str) -> Outcome<()> {
    fs::write(path, text).map_err(|error| Trouble::with_file(path, &error))
}

/// Gives folders to the user that Debian's servers run as.
fn give(folders: &[&Path]) -> Outcome<()> {
    crate::run::run(
        Command::new("chown").args(["-R", "www-data"]).args(folders),
        "the servers run as www-data, who must own the shop's folder",
    )
}

fn policy(root: &Path) -> Option<String> {
    let index = fs::read_to_string(root.join("index.html")).ok()?;
    let policy = content_policy(&index)?;
    Some(format!("{policy}; frame-ancestors 'none'"))
}

/// A setting of Apache with nothing of the machine's own in it.
fn apache(root: &Path, work: &Path, (listen, port): (&str, u16), is_root: bool) -> String {
    let (root_path, work) = (root.display(), work.display());
    let modules: String = [
        "mpm_event",
        "authz_core",
        "mime",
        "dir",
        "headers",
        "alias",
        "dav",
        "dav_fs",
    ]
    .iter()
    .map(|name| format!("LoadModule {name}_module /usr/lib/apache2/modules/mod_{name}.so\n"))
    .collect();
    let user = if is_root {
        "User www-data\nGroup www-data\n"
    } else {
        ""
    };
    let header = policy(root).map_or(String::new(), |policy| {
        format!("Header always set Content-Security-Policy \"{policy}\"\n")
    });
    format!(
        "ServerRoot \"{work}\"\nPidFile \"{work}/pid\"\nErrorLog \"{work}/errors\"\n\
         ServerName localhost\nListen {listen}:{port}\n{modules}{user}\
         TypesConfig /dev/null\nDavLockDB \"{work}/locks\"\n\
         DocumentRoot \"{root_path}\"\nDirectoryIndex index.html\n\
         AddType text/html .html\nAddType text/javascript .js\nAddType text/css .css\n\
         AddType application/wasm .wasm\nAddType application/manifest+json .webmanifest\n\
         AddType image/svg+xml .svg\nAddType image/png .png\nAddType text/plain .txt .index\n\
         <Directory \"{root_path}\">\nRequire all granted\n{header}\
         Header always set X-Content-Type-Options nosniff\n\
         Header always set Permissions-Policy \"{PERMITTED}\"\n\
         Header always set Cache-Control no-cache\n</Directory>\n\
         <Directory \"{work}\">\nRequire all denied\n</Directory>\n\
         <Directory \"{root_path}/shop\">\nDav On\nDirectoryIndex disabled\n</Directory>\n"
    )
}

fn nginx(root: &Path, work: &Path, (listen, port): (&str, u16), is_root: bool) -> String {
    let (root, work) = (root.display(), work.display());
    let user = if is_root { "user root;\n" } else { "" };
    let temporary: String = ["proxy", "fastcgi", "uwsgi", "scgi"]
        .iter()
        .map(|name| format!("{name}_temp_path {work}/{name};\n"))
        .collect();
    format!(
        "load_module /usr/lib/nginx/modules/ngx_http_dav_ext_module.so;\n{user}\
         pid {work}/pid;\nerror_log {work}/errors;\ndaemon off;\nevents {{}}\n\
         http {{\naccess_log off;\nclient_body_temp_path {work}/body;\n{temporary}\
         types {{ text/html html; text/javascript js; text/css css; application/wasm wasm; \
         text/plain txt index; application/manifest+json webmanifest; image/svg+xml svg; \
         image/png png; }}\n\
         server {{\nlisten {listen}:{port};\nroot {root};\n\
         location /server/ {{ return 404; }}\n\
         location /shop/ {{\ndav_methods PUT DELETE MKCOL;\n\
         dav_ext_methods PROPFIND OPTIONS;\ndav_access user:rw group:rw;\n\
         client_max_body_size 8m;\n}}\n}}\n}}\n"
    )
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test stops at the first surprise
mod tests {
    use super::*;

    #[test]
    fn a_port_that_is_taken_is_told() {
        let root = tempfile::tempdir().unwrap();
        let taken = TcpListener::bind(("127.0.0.1", 0)).unwrap();
        let port = taken.local_addr().unwrap().port();
        let kinds = Kind::ALL.into_iter().filter(|kind| kind.is_there());
        for kind in kinds {
            let begun = ShopServer::start(kind, root.path(), port, Reach::Here);
            let told = begun.unwrap_err().to_string();
            assert!(told.contains(&format!("port {port}")), "{told}");
        }
    }
}
