//! A fault's stages are physics: in a house that shows it, its first and its last stage differ in some reading or look, by
//! more than the instruments leave open.

use diagnosis::atlas::Atlas;
use diagnosis::course::{Course, Sign};
use drill::Drill;
use plant::fault::{FaultId, Stages};
use tankwright_tests::cores;

/// Drawings of each fault.
const SEEDS: [u32; 3] = [5000, 5001, 7];
/// Faults with stages, at least.
const STAGED: usize = 18;

/// The acts that tell the stages of a fault in this house.
pub fn signs(drill: &Drill, atlas: &Atlas, fault: FaultId, seed: u32) -> Vec<Sign> {
    let mut course = Course::of(fault);
    while course.walk(&drill.job, drill.week.life, u64::from(seed)) {}
    course.signs(atlas)
}

#[test]
fn the_stages_of_every_fault_can_be_told() {
    let staged = FaultId::ALL.iter().filter(|id| id.fault().stages != Stages::Sudden);
    let drawings: Vec<(FaultId, u32)> = staged.flat_map(|id| SEEDS.map(|seed| (*id, seed))).collect();
    assert!(drawings.len() >= STAGED * SEEDS.len(), "hardly a fault has stages");
    let alike = cores::on_two(&drawings, |&(id, seed)| {
        let drill = drill::showcase(id).unwrap();
        let atlas = Atlas::begin(&drill.job, drill.week.life, u64::from(seed));
        signs(&drill, &atlas, id, seed).is_empty().then(|| format!("{id}, drawing {seed}"))
    });
    let alike: Vec<String> = alike.into_iter().flatten().collect();
    assert!(alike.is_empty(), "early or far gone, it is the same: {}", alike.join("; "));
}
