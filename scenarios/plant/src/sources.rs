//! Every tagged constant of the plant, for the page and for the list among the documents.

use quantity::Listed;

/// The lists of the modules.
const MODULES: &[&[Listed]] = &[];

/// Every tagged constant of the plant, module by module.
pub fn sources() -> Vec<Listed> {
    MODULES.concat()
}
