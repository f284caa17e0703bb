//! Every tagged constant of the plant, for the page and for the list among the documents.

use quantity::Listed;

use crate::{climate, fault, household, named};

/// The lists of the modules, folder by folder.
const FOLDERS: &[&[&[Listed]]] =
    &[&[named::CONSTANTS, climate::CONSTANTS], household::SOURCES, fault::SOURCES];

/// Every tagged constant of the plant, module by module.
pub fn sources() -> Vec<Listed> {
    [FOLDERS.concat().concat(), fault::sources()].concat()
}
