//! The houses walked for one page of the atlas.

use diagnosis::atlas::{Atlas, Page};
use drill::{Drill, showcase};
use plant::fault::FaultId;

/// A house, sound and with the faults walked so far.
pub struct Walked {
    /// The drill whose house it is.
    pub drill: Drill,
    fault: FaultId,
    atlas: Atlas,
}

impl Walked {
    /// The house of a fault, sound and with it.
    pub fn begin(fault: FaultId) -> Option<Self> {
        let drill = showcase(fault)?;
        let (life, seed) = (drill.week.life, u64::from(drill.order.seed));
        let mut atlas = Atlas::begin(&drill.job, life, seed);
        atlas.add(&drill.job, fault, life, seed);
        Some(Self { drill, fault, atlas })
    }

    /// Walks it with another fault, where that fits.
    pub fn add(&mut self, other: FaultId) {
        let (life, seed) = (self.drill.week.life, u64::from(self.drill.order.seed));
        self.atlas.add(&self.drill.job, other, life, seed);
    }

    /// What has come of it so far.
    pub fn page(&self) -> Option<Page> {
        self.atlas.page(self.fault)
    }
}
