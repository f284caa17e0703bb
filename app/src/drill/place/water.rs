//! What can be done with the water.

use bench::{Action, Fitting, Probe, Session, Touchable, Writing};
use plant::Tap;
use quantity::Volume;

use super::acts::Group;
use super::offer::Offer;
use crate::text;
use crate::units::{Units, size};

/// How far a valve may be set: shut, a quarter, half, full.
const OPENINGS: [f64; 4] = [0.0, 0.25, 0.5, 1.0];
/// Buckets, in gallons, the usual one first.
const BUCKETS: [f64; 6] = [5.0, 1.0, 2.0, 10.0, 20.0, 40.0];

fn set(now: f64, act: impl Fn(f64) -> Action) -> Vec<Offer> {
    OPENINGS
        .into_iter()
        .map(|opening| {
            let here = (now - opening).abs() < 1e-9;
            Offer::toggle(act(opening), text::opening_act(opening), here)
        })
        .collect()
}

fn wet(fitting: Fitting) -> [Offer; 2] {
    [
        Offer::plain(Action::Touch { at: Touchable::Fitting { fitting } }, text::feel(fitting)),
        Offer::plain(Action::Wipe { fitting }, text::wipe(fitting)),
    ]
}

/// At the top of the heater.
pub fn top(session: &Session) -> Vec<Group> {
    let plumbing = &session.home.plant.plumbing;
    let mut rest = vec![
        Offer::plain(Action::Read { what: Writing::Plate }, text::READ_PLATE),
        Offer::plain(Action::Thermometer { at: Probe::ColdPipe }, text::THERMOMETER_COLD),
        Offer::plain(Action::Thermometer { at: Probe::HotPipe }, text::THERMOMETER_HOT),
        Offer::plain(Action::TankCharge, text::TANK_CHARGE),
        Offer::plain(Action::LookAtAnode, text::LOOK_AT_ANODE),
        Offer::plain(Action::Thaw, text::THAW),
    ];
    rest.extend(wet(Fitting::Nipples));
    let loops = plumbing.recirculation.map(|one| {
        let mut offers = set(one.valve, |opening| Action::ReturnValve { opening });
        offers.push(Offer::plain(Action::Thermometer { at: Probe::ReturnPipe }, text::THERMOMETER_RETURN));
        Group::new(text::RETURN_VALVE, offers)
    });
    let mut groups = vec![
        Group::new(text::COLD_VALVE, set(plumbing.cold_valve, |opening| Action::ColdValve { opening })),
        Group::new(text::PIPES, rest),
    ];
    groups.extend(loops);
    groups
}

/// At the relief valve.
pub fn relief(session: &Session) -> Vec<Group> {
    let up = session.home.plant.plumbing.relief.lever;
    let lever = Offer::toggle(Action::ReliefLever { up: !up }, text::lever_act(!up), up);
    let mut rest = vec![
        Offer::plain(Action::Touch { at: Touchable::ReliefPipe }, text::FEEL_RELIEF_PIPE),
        Offer::plain(Action::Thermometer { at: Probe::ReliefPipe }, text::THERMOMETER_RELIEF),
    ];
    rest.extend(wet(Fitting::ReliefValve));
    vec![
        Group::new(text::LEVER, vec![lever]).cautioned(&Action::ReliefLever { up: true }),
        Group::new(text::PIPES, rest),
    ]
}

/// At the drain and on the floor.
pub fn drain(session: &Session) -> Vec<Group> {
    let plumbing = &session.home.plant.plumbing;
    let gauge = session.me.gauge;
    let mut valve = vec![Offer::toggle(Action::Hose { on: !plumbing.hose }, text::HOSE, plumbing.hose)];
    valve.extend(set(plumbing.drain_valve, |opening| Action::Drain { opening }));
    let pressure = vec![
        Offer::toggle(Action::Gauge { on: !gauge }, text::GAUGE, gauge),
        Offer::plain(Action::ReadGauge, text::READ_GAUGE),
    ];
    let mut rest = vec![Offer::plain(Action::Thermometer { at: Probe::Drain }, text::THERMOMETER_DRAIN)];
    rest.extend(wet(Fitting::DrainValve));
    rest.extend(wet(Fitting::BottomRim));
    vec![
        Group::new(text::DRAIN_VALVE, valve).cautioned(&Action::Drain { opening: 1.0 }),
        Group::new(text::PRESSURE, pressure),
        Group::new(text::FITTINGS, rest),
    ]
}

/// At the taps.
pub fn taps(session: &Session, units: Units) -> Vec<Group> {
    let all = Tap::ALL.iter().zip(session.home.plant.plumbing.taps).map(|(&tap, now)| {
        let mut offers = set(now, |opening| Action::Tap { tap, opening });
        offers.push(Offer::plain(Action::Touch { at: Touchable::Water { tap } }, text::FEEL_WATER));
        offers.push(Offer::plain(Action::Thermometer { at: Probe::Tap { tap } }, text::THERMOMETER_TAP));
        for (hot, label) in [(true, text::SAMPLE_HOT), (false, text::SAMPLE_COLD)] {
            offers.push(Offer::plain(Action::Sample { tap, hot }, label));
        }
        let buckets = BUCKETS.map(|gallons| {
            let volume = Volume::gallons(gallons);
            (size(volume, units), Action::Bucket { tap, volume })
        });
        offers.push(Offer::choose(text::bucket(tap), text::RUN, text::run_bucket(tap), buckets));
        let shut = session.home.plant.plumbing.is_shut(tap as usize);
        offers.push(Offer::toggle(Action::Stops { tap, shut: !shut }, text::STOPS, shut));
        Group { title: text::tap_title(tap).into(), offers, caution: None, pairs: false }
    });
    let meter = Group::new(
        text::WATER_METER,
        vec![
            Offer::plain(Action::ReadWaterMeter, text::READ_WATER_METER),
            Offer::plain(Action::Ventilate, text::VENTILATE),
        ],
    );
    let main = session.home.plant.plumbing.main_valve;
    let main = Group::new(text::MAIN_VALVE, set(main, |opening| Action::MainValve { opening }));
    all.chain([meter, main]).collect()
}
