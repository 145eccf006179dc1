//! Prints what the host computes, for the browser to be held against:
//! `cargo xtask test --only wasm` calls it.

#[path = "contract/requests.rs"]
#[allow(dead_code)] // the names of the outputs are the contract's test
mod requests;
mod same;

fn main() {
    println!("{}", same::everything());
}
