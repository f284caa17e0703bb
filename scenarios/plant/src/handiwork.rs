//! What a hand that was no technician's left at a heater that works all the same: nothing that anybody calls for, and
//! something to be told. It stays whatever else is put right, until the part it sits on is changed.

use quantity::{Constant, Tag, Volts, Watts};

use crate::fault::PartKind;
use crate::heater::Rating;
use crate::home::Home;
use crate::installation::Discharge;
use crate::parts::Level;
use crate::supply::{Circuit, ServiceKind};

quantity::constants! {
    /// What an element for the lower supply of the trade is stamped for.
    const LOWER: Constant<Volts> = Constant::of("element for another supply", Volts(208.0), Tag::CommonPractice);
    /// Share of its breaker's rating that such an element may draw: beyond it the breaker would trip in time.
    const ROOM: Constant = Constant::new(
        "share of the breaker that an element for another supply draws at most",
        0.9,
        "",
        Tag::Model("a breaker of 30 A carries 27 A for good"),
    );
    /// How much weaker the element is where there is no room for that.
    const WEAKER: Constant<Watts> = Constant::of(
        "power that an element for a smaller heater lacks",
        Watts(1000.0),
        Tag::Model("4500 W where the plate says 5500 W, 3500 W where it says 4500 W"),
    );
    /// A heater of less has no weaker element in the trade.
    const SMALL: Constant<Watts> =
        Constant::of("smallest element that is taken for another", Watts(3000.0), Tag::Model("those on 120 V are all alike"));
}

/// A wrong installation beside whatever is wrong.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Handiwork {
    /// A cap on the end of the discharge pipe: nothing gets out.
    Capped,
    /// A relief valve seized shut.
    Seized,
    /// A piece of wire across each pole of the limit: it never opens.
    Bridged,
    /// An element of other volts or watts than the plate's.
    OtherElement(Level),
}

impl Handiwork {
    /// Whether a heater like this can have it and work.
    pub fn fits(self, home: &Home) -> bool {
        match self {
            Self::Capped | Self::Seized | Self::Bridged => true,
            Self::OtherElement(level) => {
                let plate = &home.plant.plate;
                plate.has(level) && plate.element.watts >= SMALL.get()
            }
        }
    }
}

/// What somebody took for the plate's element: one for 208 V, hotter here, where the breaker has room for it; a weaker
/// one elsewhere.
fn other(home: &Home) -> Rating {
    let plant = &home.plant;
    let plate = plant.plate.element;
    let volts = LOWER.get();
    let draws = plant.service.across().get() * plate.watts.get() / (volts.get() * volts.get());
    let breaker = plant.panel.feeding(Circuit::Heater).map_or(0.0, |b| b.rating.get());
    let alone = plant.plate.layout.at_once() == 1;
    if plant.service.kind == ServiceKind::Split240 && alone && draws <= ROOM.get() * breaker {
        Rating { volts, ..plate }
    } else {
        Rating { watts: plate.watts - WEAKER.get(), ..plate }
    }
}

impl Home {
    /// Leaves a wrong installation in the house.
    pub fn lay(&mut self, handiwork: Handiwork) {
        match handiwork {
            Handiwork::Capped => {
                self.installation.discharge = Discharge::Capped;
                self.plant.plumbing.relief.blocked = true;
            }
            Handiwork::Seized => self.plant.plumbing.relief.blocked = true,
            Handiwork::Bridged => self.installation.bridged = true,
            Handiwork::OtherElement(level) => self.installation.other_element = Some((level, other(self))),
        }
        self.keep_handiwork();
    }

    /// What was made sound again is as somebody left it. The relief valve and its pipe are never touched.
    pub(crate) fn keep_handiwork(&mut self) {
        if self.installation.bridged {
            self.plant.limit.welded = [true; 2];
        }
        if let Some((level, stamp)) = self.installation.other_element {
            self.plant.elements[level.index()].stamp = stamp;
        }
    }

    /// A new part in its place, fitted as it should be, ends what sat on the old one. A new relief valve gets a new pipe
    /// where the old one was capped. A new heater comes without a relief valve.
    pub fn renewed(&mut self, part: PartKind) {
        let is = |one: PartKind| part == one || (part == PartKind::Heater && one != PartKind::ReliefValve);
        if is(PartKind::ReliefValve) {
            self.plant.plumbing.relief.blocked = false;
            if self.installation.discharge == Discharge::Capped {
                self.installation.discharge = Discharge::Metal;
            }
        }
        if is(PartKind::Limit) {
            self.installation.bridged = false;
        }
        self.installation.other_element = self.installation.other_element.filter(|(level, _)| {
            !is(match level {
                Level::Upper => PartKind::UpperElement,
                Level::Lower => PartKind::LowerElement,
            })
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::climate::Climate;
    use crate::household::HouseholdKind;
    use crate::{HeaterModel, Setting};
    use quantity::{Seconds, Temperature};

    const ALL: [Handiwork; 5] = [
        Handiwork::Capped,
        Handiwork::Seized,
        Handiwork::Bridged,
        Handiwork::OtherElement(Level::Upper),
        Handiwork::OtherElement(Level::Lower),
    ];

    fn house(heater: HeaterModel) -> Home {
        let (household, climate) = (HouseholdKind::Family, Climate::MillValley);
        let (in_line, location) = (None, Default::default());
        Home::sound(Setting { heater, household, climate, day: 100, in_line, location })
    }

    fn with(heater: HeaterModel, handiwork: Handiwork) -> Home {
        let mut home = house(heater);
        home.lay(handiwork);
        home
    }

    fn all() -> impl Iterator<Item = (HeaterModel, Handiwork)> {
        let pairs = HeaterModel::ALL.iter().flat_map(|heater| ALL.map(|one| (*heater, one)));
        pairs.filter(|(heater, one)| one.fits(&house(*heater)))
    }

    /// An inspection for the call's sake passes it, and nothing that is put right takes it away.
    #[test]
    fn it_is_no_defect_and_stays() {
        for (heater, one) in all() {
            let mut home = with(heater, one);
            assert_eq!(home.inspect(), Vec::new(), "{heater} {one:?}");
            let before = home.clone();
            home.make_sound();
            assert_eq!(home.installation, before.installation, "{heater} {one:?}");
            assert_eq!(home.plant.limit.welded, before.plant.limit.welded, "{heater} {one:?}");
            assert_eq!(home.plant.elements.map(|e| e.stamp), before.plant.elements.map(|e| e.stamp));
            assert_eq!(home.plant.plumbing.relief.blocked, before.plant.plumbing.relief.blocked);
        }
        assert_eq!(all().count(), ALL.len() * HeaterModel::ALL.len() - 2, "no weaker element on 120 V");
    }

    /// The part it sits on changed, it is gone; any other part leaves it.
    #[test]
    fn a_new_part_ends_it() {
        for (heater, one) in all() {
            let part = match one {
                Handiwork::Capped | Handiwork::Seized => PartKind::ReliefValve,
                Handiwork::Bridged => PartKind::Limit,
                Handiwork::OtherElement(Level::Upper) => PartKind::UpperElement,
                Handiwork::OtherElement(Level::Lower) => PartKind::LowerElement,
            };
            let gone = |part| {
                let mut home = with(heater, one);
                home.renewed(part);
                let relief = home.plant.plumbing.relief.blocked;
                !relief && home.installation == house(heater).installation
            };
            let with_heater = gone(PartKind::Heater) == (part != PartKind::ReliefValve);
            assert!(gone(part) && with_heater && !gone(PartKind::DipTube), "{heater} {one:?}");
        }
    }

    /// 4500 W made for 208 V are 9.6 ohms and draw a third more on 240 V (Ohm's law); a bridged limit opens nothing; a
    /// seized valve and a capped pipe pass nothing.
    #[test]
    fn each_does_what_it_does() {
        let element = Handiwork::OtherElement(Level::Upper);
        let stamp = with(HeaterModel::Plain40, element).plant.elements[0].stamp;
        assert!((stamp.resistance().get() - 208.0 * 208.0 / 4500.0).abs() < 1e-9);
        // 5500 W for 208 V would draw 30.5 A through a breaker of 30 A.
        let stamp = with(HeaterModel::Wide80, element).plant.elements[0].stamp;
        assert_eq!(stamp, Rating { watts: Watts(4500.0), volts: Volts(240.0) });

        let mut bridged = with(HeaterModel::Plain40, Handiwork::Bridged).plant;
        bridged.limit.body = Temperature::fahrenheit(180.0);
        assert!(bridged.limit.snap() && bridged.limit.closed(0) && bridged.limit.closed(1));

        for one in [Handiwork::Capped, Handiwork::Seized] {
            let flow = |home: Home| {
                let mut plant = home.plant;
                plant.plumbing.relief.lever = true;
                plant.advance(Seconds(5.0));
                plant.relief_flow().get()
            };
            assert!(flow(house(HeaterModel::Plain40)) > 0.0);
            assert_eq!(flow(with(HeaterModel::Plain40, one)), 0.0, "{one:?}");
        }
    }
}
