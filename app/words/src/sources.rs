//! Every tagged constant of the simulated world as a line of text, for the page that says where numbers come from.

use quantity::Listed;

use crate::letters::capital;

/// One line a constant: group, name, value, value in the units people read, kind and words of its source, place in the
/// code, with tabs between them.
pub fn list() -> String {
    let all = [plant::sources(), bench::sources(), solver::sources()].concat();
    all.into_iter().map(line).collect()
}

fn line(listed: Listed) -> String {
    let Listed { module, ident, constant } = listed;
    let mut steps = module.split("::");
    let (world, first) = (steps.next().unwrap_or_default(), steps.next().unwrap_or_default());
    let name = match steps.last().filter(|_| first == "fault").and_then(fault_number) {
        Some(number) => format!("{number}: {}", constant.name()),
        None => capital(constant.name()),
    };
    let value = [constant.value().as_str(), constant.unit()].join(" ").trim_end().to_owned();
    let usual = constant.usual().unwrap_or_default();
    let (kind, from) = (constant.tag().kind().name(), constant.tag().words());
    let fields =
        [&format!("{world}-{first}"), &name, &value, &usual, kind, from, &format!("{module}::{ident}")];
    fields.map(|field| field.replace(['\t', '\n'], " ")).join("\t") + "\n"
}

/// The number of a fault whose module is named after it.
fn fault_number(module: &str) -> Option<String> {
    let digits = module.strip_prefix('f')?;
    digits.chars().all(|c| c.is_ascii_digit()).then(|| format!("F{digits}"))
}
