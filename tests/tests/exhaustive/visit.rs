//! The visit of a thorough technician: everything looked at and measured in a fixed order, then what the finding asks
//! for, then the proof. Knows the acts, what they showed, the heater's plate and its diagram, and nothing else.

use std::ops::{Range, RangeInclusive};
use std::rc::Rc;

use bench::{
    Action, Bucket, Clamped, Cover, Display, Ending, Fitting, Helper, Jack, Job, Kit, KnownSource, Licence,
    MeterFunction, NewPart, Noticed, Probe, Session, Shown, Sight, Touchable, Writing,
};
use diagnosis::{COVERS, Round};
use drill::licence;
use plant::fault::{FaultCase, FaultId, PartKind, Remedy, Scope};
use plant::home::Home;
use plant::{Circuit, Element, End, Handle, Level, Place, Point, Screw, Stab, Tap, Wire};
use quantity::{Amps, Pressure, Temperature, Volume};

use crate::suspicion::{Evidence, Ring, Seen};
use crate::technician as by_the_book;

/// Wires that carry an element's current while its thermostat calls.
const SWITCHED: [Wire; 4] = [Wire::UpperSwitched, Wire::LowerSwitched, Wire::BoardUpper, Wire::BoardLower];
const LEVELS: [Level; 2] = [Level::Upper, Level::Lower];

/// Hot water as it may come from a heater with its dials at 120 °F, in °F: stacking on top, a wide differential.
const HOTTEST: f64 = 135.0;
const COOLEST: f64 = 100.0;
/// Nearly boiling, on the shell.
const BOILS: f64 = 200.0;
/// Where the water is hottest.
const AT_THE_TOP: Action = Action::Thermometer { at: Probe::Shell { level: Level::Upper } };
/// What has boiled and is safe to be drawn from, at the same place.
const COOLED: f64 = 170.0;
/// Hours that a boiling tank is left to cool at most.
const COOLING: u32 = 48;
/// Hours that it is left where the taps ran boiling, whatever the probe says.
const OVER_NIGHT: u32 = 12;
/// Less than any element takes, in amperes.
const LITTLE: f64 = 4.0;
/// Stops of a dial.
const LOWEST: Temperature = Temperature::fahrenheit(90.0);
const HIGHEST: Temperature = Temperature::fahrenheit(150.0);
/// Above what a tank is kept at, below any sound limit.
const WELL_ABOVE: Temperature = Temperature::fahrenheit(140.0);
/// How often a contact is tried: one that misses half its closings misses one of them.
const TRIES: usize = 8;
/// Looks at the drain at most, while it is flushed.
const LONGEST_FLUSH: u32 = 60;
/// How often a meter is tried on a known source: leads that pass three times in five are caught.
const PROVES: usize = 16;
/// What a receptacle shows at least, and what tells a live screw from a dead one, in volts.
const LIVE: f64 = 100.0;
const ALIVE: f64 = 20.0;
/// What a sound coil has of the ohms of its stamp. Trade sheet 2.2, and the meter's class.
const COILS: RangeInclusive<f64> = 0.93..=1.12;
/// Buckets drawn at most in one visit.
const MOST_DRAWS: u32 = 60;

/// A technician in the house.
pub struct Visit {
    session: Session,
    /// The same house as its plate, its diagram and a look at its line describe it.
    sound: Home,
    /// The house in which he imagines each suspect: what no eye and no instrument shows of a part stands in the middle of
    /// what such parts have, or where his own meter puts it.
    known: Job,
    /// What the ohmmeter found of each coil, over what its stamp asks for.
    coils: [Option<f64>; 2],
    licence: Licence,
    pub seen: Vec<Seen>,
    /// Where the same was tried again and again: what it does now and then counts, not in which order.
    pub tried: Vec<Range<usize>>,
    /// Whether traps are thought of: the meter is tried first, and what is off is read before it is believed dead.
    wary: bool,
    /// Breakers that feed the heater and stand on no diagram.
    others: Vec<u32>,
    /// What was put right before all was looked at again, and how much had been seen by then.
    mended: Vec<FaultCase>,
    mended_at: usize,
}

impl Visit {
    pub fn begin(session: Session, sound: Home, licence: Licence) -> Self {
        let (seen, tried, others) = (Vec::new(), Vec::new(), Vec::new());
        let mut known = (*session.job).clone();
        known.kit = Kit { seed: known.kit.seed, ..Kit::EXACT };
        for element in &mut known.home.plant.elements {
            element.tolerance = 1.0;
        }
        Self {
            session,
            sound,
            known,
            coils: [None; 2],
            licence,
            seen,
            tried,
            wary: false,
            others,
            mended: Vec::new(),
            mended_at: 0,
        }
    }

    /// Does one act; gives what it showed.
    fn act(&mut self, action: Action) -> Shown {
        let at = self.seen.len();
        self.sees(action);
        self.seen[at].1.clone()
    }

    fn acts(&mut self, actions: impl IntoIterator<Item = Action>) {
        for action in actions {
            self.act(action);
        }
    }

    /// Everything, once: all there is to look at, to read running, to draw, to read dead.
    pub fn look_at_everything(&mut self) {
        for round in [Round::Looking, Round::Running, Round::Water, Round::Dead] {
            // What was seen off or tripped is tried once, before anything is measured running.
            let before = match round {
                Round::Looking => glance(),
                // Nobody puts current on a tank of which only air comes.
                Round::Running if self.is_dry() => self.switches_off(),
                Round::Running => {
                    let glasses = [true, false].map(|hot| Action::Sample { tap: Tap::Kitchen, hot });
                    glasses.into_iter().chain(self.try_breakers()).collect()
                }
                Round::Water => self.draw_down(),
                Round::Dead if self.wary => {
                    self.finds_sources();
                    Vec::new()
                }
                Round::Dead | Round::Recovery | Round::Contacts => Vec::new(),
            };
            for act in before.into_iter().chain(telling_first(round.acts(&self.sound))) {
                if self.is_done(&act) {
                    continue;
                }
                if act == (Action::ReliefLever { up: true }) {
                    self.sees(AT_THE_TOP);
                }
                let in_the_hand = matches!(act, Action::Sample { hot: true, .. });
                if in_the_hand && self.scalds() || lets_out(&act) && self.boils() {
                    continue;
                }
                if puts_current_on(&act) && self.is_dry() {
                    continue;
                }
                let waited = act == Action::WaitForCutOut;
                self.sees(act);
                if waited {
                    self.sees(AT_THE_TOP);
                }
            }
        }
        self.try_contacts();
        if self.mended.is_empty() {
            self.knows_the_coils();
        }
    }

    /// Each coil as the ohmmeter found it, where it is what its stamp says within what such coils have.
    fn knows_the_coils(&mut self) {
        for (level, pair) in
            [(Level::Upper, [Screw::UEa, Screw::UEb]), (Level::Lower, [Screw::LEa, Screw::LEb])]
        {
            let stamp = self.seen.iter().find_map(|(_, shown)| match shown {
                Shown::Stamp { level: of, rating, .. } if *of == level => Some(*rating),
                _ => None,
            });
            let [red, black] = pair.map(Point::Screw);
            let read = Action::Meter { function: MeterFunction::Ohms, red, black };
            let ohms = self.seen.iter().find_map(|(act, shown)| match shown {
                Shown::Meter { display: Display::Ohms { ohms } } if *act == read => Some(*ohms),
                _ => None,
            });
            if let (Some(stamp), Some(ohms)) = (stamp, ohms) {
                let share = ohms.get() / Element::sound(stamp).cold_coil().get();
                self.coils[level.index()] = Some(share);
                if COILS.contains(&share) {
                    self.known.home.plant.elements[level.index()].tolerance = share;
                }
            }
        }
    }

    /// Each dial down and up, and the contact beside it: dead, with its leads off.
    fn try_contacts(&mut self) {
        let contacts = [(Level::Upper, Screw::U1, Screw::U2), (Level::Lower, Screw::D1, Screw::D2)];
        for (level, a, b) in contacts {
            let began = self.seen.len();
            for _ in 0..TRIES {
                self.sees(Action::Dial { level, to: LOWEST });
                self.sees(Action::Dial { level, to: HIGHEST });
                let ohms = MeterFunction::Ohms;
                self.sees(Action::Meter { function: ohms, red: a.into(), black: b.into() });
            }
            self.tried.push(began..self.seen.len());
        }
    }

    /// Traps were asked for: the jack looked at, and the meter tried on what is known to be live, time and again, before
    /// anything is read with it.
    pub fn is_wary(&mut self) {
        self.wary = true;
        self.sees(Action::Jack { jack: Jack::Volts });
        for _ in 0..PROVES {
            self.sees(Action::ProveMeter { on: KnownSource::Receptacle });
            let last = self.seen.iter().rev().find(|(act, _)| matches!(act, Action::ProveMeter { .. }));
            if !last.is_some_and(|(_, shown)| volts(shown) > LIVE) {
                self.sees(Action::SpareLeads);
            }
        }
    }

    /// The heater's own breakers off and locked; where it is live all the same, each other one until it is not.
    fn finds_sources(&mut self) {
        for slot in self.slots() {
            self.sees(Action::Breaker { slot, on: false });
            self.sees(Action::Lock { slot, on: true });
        }
        let mut rest: Vec<u32> = Vec::new();
        for sight in self.seen.iter().flat_map(|(_, shown)| sights(shown)) {
            if let Sight::BreakerHandle { slot, handle: Handle::On, .. } = sight
                && !self.slots().contains(slot)
                && !rest.contains(slot)
            {
                rest.push(*slot);
            }
        }
        let mut live = self.is_live();
        for slot in rest {
            if !live {
                return;
            }
            self.sees(Action::Breaker { slot, on: false });
            live = self.is_live();
            if live {
                self.sees(Action::Breaker { slot, on: true });
            } else {
                self.sees(Action::Lock { slot, on: true });
                self.others.push(slot);
            }
        }
    }

    /// Voltage at the screws where the cables arrive.
    fn is_live(&mut self) -> bool {
        let mut live = false;
        for pair in [(Screw::H1, Screw::H3), (Screw::H5, Screw::H7)] {
            for (a, b) in [pair, (pair.0, Screw::Shell), (pair.1, Screw::Shell)] {
                let function = MeterFunction::LowVolts;
                self.sees(Action::Meter { function, red: a.into(), black: b.into() });
                live |= self.seen.last().is_some_and(|(_, shown)| volts(shown) > ALIVE);
            }
        }
        live
    }

    /// What was put on or taken off once stays so, and what is not there is not read again.
    fn is_done(&self, act: &Action) -> bool {
        let stays = matches!(
            act,
            Action::TellHousehold
                | Action::Gloves { on: true }
                | Action::EyeProtection { on: true }
                | Action::Cover { off: true, .. }
        );
        let reads = matches!(act, Action::Meter { .. } | Action::Clamp { .. } | Action::Look { .. });
        let refused = |shown: &Shown| matches!(shown, Shown::Refused { .. });
        let is_so = |shown: &Shown| stays && !refused(shown) || reads && refused(shown);
        (stays || reads) && self.seen.iter().any(|(done, shown)| done == act && is_so(shown))
    }

    /// Does one act, and keeps what it showed.
    fn sees(&mut self, act: Action) {
        let outcome = self.session.step(&act);
        let low = outcome.noticed.contains(&Noticed::LowBattery);
        self.seen.push((act, outcome.shown));
        if low && self.wary {
            self.sees(Action::ChangeBattery);
        }
    }

    /// Water that would flash to steam where it comes out.
    fn boils(&self) -> bool {
        let last = self.seen.iter().rev().find_map(|(act, shown)| match shown {
            Shown::Temperature { reading } if *act == AT_THE_TOP => Some(reading.to_fahrenheit()),
            _ => None,
        });
        last.is_some_and(|f| f > BOILS) || self.last_drawn().is_some_and(|f| f > BOILS)
    }

    /// An open tap gave nothing but air.
    fn is_dry(&self) -> bool {
        let last = self.seen.iter().rev().find(|(act, _)| matches!(act, Action::Bucket { .. }));
        let air =
            |sight: &Sight| matches!(sight, Sight::TapRuns { flow, spitting: true, .. } if flow.get() <= 0.0);
        last.is_some_and(|(_, shown)| sights(shown).iter().any(air))
    }

    fn switches_off(&self) -> Vec<Action> {
        self.slots().into_iter().map(|slot| Action::Breaker { slot, on: false }).collect()
    }

    /// What came into the bucket last is nothing to hold a glass under.
    fn scalds(&self) -> bool {
        self.last_drawn().is_some_and(|f| f > HOTTEST)
    }

    /// The hottest that came into the bucket last, in °F.
    fn last_drawn(&self) -> Option<f64> {
        self.seen.iter().rev().find_map(|(_, shown)| match shown {
            Shown::Bucket(bucket) => Some(bucket.first.to_fahrenheit().max(bucket.last.to_fahrenheit())),
            _ => None,
        })
    }

    /// Satisfied, then drawn cold by twelfths and at once: when each thermostat calls, and how warm it is there.
    fn draw_down(&self) -> Vec<Action> {
        let wiring = &self.sound.plant.wiring;
        let switched =
            || Wire::ALL.iter().copied().filter(|wire| wiring.exists(*wire) && SWITCHED.contains(wire));
        // A bad screw drops volts only while its element runs: before anything is satisfied again.
        let joints = switched().chain(Some(Wire::Transfer).filter(|wire| wiring.exists(*wire)));
        let mut readings: Vec<Action> = joints
            .flat_map(|wire| [0, 1].map(|side| End { wire, side }))
            .map(|end| Action::Meter {
                function: MeterFunction::Volts,
                red: Point::End(end),
                black: Point::Screw(end.home()),
            })
            .collect();
        readings.extend(switched().map(|wire| Action::Clamp { around: Clamped::Wire { wire } }));
        readings.extend(LEVELS.map(|level| Action::Thermometer { at: Probe::Shell { level } }));
        let readings = telling_first(readings);
        let nominal = self.sound.plant.plate.nominal;
        let then = |volume| {
            let bucket = Action::Bucket { tap: Tap::Bath, volume };
            std::iter::once(bucket).chain(readings.iter().cloned()).collect::<Vec<_>>()
        };
        let by_twelfths = std::iter::repeat_n(then(nominal / 12.0), 12).flatten();
        // Faster than any element keeps up with.
        let at_once = std::iter::repeat_n(then(nominal), 2).flatten();
        // Hot water through a cold pipe, and an ear to it.
        let hot = |opening| Action::Tap { tap: Tap::Kitchen, opening };
        let listen = [Action::WaitForCutOut, hot(1.0), Action::Listen { at: Place::HeaterTop }, hot(0.0)];
        listen.into_iter().chain(by_twelfths).chain(at_once).collect()
    }

    /// Each breaker seen off or tripped, off and on.
    fn try_breakers(&self) -> Vec<Action> {
        let mut slots: Vec<u32> = Vec::new();
        for sight in self.seen.iter().flat_map(|(_, shown)| sights(shown)) {
            if let Sight::BreakerHandle { slot, handle, .. } = sight
                && *handle != Handle::On
                && !slots.contains(slot)
            {
                slots.push(*slot);
            }
        }
        let on = |slot| [false, true].map(|on| Action::Breaker { slot, on });
        slots.into_iter().flat_map(on).collect()
    }

    /// What he goes by.
    pub fn evidence(&self) -> Evidence<'_> {
        Evidence { seen: &self.seen, tried: &self.tried, from: 0 }
    }

    /// What he saw since one of two was put right.
    pub fn evidence_since(&self) -> Evidence<'_> {
        Evidence { from: self.mended_at, ..self.evidence() }
    }

    /// Among whom he looks, with nothing known.
    pub fn ring(&self) -> Ring<'_> {
        Ring { job: &self.known, sound: &self.sound, beside: None, coils: self.coils }
    }

    pub fn job(&self) -> &Rc<bench::Job> {
        &self.session.job
    }

    /// How it ended, for the one who judges.
    pub fn end(self) -> Session {
        self.session
    }

    /// The act at which the technician came to harm, if one did end the job.
    pub fn hurt(&self) -> Option<String> {
        let ended =
            self.session.ended.is_some_and(|e| !matches!(e, Ending::HandedOver | Ending::Called { .. }));
        let last = self.session.log.iter().rev().find(|e| !e.outcome.harms.is_empty());
        ended.then(|| last.map_or_else(String::new, |e| format!("{:?} {:?}", e.action, e.outcome.harms)))
    }

    /// Every breaker that the circuits of this heater's diagram run from.
    fn slots(&self) -> Vec<u32> {
        let panel = &self.sound.plant.panel;
        let circuits = [Circuit::Heater, Circuit::OffPeak].into_iter();
        let named = circuits.filter_map(|c| panel.slot_of(c)).map(|slot| slot as u32);
        named.chain(self.others.iter().copied()).collect()
    }

    /// Writes each finding down, does what they ask for, or calls whose work it is.
    pub fn put_right(&mut self, found: &[FaultCase]) {
        for one in found {
            self.act(Action::Finding { fault: Some(one.id), evidence: Vec::new() });
        }
        let scopes = || found.iter().map(|one| one.id.scope(&one.parameters));
        if let Some(scope) = scopes().find(|scope| !licence::covers(self.licence, *scope)) {
            let whom = licence::helper_for(scope).unwrap_or(Helper::Electrician);
            self.act(Action::ColdValve { opening: 0.0 });
            self.acts([Action::TellResult, Action::StopAndCall { whom }]);
            return;
        }
        self.makes_ready();
        self.seen_amiss();
        let mended = self.mended.clone();
        let is_done =
            |one: &FaultCase| mended.iter().any(|done| done.id == one.id && remedy(done) == remedy(one));
        for one in found.iter().filter(|one| !is_done(one)) {
            self.remedies(one);
        }
    }

    /// All as it was found, cool, no current on it.
    fn makes_ready(&mut self) {
        self.acts(self.as_found());
        self.let_cool();
        self.tests_fuses();
        self.acts(self.switches_off());
    }

    /// Puts one of two right, and looks at everything once more: what it hid shows only then.
    pub fn mends_first(&mut self, first: &FaultCase) {
        if !licence::covers(self.licence, first.id.scope(&first.parameters)) {
            return;
        }
        self.makes_ready();
        self.remedies(first);
        self.mended.push(first.clone());
        self.mended_at = self.seen.len();
        self.acts(self.switched_on());
        self.act(Action::PressReset);
        self.look_at_everything();
    }

    /// Does what one finding asks for.
    fn remedies(&mut self, found: &FaultCase) {
        let Some(remedy) = found.id.remedy(&found.parameters) else { return };
        match remedy {
            Remedy::Replace(PartKind::Cartridge) => {
                let at = found.parameters.get("tap").map_or(Tap::Shower.index(), |tap| *tap as usize);
                let tap = Tap::ALL.iter().copied().find(|tap| tap.index() == at).unwrap_or(Tap::Shower);
                self.act(Action::Replace { part: NewPart::Cartridge { tap } });
            }
            Remedy::Replace(part) => {
                self.change(&[part]);
                if found.id == FaultId::F31 {
                    // The ohmmeter found the tank off its ground wire.
                    self.act(Action::Remake { end: End { wire: Wire::CableG, side: 1 }, torqued: true });
                }
            }
            Remedy::ReplaceAll(parts) => self.change(parts),
            Remedy::Remake(ends) => {
                self.acts(ends.iter().map(|end| Action::Remake { end: *end, torqued: true }))
            }
            Remedy::Land(ends) => self.acts(ends.iter().flat_map(|end| put(*end))),
            Remedy::Seat(level) => {
                self.act(Action::Seat { level });
            }
            Remedy::MoveBreaker => {
                self.acts(self.slots().into_iter().map(|slot| Action::MoveBreaker { slot }))
            }
            Remedy::SetClock => {
                self.act(Action::SetClock);
            }
            Remedy::Relabel => self.acts(self.labels()),
            Remedy::SetDials => self.acts(by_the_book::set_dials()),
            Remedy::Advise(advice) => {
                self.act(Action::Advise { advice });
            }
            Remedy::FlushAndReplace(part) => {
                self.flush();
                self.change(&[part]);
            }
            Remedy::DryAndReplace(part) => {
                self.change(&[part]);
                self.acts(
                    [Fitting::UpperElement, Fitting::LowerElement].map(|fitting| Action::Wipe { fitting }),
                );
            }
            Remedy::ThawAndFill => {
                self.acts([Action::ColdValve { opening: 0.0 }, Action::Thaw]);
                self.acts(longer(by_the_book::refill(), self.sound.plant.plate.nominal));
            }
            Remedy::Vent => {
                self.act(Action::Ventilate);
                let open = |tap| [(tap, 1.0), (tap, 0.0)];
                for (tap, opening) in Tap::ALL.iter().copied().flat_map(open) {
                    self.acts([Action::Tap { tap, opening }, Action::Wait { minutes: 5.0 }]);
                }
            }
            // Done with the proof: reset and switched off and on there.
            Remedy::ResetLimit | Remedy::CloseBreaker | Remedy::ClearBoard => {}
            Remedy::CallUtility => {}
        }
    }

    /// A limit that only has to be reset is not believed at once: all put back, on, the dials up, watched to the
    /// cut-out. One grown weak opens before that.
    pub fn tries_the_limit(&mut self) {
        let mut acts = self.as_found();
        acts.extend(self.switched_on());
        acts.push(Action::PressReset);
        acts.extend(LEVELS.map(|level| Action::Dial { level, to: WELL_ABOVE }));
        acts.extend([Action::WaitForCutOut, AT_THE_TOP]);
        acts.extend(LEVELS.map(|level| Action::Look { at: compartment(level) }));
        for act in acts {
            self.sees(act);
        }
    }

    /// A blade beside cold water never opens, whatever its dial: all put back, run to the cut-out, made dead, and each
    /// contact tried again while it is warm.
    pub fn tries_contacts_warm(&mut self) {
        let mut acts = self.as_found();
        acts.extend(self.switched_on());
        acts.extend([Action::PressReset, Action::WaitForCutOut, AT_THE_TOP]);
        acts.extend(self.switches_off());
        acts.extend(self.lifted().into_iter().map(|end| Action::Lift { end }));
        for act in acts {
            self.sees(act);
        }
        self.try_contacts();
    }

    /// Locks off, each breaker off and on, the box in the line closed.
    fn switched_on(&self) -> Vec<Action> {
        let slots = self.slots().into_iter();
        let breaker = |slot| {
            [
                Action::Lock { slot, on: false },
                Action::Breaker { slot, on: false },
                Action::Breaker { slot, on: true },
            ]
        };
        slots
            .flat_map(breaker)
            .chain([Action::BoxLock { on: false }, Action::BoxHandle { closed: true }])
            .collect()
    }

    /// Ends that were taken off their screws.
    fn lifted(&self) -> Vec<End> {
        self.seen.iter().filter_map(lifted).collect()
    }

    /// Wires landed by the diagram, plugs in, dials as they were read first: once one of two was put right, after that.
    fn as_found(&self) -> Vec<Action> {
        let landed = |end: End| Action::Land { end, screw: end.home(), torqued: true };
        let mut acts: Vec<Action> = self.lifted().into_iter().map(landed).collect();
        acts.extend(LEVELS.map(|level| Action::Plug { level, fitted: true }));
        let read = |seen: &[Seen]| {
            seen.iter().find_map(|(act, shown)| match (act, shown) {
                (Action::Read { what: Writing::Dials }, Shown::Dials { upper, lower }) => {
                    Some([*upper, *lower])
                }
                _ => None,
            })
        };
        let dials = read(&self.seen[self.mended_at..]).or_else(|| read(&self.seen));
        let dial = |(level, to): (&Level, Temperature)| Action::Dial { level: *level, to };
        acts.extend(dials.into_iter().flat_map(|dials| LEVELS.iter().zip(dials).map(dial)));
        acts
    }

    /// Off, until what comes out is water.
    fn let_cool(&mut self) {
        // At the crown it stays hotter than the probe tells.
        let enough = if self.boils() { COOLED } else { BOILS };
        let at_least = if self.last_drawn().is_some_and(|f| f > BOILS) { OVER_NIGHT } else { 0 };
        for hour in 0..COOLING {
            let Shown::Temperature { reading } = self.act(AT_THE_TOP) else { return };
            if reading.to_fahrenheit() <= enough && hour >= at_least {
                return;
            }
            self.acts(self.switches_off().into_iter().chain([Action::Wait { minutes: 60.0 }]));
        }
    }

    /// What anybody would mend on seeing it: a wire off its screw, a charred joint.
    fn seen_amiss(&mut self) {
        let mut ends: Vec<End> =
            self.seen.iter().flat_map(|(_, shown)| sights(shown)).filter_map(amiss).collect();
        ends.sort();
        ends.dedup();
        self.acts(ends.into_iter().map(|end| Action::Remake { end, torqued: true }));
    }

    /// What a ground melted on its way: each fuse of a box in the line out of its clips and read.
    fn tests_fuses(&mut self) {
        if !self.sound.plant.in_line.is_some_and(|one| one.is_fused()) {
            return;
        }
        self.acts([
            Action::BoxHandle { closed: false },
            Action::BoxLock { on: true },
            Action::Cover { which: Cover::BoxDoor, off: true },
        ]);
        let mut melted = false;
        for leg in Stab::ALL.iter().copied() {
            self.act(Action::PullFuse { leg, out: true });
            let shown = self.act(Action::TestFuse { leg });
            melted |= shown == Shown::Meter { display: Display::Over };
            self.act(Action::PullFuse { leg, out: false });
        }
        if melted {
            self.change(&[PartKind::Fuse]);
        }
    }

    /// The drain open to a hose until nothing grey comes any more.
    fn flush(&mut self) {
        self.acts([
            Action::ColdValve { opening: 1.0 },
            Action::Hose { on: true },
            Action::Drain { opening: 1.0 },
        ]);
        for _ in 0..LONGEST_FLUSH {
            self.act(Action::Wait { minutes: 5.0 });
            if !sights(&self.act(Action::Look { at: Place::Drain })).contains(&Sight::Grit) {
                break;
            }
        }
        self.act(Action::Drain { opening: 0.0 });
    }

    /// Changes parts for those that belong on the plate, the tank empty where that has to be.
    fn change(&mut self, parts: &[PartKind]) {
        let plate = self.sound.plant.plate;
        let rating = self.sound.plant.panel.feeding(Circuit::Heater).map_or(Amps(30.0), |b| b.rating);
        let wet = parts
            .iter()
            .any(|part| licence::scope_of(*part) == Scope::Piping || by_the_book::opens_tank(*part));
        let main = if parts.contains(&PartKind::ExpansionTank) { self.main() } else { Pressure::psi(60.0) };
        if wet {
            self.acts(longer(by_the_book::drain(), plate.nominal));
        }
        for part in parts {
            self.acts(by_the_book::change(*part, &plate, rating, main));
        }
        if wet {
            self.acts(longer(by_the_book::refill(), plate.nominal));
        }
    }

    /// House pressure by the gauge, once an open tap has let out what heating drove up.
    fn main(&mut self) -> Pressure {
        let kitchen = |opening| Action::Tap { tap: Tap::Kitchen, opening };
        self.acts([Action::Gauge { on: true }, kitchen(1.0), kitchen(0.0)]);
        match self.act(Action::ReadGauge) {
            Shown::Pressure { now, .. } => now,
            _ => Pressure::psi(60.0),
        }
    }

    /// The truth into the directory: each breaker by what it feeds, as switching it showed.
    fn labels(&self) -> Vec<Action> {
        let breakers = self.sound.plant.panel.breakers.iter().zip(0..);
        breakers.map(|(b, slot)| Action::Relabel { slot, feeds: b.feeds }).collect()
    }

    /// Floor dried, what was overheated drawn off, on, reset, closed up, drawn, watched to its cut-out; whether it
    /// then does what a sound heater does.
    pub fn proves(&mut self) -> Result<(), String> {
        if self.session.ended.is_some() {
            return Ok(());
        }
        let some = Volume::gallons(8.0);
        self.acts([
            Action::Wipe { fitting: Fitting::BottomRim },
            Action::Cover { which: Cover::BoxDoor, off: true },
        ]);
        let cool = |b: Bucket| b.first.to_fahrenheit() < HOTTEST && b.last.to_fahrenheit() < HOTTEST;
        for _ in 0..MOST_DRAWS {
            if self.bucket(some).is_none_or(cool) {
                break;
            }
        }
        for slot in self.slots() {
            self.acts([
                Action::Lock { slot, on: false },
                Action::Breaker { slot, on: false },
                Action::Wait { minutes: 1.0 },
                Action::Breaker { slot, on: true },
            ]);
        }
        self.acts([Action::BoxLock { on: false }, Action::BoxHandle { closed: true }]);
        for _ in 0..MOST_DRAWS {
            self.act(Action::PressReset);
            let seen = LEVELS.map(|level| self.act(Action::Look { at: compartment(level) }));
            if !seen.iter().any(|shown| sights(shown).contains(&Sight::Button { proud: true })) {
                break;
            }
            self.bucket(some);
            self.act(Action::Wait { minutes: 10.0 });
        }
        let shut = |which: &&Cover| !matches!(which, Cover::JunctionBox | Cover::PanelFront);
        self.acts(COVERS.iter().rev().filter(shut).map(|which| Action::Cover { which: *which, off: false }));
        // Enough to call the lower element, and the upper one.
        let mut heats = 0.0;
        // A timer or the utility's relay may keep it off for some hours.
        for _ in 0..3 {
            self.bucket(self.sound.plant.plate.nominal * 0.8);
            self.act(Action::Wait { minutes: 5.0 });
            heats = self.amps();
            if heats > LITTLE {
                break;
            }
            self.act(Action::Wait { minutes: 300.0 });
        }
        // Its hours may begin while the lower element still heats.
        for _ in 0..=usize::from(self.sound.plant.off_peak.is_some()) {
            self.waits_for_the_relay();
            self.acts([Action::WaitForCutOut, Action::WaitForCutOut]);
        }
        let rests = self.amps();
        let hot = self.bucket(some).map(|b| b.first.to_fahrenheit());
        if heats > LITTLE && rests < LITTLE && hot.is_some_and(|f| (COOLEST..=HOTTEST).contains(&f)) {
            Ok(())
        } else {
            Err(format!("{heats} A, then {rests} A, then {hot:?} °F"))
        }
    }

    /// The utility's relay keeps the off-peak circuit off until its hours end: its flag and its tag say so.
    fn waits_for_the_relay(&mut self) {
        let shown = self.act(Action::Look { at: Place::LoadCenter });
        let seen = sights(&shown);
        let hours = seen.iter().find_map(|sight| match sight {
            Sight::BoxHours { shows, off_from, off_for } => Some((*shows, *off_from, *off_for)),
            _ => None,
        });
        let Some((shows, from, long)) =
            hours.filter(|_| seen.contains(&Sight::OffPeakRelay { closed: false }))
        else {
            return;
        };
        let left = (from.get() + long.get() - shows.get()).rem_euclid(86_400.0);
        if left <= long.get() {
            self.act(Action::Wait { minutes: left / 60.0 + 1.0 });
        }
    }

    pub fn hands_over(&mut self) {
        self.acts([Action::TellResult, Action::HandOver]);
    }

    fn bucket(&mut self, volume: Volume) -> Option<Bucket> {
        match self.act(Action::Bucket { tap: Tap::Bath, volume }) {
            Shown::Bucket(bucket) => Some(bucket),
            _ => None,
        }
    }

    fn amps(&mut self) -> f64 {
        let mut most = 0.0_f64;
        let wiring = &self.sound.plant.wiring;
        let there: Vec<Wire> = Wire::ALL.iter().copied().filter(|wire| wiring.exists(*wire)).collect();
        for wire in there {
            if let Shown::Clamp { amps } = self.act(Action::Clamp { around: Clamped::Wire { wire } }) {
                most = most.max(amps.get());
            }
        }
        most
    }
}

/// What rules out most for the least time: a word, the directory, ears and nose at the cable, a bucket.
fn glance() -> Vec<Action> {
    let senses = [
        Action::Read { what: Writing::Directory },
        Action::Listen { at: Place::JunctionBox },
        Action::Smell { at: Place::JunctionBox },
        Action::Touch { at: Touchable::Fitting { fitting: Fitting::DrainValve } },
    ];
    let looks = [Place::LoadCenter, Place::HeaterTop].map(|at| Action::Look { at });
    let bucket = Action::Bucket { tap: Tap::Kitchen, volume: Volume::litres(4.0) };
    let told = [Action::TellHousehold, Action::Ventilate];
    told.into_iter().chain(senses).chain(looks).chain([bucket]).collect()
}

/// A round's acts: between two that change anything, what tells most at a time comes first.
fn telling_first(acts: Vec<Action>) -> Vec<Action> {
    let rank = |act: &Action| match act {
        Action::Read { .. } | Action::Look { .. } => Some(0),
        Action::Thermometer { .. } => Some(1),
        Action::Clamp { .. } => Some(2),
        Action::Meter { .. } => Some(3),
        Action::Listen { .. } => Some(4),
        Action::Smell { .. } | Action::Touch { .. } => Some(5),
        _ => None,
    };
    let mut acts = acts;
    acts.chunk_by_mut(|a, b| rank(a).is_some() && rank(b).is_some()).for_each(|some| some.sort_by_key(&rank));
    acts
}

/// A wire put where the diagram has it.
fn put(end: End) -> [Action; 3] {
    [Action::Label { end }, Action::Lift { end }, Action::Land { end, screw: end.home(), torqued: true }]
}

fn longer(mut acts: Vec<Action>, nominal: Volume) -> Vec<Action> {
    for act in &mut acts {
        if let Action::Wait { minutes } = act
            && *minutes >= 30.0
        {
            *minutes *= (nominal.to_gallons() / 40.0).max(1.0);
        }
    }
    acts
}

fn remedy(case: &FaultCase) -> Option<Remedy> {
    case.id.remedy(&case.parameters)
}

const fn puts_current_on(act: &Action) -> bool {
    matches!(act, Action::Breaker { on: true, .. } | Action::BoxHandle { closed: true })
}

/// Water runs out where somebody stands.
fn lets_out(act: &Action) -> bool {
    match act {
        Action::Bucket { .. } | Action::Sample { .. } | Action::ReliefLever { up: true } => true,
        Action::Tap { opening, .. } | Action::Drain { opening } => *opening > 0.0,
        _ => false,
    }
}

fn lifted((act, shown): &Seen) -> Option<End> {
    match (act, shown) {
        (_, Shown::Refused { .. }) => None,
        (Action::Lift { end }, _) => Some(*end),
        _ => None,
    }
}

fn volts(shown: &Shown) -> f64 {
    match shown {
        Shown::Meter { display: Display::Volts { volts } } => volts.get(),
        _ => 0.0,
    }
}

const fn compartment(level: Level) -> Place {
    match level {
        Level::Upper => Place::UpperCompartment,
        Level::Lower => Place::LowerCompartment,
    }
}

fn sights(shown: &Shown) -> &[Sight] {
    match shown {
        Shown::Sights { sights, .. } | Shown::DoneWith { sights } => sights,
        _ => &[],
    }
}

fn amiss(sight: &Sight) -> Option<End> {
    match sight {
        Sight::Lifted { end } | Sight::Charred { end } => Some(*end),
        _ => None,
    }
}
