//! The houses walked for one page of the atlas.

use diagnosis::atlas::{Atlas, Page};
use diagnosis::course::{Course, Sign};
use drill::{Drill, showcase};
use plant::fault::FaultId;

use super::cut::Cut;

/// A house, sound and with the faults walked so far.
pub struct Walked {
    /// The drill whose house it is.
    pub drill: Drill,
    fault: FaultId,
    atlas: Atlas,
    course: Course,
}

impl Walked {
    /// The house of a fault, sound and with it.
    pub fn begin(fault: FaultId) -> Option<Self> {
        let drill = showcase(fault)?;
        let (life, seed) = (drill.week.life, u64::from(drill.order.seed));
        let mut atlas = Atlas::begin(&drill.job, life, seed);
        atlas.add(&drill.job, fault, life, seed);
        Some(Self { drill, fault, atlas, course: Course::of(fault) })
    }

    /// Walks it with another fault, where that fits.
    pub fn add(&mut self, other: FaultId) {
        let (life, seed) = (self.drill.week.life, u64::from(self.drill.order.seed));
        self.atlas.add(&self.drill.job, other, life, seed);
    }

    /// Walks it with the fault at its next stage; after the last, what tells the stages apart.
    pub fn further(&mut self) -> Option<Vec<Sign>> {
        let (life, seed) = (self.drill.week.life, u64::from(self.drill.order.seed));
        let walked = self.course.walk(&self.drill.job, life, seed);
        (!walked).then(|| self.course.signs(&self.atlas))
    }

    /// The two heaters cut open, where the fault shows in the tank.
    pub fn cut(&self) -> Option<Cut> {
        Cut::of(&self.atlas)
    }

    /// What has come of it so far.
    pub fn page(&self) -> Option<Page> {
        self.atlas.page(self.fault)
    }
}
