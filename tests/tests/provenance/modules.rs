//! The files of a crate as the compiler follows them from `lib.rs`, without what is built for tests only.

use std::fs;
use std::path::{Path, PathBuf};

use tankwright_tests::tree;

/// One file of a crate.
pub struct Source {
    /// Its path below the project's folder.
    pub file: String,
    /// Its module, as the compiler names it.
    pub module: String,
    /// Its text.
    pub text: String,
}

/// All files of a crate under `scenarios/`.
pub fn of(name: &str) -> Vec<Source> {
    let folder = tree::root().join("scenarios").join(name).join("src");
    let mut all = Vec::new();
    follow(&folder.join("lib.rs"), &folder, name.to_owned(), &mut all);
    all
}

/// `folder` is where the file's own modules lie.
fn follow(path: &Path, folder: &Path, module: String, all: &mut Vec<Source>) {
    let text = fs::read_to_string(path).expect("a module's file is there and can be read");
    let parsed = syn::parse_file(&text).expect("the source is Rust");
    let root = tree::root();
    let file = path.strip_prefix(&root).unwrap_or(path).display().to_string();
    all.push(Source { file, module: module.clone(), text });
    for item in parsed.items {
        let syn::Item::Mod(declared) = item else { continue };
        if declared.content.is_some() || super::literals::for_tests(&declared.attrs) {
            continue;
        }
        let name = declared.ident.to_string();
        let (flat, deep) = (folder.join(format!("{name}.rs")), folder.join(&name).join("mod.rs"));
        let path: PathBuf = if flat.is_file() { flat } else { deep };
        follow(&path, &folder.join(&name), format!("{module}::{name}"), all);
    }
}
