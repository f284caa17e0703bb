//! `tankwright grade`: folds attempt files and prints the class table.

use std::fs;
use std::path::{Path, PathBuf};

use drill::{Account, Grader, Row, Rubric};
use lexopt::prelude::*;
use words::{Units, Voice};

use crate::Failure;
use crate::attempts;

/// What to grade.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Options {
    /// Attempt files, or folders of them.
    pub files: Vec<PathBuf>,
    /// Where to write the table as CSV.
    pub csv: Option<PathBuf>,
    /// A rubric of one's own.
    pub rubric: Option<PathBuf>,
}

impl Options {
    /// Reads the rest of a command line.
    pub fn parse(parser: &mut lexopt::Parser) -> Result<Self, Failure> {
        let mut options = Self::default();
        while let Some(arg) = parser.next()? {
            match arg {
                Long("csv") => options.csv = Some(parser.value()?.into()),
                Long("rubric") => options.rubric = Some(parser.value()?.into()),
                Value(file) => options.files.push(file.into()),
                other => return Err(other.unexpected().into()),
            }
        }
        if options.files.is_empty() {
            return Err(Failure::Usage("grade needs at least one attempt file".to_owned()));
        }
        Ok(options)
    }
}

/// Grades every file; what is wrong is told and the others go on.
pub fn run(options: &Options) -> Result<(), Failure> {
    let rubric = attempts::rubric(options.rubric.as_deref()).map_err(Failure::Usage)?;
    let mut grader = Grader::new();
    let files = attempts::files(&options.files);
    let mut rows = Vec::new();
    for file in &files {
        match one(file, &rubric, &mut grader) {
            Ok(row) => rows.push(row),
            Err(problem) => eprintln!("{problem}"),
        }
    }
    crate::say(&table(&rows));
    if let Some(path) = &options.csv {
        fs::write(path, drill::csv(&rows)).map_err(|source| Failure::Write { path: path.clone(), source })?;
    }
    let bad = files.len() - rows.len();
    if bad > 0 { Err(Failure::Files { bad, of: files.len() }) } else { Ok(()) }
}

fn one(file: &Path, rubric: &Rubric, grader: &mut Grader) -> Result<Row, String> {
    let attempt = attempts::read(file)?;
    let name = file.file_name().map_or_else(String::new, |n| n.to_string_lossy().into_owned());
    grader.row(&name, &attempt, rubric).map_err(|e| format!("{}: {e}", file.display()))
}

/// The table as text, and what went wrong most.
fn table(rows: &[Row]) -> String {
    let voice = Voice::english(Units::Customary);
    let mut out = format!(
        "{:<24} {:<18} {:<22} {:<9} {:<11} {:>6} {:>7} {:>6} {:>6} {:>5} {:>5}  {}\n",
        "learner",
        "file",
        "drill",
        "seal",
        "ended",
        "safety",
        "finding",
        "repair",
        "finish",
        "all",
        "min",
        "truth / finding"
    );
    for row in rows {
        let s = &row.score;
        let [safety, finding, repair, finish] = s.reached;
        let verdict = match s.verdict {
            None => "-".to_owned(),
            Some(None) => "none".to_owned(),
            Some(Some(fault)) => fault.to_string(),
        };
        let seal = if row.seal == drill::Seal::Sealed { "sealed" } else { "unsealed" };
        out += &format!(
            "{:<24.24} {:<18.18} {:<22} {seal:<9} {:<11} {safety:>6.1} {finding:>7.1} {repair:>6.1} {finish:>6.1} {:>5.1} {:>5.0}  {} / {verdict}{}\n",
            row.learner,
            row.file,
            row.drill,
            drill::class::ended(row),
            s.total(),
            row.minutes,
            s.truth,
            if s.failed { "  FAILED" } else { "" },
        );
    }
    for account in Account::ALL {
        let most = drill::commonest(rows, account);
        if !most.is_empty() {
            out += &format!("\n{}\n", voice.account(account));
        }
        for (rule, n) in most.into_iter().take(5) {
            out += &format!("  {n:>4}  {}\n", voice.rule_right(rule));
        }
    }
    out
}
