//! Lays the module out anew so that it compresses well: functions with the same code become one, and those that
//! look alike stand side by side, within reach of a compressor that looks back 32 kB; what comes from outside gets short
//! names, in the script too. What they do stays the same.

mod fold;
mod names;
mod order;
mod read;

use wasm_encoder::reencode::{Error, Reencode, utils};
use wasm_encoder::{CodeSection, FunctionSection, ImportSection, Module};
use wasmparser::{CodeSectionReader, FunctionSectionReader, ImportSectionReader, Parser};

use crate::Failure;
use read::Functions;

/// The same module, laid out to compress well, and the script that starts it.
pub fn tighten(module: &[u8], script: &str) -> Result<(Vec<u8>, String), Failure> {
    let fail = |error: String| Failure::Pack(error);
    let functions = Functions::read(module).map_err(|error| fail(error.to_string()))?;
    let same = fold::same(&functions).map_err(|error| fail(error.to_string()))?;
    let kept: Vec<usize> = (0..functions.bodies.len()).filter(|&at| same[at] == at).collect();
    let bodies: Vec<&[u8]> = kept.iter().map(|&at| functions.bodies[at].as_bytes()).collect();
    let order: Vec<usize> = order::alike(&bodies).into_iter().map(|at| kept[at]).collect();
    let (names, script) = names::shorten(module, script).map_err(|error| fail(error.to_string()))?;
    let mut layout = Layout::new(&functions, &same, &order, &names);
    let mut laid = Module::new();
    layout.parse_core_module(&mut laid, Parser::new(0), module).map_err(|error| fail(error.to_string()))?;
    Ok((laid.finish(), script))
}

/// The new places of the functions.
struct Layout<'a> {
    functions: &'a Functions<'a>,
    /// Which function stands at each place.
    order: &'a [usize],
    /// The new number of each function that the module defines.
    numbers: Vec<u32>,
    /// The new names of what comes from outside.
    names: &'a [String],
}

impl<'a> Layout<'a> {
    fn new(functions: &'a Functions<'a>, same: &[usize], order: &'a [usize], names: &'a [String]) -> Self {
        let mut numbers = vec![0; functions.bodies.len()];
        for (number, &at) in (functions.imported..).zip(order) {
            numbers[at] = number;
        }
        let numbers = same.iter().map(|&first| numbers[first]).collect();
        Self { functions, order, numbers, names }
    }
}

impl Reencode for Layout<'_> {
    type Error = std::convert::Infallible;

    fn function_index(&mut self, function: u32) -> Result<u32, Error<Self::Error>> {
        let defined = function.checked_sub(self.functions.imported);
        Ok(defined.map_or(function, |at| self.numbers[at as usize]))
    }

    fn parse_import_section(
        &mut self,
        imports: &mut ImportSection,
        section: ImportSectionReader<'_>,
    ) -> Result<(), Error<Self::Error>> {
        for (import, name) in section.into_imports().zip(self.names) {
            let import = import?;
            imports.import(import.module, name, self.entity_type(import.ty)?);
        }
        Ok(())
    }

    fn parse_function_section(
        &mut self,
        section: &mut FunctionSection,
        _: FunctionSectionReader<'_>,
    ) -> Result<(), Error<Self::Error>> {
        for &at in self.order {
            section.function(self.functions.types[at]);
        }
        Ok(())
    }

    fn parse_code_section(
        &mut self,
        section: &mut CodeSection,
        _: CodeSectionReader<'_>,
    ) -> Result<(), Error<Self::Error>> {
        for &at in self.order {
            utils::parse_function_body(self, section, self.functions.bodies[at].clone())?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use wasm_encoder::{
        CodeSection, EntityType, ExportKind, ExportSection, Function, FunctionSection, ImportSection,
        TypeSection, ValType,
    };

    /// A module with one import and functions that return `constants`, the last of which calls all the others.
    fn module(constants: &[i32]) -> Vec<u8> {
        let mut types = TypeSection::new();
        types.ty().function([], [ValType::I32]);
        let mut imports = ImportSection::new();
        imports.import("outside", "ask", EntityType::Function(0));
        let (mut functions, mut exports, mut code) =
            (FunctionSection::new(), ExportSection::new(), CodeSection::new());
        for (number, constant) in (1..).zip(constants) {
            let mut body = Function::new([]);
            body.instructions().i32_const(*constant).end();
            functions.function(0);
            exports.export(&format!("f{number}"), ExportKind::Func, number);
            code.function(&body);
        }
        let mut all = Function::new([]);
        all.instructions().call(0);
        for (number, _) in (1..).zip(constants) {
            all.instructions().call(number).i32_add();
        }
        all.instructions().end();
        functions.function(0);
        exports.export("all", ExportKind::Func, constants.len() as u32 + 1);
        code.function(&all);
        let mut module = Module::new();
        module.section(&types).section(&imports).section(&functions).section(&exports).section(&code);
        module.finish()
    }

    /// What each exported function returns, asked from the bodies: `outside` answers 1000.
    fn results(module: &[u8]) -> Vec<(String, i32)> {
        fn run(functions: &Functions<'_>, number: u32) -> i32 {
            let Some(at) = number.checked_sub(functions.imported) else { return 1000 };
            let mut stack = Vec::new();
            for operator in functions.bodies[at as usize].get_operators_reader().unwrap() {
                match operator.unwrap() {
                    wasmparser::Operator::I32Const { value } => stack.push(value),
                    wasmparser::Operator::Call { function_index } => {
                        stack.push(run(functions, function_index))
                    }
                    wasmparser::Operator::I32Add => {
                        let sum = stack.pop().unwrap() + stack.pop().unwrap();
                        stack.push(sum);
                    }
                    _ => {}
                }
            }
            stack.pop().unwrap()
        }
        let functions = Functions::read(module).unwrap();
        let mut results = Vec::new();
        for payload in Parser::new(0).parse_all(module) {
            if let wasmparser::Payload::ExportSection(section) = payload.unwrap() {
                for export in section {
                    let export = export.unwrap();
                    results.push((export.name.to_owned(), run(&functions, export.index)));
                }
            }
        }
        results
    }

    #[test]
    fn every_export_still_returns_what_it_returned_and_copies_are_gone() {
        let before = module(&[7, 8, 7, 123_456, 7, 8, 123_457]);
        let (after, _) = tighten(&before, "").unwrap();
        assert_eq!(results(&after), results(&before));
        assert_eq!(results(&after).last(), Some(&("all".to_owned(), 1000 + 7 * 3 + 8 * 2 + 246_913)));
        assert_eq!(Functions::read(&after).unwrap().bodies.len(), 5);
    }

    /// The name from outside that a module asks for.
    fn asked(module: &[u8]) -> String {
        let all = Parser::new(0).parse_all(module).find_map(|payload| match payload.unwrap() {
            wasmparser::Payload::ImportSection(section) => section.into_imports().next(),
            _ => None,
        });
        all.unwrap().unwrap().name.to_owned()
    }

    #[test]
    fn what_comes_from_outside_has_the_same_short_name_in_module_and_script() {
        let before = module(&[7, 8]);
        let script = "const all = {\nask: function() {\nreturn 1000;\n},\n};\n";
        let (after, renamed) = tighten(&before, script).unwrap();
        assert_eq!(asked(&after), "i0");
        assert_eq!(renamed, script.replace("ask", "i0"));
        assert_eq!(results(&after), results(&before));
        // Named twice, or its new name taken: as it was.
        for other in [format!("{script}{script}"), script.replace("};", "i0: 1,\n};"), String::new()] {
            let (after, same) = tighten(&before, &other).unwrap();
            assert_eq!((asked(&after).as_str(), same), ("ask", other));
        }
    }

    #[test]
    fn what_is_no_module_is_refused() {
        assert!(matches!(tighten(b"not a module", ""), Err(Failure::Pack(_))));
    }
}
