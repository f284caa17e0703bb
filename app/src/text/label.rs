//! Labels: texts of the page that need nothing filled in, by their names in the book.

use std::fmt;

use yew::AttrValue;
use yew::html::IntoPropValue;
use yew::virtual_dom::VNode;

/// A text of the book. It is looked up when it is shown, so that it follows the language.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Label(pub &'static str);

impl fmt::Display for Label {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&super::text(self.0))
    }
}

impl IntoPropValue<VNode> for Label {
    fn into_prop_value(self) -> VNode {
        VNode::from(self.to_string())
    }
}

impl IntoPropValue<AttrValue> for Label {
    fn into_prop_value(self) -> AttrValue {
        self.to_string().into()
    }
}

impl IntoPropValue<Option<AttrValue>> for Label {
    fn into_prop_value(self) -> Option<AttrValue> {
        Some(self.to_string().into())
    }
}

impl From<Label> for AttrValue {
    fn from(label: Label) -> Self {
        label.to_string().into()
    }
}

/// Names labels of the book.
macro_rules! labels {
    ($($name:ident = $id:literal;)*) => {
        $(#[doc = concat!("The text `", $id, "`.")] pub const $name: $crate::text::Label = $crate::text::Label($id);)*
    };
}

pub(super) use labels;
