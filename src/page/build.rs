//! Reads the words of every language, holds them against each other and writes what
//! the program knows of them. A missing name, slot or case of a plural ends the build.

use std::path::Path;
use std::process::ExitCode;
use std::{env, fs};

fn main() -> ExitCode {
    println!("cargo::rerun-if-changed=languages");
    let Some(out) = env::var_os("OUT_DIR") else {
        println!("cargo::error=OUT_DIR is not set: build with cargo");
        return ExitCode::FAILURE;
    };
    let made = coldseat_words::all(Path::new("languages")).and_then(|languages| {
        fs::write(
            Path::new(&out).join("words.rs"),
            coldseat_words::rust(&languages),
        )
        .map_err(|error| vec![error.to_string()])
    });
    match made {
        Ok(()) => ExitCode::SUCCESS,
        Err(wrong) => {
            for line in wrong {
                println!("cargo::error={line}");
            }
            ExitCode::FAILURE
        }
    }
}
