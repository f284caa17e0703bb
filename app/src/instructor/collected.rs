//! Attempts read in, each with its file's name, in the order they came.

use std::rc::Rc;

use drill::Attempt;
use yew::Reducible;

use super::row::Row;
use crate::files::Picked;

/// One file.
#[derive(Clone, PartialEq, Debug)]
pub struct Item {
    /// The file's name.
    pub name: String,
    /// Where it is.
    pub state: State,
}

/// How far a file is.
#[derive(Clone, PartialEq, Debug)]
pub enum State {
    /// Read, not yet worked through.
    Waiting(Rc<Attempt>),
    /// Worked through.
    Judged(Rc<Attempt>, Rc<Row>),
    /// Of no use, and why.
    Bad(String),
}

/// Everything read in.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Collected {
    /// The files.
    pub items: Vec<Item>,
}

/// What changes it.
#[derive(Debug)]
pub enum Msg {
    /// Files were picked; the text says what is wrong with one that cannot be read.
    Picked(Vec<Picked>, String),
    /// One was worked through.
    Judged(usize, Box<Result<Row, String>>),
    /// The table was emptied.
    Cleared,
}

impl Collected {
    /// Files read in; the text says what is wrong with one that cannot be read.
    pub fn of(files: &[Picked], unreadable: &str) -> Self {
        Self { items: files.iter().map(|file| opened(file, unreadable)).collect() }
    }

    /// The attempt of a row.
    pub fn attempt(&self, row: usize) -> Option<Rc<Attempt>> {
        match &self.items.get(row)?.state {
            State::Waiting(attempt) | State::Judged(attempt, _) => Some(attempt.clone()),
            State::Bad(_) => None,
        }
    }

    /// The first that waits.
    pub fn waiting(&self) -> Option<usize> {
        self.items.iter().position(|item| matches!(item.state, State::Waiting(_)))
    }

    /// How many attempts were worked through, of how many.
    pub fn progress(&self) -> (usize, usize) {
        let count = |of: fn(&State) -> bool| self.items.iter().filter(|item| of(&item.state)).count();
        let judged = count(|state| matches!(state, State::Judged(..)));
        (judged, judged + count(|state| matches!(state, State::Waiting(_))))
    }

    /// Rows worked through, with their place in the list.
    pub fn rows(&self) -> impl Iterator<Item = (usize, &Row)> {
        self.items.iter().enumerate().filter_map(|(at, item)| match &item.state {
            State::Judged(_, row) => Some((at, row.as_ref())),
            State::Waiting(_) | State::Bad(_) => None,
        })
    }

    /// Files of no use, with the reason.
    pub fn bad(&self) -> impl Iterator<Item = (&str, &str)> {
        self.items.iter().filter_map(|item| match &item.state {
            State::Bad(why) => Some((item.name.as_str(), why.as_str())),
            State::Waiting(_) | State::Judged(..) => None,
        })
    }
}

fn opened(file: &Picked, unreadable: &str) -> Item {
    let state = match file.text.as_deref().map(Attempt::read) {
        Some(Ok(attempt)) => State::Waiting(Rc::new(attempt)),
        Some(Err(error)) => State::Bad(crate::text::attempt_error(&error)),
        None => State::Bad(unreadable.to_owned()),
    };
    Item { name: file.name.clone(), state }
}

impl Reducible for Collected {
    type Action = Msg;

    fn reduce(self: Rc<Self>, msg: Msg) -> Rc<Self> {
        let mut next = (*self).clone();
        match msg {
            Msg::Picked(files, unreadable) => {
                next.items.extend(Self::of(&files, &unreadable).items);
            }
            Msg::Judged(at, result) => {
                if let Some(item) = next.items.get_mut(at)
                    && let State::Waiting(attempt) = &item.state
                {
                    item.state = match *result {
                        Ok(row) => State::Judged(attempt.clone(), Rc::new(row)),
                        Err(why) => State::Bad(why),
                    };
                }
            }
            Msg::Cleared => next.items.clear(),
        }
        Rc::new(next)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::{Action, Mode};
    use drill::Order;

    #[test]
    fn a_bad_file_is_named_and_the_others_go_on() {
        let mut attempt = Attempt::new("Bench 4", Order::chance(5, Mode::Solo));
        attempt.actions.push(Action::TellHousehold);
        let file = |name: &str, text: Option<String>| Picked { name: name.into(), text };
        let files = vec![
            file("a.json", Some("{".into())),
            file("b.json", Some(attempt.write())),
            file("c.json", None),
            file("d.json", Some(attempt.write().replace("Bench 4", "Bench 5"))),
        ];
        let all = Rc::new(Collected::default()).reduce(Msg::Picked(files, "unreadable".into()));
        assert_eq!((all.waiting(), all.progress()), (Some(1), (0, 1)));
        let bad: Vec<_> = all.bad().map(|(name, _)| name).collect();
        assert_eq!(bad, ["a.json", "c.json", "d.json"]);
        let whys: Vec<_> = all.bad().map(|(_, why)| why).collect();
        assert!(whys[0].contains("line 1") && whys[2].contains("changed"), "{whys:?}");
    }
}
