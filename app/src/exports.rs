//! Functions that the browser checks call by name, to hold WebAssembly against native.

use wasm_bindgen::prelude::wasm_bindgen;

/// Digest of many deterministic results; the native one has to be the same.
#[wasm_bindgen]
pub fn maths_witness(count: u32) -> String {
    quantity::witness::maths(count).to_string()
}
