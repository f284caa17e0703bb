//! The page that every browser of a run is shown: built at most once, served as the native program does.

use std::path::PathBuf;
use std::sync::OnceLock;

use host::{Server, build};

static ADDRESS: OnceLock<String> = OnceLock::new();
static FOLDER: OnceLock<PathBuf> = OnceLock::new();

/// Where the page is served.
pub fn address() -> &'static str {
    ADDRESS.get_or_init(|| {
        let listener = Server::listen(0).expect("some port is free");
        Server::new(listener, folder().clone()).spawn()
    })
}

/// The folder with the page's static files.
pub fn folder() -> &'static PathBuf {
    FOLDER.get_or_init(|| match std::env::var_os("TANKWRIGHT_DIST").map(PathBuf::from) {
        Some(folder) if folder.join("index.html").is_file() => folder,
        _ => build::page(&build::Options::default()).unwrap_or_else(|failure| panic!("{failure}")),
    })
}
