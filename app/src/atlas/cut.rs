//! The heater of a fault's page cut open twice, sound and with the fault, after the same water was drawn.

use bench::Session;
use diagnosis::atlas::Atlas;
use drill::debrief::{Picture, Sample};
use quantity::{Kelvins, Temperature, Watts};
use words::Voice;
use yew::prelude::*;

use super::rows::before;
use crate::debrief::section;

/// From the heat of one element to that of the other: less is a leak, or the house's voltage that day.
const HEAT: Watts = Watts(100.0);
/// From the layers of one tank to those of the other, in the mean: less is how the day happened to be.
const APART: Kelvins = Kelvins(0.7);

/// Words that name each house.
const HOUSES: [&str; 2] = ["atlas-sound", "atlas-faulty"];

/// Both houses, sound and with the fault, with what is inside the heater.
#[derive(Clone, PartialEq)]
pub struct Cut([(Session, Sample); 2]);

impl Cut {
    /// Of the first fault walked. `None` where the two tanks look alike: the fault shows elsewhere.
    pub fn of(atlas: &Atlas) -> Option<Self> {
        let (_, faulty) = atlas.walks().first()?;
        let both = [atlas.sound(), faulty].map(|walk| {
            let session = walk.drawn();
            let inside = Picture::of(&session).samples.pop().unwrap_or_default();
            (session, inside)
        });
        let [(_, sound), (_, faulty)] = &both;
        differ(sound, faulty).then_some(Self(both))
    }

    /// What was done before, in both houses.
    pub fn after(&self, voice: &Voice) -> String {
        let [(session, _), _] = &self.0;
        let act = session.log.last().map(|entry| &entry.action);
        voice.filled("atlas-cut-after", &[("act", before(voice, act).into())])
    }

    /// Both, side by side where there is room.
    pub fn drawn(&self, voice: &Voice) -> Html {
        let one = |(name, (session, now)): (&&str, &(Session, Sample))| {
            let house = voice.text(name);
            let degrees = |at: Option<Temperature>| {
                at.map_or_else(|| voice.text("debrief-air"), |of| voice.units().temperature(of)).into()
            };
            let said = voice.filled(
                "atlas-cut",
                &[
                    ("house", house.clone().into()),
                    ("top", degrees(now.top())),
                    ("bottom", degrees(now.layers.first().copied().flatten())),
                    ("heat", voice.units().watts(now.watts[0] + now.watts[1]).into()),
                ],
            );
            html! {
                <figure class="section">
                    <figcaption>
                        <b>{ house }</b>
                        { voice.text(if now.live { "show-live" } else { "show-dead" }) }
                    </figcaption>
                    { section::cut(voice, &session.home.plant, now, said, name) }
                </figure>
            }
        };
        html! { <div class="atlas-cut">{ for HOUSES.iter().zip(&self.0).map(one) }</div> }
    }
}

/// Whether the drawings do.
fn differ(a: &Sample, b: &Sample) -> bool {
    let apart = |(a, b): (&Option<Temperature>, &Option<Temperature>)| match (a, b) {
        (Some(a), Some(b)) => (*a - *b).abs().get(),
        (None, None) => 0.0,
        _ => f64::INFINITY,
    };
    let layers: f64 = a.layers.iter().zip(&b.layers).map(apart).sum();
    layers > APART.get() * a.layers.len() as f64
        || a.watts.iter().zip(&b.watts).any(|(a, b)| (*a - *b).abs() > HEAT)
        || (a.dip_tube, a.scale, a.sediment) != (b.dip_tube, b.scale, b.sediment)
}

#[cfg(test)]
mod tests {
    use plant::fault::FaultId;

    use crate::atlas::walked::Walked;

    #[test]
    fn a_fault_is_drawn_where_the_tank_shows_it() {
        let drawn = |fault| Walked::begin(fault).is_some_and(|walked| walked.cut().is_some());
        // A dip tube, a thermostat, an element; damp air, people who ask too much.
        assert!([FaultId::F37, FaultId::F10, FaultId::F14].into_iter().all(drawn));
        assert!(![FaultId::F53, FaultId::F04].into_iter().any(drawn));
    }
}
