//! From the instructor's desk through an exam and back: handed out, worked, handed in, opened, tabulated.

use std::fs;
use std::path::PathBuf;

use bench::{Action, Mode};
use drill::{Attempt, Opening, Order, Seal};
use serde_json::json;
use tankwright_tests::browser::{Browser, Hand, Screen};
use tankwright_tests::tree;

use super::calls;
use super::work::Work;

const HAND: Hand = Hand::Mouse;

/// A folder of this check's own, empty, where the browser leaves what it saves.
fn saves_to(browser: &Browser, name: &str) -> PathBuf {
    let folder = tree::out().join("saved").join(name);
    drop(fs::remove_dir_all(&folder));
    fs::create_dir_all(&folder).expect("tests/out can be written");
    let folder = folder.canonicalize().expect("the folder is there");
    browser.command("Browser.setDownloadBehavior", json!({ "behavior": "allow", "downloadPath": folder }));
    folder
}

/// Presses a button that saves a file; answers with its text once it is whole.
#[track_caller]
fn saved(browser: &Browser, folder: &PathBuf, button: &str) -> (PathBuf, String) {
    let files = || {
        let all = fs::read_dir(folder).expect("the folder is there").flatten().map(|one| one.path());
        all.filter(|path| path.extension().is_none_or(|end| end != "crdownload")).collect::<Vec<_>>()
    };
    let before = files();
    browser.press_at(HAND, button);
    for _ in 0..300 {
        if let Some(new) = files().into_iter().find(|path| !before.contains(path)) {
            let text = fs::read_to_string(&new).unwrap_or_default();
            if !text.is_empty() {
                return (new, text);
            }
        }
        std::thread::sleep(std::time::Duration::from_millis(50));
    }
    panic!("{button} saved nothing in {}", folder.display());
}

/// Gives files to the page as a learner picks them.
#[track_caller]
fn pick(browser: &Browser, hook: &str, files: &[PathBuf]) {
    let named: Vec<_> = files.iter().map(|path| path.to_string_lossy()).collect();
    browser.css(&format!("input[data-pick={hook}]")).type_text(&named.join("\n"));
}

fn kept_on_device(browser: &Browser) -> usize {
    let count = "return Object.keys(localStorage).filter((key) => key.startsWith('tankwright.')).length;";
    browser.run(count, &[]).as_u64().unwrap_or_default() as usize
}

#[test]
fn an_exam_from_the_desk_to_its_debrief() {
    let Some(browser) = Browser::open_page_at(Screen::DESK, "#/instructor") else { return };
    let folder = saves_to(&browser, "exam");

    // The instructor asks for an exam with a limit, and keeps its opening file.
    browser.press_at(HAND, "input[name=mode][value=exam]");
    let (_, opening) = saved(&browser, &folder, "[data-act=save-opening]");
    let (_, file) = saved(&browser, &folder, "[data-act=save-drill]");
    let order = Order::read(&file).expect("the drill can be read");
    assert_eq!(order.mode, Mode::Exam);
    assert!(Opening::read(&opening).expect("the opening can be read").opens(&order));
    let code = browser.css("[data-hook=code]").text();
    assert_eq!(drill::code::decode(&code).expect("the code can be read"), order);
    let link = browser.css("[data-copy=link]").property("value");
    assert_eq!(link, json!(format!("{}#/drill/{code}", browser.address())));

    // The candidate opens the exam's door with the code.
    browser.go("#/exam");
    let field = browser.reach(HAND, "[data-field=code]");
    browser.write(HAND, &field, &code);
    browser.press_at(HAND, "[data-act=enter-code]");
    let field = browser.reach(HAND, "[data-field=learner]");
    browser.write(HAND, &field, "Bench 12");
    browser.press_at(HAND, "[data-act=start]");
    let mut work = Work::begun(&browser, HAND);
    assert!(!browser.has("[data-act=hint]"), "an exam gives hints");
    work.act(&Action::TellHousehold);
    work.reload();
    assert!(!browser.has("[data-act=hint]"), "an exam gives hints after the page is loaded again");
    work.act(&Action::HandOver);

    // No score before the opening file; the attempt can be saved.
    browser.press_at(HAND, ".over a");
    browser.css("[data-door=opening]");
    browser.picture("exam-over-1440x900-light");
    browser.assert_accessible();
    let (_, text) = saved(&browser, &folder, "[data-act=save-attempt]");
    let attempt = Attempt::read(&text).expect("the attempt can be read");
    assert_eq!((attempt.learner.as_str(), attempt.seal, &attempt.order), ("Bench 12", Seal::Sealed, &order));
    assert_eq!(attempt.actions, [Action::TellHousehold, Action::HandOver]);
    let others = [Order { seed: order.seed ^ 1, ..order.clone() }];
    let wrong = folder.join("other-opening.json");
    fs::write(&wrong, Opening::of(&others).write()).expect("the folder can be written");
    pick(&browser, "opening", &[wrong]);
    browser.css("[data-door=opening] [role=alert]");
    assert!(!browser.has("[data-account]"), "the wrong file opens the debrief");
    let right = folder.join("right-opening.json");
    fs::write(&right, &opening).expect("the folder can be written");
    pick(&browser, "opening", &[right]);
    browser.css("[data-account=safety]");

    // The device is left clean for the next one.
    assert!(kept_on_device(&browser) > 0);
    browser.press_at(HAND, "[data-act=clear-asked]");
    browser.press_at(HAND, "dialog[open] [data-act=clear]");
    browser.css("[data-door=practise]");
    assert_eq!(kept_on_device(&browser), 0, "something is left on the device");
    assert!(!browser.has("[data-door=resume]"));
    browser.assert_quiet();
}

#[test]
fn attempts_read_in_are_judged_and_an_edited_one_is_told() {
    let Some(browser) = Browser::open_page_at(Screen::DESK, "#/instructor/attempts") else { return };
    let folder = saves_to(&browser, "class");
    let (whole, mut careless) = (calls::whole(), calls::careless());
    careless.attempt.learner = "Bench 8".to_owned();
    let files = [
        ("a-whole.json", whole.attempt.write()),
        ("b-careless.json", careless.attempt.write()),
        ("c-edited.json", whole.attempt.write().replace("Bench 7", "Bench 9")),
    ];
    let paths = files.map(|(name, text)| {
        let path = folder.join(name);
        fs::write(&path, text).expect("the folder can be written");
        path
    });
    pick(&browser, "attempts", &paths);
    browser.wait_until("document.querySelectorAll('.class-table tbody tr').length === 2");
    let rows = browser.all_css(".class-table tbody tr");
    for (row, call) in rows.iter().zip([&whole, &careless]) {
        let score = call.score();
        let text = row.text();
        assert!(text.contains(&call.attempt.learner), "{text}");
        for points in score.reached.iter().chain([&score.total()]) {
            assert!(text.split_whitespace().any(|word| word == points.to_string()), "{points} in {text}");
        }
    }
    let bad = browser.css(".bad-files").text();
    assert!(bad.contains("c-edited.json") && bad.contains("changed after"), "{bad}");
    browser.picture_of_all("instructor-table-1440x900-light");
    browser.assert_accessible();
    let (_, csv) = saved(&browser, &folder, "[data-act=csv]");
    assert_eq!(csv.lines().count(), 3, "{csv}");
    assert!(csv.contains("Bench 8"), "{csv}");

    // One of them is stepped through.
    let first = browser.role("button", "Bench 7");
    browser.press(HAND, &first);
    browser.css("[data-account=safety]");
    browser.picture("instructor-review-1440x900-light");
    browser.assert_accessible();
    browser.assert_quiet();
}
