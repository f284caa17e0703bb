//! Opens an address in the user's browser, where there is one.

use std::process::{Command, Stdio};

/// Opens the address; silently does nothing without a display or on a build machine.
pub fn in_browser(address: &str) {
    if std::env::var_os("CI").is_some() {
        return;
    }
    let mut command = opener();
    command.arg(address).stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    if has_display() {
        // The address is printed anyway; a machine without an opener is not an error.
        drop(command.spawn());
    }
}

#[cfg(target_os = "macos")]
fn opener() -> Command {
    Command::new("open")
}

#[cfg(target_os = "windows")]
fn opener() -> Command {
    Command::new("explorer")
}

#[cfg(not(any(target_os = "macos", target_os = "windows")))]
fn opener() -> Command {
    Command::new("xdg-open")
}

fn has_display() -> bool {
    cfg!(any(target_os = "macos", target_os = "windows"))
        || ["DISPLAY", "WAYLAND_DISPLAY"].iter().any(|name| std::env::var_os(name).is_some())
}
