//! Short names for what comes from outside. The binder's are long and end in digits that no compressor takes out, once in
//! the module and once in the script that hands them over.

use wasmparser::{BinaryReaderError, Parser, Payload};

/// The new name of each import, in the module's order, and the script that hands them over by these names. What the script
/// does not name once, at the beginning of a line, keeps its name.
pub fn shorten(module: &[u8], script: &str) -> Result<(Vec<String>, String), BinaryReaderError> {
    let (mut names, mut script) = (Vec::new(), script.to_owned());
    for payload in Parser::new(0).parse_all(module) {
        let Payload::ImportSection(section) = payload? else { continue };
        for import in section.into_imports() {
            let (was, is) = (import?.name, format!("i{}", names.len()));
            let [from, to] = [was, &is].map(|name| format!("\n{name}:"));
            let once = script.matches(&from).count() == 1 && !script.contains(&to);
            if once {
                script = script.replacen(&from, &to, 1);
            }
            names.push(if once { is } else { was.to_owned() });
        }
    }
    Ok((names, script))
}
