//! The matrix of all pairs as the docs show it: a page with figures and classes, a table, a picture.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::fs;

use bench::Action;
use plant::HeaterModel;
use plant::fault::FaultId;
use tankwright_tests::tree;
use words::{Units, Voice};

use crate::{Pair, Told, enough, one_repair};

/// Side of a square of the picture, and room for the names.
const SIDE: usize = 9;
const MARGIN: usize = 30;

/// A pair's ink and its shape within a square: a triangle where one repair serves both, a full square where they are told
/// apart in every drawing, a diamond where in enough of them, a cross where missed.
const MARKS: [(&str, &str); 4] = [
    ("#8794a0", "m0 8h8l-4-8z"),
    ("#2c6e8f", "h8v8h-8z"),
    ("#c27d0e", "m4 0l4 4-4 4-4-4z"),
    ("#b3261e", "l3 4-3 4h2l2-3 2 3h2l-3-4 3-4h-2l-2 3-2-3z"),
];

/// All heaters together.
#[derive(Default)]
pub struct Table {
    pairs: BTreeMap<Pair, Told>,
    asked: usize,
    /// Told apart in too few drawings: heater, pair, how many.
    pub missed: Vec<String>,
}

impl Table {
    /// One pair in one heater.
    pub fn enter(&mut self, heater: HeaterModel, pair: Pair, told: &Told) {
        if !one_repair(pair) {
            self.asked += 1;
            if !enough(told) {
                self.missed.push(format!("{heater} {} {} {}/{}", pair.0, pair.1, told.told, told.drawn));
            }
        }
        let all = self.pairs.entry(pair).or_default();
        all.drawn += told.drawn;
        all.told += told.told;
        all.one += told.one;
        all.missed |= !one_repair(pair) && !enough(told);
        told.by.iter().for_each(|(act, n)| *all.by.entry(act.clone()).or_default() += n);
    }

    /// Pairs drawn less than thirty times in all.
    pub fn rare(&self) -> Vec<String> {
        let rare = self.pairs.iter().filter(|(_, told)| told.drawn < crate::DRAWINGS);
        rare.map(|((a, b), told)| format!("{a} {b}: {}", told.drawn)).collect()
    }

    /// Writes the page and what belongs to it.
    pub fn write(&self) {
        let folder = tree::root().join("docs/atlas");
        fs::create_dir_all(&folder).unwrap();
        fs::write(folder.join("pairs.csv"), self.csv()).unwrap();
        // The page's atlas shows the picture too.
        fs::write(tree::root().join("assets/asked/pairs.svg"), self.picture()).unwrap();
        fs::write(folder.join("pairs.md"), self.page()).unwrap();
    }

    fn csv(&self) -> String {
        let voice = Voice::english(Units::Customary);
        let mut csv = String::from(
            "first,second,drawn,told apart,else one repair,always one repair,act that tells most often\n",
        );
        for ((a, b), told) in &self.pairs {
            let best = told.by.iter().max_by_key(|(_, n)| **n).map(|(act, _)| act);
            let best = best.and_then(|act| serde_json::from_str::<Action>(act).ok());
            let best = best.map_or_else(String::new, |act| voice.action(&act)).replace('"', "\"\"");
            let one = if one_repair((*a, *b)) { "yes" } else { "no" };
            let _ = writeln!(csv, "{a},{b},{},{},{},{one},\"{best}\"", told.drawn, told.told, told.one);
        }
        csv
    }

    fn mark(pair: Pair, told: &Told) -> usize {
        match () {
            () if one_repair(pair) => 0,
            () if told.missed => 3,
            () if told.told == told.drawn => 1,
            () => 2,
        }
    }

    /// A mark for each pair that fits one heater, one path for each kind.
    fn picture(&self) -> String {
        let count = FaultId::ALL.len();
        let size = MARGIN + count * SIDE + SIDE;
        let mut paths = [const { String::new() }; MARKS.len()];
        let place = |id: FaultId| FaultId::ALL.iter().position(|one| *one == id).unwrap_or(0);
        for (pair, told) in &self.pairs {
            let (x, y) = (MARGIN + place(pair.0) * SIDE, MARGIN + place(pair.1) * SIDE);
            let mark = Self::mark(*pair, told);
            let _ = write!(paths[mark], "M{x} {y}{}", MARKS[mark].1);
        }
        let mut svg = format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {size} {size}\" font-family=\"sans-serif\" \
             font-size=\"7\" fill=\"#333\">\n<rect width=\"{size}\" height=\"{size}\" fill=\"#fffdf7\"/>\n"
        );
        for (path, (ink, _)) in paths.iter().zip(MARKS) {
            let _ = writeln!(svg, "<path fill=\"{ink}\" d=\"{path}\"/>");
        }
        for id in FaultId::ALL.iter().copied() {
            let at = MARGIN + place(id) * SIDE;
            let base = at + SIDE - 2;
            let _ = writeln!(svg, "<text x=\"4\" y=\"{base}\">{id}</text>");
            let _ = writeln!(svg, "<text transform=\"translate({base} {}) rotate(-60)\">{id}</text>", at - 3);
        }
        svg.push_str("</svg>\n");
        svg
    }

    fn page(&self) -> String {
        let voice = Voice::english(Units::Customary);
        let drawn: u32 =
            self.pairs.iter().filter(|(pair, _)| !one_repair(**pair)).map(|(_, told)| told.drawn).sum();
        let mut page = format!(
            "# Which two faults can be told apart\n\nEach pair of faults was put into thirty houses of each heater that can have \
             both (those of a season on its days, those of a box in the line where one is), and every look, reading and wait \
             of {rounds} rounds walked ({drawn} pairs of walks that ask for two repairs). Of \
             {} pairs in one heater that ask for two repairs {} are told apart, by more than the meter's error, in at least 29 \
             of 30 drawings. Where a fault of a thermostat or an element may sit above or below, a drawing in which both \
             faults ask for the same part counts as one repair. Written by `cargo test --release -p tankwright-tests --test pairs \
             -- --ignored thirty`; every pair with the act that tells it most often: `pairs.csv`.\n\n![a mark for each pair of faults](../../assets/asked/pairs.svg)\n\nA \
             full square: told apart in every drawing. A diamond: in all but one of thirty, or else one part to change. A \
             triangle: one repair serves both. A cross: missed. No mark: no house of the run had both.\n",
            self.asked,
            self.asked - self.missed.len(),
            rounds = diagnosis::Round::ALL.len(),
        );
        page.push_str("\n## One repair serves both\n\n| first | second |\n|---|---|\n");
        for (a, b) in self.pairs.keys().filter(|pair| one_repair(**pair)) {
            let _ = writeln!(page, "| {a} {} | {b} {} |", voice.fault(*a), voice.fault(*b));
        }
        page.push_str("\n## Told apart, or one part to change, in less than every drawing\n\n| first | second | drawn | told apart | else one repair |\n|---|---|---|---|---|\n");
        let hard = |(pair, told): &(&Pair, &Told)| !one_repair(**pair) && told.told < told.drawn;
        for ((a, b), told) in self.pairs.iter().filter(hard) {
            let _ = writeln!(
                page,
                "| {a} {} | {b} {} | {} | {} | {} |",
                voice.fault(*a),
                voice.fault(*b),
                told.drawn,
                told.told,
                told.one
            );
        }
        if !self.missed.is_empty() {
            let _ = writeln!(page, "\n## Missed\n\n{}", self.missed.join("\n"));
        }
        page
    }
}
