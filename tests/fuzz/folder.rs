//! libFuzzer's entry to [`coldseat_fuzz::folder`].

#![no_main]

use coldseat_fuzz::{MEMORY_MOST, folder};

/// Counts what the program allocates, libFuzzer's own tables left out; more than
/// it may have is an allocation that fails.
#[global_allocator]
static MEMORY: cap::Cap<std::alloc::System> = cap::Cap::new(std::alloc::System, MEMORY_MOST);

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| folder(bytes));
