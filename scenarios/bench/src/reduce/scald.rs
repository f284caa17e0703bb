//! Hot water and hot metal on skin, the technician's and the household's.

use quantity::{Constant, Flow, Seconds, Tag, Temperature};

use super::senses;
use super::turn::Turn;
use crate::person::burn::REFLEX;
use crate::person::{Degree, Exposure, Harm, Source, Who};
use crate::shown::Fact;

quantity::constants! {
    /// Water above this can burn people who do not expect it. A heater set to 120 °F stacks a few degrees more at its top,
    /// and is no hazard for that.
    const HOT: Constant<Temperature> = Constant::of("water that can burn who does not expect it", Temperature::fahrenheit(125.0), Tag::Published("time and temperature table of an owner's manual (Shriners): 125 °F takes one and a half to two minutes, 120 °F over five"));
    /// How long somebody who expects nothing leaves a hand in it. Model: a second to notice, one to withdraw.
    const UNWARNED: Constant<Seconds> = Constant::of("how long who expects nothing leaves a hand in it", Seconds(2.0), Tag::Model("a second to notice, one to withdraw"));
    /// What ran before the technician rang is nobody's neglect until there was time to warn.
    const TIME_TO_WARN: Constant<Seconds> = Constant::of("until what ran before is the technician's neglect", Seconds(300.0), Tag::Model("time to arrive and to warn"));
    /// Boiling point in the open air: above it water let out flashes to steam.
    const BOILING: Constant<Temperature> = Constant::of("boiling point in the open air", Temperature::celsius(100.0), Tag::Published("IAPWS-97 saturation at 101 325 Pa, rounded"));
    /// Flow through an open relief valve, for what flashes to steam. Model: order of magnitude.
    const RELIEF_FLOW: Constant<Flow> = Constant::of("flow through an open relief valve that flashes to steam", Flow::gpm(5.0), Tag::Model("an order of magnitude"));
}

/// Looks whether water hot enough to burn runs with nobody warned, each time time has passed.
pub(super) fn watch(turn: &mut Turn) {
    let plant = &turn.s.home.plant;
    let outlet = plant.crown();
    let runs = senses::open_tap(plant);
    let open = runs.filter(|_| !turn.attended && !turn.lived);
    let (tap, at_tap) = (open.is_some(), open.map_or(outlet, |tap| plant.tap_temperature(tap)));
    // A weeping seat wets a pipe; only a lifted valve throws water.
    let valve = &plant.plumbing.relief;
    let lifted = valve.lever || valve.open || valve.lifted;
    let came_upon = turn.s.clock < TIME_TO_WARN.get() && !valve.lever;
    let relief = !turn.open && lifted && senses::relief_runs(plant);
    let drain = !turn.open && plant.drain_flow().get() > 0.0;
    let mut hottest = None::<Temperature>;
    let sources = [(tap, at_tap), (relief && !came_upon, outlet), (drain, plant.drain_temperature())];
    for temperature in sources.into_iter().filter(|(runs, _)| *runs).map(|(_, t)| t) {
        hottest = Some(hottest.map_or(temperature, |h| if temperature > h { temperature } else { h }));
    }
    // A valve that lifts by itself steams over nobody where people were told to keep away.
    let unwarned = relief && (valve.lever || !turn.s.me.household_told);
    steam(turn, runs.is_some() || unwarned, outlet);
    let hot = hottest.filter(|t| *t > HOT.get() && !turn.s.me.household_told);
    if let Some(temperature) = hot
        && !turn.s.me.hot_discharge
    {
        met(turn, temperature);
    }
    turn.s.me.hot_discharge = hot.is_some();
}

/// Somebody of the house who was not warned meets water as hot as this.
pub(super) fn met(turn: &mut Turn, temperature: Temperature) {
    turn.facts.push(Fact::HotDischarge { temperature });
    let burn = Exposure::water(temperature, UNWARNED.get()).suffer(likeliest(turn));
    if burn.degree > Degree::None {
        turn.harms.push(Harm::Burn(burn));
    }
}

/// Who of the household meets it first.
fn likeliest(turn: &Turn) -> Who {
    let (_, children) = turn.s.home.setting.household.people();
    if children > 0 { Who::Child } else { Who::Adult }
}

fn steam(turn: &mut Turn, runs: bool, water: Temperature) {
    let told = turn.harms.iter().any(|h| matches!(h, Harm::Steam { .. }));
    if runs && !told && water > BOILING.get() {
        let pressure = turn.s.home.plant.plumbing.pressure;
        let volume = quantity::Volume(RELIEF_FLOW.get().get() * UNWARNED.get().get());
        turn.harms.push(Harm::Steam { water, pressure, volume });
        let lever = turn.s.home.plant.plumbing.relief.lever;
        // What flashes goes out as steam at the boiling point of the open air, over whoever stands there.
        let steam = Exposure { source: Source::Steam, temperature: BOILING.get(), seconds: UNWARNED.get() };
        let burn = steam.suffer(if turn.attended || lever { Who::Technician } else { likeliest(turn) });
        if burn.degree > Degree::None {
            turn.harms.push(Harm::Burn(burn));
        }
    }
}

/// The technician's own skin.
pub(super) fn own(turn: &mut Turn, exposure: Exposure) {
    let burn = exposure.suffer(Who::Technician);
    if burn.degree > Degree::None {
        turn.harms.push(Harm::Burn(burn));
    }
}

/// The technician's hand on hot metal; gloves keep it off.
pub(super) fn metal(turn: &mut Turn, temperature: Temperature) {
    if !turn.s.me.gloves {
        own(turn, Exposure { source: Source::Metal, temperature, seconds: Seconds(REFLEX.get()) });
    }
}
