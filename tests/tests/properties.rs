//! What holds for any list of acts in any drill: an answer to each, books that close, the same bytes again, a
//! score within its bounds, and a file that cannot be changed unnoticed.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test")]

use bench::{Action, Licence, Mode, Session, Shown, Trap};
use drill::{Attempt, AttemptError, Drill, Order, Rubric, Seal, Wanted};
use plant::home::Home;
use plant::{End, FaultId, HeaterModel, Screw};
use quantity::Draw;

const ACTS: usize = 200;

/// Acts as files have them. What stands between `<` and `>` is drawn.
const ALPHABET: [&str; 62] = [
    r#"{"do":"ask","question":"how-much"}"#,
    r#"{"do":"tell-household"}"#,
    r#"{"do":"read","what":"plate"}"#,
    r#"{"do":"read","what":"dials"}"#,
    r#"{"do":"look","at":"load-center"}"#,
    r#"{"do":"look","at":"lower-compartment"}"#,
    r#"{"do":"listen","at":"heater-top"}"#,
    r#"{"do":"smell","at":"junction-box"}"#,
    r#"{"do":"touch","at":{"what":"metal","point":"<point>"}}"#,
    r#"{"do":"wipe","fitting":"bottom-rim"}"#,
    r#"{"do":"gloves","on":<flag>}"#,
    r#"{"do":"eye-protection","on":<flag>}"#,
    r#"{"do":"breaker","slot":<slot>,"on":true}"#,
    r#"{"do":"breaker","slot":<slot>,"on":true}"#,
    r#"{"do":"breaker","slot":<slot>,"on":false}"#,
    r#"{"do":"lock","slot":<slot>,"on":<flag>}"#,
    r#"{"do":"try-start"}"#,
    r#"{"do":"cover","which":"upper","off":true}"#,
    r#"{"do":"cover","which":"upper-insulation","off":true}"#,
    r#"{"do":"cover","which":"upper-shield","off":true}"#,
    r#"{"do":"cover","which":"lower","off":true}"#,
    r#"{"do":"cover","which":"lower-insulation","off":true}"#,
    r#"{"do":"cover","which":"lower-shield","off":true}"#,
    r#"{"do":"cover","which":"junction-box","off":<flag>}"#,
    r#"{"do":"cover","which":"panel-front","off":<flag>}"#,
    r#"{"do":"meter","function":"volts","red":"<point>","black":"<point>"}"#,
    r#"{"do":"meter","function":"low-volts","red":"<point>","black":"shell"}"#,
    r#"{"do":"meter","function":"ohms","red":"<point>","black":"<point>"}"#,
    r#"{"do":"meter","function":"insulation","red":"<point>","black":"shell"}"#,
    r#"{"do":"prove-meter","on":"receptacle"}"#,
    r#"{"do":"spare-leads"}"#,
    r#"{"do":"jack","jack":"amps"}"#,
    r#"{"do":"jack","jack":"volts"}"#,
    r#"{"do":"change-battery"}"#,
    r#"{"do":"non-contact","at":"<point>"}"#,
    r#"{"do":"clamp","around":{"what":"pair","first":"feed-a","second":"feed-b"}}"#,
    r#"{"do":"clamp","around":{"what":"wire","wire":"feed-b"}}"#,
    r#"{"do":"press-reset"}"#,
    r#"{"do":"lift","end":"<end>"}"#,
    r#"{"do":"land","end":"<end>","screw":"<screw>","torqued":<flag>}"#,
    r#"{"do":"remake","end":"<end>","torqued":true}"#,
    r#"{"do":"dial","level":"<level>","to":"<fahrenheit> F"}"#,
    r#"{"do":"cold-valve","opening":<share>}"#,
    r#"{"do":"main-valve","opening":<share>}"#,
    r#"{"do":"tap","tap":"bath","opening":<share>}"#,
    r#"{"do":"tap","tap":"kitchen","opening":0}"#,
    r#"{"do":"bucket","tap":"bath","volume":"<gallons> gal"}"#,
    r#"{"do":"hose","on":<flag>}"#,
    r#"{"do":"drain","opening":<share>}"#,
    r#"{"do":"relief-lever","up":<flag>}"#,
    r#"{"do":"wait","minutes":<minutes>}"#,
    r#"{"do":"wait-for-cut-out"}"#,
    r#"{"do":"gauge","on":<flag>}"#,
    r#"{"do":"replace","part":{"kind":"element","level":"<level>","rating":{"watts":4500,"volts":240},"length":"middle","mount":"screw-in","seat_cleaned":<flag>}}"#,
    r#"{"do":"replace","part":{"kind":"thermostat","level":"<level>"}}"#,
    r#"{"do":"part-pipes"}"#,
    r#"{"do":"carry-out","helped":true}"#,
    r#"{"do":"set-heater","nominal":"50 gal","rating":{"watts":4500,"volts":240}}"#,
    r#"{"do":"join-pipes","dielectric":true}"#,
    r#"{"do":"reuse-relief"}"#,
    r#"{"do":"replace","part":{"kind":"relief-valve","opens_at":"150 psi"}}"#,
    r#"{"do":"finding","fault":"<fault>","evidence":[1,2,3]}"#,
];

fn one<'a, T>(draw: &mut Draw, list: &'a [T]) -> &'a T {
    &list[draw.index(list.len())]
}

/// One act, read from its text: what stands between `<` and `>` is drawn.
fn act(draw: &mut Draw) -> Action {
    let mut pieces = one(draw, &ALPHABET).split(['<', '>']);
    let mut text = pieces.next().unwrap_or_default().to_owned();
    while let (Some(drawn), Some(plain)) = (pieces.next(), pieces.next()) {
        text += &match drawn {
            "point" if draw.chance(0.3) => any_end(draw).to_string(),
            "point" | "screw" => one(draw, Screw::ALL).to_string(),
            "end" => any_end(draw).to_string(),
            "flag" => draw.chance(0.5).to_string(),
            "slot" => draw.index(4).to_string(),
            "level" => (*one(draw, &["upper", "lower"])).to_owned(),
            "share" => one(draw, &[0.0, 0.4, 1.0]).to_string(),
            "fahrenheit" => (90 + draw.index(61)).to_string(),
            "gallons" => (1 + draw.index(40)).to_string(),
            "minutes" => (1 + draw.index(45)).to_string(),
            "fault" => one(draw, FaultId::ALL).to_string(),
            other => panic!("{other}"),
        };
        text += plain;
    }
    serde_json::from_str(&text).unwrap_or_else(|e| panic!("{text}: {e}"))
}

fn any_end(draw: &mut Draw) -> End {
    let ends: Vec<End> = End::all().collect();
    *one(draw, &ends)
}

fn any_order(draw: &mut Draw) -> Order {
    let mode = *one(draw, &Mode::ALL);
    let mut order = Order::chance(draw.word() as u32, mode);
    order.heater = draw.chance(0.5).then(|| *one(draw, HeaterModel::ALL));
    order.licence = *one(draw, &Licence::ALL);
    // Every fault as likely as the others; where one does not fit the house, another does.
    order.fault = Wanted::List((0..3).map(|_| *one(draw, FaultId::ALL)).collect());
    order.traps = Trap::ALL.into_iter().filter(|_| draw.chance(0.4)).collect();
    order
}

/// Drills that can be, each with a list of acts.
fn cases(purpose: &str, count: usize) -> Vec<(Drill, Vec<Action>)> {
    let mut draw = Draw::new(1, purpose);
    let mut all = Vec::new();
    while all.len() < count {
        if let Ok(drill) = drill::make(&any_order(&mut draw)) {
            let acts = (0..ACTS).map(|_| act(&mut draw)).collect();
            all.push((drill, acts));
        }
    }
    all
}

fn bytes(session: &Session) -> Vec<u8> {
    serde_json::to_vec(session).unwrap()
}

/// Water in kilograms and heat in joules that are there and that are booked.
fn books(home: &Home) -> [[f64; 2]; 2] {
    let (tank, plumbing) = (&home.plant.tank, &home.plant.plumbing);
    let cold = &plumbing.cold_side;
    [
        [tank.mass() + cold.mass.get(), plumbing.ledger.net_mass().get()],
        [tank.energy() + cold.heat.get(), plumbing.ledger.net_heat().get()],
    ]
}

#[test]
fn two_hundred_acts_in_any_drill() {
    let rubric = Rubric::plain();
    let (mut answered, lists) = (0, 16);
    for (drill, acts) in cases("drills and acts", lists) {
        let name = &drill.fault.id;
        let session = drill::replay(&drill, &acts);
        assert_eq!(session.log.len(), ACTS);
        assert!(bytes(&session) == bytes(&drill::replay(&drill, &acts)), "{name}: the same list twice");

        let done = |shown: &Shown| !matches!(shown, Shown::Refused { .. });
        let count = session.log.iter().filter(|e| done(&e.outcome.shown)).count();
        assert!(
            session.ended.is_some() || count > ACTS / 5,
            "{name}: nearly everything refused tries nothing"
        );
        answered += count;
        let [[mass, booked_mass], [heat, booked_heat]] = books(&session.home);
        let [[mass_then, booked_mass_then], [heat_then, booked_heat_then]] = books(&session.job.home);
        let off = (mass - mass_then) - (booked_mass - booked_mass_then);
        assert!(off.abs() < 1e-3, "{name}: {off} kg");
        let electric = |home: &Home| home.plant.plumbing.ledger.electric.get();
        let turned = electric(&session.home) - electric(&session.job.home);
        let off = (heat - heat_then) - (booked_heat - booked_heat_then);
        // A tank of 36 gallons from 50 to 120 °F takes 22 MJ; 0.01 % of what was turned over, at least of that.
        assert!(off.abs() < 1e-4 * turned.max(22e6), "{name}: {off} J of {turned} J");

        let score = drill::judge(&drill, &session, &rubric);
        for (reached, of) in score.reached.iter().zip(score.of) {
            assert!((0.0..=of).contains(reached), "{name}: {reached} of {of}");
        }
        let steps = 1..=session.log.len() as u32;
        assert!(score.lines.iter().all(|line| line.step.is_none_or(|s| steps.contains(&s))), "{name}");
        assert!(drill::judge(&drill, &session, &rubric) == score, "{name}: judged twice");
    }
    // One list may end early, with somebody hurt.
    assert!(answered > lists * ACTS / 5, "nearly everything refused tries nothing: {answered}");
}

#[test]
fn a_file_gives_the_same_job() {
    for (drill, acts) in cases("files", 4) {
        let attempt = Attempt { actions: acts.clone(), ..Attempt::new("Bench 4", drill.order.clone()) };
        let read = Attempt::read(&attempt.write()).unwrap();
        assert_eq!((read.seal, &read.actions), (Seal::Sealed, &acts));
        let again = drill::make(&read.order).unwrap();
        assert!(again == drill);
        assert!(bytes(&drill::replay(&again, &read.actions)) == bytes(&drill::replay(&drill, &acts)));
        let by_code = drill::code::decode(&drill::code::encode(&drill.order).unwrap()).unwrap();
        assert!(drill::make(&by_code).unwrap().job == drill.job, "the same house by its code");
    }
}

/// One act taken out, put in, swapped or changed under the digests of the true list: the first place that
/// differs is named, with the line where that act stands.
#[test]
fn any_edit_is_told_with_its_place() {
    let mut draw = Draw::new(1, "edits");
    for (drill, acts) in cases("edited files", 12) {
        let attempt = Attempt { actions: acts.clone(), ..Attempt::new("Bench 4", drill.order.clone()) };
        let whole: serde_json::Value = serde_json::from_str(&attempt.write()).unwrap();
        let mut edited = acts.clone();
        let at = draw.index(ACTS - 1);
        match draw.index(4) {
            0 => drop(edited.remove(at)),
            1 => edited.insert(at, act(&mut draw)),
            2 => edited.swap(at, at + 1),
            _ => edited[at] = act(&mut draw),
        }
        let Some(first) = (0..ACTS + 1).find(|i| acts.get(*i) != edited.get(*i)) else { continue };
        let mut value = whole.clone();
        value["actions"] = serde_json::to_value(&edited).unwrap();
        let text = serde_json::to_string_pretty(&value).unwrap();
        match Attempt::read(&text) {
            Err(AttemptError::Edited { act, line }) => {
                assert_eq!(act, first + 1);
                let begins = text.lines().nth(line - 1).unwrap();
                assert!(begins.trim_start().starts_with('{'), "line {line}: {begins}");
                let before = text.lines().take(line).filter(|l| l.trim_start().starts_with("\"do\"")).count();
                assert_eq!(before, first, "acts before line {line}");
            }
            Err(AttemptError::Cut { place, .. }) => assert_eq!(place, first),
            other => panic!("{:?}", other.map(|a| a.seal)),
        }
    }
}
