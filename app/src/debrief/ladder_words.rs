//! What the ladder says in words: names of its parts, how each stands, what each element gets.

use drill::debrief::{Part, Path, Stand};
use plant::{ContactAt, Level};
use words::Voice;

use super::ladder::RUNS;
use super::sheet::Sheet;

/// What each element gets, and which wires are not where they belong.
pub fn in_words(voice: &Voice, sheet: &Sheet, path: &Path) -> Vec<String> {
    let pieces = || sheet.picture.ladder.pieces().zip(&path.pieces);
    let mut all = Vec::new();
    for &level in sheet.levels() {
        let found = pieces().find(|(piece, _)| piece.part == Part::Element(level));
        let Some((piece, stand)) = found else { continue };
        let element = sheet.fit(voice, &format!("debrief-element-{level}"));
        let id = match () {
            () if stand.amps.get() > RUNS => "debrief-ladder-heats",
            () if piece.ends.iter().any(|screw| path.live.contains(screw)) => "debrief-ladder-waits",
            () => "debrief-ladder-off",
        };
        all.push(voice.filled(
            id,
            &[("element", element.clone().into()), ("amps", voice.units().amps(stand.amps).into())],
        ));
        let leak = path.to_shell.get(level.index()).copied().unwrap_or_default();
        if leak.get() > 0.05 {
            let amps = voice.units().amps(leak);
            all.push(
                voice.filled("debrief-ladder-shell", &[("element", element.into()), ("amps", amps.into())]),
            );
        }
    }
    all.extend(path.astray.iter().map(|(end, on)| match on {
        None => voice.filled("debrief-ladder-lifted", &[("end", voice.end(*end).into())]),
        Some(on) => voice.filled(
            "debrief-ladder-astray",
            &[("end", voice.end(*end).into()), ("screw", voice.screw(*on).into())],
        ),
    }));
    all
}

/// What a part is called.
pub fn name(voice: &Voice, sheet: &Sheet, part: Part) -> String {
    match part {
        Part::Breaker { slot, .. } => voice.filled("debrief-ladder-breaker", &[("slot", (slot + 1).into())]),
        Part::Blade { leg } => voice.text(match leg {
            0 | 1 => "debrief-ladder-box",
            _ => "debrief-ladder-relay",
        }),
        Part::Limit(_) | Part::LowerLimit { .. } => voice.text("debrief-ladder-limit"),
        Part::Contact(ContactAt::LowerCold) => sheet.fit(voice, "debrief-control-lower"),
        Part::Contact(_) => sheet.fit(voice, "debrief-control-upper"),
        Part::Element(Level::Upper) => sheet.fit(voice, "debrief-element-upper"),
        Part::Element(Level::Lower) => voice.text("debrief-element-lower"),
        Part::Board => voice.text("debrief-ladder-board"),
        Part::Wire(_) => String::new(),
    }
}

/// How a part stands.
pub fn stands(voice: &Voice, part: Part, stand: Stand, live: bool) -> String {
    voice.text(match (part, stand.closed) {
        (Part::Element(_), _) if stand.amps.get() > RUNS => return voice.units().amps(stand.amps),
        (Part::Element(_), true) if live => "debrief-ladder-live-short",
        (Part::Element(_), true) => "debrief-ladder-whole",
        (Part::Element(_), false) => "debrief-ladder-broken",
        (Part::Board, true) => "debrief-ladder-powered",
        (Part::Board, false) => "debrief-ladder-dead",
        (_, true) => "debrief-ladder-closed",
        (_, false) => "debrief-ladder-open",
    })
}
