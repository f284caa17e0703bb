//! A wire's way across a detail, with its ends where they are: on a screw, or lifted off it.

use bench::Lost;
use plant::{End, Place, Wiring};

use super::layout::{At, SIZE, Strand, bundle, screws, spot, wires};

/// A wire end in a detail.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bare {
    /// Which.
    pub end: End,
    /// Where its bare copper is.
    pub at: At,
    /// On a screw.
    pub landed: bool,
    /// What it is called since it lost its name.
    pub letter: Option<char>,
}

/// A wire as drawn.
#[derive(Clone, PartialEq, Debug)]
pub struct Drawn {
    /// The path's data.
    pub d: String,
    /// Its ends here.
    pub ends: Vec<Bare>,
    /// A place on it, about half way; none where nobody can tell which wire it is.
    pub middle: Option<At>,
}

/// From the screw to the bare copper of a landed wire.
const LANDED: f64 = 27.0;
/// The same of a lifted one.
const LIFTED: f64 = 44.0;
/// Two points lie no closer, where there is any room for it: what a finger can tell apart on a phone.
const NEAR: f64 = 26.2;
/// From one end to the next of those that hang in a row out of a bundle, and from the bundle down to them.
const ROW: f64 = 28.0;
/// Turns off a wire's own way that an end tries until it lies clear of all others, to either side: cosine and sine of 0,
/// 30, 60, 90, 120 and 150 degrees.
const TURNS: [At; 11] = [
    (1.0, 0.0),
    (0.866, 0.5),
    (0.866, -0.5),
    (0.5, 0.866),
    (0.5, -0.866),
    (0.0, 1.0),
    (0.0, -1.0),
    (-0.5, 0.866),
    (-0.5, -0.866),
    (-0.866, 0.5),
    (-0.866, -0.5),
];
/// The least distance from an end to the edge of the detail.
const EDGE: f64 = 12.0;

/// Draws the wires of a place that are there. Each end lies clear of every screw and every other end: landed ones first,
/// each as if none were lifted, so that none moves when another one is lifted. Ends that lost their names come last and by
/// their letters, out of one bundle: neither its place nor its way tells one from another.
pub fn drawn(place: Place, wiring: &Wiring, lost: &[Lost]) -> Vec<(&'static Strand, Drawn)> {
    let letter = |end: End| lost.iter().find(|one| one.end == end).map(|one| one.letter);
    let lifted = |end: End| wiring.joint(end).on.is_none();
    let mut taken: Vec<At> = Vec::new();
    for one in screws(place, wiring.layout).iter().filter(|one| wiring.has_screw(one.screw)) {
        taken.push(one.at);
    }
    let screws = taken.len();
    let there = wires(place, wiring.layout).iter().filter(|one| wiring.exists(one.wire));
    let all: Vec<(&'static Strand, Vec<Way>)> = there.map(|one| (one, ways(place, one, wiring))).collect();
    let mut order: Vec<(usize, Way)> = all.iter().flat_map(|(_, ways)| ways).copied().enumerate().collect();
    taken.resize(screws + order.len(), NOWHERE);
    let mut put = |at: usize, way: &Way, reach: f64| {
        taken[screws + at] = NOWHERE;
        taken[screws + at] = way.clear(reach, &taken);
    };
    for (at, way) in order.iter().filter(|(_, way)| letter(way.end).is_none() || lifted(way.end)) {
        put(*at, way, LANDED);
    }
    quantity::sort::sort_by_key(&mut order, |(_, way)| letter(way.end));
    let knot = bundle(place);
    for (at, way) in &order {
        match (lifted(way.end), letter(way.end)) {
            (true, None) => put(*at, way, LIFTED.min(way.length * 0.8)),
            (false, Some(_)) => put(*at, &Way::of(way.end, way.screw, knot), LANDED),
            _ => {}
        }
    }
    let row: Vec<usize> = order
        .iter()
        .filter(|(_, way)| lifted(way.end) && letter(way.end).is_some())
        .map(|(at, _)| *at)
        .collect();
    for (nth, at) in row.iter().enumerate() {
        let across = nth as f64 - (row.len() as f64 - 1.0) / 2.0;
        taken[screws + at] = (knot.0 + across * ROW, knot.1 + ROW);
    }
    let mut ends = taken.into_iter().skip(screws);
    let mut drawn = Vec::new();
    for (strand, ways) in all {
        let ends: Vec<Bare> = ways
            .iter()
            .zip(&mut ends)
            .map(|(way, at)| Bare { end: way.end, at, landed: !lifted(way.end), letter: letter(way.end) })
            .collect();
        let Some(first) = ends.first() else { continue };
        let mut d = String::new();
        let mut middle = None;
        let mut pass = |path: &[At]| {
            d.push_str(&smooth(path));
            // A rounded corner's curve ends half way to the next one.
            let (a, b) = (path[(path.len() - 1) / 2], path[path.len().div_ceil(2)]);
            ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0)
        };
        if ends.iter().any(|one| one.letter.is_some()) {
            for (at, one) in ends.iter().enumerate() {
                let via = if at == 0 { strand.via.first() } else { strand.via.last() };
                match via.filter(|_| one.letter.is_none()) {
                    Some(via) => middle = Some(pass(&[one.at, *via, knot])),
                    None => drop(pass(&[one.at, knot])),
                }
            }
        } else {
            let mut path = vec![first.at];
            path.extend_from_slice(strand.via);
            path.extend(ends.get(1).map(|last| last.at));
            middle = Some(pass(&path));
        }
        // The wire goes through each bare end, and from there straight to its screw.
        for (bare, way) in ends.iter().zip(&ways).filter(|(bare, _)| bare.landed) {
            let (screw, at) = (way.screw, bare.at);
            d.push_str(&format!("M{:.1} {:.1}L{:.1} {:.1}", screw.0, screw.1, at.0, at.1));
        }
        drawn.push((strand, Drawn { d, ends, middle }));
    }
    drawn
}

/// Far from everything.
const NOWHERE: At = (f64::INFINITY, 0.0);

/// An end with the screw that it is drawn at, and the way that its wire goes from there.
#[derive(Clone, Copy)]
struct Way {
    end: End,
    screw: At,
    along: At,
    length: f64,
}

impl Way {
    /// From its screw towards somewhere.
    fn of(end: End, screw: At, to: At) -> Self {
        let length = apart(screw, to).max(1.0);
        Self { end, screw, along: ((to.0 - screw.0) / length, (to.1 - screw.1) / length), length }
    }

    /// The first place at a distance from the screw that lies clear of all others; else the clearest one.
    fn clear(&self, reach: f64, taken: &[At]) -> At {
        let mut best = (0.0, self.screw);
        for turn in TURNS {
            let (cos, sin) = (turn.0 * reach, turn.1 * reach);
            let (x, y) = self.along;
            let at = (self.screw.0 + x * cos - y * sin, self.screw.1 + y * cos + x * sin);
            let inside = |x: f64, most: f64| (EDGE..=most - EDGE).contains(&x);
            if !inside(at.0, SIZE.0) || !inside(at.1, SIZE.1) {
                continue;
            }
            let far = taken.iter().map(|one| apart(*one, at)).fold(f64::INFINITY, f64::min);
            if far >= NEAR {
                return at;
            }
            if far > best.0 {
                best = (far, at);
            }
        }
        best.1
    }
}

fn apart(a: At, b: At) -> f64 {
    let (dx, dy) = (a.0 - b.0, a.1 - b.1);
    (dx * dx + dy * dy).sqrt()
}

/// The ends of a wire here; none where nothing of it can be here.
fn ways(place: Place, strand: &Strand, wiring: &Wiring) -> Vec<Way> {
    let first = End { wire: strand.wire, side: strand.side.unwrap_or(0) };
    let last = strand.side.is_none().then_some(End { wire: strand.wire, side: 1 });
    // The screw an end is drawn at: where it is landed, else where it belongs.
    let seat = |end: End| spot(place, wiring.layout, wiring.joint(end).on.unwrap_or_else(|| end.home()));
    let way = |end: End, towards: Option<At>| Some(Way::of(end, seat(end)?, towards?));
    let from = way(first, strand.via.first().copied().or_else(|| seat(last?)));
    let to = last.map(|end| way(end, strand.via.last().copied().or_else(|| seat(first))));
    // Half a wire is none.
    let all: Option<Vec<Way>> = std::iter::once(from).chain(to).collect();
    all.unwrap_or_default()
}

/// A path with its corners rounded.
fn smooth(way: &[At]) -> String {
    let mut d = String::new();
    let Some((start, rest)) = way.split_first() else { return d };
    d.push_str(&format!("M{:.1} {:.1}", start.0, start.1));
    for pair in rest.windows(2) {
        if let [corner, next] = pair {
            let middle = ((corner.0 + next.0) / 2.0, (corner.1 + next.1) / 2.0);
            d.push_str(&format!("Q{:.1} {:.1} {:.1} {:.1}", corner.0, corner.1, middle.0, middle.1));
        }
    }
    if let Some(stop) = rest.last() {
        d.push_str(&format!("L{:.1} {:.1}", stop.0, stop.1));
    }
    d
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use plant::{Screw, Wire};

    /// At the scale of a phone's smallest detail, 304 pixels high, two points lie no nearer than WCAG 2.2 asks of targets
    /// that are smaller than theirs (2.5.8, spacing: circles of 24 pixels do not meet); a press goes to the nearer one.
    #[test]
    fn no_two_points_lie_closer_than_a_finger_can_tell() {
        const LEAST: f64 = 24.0 / (304.0 / 330.0);
        let mut near = BTreeSet::new();
        let mut check = |wiring: &Wiring, place: Place, how: &str| {
            let fixed = screws(place, wiring.layout).iter().filter(|one| wiring.has_screw(one.screw));
            let ends = drawn(place, wiring, &[]).into_iter().flat_map(|(_, one)| one.ends);
            let all: Vec<(String, At)> = fixed
                .map(|one| (one.screw.to_string(), one.at))
                .chain(ends.map(|one| (one.end.to_string(), one.at)))
                .collect();
            for (at, (a, first)) in all.iter().enumerate() {
                for (b, second) in &all[at + 1..] {
                    let far = apart(*first, *second);
                    if far < LEAST {
                        near.insert(format!("{}, {place}: {a} and {b}{how}, {far:.1}", wiring.layout));
                    }
                }
            }
        };
        for model in plant::HeaterModel::ALL {
            let plate = model.plate();
            for (boxed, second) in [(false, false), (true, false), (false, true)] {
                let mut wiring = Wiring::factory(plate.layout, plate.supply().hot_neutral());
                (wiring.boxed, wiring.second_source) = (boxed, second);
                for &place in Place::ALL {
                    check(&wiring, place, "");
                    for end in End::all().filter(|end| wiring.exists(end.wire) && end.home().place() == place)
                    {
                        let mut lifted = wiring.clone();
                        lifted.joint_mut(end).on = None;
                        check(&lifted, place, &format!(", {end} lifted"));
                    }
                }
            }
        }
        assert!(near.is_empty(), "{near:#?}");
    }

    fn ends_of(wire: Wire, wiring: &Wiring) -> Vec<Bare> {
        let all = drawn(Place::UpperCompartment, wiring, &[]);
        all.into_iter().find(|(strand, _)| strand.wire == wire).unwrap().1.ends
    }

    #[test]
    fn a_lifted_end_lies_off_its_screw_and_a_landed_one_on_it() {
        let mut wiring = Wiring::factory(plant::Layout::NonSimultaneous, false);
        let of = |wiring: &Wiring| ends_of(Wire::UpperSwitched, wiring);
        let before = of(&wiring);
        assert!(before.iter().all(|one| one.landed) && before.len() == 2);
        let others = ends_of(Wire::UpperPermanent, &wiring);
        let end = End { wire: Wire::UpperSwitched, side: 1 };
        wiring.joint_mut(end).on = None;
        let lifted = of(&wiring);
        assert!(!lifted[1].landed && lifted[1].at != before[1].at && lifted[0] == before[0]);
        // No other one moves.
        assert_eq!(ends_of(Wire::UpperPermanent, &wiring), others);
        // On another screw it is drawn there.
        wiring.joint_mut(end).on = Some(Screw::UEb);
        assert_ne!(of(&wiring)[1].at, before[1].at);
    }

    /// Whatever three of the leads hang together: they hang in one row, clear of every screw, in the order of their letters.
    #[test]
    fn ends_that_lost_their_names_hang_together_and_nothing_tells_them_apart() {
        let place = Place::UpperCompartment;
        for model in plant::HeaterModel::ALL {
            let plate = model.plate();
            let wiring = Wiring::factory(plate.layout, plate.supply().hot_neutral());
            let lead = |end: &End| {
                let strand = wires(place, wiring.layout).iter().find(|one| one.wire == end.wire);
                strand.is_some_and(|one| one.class != "strap" && one.side.is_none_or(|side| side == end.side))
            };
            let there = |end: &End| wiring.exists(end.wire) && end.home().place() == place && lead(end);
            let leads: Vec<End> = End::all().filter(there).collect();
            assert!(leads.len() >= 4, "{model}");
            for at in 0..leads.len() {
                let three = [0, 1, 2].map(|more| leads[(at + more) % leads.len()]);
                let at_letters = |letters: [char; 3]| {
                    let mut wiring = wiring.clone();
                    three.iter().for_each(|end| wiring.joint_mut(*end).on = None);
                    let lost = three.iter().zip(letters);
                    let lost: Vec<Lost> = lost
                        .map(|(&end, letter)| Lost { end, letter, since: quantity::Seconds(0.0) })
                        .collect();
                    let ends = drawn(place, &wiring, &lost).into_iter().flat_map(|(_, one)| one.ends);
                    let mut loose: Vec<(char, At)> =
                        ends.filter_map(|one| one.letter.map(|letter| (letter, one.at))).collect();
                    loose.sort_by_key(|(letter, _)| *letter);
                    loose
                };
                let loose = at_letters(['A', 'B', 'C']);
                assert_eq!(loose, at_letters(['C', 'A', 'B']), "{model} {three:?}");
                for (_, a) in &loose {
                    let near = loose.iter().map(|(_, b)| apart(*a, *b)).filter(|far| *far > 0.0);
                    let screws = screws(place, wiring.layout).iter().map(|one| apart(*a, one.at));
                    assert!(near.chain(screws).all(|far| far >= NEAR), "{model} {three:?}");
                    assert!((a.1 - loose[0].1.1).abs() < 1e-9, "{model} {three:?}");
                }
            }
        }
    }
}
