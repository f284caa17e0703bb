//! The language of the page: English at hand, another one fetched when it is chosen, kept on the device.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use bench::Lost;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::Response;
use words::{Book, Heater, Language, Voice};

use crate::units::Units;

/// Key of the language in local storage.
const KEY: &str = "tankwright.language";

/// A voice for each system of units.
type Voices = [Rc<Voice>; 2];

thread_local! {
    static ENGLISH: RefCell<Voices> = RefCell::new(voices(Book::english()));
    static OTHER: RefCell<Option<(Language, Voices)>> = const { RefCell::new(None) };
    static NOW: Cell<Language> = const { Cell::new(Language::English) };
    static HEATER: Cell<Heater> = const { Cell::new(words::MOST) };
    static LOST: RefCell<Rc<[Lost]>> = RefCell::default();
}

fn voices(book: Book) -> Voices {
    let book = Rc::new(book);
    [Units::Us, Units::Si].map(|units| Rc::new(Voice::new(book.clone(), units.words())))
}

/// The language the page speaks now.
pub fn language() -> Language {
    NOW.get()
}

/// Speaks a language from now on, by the text of its book; English needs none.
pub fn speak(language: Language, book: &str) {
    if language != Language::English {
        OTHER.set(Some((language, voices(Book::of(language, book)))));
    }
    NOW.set(language);
}

/// Whether a language's book is here.
pub fn at_hand(language: Language) -> bool {
    let fetched = |other: &Option<(Language, Voices)>| other.as_ref().is_some_and(|(of, _)| *of == language);
    language == Language::English || OTHER.with_borrow(fetched)
}

/// Speaks a language whose book is at hand.
pub fn turn_to(language: Language) {
    if at_hand(language) {
        NOW.set(language);
    }
}

/// Speaks of this heater from now on. A page that shows one says so whenever it is drawn.
pub fn about(plant: &plant::Plant) {
    HEATER.set(words::heater_of(plant));
    LOST.take();
}

/// Speaks of a job under way from now on: as `about`, and what its learner cannot tell apart is not told.
pub fn during(session: &bench::Session) {
    about(&session.home.plant);
    LOST.set(session.lost().into());
}

/// The voice of the language in some units, to keep for a while.
pub fn voice(units: Units) -> Rc<Voice> {
    let one = |[us, si]: &Voices| match units {
        Units::Us => us.clone(),
        Units::Si => si.clone(),
    };
    let other = OTHER.with_borrow(|other| match other {
        Some((of, voices)) if *of == NOW.get() => Some(one(voices)),
        _ => None,
    });
    let voice = other.unwrap_or_else(|| ENGLISH.with_borrow(one));
    voice.about(HEATER.get());
    voice.lose(LOST.with_borrow(Rc::clone));
    voice
}

/// The language to begin in: the one kept on the device, else what the browser asks for.
pub fn wanted() -> Language {
    let window = gloo::utils::window();
    let kept = window.local_storage().ok().flatten().and_then(|storage| storage.get_item(KEY).ok().flatten());
    let asked = kept.or_else(|| window.navigator().language());
    asked.and_then(|tag| Language::of_tag(&tag)).unwrap_or_default()
}

/// Keeps a language on the device. Where storage is refused, it lasts as long as the page.
pub fn keep(language: Language) {
    if let Ok(Some(storage)) = gloo::utils::window().local_storage() {
        // A refused or full storage is told where the job is kept; a language is chosen again with one click.
        let _ = storage.set_item(KEY, language.short());
    }
}

/// Tells the document its language, for screen readers and hyphenation.
pub fn mark_document(language: Language) {
    if let Some(root) = gloo::utils::document().document_element() {
        // Setting a plain attribute of the root cannot fail.
        let _ = root.set_attribute("lang", language.tag());
    }
}

/// Fetches a language's book from beside the page and speaks it. `false` when it could not be had.
pub async fn fetch(language: Language) -> bool {
    if at_hand(language) {
        turn_to(language);
        return true;
    }
    let address = format!("assets/words/{}.ftl", language.short());
    let Some(book) = beside(&address).await else { return false };
    speak(language, &book);
    true
}

/// Fetches the rest of the English book, which stands behind every other. `false` when it could not be had.
pub async fn fetch_rest() -> bool {
    let Some(rest) = beside("assets/words/en-later.ftl").await else { return false };
    ENGLISH.set(voices(Book::of(Language::English, &rest)));
    true
}

/// The text of a file of the page's own origin; nothing when it cannot be had.
pub async fn beside(address: &str) -> Option<String> {
    let answer = JsFuture::from(gloo::utils::window().fetch_with_str(address)).await.ok()?;
    let answer: Response = answer.dyn_into().ok()?;
    if !answer.ok() {
        return None;
    }
    JsFuture::from(answer.text().ok()?).await.ok()?.as_string()
}
