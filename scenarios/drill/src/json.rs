//! Everything written as JSON goes through one writer: each further one would be compiled for every type again.

use serde::Serialize;
use serde_json::Value;

/// On one line.
pub fn line(of: &impl Serialize) -> String {
    serde_json::to_string(of).unwrap_or_default()
}

/// On many lines, two blanks deeper at each level.
pub fn lines(of: &impl Serialize) -> String {
    let line = line(of);
    let (mut lines, mut deep) = (String::with_capacity(line.len() * 2), 0_usize);
    let (mut quoted, mut escaped) = (false, false);
    let mut letters = line.chars().peekable();
    while let Some(letter) = letters.next() {
        if quoted {
            lines.push(letter);
            quoted = escaped || letter != '"';
            escaped = letter == '\\' && !escaped;
            continue;
        }
        match letter {
            '{' | '[' => {
                lines.push(letter);
                if let Some(end) = letters.next_if(|next| matches!(next, '}' | ']')) {
                    lines.push(end);
                } else {
                    deep += 1;
                    break_line(&mut lines, deep);
                }
            }
            '}' | ']' => {
                deep = deep.saturating_sub(1);
                break_line(&mut lines, deep);
                lines.push(letter);
            }
            ',' => {
                lines.push(letter);
                break_line(&mut lines, deep);
            }
            ':' => lines.push_str(": "),
            _ => {
                quoted = letter == '"';
                lines.push(letter);
            }
        }
    }
    lines
}

fn break_line(lines: &mut String, deep: usize) {
    lines.push('\n');
    (0..deep).for_each(|_| lines.push_str("  "));
}

/// As a value, to look at its parts.
pub fn value(of: &impl Serialize) -> Value {
    serde_json::from_str(&line(of)).unwrap_or(Value::Null)
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn many_lines_are_those_of_the_library() {
        for of in [
            json!({"a": [1, 2.5, {"b": []}], "c": {}, "d": "x\"{[,:\\", "e": "\\\"", "f": null, "ñ": true}),
            json!([]),
            json!([[], {}, [[1]]]),
            json!("plain: text, {here}"),
            json!(7),
        ] {
            assert_eq!(lines(&of), serde_json::to_string_pretty(&of).unwrap());
            assert_eq!(value(&of), of);
        }
    }
}
