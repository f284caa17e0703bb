//! The page opens on every screen, in light and dark: nothing in the console, nothing from elsewhere, accessible.

use tankwright_tests::browser::{Browser, Screen};

#[test]
fn the_page_opens_quietly_and_accessibly_on_every_screen() {
    for screen in Screen::all() {
        let Some(browser) = Browser::open_page(screen) else { return };
        assert_eq!(browser.title(), "Tankwright");
        let size = browser.run("return [innerWidth, innerHeight];", &[]);
        assert_eq!(size, serde_json::json!([screen.width, screen.height]));
        browser.assert_accessible();
        browser.picture(&format!("opening-{}", screen.name()));
        browser.assert_quiet();
    }
}

#[test]
fn the_checks_of_a_page_can_fail() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    browser.run("console.info('a word'); fetch('http://127.0.0.1:9/x').catch(() => 0);", &[]);
    browser.wait_until("true");
    let messages = browser.messages();
    assert!(messages.iter().any(|message| message.text.contains("a word")), "{messages:?}");
    assert!(messages.iter().any(|message| message.text.contains("Content Security Policy")), "{messages:?}");
    browser.run("document.body.append(document.createElement('button'));", &[]);
    let failed = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| browser.assert_accessible()));
    assert!(failed.is_err(), "a button without a name passed");
}

#[test]
fn elements_are_found_and_used_by_role_and_name() {
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        browser.run(
            "document.body.insertAdjacentHTML('beforeend', '<button aria-label=\"Press me\">x</button><input aria-label=Ohms>');
             document.querySelector('button').addEventListener('click', (e) => { document.title = e.pointerType + e.detail; });",
            &[],
        );
        let button = browser.role("button", "Press me");
        assert_eq!((button.role().as_str(), button.name().as_str()), ("button", "Press me"));
        if screen.touch {
            button.tap();
            browser.wait_until("document.title === 'touch1'");
        } else {
            button.click();
            browser.wait_until("document.title === 'mouse1'");
        }
        browser.key_until("Tab", "textbox", "Ohms");
        browser.type_keys("12.8");
        assert_eq!(browser.focused().property("value"), "12.8");
        browser.key("Shift+Tab");
        browser.key("Enter");
        browser.wait_until("document.title.endsWith('0')");
    }
}
