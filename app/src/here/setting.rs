//! What can be switched in the dialog, kept on this device. Where storage is refused it stays as it usually is.

use gloo::utils::window;

/// Something that is switched.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Setting {
    /// The key that opens the dialog: on until somebody switches it off.
    Key,
    /// Sounds: off until somebody wants them.
    Sound,
}

impl Setting {
    /// Its message, and its mark on the page.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Key => "here-key",
            Self::Sound => "here-sound",
        }
    }

    /// Key in local storage; anything there means that it is otherwise than usual.
    const fn kept_under(self) -> &'static str {
        match self {
            Self::Key => "tankwright.here-key-off",
            Self::Sound => "tankwright.sound",
        }
    }

    const fn is_usually_on(self) -> bool {
        matches!(self, Self::Key)
    }

    /// Whether it is on.
    pub fn is_on(self) -> bool {
        let storage = window().local_storage().ok().flatten();
        let kept = storage.and_then(|storage| storage.get_item(self.kept_under()).ok().flatten());
        self.is_usually_on() != kept.is_some()
    }

    /// Switches it.
    pub fn switch(self, on: bool) {
        if let Ok(Some(storage)) = window().local_storage() {
            let key = self.kept_under();
            let usual = on == self.is_usually_on();
            // A refused or full storage is told where the job is kept.
            let _ = if usual { storage.remove_item(key) } else { storage.set_item(key, "1") };
        }
    }
}
