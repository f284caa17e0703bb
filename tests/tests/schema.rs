//! The written-down schemas name what the code knows. `tests/reference/schema` tries them on attempts.
#![allow(clippy::unwrap_used, reason = "a test")]

use std::fs;

use plant::fault::FaultId;
use serde_json::Value;
use tankwright_tests::tree;

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
