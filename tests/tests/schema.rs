//! The written-down schemas name what the code knows. `tests/reference/schema` tries them on attempts.
#![allow(clippy::unwrap_used, reason = "a test")]

use std::fs;

use plant::fault::FaultId;
use serde_json::Value;
use tankwright_tests::tree;
use words::{Units, Voice};

#[test]
fn both_schemas_name_every_fault() {
    for file in ["attempt", "drill"] {
        let text = fs::read_to_string(tree::root().join(format!("docs/schema/{file}.json"))).unwrap();
        let schema: Value = serde_json::from_str(&text).unwrap();
        let named: Vec<&str> =
            schema["$defs"]["fault"]["enum"].as_array().unwrap().iter().filter_map(Value::as_str).collect();
        assert!(FaultId::ALL.iter().map(|id| id.name()).eq(named), "{file}");
    }
}

#[test]
fn both_schemas_are_of_these_rules() {
    for file in ["attempt", "drill"] {
        let text = fs::read_to_string(tree::root().join(format!("docs/schema/{file}.json"))).unwrap();
        let schema: Value = serde_json::from_str(&text).unwrap();
        assert_eq!(schema["properties"]["rules"]["const"], drill::RULES, "{file}");
    }
}

/// One row of the drill file's page for each fault.
fn rows() -> String {
    let voice = Voice::english(Units::Customary);
    let row = |id: &FaultId| {
        let said = |p: &plant::fault::Parameter| format!("`{}` {} to {} ({})", p.name, p.low, p.high, p.unit);
        let all: Vec<String> = id.fault().parameters.iter().map(said).collect();
        let all = if all.is_empty() { "none".to_owned() } else { all.join("; ") };
        format!("| {id} | {} | {all} |\n", voice.fault(*id))
    };
    FaultId::ALL.iter().map(row).collect()
}

/// `TANKWRIGHT_BLESS=1 cargo test -p tankwright-tests --test schema` writes the rows anew.
#[test]
fn the_drill_file_s_page_names_every_fault_with_its_numbers() {
    let path = tree::root().join("docs/drill-file.md");
    let text = fs::read_to_string(&path).unwrap();
    let start = text.find("| F01 |").unwrap();
    let end = start + text[start..].rfind("\n| F").unwrap() + 1;
    let end = end + text[end..].find('\n').unwrap() + 1;
    if std::env::var_os("TANKWRIGHT_BLESS").is_some() {
        fs::write(&path, format!("{}{}{}", &text[..start], rows(), &text[end..])).unwrap();
    } else {
        assert_eq!(&text[start..end], rows(), "write the rows anew");
    }
}
