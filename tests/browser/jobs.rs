//! Jobs of a season, as many as wanted, for what measures.

use coldseat_core::document::row::Row;
use coldseat_core::document::slot::{Slot, write_slot};
use coldseat_core::document::{Body, Document, write};
use coldseat_core::job::demo::Demo;

/// The slot of a job of eight cylinders with the times of working days and
/// readings of its own, and its key in local storage before it.
#[must_use]
pub fn job_slot(number: usize) -> (String, String) {
    let begun = 1_700_000_000_000 + number as u64 * 7_200_000;
    let mut job = Demo::MetricEight.job(begun);
    job.name = format!("Block {number}");
    job.customer = format!("Customer {} (invented)", number % 97);
    let mut at = begun;
    let entries: Vec<_> = job.entries.iter().map(|(p, e)| (*p, e.clone())).collect();
    for (turn, (place, mut entry)) in entries.into_iter().enumerate() {
        let lot = number * 31 + turn * 17;
        at += 1000 * (3 + (lot % 9) as u64 + if turn % 6 == 0 { 200 } else { 0 });
        entry.at = at;
        // Another last digit, as another sleeve has.
        if entry.text.contains('.') && entry.text.ends_with(|c: char| c.is_ascii_digit()) {
            entry.text.pop();
            entry.text.push(char::from(b'0' + (lot % 4) as u8));
        }
        job.entries.put(place, entry);
    }
    let mut document = Document::new(Body::Job(Box::new(job)), begun);
    document.changed = at;
    let id = format!("{number:012x}");
    document.unknown.insert("id".to_owned(), id.clone().into());
    let row = Row::of(&document).map(|row| row.bytes());
    let slot = Slot {
        sequence: 40,
        row: row.unwrap_or_default(),
        text: write(&document),
    };
    (format!("coldseat/job/{id}/a"), write_slot(&slot))
}
