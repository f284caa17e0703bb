//! Words: turns typed facts into sentences.
