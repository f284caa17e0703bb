//! The page opens on every screen, in light and dark: nothing in the console, nothing from elsewhere, accessible.

use std::io::{BufReader, Write as _};

use host::policy;
use host::request::Request;
use serde_json::json;
use tankwright_tests::browser::{self, Browser, Screen};
use words::{Units, Voice};

#[test]
fn the_page_opens_quietly_and_accessibly_on_every_screen() {
    for screens in Screen::ALL {
        let Some(browser) = Browser::open_page(screens[0]) else { return };
        for screen in screens.iter().flat_map(|screen| [*screen, screen.in_dark()]) {
            browser.show_on(screen);
            browser.reload();
            let doors = Voice::english(Units::Customary).text("window-doors");
            browser.wait_until(&format!("document.title === '{doors} · Tankwright'"));
            let size = browser.run(
                "return [innerWidth, innerHeight, matchMedia('(prefers-color-scheme: dark)').matches];",
                &[],
            );
            assert_eq!(size, json!([screen.width, screen.height, screen.dark]));
            browser.assert_accessible();
            browser.picture(&format!("opening-{}", screen.name()));
            browser.assert_quiet();
        }
    }
}

#[test]
fn a_page_that_cannot_start_says_so() {
    let Some(mut browser) = Browser::blank(Screen::DESK) else { return };
    browser.command(
        "Page.addScriptToEvaluateOnNewDocument",
        json!({ "source": "delete globalThis.WebAssembly;" }),
    );
    browser.go("");
    browser.wait_for_text("needs WebAssembly");
    browser.assert_accessible();
    browser = Browser::blank(Screen::DESK).expect("as above");
    browser.command("Emulation.setScriptExecutionDisabled", json!({ "value": true }));
    browser.go("");
    let shown = browser.css("noscript p");
    assert!(shown.text().contains("scripts have to be on"), "{:?}", shown.text());
}

#[test]
fn the_page_works_in_a_folder_of_any_web_host() {
    let Some(mut browser) = Browser::blank(Screen::DESK) else { return };
    let address = plain_host();
    browser.go_to(&format!("{address}a/folder/"));
    browser.wait_until_started();
    browser.assert_quiet();
    browser.run(
        "document.body.insertAdjacentHTML('beforeend', '<img src=\"https://example.invalid/x.png\">');",
        &[],
    );
    let blocked = browser.wait_for_message("Content Security Policy");
    assert!(blocked.text.contains("example.invalid"), "{blocked:?}");
}

/// A host that sends no header of ours and knows the page's folder as `/a/folder/`.
fn plain_host() -> String {
    let listener = std::net::TcpListener::bind("127.0.0.1:0").expect("some port is free");
    let address = format!("http://{}/", listener.local_addr().expect("it has an address"));
    let folder = browser::page_folder();
    std::thread::spawn(move || {
        for mut stream in listener.incoming().flatten() {
            let Some(request) = Request::read(BufReader::new(&stream)) else { continue };
            let path = request.path.strip_prefix("/a/folder").unwrap_or("/nowhere").to_owned();
            let file = Request { path, ..request }.relative_file().unwrap_or_default();
            let (status, body) =
                std::fs::read(folder.join(&file)).map_or((404, Vec::new()), |body| (200, body));
            let kind = policy::media_type(&file.to_string_lossy());
            let length = body.len();
            let head = format!(
                "HTTP/1.1 {status} x\r\nContent-Type: {kind}\r\nContent-Length: {length}\r\nConnection: close\r\n\r\n"
            );
            drop(stream.write_all(head.as_bytes()).and_then(|()| stream.write_all(&body)));
        }
    });
    address
}

#[test]
fn the_checks_of_a_page_can_fail() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    browser.run("console.info('a word'); fetch('http://127.0.0.1:9/x').catch(() => 0);", &[]);
    browser.wait_for_message("a word");
    browser.wait_for_message("Content Security Policy");
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
             document.querySelector('[aria-label=\"Press me\"]')
                 .addEventListener('click', (e) => { window.pressed = e.pointerType + e.detail; });",
            &[],
        );
        let button = browser.role("button", "Press me");
        assert_eq!((button.role().as_str(), button.name().as_str()), ("button", "Press me"));
        if screen.touch {
            button.tap();
            browser.wait_until("window.pressed === 'touch1'");
        } else {
            button.click();
            browser.wait_until("window.pressed === 'mouse1'");
        }
        browser.key_until("Tab", "textbox", "Ohms");
        browser.type_keys("12.8");
        assert_eq!(browser.focused().property("value"), "12.8");
        browser.key("Shift+Tab");
        browser.key("Enter");
        browser.wait_until("window.pressed === '0'");
    }
}
