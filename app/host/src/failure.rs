//! What can go wrong in the native program, in words that say what to do next.

use std::path::PathBuf;

/// A failure the user is told about.
#[derive(Debug, thiserror::Error)]
pub enum Failure {
    /// The command line was not understood.
    #[error("{0}\nTry `tankwright help`.")]
    Usage(String),
    /// The compiler's WebAssembly target is missing and could not be added.
    #[error(
        "the compiler's target wasm32-unknown-unknown is missing and could not be added ({reason}).\n\
         Add it by hand: rustup target add wasm32-unknown-unknown"
    )]
    NoTarget {
        /// What rustup or the compiler said.
        reason: String,
    },
    /// A program that has to be there is not.
    #[error("cannot start `{program}`: {source}")]
    NoProgram {
        /// The program's name.
        program: String,
        /// Why it did not start.
        source: std::io::Error,
    },
    /// The page did not compile; the compiler has said why.
    #[error("the page did not compile; the compiler's messages are above")]
    Compile,
    /// The module could not be bound to the browser.
    #[error("the compiled page could not be prepared for the browser: {0}")]
    Bind(String),
    /// The module could not be laid out anew.
    #[error("the compiled page could not be laid out to compress well: {0}")]
    Pack(String),
    /// The page's sounds could not be made.
    #[error("the page's sounds could not be made: {0}")]
    Sound(#[from] hound::Error),
    /// A folder or file cannot be written.
    #[error("cannot write {}: {source}.\nName a folder that can be written with --out DIR", path.display())]
    Write {
        /// What was being written.
        path: PathBuf,
        /// Why it failed.
        source: std::io::Error,
    },
    /// A file cannot be read.
    #[error("cannot read {}: {source}", path.display())]
    Read {
        /// What was being read.
        path: PathBuf,
        /// Why it failed.
        source: std::io::Error,
    },
    /// Another program listens on the port.
    #[error(
        "port {port} is in use by another program (perhaps this one, started before).\n\
         Choose another with --port N, or --port 0 for any that is free"
    )]
    PortInUse {
        /// The port asked for.
        port: u16,
    },
    /// The address cannot be listened on for another reason.
    #[error("cannot listen on port {port}: {source}")]
    Listen {
        /// The port asked for.
        port: u16,
        /// Why it failed.
        source: std::io::Error,
    },
    /// Some of the files named could not be used; each has been told about.
    #[error("{bad} of {of} files could not be used; the reasons are above")]
    Files {
        /// How many.
        bad: usize,
        /// Of how many.
        of: usize,
    },
    /// The program was started outside its source tree.
    #[error(
        "the sources of the page (Cargo.toml, index.html and app/) are not here or in any folder above.\n\
         Start from the project's folder with `cargo run`"
    )]
    NoHouse,
}

impl From<lexopt::Error> for Failure {
    fn from(error: lexopt::Error) -> Self {
        Self::Usage(error.to_string())
    }
}
