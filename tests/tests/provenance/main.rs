//! Every number of the simulated world says where it comes from, and the list of sources is complete.

mod document;
mod literals;
mod modules;

use std::collections::BTreeSet;

use quantity::{Kind, Listed};

use modules::Source;

/// A crate whose constants are held to the rule.
struct World {
    name: &'static str,
    listed: Vec<Listed>,
    /// Files with numbers of the method (tolerances, halves, rounds of a search, lengths of lists), and how many of
    /// them. Each count is exact, so a new number needs its source or a reader's second look.
    method: &'static [(&'static str, usize)],
}

/// The crates held to the rule, lowest first.
fn worlds() -> Vec<World> {
    vec![
        World { name: "solver", listed: solver::sources(), method: METHOD_OF_SOLVER },
        World { name: "plant", listed: plant::sources(), method: &[] },
        World { name: "bench", listed: bench::sources(), method: METHOD_OF_BENCH },
    ]
}

const METHOD_OF_SOLVER: &[(&str, usize)] = &[
    ("hydraulic/law.rs", 2),
    ("hydraulic/network.rs", 4),
    ("hydraulic/newton.rs", 23),
    ("hydraulic/step.rs", 11),
    ("hydraulic/store.rs", 13),
    ("network/complex.rs", 10),
    ("network/mod.rs", 1),
    ("network/plan.rs", 1),
    ("skin.rs", 3),
    ("skin/slab.rs", 6),
    ("tank/advance.rs", 4),
    ("tank/buoyancy.rs", 6),
    ("tank/conduction.rs", 18),
    ("tank/flow.rs", 12),
    ("tank/heat.rs", 10),
    ("tank/inputs.rs", 3),
    ("tank/mod.rs", 11),
    ("tank/probe.rs", 1),
    ("tank/regrid.rs", 13),
    ("tank/state.rs", 15),
    ("tank/step.rs", 26),
    ("water/mod.rs", 42),
];

const METHOD_OF_BENCH: &[(&str, usize)] = &[
    ("hearsay.rs", 1),
    ("instrument/class.rs", 5),
    ("instrument/gauge.rs", 6),
    ("person/body.rs", 6),
    ("person/body/tables.rs", 2),
    ("person/burn.rs", 1),
    ("person/shock.rs", 3),
    ("reduce/board.rs", 1),
    ("reduce/looks.rs", 1),
    ("reduce/senses.rs", 1),
    ("reduce/turn.rs", 2),
    ("reduce/water.rs", 1),
    ("session.rs", 3),
    ("view.rs", 4),
];

/// A sound test of the sound rule: what is caught, and what is let through.
#[test]
fn the_reader_finds_what_it_should() {
    let text = r#"
        //! A file.
        quantity::constants! {
            /// Tagged.
            pub const A: Constant = Constant::new("a", 3.5, "m", Tag::Model("x"));
            const B: Constant<[f64; 3]> = Constant::new("b", [1.0, 7.0, 3e2], "m", Tag::Model("x"));
        }
        pub const LOOSE: Constant = Constant::new("loose", 4.0, "m", Tag::Model("x"));
        /// 17 in words is nothing.
        #[derive(Debug)]
        struct S([f64; 4]);
        fn f(s: (f64, f64), n: &S) -> f64 {
            let text = "99"; let byte = b'7';
            s.0 + s.1 + n.0.get(3).unwrap_or(&0.0) + 1.0 - 2.0 * -1.0 + 1f64 + 0x1 as f64
        }
        fn g(x: u8) -> bool { matches!(x, 5 | 1) && x >> 6 == 0 }
        #[cfg(test)]
        mod tests { const T: f64 = 12.0; }
        macro_rules! m { ($x:expr) => { $x + 8.0 + n.0 }; }
        impl S { #[cfg(test)] fn only_in_tests() -> f64 { 13.0 } }
        const TABLE: [Constant; 5] = [usual("a", 14.0)];
        const RANGES: [Range; 4] = [Range { top: 15.0 }];
        const SCALE: Scale = Scale { ranges: &RANGES, percent: 16.0 };
        const OTHERS: [Ranger; 2] = [Ranger { top: 17.0 }];
    "#;
    let read = literals::read(text);
    let found: Vec<_> = read.bare.iter().map(|bare| (bare.line, bare.text.as_str())).collect();
    assert_eq!(found, [(11, "4"), (14, "3"), (16, "5"), (16, "6"), (19, "8.0"), (24, "17.0")]);
    assert_eq!(read.tagged.iter().map(|t| t.as_str()).collect::<Vec<_>>(), ["A", "B"]);
    assert_eq!(read.outside.iter().map(|t| t.text.as_str()).collect::<Vec<_>>(), ["LOOSE"]);
}

#[test]
fn no_number_stands_without_its_source() {
    let mut wrong = Vec::new();
    for world in worlds() {
        let sources = modules::of(world.name);
        assert!(sources.len() > 2, "{} has only {} files", world.name, sources.len());
        for Source { file, text, .. } in &sources {
            let read = literals::read(text);
            let of_method = world.method.iter().find(|(name, _)| file.ends_with(&format!("/src/{name}")));
            let allowed = of_method.map_or(0, |(_, count)| *count);
            if read.bare.len() != allowed {
                wrong.push(format!("{file}: {} numbers of the method, {allowed} listed", read.bare.len()));
                wrong.extend(read.bare.iter().map(|b| format!("{file}:{}: bare {}", b.line, b.text)));
            }
            let outside = read.outside.iter();
            wrong.extend(outside.map(|c| format!("{file}:{}: {} is not in constants!", c.line, c.text)));
        }
        for (name, _) in world.method {
            let there = sources.iter().any(|s| s.file.ends_with(&format!("/src/{name}")));
            if !there {
                wrong.push(format!("{name} is listed and does not exist in {}", world.name));
            }
        }
    }
    assert!(wrong.is_empty(), "{} numbers without a source:\n{}", wrong.len(), wrong.join("\n"));
}

#[test]
fn every_tagged_constant_is_listed_once() {
    for world in worlds() {
        let mut written = BTreeSet::new();
        for Source { module, text, .. } in modules::of(world.name) {
            written.extend(literals::read(&text).tagged.into_iter().map(|name| format!("{module}::{name}")));
        }
        let mut listed = BTreeSet::new();
        for entry in &world.listed {
            let name = format!("{}::{}", entry.module, entry.ident);
            assert!(listed.insert(name.clone()), "{name} is listed twice");
        }
        let missing: Vec<_> = written.difference(&listed).collect();
        assert!(
            missing.is_empty(),
            "chain their modules' CONSTANTS into {}::sources(): {missing:#?}",
            world.name
        );
        // What is listed and not written as a constant stands in a table whose entries carry their tags: the
        // catalogue of faults, the scales of the instruments, the minutes of the acts.
        let tables = ["plant::fault::f", "bench::instrument::", "bench::minutes::", "bench::prices::"];
        let of_a_table = |name: &&String| tables.iter().any(|table| name.starts_with(table));
        let unknown: Vec<_> = listed.difference(&written).filter(|name| !of_a_table(name)).collect();
        assert!(unknown.is_empty(), "{unknown:#?}");
    }
}

#[test]
fn every_entry_says_enough() {
    let mut wrong = Vec::new();
    for world in worlds() {
        for entry in &world.listed {
            let (at, constant) = (format!("{}::{}", entry.module, entry.ident), entry.constant);
            let (kind, words) = (constant.tag().kind(), constant.tag().words());
            if constant.name().trim().is_empty() || constant.value().is_empty() {
                wrong.push(format!("{at}: no name or no value"));
            }
            if kind != Kind::CommonPractice && words.len() < 4 {
                wrong.push(format!("{at}: {} without a word about it: {words:?}", kind.name()));
            }
            // What is recalled is listed as such, or the list of what to look up has holes.
            if kind != Kind::Memory && ["from memory", "recalled"].iter().any(|said| words.contains(said)) {
                wrong.push(format!("{at}: {} that says it is recalled: {words:?}", kind.name()));
            }
            // A sheet that quotes is no source: the document is what a reader can look up.
            if words.to_lowercase().contains("trade sheet") {
                wrong.push(format!("{at}: name the document, not {words:?}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
