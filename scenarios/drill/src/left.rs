//! How the house was left when somebody else was called: the one place that says what is safe.

use bench::Session;
use plant::fault::{FaultCase, FaultId, Scope};
use plant::{Circuit, Handle, Plant};

/// Power locked off at every source, covers on where it is not, and no water running where it should not.
pub(crate) fn safe(session: &Session, wrong: &FaultCase) -> bool {
    let plant = &session.home.plant;
    let dead = locked_off(plant);
    // Expansion at the relief valve needs no lock: the heater works, the valve guards it. Nor does the utility's open
    // relay: everything behind closed covers is sound.
    let harmless = match wrong.id {
        FaultId::F45 => true,
        FaultId::F26 => wrong.id.scope(&wrong.parameters) == Scope::Utility,
        _ => false,
    };
    let may_stay_on = harmless && session.access.off.is_empty();
    (dead || may_stay_on) && dry(plant)
}

/// Nothing goes on hurting whoever comes to help: the power off at every source, also behind closed covers (a shell may
/// be live, a heater run away), no hot or loose water running.
pub(crate) fn harmless(session: &Session) -> bool {
    let plant = &session.home.plant;
    let plumbing = &plant.plumbing;
    // What a timer or a relay keeps off comes alive by itself.
    let cut = plant.in_line.is_some_and(|one| one.is_fused() && !one.closed);
    let on = |b: &plant::Breaker| b.feeds_heater() && b.handle == Handle::On;
    let dead = !plant.panel.breakers.iter().any(|b| on(b) && !(cut && b.feeds == Circuit::Heater));
    let running = plumbing.relief.lever || plumbing.taps.iter().any(|tap| *tap > 0.0);
    dead && !running && dry(plant)
}

/// Every breaker that truly feeds the heater is off or tripped, with a lock on it.
fn locked_off(plant: &Plant) -> bool {
    let feeds = |b: &&plant::Breaker| b.feeds_heater();
    // An open, locked switch in the line isolates the main circuit as well as its breaker does.
    let switched = plant.in_line.is_some_and(|one| one.isolates());
    let dead = |b: &plant::Breaker| b.handle != Handle::On && b.locked;
    plant.panel.breakers.iter().filter(feeds).all(|b| dead(b) || (switched && b.feeds == Circuit::Heater))
}

/// What leaks has its water shut, and what drains has a hose. A leak counts by what runs out of it now, wherever it is:
/// shell, gaskets, nipples, drain valve, hot line.
fn dry(plant: &Plant) -> bool {
    let plumbing = &plant.plumbing;
    let leaks = plant.leaks().into_the_house().get() > 0.0 || plumbing.is_open_on_top();
    (!leaks || !plumbing.is_fed()) && (plumbing.drain_valve <= 0.0 || plumbing.hose)
}
