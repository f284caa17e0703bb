//! Sample networks of contacts, loads, strays and instruments, for the reference check and the benchmark.

use quantity::Draw;
use solver::network::{Complex, Network};

/// Frequency of every sample, hertz.
pub const HERTZ: f64 = 60.0;

/// A network with the names of its nodes.
pub struct Named {
    /// The network.
    pub network: Network,
    /// One name for each node.
    pub names: Vec<String>,
}

impl Named {
    /// Only the reference node, held at 0 V.
    fn new() -> Self {
        let mut network = Network::new(1);
        network.fix(0, Complex::ZERO);
        Self { network, names: vec!["0".to_string()] }
    }

    /// Adds a node.
    fn node(&mut self, name: String) -> u32 {
        self.names.push(name);
        self.network.nodes += 1;
        self.network.nodes - 1
    }

    /// Adds a resistance.
    fn ohms(&mut self, a: u32, b: u32, ohms: f64) {
        self.network.connect(a, b, Complex::resistor(ohms));
    }

    /// Adds a capacitance.
    fn farads(&mut self, a: u32, b: u32, farads: f64) {
        self.network.connect(a, b, Complex::capacitor(farads, HERTZ));
    }

    /// Adds a run of contacts from `from` through so many new nodes, each of the resistance that `ohms`
    /// gives.
    fn run(&mut self, from: u32, nodes: usize, tag: &str, mut ohms: impl FnMut() -> f64) -> Vec<u32> {
        let mut run = vec![from];
        for i in 1..=nodes {
            let (last, next) = (run[i - 1], self.node(format!("{tag}{i}")));
            self.ohms(last, next, ohms());
            run.push(next);
        }
        run
    }
}

/// The benchmark, 25 nodes and the reference: two legs of 120 V behind milliohms, closed and open contacts
/// of two switched loads between them, a stray to each leg and to earth at every node, a meter of 10 MΩ.
#[allow(dead_code, reason = "one of the two programs uses it")]
pub fn benchmark() -> Named {
    let mut sample = Named::new();
    let (one, two) = (sample.node("s1".into()), sample.node("s2".into()));
    sample.network.fix(one, Complex::polar(120.0, 0.0));
    sample.network.fix(two, Complex::polar(120.0, 180.0));
    let a = sample.run(one, 9, "a", || 5e-3);
    let b = sample.run(two, 8, "b", || 5e-3);
    // The first load runs, the second waits behind an open contact.
    let first = sample.run(a[9], 2, "p", || 5e-3);
    let second = sample.run(a[8], 1, "q", || 1e12);
    let rest = sample.run(second[1], 1, "r", || 5e-3);
    sample.ohms(first[2], b[7], 12.8);
    sample.ohms(rest[1], b[8], 12.8);
    let (red, black) = (sample.node("m1".into()), sample.node("m2".into()));
    sample.ohms(first[2], red, 0.1);
    sample.ohms(b[8], black, 0.1);
    sample.ohms(red, black, 10e6);
    for node in 3..sample.network.nodes {
        for to in [0, one, two] {
            sample.farads(node, to, 5e-12);
        }
    }
    sample
}

/// A state drawn by number: supply, contacts closed, open, worn, loads whole or burnt out or leaking to
/// earth, strays, a meter or none, a body or none.
#[allow(dead_code, reason = "one of the two programs uses it")]
pub fn state(number: u64) -> Named {
    let mut draw = Draw::new(number, "sample network");
    let mut sample = Named::new();
    let turn = if draw.chance(0.6) { 180.0 } else { 120.0 };
    let mut legs = Vec::new();
    for (i, angle) in [0.0, turn].into_iter().enumerate() {
        let source = sample.node(format!("s{}", i + 1));
        sample.network.fix(source, Complex::polar(120.0, angle));
        legs.push(source);
    }
    let sources = legs.clone();
    let length = 4 + draw.index(10);
    let runs: Vec<Vec<u32>> = legs
        .iter()
        .zip(["a", "b"])
        .map(|(leg, tag)| {
            let first = draw.between(1e-3, 50e-3);
            let lost = draw.chance(0.15);
            let mut left = 0;
            sample.run(*leg, length, tag, || {
                left += 1;
                if left == 1 { if lost { 1e12 } else { first } } else { contact(&mut draw, 0.1) }
            })
        })
        .collect();
    for load in 0..1 + draw.index(3) {
        let side = |draw: &mut Draw, run: &[u32]| run[1 + draw.index(length)];
        let (from, to) = (side(&mut draw, &runs[0]), side(&mut draw, &runs[1]));
        let extra = 1 + draw.index(4);
        let lead = sample.run(from, extra, &format!("l{load}_"), || contact(&mut draw, 0.4));
        let (end, whole) = (lead[extra], draw.chance(0.8));
        let ohms = if whole { draw.between(10.0, 40.0) } else { 1e12 };
        if draw.chance(0.2) {
            // A load that touches earth somewhere along its length.
            let (at, middle) = (draw.between(0.05, 0.95), sample.node(format!("g{load}")));
            sample.ohms(end, middle, ohms * at);
            sample.ohms(middle, to, ohms * (1.0 - at));
            let fault = [1e-2, 5.0, 2e4, 1e6][draw.index(4)];
            sample.ohms(middle, 0, fault);
        } else {
            sample.ohms(end, to, ohms);
        }
    }
    instruments(&mut sample, &mut draw);
    let largest = if draw.chance(0.5) { 2e-12 } else { 200e-12 };
    for node in 3..sample.network.nodes {
        for to in [0, sources[0], sources[1]] {
            let farads = draw.between(0.5, 1.0) * largest;
            sample.farads(node, to, farads);
        }
    }
    sample
}

/// One contact: closed, open or worn.
fn contact(draw: &mut Draw, open: f64) -> f64 {
    match draw.weighted(&[1.0 - open, open, 0.1]) {
        0 => 5e-3,
        1 => 1e12,
        _ => draw.between(0.05, 5.0),
    }
}

/// A meter, of high or low impedance, and a body, each perhaps.
fn instruments(sample: &mut Named, draw: &mut Draw) {
    let nodes = sample.network.nodes as usize;
    if draw.chance(0.7) {
        let (a, b) = (draw.index(nodes) as u32, draw.index(nodes) as u32);
        let (red, black) = (sample.node("m1".into()), sample.node("m2".into()));
        sample.ohms(a, red, 0.1);
        sample.ohms(b, black, 0.1);
        let inside = if draw.chance(0.7) { 10e6 } else { 3e3 };
        sample.ohms(red, black, inside);
        sample.farads(red, black, 100e-12);
    }
    if draw.chance(0.3) {
        let (hand, at) = (sample.node("h".into()), draw.index(nodes) as u32);
        sample.ohms(at, hand, 500.0);
        sample.ohms(hand, 0, 1000.0);
    }
}
