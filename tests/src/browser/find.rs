//! Finding elements: by role and name as assistive technology does, or by selector.

use serde_json::{Value, json};

use super::element::REFERENCE;
use super::{Browser, Element, PATIENCE};

impl Browser {
    /// The element with this role and exactly this name; waits for it. More than one is a failure too: a
    /// learner could not tell them apart by ear.
    #[track_caller]
    pub fn role(&self, role: &str, name: &str) -> Element<'_> {
        let found = self.wait(|| Some(self.with_role(role, Some(name))).filter(|all| !all.is_empty()));
        match found.as_deref() {
            Some([one]) => one.clone(),
            Some(many) => panic!("{} elements have the role {role} and the name {name:?}", many.len()),
            None => panic!(
                "no {role} named {name:?} after {PATIENCE:?}; there are: {:?}\nConsole: {:?}",
                self.names(role),
                self.messages()
            ),
        }
    }

    /// Whether an element with this role and name is there now.
    #[track_caller]
    pub fn has_role(&self, role: &str, name: &str) -> bool {
        !self.with_role(role, Some(name)).is_empty()
    }

    /// All elements with a role, now, in the order of the document.
    #[track_caller]
    pub fn roles(&self, role: &str) -> Vec<Element<'_>> {
        self.with_role(role, None)
    }

    /// The names of all elements with a role.
    #[track_caller]
    pub fn names(&self, role: &str) -> Vec<String> {
        let name_of = |node: &Value| node["name"]["value"].as_str().unwrap_or_default().to_owned();
        self.query(role, None).iter().map(name_of).collect()
    }

    /// The first element with this role and exactly this name, inside another one or anywhere; waits for it. For names
    /// that stand in several places and do the same in each.
    #[track_caller]
    pub fn first_role(&self, within: Option<&Element<'_>>, role: &str, name: &str) -> Element<'_> {
        let root = within.map(|one| {
            let (_, number) = one.id.rsplit_once('.').expect("an element's name ends with its number");
            number.parse::<u64>().expect("the browser's number of an element")
        });
        let found = self.wait(|| self.named_nodes(&self.query_in(root, role, Some(name))).into_iter().next());
        found.unwrap_or_else(|| {
            panic!(
                "no {role} named {name:?} after {PATIENCE:?}; there are: {:?}\nConsole: {:?}",
                self.names(role),
                self.messages()
            )
        })
    }

    /// Everything that a screen reader would say from the page's beginning to its end.
    #[track_caller]
    pub fn heard(&self) -> String {
        let tree = self.command("Accessibility.getFullAXTree", json!({}));
        let said = tree["nodes"]
            .as_array()
            .into_iter()
            .flatten()
            .filter(|node| node["role"]["value"] == "StaticText");
        said.filter_map(|node| node["name"]["value"].as_str()).collect::<Vec<_>>().join(" ")
    }

    /// The first element that a selector fits; waits for it.
    #[track_caller]
    pub fn css(&self, selector: &str) -> Element<'_> {
        self.wait(|| self.all_css(selector).into_iter().next())
            .unwrap_or_else(|| panic!("nothing fits {selector:?} after {PATIENCE:?}:\n{}", self.text()))
    }

    /// All elements that a selector fits now.
    #[track_caller]
    pub fn all_css(&self, selector: &str) -> Vec<Element<'_>> {
        let asked = json!({ "using": "css selector", "value": selector });
        let found = self.driver.post("elements", &asked).unwrap();
        let ids = found.as_array().into_iter().flatten().filter_map(|one| one[REFERENCE].as_str());
        ids.map(|id| Element { browser: self, id: id.to_owned() }).collect()
    }

    /// The element that has the focus.
    #[track_caller]
    pub fn focused(&self) -> Element<'_> {
        let found = self.driver.get("element/active").unwrap();
        let id = found[REFERENCE].as_str().expect("something has the focus").to_owned();
        Element { browser: self, id }
    }

    /// The driver names an element by its frame and the browser's number for it; the accessibility tree has the
    /// number, and any other element of the page has the frame.
    fn with_role(&self, role: &str, name: Option<&str>) -> Vec<Element<'_>> {
        self.named_nodes(&self.query(role, name))
    }

    fn named_nodes(&self, nodes: &[Value]) -> Vec<Element<'_>> {
        let numbers: Vec<_> = nodes.iter().filter_map(|node| node["backendDOMNodeId"].as_u64()).collect();
        if numbers.is_empty() {
            return Vec::new();
        }
        let Some(page) = self.all_css("html").into_iter().next() else { return Vec::new() };
        let (frame, _) = page.id.rsplit_once('.').expect("an element's name ends with its number");
        numbers.iter().map(|number| Element { browser: self, id: format!("{frame}.{number}") }).collect()
    }

    /// Nodes of the accessibility tree; none while the page is being replaced.
    fn query(&self, role: &str, name: Option<&str>) -> Vec<Value> {
        self.query_in(None, role, name)
    }

    /// The same below a node of the browser's own number.
    fn query_in(&self, root: Option<u64>, role: &str, name: Option<&str>) -> Vec<Value> {
        let mut asked = match root {
            Some(number) => json!({ "backendNodeId": number, "role": role }),
            None => {
                let Ok(document) = self.driver.command("DOM.getDocument", json!({ "depth": 0 })) else {
                    return Vec::new();
                };
                json!({ "nodeId": document["root"]["nodeId"], "role": role })
            }
        };
        if let Some(name) = name {
            asked["accessibleName"] = json!(name);
        }
        let found = self.driver.command("Accessibility.queryAXTree", asked).unwrap_or_default();
        let nodes = found["nodes"].as_array().cloned().unwrap_or_default();
        nodes.into_iter().filter(|node| node["ignored"] != Value::Bool(true)).collect()
    }
}
