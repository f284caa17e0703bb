//! Each fault's complaint, got by living with it.

use quantity::Draw;

use super::*;
use crate::HeaterModel;
use crate::Location;
use crate::climate::Climate;
use crate::fault::{FaultId, Parameters};
use crate::home::{Home, Setting};

fn setting(heater: usize, household: usize, seed: u64) -> Setting {
    Setting {
        heater: HeaterModel::ALL[heater],
        household: HouseholdKind::ALL[household],
        climate: Climate::ALL[seed as usize % 4],
        day: (1 + (seed * 97) % 365) as u16,
        in_line: None,
        location: Default::default(),
    }
}

fn lived(fault: Option<FaultId>, setting: Setting, seed: u64) -> Option<(Week, Home)> {
    let mut home = Home::sound(setting);
    if let Some(fault) = fault {
        let fault = fault.fault();
        if !(fault.fits)(&home) {
            return None;
        }
        let numbers = fault.complete(&Parameters::new(), &mut Draw::new(seed, "fault")).unwrap();
        (fault.apply)(&numbers, &mut home);
    }
    let life = Life::drawn(&mut Draw::new(seed, "life"));
    let week = week(&mut home, life, &mut Draw::new(seed, "draws"), 7);
    Some((week, home))
}

/// Sixteen houses: every heater with every household.
fn everywhere(fault: Option<FaultId>) -> Vec<(Week, Home)> {
    let houses = (0..16)
        .filter_map(|seed: u64| lived(fault, setting(seed as usize % 4, seed as usize / 4, seed), seed));
    houses.collect()
}

fn classes(fault: FaultId) -> Vec<Option<Symptom>> {
    everywhere(Some(fault)).iter().map(|(week, _)| complaint(week)).collect()
}

fn count(fault: FaultId, expected: &[Symptom]) -> usize {
    classes(fault).iter().filter(|c| c.is_some_and(|c| expected.contains(&c))).count()
}

/// Every kind of household, in towns and places it did not meet before.
#[test]
fn a_sound_heater_serves_every_household_in_every_climate() {
    let mut wrong = Vec::new();
    for (i, &household) in HouseholdKind::ALL.iter().enumerate() {
        for (j, &climate) in Climate::ALL.iter().enumerate() {
            let seed = (7 * i + j) as u64;
            let location = Location::ALL[(i + j) % Location::ALL.len()];
            let setting = Setting { household, climate, location, ..setting((i + j) % 4, 0, seed) };
            let (week, _) = lived(None, setting, seed).unwrap();
            if let Some(symptom) = complaint(&week) {
                let bad =
                    week.draws.iter().find(|d| d.ran_out() || d.burnt() || d.lukewarm() || d.never_warm());
                wrong.push(format!("{symptom} {:.2} {setting:?} {bad:?}", week.energy.0 / week.usual.0));
            }
            assert!(week.draws.len() > 6, "{setting:?}");
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn a_sound_house_has_nothing_to_complain_of_and_an_ordinary_bill() {
    for (week, home) in everywhere(None) {
        assert_eq!(complaint(&week), None, "{:?}", home.setting);
        let bill = week.energy.0 / week.usual.0;
        assert!((0.95..1.06).contains(&bill), "{bill}");
        assert_eq!((week.breaker_trips, week.limit_trips), (0, 0));
    }
}

/// The lower element, its thermostat or its feed gone: a third of the tank.
#[test]
fn a_third_of_a_tank_runs_out() {
    for fault in [FaultId::F01, FaultId::F10, FaultId::F12] {
        // Two people with a big tank may only find it slow.
        assert!(count(fault, &[Symptom::RunsOut]) >= 15, "{fault}");
        assert_eq!(count(fault, &[Symptom::RunsOut, Symptom::Slow]), 16, "{fault}");
    }
    assert!(count(FaultId::F04, &[Symptom::RunsOut]) >= 14);
    let short = count(FaultId::F37, &[Symptom::RunsOut, Symptom::Lukewarm]);
    assert!(short >= 10, "{short}");
}

#[test]
fn no_power_no_hot_water() {
    for fault in [FaultId::F09, FaultId::F19] {
        assert_eq!(count(fault, &[Symptom::NoHot]), 16, "{fault}");
    }
    assert!(count(FaultId::F02, &[Symptom::NoHot]) >= 11);
    assert!(count(FaultId::F02, &[Symptom::NoHot, Symptom::RunsOut]) >= 14);
    for (week, _) in everywhere(Some(FaultId::F08)).iter().chain(&everywhere(Some(FaultId::F18))) {
        // Somebody who closes it again has ended the trouble and would not call.
        if week.closed_again + week.button_pushes == 0 {
            assert!(matches!(complaint(week), Some(Symptom::NoHot | Symptom::RunsOut)));
        }
    }
}

#[test]
fn what_cannot_stop_heating_burns_or_trips_the_limit() {
    for fault in [FaultId::F05, FaultId::F06, FaultId::F13] {
        for (week, _) in everywhere(Some(fault)) {
            let class = complaint(&week);
            assert!(matches!(class, Some(Symptom::TooHot | Symptom::Trips)), "{fault} {class:?}");
            assert!(week.limit_trips > 0, "{fault}");
        }
    }
    assert_eq!(count(FaultId::F35, &[Symptom::TooHot]), 16);
}

#[test]
fn a_ground_near_an_end_trips_the_breaker_or_overheats() {
    for (week, _) in everywhere(Some(FaultId::F14)) {
        assert!(week.breaker_trips > 0 || week.limit_trips > 0);
        let class = complaint(&week);
        assert!(matches!(class, Some(Symptom::Trips | Symptom::NoHot | Symptom::TooHot)), "{class:?}");
        if class == Some(Symptom::Trips) {
            assert!(matches!(account(&week).opening.first(), Some(Answer::Tripped { breaker: 1.., .. })));
        }
    }
}

#[test]
fn water_shows_where_it_comes_out() {
    for fault in [FaultId::F03, FaultId::F50] {
        assert_eq!(count(fault, &[Symptom::Wet]), 16, "{fault}");
    }
    assert_eq!(count(FaultId::F45, &[Symptom::ReliefDrips]), 16);
}

#[test]
fn slow_and_mild_faults_are_felt_less_or_not_at_all() {
    // 208 V on 240 V elements: slow recovery, never fails (F27 of the trade sheet).
    assert!(classes(FaultId::F27).iter().all(|c| matches!(c, Some(Symptom::Slow | Symptom::RunsOut))));
    for fault in [FaultId::F11, FaultId::F23, FaultId::F27, FaultId::F36] {
        let severe = [Symptom::Wet, Symptom::ReliefDrips, Symptom::Trips];
        assert_eq!(count(fault, &severe), 0, "{fault}");
        assert!(classes(fault).iter().flatten().count() >= 8, "{fault} {:?}", classes(fault));
    }
}

#[test]
fn the_house_is_left_at_the_ring_with_a_dry_floor() {
    let (week, home) = lived(Some(FaultId::F50), setting(1, 1, 3), 3).unwrap();
    assert!(week.floor.to_litres() > 1.0);
    assert_eq!(home.plant.plumbing.on_floor.0, 0.0);
    assert_eq!(home.plant.plumbing.peak, home.plant.plumbing.pressure);
    assert!(home.plant.plumbing.taps.iter().all(|t| *t == 0.0));
    let of_day = (week.lasted.0 - week.life.rings_at.0) / 86_400.0;
    assert!((of_day - of_day.round()).abs() < 1e-9);
}

#[test]
fn memory_rounds_and_answers_every_question() {
    let weeks = everywhere(Some(FaultId::F01));
    for (week, _) in weeks.iter().filter(|(week, _)| complaint(week) == Some(Symptom::RunsOut)) {
        let told = account(week);
        assert_eq!(told.answers.len(), Question::ALL.len());
        let Some(Answer::HowMuch(HowMuch::RunsOut { after })) = told.answer(Question::HowMuch) else {
            panic!("{told:?}");
        };
        assert!((after.to_minutes() - after.to_minutes().round()).abs() < 1e-9);
    }
}

#[test]
fn the_same_draw_gives_the_same_week() {
    let again = || lived(Some(FaultId::F05), setting(2, 2, 9), 9).unwrap();
    assert_eq!(again(), again());
}

#[test]
fn every_question_has_its_own_answer_and_is_answered_alike_every_time() {
    assert!(Question::ALL.len() >= 25);
    let weeks = everywhere(Some(FaultId::F01));
    for (week, _) in weeks.iter().filter(|(week, _)| complaint(week) == Some(Symptom::RunsOut)) {
        let told = account(week);
        assert_eq!(told, account(week));
        assert_eq!(told.answers.len(), Question::ALL.len());
        let kinds: std::collections::BTreeSet<String> = told
            .answers
            .iter()
            .map(|a| format!("{a:?}").chars().take_while(|c| c.is_alphabetic()).collect())
            .collect();
        assert_eq!(kinds.len(), told.answers.len());
    }
}

/// The same week told by different people: near and clear minds agree with the trace, others err.
#[test]
fn memory_fades_errs_and_hides() {
    let (week, _) = lived(Some(FaultId::F01), setting(1, 2, 5), 5).unwrap();
    let told = |life: Life| account(&Week { life, ..week.clone() });
    let clear = |memory| Life { memory, forgets: 0.0, hides: false, assumes: false, ..week.life };
    let truth = told(clear(0));
    assert!((0..50).all(|memory| told(clear(memory)).answers == truth.answers));
    let vague = |memory| Life { memory, forgets: 1.0, ..clear(memory) };
    let days: std::collections::BTreeSet<_> =
        (0..50).map(|memory| format!("{:?}", told(vague(memory)).answer(Question::LastGood))).collect();
    assert!(days.len() >= 2, "{days:?}");
    let ages: std::collections::BTreeSet<_> =
        (0..50).map(|memory| format!("{:?}", told(vague(memory)).answer(Question::Age))).collect();
    assert!(ages.len() >= 3, "{ages:?}");

    // A dial turned by the neighbour, told and not told.
    let mut turned = week.clone();
    turned.dials[1] = quantity::Temperature::fahrenheit(150.0);
    turned.life = Life { meddler: Meddler::Neighbour, ..clear(1) };
    let neighbour = Answer::WhoTouched { who: Meddler::Neighbour, dial: true };
    assert_eq!(account(&turned).answer(Question::WhoTouched), Some(neighbour));
    turned.life.hides = true;
    let nobody = Answer::WhoTouched { who: Meddler::Nobody, dial: false };
    assert_eq!(account(&turned).answer(Question::WhoTouched), Some(nobody));
}

/// Whoever worked on it shows in the house, by state alone: those who hide nothing tell, those who hide it do not.
#[test]
fn what_hands_left_is_told_or_hidden() {
    let answers = |id: FaultId, hides| {
        let numbers = id.fault().complete(&Parameters::new(), &mut Draw::new(3, "fault")).unwrap();
        let mut home = Home::sound(setting(1, 1, 3));
        assert!((id.fault().fits)(&home), "{id}");
        (id.fault().apply)(&numbers, &mut home);
        let life = Life { hides, meddler: Meddler::Neighbour, ..Life::drawn(&mut Draw::new(3, "life")) };
        let told = account(&week(&mut home, life, &mut Draw::new(3, "draws"), 1));
        let who = |question| match told.answer(question) {
            Some(Answer::WhoTouched { who, dial: false } | Answer::Parts { who }) => {
                who == Meddler::Neighbour
            }
            other => panic!("{id} {other:?}"),
        };
        [who(Question::WhoTouched), who(Question::Parts)]
    };
    for (id, changed) in [
        (FaultId::F28, false),
        (FaultId::F29, true),
        (FaultId::F30, false),
        (FaultId::F40, false),
        (FaultId::F66, false),
        (FaultId::F68, true),
    ] {
        assert_eq!(answers(id, false), [true, changed], "{id}");
        assert_eq!(answers(id, true), [false, false], "{id}");
    }
    // Nobody's hands: worn, burnt, leaking.
    for id in [FaultId::F01, FaultId::F10, FaultId::F22, FaultId::F50] {
        assert_eq!(answers(id, false), [false, false], "{id}");
    }
}

/// A piece of wire at the limit and a cap on the pipe are told as well.
#[test]
fn handiwork_is_told_or_hidden() {
    for one in [crate::Handiwork::Bridged, crate::Handiwork::Capped] {
        let who = |hides| {
            let mut home = Home::sound(setting(1, 1, 3));
            home.lay(one);
            let life = Life { hides, meddler: Meddler::Neighbour, ..Life::drawn(&mut Draw::new(3, "life")) };
            account(&week(&mut home, life, &mut Draw::new(3, "draws"), 1)).answer(Question::WhoTouched)
        };
        let told = |who| Some(Answer::WhoTouched { who, dial: false });
        assert_eq!([who(false), who(true)], [told(Meddler::Neighbour), told(Meddler::Nobody)]);
    }
}

/// Whoever calls about too little does not say that there is as much as ever.
#[test]
fn a_complaint_and_its_first_answer_do_not_contradict_each_other() {
    let short = [Symptom::NoHot, Symptom::RunsOut, Symptom::Lukewarm];
    let mut met = 0;
    for fault in [FaultId::F34, FaultId::F38, FaultId::F40, FaultId::F74] {
        for (week, _) in everywhere(Some(fault)) {
            let account = account(&week);
            if short.contains(&account.symptom) {
                assert_ne!(account.opening.first(), Some(&Answer::HowMuch(HowMuch::Enough)), "{fault}");
                met += 1;
            }
        }
    }
    assert!(met > 20, "{met}");
}
