//! The page's two sounds, made when it is built: the tone of a meter, the click of a control.

use std::f64::consts::TAU;
use std::io::Cursor;

use hound::{SampleFormat, WavSpec, WavWriter};

/// Samples a second.
const RATE: u32 = 8000;
/// As loud as it gets: nobody in a class shall start.
const LOUD: f64 = 40.0;

/// A meter's tone: nineteen hundred swings a second for a quarter of one, begun and ended softly.
pub fn tone() -> Result<Vec<u8>, hound::Error> {
    const SECONDS: f64 = 0.25;
    const SOFT: f64 = 0.01;
    written(SECONDS, |t| (TAU * 1900.0 * t).sin() * (t / SOFT).min((SECONDS - t) / SOFT).min(1.0))
}

/// A control that snaps over: a knock that is gone in a fiftieth of a second.
pub fn click() -> Result<Vec<u8>, hound::Error> {
    written(0.06, |t| ((TAU * 900.0 * t).sin() + (TAU * 2300.0 * t).sin()) / 2.0 * (-t / 0.006).exp())
}

/// A file of so many seconds of what swings between -1 and 1.
fn written(seconds: f64, swing: impl Fn(f64) -> f64) -> Result<Vec<u8>, hound::Error> {
    let spec =
        WavSpec { channels: 1, sample_rate: RATE, bits_per_sample: 8, sample_format: SampleFormat::Int };
    let mut file = Cursor::new(Vec::new());
    let mut writer = WavWriter::new(&mut file, spec)?;
    for sample in 0..(seconds * f64::from(RATE)) as u32 {
        writer.write_sample((swing(f64::from(sample) / f64::from(RATE)) * LOUD) as i8)?;
    }
    writer.finalize()?;
    Ok(file.into_inner())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_are_heard_and_begin_and_end_softly() {
        for (made, seconds) in [(tone(), 0.25), (click(), 0.06)] {
            let made = made.unwrap();
            let mut reader = hound::WavReader::new(made.as_slice()).unwrap();
            let samples: Vec<i8> = reader.samples::<i8>().map(|sample| sample.unwrap()).collect();
            assert_eq!(samples.len(), (seconds * 8000.0) as usize);
            let [first, last] = [samples[0], *samples.last().unwrap()].map(i8::abs);
            assert!(first.max(last) < 4, "{first} {last}");
            assert!(samples.iter().any(|sample| sample.abs() > 20));
        }
    }
}
