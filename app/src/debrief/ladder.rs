//! The heater's circuit as a ladder at the chosen moment: what is live drawn thick, what carries current drawn double.

use std::rc::Rc;

use drill::debrief::{Part, Path, Piece, Rails, Stand};
use plant::Screw;
use yew::prelude::*;

use super::drawing::{clock, use_width};
use super::ladder_words::{in_words, name, stands};
use super::sheet::Sheet;
use super::svg::{px, stroke, word};
use super::symbols::symbol;
use crate::said::use_voice;

/// The widest and the narrowest it is drawn.
const WIDEST: f64 = 620.0;
const NARROWEST: f64 = 300.0;
/// From the edge to a rail: room for the screws' names.
const MARGIN: f64 = 38.0;
/// Height of a wire and of a part in a rail, and of a rung.
const WIRE: f64 = 20.0;
const PART: f64 = 44.0;
const RUNG: f64 = 100.0;
/// Above the rails.
const HEAD: f64 = 30.0;
/// Half the length of a part in a rung.
const HALF: f64 = 22.0;
/// Current that is drawn.
pub const RUNS: f64 = 0.3;

/// The job and the moment that is looked at.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// The chosen sample.
    pub at: usize,
    /// The sample that is told in words.
    pub told: usize,
}

/// The ladder with its key and what it says in words.
#[component]
pub fn LadderView(props: &Props) -> Html {
    let voice = use_voice();
    let frame = use_node_ref();
    let width = use_width(&frame);
    let sheet = &props.sheet;
    let Some(width) = width.map(|width| width.clamp(NARROWEST, WIDEST)) else {
        return html! { <section class="ladder" ref={frame} /> };
    };
    let Some(now) = sheet.picture.samples.get(props.at) else { return html! {} };
    let mut drawn = Drawn {
        sheet,
        path: &now.path,
        stands: now.path.pieces.iter(),
        width,
        y: 0.0,
        ink: Vec::new(),
        dots: Vec::new(),
    };
    for rails in &sheet.picture.ladder.circuits {
        drawn.rails(&voice, rails);
    }
    let Drawn { y: height, ink, dots, .. } = drawn;
    let Some(told) = sheet.picture.samples.get(props.told) else { return html! {} };
    let said = voice.filled("debrief-ladder", &[("clock", clock(sheet, told.at).into())]);
    let key = |class: &'static str, id: &str| {
        html! {
            <span>
                <svg width="34" height="12" aria-hidden="true">{ way(class, "M2 6H32".to_owned()) }</svg>
                { voice.text(id) }
            </span>
        }
    };
    html! {
        <section class="ladder" ref={frame}>
            <h2>{ &said }</h2>
            <svg viewBox={format!("0 0 {width:.0} {height:.0}")} width={px(width)} height={px(height)} role="img" aria-label={said.clone()}>
                { for ink }{ for dots }
            </svg>
            <p class="key">
                { key("dead", "debrief-ladder-dead") }
                { key("live", "debrief-ladder-live") }
                { key("runs", "debrief-ladder-runs") }
            </p>
            <ul>{ for in_words(&voice, sheet, &told.path).into_iter().map(|one| html! { <li>{ one }</li> }) }</ul>
        </section>
    }
}

/// A conductor: thin, thick, or double where current flows.
fn way(class: &'static str, path: String) -> Html {
    html! {
        <>
            { stroke(classes!("way", class), path.clone()) }
            if class == "runs" { { stroke("core", path) } }
        </>
    }
}

/// The drawing as it grows downwards.
struct Drawn<'a> {
    sheet: &'a Sheet,
    path: &'a Path,
    stands: std::slice::Iter<'a, Stand>,
    width: f64,
    y: f64,
    ink: Vec<Html>,
    /// Screws, drawn over everything.
    dots: Vec<Html>,
}

/// A piece with how it stands.
type Standing<'a> = (&'a Piece, Stand);

impl<'a> Drawn<'a> {
    fn live(&self, screw: Screw) -> bool {
        self.path.live.contains(&screw)
    }

    fn class(&self, ends: &[Screw], amps: f64) -> &'static str {
        match () {
            () if amps > RUNS => "runs",
            () if ends.iter().any(|screw| self.live(*screw)) => "live",
            () => "dead",
        }
    }

    /// The next pieces with how they stand: the same order as the ladder tells them in.
    fn standing(&mut self, pieces: &'a [Piece]) -> Vec<Standing<'a>> {
        let none = Stand { closed: false, amps: quantity::Amps(0.0) };
        pieces.iter().map(|piece| (piece, self.stands.next().copied().unwrap_or(none))).collect()
    }

    fn rails(&mut self, voice: &words::Voice, of: &'a Rails) {
        let [one, two] = &of.rails;
        let rails = [self.standing(one), self.standing(two)];
        let [one, two] = &of.second;
        let second = [self.standing(one), self.standing(two)];
        let rungs: Vec<_> = of.rungs.iter().map(|rung| self.standing(rung)).collect();
        if !of.second[0].is_empty() {
            self.pair(voice, &second);
            self.y += 14.0;
        }
        let from = self.pair(voice, &rails);
        let feet = of.rails.each_ref().map(|rail| rail.last().map(|piece| piece.ends[1]));
        // Each rail goes on down past the rungs; what hangs lower is carried by it.
        let mut above = from;
        for at in 0..rungs.len() {
            let y = from + 34.0 + RUNG * at as f64;
            for (side, x) in [MARGIN, self.width - MARGIN].into_iter().enumerate() {
                let Some(foot) = feet.get(side).copied().flatten() else { continue };
                let end = |rung: &Vec<Standing>| {
                    if side == 0 { rung.first() } else { rung.last() }.map_or(0.0, |one| one.1.amps.get())
                };
                let below = rungs.iter().skip(at).map(end).fold(0.0, f64::max);
                let class = self.class(&[foot], below);
                self.ink.push(way(class, format!("M{x:.1} {above:.1}V{y:.1}")));
            }
            above = y;
        }
        for (at, rung) in rungs.iter().enumerate() {
            self.rung(voice, rung, from + 34.0 + RUNG * at as f64);
        }
        self.y = above + 78.0;
    }

    /// Two rails from their heads down; where they end.
    fn pair(&mut self, voice: &words::Voice, rails: &[Vec<Standing>; 2]) -> f64 {
        let long = |piece: &Piece| if matches!(piece.part, Part::Wire(_)) { WIRE } else { PART };
        let length = |rail: &Vec<Standing>| rail.iter().map(|(piece, _)| long(piece)).sum::<f64>();
        let longest = rails.iter().map(length).fold(0.0, f64::max);
        let head = self.y + HEAD;
        for (side, rail) in rails.iter().enumerate() {
            let right = side == 1;
            let x = if right { self.width - MARGIN } else { MARGIN };
            let (out, inner) = if right { ("ax screw-name", "end") } else { ("ax screw-name end", "") };
            let (to_out, to_in) = if right { (9.0, -20.0) } else { (-9.0, 22.0) };
            let leg = self.sheet.rail(voice, side);
            self.ink.push(word(
                if right { "lab end" } else { "lab" },
                if right { x + 30.0 } else { x - 30.0 },
                head - 14.0,
                leg,
            ));
            let mut y = head;
            // The first wire makes up for what the other rail has more.
            let mut more = longest - length(rail);
            for (piece, stand) in rail {
                let wire = matches!(piece.part, Part::Wire(_));
                let tall = long(piece) + if wire { std::mem::take(&mut more) } else { 0.0 };
                self.piece(piece, *stand, [x, y], [x, y + tall]);
                // A relay's cable begins and ends at one screw: its name stands below.
                if piece.ends[0] != piece.ends[1] {
                    self.ink.push(word(out, x + to_out, y + 4.0, piece.ends[0].name()));
                }
                if !wire {
                    let middle = y + tall / 2.0;
                    let label = if inner.is_empty() { ("lab", "sub") } else { ("lab end", "sub end") };
                    self.ink.push(word(
                        label.0,
                        x + to_in,
                        middle - 1.0,
                        name(voice, self.sheet, piece.part),
                    ));
                    self.ink.push(word(
                        label.1,
                        x + to_in,
                        middle + 13.0,
                        stands(voice, piece.part, *stand, false),
                    ));
                }
                y += tall;
            }
            if let Some((piece, _)) = rail.last() {
                self.ink.push(word(out, x + to_out, y + 4.0, piece.ends[1].name()));
            }
        }
        self.y = head + longest;
        self.y
    }

    fn rung(&mut self, voice: &words::Voice, rung: &[Standing], y: f64) {
        let (left, right) = (MARGIN, self.width - MARGIN);
        let column = |part: Part| match part {
            Part::Contact(plant::ContactAt::UpperCold | plant::ContactAt::UpperHot) => Some(0.22),
            Part::Contact(_) | Part::Board => Some(0.51),
            Part::Element(_) => Some(0.80),
            _ => None,
        };
        let centre = |part: Part| column(part).map(|share| left + share * (right - left));
        let mut x = left;
        for (at, (piece, stand)) in rung.iter().enumerate() {
            let Some(middle) = centre(piece.part) else {
                // A wire: up to the next part, or to the rail.
                let next = rung.get(at + 1).and_then(|(piece, _)| centre(piece.part));
                let end = next.map_or(right, |middle| middle - HALF);
                self.piece(piece, *stand, [x, y], [end, y]);
                x = end;
                continue;
            };
            let from = middle - HALF;
            if x < from - 0.5 {
                // Nothing but the screw's own metal up to the part.
                let class = self.class(&[piece.ends[0]], stand.amps.get());
                self.ink.push(way(class, format!("M{x:.1} {y:.1}H{from:.1}")));
            }
            x = middle + HALF;
            self.piece(piece, *stand, [from, y], [x, y]);
            for (screw, at) in piece.ends.iter().zip([from, x]) {
                self.ink.push(word("ax screw-name mid", at, y - 13.0, screw.name()));
            }
            let name = name(voice, self.sheet, piece.part);
            let (first, rest) = name.split_once(' ').unwrap_or((&name, ""));
            self.ink.push(word("lab mid", middle, y + 25.0, first.to_owned()));
            self.ink.push(word("lab mid", middle, y + 39.0, rest.to_owned()));
            let below = if rest.is_empty() { 39.0 } else { 53.0 };
            let live = self.class(&piece.ends, 0.0) == "live";
            let said = stands(voice, piece.part, *stand, live);
            self.ink.push(word("sub mid", middle, y + below, said));
        }
    }

    /// A piece from here to there; a wire that is off its screw has a gap.
    fn piece(&mut self, piece: &Piece, stand: Stand, [x, y]: [f64; 2], [to_x, to_y]: [f64; 2]) {
        self.dot(x, y);
        self.dot(to_x, to_y);
        let class = self.class(&piece.ends, stand.amps.get());
        if !matches!(piece.part, Part::Wire(_)) {
            let ends = piece.ends.map(|screw| self.class(&[screw], 0.0));
            let turn = if to_x > x { 0 } else { 90 };
            let place = format!("translate({:.1} {:.1}) rotate({turn})", (x + to_x) / 2.0, (y + to_y) / 2.0);
            let leak = match piece.part {
                Part::Element(level) => {
                    self.path.to_shell.get(level.index()).is_some_and(|amps| amps.get() > 0.05)
                }
                _ => false,
            };
            self.ink.push(symbol(piece.part, stand.closed, class, ends, leak, place));
            return;
        }
        if stand.closed {
            self.ink.push(way(class, format!("M{x:.1} {y:.1}L{to_x:.1} {to_y:.1}")));
        } else {
            let (dx, dy) = ((to_x - x) * 0.36, (to_y - y) * 0.36);
            let [one, two] = piece.ends.map(|screw| self.class(&[screw], 0.0));
            self.ink.push(way(one, format!("M{x:.1} {y:.1}l{dx:.1} {dy:.1}")));
            self.ink.push(way(two, format!("M{to_x:.1} {to_y:.1}l{:.1} {:.1}", -dx, -dy)));
            for (x, y) in [(x + dx, y + dy), (to_x - dx, to_y - dy)] {
                self.ink.push(html! { <circle class="lifted" cx={px(x)} cy={px(y)} r="3.5" /> });
            }
        }
    }

    fn dot(&mut self, x: f64, y: f64) {
        self.dots.push(html! { <circle class="dot" cx={px(x)} cy={px(y)} r="3.2" /> });
    }
}
