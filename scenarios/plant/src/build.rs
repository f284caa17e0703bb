//! A sound house: every part fitted as the plate asks, tank settled, nothing wrong anywhere.

use quantity::{Amps, Constant, Joules, Kilograms, Metres, Pressure, Seconds, Tag, Temperature, Volume};

use crate::controls::board::Board;
use crate::controls::thermostat::{LOWER_DIFFERENTIAL, UPPER_DIFFERENTIAL};
use crate::home::{Home, Setting};
use crate::in_line::InLineBox;
use crate::parts::{Limit, Thermostat, Wiring};
use crate::supply::{Breaker, Circuit, Panel, Service, ServiceKind};
use crate::waterworks::{Fixture, HeatTraps, Ledger, Plumbing, ReliefValve, Store, Tap, Vessel};
use crate::{Layout, Plant, branch, thermal};

quantity::constants! {
    /// The range's breaker.
    const RANGE: Constant<Amps> = Constant::of("breaker of the range", Amps(50.0), Tag::CommonPractice);
    /// The dryer's breaker.
    const DRYER: Constant<Amps> = Constant::of("breaker of the dryer", Amps(30.0), Tag::CommonPractice);
    /// A breaker of lamps or of a fan in a 480Y/277 panel.
    const LIGHTING: Constant<Amps> =
        Constant::of("breaker of lighting or a fan at 277 V", Amps(20.0), Tag::CommonPractice);
    /// Both dials as the factory leaves them.
    const FACTORY_DIAL: Constant<Temperature> = Constant::of(
        "dials as the factory leaves them",
        Temperature::fahrenheit(120.0),
        Tag::Published("two owner's manuals of storage water heaters, thermostat setting"),
    );
    /// Static pressure behind the street's regulator.
    const STATIC: Constant<Pressure> = Constant::of(
        "static pressure behind the street's regulator",
        Pressure::psi(50.0),
        Tag::Memory("regulator makers' data: commonly set to 50 psi; the codes ask for 40 to 80"),
    );
    /// How far a cable runs beside a live one.
    pub(crate) const TIDY: Constant<Metres> = Constant::of(
        "run of the cable beside a live one",
        Metres(0.05),
        Tag::Model("a tidy installation: where they cross"),
    );
    /// The relief valve's settings.
    const RELIEF: Constant<(Pressure, Temperature)> = Constant::of(
        "settings of the relief valve",
        (Pressure::psi(150.0), Temperature::fahrenheit(210.0)),
        Tag::Published("ANSI Z21.22 / CSA 4.4, as quoted by the codes: 150 psi, 210 °F"),
    );
    /// The largest breaker a heater gets.
    const LARGEST: Constant<Amps> =
        Constant::of("largest breaker of a heater", Amps(60.0), Tag::Memory("NEC 422.11(F)"));
}

/// Both dials.
const DIAL: Temperature = FACTORY_DIAL.get();
/// Static pressure behind the street's regulator.
const MAIN: Pressure = STATIC.get();

impl Home {
    /// A house of a setting with nothing wrong in it.
    pub fn sound(setting: Setting) -> Self {
        Self {
            setting,
            plant: Plant::sound(setting),
            installation: crate::Installation::default(),
            demand: 1.0,
            away: 0,
        }
    }
}

impl Plant {
    /// Heater, supply and plumbing of a setting with nothing wrong, settled at its dials.
    pub fn sound(setting: Setting) -> Self {
        let plate = setting.heater.plate();
        let kind = plate.supply();
        let rating = branch::fitted(plate.current()).unwrap_or(LARGEST.get());
        let fed = |feeds| match kind.hot_neutral() {
            true => Breaker::single(feeds, rating),
            false => Breaker::sound(feeds, rating),
        };
        let others = [(Circuit::Range, RANGE.get()), (Circuit::Dryer, DRYER.get())];
        let others = others.map(|(feeds, rating)| match kind {
            // Nobody cooks on 277 V: the same two spaces hold lamps and a fan.
            ServiceKind::Wye277 => Breaker::single(feeds, LIGHTING.get()),
            _ => Breaker::sound(feeds, rating),
        });
        let mut breakers = Vec::from(others);
        breakers.push(fed(Circuit::Heater));
        let room = setting.location.air(setting.climate, setting.day);
        let off_peak = plate.layout == Layout::OffPeak;
        if off_peak {
            breakers.push(fed(Circuit::OffPeak));
        }
        let mut plant = Self {
            plate,
            service: Service::sound(kind),
            panel: Panel { breakers },
            in_line: None,
            off_peak: off_peak.then(|| InLineBox::off_peak(rating)),
            wiring: Wiring::factory(plate.layout, kind.hot_neutral()),
            elements: [plate.new_element(); 2],
            thermostats: [UPPER_DIFFERENTIAL, LOWER_DIFFERENTIAL].map(|d| Thermostat::sound(DIAL, d)),
            limit: Limit::sound(room),
            lower_limit: off_peak.then(|| Limit::sound(room)),
            board: (plate.layout == Layout::Electronic).then(Board::sound),
            insulated: [true; 2],
            films: Default::default(),
            beside_live: TIDY.get(),
            vessel: Vessel::sound(),
            tank: thermal::vessel(&plate).full_at(DIAL.to_celsius()),
            plumbing: plumbing(setting),
            room,
            clock: Seconds(0.0),
        };
        if let Some(awg) = branch::copper(plate.current(), rating) {
            plant.wiring.size(awg);
        }
        if let Some(kind) = setting.in_line {
            plant.put_in_line(InLineBox::sound(kind, rating));
        }
        plant.settle_controls();
        plant.settle_cold_side();
        plant
    }

    /// Takes the heater's vessel away and sets an empty one in its place: no water, air at room pressure.
    pub fn empty_vessel(&mut self) {
        self.plumbing.ledger.parts.add(-self.tank.mass(), -self.tank.energy());
        self.tank = thermal::vessel(&self.plate).empty();
        self.plumbing.pressure = Pressure(0.0);
        self.fill_with_air();
        self.settle_controls();
        for element in &mut self.elements {
            element.sheath = self.room;
        }
    }
}

fn plumbing(setting: Setting) -> Plumbing {
    Plumbing {
        main: MAIN,
        regulator: None,
        closed: false,
        inlet: setting.climate.mains(setting.day),
        main_valve: 1.0,
        cold_valve: 1.0,
        frozen: false,
        traps: HeatTraps::SOUND,
        reversed: false,
        mixing: None,
        recirculation: None,
        tight: Metres(0.0),
        taps: [0.0; Tap::ALL.len()],
        cold_taps: [0.0; Tap::ALL.len()],
        fixtures: [Fixture::default(); Tap::ALL.len()],
        drain_valve: 0.0,
        run_out: false,
        hose: false,
        drain_grit: 0.0,
        drain_drip: 0.0,
        nipple_leak: 0.0,
        stand: crate::Stand::Piped,
        hot_leak: 0.0,
        relief: ReliefValve::sound(RELIEF.get().0, RELIEF.get().1),
        expansion: None,
        pressure: MAIN,
        peak: MAIN,
        on_floor: Volume(0.0),
        air: Joules(0.0),
        line_air: [Volume(0.0); Tap::ALL.len()],
        hydrogen: Volume(0.0),
        dew_point: thermal::dew_point(setting.climate, setting.day),
        cold_side: Store { mass: Kilograms(0.0), heat: Joules(0.0) },
        ledger: Ledger::default(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::HeaterModel;
    use crate::climate::Climate;
    use crate::household::HouseholdKind;

    #[test]
    fn a_sound_house_stands_still() {
        for &heater in HeaterModel::ALL {
            let household = HouseholdKind::Couple;
            let setting = Setting {
                heater,
                household,
                climate: Climate::MillValley,
                day: 100,
                in_line: None,
                location: Default::default(),
            };
            let mut home = Home::sound(setting);
            assert!(home.plant.is_satisfied());
            let happened = home.plant.advance(Seconds::minutes(10.0));
            assert_eq!(happened, Vec::new(), "{heater}");
            assert!((home.plant.plumbing.pressure.to_psi() - 50.0).abs() < 0.5);
        }
    }
}
