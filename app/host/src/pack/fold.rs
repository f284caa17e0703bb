//! Functions with the same type and the same code are one function, and so are then those that differ only in
//! which of such copies they call.

use std::collections::BTreeMap;

use wasm_encoder::CodeSection;
use wasm_encoder::Encode as _;
use wasm_encoder::reencode::{Error, Reencode, utils};

use super::read::Functions;

/// For each function that the module defines the first one that is the same.
pub fn same(functions: &Functions<'_>) -> Result<Vec<usize>, Error> {
    let mut found = Folded { imported: functions.imported, first: (0..functions.bodies.len()).collect() };
    loop {
        let mut firsts = BTreeMap::new();
        let mut first = Vec::with_capacity(functions.bodies.len());
        for (at, (body, of_type)) in functions.bodies.iter().zip(&functions.types).enumerate() {
            let mut code = CodeSection::new();
            utils::parse_function_body(&mut found, &mut code, body.clone())?;
            let mut bytes = Vec::new();
            code.encode(&mut bytes);
            first.push(*firsts.entry((*of_type, bytes)).or_insert(at));
        }
        if first == found.first {
            return Ok(first);
        }
        found.first = first;
    }
}

/// Numbers each call by the first of the functions that are the same as the one called.
struct Folded {
    imported: u32,
    first: Vec<usize>,
}

impl Reencode for Folded {
    type Error = std::convert::Infallible;

    fn function_index(&mut self, function: u32) -> Result<u32, Error> {
        let defined = function.checked_sub(self.imported);
        Ok(defined.map_or(function, |at| self.imported + self.first[at as usize] as u32))
    }
}
