//! Writes the files that stand beside the module: the shell, the styles, the assets, the licence.

use std::fs;
use std::path::{Path, PathBuf};

use crate::compile::Effort;
use crate::house::House;
use crate::{Failure, notices, policy, sounds, squeeze};

/// The line of the shell that the policy's element replaces.
const POLICY_MARK: &str = "<!-- content-security-policy -->";

/// The folder of the styles: all of them become one file, in the order of their names.
const STYLES: &str = "styles";

/// The folder of the books of words: what a drill needs of the English one is compiled into the module.
pub const WORDS: &str = "words";

/// What is delivered beside the module: the rest of the English book, fetched after the start, and what is fetched
/// when a reader chooses it.
const BOOKS: [(&str, &str); 2] = [("en-later.ftl", words::LATER), ("es.ftl", words::SPANISH)];

/// Every tagged constant of the simulated world, fetched by the page that lists them.
const SOURCES: &str = "sources.txt";

/// The folder of what a page fetches only when it is asked for.
pub const ASKED: &str = "asked";

/// The folder of the licence texts: delivered with the page, never loaded by it.
pub const LICENCES: &str = "licences";

/// The styles of the gallery, which only a quick build has.
const GALLERY: &str = "90-gallery.css";

/// Writes everything but the module into `out`.
pub fn write_all(house: &House, effort: Effort, out: &Path) -> Result<(), Failure> {
    write(&out.join("index.html"), shell(&read(&house.shell())?).as_bytes())?;
    write(&out.join("style.css"), styles(&house.assets().join(STYLES), effort)?.as_bytes())?;
    let licences = out.join(LICENCES);
    write(&licences.join("tankwright.txt"), licence(house)?.as_bytes())?;
    write(&licences.join("packages.txt"), notices::of_page(house)?.as_bytes())?;
    let assets = out.join("assets");
    copy_assets(&house.assets(), &assets)?;
    for (name, book) in BOOKS {
        write(&assets.join(WORDS).join(name), book.as_bytes())?;
    }
    for (name, sound) in [("tone.wav", sounds::tone()), ("click.wav", sounds::click())] {
        write(&assets.join(ASKED).join(name), &sound?)?;
    }
    write(&assets.join(ASKED).join(SOURCES), words::sources::list().as_bytes())
}

/// The shell with the policy in its head.
fn shell(source: &str) -> String {
    source.replace(POLICY_MARK, &policy::content_security_element())
}

fn styles(folder: &Path, effort: Effort) -> Result<String, Failure> {
    let mut all = String::new();
    let wanted = |path: &&PathBuf| {
        let gallery = path.file_name().is_some_and(|name| name == GALLERY);
        path.extension().is_some_and(|end| end == "css") && (effort == Effort::Quick || !gallery)
    };
    for path in children(folder)?.iter().filter(wanted) {
        all.push_str(&read(path)?);
    }
    Ok(squeeze::styles(&all))
}

fn licence(house: &House) -> Result<String, Failure> {
    let mit = read(&house.root().join("LICENSE-MIT"))?;
    let apache = read(&house.root().join("LICENSE-APACHE"))?;
    Ok(format!(
        "Tankwright is licensed under either of the two licences below, at your choice.\n\n{mit}\n\n{apache}"
    ))
}

fn copy_assets(from: &Path, to: &Path) -> Result<(), Failure> {
    for path in children(from)? {
        let Some(name) = path.file_name() else { continue };
        let target = to.join(name);
        if path.extension().is_some_and(|end| end == "ftl") {
            continue;
        }
        if path.is_file() {
            write(&target, &fs::read(&path).map_err(|source| Failure::Read { path: path.clone(), source })?)?;
        } else if name != STYLES {
            copy_assets(&path, &target)?;
        }
    }
    Ok(())
}

/// What is in a folder, by name; a missing folder is empty.
fn children(folder: &Path) -> Result<Vec<PathBuf>, Failure> {
    if !folder.exists() {
        return Ok(Vec::new());
    }
    let fail = |source| Failure::Read { path: folder.to_path_buf(), source };
    let entries: Result<Vec<_>, _> = fs::read_dir(folder).map_err(fail)?.collect();
    let mut paths: Vec<_> = entries.map_err(fail)?.into_iter().map(|entry| entry.path()).collect();
    paths.sort();
    Ok(paths)
}

fn read(path: &Path) -> Result<String, Failure> {
    fs::read_to_string(path).map_err(|source| Failure::Read { path: path.to_path_buf(), source })
}

fn write(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let fail = |source| Failure::Write { path: path.to_path_buf(), source };
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(fail)?;
    }
    fs::write(path, bytes).map_err(fail)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_shell_has_the_policy_no_inline_code_and_relative_addresses() {
        let shell = shell(&read(&House::find().unwrap().shell()).unwrap());
        assert!(shell.contains("Content-Security-Policy"));
        assert!(!shell.contains(POLICY_MARK));
        assert!(!shell.contains("<style") && !shell.contains("style="));
        for script in shell.match_indices("<script").map(|(at, _)| &shell[at..]) {
            let tag = script.split('>').next().unwrap();
            assert!(tag.contains("src="), "inline script: {tag}");
        }
        for address in ["src=\"/", "href=\"/", "://"] {
            assert!(!shell.contains(address), "not relative: {address}");
        }
    }
}
