//! The points there are: a second cable counts only once it can be seen.

use bench::{Cover, Session};
use plant::{End, Place, Point, Screw, Wire};

/// Whether a wire end is there and could be seen by now.
fn end_is_there(session: &Session, end: End) -> bool {
    let second = matches!(end.wire, Wire::SecondA | Wire::SecondB);
    session.home.plant.wiring.exists(end.wire) && (!second || second_seen(session, end.home().place()))
}

fn second_seen(session: &Session, place: Place) -> bool {
    let cover = match place {
        Place::LoadCenter => Cover::PanelFront,
        _ => Cover::JunctionBox,
    };
    session.home.plant.wiring.second_source && session.access.off.contains(&cover)
}

/// The wire ends there are and have their names.
pub fn named(session: &Session) -> Vec<End> {
    let lost = session.lost();
    let known = |end: &End| end_is_there(session, *end) && lost.iter().all(|one| one.end != *end);
    End::all().filter(known).collect()
}

/// The wire ends there are: those that lost their names last, in the order of their letters.
pub fn ends(session: &Session) -> Vec<End> {
    let mut all = named(session);
    all.extend(session.lost().iter().map(|one| one.end));
    all
}

/// The points of a place, screws first.
pub fn points_of(session: &Session, place: Place) -> Vec<Point> {
    let screws = Screw::ALL.iter().copied().filter(|screw| screw.place() == place).filter(|screw| {
        let second = matches!(screw, Screw::S1 | Screw::S2) && session.home.plant.wiring.second_source;
        session.home.plant.wiring.has_screw(*screw) && (!second || second_seen(session, place))
    });
    let shell = matches!(place, Place::UpperCompartment | Place::LowerCompartment).then_some(Screw::Shell);
    let ends = ends(session).into_iter().filter(|end| end.home().place() == place);
    screws.chain(shell).map(Point::Screw).chain(ends.map(Point::End)).collect()
}
