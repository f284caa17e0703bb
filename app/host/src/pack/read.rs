//! The functions of a module: how many come from outside, and type and code of the others.

use wasmparser::{BinaryReaderError, FunctionBody, Parser, Payload, TypeRef};

/// The functions of a module.
pub struct Functions<'a> {
    /// How many are imported; the numbers of the others begin after them.
    pub imported: u32,
    /// The type of each that the module defines.
    pub types: Vec<u32>,
    /// The code of each that the module defines.
    pub bodies: Vec<FunctionBody<'a>>,
}

impl<'a> Functions<'a> {
    /// Reads them.
    pub fn read(module: &'a [u8]) -> Result<Self, BinaryReaderError> {
        let mut functions = Self { imported: 0, types: Vec::new(), bodies: Vec::new() };
        for payload in Parser::new(0).parse_all(module) {
            match payload? {
                Payload::ImportSection(section) => {
                    for import in section.into_imports() {
                        functions.imported += u32::from(matches!(import?.ty, TypeRef::Func(_)));
                    }
                }
                Payload::FunctionSection(section) => {
                    functions.types = section.into_iter().collect::<Result<_, _>>()?;
                }
                Payload::CodeSectionEntry(body) => functions.bodies.push(body),
                _ => {}
            }
        }
        Ok(functions)
    }
}
