//! Where things are in the source tree.

use std::path::{Path, PathBuf};

use crate::Failure;

/// The project's folder: what is built from, and where builds go by default.
#[derive(Clone, Debug)]
pub struct House {
    root: PathBuf,
}

impl House {
    /// Looks where cargo says this package is, then from the current folder upwards.
    pub fn find() -> Result<Self, Failure> {
        let by_cargo = std::env::var_os("CARGO_MANIFEST_DIR").map(PathBuf::from);
        let here = std::env::current_dir().ok();
        let built_from = Some(PathBuf::from(env!("CARGO_MANIFEST_DIR")));
        [by_cargo, here, built_from]
            .into_iter()
            .flatten()
            .find_map(|start| start.ancestors().find(|folder| is_root(folder)).map(Path::to_path_buf))
            .map(|root| Self { root })
            .ok_or(Failure::NoHouse)
    }

    /// The folder that holds everything.
    pub fn root(&self) -> &Path {
        &self.root
    }

    /// The page's shell.
    pub fn shell(&self) -> PathBuf {
        self.root.join("index.html")
    }

    /// Styles, icons, fonts, words.
    pub fn assets(&self) -> PathBuf {
        self.root.join("assets")
    }

    /// Where the static files go when nobody says otherwise.
    pub fn dist(&self) -> PathBuf {
        self.root.join("dist")
    }

    /// Where the page is compiled: a folder of its own, so that the build started from `cargo run` or
    /// `cargo test` never waits for a lock that its parent holds.
    pub fn page_target(&self) -> PathBuf {
        let base = std::env::var_os("CARGO_TARGET_DIR").map(PathBuf::from);
        self.root.join(base.unwrap_or_else(|| PathBuf::from("target"))).join("web")
    }
}

fn is_root(folder: &Path) -> bool {
    folder.join("index.html").is_file() && folder.join("app/host/Cargo.toml").is_file()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_house_is_found_from_the_package_folder() {
        let house = House::find().unwrap();
        assert!(house.root().join("Cargo.lock").is_file());
        assert!(house.page_target().is_absolute());
    }
}
