//! The licences of what is compiled into the page: their texts have to travel with it.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use std::process::Command;

use serde::Deserialize;

use crate::Failure;
use crate::house::House;

/// The package whose dependencies are compiled into the page.
const PAGE: &str = "tankwright-app";

/// Beginnings of the names of files that carry a licence or a notice.
const FILES: [&str; 6] = ["LICENSE", "LICENCE", "COPYING", "COPYRIGHT", "NOTICE", "UNLICENSE"];

#[derive(Deserialize)]
struct Metadata {
    packages: Vec<Package>,
    resolve: Resolve,
}

#[derive(Deserialize)]
struct Package {
    id: String,
    name: String,
    version: String,
    license: Option<String>,
    source: Option<String>,
    manifest_path: String,
    targets: Vec<Target>,
}

#[derive(Deserialize)]
struct Target {
    kind: Vec<String>,
}

#[derive(Deserialize)]
struct Resolve {
    nodes: Vec<Node>,
}

#[derive(Deserialize)]
struct Node {
    id: String,
    deps: Vec<Dependency>,
}

#[derive(Deserialize)]
struct Dependency {
    pkg: String,
    dep_kinds: Vec<DependencyKind>,
}

#[derive(Deserialize)]
struct DependencyKind {
    kind: Option<String>,
}

/// A text with the licence of every package in the page, each different licence text once.
pub fn of_page(house: &House) -> Result<String, Failure> {
    let metadata = metadata(house)?;
    let mut packages: Vec<_> = compiled_in(&metadata);
    packages.sort_by(|a, b| (&a.name, &a.version).cmp(&(&b.name, &b.version)));
    let mut text = String::from("The page contains the following packages, under the licences named.\n\n");
    let mut texts: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for package in packages {
        let name = format!("{} {}", package.name, package.version);
        text.push_str(&format!("{name}: {}\n", package.license.as_deref().unwrap_or("see below")));
        for licence in licence_texts(package) {
            texts.entry(licence).or_default().insert(name.clone());
        }
    }
    for (licence, names) in texts {
        let names: Vec<_> = names.into_iter().collect();
        text.push_str(&format!("\n{}\n{}\n\n{}\n", "-".repeat(80), names.join(", "), licence.trim_end()));
    }
    Ok(text)
}

fn metadata(house: &House) -> Result<Metadata, Failure> {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let answer = Command::new(&cargo)
        .current_dir(house.root())
        .args(["metadata", "--format-version=1", "--filter-platform=wasm32-unknown-unknown"])
        .output()
        .map_err(|source| Failure::NoProgram { program: cargo.to_string_lossy().into_owned(), source })?;
    serde_json::from_slice(&answer.stdout).map_err(|error| {
        Failure::Bind(format!("cargo metadata: {error}\n{}", String::from_utf8_lossy(&answer.stderr)))
    })
}

/// Packages of others that the page's package reaches by ordinary dependencies; what only runs in the compiler
/// is left out.
fn compiled_in(metadata: &Metadata) -> Vec<&Package> {
    let packages: BTreeMap<_, _> = metadata.packages.iter().map(|one| (one.id.as_str(), one)).collect();
    let nodes: BTreeMap<_, _> = metadata.resolve.nodes.iter().map(|node| (node.id.as_str(), node)).collect();
    let mut waiting: Vec<_> =
        metadata.packages.iter().filter(|one| one.name == PAGE).map(|one| one.id.as_str()).collect();
    let mut reached = BTreeSet::new();
    while let Some(id) = waiting.pop() {
        let in_compiler = packages.get(id).is_none_or(|one| one.is_macro());
        if in_compiler || !reached.insert(id) {
            continue;
        }
        let ordinary = |dep: &&Dependency| dep.dep_kinds.iter().any(|kind| kind.kind.is_none());
        let deps = nodes.get(id).into_iter().flat_map(|node| node.deps.iter());
        waiting.extend(deps.filter(ordinary).map(|dep| dep.pkg.as_str()));
    }
    let foreign = |id: &&str| packages.get(*id).copied().filter(|one| one.source.is_some());
    reached.iter().filter_map(foreign).collect()
}

impl Package {
    fn is_macro(&self) -> bool {
        self.targets.iter().any(|target| target.kind.iter().any(|kind| kind == "proc-macro"))
    }
}

fn licence_texts(package: &Package) -> Vec<String> {
    let Some(folder) = Path::new(&package.manifest_path).parent() else { return Vec::new() };
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let named = entries.filter(|entry| {
        let name = entry.file_name().to_string_lossy().to_uppercase();
        FILES.iter().any(|file| name.starts_with(file))
    });
    named.filter_map(|entry| fs::read_to_string(entry.path()).ok()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_page_names_what_it_contains_and_not_what_builds_it() {
        let text = of_page(&House::find().unwrap()).unwrap();
        assert!(text.contains("\nyew 0.") && text.contains("\nlibm 0."), "{text}");
        assert!(!text.contains("\nsyn ") && !text.contains("\nwasm-bindgen-cli-support "));
        assert!(text.contains("Permission is hereby granted"));
    }
}
