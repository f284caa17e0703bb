//! How far the heater is in its place.

use crate::named::named;

named! {
    /// How far the heater is in its place.
    #[derive(Default)]
    Stand {
        /// Both pipes on its nipples.
        #[default]
        Piped = "piped",
        /// It stands there, its pipes off: they end in the open.
        Loose = "loose",
        /// Nothing stands there.
        Gone = "gone",
    }
}

impl Stand {
    /// Both pipes are on.
    pub const fn is_piped(&self) -> bool {
        matches!(self, Self::Piped)
    }

    /// A heater stands there, piped or not.
    pub const fn is_there(&self) -> bool {
        !matches!(self, Self::Gone)
    }
}
