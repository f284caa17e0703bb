//! `tankwright trace`: folds attempt files and prints each step with all that came of it.

use std::fs;
use std::path::{Path, PathBuf};

use drill::{Grader, Rubric};
use lexopt::prelude::*;
use words::{Units, Voice};

use crate::Failure;
use crate::attempts;

/// What to trace.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Options {
    /// Attempt files, or folders of them.
    pub files: Vec<PathBuf>,
    /// A folder for the network at the end of each attempt.
    pub netlist: Option<PathBuf>,
    /// SI units instead of US customary.
    pub si: bool,
    /// A rubric of one's own.
    pub rubric: Option<PathBuf>,
}

impl Options {
    /// Reads the rest of a command line.
    pub fn parse(parser: &mut lexopt::Parser) -> Result<Self, Failure> {
        let mut options = Self::default();
        while let Some(arg) = parser.next()? {
            match arg {
                Long("netlist") => options.netlist = Some(parser.value()?.into()),
                Long("rubric") => options.rubric = Some(parser.value()?.into()),
                Long("si") => options.si = true,
                Value(file) => options.files.push(file.into()),
                other => return Err(other.unexpected().into()),
            }
        }
        if options.files.is_empty() {
            return Err(Failure::Usage("trace needs at least one attempt file".to_owned()));
        }
        Ok(options)
    }
}

/// Traces every file; what is wrong is told and the others go on.
pub fn run(options: &Options) -> Result<(), Failure> {
    let voice = Voice::english(if options.si { Units::Si } else { Units::Customary });
    let rubric = attempts::rubric(options.rubric.as_deref()).map_err(Failure::Usage)?;
    let mut grader = Grader::new();
    let files = attempts::files(&options.files);
    let mut bad = 0;
    for file in &files {
        match one(file, options, &voice, &rubric, &mut grader) {
            Ok(text) => crate::say(&format!("== {}\n{text}\n", file.display())),
            Err(problem) => {
                eprintln!("{problem}");
                bad += 1;
            }
        }
    }
    if bad > 0 { Err(Failure::Files { bad, of: files.len() }) } else { Ok(()) }
}

fn one(
    file: &Path,
    options: &Options,
    voice: &Voice,
    rubric: &Rubric,
    grader: &mut Grader,
) -> Result<String, String> {
    let attempt = attempts::read(file)?;
    let drill = grader.drill(&attempt.order).map_err(|e| format!("{}: {e}", file.display()))?;
    let states = drill::replay::states(&drill, &attempt.actions);
    let Some(last) = states.last() else { return Ok(String::new()) };
    let score = drill::judge(&drill, last, rubric);
    if let Some(folder) = &options.netlist {
        netlist(file, folder, &last.home.plant)?;
    }
    Ok(voice.trace(&attempt, &drill, &states, &score))
}

/// Writes `NAME.cir` and our own solution `NAME.sol` (node, real, imaginary; RMS volts).
fn netlist(file: &Path, folder: &Path, plant: &plant::Plant) -> Result<(), String> {
    let name = file.file_stem().map_or_else(|| "attempt".to_owned(), |s| s.to_string_lossy().into_owned());
    let written = plant.netlist(&[], &name).map_err(|e| format!("{}: {e}", file.display()))?;
    fs::create_dir_all(folder).map_err(|e| format!("{}: {e}", folder.display()))?;
    for (ending, text) in [("cir", &written.netlist), ("sol", &written.solution)] {
        let path = folder.join(format!("{name}.{ending}"));
        fs::write(&path, text).map_err(|e| format!("{}: cannot be written: {e}", path.display()))?;
    }
    Ok(())
}
