//! Serves one folder on loopback, with the headers that the page is meant to have.

use std::fs;
use std::io::{self, BufReader, Write};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::thread;
use std::time::Duration;

use crate::request::Request;
use crate::{Failure, policy};

/// A browser opens connections ahead of need; one that says nothing is let go.
const PATIENCE: Duration = Duration::from_secs(10);

/// A static file server.
pub struct Server {
    listener: TcpListener,
    folder: Arc<Path>,
}

impl Server {
    /// Takes a port on loopback; 0 takes any that is free.
    pub fn listen(port: u16) -> Result<TcpListener, Failure> {
        TcpListener::bind((Ipv4Addr::LOCALHOST, port)).map_err(|source| match source.kind() {
            io::ErrorKind::AddrInUse => Failure::PortInUse { port },
            _ => Failure::Listen { port, source },
        })
    }

    /// A server of `folder` on a port taken before.
    pub fn new(listener: TcpListener, folder: PathBuf) -> Self {
        Self { listener, folder: folder.into() }
    }

    /// The address of the page.
    pub fn address(&self) -> String {
        let port = self.listener.local_addr().map_or(0, |address| address.port());
        format!("http://127.0.0.1:{port}/")
    }

    /// Serves until the process ends.
    pub fn run(&self) {
        for stream in self.listener.incoming().flatten() {
            let folder = Arc::clone(&self.folder);
            thread::spawn(move || {
                // A browser that goes away in the middle of an answer is nobody's error.
                drop(converse(&stream, &folder));
            });
        }
    }

    /// Serves from a thread of its own and returns the page's address.
    pub fn spawn(self) -> String {
        let address = self.address();
        thread::spawn(move || self.run());
        address
    }
}

fn converse(mut stream: &TcpStream, folder: &Path) -> io::Result<()> {
    stream.set_read_timeout(Some(PATIENCE))?;
    stream.set_write_timeout(Some(PATIENCE))?;
    if let Some(request) = Request::read(BufReader::new(stream)) {
        stream.write_all(&answer(&request, folder).bytes(request.method == "HEAD"))?;
    }
    Ok(())
}

/// An answer before it is written out.
#[derive(Debug)]
struct Answer {
    status: &'static str,
    media_type: &'static str,
    digest: Option<String>,
    body: Vec<u8>,
}

impl Answer {
    fn plain(status: &'static str) -> Self {
        Self {
            status,
            media_type: policy::media_type("txt"),
            digest: None,
            body: format!("{status}\n").into(),
        }
    }

    fn bytes(&self, head_only: bool) -> Vec<u8> {
        let mut head = format!(
            "HTTP/1.1 {}\r\nContent-Type: {}\r\nContent-Length: {}\r\nConnection: close\r\n",
            self.status,
            self.media_type,
            self.body.len()
        );
        if let Some(digest) = &self.digest {
            head.push_str(&format!("ETag: {digest}\r\n"));
        }
        for (name, value) in policy::headers() {
            head.push_str(&format!("{name}: {value}\r\n"));
        }
        head.push_str("\r\n");
        let mut all = head.into_bytes();
        if !head_only {
            all.extend_from_slice(&self.body);
        }
        all
    }
}

fn answer(request: &Request, folder: &Path) -> Answer {
    if !matches!(request.method.as_str(), "GET" | "HEAD") {
        return Answer::plain("405 Method Not Allowed");
    }
    let Some((name, body)) = request.relative_file().and_then(|file| read_inside(folder, &file)) else {
        return Answer::plain("404 Not Found");
    };
    let media_type = policy::media_type(&name);
    let digest = Some(format!("\"{}\"", quantity::Digest::of(&body)));
    if request.if_none_match == digest {
        return Answer { status: "304 Not Modified", media_type, digest, body: Vec::new() };
    }
    Answer { status: "200 OK", media_type, digest, body }
}

/// Reads a file unless a link leads it out of the folder.
fn read_inside(folder: &Path, file: &Path) -> Option<(String, Vec<u8>)> {
    let folder = folder.canonicalize().ok()?;
    let path = folder.join(file).canonicalize().ok()?;
    if !path.starts_with(&folder) {
        return None;
    }
    Some((path.file_name()?.to_str()?.to_owned(), fs::read(&path).ok()?))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn get(path: &str) -> Answer {
        let request = Request { method: "GET".into(), path: path.into(), if_none_match: None };
        answer(&request, &Path::new(env!("CARGO_MANIFEST_DIR")).join("src"))
    }

    #[test]
    fn a_file_has_its_type_and_every_header() {
        let found = get("/lib.rs");
        assert_eq!(found.status, "200 OK");
        let text = String::from_utf8(found.bytes(true)).unwrap();
        for header in ["Content-Security-Policy: default-src 'none'", "nosniff", "no-referrer", "ETag: \""] {
            assert!(text.contains(header), "{header} in {text}");
        }
        assert!(text.ends_with("\r\n\r\n"));
    }

    #[test]
    fn the_same_bytes_are_not_sent_twice() {
        let first = get("/lib.rs");
        let request = Request { method: "GET".into(), path: "/lib.rs".into(), if_none_match: first.digest };
        let again = answer(&request, &Path::new(env!("CARGO_MANIFEST_DIR")).join("src"));
        assert_eq!((again.status, again.body.len()), ("304 Not Modified", 0));
    }

    #[test]
    fn what_is_outside_or_missing_is_not_found() {
        for path in ["/../Cargo.toml", "/nothing.js", "/"] {
            assert_eq!(get(path).status, "404 Not Found", "{path}");
        }
    }

    #[test]
    fn a_port_in_use_is_named() {
        let taken = Server::listen(0).unwrap();
        let port = taken.local_addr().unwrap().port();
        let said = Server::listen(port).unwrap_err().to_string();
        assert!(said.contains(&port.to_string()) && said.contains("--port"), "{said}");
    }
}
