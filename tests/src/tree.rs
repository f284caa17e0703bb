//! The source tree: where it is and which files it has.

use std::fs;
use std::path::{Path, PathBuf};

/// The project's folder.
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// The folder for what the checks leave behind: pictures, figures, logs.
pub fn out() -> PathBuf {
    let folder = root().join("tests/out");
    fs::create_dir_all(&folder).expect("tests/out can be made");
    folder
}

/// Every file below a folder of the project, by name; build output and hidden folders left out.
pub fn files_below(folder: &Path) -> Vec<PathBuf> {
    let mut all = Vec::new();
    collect(folder, &mut all);
    all.sort();
    all
}

fn collect(folder: &Path, all: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let path = entry.path();
        let name = entry.file_name();
        if path.is_dir() {
            let skipped = ["target", "dist", "out"].iter().any(|skip| name == *skip);
            if !skipped && !name.to_string_lossy().starts_with('.') {
                collect(&path, all);
            }
        } else {
            all.push(path);
        }
    }
}
