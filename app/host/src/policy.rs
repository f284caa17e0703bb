//! The headers of every answer, and the same policy as an element for hosts that send none.

/// What the page may load: its own files, WebAssembly, and nothing from anywhere else.
const DIRECTIVES: [&str; 12] = [
    "default-src 'none'",
    "script-src 'self' 'wasm-unsafe-eval'",
    "style-src 'self'",
    "img-src 'self' data:",
    "connect-src 'self'",
    "font-src 'self'",
    "media-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    FRAME_ANCESTORS,
];

/// Browsers only accept this directive in a header.
const FRAME_ANCESTORS: &str = "frame-ancestors 'self'";

/// The policy as a header's value.
pub fn content_security_policy() -> String {
    DIRECTIVES.join("; ")
}

/// The policy as an element of the page's head, for plain web hosts.
pub fn content_security_element() -> String {
    let directives: Vec<_> = DIRECTIVES.into_iter().filter(|one| *one != FRAME_ANCESTORS).collect();
    format!(r#"<meta http-equiv="Content-Security-Policy" content="{}">"#, directives.join("; "))
}

/// The headers that go with every answer, whatever it is.
pub fn headers() -> Vec<(&'static str, String)> {
    vec![
        ("Content-Security-Policy", content_security_policy()),
        ("X-Content-Type-Options", "nosniff".into()),
        ("Referrer-Policy", "no-referrer".into()),
        ("Cross-Origin-Opener-Policy", "same-origin".into()),
        ("Cross-Origin-Resource-Policy", "same-origin".into()),
        // Asked again every time, answered from the cache while the digest is the same.
        ("Cache-Control", "no-cache".into()),
    ]
}

/// The media type of a file, by the end of its name.
pub fn media_type(name: &str) -> &'static str {
    match name.rsplit('.').next().unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "wasm" => "application/wasm",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "woff2" => "font/woff2",
        "wav" => "audio/wav",
        "txt" | "md" | "ftl" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_policy_denies_by_default_and_allows_no_inline_code() {
        let policy = content_security_policy();
        assert!(policy.starts_with("default-src 'none'; "));
        assert!(!policy.contains("'unsafe-inline'") && !policy.contains("'unsafe-eval'"));
        assert!(policy.ends_with("; frame-ancestors 'self'"));
        assert!(!content_security_element().contains("frame-ancestors"));
    }

    #[test]
    fn a_module_has_the_type_that_streaming_compilation_asks_for() {
        assert_eq!(media_type("tankwright_bg.wasm"), "application/wasm");
        assert_eq!(media_type("noending"), "application/octet-stream");
    }
}
