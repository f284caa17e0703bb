//! Hands on bare metal and in water: the body as a branch of the circuit.

use plant::electrical::Bridge;
use plant::{Place, Point, Screw};
use quantity::{Constant, Kelvins, Seconds, Tag, Temperature};

use super::turn::Turn;
use super::{Answered, looks, prove, reach, scald, senses};
use crate::action::Touchable;
use crate::person::{
    Area, Exposure, Footing, Glove, Harm, Path, Percentile, Shock, ShockZone, Touch, Wetness, contact_time,
    settle,
};
use crate::shown::{Fact, Refusal, Shown, Sight};

/// How a hand meets metal.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Grip {
    /// Brushes it.
    Touches,
    /// Closes round it: what holds a muscle holds the hand.
    Grasps,
}

quantity::constants! {
    /// How long a hand means to stay when nothing is felt.
    const MEANT: Constant<Seconds> = Constant::of("how long a hand means to stay where nothing is felt", Seconds(10.0), Tag::Model("as long as it takes to feel for a part"));
    /// What a hand tells apart.
    const BY_HAND: Constant<Kelvins> = Constant::of("what a hand tells apart", Kelvins(5.0), Tag::Model("judged by hand"));
}

/// Puts a hand on bare metal while the other rests on the nearest grounded metal. Two hands on the same
/// tank are the usual way to be hurt; the current is solved for with the body as a branch.
pub(super) fn touch(turn: &mut Turn, point: Point, grip: Grip) {
    let plant = &turn.s.home.plant;
    let protected = turn.s.me.protected();
    // A ground wire's end is the metal of the ground it comes from.
    let grounded = |wire| matches!(wire, plant::Wire::CableG | plant::Wire::Bond);
    let ground = match point {
        Point::End(end) => grounded(end.wire),
        Point::Screw(_) => senses::ground(point).is_some(),
    };
    if !ground && !prove::is_proved(&turn.s, point) {
        let live = senses::to_ground(plant, point) >= senses::LIVE.get();
        let missing = prove::missing(&turn.s, point);
        tell_unproved(turn, Fact::WorkedUnproved { at: point, live, protected, missing });
    }
    turn.hold(point);
    if turn.harms.iter().any(|h| matches!(h, Harm::Shock(_))) {
        return; // thrown off already
    }
    let plant = &turn.s.home.plant;
    let other = Point::Screw(other_hand(point));
    let wet = senses::wet_floor(plant);
    let body = Touch {
        path: Path::HandHand,
        percentile: Percentile::P50,
        wetness: if wet { Wetness::Water } else { Wetness::Dry },
        area: Area::Large,
        glove: if turn.s.me.gloves { Glove::Rated } else { Glove::Bare },
        footing: if wet { Footing::Wet } else { Footing::Dry },
    };
    let settled = settle(&body, |resistance| plant.across(Bridge::ohms(point, other, resistance)));
    let grasps = grip == Grip::Grasps;
    let time = contact_time(settled.current, grasps, MEANT.get());
    let shock = Shock::of(crate::person::Who::Technician, body.path, settled, time);
    if shock.zone > ShockZone::Imperceptible {
        turn.harms.push(Harm::Shock(shock));
    }
}

/// One act is told once, by the worst of what it touched.
fn tell_unproved(turn: &mut Turn, fact: Fact) {
    let told = turn.facts.iter_mut().find(|f| matches!(f, Fact::WorkedUnproved { .. }));
    match told {
        Some(told @ Fact::WorkedUnproved { live: false, .. }) => *told = fact,
        Some(_) => {}
        None => turn.facts.push(fact),
    }
}

/// What the other hand rests on.
fn other_hand(point: Point) -> Screw {
    match (point, point.place()) {
        (Point::Screw(Screw::Shell), _) => Screw::Pipe,
        (_, Place::LoadCenter) => Screw::G,
        _ => Screw::Shell,
    }
}

/// Touches something to feel it.
pub(super) fn feel(turn: &mut Turn, at: &Touchable, time: Seconds) -> Answered {
    match *at {
        Touchable::Metal { point } => {
            reach::point(&turn.s, point)?;
            touch(turn, point, Grip::Touches);
            turn.pass(time);
            let about = turn.s.home.plant.metal(point);
            scald::metal(turn, about);
            let sights = vec![Sight::Warmth { about: by_hand(about) }];
            Ok(Shown::Sights { at: point.place(), sights })
        }
        Touchable::Water { tap } => {
            if turn.s.home.plant.tap_flow(tap).get() <= 0.0 {
                return Err(Refusal::NoFlow);
            }
            turn.attended = true;
            turn.pass(time);
            let temperature = turn.s.home.plant.tap_temperature(tap);
            scald::own(turn, Exposure::water(temperature, Seconds(crate::person::burn::REFLEX.get())));
            Ok(Shown::Sights {
                at: Place::Taps,
                sights: vec![Sight::Water { temperature: by_hand(temperature) }],
            })
        }
        Touchable::Fitting { fitting } => {
            looks::fitting_in_reach(&turn.s, fitting)?;
            turn.pass(time);
            let (wet, about) = looks::feel_fitting(&turn.s, fitting);
            scald::metal(turn, about);
            Ok(Shown::Sights {
                at: looks::fitting_place(fitting),
                sights: vec![wet, Sight::Warmth { about: by_hand(about) }],
            })
        }
        Touchable::ReliefPipe => {
            turn.pass(time);
            let about = looks::relief_pipe(&turn.s.home.plant);
            scald::metal(turn, about);
            Ok(Shown::Sights { at: Place::Relief, sights: vec![Sight::Warmth { about: by_hand(about) }] })
        }
    }
}

/// Warmth as a hand tells it.
fn by_hand(temperature: Temperature) -> Temperature {
    let step = BY_HAND.get().get();
    Temperature::celsius((temperature.to_celsius() / step).round() * step)
}
