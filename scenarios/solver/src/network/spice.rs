//! A network as a netlist in SPICE's language, the way an outside program can solve it again.

use std::fmt::Write as _;

use super::{Complex, Network};

/// Why a network cannot be written.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SpiceError {
    /// The number of names is not the number of nodes.
    #[error("{names} names for {nodes} nodes")]
    Count {
        /// Names given.
        names: usize,
        /// Nodes there are.
        nodes: u32,
    },
    /// A name is empty or has other characters than ASCII letters, digits and underscores.
    #[error("`{0}` is not a node name: letters, digits and underscores only")]
    Name(String),
    /// Two nodes have the same name; capitals make no difference in a netlist.
    #[error("the name `{0}` is used twice")]
    Twice(String),
    /// The node named `0` is the reference of a netlist, and has to be fixed at 0 V.
    #[error("the node named 0 is not fixed at 0 V")]
    Reference,
    /// The frequency is not above zero.
    #[error("{0} Hz is not a frequency for an alternating-current analysis")]
    Frequency(f64),
}

/// Writes the netlist: sources, resistors, capacitors and one alternating-current analysis, with as many
/// digits as a double has. Values are RMS. `names` are the nodes' names; a node named `0` is the netlist's
/// reference and has to be one that is fixed at 0 V. Branches with no admittance are left out.
///
/// The option `noopac` goes with it: everything is linear, and the operating point that ngspice would look
/// for first fails at nodes that only capacitors hold (seen with ngspice 39: "singular matrix").
pub fn netlist(network: &Network, names: &[String], title: &str, hertz: f64) -> Result<String, SpiceError> {
    check_names(network, names)?;
    if !(hertz > 0.0 && hertz.is_finite()) {
        return Err(SpiceError::Frequency(hertz));
    }
    let name = |node: u32| names.get(node as usize).map_or("0", String::as_str);
    let title: String = title.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
    let mut lines = vec![format!("* {title}"), "* Volts and amperes are RMS.".to_string()];
    for (number, source) in (1..).zip(network.fixed.iter().filter(|f| name(f.node) != "0")) {
        lines.push(format!("V{number} {} 0 dc 0 ac {}", name(source.node), magnitude_phase(source.volts)));
    }
    for (number, source) in (1..).zip(&network.injections) {
        let (from, to) = (name(source.from), name(source.to));
        lines.push(format!("I{number} {from} {to} dc 0 ac {}", magnitude_phase(source.amps)));
    }
    for (number, branch) in (1..).zip(&network.branches).filter(|(_, b)| b.a != b.b) {
        let (a, b, Complex { re, im }) = (name(branch.a), name(branch.b), branch.admittance);
        if re > 0.0 {
            lines.push(format!("R{number} {a} {b} {:e}", 1.0 / re));
        }
        if im > 0.0 {
            lines.push(format!("C{number} {a} {b} {:e}", im / (std::f64::consts::TAU * hertz)));
        }
    }
    lines.push(".options noopac".to_string());
    lines.push(format!(".ac lin 1 {hertz} {hertz}"));
    lines.push(".end".to_string());
    let mut text = String::new();
    for line in lines {
        // Writing to a string cannot fail.
        let _ = writeln!(text, "{line}");
    }
    Ok(text)
}

/// Writes a solution beside its netlist: one line for each node with its name, real and imaginary part.
pub fn solution(volts: &[Complex], names: &[String]) -> String {
    let mut text = String::new();
    for (name, v) in names.iter().zip(volts) {
        let _ = writeln!(text, "{name} {:e} {:e}", v.re, v.im);
    }
    text
}

/// Length and angle in degrees.
fn magnitude_phase(value: Complex) -> String {
    format!("{:e} {:e}", value.norm(), if value == Complex::ZERO { 0.0 } else { value.degrees() })
}

/// Checks that the names can stand in a netlist.
fn check_names(network: &Network, names: &[String]) -> Result<(), SpiceError> {
    if names.len() != network.nodes as usize {
        return Err(SpiceError::Count { names: names.len(), nodes: network.nodes });
    }
    let mut seen = std::collections::BTreeSet::new();
    for (node, name) in (0..).zip(names) {
        let allowed = |c: char| c.is_ascii_alphanumeric() || c == '_';
        if name.is_empty() || !name.chars().all(allowed) || name.eq_ignore_ascii_case("gnd") {
            return Err(SpiceError::Name(name.clone()));
        }
        if !seen.insert(name.to_ascii_lowercase()) {
            return Err(SpiceError::Twice(name.clone()));
        }
        let grounded = || network.fixed.iter().any(|f| f.node == node && f.volts == Complex::ZERO);
        if name == "0" && !grounded() {
            return Err(SpiceError::Reference);
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(list: &[&str]) -> Vec<String> {
        list.iter().map(ToString::to_string).collect()
    }

    fn divider() -> Network {
        let mut network = Network::new(3);
        network.fix(0, Complex::ZERO);
        network.fix(1, Complex::polar(120.0, 180.0));
        network.connect(1, 2, Complex::real(200.0));
        network.connect(2, 0, Complex::new(0.25, 0.0) + Complex::capacitor(2e-12, 60.0));
        network.connect(2, 0, Complex::ZERO);
        network
    }

    #[test]
    fn divider_reads_as_expected() {
        let text = netlist(&divider(), &names(&["0", "L1", "U1"]), "one\ndivider", 60.0).unwrap();
        let expected = "\
* one divider
* Volts and amperes are RMS.
V1 L1 0 dc 0 ac 1.2e2 1.8e2
R1 L1 U1 5e-3
R2 U1 0 4e0
C2 U1 0 2e-12
.options noopac
.ac lin 1 60 60
.end
";
        assert_eq!(text, expected);
    }

    #[test]
    fn refuses_names_that_would_mislead() {
        let refuse = |list: &[&str]| netlist(&divider(), &names(list), "t", 60.0).unwrap_err();
        assert_eq!(refuse(&["0", "L1"]), SpiceError::Count { names: 2, nodes: 3 });
        assert_eq!(refuse(&["0", "L1", "U 1"]), SpiceError::Name("U 1".into()));
        assert_eq!(refuse(&["0", "u1", "U1"]), SpiceError::Twice("U1".into()));
        assert_eq!(refuse(&["a", "0", "U1"]), SpiceError::Reference);
    }
}
