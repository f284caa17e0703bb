//! The page: starts the Yew application in the shell's element `app`.

mod begin;
mod compose;
mod debrief;
mod doors;
mod drill;
mod exam;
mod exports;
mod files;
mod instructor;
mod route;
mod said;
mod shell;
mod sources;
mod store;
mod text;
mod units;

fn main() {
    if let Some(root) = gloo::utils::document().get_element_by_id("app") {
        root.set_inner_html("");
        yew::Renderer::<shell::App>::with_root(root).render();
    }
}
