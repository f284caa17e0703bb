//! Whether the device keeps the job.

/// Whether what is done is kept on the device.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Keeping {
    /// Every act is kept.
    #[default]
    Kept,
    /// The browser refuses storage: a sandboxed frame, a private window, a setting.
    Blocked,
    /// The storage is full.
    Full,
    /// Another tab of this browser has begun another job, which is the one that is kept.
    Elsewhere,
}
