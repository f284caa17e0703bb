//! `tankwright` or `tankwright serve`: builds the page, serves it on loopback and opens it.

use lexopt::prelude::*;

use crate::compile::Effort;
use crate::{Failure, Server, build, open};

/// The port when nobody says otherwise.
pub const PORT: u16 = 4280;

/// How to serve.
#[derive(Clone, Debug, PartialEq)]
pub struct Options {
    /// The port on loopback; 0 takes any that is free.
    pub port: u16,
    /// Whether to open the page in the user's browser.
    pub open: bool,
    /// What is built before it is served.
    pub build: build::Options,
}

impl Default for Options {
    fn default() -> Self {
        Self { port: PORT, open: true, build: build::Options::default() }
    }
}

impl Options {
    /// Reads the rest of a command line.
    pub fn parse(parser: &mut lexopt::Parser) -> Result<Self, Failure> {
        let mut options = Self::default();
        while let Some(arg) = parser.next()? {
            match arg {
                Long("port") => options.port = parser.value()?.parse()?,
                Long("no-open") => options.open = false,
                Long("out") => options.build.out = Some(parser.value()?.into()),
                Long("debug") => options.build.effort = Effort::Quick,
                other => return Err(other.unexpected().into()),
            }
        }
        Ok(options)
    }
}

/// Builds and serves until the process is ended.
pub fn run(options: &Options) -> Result<(), Failure> {
    // The port first: a port in use should not cost a build.
    let listener = Server::listen(options.port)?;
    let folder = build::page(&options.build)?;
    let server = Server::new(listener, folder);
    let address = server.address();
    println!("Tankwright is at {address} (end with Ctrl-C)");
    if options.open {
        open::in_browser(&address);
    }
    server.run();
    Ok(())
}
