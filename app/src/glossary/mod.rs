//! The trade's terms: a page with an address, and each term opened where it occurs. The words are a file beside the
//! page, fetched once the page stands.

pub mod held;
mod here;
mod marked;
mod page;
mod terms;

pub use held::TermsProvider;
pub use here::WordsHere;
pub use marked::Marked;
pub use page::Glossary;
