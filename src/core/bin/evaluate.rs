//! Answers JSON requests, one a line.
fn main() {}
