//! How long each act takes, in simulated minutes: one table, each entry with its tag.
//!
//! Acts that last as long as water runs (`wait`, `wait-for-cut-out`, the flow of `bucket`) are computed;
//! their entry here is what they take besides.

use quantity::{Constant, Seconds, Tag};

use crate::action::{Action, Cover, NewPart, Touchable};

const fn usual(name: &'static str, minutes: f64) -> Constant {
    Constant::new(name, minutes, "min", Tag::CommonPractice)
}

const fn model(name: &'static str, minutes: f64, why: &'static str) -> Constant {
    Constant::new(name, minutes, "min", Tag::Model(why))
}

/// The table, by the name of the act in attempt files; parts by their own names.
pub const TABLE: [Constant; 101] = [
    usual("ask", 1.0),
    usual("tell-household", 1.0),
    usual("read", 0.5),
    usual("look", 0.5),
    usual("listen", 0.5),
    usual("smell", 0.25),
    usual("touch", 0.25),
    usual("touch-water", 0.5),
    usual("wipe", 0.5),
    usual("gloves", 0.5),
    usual("eye-protection", 0.25),
    usual("breaker", 1.0),
    usual("try-start", 1.0),
    usual("lock", 1.0),
    usual("move-breaker", 15.0),
    usual("box-handle", 0.5),
    usual("box-lock", 1.0),
    usual("pull-fuse", 0.5),
    usual("test-fuse", 0.5),
    usual("set-clock", 1.0),
    usual("portable-heater", 2.0),
    usual("relabel", 0.5),
    usual("panel-front", 4.0),
    usual("junction-box", 1.0),
    usual("cover", 1.0),
    usual("insulation", 0.5),
    usual("shield", 0.5),
    usual("meter", 0.5),
    usual("meter-far", 3.0),
    usual("zero-leads", 0.25),
    usual("prove-meter", 0.5),
    usual("spare-leads", 3.0),
    usual("jack", 0.25),
    usual("change-battery", 3.0),
    usual("non-contact", 0.25),
    usual("clamp", 0.5),
    usual("press-reset", 0.25),
    usual("lift", 1.0),
    usual("label", 0.5),
    usual("land", 1.5),
    usual("remake", 4.0),
    usual("dial", 0.25),
    usual("seat", 1.0),
    usual("main-valve", 2.0),
    usual("cold-valve", 0.5),
    usual("tap", 1.0),
    usual("plug", 0.5),
    usual("stops", 1.0),
    usual("sample", 1.0),
    usual("look-at-anode", 15.0),
    usual("read-water-meter", 2.0),
    usual("bucket", 0.5),
    usual("hose", 2.0),
    usual("drain", 0.5),
    usual("relief-lever", 0.25),
    model("wait", 0.0, "the time waited and nothing else"),
    model("wait-for-cut-out", 0.0, "the time waited and nothing else"),
    model("let-them-use", 0.0, "the time waited and nothing else"),
    usual("thermometer", 1.0),
    usual("gauge", 1.0),
    usual("read-gauge", 0.25),
    usual("tank-charge", 2.0),
    usual("element", 20.0),
    usual("thermostat", 10.0),
    usual("limit", 12.0),
    usual("new-breaker", 15.0),
    usual("fuse", 3.0),
    usual("time-switch", 20.0),
    usual("connectors", 8.0),
    usual("dip-tube", 35.0),
    usual("anode", 25.0),
    usual("gasket", 20.0),
    usual("relief-valve", 15.0),
    usual("expansion-tank", 40.0),
    usual("sensor", 8.0),
    usual("board", 15.0),
    usual("regulator", 45.0),
    usual("mixing-valve", 40.0),
    usual("cartridge", 25.0),
    usual("drain-valve", 15.0),
    usual("nipples", 45.0),
    usual("connections", 60.0),
    usual("hot-line", 180.0),
    usual("pipe-clips", 40.0),
    usual("return-check", 40.0),
    usual("pump-timer", 20.0),
    usual("return-valve", 1.0),
    usual("agree-cost", 3.0),
    usual("answer", 1.0),
    usual("ventilate", 3.0),
    usual("thaw", 30.0),
    usual("part-pipes", 15.0),
    usual("carry-out", 20.0),
    usual("set-heater", 40.0),
    usual("join-pipes", 35.0),
    usual("reuse-relief", 10.0),
    usual("finding", 2.0),
    usual("advise", 2.0),
    usual("report", 1.0),
    usual("tell-result", 3.0),
    model("at-once", 0.0, "a call or a signature ends the job; what follows is not simulated"),
];

/// What a new part is called in the tables of minutes and prices.
pub const fn part_name(part: &NewPart) -> &'static str {
    match part {
        NewPart::Element { .. } => "element",
        NewPart::Thermostat { .. } => "thermostat",
        NewPart::Limit | NewPart::LowerLimit => "limit",
        NewPart::Breaker { .. } => "new-breaker",
        NewPart::Fuse { .. } => "fuse",
        NewPart::TimeSwitch => "time-switch",
        NewPart::Connectors => "connectors",
        NewPart::DipTube => "dip-tube",
        NewPart::Anode { .. } => "anode",
        NewPart::Sensor { .. } => "sensor",
        NewPart::Board => "board",
        NewPart::Regulator { .. } => "regulator",
        NewPart::MixingValve { .. } => "mixing-valve",
        NewPart::Cartridge { .. } => "cartridge",
        NewPart::DrainValve => "drain-valve",
        NewPart::Nipples => "nipples",
        NewPart::Connections => "connections",
        NewPart::HotLine => "hot-line",
        NewPart::PipeClips => "pipe-clips",
        NewPart::ReturnCheck => "return-check",
        NewPart::PumpTimer => "pump-timer",
        NewPart::Gasket { .. } => "gasket",
        NewPart::ReliefValve { .. } => "relief-valve",
        NewPart::ExpansionTank { .. } => "expansion-tank",
    }
}

/// Where an act stands in the table.
pub fn name(action: &Action) -> &'static str {
    match action {
        Action::Ask { .. } => "ask",
        Action::TellHousehold => "tell-household",
        Action::Read { .. } => "read",
        Action::Look { .. } => "look",
        Action::Listen { .. } => "listen",
        Action::Smell { .. } => "smell",
        Action::Touch { at: Touchable::Water { .. } } => "touch-water",
        Action::Touch { .. } => "touch",
        Action::Wipe { .. } => "wipe",
        Action::Gloves { .. } => "gloves",
        Action::EyeProtection { .. } => "eye-protection",
        Action::Breaker { .. } => "breaker",
        Action::TryStart => "try-start",
        Action::Lock { .. } => "lock",
        Action::MoveBreaker { .. } => "move-breaker",
        Action::BoxHandle { .. } => "box-handle",
        Action::BoxLock { .. } => "box-lock",
        Action::PullFuse { .. } => "pull-fuse",
        Action::TestFuse { .. } => "test-fuse",
        Action::SetClock => "set-clock",
        Action::PortableHeater { .. } => "portable-heater",
        Action::Relabel { .. } => "relabel",
        Action::Cover { which, .. } => match which {
            Cover::PanelFront => "panel-front",
            Cover::JunctionBox | Cover::BoxDoor => "junction-box",
            Cover::Upper | Cover::Lower => "cover",
            Cover::UpperInsulation | Cover::LowerInsulation => "insulation",
            Cover::UpperShield | Cover::LowerShield => "shield",
        },
        Action::Meter { red, black, .. } => {
            if red.place() == black.place() || near(red.place()) == near(black.place()) {
                "meter"
            } else {
                "meter-far"
            }
        }
        Action::ZeroLeads => "zero-leads",
        Action::ProveMeter { .. } => "prove-meter",
        Action::SpareLeads => "spare-leads",
        Action::Jack { .. } => "jack",
        Action::ChangeBattery => "change-battery",
        Action::NonContact { .. } => "non-contact",
        Action::Clamp { .. } => "clamp",
        Action::PressReset => "press-reset",
        Action::Lift { .. } => "lift",
        Action::Label { .. } => "label",
        Action::Land { .. } => "land",
        Action::Remake { .. } => "remake",
        Action::Dial { .. } => "dial",
        Action::Seat { .. } => "seat",
        Action::MainValve { .. } => "main-valve",
        Action::ColdValve { .. } => "cold-valve",
        Action::ReturnValve { .. } => "return-valve",
        Action::Ventilate => "ventilate",
        Action::Thaw => "thaw",
        Action::Tap { .. } => "tap",
        Action::Plug { .. } => "plug",
        Action::Stops { .. } => "stops",
        Action::Sample { .. } => "sample",
        Action::LookAtAnode => "look-at-anode",
        Action::ReadWaterMeter => "read-water-meter",
        Action::Bucket { .. } => "bucket",
        Action::Hose { .. } => "hose",
        Action::Drain { .. } => "drain",
        Action::ReliefLever { .. } => "relief-lever",
        Action::Wait { .. } => "wait",
        Action::WaitForCutOut => "wait-for-cut-out",
        Action::LetThemUse { .. } => "let-them-use",
        Action::Thermometer { .. } => "thermometer",
        Action::Gauge { .. } => "gauge",
        Action::ReadGauge => "read-gauge",
        Action::TankCharge => "tank-charge",
        Action::Replace { part } => part_name(part),
        Action::PartPipes => "part-pipes",
        Action::CarryOut { .. } => "carry-out",
        Action::SetHeater { .. } => "set-heater",
        Action::JoinPipes { .. } => "join-pipes",
        Action::ReuseRelief => "reuse-relief",
        Action::Finding { .. } => "finding",
        Action::Advise { .. } => "advise",
        Action::Report { .. } => "report",
        Action::TellResult => "tell-result",
        Action::AgreeCost => "agree-cost",
        Action::Answer { .. } => "answer",
        Action::StopAndCall { .. } | Action::HandOver | Action::TimeUp { .. } => "at-once",
    }
}

/// Whether a place is at the heater, within reach of ordinary leads.
const fn near(place: plant::Place) -> bool {
    !matches!(place, plant::Place::LoadCenter)
}

/// How long an act takes besides the water it waits for.
pub fn of(action: &Action) -> Seconds {
    let name = name(action);
    let minutes = TABLE.iter().find(|entry| entry.name == name).map_or(1.0, Constant::get);
    Seconds::minutes(minutes)
}
