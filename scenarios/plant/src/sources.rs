//! Every tagged constant of the plant, for the page and for the list among the documents.

use quantity::Listed;

use crate::{
    branch, build, climate, conductor, controls, electrical, fault, handiwork, heater, household, in_line,
    installation, location, named, parts, supply, thermal, waterworks, wire,
};

/// The lists of the modules, folder by folder.
const FOLDERS: &[&[&[Listed]]] = &[
    &[
        named::CONSTANTS,
        branch::CONSTANTS,
        build::CONSTANTS,
        climate::CONSTANTS,
        location::CONSTANTS,
        conductor::CONSTANTS,
        handiwork::CONSTANTS,
        heater::CONSTANTS,
        in_line::CONSTANTS,
        installation::CONSTANTS,
        supply::CONSTANTS,
        wire::CONSTANTS,
    ],
    parts::SOURCES,
    controls::SOURCES,
    electrical::SOURCES,
    household::SOURCES,
    fault::SOURCES,
    thermal::SOURCES,
    waterworks::SOURCES,
];

/// Every tagged constant of the plant, module by module.
pub fn sources() -> Vec<Listed> {
    [FOLDERS.concat().concat(), fault::sources()].concat()
}
