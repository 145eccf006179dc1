//! Set up, serve, build, test.
fn main() {}
