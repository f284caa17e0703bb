//! Fills a sentence. The notation's own library has read the books when the page was built (`build.rs`) and let through
//! what is filled here: places, quoted text, and choices by a count or a text, each on one line. `tests/books.rs`
//! compares every sentence with what the library says. Whole in the page it would be 39 kB of the 900 of the page.

use crate::Fill;

/// Adds a sentence with its places filled. False when something is missing for one of them.
pub fn fill(pattern: &str, fills: &[&[(&str, Fill)]], said: &mut String) -> bool {
    let (mut rest, mut whole) = (pattern, true);
    while let Some((text, opened)) = rest.split_once('{') {
        said.push_str(text);
        let (inside, after) = cut(opened, b'}');
        whole &= place(inside.trim(), fills, said);
        rest = after;
    }
    said.push_str(rest);
    whole
}

/// Adds what stands between two braces.
fn place(inside: &str, fills: &[&[(&str, Fill)]], said: &mut String) -> bool {
    if let Some(quoted) = inside.strip_prefix('"') {
        said.push_str(quoted.trim_end_matches('"'));
        return true;
    }
    let (name, choices) = inside.split_once("->").unwrap_or((inside, ""));
    let name = name.trim().trim_start_matches('$');
    // What every sentence may use stands last and comes first.
    let known = fills.iter().rev().find_map(|all| all.iter().rfind(|(known, _)| *known == name));
    let given = known.map(|(_, fill)| written(fill));
    if !choices.is_empty() {
        return fill(choose(choices, given.as_deref()), fills, said) && given.is_some();
    }
    match &given {
        Some(text) => said.push_str(text),
        None => said.extend(["{$", name, "}"]),
    }
    given.is_some()
}

fn written(fill: &Fill) -> String {
    match fill {
        Fill::Text(text) => text.clone(),
        Fill::Count(count) => count.to_string(),
    }
}

/// The first choice named like what is given, or the one with a star.
fn choose<'a>(choices: &'a str, given: Option<&str>) -> &'a str {
    let (mut rest, mut otherwise) = (choices.trim(), "");
    while !rest.is_empty() {
        let (choice, after) = cut(rest, b'\n');
        rest = after.trim_start();
        let starred = choice.strip_prefix('*');
        let named = starred.unwrap_or(choice).trim_start_matches('[');
        let (key, text) = named.split_once(']').unwrap_or(("", named));
        // One is one in English and in Spanish (Unicode CLDR, language plural rules).
        if given.is_some_and(|given| given == key || key == "one" && matches!(given, "1" | "-1")) {
            return text.trim();
        }
        if starred.is_some() {
            otherwise = text.trim();
        }
    }
    otherwise
}

/// What stands before a sign that is inside no braces, and what stands after it.
fn cut(text: &str, sign: u8) -> (&str, &str) {
    let mut deep = 0_usize;
    for (at, byte) in text.bytes().enumerate() {
        match byte {
            _ if byte == sign && deep == 0 => {
                let (before, after) = text.split_at(at);
                return (before, after.split_at(1).1);
            }
            b'{' => deep += 1,
            b'}' => deep = deep.saturating_sub(1),
            _ => {}
        }
    }
    (text, "")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(pattern: &str, fills: &[(&str, Fill)]) -> String {
        let mut said = String::new();
        fill(pattern, &[fills], &mut said);
        said
    }

    #[test]
    fn a_count_chooses_and_stands_inside_the_choice() {
        let pattern = "before { $n ->\n    [0] none\n    [one] { $n } act\n   *[other] { $n } acts\n} after";
        for (count, text) in [(0.0, "none"), (1.0, "1 act"), (2.0, "2 acts"), (1.5, "1.5 acts")] {
            assert_eq!(said(pattern, &[("n", count.into())]), format!("before {text} after"));
        }
    }

    #[test]
    fn what_nobody_closed_or_gave_is_no_end() {
        assert_eq!(said("a { $b", &[("b", "x".into())]), "a x");
        let mut text = String::new();
        assert!(!fill("a { $b } c", &[], &mut text));
        assert_eq!(text, "a {$b} c");
        assert_eq!(said("{ $n ->\n [one] x\n}", &[("n", 2.0.into())]), "");
    }

    #[test]
    fn a_text_given_is_not_read_again() {
        assert_eq!(said("{ $a }", &[("a", "{ $a }".into())]), "{ $a }");
    }
}
