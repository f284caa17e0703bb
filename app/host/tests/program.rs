//! The program as a user meets it: what it says when something is not as it should be.

use std::net::TcpListener;
use std::process::{Command, Output};

fn tankwright(args: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_tankwright"));
    command.args(args);
    command
}

fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stdout).into_owned() + &String::from_utf8_lossy(&output.stderr)
}

#[test]
fn help_names_the_commands() {
    let output = tankwright(&["help"]).output().unwrap();
    assert!(output.status.success());
    for word in ["serve", "build", "--port", "--out"] {
        assert!(said(&output).contains(word), "{word}: {}", said(&output));
    }
}

#[test]
fn an_unknown_command_is_refused() {
    let output = tankwright(&["bulid"]).output().unwrap();
    assert!(!output.status.success());
    assert!(said(&output).contains("no command 'bulid'"), "{}", said(&output));
}

#[test]
fn a_port_in_use_costs_no_build_and_is_named() {
    let taken = TcpListener::bind("127.0.0.1:0").unwrap();
    let port = taken.local_addr().unwrap().port().to_string();
    let output = tankwright(&["--port", &port, "--no-open"]).output().unwrap();
    assert!(!output.status.success());
    assert!(said(&output).contains(&format!("port {port} is in use")), "{}", said(&output));
    assert!(said(&output).contains("--port N"), "{}", said(&output));
}

#[test]
fn a_folder_that_cannot_be_written_is_named() {
    let output = tankwright(&["build", "--out", "/proc/no/folder"]).output().unwrap();
    assert!(!output.status.success());
    assert!(said(&output).contains("cannot write /proc/no/folder"), "{}", said(&output));
}

#[test]
fn a_target_that_cannot_be_added_is_explained() {
    let out = std::env::temp_dir().join(format!("tankwright-no-target-{}", std::process::id()));
    let output =
        tankwright(&["build", "--out"]).arg(&out).env("RUSTC", "false").env("PATH", "").output().unwrap();
    std::fs::remove_dir_all(out).unwrap();
    assert!(!output.status.success());
    assert!(said(&output).contains("rustup target add wasm32-unknown-unknown"), "{}", said(&output));
}
