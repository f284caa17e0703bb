//! Every tagged constant of the plant, for the page and for the list among the documents.

use quantity::Listed;

use crate::{climate, controls, fault, household, named, parts};

/// The lists of the modules, folder by folder.
const FOLDERS: &[&[&[Listed]]] = &[
    &[named::CONSTANTS, climate::CONSTANTS],
    parts::SOURCES,
    controls::SOURCES,
    household::SOURCES,
    fault::SOURCES,
];

/// Every tagged constant of the plant, module by module.
pub fn sources() -> Vec<Listed> {
    [FOLDERS.concat().concat(), fault::sources()].concat()
}
