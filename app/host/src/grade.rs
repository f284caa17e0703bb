//! `tankwright grade`: folds attempt files and prints the class table.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};

use drill::{Account, Attempt, Grader, Row, Rubric};
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
    let files = attempts::files(&options.files);
    let mut rows = Vec::new();
    for graded in together(&files, &rubric) {
        match graded {
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

/// Files that one core takes at a time.
const SHARE: usize = 8;

/// All files graded on all cores, the rows in the order of the files: what one core or many make of them is the same.
fn together(files: &[PathBuf], rubric: &Rubric) -> Vec<Result<Row, String>> {
    // Attempts at one drill one after the other: each core makes it once.
    let mut order: Vec<(String, usize)> = Vec::new();
    let read: Vec<Result<Attempt, String>> = files.iter().map(|file| attempts::read(file)).collect();
    for (i, attempt) in read.iter().enumerate() {
        order.push((attempt.as_ref().map_or_else(|_| String::new(), |a| a.order.write()), i));
    }
    order.sort();
    let next = AtomicUsize::new(0);
    let done = Mutex::new(BTreeMap::new());
    let work = || {
        let mut grader = Grader::new();
        loop {
            let from = next.fetch_add(SHARE, Ordering::Relaxed);
            let share = order.iter().skip(from).take(SHARE);
            if share.len() == 0 {
                return;
            }
            for (_, i) in share {
                let (Some(file), Some(attempt)) = (files.get(*i), read.get(*i)) else { continue };
                let row =
                    attempt.as_ref().map_err(String::clone).and_then(|a| one(file, a, rubric, &mut grader));
                done.lock().unwrap_or_else(PoisonError::into_inner).insert(*i, row);
            }
        }
    };
    let cores = std::thread::available_parallelism().map_or(1, |n| n.get()).min(files.len().div_ceil(SHARE));
    std::thread::scope(|scope| {
        for _ in 1..cores {
            // A core that cannot be had leaves its share to the others.
            let _ = std::thread::Builder::new().spawn_scoped(scope, work);
        }
        work();
    });
    done.into_inner().unwrap_or_else(PoisonError::into_inner).into_values().collect()
}

fn one(file: &Path, attempt: &Attempt, rubric: &Rubric, grader: &mut Grader) -> Result<Row, String> {
    let name = file.file_name().map_or_else(String::new, |n| n.to_string_lossy().into_owned());
    grader.row(&name, attempt, rubric).map_err(|e| format!("{}: {e}", file.display()))
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
