//! Compiles the page to WebAssembly and binds it to the browser.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use wasm_bindgen_cli_support::Bindgen;

use crate::house::House;
use crate::{Failure, pack, squeeze};

/// The compiler's name for WebAssembly in a browser.
const TARGET: &str = "wasm32-unknown-unknown";

/// The module's name beside the page; the binder takes it from the page's.
pub const MODULE: &str = "tankwright_bg.wasm";

/// The script that starts the module; the binder names it too.
const GLUE: &str = "tankwright.js";

/// How much the compiler does for the page.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Effort {
    /// Small and fast, as it is delivered.
    #[default]
    Full,
    /// Soon done, for work on the page itself.
    Quick,
}

impl Effort {
    fn profile(self) -> &'static str {
        match self {
            Self::Full => "page",
            Self::Quick => "dev",
        }
    }

    fn folder(self) -> &'static str {
        match self {
            Self::Full => "page",
            Self::Quick => "debug",
        }
    }
}

/// Compiles the page and writes `tankwright.js` and `tankwright_bg.wasm` into `out`.
pub fn page(house: &House, effort: Effort, out: &Path) -> Result<(), Failure> {
    ensure_target()?;
    let module = compile(house, effort)?;
    bind(&module, effort, out)?;
    if effort == Effort::Full {
        tighten(&out.join(MODULE), &out.join(GLUE))?;
    }
    Ok(())
}

/// Takes comments and indentation out of the script that starts the module, and lays the bound module out anew; both in
/// their places.
fn tighten(module: &Path, glue: &Path) -> Result<(), Failure> {
    let unread = |path: &Path| {
        let path = path.to_path_buf();
        |source| Failure::Read { path, source }
    };
    let source = fs::read_to_string(glue).map_err(unread(glue))?;
    let bytes = fs::read(module).map_err(unread(module))?;
    let (laid, script) = pack::tighten(&bytes, &squeeze::script(&source))?;
    for (path, bytes) in [(module, laid), (glue, script.into_bytes())] {
        fs::write(path, bytes).map_err(|source| Failure::Write { path: path.to_path_buf(), source })?;
    }
    Ok(())
}

/// Adds the compiler's WebAssembly target when it is not there.
fn ensure_target() -> Result<(), Failure> {
    if has_target() {
        return Ok(());
    }
    eprintln!("Adding the compiler's target {TARGET} (some seconds, once) …");
    let added = Command::new("rustup").args(["target", "add", TARGET]).status();
    match added {
        Ok(status) if status.success() && has_target() => Ok(()),
        Ok(status) => Err(Failure::NoTarget { reason: format!("rustup: {status}") }),
        Err(error) => Err(Failure::NoTarget { reason: format!("rustup: {error}") }),
    }
}

fn has_target() -> bool {
    let rustc = std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    Command::new(rustc)
        .args(["--print", "target-libdir", "--target", TARGET])
        .output()
        .ok()
        .filter(|answer| answer.status.success())
        .and_then(|answer| String::from_utf8(answer.stdout).ok())
        .is_some_and(|folder| Path::new(folder.trim()).is_dir())
}

fn compile(house: &House, effort: Effort) -> Result<PathBuf, Failure> {
    let target = house.page_target();
    if !target.join(TARGET).join(effort.folder()).is_dir() {
        eprintln!("Compiling the page; the first time this takes a minute or two …");
    }
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let status = Command::new(&cargo)
        .current_dir(house.root())
        .args(["build", "--package", "tankwright-app", "--target", TARGET, "--profile", effort.profile()])
        .arg("--target-dir")
        .arg(&target)
        // Native-only flags of the surrounding build would not suit this target.
        .env_remove("RUSTFLAGS")
        .env_remove("CARGO_ENCODED_RUSTFLAGS")
        .status()
        .map_err(|source| Failure::NoProgram { program: cargo.to_string_lossy().into_owned(), source })?;
    if !status.success() {
        return Err(Failure::Compile);
    }
    Ok(target.join(TARGET).join(effort.folder()).join("tankwright-app.wasm"))
}

fn bind(module: &Path, effort: Effort, out: &Path) -> Result<(), Failure> {
    let names = effort == Effort::Quick;
    let mut bindgen = Bindgen::new();
    bindgen
        .input_path(module)
        .out_name("tankwright")
        .typescript(false)
        .omit_default_module_path(false)
        .keep_debug(names)
        .remove_name_section(!names)
        .remove_producers_section(true);
    bindgen
        .web(true)
        .and_then(|bindgen| bindgen.generate(out))
        .map_err(|error| Failure::Bind(format!("{error:#}")))
}
