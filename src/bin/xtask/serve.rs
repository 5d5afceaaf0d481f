//! Builds the page and serves `dist/` with the headers that a good host would send.

use std::fs::{self, File};
use std::net::{IpAddr, Ipv4Addr, SocketAddr, UdpSocket};
use std::path::{Component, Path, PathBuf};
use std::thread;

use tiny_http::{Header, Method, Request, Response, Server};

use crate::run::say;
use crate::{Outcome, build, mime};

const PORT: u16 = 8017;

/// How many requests are answered at a time, so that a slow phone holds nobody up.
const HANDS: usize = 4;

/// What the person asked for.
#[derive(Debug, PartialEq)]
pub(crate) struct Options {
    reach: Reach,
    port: u16,
}

/// Who can open the page.
#[derive(Debug, PartialEq)]
enum Reach {
    ThisMachine,
    SameNetwork,
}

impl Options {
    /// Reads `--lan` and `--port N` in any order.
    pub(crate) fn read(words: &[&str]) -> Outcome<Self> {
        let mut options = Self {
            reach: Reach::ThisMachine,
            port: PORT,
        };
        let mut words = words.iter();
        while let Some(word) = words.next() {
            match *word {
                "--lan" => options.reach = Reach::SameNetwork,
                "--port" => {
                    let number = words.next().and_then(|number| number.parse().ok());
                    options.port = number
                        .filter(|port| *port != 0)
                        .ok_or("--port needs a number from 1 to 65535 after it.")?;
                }
                other => return Err(format!("serve knows --lan and --port N, not {other}.")),
            }
        }
        Ok(options)
    }
}

/// Builds and serves until it is stopped from the keyboard.
pub(crate) fn serve(root: &Path, options: &Options) -> Outcome {
    // Before the build: who has to choose another port learns it at once.
    let server = listen(options)?;
    build::build(root)?;
    let policy = policy(root)?;
    let dist = root.join("dist");
    say(&format!("ready: http://127.0.0.1:{}/", options.port));
    if options.reach == Reach::SameNetwork {
        match own_address() {
            Some(address) => println!(
                "  for a phone in the same network: http://{address}:{}/",
                options.port
            ),
            None => println!("  no network was found for a phone to come in by."),
        }
        println!(
            "  A browser offers use without a network, and installing, only on this machine's own address or over https."
        );
    }
    println!("  Ctrl+C stops it.");
    thread::scope(|scope| {
        for _ in 0..HANDS {
            scope.spawn(|| {
                while let Ok(request) = server.recv() {
                    answer(request, &dist, &policy);
                }
            });
        }
    });
    Err("the server stopped by itself.".to_owned())
}

fn listen(options: &Options) -> Outcome<Server> {
    let host = match options.reach {
        Reach::ThisMachine => Ipv4Addr::LOCALHOST,
        Reach::SameNetwork => Ipv4Addr::UNSPECIFIED,
    };
    let port = options.port;
    Server::http(SocketAddr::new(IpAddr::V4(host), port)).map_err(|error| {
        format!(
            "port {port} cannot be had ({error}). Is it served already in another window? \
             Else choose another: `cargo xtask serve --port {}`.",
            port.checked_add(1).unwrap_or(PORT)
        )
    })
}

/// The page's own policy, and that no other page may frame it, which only a header can say.
fn policy(root: &Path) -> Outcome<String> {
    let page = fs::read_to_string(root.join("index.html"))
        .map_err(|error| format!("index.html cannot be read: {error}"))?;
    let policy = page
        .split_once("http-equiv=\"Content-Security-Policy\" content=\"")
        .and_then(|(_, rest)| rest.split_once('"'))
        .map(|(policy, _)| policy)
        .ok_or("index.html holds no Content-Security-Policy.")?;
    Ok(format!("{policy}; frame-ancestors 'none'"))
}

fn answer(request: Request, dist: &Path, policy: &str) {
    let file = match request.method() {
        Method::Get | Method::Head => locate(dist, request.url()),
        _ => None,
    };
    let opened = file.and_then(|path| Some((File::open(&path).ok()?, path)));
    // The other side may have gone away meanwhile, which harms nobody.
    let _gone = match opened {
        None => request.respond(Response::from_string("Not here.\n").with_status_code(404)),
        Some((file, path)) => {
            let mut response = Response::from_file(file);
            for (name, value) in headers(&path, policy) {
                if let Ok(header) = Header::from_bytes(name, value) {
                    response.add_header(header);
                }
            }
            request.respond(response)
        }
    };
}

fn headers<'a>(path: &Path, policy: &'a str) -> [(&'static str, &'a str); 5] {
    [
        ("Content-Type", mime::of(path)),
        (
            "Cache-Control",
            if is_hashed(path) {
                "max-age=31536000, immutable"
            } else {
                "no-cache"
            },
        ),
        ("Content-Security-Policy", policy),
        ("X-Content-Type-Options", "nosniff"),
        ("Referrer-Policy", "no-referrer"),
    ]
}

/// Whether a name holds the hash of its content, as in `tokens-0123456789abcdef.css`.
fn is_hashed(path: &Path) -> bool {
    path.file_stem()
        .and_then(|stem| stem.to_str())
        .map(|stem| stem.trim_end_matches("_bg"))
        .and_then(|stem| stem.rsplit_once('-'))
        .is_some_and(|(_, hash)| {
            hash.len() == 16 && hash.bytes().all(|byte| byte.is_ascii_hexdigit())
        })
}

/// The file that an address means, or `None` when it is not one of the folder's.
fn locate(dist: &Path, address: &str) -> Option<PathBuf> {
    let address = address.split(['?', '#']).next()?.trim_start_matches('/');
    let relative = Path::new(if address.is_empty() {
        "index.html"
    } else {
        address
    });
    // No way up and no drive: only names may stand in it. The build makes none that need escaping.
    let plain = relative
        .components()
        .all(|part| matches!(part, Component::Normal(_)));
    let path = dist.join(relative);
    (plain && path.is_file()).then_some(path)
}

/// This machine's address in its network. Connecting this kind of socket only looks up the route: nothing is sent.
fn own_address() -> Option<IpAddr> {
    let socket = UdpSocket::bind((Ipv4Addr::UNSPECIFIED, 0)).ok()?;
    // From the block that is kept for examples in documents.
    socket.connect((Ipv4Addr::new(192, 0, 2, 1), 9)).ok()?;
    let address = socket.local_addr().ok()?.ip();
    (!address.is_loopback()).then_some(address)
}

#[cfg(test)]
mod tests {
    use std::path::Path;

    use super::{Options, Reach, is_hashed, locate};

    #[test]
    fn options_are_read_in_any_order() {
        let wanted = Ok(Options {
            reach: Reach::SameNetwork,
            port: 9000,
        });
        assert_eq!(Options::read(&["--lan", "--port", "9000"]), wanted);
        assert_eq!(Options::read(&["--port", "9000", "--lan"]), wanted);
        assert!(Options::read(&["--port"]).is_err());
        assert!(Options::read(&["--port", "70000"]).is_err());
        assert!(Options::read(&["--fast"]).is_err());
    }

    #[test]
    fn no_address_leads_out_of_the_folder() {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
        assert_eq!(
            locate(&folder, "/main.rs?x#y"),
            Some(folder.join("main.rs"))
        );
        assert_eq!(
            locate(&folder, "/bin/xtask/main.rs"),
            Some(folder.join("bin/xtask/main.rs"))
        );
        assert_eq!(locate(&folder, "/../Cargo.toml"), None);
        assert_eq!(locate(&folder, "//etc/passwd"), None);
        assert_eq!(locate(&folder, "/bin/../../Cargo.toml"), None);
        assert_eq!(locate(&folder, "/bin"), None);
    }

    #[test]
    fn only_names_with_a_hash_are_kept_for_long() {
        assert!(is_hashed(Path::new("tokens-0123456789abcdef.css")));
        assert!(is_hashed(Path::new("skimwright-0123456789abcdef_bg.wasm")));
        assert!(!is_hashed(Path::new("start.js")));
        assert!(!is_hashed(Path::new("mark-512.png")));
    }
}
