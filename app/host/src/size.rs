//! How many bytes the page is, as they are and as a host sends them.

use std::fs;
use std::io::Write as _;
use std::path::Path;

use flate2::{Compression, write::GzEncoder};

use crate::statics::{ASKED, LICENCES, WORDS};

/// Bytes of one or more files.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Size {
    /// As they lie on disk.
    pub plain: u64,
    /// After gzip at its default effort, each file on its own.
    pub gzip: u64,
}

/// The bytes of a page before a drill can start: every file below `folder` but the licence texts, the words fetched after
/// the start or when their language is chosen, and what a page fetches that is asked for; what cannot be read counts as
/// nothing.
pub fn of_page(folder: &Path) -> Size {
    let mut sum = Size::default();
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        if [LICENCES, WORDS, ASKED].iter().any(|folder| path.ends_with(folder)) {
            continue;
        }
        let size = if path.is_dir() { of_page(&path) } else { of_file(&path) };
        sum.plain += size.plain;
        sum.gzip += size.gzip;
    }
    sum
}

/// The bytes of one file.
pub fn of_file(path: &Path) -> Size {
    let bytes = fs::read(path).unwrap_or_default();
    let mut encoder = GzEncoder::new(Vec::new(), Compression::default());
    let gzip = encoder.write_all(&bytes).and_then(|()| encoder.finish()).map_or(0, |packed| packed.len());
    Size { plain: bytes.len() as u64, gzip: gzip as u64 }
}

impl std::fmt::Display for Size {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} kB, {} kB gzipped", self.plain.div_ceil(1000), self.gzip.div_ceil(1000))
    }
}
