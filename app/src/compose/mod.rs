//! Asking for a drill: the form that the doors and the instructor's desk share.

mod fields;
mod form;
mod tick;

pub use fields::{OrderFields, modes};
pub use form::{Field, FormHandle, use_order_form};
pub use tick::radios;
use tick::tick;

use drill::Order;

use crate::text;

/// A drill as somebody typed or pasted it: a code, a link with a code in it, or the text of a file.
pub fn read_drill(typed: &str) -> Result<Order, String> {
    let typed = typed.trim();
    if typed.starts_with('{') {
        return Order::read(typed).map_err(|error| text::order_error(&error));
    }
    let code = typed.rsplit("#/drill/").next().unwrap_or(typed);
    drill::code::decode(code).map_err(|error| text::code_error(&error))
}

/// A drill as the journal and a link name it: its code where one has room for it, else the file's text.
pub fn name_drill(order: &Order) -> String {
    drill::code::encode(order).unwrap_or_else(|_| order.write())
}

/// A seed from the browser's own randomness. Everything after it is drawn from the seed alone.
pub fn fresh_seed() -> u32 {
    (js_sys::Math::random() * f64::from(drill::order::SEED_MASK)) as u32 & drill::order::SEED_MASK
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::Mode;

    #[test]
    fn a_code_a_link_and_a_file_are_read_as_the_same_drill() {
        let order = Order::chance(77, Mode::Coached);
        let code = name_drill(&order);
        for text in [code.clone(), format!(" https://school.example/t/#/drill/{code} "), order.write()] {
            assert_eq!(read_drill(&text), Ok(order.clone()), "{text}");
        }
        assert!(read_drill("K7QD").is_err());
        assert!(read_drill("{\"seed\": \"x\"}").unwrap_err().contains("line 1"));
    }

    #[test]
    fn what_a_code_has_no_room_for_is_named_by_its_file() {
        let order = Order { day: Some(40), ..Order::chance(77, Mode::Solo) };
        assert_eq!(read_drill(&name_drill(&order)), Ok(order));
    }
}
