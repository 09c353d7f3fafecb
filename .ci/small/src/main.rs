//! One thread and its stress area, with default features.

fn main() {
    let name = std::env::args().nth(1).unwrap_or_else(|| "M16".into());
    match name.parse::<shankline::prelude::Thread>() {
        Ok(thread) => println!("{:?}", thread.tensile_stress_area()),
        Err(why) => println!("{why}"),
    }
}
