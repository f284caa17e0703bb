//! Places with their ground-water temperatures.

use crate::named::named;

named! {
    /// Towns of our own invention, each with a plain climate.
    Climate {
        /// Cold winters, cold ground.
        NorthRidge = "north-ridge",
        /// Four seasons.
        MillValley = "mill-valley",
        /// Mild and damp.
        HarborBend = "harbor-bend",
        /// Hot and dry.
        SaltFlat = "salt-flat",
    }
}
