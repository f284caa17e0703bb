//! `tankwright build`: leaves the page's static files in one folder that any web host can serve.

use std::fs;
use std::path::{Path, PathBuf};
use std::time::Instant;

use lexopt::prelude::*;

use crate::Failure;
use crate::compile::{self, Effort};
use crate::house::House;
use crate::{size, statics};

/// What to build and where to leave it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Options {
    /// The folder for the static files; `dist` in the project's folder when not said.
    pub out: Option<PathBuf>,
    /// How much the compiler does.
    pub effort: Effort,
}

impl Options {
    /// Reads the rest of a command line.
    pub fn parse(parser: &mut lexopt::Parser) -> Result<Self, Failure> {
        let mut options = Self::default();
        while let Some(arg) = parser.next()? {
            match arg {
                Long("out") => options.out = Some(parser.value()?.into()),
                Long("debug") => options.effort = Effort::Quick,
                other => return Err(other.unexpected().into()),
            }
        }
        Ok(options)
    }
}

/// Builds, and prints where the files are and how large.
pub fn run(options: &Options) -> Result<(), Failure> {
    let folder = page(options)?;
    println!("The page is in {}", folder.display());
    Ok(())
}

/// Builds the page and returns the folder with its static files.
pub fn page(options: &Options) -> Result<PathBuf, Failure> {
    let started = Instant::now();
    let house = House::find()?;
    let out = prepare(&house, options.out.as_deref())?;
    compile::page(&house, options.effort, &out)?;
    statics::write_all(&house, options.effort, &out)?;
    eprintln!(
        "Built in {:.1} s: {} (module {}; words fetched later {})",
        started.elapsed().as_secs_f64(),
        size::of_page(&out),
        size::of_file(&out.join(compile::MODULE)),
        size::of_page(&out.join("assets").join(statics::WORDS)),
    );
    Ok(out)
}

/// Makes the folder and proves that it can be written before minutes go into compiling. The default folder
/// is the program's own and is emptied; a folder that the user named keeps whatever else is in it.
fn prepare(house: &House, out: Option<&Path>) -> Result<PathBuf, Failure> {
    let folder = out.map_or_else(|| house.dist(), Path::to_path_buf);
    let fail = |source| Failure::Write { path: folder.clone(), source };
    if out.is_none() && folder.is_dir() {
        fs::remove_dir_all(&folder).map_err(fail)?;
    }
    fs::create_dir_all(&folder).map_err(fail)?;
    let probe = folder.join(".write-test");
    fs::write(&probe, b"").and_then(|()| fs::remove_file(&probe)).map_err(fail)?;
    folder.canonicalize().map_err(fail)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folder_that_cannot_be_written_is_named() {
        let house = House::find().unwrap();
        let failure = prepare(&house, Some(Path::new("/proc/nothing-here"))).unwrap_err();
        let said = failure.to_string();
        assert!(said.contains("/proc/nothing-here") && said.contains("--out"), "{said}");
    }
}
