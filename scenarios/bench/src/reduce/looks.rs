//! Reading, looking, listening, smelling, and the thermometer.

use plant::{End, Level, Place, Plant, Tap};
use quantity::{Constant, Seconds, Tag, Temperature, Volume};

use super::turn::Turn;
use super::{Answered, behind, reach, senses};
use crate::action::{Cover, Fitting, Probe, Writing};
use crate::instrument::class::to_digit;
use crate::instrument::thermometer;
use crate::session::Session;
use crate::shown::{Refusal, Shown, Sight};

quantity::constants! {
    /// From this power up an element simmers audibly.
    const HEARD: Constant = Constant::new("power from which an element simmers audibly", 300.0, "W", Tag::Model("judged by ear"));
    /// A wiped fitting that leaks is wet again after this; one below a leak, later.
    const REWETS: Constant<Seconds> = Constant::of("until a wiped fitting that leaks is wet again", Seconds(60.0), Tag::Model("a slow drip forms in a minute"));
    /// See `REWETS`.
    const RUNS_DOWN: Constant<Seconds> = Constant::of("the same of a fitting below it", Seconds(600.0), Tag::Model("water creeps under a jacket"));
    /// From this much water on the floor it is seen.
    const SEEN: Constant<quantity::Volume> = Constant::of("water on the floor that is seen", quantity::Volume::litres(0.05), Tag::Model("a cup would be overlooked at less than a quarter"));
    /// Sediment that still clouds what the drain gives.
    const GRITTY: Constant<quantity::Volume> = Constant::of("sediment that clouds what the drain gives", quantity::Volume::litres(0.1), Tag::Model("judged by eye"));
    /// Fill from which a hole at the rim of the bottom drips.
    const RIM: Constant = Constant::new("fill that reaches the bottom's rim", 0.02, "1", Tag::Model("an inch of water"));
}

/// Reads something written.
pub(super) fn read(turn: &mut Turn, what: Writing, time: Seconds) -> Answered {
    match what {
        Writing::Diagram if !turn.s.access.off.contains(&Cover::Upper) => {
            return Err(Refusal::CoverOn { cover: Cover::Upper });
        }
        Writing::StampUpper => reach::place(&turn.s, Place::UpperCompartment)?,
        Writing::StampLower => reach::place(&turn.s, Place::LowerCompartment)?,
        Writing::Dials => {
            reach::setting(&turn.s, Level::Upper)?;
            if turn.s.home.plant.plate.has(Level::Lower) {
                reach::setting(&turn.s, Level::Lower)?;
            }
        }
        Writing::Diagram | Writing::Plate | Writing::Directory => {}
    }
    turn.pass(time);
    let plant = &turn.s.home.plant;
    Ok(match what {
        Writing::Plate => Shown::Plate { plate: plant.plate },
        Writing::Diagram => Shown::Diagram,
        Writing::StampUpper => behind::stamp(plant, Level::Upper),
        Writing::StampLower => behind::stamp(plant, Level::Lower),
        Writing::Directory => {
            Shown::Directory { labels: plant.panel.breakers.iter().map(|b| (b.label, b.rating)).collect() }
        }
        Writing::Dials => {
            let [upper, lower] = plant.thermostats.map(|t| t.dial);
            Shown::Dials { upper, lower }
        }
    })
}

/// Looks at a place.
pub(super) fn look(turn: &mut Turn, at: Place, time: Seconds) -> Answered {
    reach::sight(&turn.s, at)?;
    turn.pass(time);
    let gone = !turn.s.home.plant.plumbing.stand.is_there();
    let mut sights = match at {
        Place::HeaterTop | Place::Relief | Place::Drain if gone => vec![Sight::NoHeater],
        Place::LoadCenter => load_center(&turn.s),
        Place::JunctionBox => cable(&turn.s).into_iter().chain(joints(&turn.s, at)).collect(),
        Place::InLineBox => in_line(&turn.s),
        Place::HeaterTop => heater_top(&turn.s),
        Place::UpperCompartment => upper(&turn.s),
        Place::LowerCompartment => lower(&turn.s),
        Place::Relief => relief(&turn.s),
        Place::Drain => drain(&turn.s),
        Place::Taps => Tap::ALL.iter().filter_map(|tap| running(&turn.s.home.plant, *tap)).collect(),
        Place::Customer | Place::Van => Vec::new(),
    };
    if sights.is_empty() {
        sights.push(Sight::Ordinary);
    }
    Ok(Shown::Sights { at, sights })
}

fn load_center(session: &Session) -> Vec<Sight> {
    let breakers = || session.home.plant.panel.breakers.iter().zip(0u32..);
    let handles = breakers().map(|(b, slot)| {
        let (handle, locked) = (b.stands(), b.locked);
        Sight::BreakerHandle { slot, handle, locked }
    });
    let tandems = breakers().filter(|(b, _)| b.tandem.is_some()).map(|(_, slot)| Sight::Tandem { slot });
    let mut sights: Vec<Sight> = handles.chain(tandems).collect();
    sights.extend(super::in_line::off_peak(session));
    sights.extend(super::portable::seen(&session.home.plant));
    if reach::place(session, Place::LoadCenter).is_ok() {
        let same = breakers().filter(|(b, _)| b.stabs[0] == b.stabs[1]);
        sights.extend(same.map(|(_, slot)| Sight::OneLeg { slot }));
        sights.extend(joints(session, Place::LoadCenter));
    }
    sights
}

/// The branch cable as its end in the junction box shows it.
fn cable(session: &Session) -> Option<Sight> {
    let wiring = &session.home.plant.wiring;
    let conductor = wiring.conductor(*wiring.feeders().first()?);
    Some(Sight::Cable { awg: conductor.awg, metal: conductor.metal, rated: conductor.rated })
}

fn in_line(session: &Session) -> Vec<Sight> {
    let mut sights = super::in_line::face(session);
    if reach::place(session, Place::InLineBox).is_ok() {
        sights.extend(joints(session, Place::InLineBox));
    }
    sights
}

/// Wire ends of a place that are burnt, off, or elsewhere than the diagram has them.
fn joints(session: &Session, at: Place) -> Vec<Sight> {
    let plant = &session.home.plant;
    let mut sights = Vec::new();
    for end in End::all().filter(|e| e.home().place() == at && senses::exists(plant, e.wire)) {
        let joint = plant.wiring.joint(end);
        if joint.charred {
            sights.push(Sight::Charred { end });
        }
        match joint.on {
            None => sights.push(Sight::Lifted { end }),
            Some(on) if on != end.home() => sights.push(Sight::Crossed { end, on }),
            Some(_) => {}
        }
    }
    sights
}

fn heater_top(session: &Session) -> Vec<Sight> {
    let plumbing = &session.home.plant.plumbing;
    let mut sights = vec![
        fitting(session, Fitting::Nipples),
        Sight::ExpansionTank { there: plumbing.expansion.is_some() },
        Sight::CheckValve { there: plumbing.closed },
    ];
    let unions = Sight::Dielectric { there: session.home.installation.dielectric };
    sights.push(if plumbing.stand.is_piped() { unions } else { Sight::PipesOff });
    sights.extend(plumbing.recirculation.map(|one| Sight::Loop { runs: one.pump }));
    sights
}

fn upper(session: &Session) -> Vec<Sight> {
    let mut sights = vec![Sight::Button { proud: session.home.plant.limit.tripped }];
    sights.push(fitting(session, Fitting::UpperElement));
    let says = |board: plant::controls::board::Board| Sight::BoardSays {
        lit: board.powered,
        lockout: board.lockout.filter(|_| board.powered),
    };
    sights.extend(session.home.plant.board.map(says));
    if session.home.installation.bridged {
        sights.push(Sight::LimitBridged);
    }
    sights.extend(behind::controls(session, Level::Upper));
    sights.extend(joints(session, Place::UpperCompartment));
    sights.extend(soot(session, Level::Upper));
    sights
}

fn lower(session: &Session) -> Vec<Sight> {
    let button = |limit: &plant::Limit| Sight::LowerButton { proud: limit.tripped };
    let mut sights: Vec<Sight> = session.home.plant.lower_limit.iter().map(button).collect();
    sights.push(fitting(session, Fitting::LowerElement));
    sights.extend(behind::controls(session, Level::Lower));
    sights.extend(joints(session, Place::LowerCompartment));
    sights.extend(soot(session, Level::Lower));
    sights
}

fn relief(session: &Session) -> Vec<Sight> {
    if session.home.plant.plumbing.relief.missing {
        return vec![fitting(session, Fitting::ReliefValve), Sight::OpenPort];
    }
    let mut sights = vec![fitting(session, Fitting::ReliefValve)];
    if senses::relief_runs(&session.home.plant) {
        sights.push(Sight::ReliefRunning);
    }
    let installation = &session.home.installation;
    sights.push(Sight::Discharge { pipe: installation.discharge });
    if installation.lime {
        sights.push(Sight::LimeCrust);
    }
    sights
}

/// Old soot, where there is any: the wires before it are sound, or charred for a reason of their own.
fn soot(session: &Session, level: Level) -> Option<Sight> {
    (session.home.installation.soot == Some(level)).then_some(Sight::OldSoot)
}

fn drain(session: &Session) -> Vec<Sight> {
    let plant = &session.home.plant;
    let mut sights = vec![fitting(session, Fitting::DrainValve), fitting(session, Fitting::BottomRim)];
    if plant.plumbing.on_floor >= SEEN.get() {
        sights.push(Sight::WaterOnFloor { volume: plant.plumbing.on_floor });
    }
    if plant.plumbing.drain_valve > 0.0 {
        sights.push(Sight::DrainRuns { flow: plant.drain_flow() });
        if plant.vessel.sediment > GRITTY.get() {
            sights.push(Sight::Grit);
        }
    }
    let home = &session.home;
    if home.setting.location == plant::Location::Attic {
        sights.push(Sight::Pan { there: home.installation.pan });
    }
    if home.installation.streak {
        sights.push(Sight::RustStreak);
    }
    if home.installation.condensate {
        sights.push(Sight::Condensate);
    }
    sights
}

/// What an open tap does.
pub(super) fn running(plant: &Plant, tap: Tap) -> Option<Sight> {
    let flow = plant.tap_flow(tap);
    (senses::opening(plant, tap) > 0.0).then(|| Sight::TapRuns {
        tap,
        flow,
        spitting: senses::spits(plant, tap),
    })
}

/// How far a fitting stands above the floor, highest first: water runs down.
const DOWNWARDS: [Fitting; 6] = [
    Fitting::Nipples,
    Fitting::ReliefValve,
    Fitting::UpperElement,
    Fitting::LowerElement,
    Fitting::DrainValve,
    Fitting::BottomRim,
];

/// Water comes out at this fitting itself.
fn leaks(plant: &Plant, fitting: Fitting) -> bool {
    let gasket = |level: Level| {
        let tight = plant.elements.get(level.index()).is_none_or(|e| e.gasket.leak_diameter <= 0.0);
        !tight && senses::wetted(plant, level)
    };
    match fitting {
        Fitting::Nipples => plant.leaks().nipples.get() > 0.0,
        Fitting::UpperElement => gasket(Level::Upper),
        Fitting::LowerElement => gasket(Level::Lower),
        Fitting::DrainValve => plant.plumbing.drain_valve > 0.0 || plant.leaks().drain.get() > 0.0,
        Fitting::ReliefValve => plant.relief_flow().get() > 0.0,
        Fitting::BottomRim => plant.vessel.shell_hole > 0.0 && plant.fill() > RIM.get(),
    }
}

/// Whether a fitting is wet, and whether the water comes from it.
fn fitting(session: &Session, fitting: Fitting) -> Sight {
    let plant = &session.home.plant;
    let dry_for = session.me.wiped.get(&fitting).map(|at| session.clock - *at);
    let after = |time: Seconds| dry_for.is_none_or(|dry| dry >= time);
    let own = leaks(plant, fitting);
    let sweat = plant.sweats();
    let damp = match fitting {
        Fitting::Nipples => sweat.pipe,
        Fitting::BottomRim => sweat.shell,
        _ => false,
    };
    let above = DOWNWARDS.iter().take_while(|f| **f != fitting).any(|f| leaks(plant, *f));
    let wet = ((own || damp) && after(REWETS.get())) || (above && after(RUNS_DOWN.get()));
    if wet { Sight::Wet { fitting, dripping: own && after(REWETS.get()) } } else { Sight::Dry { fitting } }
}

/// Where a fitting is.
pub(super) const fn fitting_place(fitting: Fitting) -> Place {
    match fitting {
        Fitting::UpperElement => Place::UpperCompartment,
        Fitting::LowerElement => Place::LowerCompartment,
        Fitting::Nipples => Place::HeaterTop,
        Fitting::DrainValve | Fitting::BottomRim => Place::Drain,
        Fitting::ReliefValve => Place::Relief,
    }
}

/// A fitting can be got at.
pub(super) fn fitting_in_reach(session: &Session, fitting: Fitting) -> Result<(), Refusal> {
    reach::sight(session, fitting_place(fitting))
}

/// A fitting to the hand: wet or dry, and how warm.
pub(super) fn feel_fitting(session: &Session, at: Fitting) -> (Sight, Temperature) {
    let plant = &session.home.plant;
    let about = match at {
        Fitting::UpperElement => plant.wall(Level::Upper),
        Fitting::LowerElement => plant.wall(Level::Lower),
        Fitting::Nipples => plant.outlet(),
        Fitting::DrainValve => plant.room,
        Fitting::BottomRim => plant.room,
        Fitting::ReliefValve => relief_pipe(plant),
    };
    (fitting(session, at), about)
}

/// Wipes a fitting dry; at the bottom rim the tray and the floor with it.
pub(super) fn wipe(turn: &mut Turn, fitting: Fitting, time: Seconds) -> Answered {
    fitting_in_reach(&turn.s, fitting)?;
    turn.pass(time);
    let now = turn.s.clock;
    turn.s.me.wiped.insert(fitting, now);
    match fitting {
        Fitting::UpperElement => turn.s.home.plant.dry(Level::Upper),
        Fitting::LowerElement => turn.s.home.plant.dry(Level::Lower),
        Fitting::BottomRim => turn.s.home.plant.plumbing.on_floor = Volume(0.0),
        _ => {}
    }
    Ok(Shown::Done)
}

/// Listens.
pub(super) fn listen(turn: &mut Turn, at: Place, time: Seconds) -> Answered {
    turn.pass(time);
    let plant = &turn.s.home.plant;
    let mut sights = Vec::new();
    match at {
        Place::HeaterTop | Place::JunctionBox | Place::UpperCompartment | Place::LowerCompartment => {
            let live = plant.standing();
            let watts = [Level::Upper, Level::Lower].map(|l| live.element_watts(l).get());
            if watts.into_iter().any(|w| w > HEARD.get()) {
                sights.push(Sight::Simmering);
            }
            if Level::ALL.iter().any(|level| plant.pops(*level)) {
                sights.push(Sight::Popping);
            }
            if at == Place::HeaterTop && plant.ticks() {
                sights.push(Sight::Ticking);
            }
        }
        Place::Relief if senses::relief_runs(plant) => sights.push(Sight::ReliefRunning),
        Place::Drain if plant.drain_flow().get() > 0.0 => {
            sights.push(Sight::DrainRuns { flow: plant.drain_flow() });
        }
        Place::Taps => sights.extend(Tap::ALL.iter().filter_map(|tap| running(plant, *tap))),
        _ => {}
    }
    if sights.is_empty() {
        sights.push(Sight::Ordinary);
    }
    Ok(Shown::Sights { at, sights })
}

/// Smells: burnt insulation comes through a cover.
pub(super) fn smell(turn: &mut Turn, at: Place, time: Seconds) -> Answered {
    turn.pass(time);
    let burnt = senses::charred_at(&turn.s.home.plant, at);
    let sight = if burnt { Sight::BurntSmell } else { Sight::Ordinary };
    Ok(Shown::Sights { at, sights: vec![sight] })
}

/// A temperature as the kit's thermometer shows it.
pub(super) fn on_thermometer(session: &Session, temperature: Temperature) -> Temperature {
    let off = session.job.kit.thermometer * thermometer::CLASS.get();
    let shown = Temperature(temperature.get() + off).to_fahrenheit();
    Temperature::fahrenheit(to_digit(shown, thermometer::DIGIT.get()))
}

/// Takes a temperature.
pub(super) fn thermometer(turn: &mut Turn, at: &Probe, time: Seconds) -> Answered {
    match *at {
        Probe::Tap { tap } if turn.s.home.plant.tap_flow(tap).get() <= 0.0 => return Err(Refusal::NoFlow),
        Probe::Drain if turn.s.home.plant.drain_flow().get() <= 0.0 => return Err(Refusal::NoFlow),
        Probe::ReturnPipe if turn.s.home.plant.plumbing.recirculation.is_none() => {
            return Err(Refusal::NotHere);
        }
        Probe::Shell { level } => reach::control(&turn.s, level)?,
        Probe::Metal { point } => reach::point(&turn.s, point)?,
        _ => {}
    }
    turn.attended = matches!(at, Probe::Tap { .. });
    turn.pass(time);
    let plant = &turn.s.home.plant;
    let true_one = match *at {
        Probe::Tap { tap } => plant.tap_temperature(tap),
        Probe::Shell { level } => plant.wall(level),
        Probe::Metal { point } => plant.metal(point),
        Probe::ColdPipe => plant.marked_cold_pipe(),
        Probe::HotPipe => plant.hot_pipe(),
        Probe::ReturnPipe => plant.return_temperature(),
        Probe::ReliefPipe => relief_pipe(plant),
        Probe::Drain => plant.drain_temperature(),
    };
    Ok(Shown::Temperature { reading: on_thermometer(&turn.s, true_one) })
}

/// The discharge pipe: as hot as what runs through it.
pub(super) fn relief_pipe(plant: &Plant) -> Temperature {
    if senses::relief_runs(plant) { plant.relief_outlet_temperature() } else { plant.room }
}
