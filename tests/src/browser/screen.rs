//! What the page is shown on.

use serde_json::{Value, json};

use super::Browser;

/// A screen, its colours, and whether it is touched.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Screen {
    /// Width of the page in CSS pixels.
    pub width: u32,
    /// Height of the page in CSS pixels.
    pub height: u32,
    /// Touched, on a phone, rather than pointed at.
    pub touch: bool,
    /// The reader asks for light writing on dark.
    pub dark: bool,
}

impl Screen {
    /// A desk's screen.
    pub const DESK: Self = Self { width: 1440, height: 900, touch: false, dark: false };
    /// A small laptop or a tablet on its side, with a pointer.
    pub const LAPTOP: Self = Self { width: 1024, height: 768, touch: false, dark: false };
    /// A phone held upright.
    pub const PHONE: Self = Self { width: 390, height: 844, touch: true, dark: false };

    /// All three, one list for each browser that shows them.
    pub const ALL: [&[Self]; 2] = [&[Self::DESK, Self::LAPTOP], &[Self::PHONE]];

    /// The same with light writing on dark.
    pub fn in_dark(self) -> Self {
        Self { dark: true, ..self }
    }

    /// A name for files.
    pub fn name(self) -> String {
        format!("{}x{}-{}", self.width, self.height, if self.dark { "dark" } else { "light" })
    }

    /// What the driver is asked for besides its usual options.
    pub(super) fn options(self) -> Option<Value> {
        let metrics = json!({ "width": self.width, "height": self.height, "pixelRatio": 2.0, "touch": true });
        self.touch.then(|| json!({ "deviceMetrics": metrics }))
    }
}

impl Browser {
    /// Changes size and colours. A phone is a browser of its own: its size is set when it starts.
    #[track_caller]
    pub fn show_on(&self, screen: Screen) {
        assert_eq!(screen.touch, self.touch, "a browser does not turn into a phone");
        if !screen.touch {
            self.command(
                "Emulation.setDeviceMetricsOverride",
                json!({ "width": screen.width, "height": screen.height, "deviceScaleFactor": 1, "mobile": false }),
            );
        }
        self.set_dark(screen.dark);
    }

    /// Any size, in the colours of a screen; with the system's own few colours in place of the page's, if asked.
    /// Half the size shows the page at 200 %.
    #[track_caller]
    pub fn show_at(&self, width: u32, height: u32, dark: bool, forced: bool) {
        self.command(
            "Emulation.setDeviceMetricsOverride",
            json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": false }),
        );
        let scheme = if dark { "dark" } else { "light" };
        let colours = if forced { "active" } else { "none" };
        self.command(
            "Emulation.setEmulatedMedia",
            json!({ "features": [
                { "name": "prefers-color-scheme", "value": scheme },
                { "name": "forced-colors", "value": colours },
            ] }),
        );
    }
}
