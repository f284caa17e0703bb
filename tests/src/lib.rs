//! Shared helpers of the checks.
