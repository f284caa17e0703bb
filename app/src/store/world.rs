//! A state of the world, handed from component to component.

use std::ops::Deref;
use std::rc::Rc;

use bench::Session;

/// A world. It never changes behind its pointer, so the pointer alone tells whether it is another one: comparing the
/// whole of it before each drawing would take longer than the drawing.
#[derive(Clone, Debug)]
pub struct World(Rc<Session>);

impl PartialEq for World {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl Deref for World {
    type Target = Session;

    fn deref(&self) -> &Session {
        &self.0
    }
}

impl From<Session> for World {
    fn from(session: Session) -> Self {
        Self(Rc::new(session))
    }
}
