//! Functions that the browser checks call by name, to hold WebAssembly against native.

use crate::text;
use crate::units::Units;
use wasm_bindgen::prelude::wasm_bindgen;

/// Digest of many deterministic results; the native one has to be the same.
#[wasm_bindgen]
pub fn maths_witness(count: u32) -> String {
    quantity::witness::maths(count).to_string()
}

/// Trace of an attempt file, or what is wrong with it; the native one has to be the same, byte for byte.
#[wasm_bindgen]
pub fn fold_attempt(file: &str) -> String {
    text::voice(Units::Us).trace_of(file).unwrap_or_else(|error| error)
}
