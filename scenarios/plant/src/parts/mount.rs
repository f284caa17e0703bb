//! How an element sits in its tank: what holds it in the opening, and how far it reaches in.

use quantity::{Constant, Metres, Tag, Watts};

use super::Density;
use crate::controls::sheath::RADIUS;
use crate::heater::Plate;
use crate::named::named;

quantity::constants! {
    /// Sheath of each length over a middle one's of the same watts, in the order of [`ElementLength::ALL`].
    const SHEATHS: Constant<[f64; ElementLength::ALL.len()]> = Constant::new(
        "heated sheath of a short, middle and long element, of the middle one's",
        [0.75, 1.0, 1.25],
        "",
        Tag::Invented("at high density 200, 150 and 120 W/in²: makers sell several lengths of the same watts"),
    );
    /// What has to stay free between an element's end and the far wall.
    const CLEAR: Constant<Metres> = Constant::of(
        "free between the end of an element and the far wall",
        Metres(0.01),
        Tag::Model("less, and the end touches before the gasket seats"),
    );
}

named! {
    /// What holds an element in its opening.
    Mount {
        /// A 1 in straight pipe thread with a flat gasket.
        ScrewIn = "screw-in",
        /// A flange with four bolts.
        FourBolt = "four-bolt",
    }
}

named! {
    /// Which of the lengths that its watts are sold in.
    ElementLength {
        /// Three quarters of the middle one: each area of its sheath gives off a third more.
        Short = "short",
        /// As long as its density asks for.
        Middle = "middle",
        /// A quarter longer than the middle one.
        Long = "long",
    }
}

impl ElementLength {
    /// Its heated sheath over a middle one's of the same watts.
    pub fn sheath(self) -> f64 {
        SHEATHS.get().get(self as usize).copied().unwrap_or(1.0)
    }

    /// How far in from the wall an element of so many watts reaches. What is heated is a hairpin, its cold ends
    /// stand in the opening; one that is folded back has more legs and is as long.
    pub fn reach(self, watts: Watts) -> Metres {
        let area = self.sheath() * watts.get() / Density::High.surface_load();
        Metres(area / (core::f64::consts::TAU * RADIUS.get().get()) / 2.0)
    }
}

impl Plate {
    /// Whether an element that reaches so far seats before its end touches the far wall.
    pub fn has_room_for(&self, reach: Metres) -> bool {
        let radius = (self.content().get() / self.height.get() / core::f64::consts::PI).sqrt();
        reach.get() + CLEAR.get().get() <= 2.0 * radius
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::HeaterModel;

    fn reach(model: HeaterModel, length: ElementLength) -> Metres {
        length.reach(model.plate().element.watts)
    }

    /// Trade sheet 2.6 (from memory): density is the watts over pi, diameter and heated length. 150 W/in² of a sheath of
    /// 0.315 in are 30 in for 4500 W, a hairpin of 15 in.
    #[test]
    fn lengths_are_what_the_density_asks_for() {
        for (length, inches) in
            [(ElementLength::Short, 11.4), (ElementLength::Middle, 15.2), (ElementLength::Long, 19.0)]
        {
            let reach = reach(HeaterModel::Plain40, length).get() / 0.0254;
            assert!((reach - inches).abs() < 0.1, "{length}: {reach}");
        }
    }

    /// What the plate asks for goes in everywhere, and a shorter one does too; a longer one of the same watts touches
    /// wherever the plate asks for no small one.
    #[test]
    fn the_shell_sets_the_longest() {
        for &model in HeaterModel::ALL {
            let plate = model.plate();
            let fits = |length| plate.has_room_for(reach(model, length));
            assert!(fits(plate.length) && fits(ElementLength::Short), "{model}");
            let roomy = matches!(model, HeaterModel::Short30 | HeaterModel::Small20 | HeaterModel::OffPeak80);
            assert_eq!(fits(ElementLength::Long), roomy, "{model}");
        }
    }

    /// All mounts and more than one length are to be met with.
    #[test]
    fn the_models_differ() {
        let count = |is: &dyn Fn(Plate) -> bool| HeaterModel::ALL.iter().filter(|m| is(m.plate())).count();
        assert_eq!(count(&|plate| plate.mount == Mount::FourBolt), 2);
        assert_eq!(count(&|plate| plate.length == ElementLength::Long), 2);
        assert_eq!(count(&|plate| plate.length == ElementLength::Middle), 8);
    }
}
