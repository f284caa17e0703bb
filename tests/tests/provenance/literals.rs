//! Numeric literals in a source file, and which of them stand in a tagged constant.
//!
//! Let through: the values 0, 1, 2 (and their negatives) in any notation; names of tuple fields (`.3` is a
//! name); anything in a string, an attribute or a comment; code that is built for tests only; and whatever
//! stands in a tagged constant, which is an item of `quantity::constants!`, or in a table whose entries carry
//! their tags: the catalogue entry of a fault (`const FAULT: Fault`), the scale of an instrument with its ranges
//! (`Scale`, `[Range; N]`), a list of tagged constants (`[Constant; N]`). Array lengths, indices, shifts, patterns
//! and the tokens of macros are not let through.

use proc_macro2::{TokenStream, TokenTree};
use syn::visit::{self, Visit};

/// A place in a file.
#[derive(Debug)]
pub struct Place {
    pub line: usize,
    pub text: String,
}

/// What a file holds.
#[derive(Default)]
pub struct Read {
    /// Numbers outside any tagged constant.
    pub bare: Vec<Place>,
    /// Names of the constants in `constants!`.
    pub tagged: Vec<String>,
    /// Tagged constants outside `constants!`, which no list would show.
    pub outside: Vec<Place>,
}

/// Reads a file.
pub fn read(text: &str) -> Read {
    let parsed = syn::parse_file(text).expect("the source is Rust");
    let mut read = Read::default();
    read.visit_file(&parsed);
    read.bare.sort_by_key(|place| place.line);
    read
}

/// Whether `#[cfg(test)]` or `#[test]` stands among these.
pub fn for_tests(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        attribute.path().is_ident("test")
            || attribute.path().is_ident("cfg")
                && attribute.parse_args::<syn::Ident>().is_ok_and(|name| name == "test")
    })
}

fn plain(value: f64) -> bool {
    value == 0.0 || value == 1.0 || value == 2.0
}

impl Read {
    fn number(&mut self, value: Option<f64>, text: String, line: usize) {
        if !value.is_some_and(plain) {
            self.bare.push(Place { line, text });
        }
    }

    fn literal(&mut self, literal: &syn::Lit) {
        let line = literal.span().start().line;
        match literal {
            syn::Lit::Int(whole) => {
                self.number(whole.base10_parse::<u64>().ok().map(|v| v as f64), whole.to_string(), line);
            }
            syn::Lit::Float(real) => self.number(real.base10_parse().ok(), real.to_string(), line),
            _ => {}
        }
    }

    /// Inside a macro there are only tokens. A number after a full stop is the name of a field.
    fn tokens(&mut self, tokens: TokenStream) {
        let mut after_stop = false;
        for token in tokens {
            match &token {
                TokenTree::Group(group) => self.tokens(group.stream()),
                TokenTree::Literal(literal) if !after_stop => {
                    self.literal(&syn::Lit::new(literal.clone()));
                }
                _ => {}
            }
            after_stop = matches!(&token, TokenTree::Punct(p) if p.as_char() == '.')
                || after_stop && matches!(&token, TokenTree::Punct(_));
        }
    }
}

fn is_type(kind: &syn::Type, name: &str) -> bool {
    matches!(kind, syn::Type::Path(path) if path.path.segments.last().is_some_and(|last| last.ident == name))
}

/// An array whose entries carry their tags, or belong to a scale that does.
fn is_table(kind: &syn::Type) -> bool {
    matches!(kind, syn::Type::Array(array) if ["Constant", "Range"].iter().any(|name| is_type(&array.elem, name)))
}

impl<'ast> Visit<'ast> for Read {
    fn visit_attribute(&mut self, _: &'ast syn::Attribute) {}

    fn visit_item(&mut self, item: &'ast syn::Item) {
        let attributes = match item {
            syn::Item::Mod(item) => &item.attrs,
            syn::Item::Fn(item) => &item.attrs,
            syn::Item::Impl(item) => &item.attrs,
            syn::Item::Const(item) => &item.attrs,
            syn::Item::Use(item) => &item.attrs,
            _ => return visit::visit_item(self, item),
        };
        if !for_tests(attributes) {
            visit::visit_item(self, item);
        }
    }

    fn visit_impl_item_fn(&mut self, item: &'ast syn::ImplItemFn) {
        if !for_tests(&item.attrs) {
            visit::visit_impl_item_fn(self, item);
        }
    }

    fn visit_item_const(&mut self, item: &'ast syn::ItemConst) {
        if ["Fault", "Scale"].iter().any(|name| is_type(&item.ty, name)) || is_table(&item.ty) {
            return;
        }
        if is_type(&item.ty, "Constant") {
            let line = item.ident.span().start().line;
            self.outside.push(Place { line, text: item.ident.to_string() });
            return;
        }
        visit::visit_item_const(self, item);
    }

    fn visit_macro(&mut self, invoked: &'ast syn::Macro) {
        let last = invoked.path.segments.last().map(|last| last.ident.to_string());
        if last.as_deref() != Some("constants") {
            return self.tokens(invoked.tokens.clone());
        }
        let Ok(inside) = syn::parse2::<syn::File>(invoked.tokens.clone()) else {
            return self.tokens(invoked.tokens.clone());
        };
        for item in inside.items {
            match item {
                syn::Item::Const(item) if is_type(&item.ty, "Constant") => {
                    self.tagged.push(item.ident.to_string())
                }
                other => visit::visit_item(self, &other),
            }
        }
    }

    fn visit_lit(&mut self, literal: &'ast syn::Lit) {
        self.literal(literal);
    }
}
