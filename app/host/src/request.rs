//! The little of HTTP that a static page asks for.

use std::io::BufRead;
use std::path::{Component, Path, PathBuf};

/// The longest request head that is read.
const HEAD_LIMIT: u64 = 16 * 1024;

/// A request's head.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Request {
    /// The method, as sent.
    pub method: String,
    /// The path, without its query.
    pub path: String,
    /// The digest that the browser's copy has, if it has one.
    pub if_none_match: Option<String>,
}

impl Request {
    /// Reads one head; `None` when it is none.
    pub fn read(from: impl BufRead) -> Option<Self> {
        let mut lines = from.take(HEAD_LIMIT).lines();
        let first = lines.next()?.ok()?;
        let mut words = first.split(' ');
        let (method, target) = (words.next()?.to_owned(), words.next()?);
        if !words.next()?.starts_with("HTTP/1.") {
            return None;
        }
        let path = target.split(['?', '#']).next()?.to_owned();
        let mut if_none_match = None;
        for line in lines {
            let line = line.ok()?;
            if line.is_empty() {
                return Some(Self { method, path, if_none_match });
            }
            let (name, value) = line.split_once(':')?;
            if name.eq_ignore_ascii_case("if-none-match") {
                if_none_match = Some(value.trim().to_owned());
            }
        }
        None
    }

    /// The file below the served folder that the path names; `None` for anything that points elsewhere or
    /// at a hidden file.
    pub fn relative_file(&self) -> Option<PathBuf> {
        let decoded = percent_decoded(self.path.strip_prefix('/')?)?;
        if decoded.contains(['\\', '\0', ':']) {
            return None;
        }
        let mut file = PathBuf::new();
        for part in Path::new(&decoded).components() {
            match part {
                Component::Normal(name) if !name.to_str()?.starts_with('.') => file.push(name),
                _ => return None,
            }
        }
        if decoded.is_empty() || decoded.ends_with('/') {
            file.push("index.html");
        }
        Some(file)
    }
}

fn percent_decoded(text: &str) -> Option<String> {
    let mut bytes = text.bytes();
    let mut out = Vec::new();
    while let Some(byte) = bytes.next() {
        if byte == b'%' {
            let digits = [bytes.next()?, bytes.next()?];
            out.push(u8::from_str_radix(std::str::from_utf8(&digits).ok()?, 16).ok()?);
        } else {
            out.push(byte);
        }
    }
    String::from_utf8(out).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(path: &str) -> Option<PathBuf> {
        let request = Request { method: "GET".into(), path: path.into(), if_none_match: None };
        request.relative_file()
    }

    #[test]
    fn a_head_is_read() {
        let head = "GET /a.js?x=1 HTTP/1.1\r\nHost: h\r\nIf-None-Match: \"d\"\r\n\r\n";
        let request = Request::read(head.as_bytes()).unwrap();
        assert_eq!((request.method.as_str(), request.path.as_str()), ("GET", "/a.js"));
        assert_eq!(request.if_none_match.as_deref(), Some("\"d\""));
        assert_eq!(Request::read(&b"\x16\x03\x01 not http"[..]), None);
        assert_eq!(Request::read(&b"GET / HTTP/1.1\r\nnever ends: yes\r\n"[..]), None);
    }

    #[test]
    fn paths_stay_inside() {
        assert_eq!(file("/"), Some("index.html".into()));
        assert_eq!(file("/assets/a%20b.svg"), Some("assets/a b.svg".into()));
        for outside in [
            "/../x",
            "/a/../../x",
            "/%2e%2e/x",
            "/..%2fx",
            "//etc/passwd",
            "/.git/config",
            "/a\\..\\x",
            "/c:/x",
            "/%0",
            "x",
        ] {
            assert_eq!(file(outside), None, "{outside}");
        }
    }
}
