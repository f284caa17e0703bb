//! Takes out of styles and scripts what only a reader of the source needs: comments, indentation, empty lines.

/// Styles without comments and without the space around lines. No string of ours holds the signs of a comment.
pub fn styles(source: &str) -> String {
    let mut code = String::with_capacity(source.len());
    let mut rest = source;
    while let Some((before, comment)) = rest.split_once("/*") {
        code.push_str(before);
        rest = comment.split_once("*/").map_or("", |(_, after)| after);
    }
    code.push_str(rest);
    let mut all = String::with_capacity(code.len());
    for line in code.lines().map(str::trim).filter(|line| !line.is_empty()) {
        // Elsewhere the end of a line is a space between words.
        if !all.is_empty() && !all.ends_with(['{', '}', ';', ',']) {
            all.push('\n');
        }
        all.push_str(line);
    }
    all.push('\n');
    all
}

/// A script without indentation and without the comments that have lines of their own. A script with a text of
/// several lines stays as it is.
pub fn script(source: &str) -> String {
    if source.lines().any(|line| line.matches('`').count() % 2 == 1) {
        return source.to_owned();
    }
    let mut all = String::with_capacity(source.len());
    let mut within = false;
    for line in source.lines().map(str::trim) {
        if within || line.starts_with("/*") {
            within = !line.ends_with("*/");
        } else if !line.is_empty() && !line.starts_with("//") {
            all.push_str(line);
            all.push('\n');
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn styles_keep_every_word_and_the_space_between_words() {
        let source = "/* Ink. */\n:root {\n  --sans: Arial,\n    serif;\n}\n\n.a\n.b { /* x */ margin: 0\n    1px; }\n";
        assert_eq!(styles(source), ":root {--sans: Arial,serif;}.a\n.b {  margin: 0\n1px; }\n");
    }

    #[test]
    fn scripts_lose_only_comments_and_indentation() {
        let source = "/**\n * Says.\n */\nfunction f() {\n    // Why.\n    return a / b; // so\n}\n";
        assert_eq!(script(source), "function f() {\nreturn a / b; // so\n}\n");
        let text = "let a = `one\n  two`;\n";
        assert_eq!(script(text), text);
    }
}
