//! Acts, as a log writes them.

use bench::{Action, Clamped, Cover, Probe, Touchable};

use plant::{End, Screw};

use crate::Voice;
use crate::book::Fill;
use crate::names::kebab;

impl Voice {
    /// What was done, in a few words.
    pub fn action(&self, act: &Action) -> String {
        let u = self.units();
        let say = |id: &str, fills: &[(&str, Fill)]| self.filled(id, fills);
        let toggle = |id: &str, on: bool| self.text(&format!("act-{id}-{}", if on { "on" } else { "off" }));
        match act {
            Action::Ask { question } => self.question(*question),
            Action::TellHousehold => self.text("act-tell-household"),
            Action::Read { what } => say("act-read", &[("what", self.writing(*what).into())]),
            Action::Look { at } => say("act-look", &[("at", self.place(*at).into())]),
            Action::Listen { at } => say("act-listen", &[("at", self.place(*at).into())]),
            Action::Smell { at } => say("act-smell", &[("at", self.place(*at).into())]),
            Action::Touch { at } => say("act-touch", &[("at", self.touchable(at).into())]),
            Action::Wipe { fitting } => say("act-wipe", &[("fitting", self.fitting(*fitting).into())]),
            Action::Gloves { on } => toggle("gloves", *on),
            Action::EyeProtection { on } => toggle("eyes", *on),
            Action::Breaker { slot, on } => self.slot_act("breaker", *slot, *on),
            Action::TryStart => self.text("act-try-start"),
            Action::Lock { slot, on } => self.slot_act("lock", *slot, *on),
            Action::MoveBreaker { slot } => say("act-move-breaker", &[("slot", (slot + 1).into())]),
            Action::BoxHandle { closed } => toggle("box-handle", *closed),
            Action::BoxLock { on } => toggle("box-lock", *on),
            Action::PullFuse { leg, out } => say(
                if *out { "act-pull-fuse" } else { "act-put-fuse" },
                &[("leg", self.text(&format!("stab-{leg}")).into())],
            ),
            Action::TestFuse { leg } => {
                say("act-test-fuse", &[("leg", self.text(&format!("stab-{leg}")).into())])
            }
            Action::PortableHeater { leg, on } => say(
                if *on { "act-portable-on" } else { "act-portable-off" },
                &[("leg", self.text(&format!("stab-{leg}")).into())],
            ),
            Action::SetClock => self.text("act-set-clock"),
            Action::Relabel { slot, feeds } => {
                say("act-relabel", &[("slot", (slot + 1).into()), ("feeds", self.circuit(*feeds).into())])
            }
            Action::Cover { which, off } => self.cover_act(*which, *off),
            Action::Meter { function, red, black } => say(
                "act-meter",
                &[
                    ("function", self.meter_function(*function).into()),
                    ("red", self.point(*red).into()),
                    ("black", self.point(*black).into()),
                ],
            ),
            Action::ZeroLeads => self.text("act-zero-leads"),
            Action::ProveMeter { on } => say("act-prove-meter", &[("on", self.known_source(*on).into())]),
            Action::SpareLeads => self.text("act-spare-leads"),
            Action::Jack { jack } => self.text(&format!("act-jack-{}", kebab(jack))),
            Action::ChangeBattery => self.text("act-change-battery"),
            Action::NonContact { at } => say("act-non-contact", &[("at", self.point(*at).into())]),
            Action::Clamp { around: Clamped::BothLegs } => self.text("act-clamp-both"),
            Action::Clamp { around: Clamped::Pair { first, second } } => say(
                "act-clamp-pair",
                &[("first", self.wire(*first).into()), ("second", self.wire(*second).into())],
            ),
            Action::Clamp { around: Clamped::Wire { wire } } => {
                say("act-clamp", &[("wire", self.wire(*wire).into())])
            }
            Action::PressReset => self.text("act-press-reset"),
            Action::Lift { end } => say("act-lift", &[("end", self.end(*end).into())]),
            Action::Label { end } => say("act-label", &[("end", self.end(*end).into())]),
            Action::Land { end, screw, torqued } => say(
                if *torqued { "act-land-torqued" } else { "act-land" },
                &[("end", self.landed(*end, *screw).into()), ("screw", self.screw(*screw).into())],
            ),
            Action::Remake { end, torqued } => say(
                if *torqued { "act-remake-torqued" } else { "act-remake" },
                &[("end", self.end(*end).into())],
            ),
            Action::Dial { level, to } => {
                say("act-dial", &[("level", self.level(*level).into()), ("to", u.temperature(*to).into())])
            }
            Action::Seat { level } => say("act-seat", &[("level", self.level(*level).into())]),
            Action::MainValve { opening } => self.valve("main", None, *opening),
            Action::ColdValve { opening } => self.valve("cold", None, *opening),
            Action::Ventilate => self.text("act-ventilate"),
            Action::Thaw => self.text("act-thaw"),
            Action::ReturnValve { opening } => self.valve("return", None, *opening),
            Action::Tap { tap, opening } => self.valve("tap", Some(self.tap(*tap)), *opening),
            Action::Bucket { tap, volume } => {
                say("act-bucket", &[("tap", self.tap(*tap).into()), ("volume", u.volume(*volume).into())])
            }
            Action::Hose { on } => toggle("hose", *on),
            Action::Drain { opening } => self.valve("drain", None, *opening),
            Action::ReliefLever { up } => toggle("lever", *up),
            Action::Wait { minutes } => {
                say("act-wait", &[("time", u.duration(quantity::Seconds::minutes(*minutes)).into())])
            }
            Action::WaitForCutOut => self.text("act-wait-for-cut-out"),
            Action::LetThemUse { minutes } => {
                say("act-let-them-use", &[("time", u.duration(quantity::Seconds::minutes(*minutes)).into())])
            }
            Action::Thermometer { at } => say("act-thermometer", &[("at", self.probe(at).into())]),
            Action::Gauge { on } => toggle("gauge", *on),
            Action::Plug { level, fitted } => self.filled(
                if *fitted { "act-plug" } else { "act-unplug" },
                &[("level", self.level(*level).into())],
            ),
            Action::Stops { tap, shut } => self.filled(
                if *shut { "act-stops-shut" } else { "act-stops-open" },
                &[("tap", self.tap(*tap).into())],
            ),
            Action::Sample { tap, hot } => self.filled(
                if *hot { "act-sample-hot" } else { "act-sample-cold" },
                &[("tap", self.tap(*tap).into())],
            ),
            Action::LookAtAnode => self.text("act-look-at-anode"),
            Action::ReadWaterMeter => self.text("act-read-water-meter"),
            Action::ReadGauge => self.text("act-read-gauge"),
            Action::TankCharge => self.text("act-tank-charge"),
            Action::Replace { part } => say("act-replace", &[("part", self.new_part(part).into())]),
            Action::PartPipes => self.text("act-part-pipes"),
            Action::CarryOut { helped } => toggle("carry", *helped),
            Action::SetHeater { nominal, rating } => {
                let heater = self.filled(
                    "part-with",
                    &[
                        ("part", self.part_kind(plant::fault::PartKind::Heater).into()),
                        ("detail", format!("{}, {}", u.volume(*nominal), self.rating(*rating)).into()),
                    ],
                );
                say("act-replace", &[("part", heater.into())])
            }
            Action::JoinPipes { dielectric } => toggle("join", *dielectric),
            Action::ReuseRelief => self.text("act-reuse-relief"),
            Action::Finding { fault, .. } => {
                let fault = fault.map_or_else(|| self.text("fault-none"), |f| self.fault(f));
                say("act-finding", &[("fault", fault.into())])
            }
            Action::Advise { advice } => say("act-advise", &[("advice", self.advice(*advice).into())]),
            Action::Report { what } => say("act-report", &[("what", self.observation(*what).into())]),
            Action::StopAndCall { whom } => say("act-stop-and-call", &[("whom", self.helper(*whom).into())]),
            Action::TellResult => self.text("act-tell-result"),
            Action::AgreeCost => self.text("act-agree-cost"),
            Action::Answer { so } => self.text(if *so { "act-answer-so" } else { "act-answer-not-so" }),
            Action::HandOver => self.text("act-hand-over"),
            Action::TimeUp { allowed } => say("act-time-up", &[("minutes", (*allowed).into())]),
        }
    }

    /// A wire that goes home needs no word on which of its ends it is.
    fn landed(&self, end: End, on: Screw) -> String {
        if end.home() == on { self.wire_of(end) } else { self.end(end) }
    }

    fn slot_act(&self, what: &str, slot: u32, on: bool) -> String {
        let id = format!("act-{what}-{}", if on { "on" } else { "off" });
        self.filled(&id, &[("slot", (slot + 1).into())])
    }

    fn cover_act(&self, which: Cover, off: bool) -> String {
        let id = if off { "act-cover-off" } else { "act-cover-on" };
        self.filled(id, &[("cover", self.cover(which).into())])
    }

    fn valve(&self, what: &str, name: Option<String>, opening: f64) -> String {
        let state = match opening {
            o if o <= 0.0 => "shut",
            o if o < 0.999 => "part",
            _ => "open",
        };
        let mut fills = vec![("percent", Fill::Count((opening * 100.0).round()))];
        fills.extend(name.map(|n| ("tap", n.into())));
        self.filled(&format!("act-{what}-{state}"), &fills)
    }

    fn touchable(&self, at: &Touchable) -> String {
        match at {
            Touchable::Metal { point } => self.point(*point),
            Touchable::Water { tap } => self.filled("touch-water", &[("tap", self.tap(*tap).into())]),
            Touchable::Fitting { fitting } => self.fitting(*fitting),
            Touchable::ReliefPipe => self.text("probe-relief-pipe"),
        }
    }

    /// Where a thermometer goes.
    pub fn probe(&self, at: &Probe) -> String {
        match at {
            Probe::Tap { tap } => self.tap(*tap),
            Probe::Shell { level } => self.filled("probe-shell", &[("level", self.level(*level).into())]),
            Probe::Metal { point } => self.point(*point),
            Probe::HotPipe => self.text("probe-hot-pipe"),
            Probe::ReturnPipe => self.text("probe-return-pipe"),
            Probe::ColdPipe => self.text("probe-cold-pipe"),
            Probe::ReliefPipe => self.text("probe-relief-pipe"),
            Probe::Drain => self.text("probe-drain"),
        }
    }

    /// A short kind of act, for tables: the word its file uses.
    pub fn act_kind(&self, act: &Action) -> String {
        drill::json::value(act).get("do").map(kebab).unwrap_or_default()
    }
}
