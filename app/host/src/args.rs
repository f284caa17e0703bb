//! The command line.

use crate::{Failure, build, grade, serve, trace};

/// What `tankwright help` prints.
const HELP: &str = "\
Tankwright: practise the service call on an electric storage water heater.

tankwright [serve] [--port N] [--no-open] [--debug] [--out DIR]
    build the page, serve it on loopback, open it in the browser
tankwright build [--out DIR] [--debug]
    leave the static files in one folder (default: dist) for any web host
tankwright trace FILE... [--netlist DIR] [--rubric FILE] [--si]
    fold attempt files and print each step: clock, act, what it showed, harm, lines of the score;
    with --netlist also the electrical network at the end, NAME.cir, and our solution of it, NAME.sol
tankwright grade FILE... [--csv FILE] [--rubric FILE]
    fold attempt files (or folders of them) and print the class table
tankwright help

--port N    the port on loopback (default 4280; 0 takes any that is free)
--no-open   only print the address
--debug     compile quickly instead of small and fast
--out DIR   the folder for the static files
";

/// One command; each lives in the file of its name.
#[derive(Clone, Debug, PartialEq)]
pub enum Command {
    /// Build, serve, open.
    Serve(serve::Options),
    /// Leave the static files in a folder.
    Build(build::Options),
    /// Fold attempt files and print each step.
    Trace(trace::Options),
    /// Fold attempt files and print the class table.
    Grade(grade::Options),
    /// Print what there is.
    Help,
}

impl Command {
    /// Reads this process's command line.
    pub fn from_env() -> Result<Self, Failure> {
        Self::parse(lexopt::Parser::from_env())
    }

    /// Reads a command line; options without a command belong to `serve`.
    pub fn parse(mut parser: lexopt::Parser) -> Result<Self, Failure> {
        let named = parser.raw_args()?.peek().and_then(|first| first.to_str()).map(str::to_owned);
        let command = named.filter(|first| !first.starts_with('-') || is_help(first));
        if command.is_some() {
            parser.next()?;
        }
        match command.as_deref() {
            None => Ok(Self::Serve(serve::Options::parse(&mut parser)?)),
            Some("serve") => Ok(Self::Serve(serve::Options::parse(&mut parser)?)),
            Some("build") => Ok(Self::Build(build::Options::parse(&mut parser)?)),
            Some("trace") => Ok(Self::Trace(trace::Options::parse(&mut parser)?)),
            Some("grade") => Ok(Self::Grade(grade::Options::parse(&mut parser)?)),
            Some("help" | "-h" | "--help") => Ok(Self::Help),
            Some(other) => Err(Failure::Usage(format!("there is no command '{other}'"))),
        }
    }

    /// Does it.
    pub fn run(self) -> Result<(), Failure> {
        match self {
            Self::Serve(options) => serve::run(&options),
            Self::Build(options) => build::run(&options),
            Self::Trace(options) => trace::run(&options),
            Self::Grade(options) => grade::run(&options),
            Self::Help => {
                print!("{HELP}");
                Ok(())
            }
        }
    }
}

fn is_help(word: &str) -> bool {
    matches!(word, "-h" | "--help")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::compile::Effort;

    fn parse(words: &[&str]) -> Result<Command, Failure> {
        Command::parse(lexopt::Parser::from_args(words))
    }

    #[test]
    fn nothing_means_serve_and_options_alone_belong_to_it() {
        assert_eq!(parse(&[]).unwrap(), Command::Serve(serve::Options::default()));
        let Command::Serve(options) = parse(&["--port", "0", "--no-open", "--debug"]).unwrap() else {
            panic!("not serve")
        };
        assert_eq!((options.port, options.open, options.build.effort), (0, false, Effort::Quick));
    }

    #[test]
    fn build_takes_a_folder() {
        let expected = build::Options { out: Some("site".into()), effort: Effort::Full };
        assert_eq!(parse(&["build", "--out", "site"]).unwrap(), Command::Build(expected));
    }

    #[test]
    fn help_is_help_and_anything_else_is_refused_with_words() {
        assert_eq!(parse(&["--help"]).unwrap(), Command::Help);
        for wrong in [&["fly"][..], &["--port", "many"], &["build", "--port", "1"]] {
            let said = parse(wrong).unwrap_err().to_string();
            assert!(said.contains("tankwright help"), "{said}");
        }
    }
}
