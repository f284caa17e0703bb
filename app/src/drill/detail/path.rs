//! A wire's way across a detail, with its ends where they are: on a screw, or lifted off it.

use plant::{End, Place, Screw, Wiring};

use super::layout::{At, Strand, spot};

/// A wire end in a detail.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bare {
    /// Which.
    pub end: End,
    /// Where its bare copper is.
    pub at: At,
    /// On a screw.
    pub landed: bool,
}

/// A wire as drawn.
#[derive(Clone, PartialEq, Debug)]
pub struct Drawn {
    /// The path's data.
    pub d: String,
    /// Its ends here.
    pub ends: Vec<Bare>,
    /// A place on it, about half way.
    pub middle: At,
}

/// From the screw to the bare copper of a landed wire.
const LANDED: f64 = 25.0;
/// The same of a lifted one.
const LIFTED: f64 = 44.0;

/// Draws a wire. `None` when nothing of it can be here.
pub fn draw(place: Place, strand: &Strand, wiring: &Wiring) -> Option<Drawn> {
    let first = End { wire: strand.wire, side: strand.side.unwrap_or(0) };
    let mut way = Vec::new();
    let mut ends = Vec::new();
    let last = strand.side.is_none().then_some(End { wire: strand.wire, side: 1 });
    let far = last.and_then(|end| spot(place, wiring.layout, seat(end, wiring)));
    let next = strand.via.first().copied().or(far)?;
    let (start, bare) = leave(place, first, next, wiring)?;
    way.push(start);
    ends.push(bare);
    way.extend_from_slice(strand.via);
    if let Some(end) = last {
        let from = strand.via.last().copied().unwrap_or(start);
        let (stop, bare) = leave(place, end, from, wiring)?;
        way.push(stop);
        ends.push(bare);
    }
    // A rounded corner's curve ends half way to the next one.
    let (a, b) = way.windows(2).nth((way.len() - 1) / 2).map_or((start, start), |pair| (pair[0], pair[1]));
    Some(Drawn { d: smooth(&way), ends, middle: ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0) })
}

/// The screw an end is drawn at: where it is landed, else where it belongs.
fn seat(end: End, wiring: &Wiring) -> Screw {
    wiring.joint(end).on.unwrap_or_else(|| end.home())
}

/// Where the path leaves an end towards a point, and where its copper is.
fn leave(place: Place, end: End, towards: At, wiring: &Wiring) -> Option<(At, Bare)> {
    let landed = wiring.joint(end).on.is_some();
    let screw = spot(place, wiring.layout, seat(end, wiring))?;
    let (dx, dy) = (towards.0 - screw.0, towards.1 - screw.1);
    let length = (dx * dx + dy * dy).sqrt().max(1.0);
    let reach = if landed { LANDED } else { LIFTED.min(length * 0.8) };
    let at = (screw.0 + dx / length * reach, screw.1 + dy / length * reach);
    Some((if landed { screw } else { at }, Bare { end, at, landed }))
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
    use super::super::layout::wires;
    use super::*;
    use plant::Wire;

    #[test]
    fn a_lifted_end_lies_off_its_screw_and_a_landed_one_on_it() {
        let mut wiring = Wiring::factory(plant::Layout::NonSimultaneous, false);
        let place = Place::UpperCompartment;
        let strand = wires(place, wiring.layout).iter().find(|one| one.wire == Wire::UpperSwitched).unwrap();
        let drawn = draw(place, strand, &wiring).unwrap();
        assert!(drawn.ends.iter().all(|one| one.landed) && drawn.ends.len() == 2);
        let end = End { wire: Wire::UpperSwitched, side: 1 };
        wiring.joint_mut(end).on = None;
        let lifted = draw(place, strand, &wiring).unwrap();
        assert!(!lifted.ends[1].landed && lifted.d != drawn.d);
        // On another screw it is drawn there.
        wiring.joint_mut(end).on = Some(Screw::UEb);
        assert_ne!(draw(place, strand, &wiring).unwrap().ends[1].at, drawn.ends[1].at);
    }
}
