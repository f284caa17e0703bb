//! The page: starts the Yew application in the shell's element `app`.

mod exports;

use yew::prelude::*;

/// The whole page.
#[component]
fn App() -> Html {
    html! {
        <main>
            <h1>{ "Tankwright" }</h1>
            <p>{ "The drills are being built." }</p>
        </main>
    }
}

fn main() {
    if let Some(root) = gloo::utils::document().get_element_by_id("app") {
        yew::Renderer::<App>::with_root(root).render();
    }
}
