//! Attempt files from the command line: found, read, with the rubric they are judged under.

use std::fs;
use std::path::{Path, PathBuf};

use drill::{Attempt, Rubric};

/// Reads one attempt file; what is wrong comes with the file's name, and the line where there is one.
pub fn read(path: &Path) -> Result<Attempt, String> {
    let text = fs::read_to_string(path).map_err(|e| format!("{}: cannot be read: {e}", path.display()))?;
    Attempt::read(&text).map_err(|e| format!("{}: {e}", path.display()))
}

/// Files named, with folders opened one level deep for their `.json` files, in order of name.
pub fn files(named: &[PathBuf]) -> Vec<PathBuf> {
    let mut all = Vec::new();
    for path in named {
        match fs::read_dir(path) {
            Ok(folder) => {
                let mut inside: Vec<PathBuf> = folder
                    .filter_map(|e| Some(e.ok()?.path()))
                    .filter(|p| p.extension().is_some_and(|x| x == "json"))
                    .collect();
                inside.sort();
                all.extend(inside);
            }
            Err(_) => all.push(path.clone()),
        }
    }
    all
}

/// A rubric from a file, or the plain one.
pub fn rubric(path: Option<&Path>) -> Result<Rubric, String> {
    let Some(path) = path else { return Ok(Rubric::plain()) };
    let text = fs::read_to_string(path).map_err(|e| format!("{}: cannot be read: {e}", path.display()))?;
    Rubric::read(&text).map_err(|e| format!("{}: {e}", path.display()))
}
