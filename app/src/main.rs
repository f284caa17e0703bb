//! The page: starts the Yew application in the shell's element `app`.

mod atlas;
mod away;
mod begin;
mod compose;
mod debrief;
mod doors;
mod drill;
mod exam;
mod exports;
mod files;
#[cfg(debug_assertions)]
mod gallery;
mod glossary;
mod here;
mod instructor;
mod route;
mod said;
mod shell;
mod show;
mod sources;
mod store;
mod taking;
mod text;
mod turns;
mod units;

fn main() {
    // In the worker there is no window, and nothing to draw.
    if web_sys::window().is_none() {
        return;
    }
    away::prepare();
    let Some(root) = gloo::utils::document().get_element_by_id("app") else { return };
    let show = |root: web_sys::Element| {
        root.set_inner_html("");
        yew::Renderer::<shell::App>::with_root(root).render();
    };
    let language = text::wanted();
    if text::at_hand(language) {
        show(root);
    } else {
        // What stands on the shell meanwhile is the line that says the page is starting. Without the book the
        // page begins in English.
        yew::platform::spawn_local(async move {
            text::fetch(language).await;
            show(root);
        });
    }
}
