//! Offers a text as a file.

use gloo::timers::callback::Timeout;
use gloo::utils::{body, document};
use js_sys::Array;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Blob, BlobPropertyBag, HtmlAnchorElement, Url};

/// Time after which the browser has surely taken the file over.
const TAKEN_MS: u32 = 20_000;

/// Lets the browser keep `text` as a file of this name. Says whether it could.
pub fn save(name: &str, media: &str, text: &str) -> bool {
    try_save(name, media, text).is_ok()
}

fn try_save(name: &str, media: &str, text: &str) -> Result<(), JsValue> {
    let kind = BlobPropertyBag::new();
    kind.set_type(media);
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(&JsValue::from_str(text)), &kind)?;
    let address = Url::create_object_url_with_blob(&blob)?;
    let link: HtmlAnchorElement = document().create_element("a")?.dyn_into().map_err(JsValue::from)?;
    link.set_href(&address);
    link.set_download(name);
    body().append_child(&link)?;
    link.click();
    link.remove();
    Timeout::new(TAKEN_MS, move || drop(Url::revoke_object_url(&address))).forget();
    Ok(())
}

/// A file's name made from what somebody typed: letters, digits and hyphens only.
pub fn file_name(parts: &[&str], end: &str) -> String {
    let clean = |part: &&str| {
        let kept: String = part.chars().map(|c| if c.is_alphanumeric() { c } else { '-' }).take(40).collect();
        let kept = kept.trim_matches('-').to_owned();
        (!kept.is_empty()).then_some(kept)
    };
    let parts: Vec<String> = parts.iter().filter_map(clean).collect();
    format!("{}.{end}", parts.join("-"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_holds_nothing_that_a_file_system_minds() {
        assert_eq!(file_name(&["attempt", "A. Learner / 4", ""], "json"), "attempt-A--Learner---4.json");
        assert_eq!(file_name(&["../..", "<x>"], "csv"), "x.csv");
    }
}
