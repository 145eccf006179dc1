//! What is measured from the deck: told before the cut, worked out after it, ticked or
//! reasoned, and on the record; phone and tablet, light and dark.

use anyhow::{Result, ensure};
use coldseat_browser_tests::{Bench, Key, Role, Setting, Size, Theme, containing};
use coldseat_core::ask::StepId;
use coldseat_core::job::demo::Demo;
use coldseat_core::job::{Field, Owner, Place};

use crate::record::{finished_job, put, put_entry, stored};

#[tokio::test]
async fn a_cut_says_what_it_changes_and_keeps_what_is_said_of_it() -> Result<()> {
    let sizes = [
        (Size::Other(360, 740), Theme::Light, "phone"),
        (Size::Other(360, 740), Theme::Dark, "phone-dark"),
        (Size::Tablet, Theme::Light, "tablet"),
        (Size::Tablet, Theme::Dark, "tablet-dark"),
    ];
    for (size, theme, name) in sizes {
        let bench = Bench::open(Setting {
            size,
            theme,
            ..Setting::default()
        })
        .await?;
        let page = bench.page();
        // Nothing is said yet, and no cut decided on.
        let mut job = finished_job(Demo::InchFive, 5);
        for (field, index) in [
            (Field::DeckCut, 0),
            (Field::DeckFinish, 0),
            (Field::FromDeckAfter, 0),
            (Field::RecutSaid, 3),
        ] {
            put_entry(&mut job, Place::of_bank(0, field, index), "");
        }
        job.set_mark(Owner::Bank(0), StepId::Deck, None, 1_700_000_000_001);
        let own = stored("deck", job);
        put(page, &own).await?;
        page.reload().await?;
        page.go("#/job/deck/deck/1").await?;
        // By hand: 0.5000 less 0.4980; 0.2980 less 0.0050 planned.
        page.says("Cut no more than 0.0020 in: dowels").await?;
        page.says("By the planned cut").await?;
        page.says("0.2930").await?;
        page.says("recut to 0.2950 (off by 0.0020 in)").await?;
        page.gone(Role::Button, "Brought back, done: Dowels")
            .await?;
        page.long_picture(&format!("deck-before-{name}")).await?;
        page.write(containing("Deck cut (to"), "0.0050").await?;
        page.press(Key::Escape).await?;
        page.says("By the cut entered").await?;
        page.tap(Role::Button, "Recut, done: Water-hole counterbores")
            .await?;
        page.says("checked off as done, not measured").await?;
        page.unfold("Left as is, because: dowels").await?;
        page.write("Left as is, because", "ok").await?;
        page.tap(Role::Button, "Leave it as is: Dowels").await?;
        page.says("Say why in a few words.").await?;
        page.write("Left as is, because", "new dowels come with the head")
            .await?;
        page.tap(Role::Button, "Leave it as is: Dowels").await?;
        page.says("left as is, because: new dowels come with the head")
            .await?;
        page.long_picture(&format!("deck-after-{name}")).await?;
        // Decided on is not cut.
        page.go("#/job/deck/record").await?;
        page.says("not cut yet, or not marked as cut; 0.0050 in to take")
            .await?;
        page.go("#/job/deck/deck/1").await?;
        page.tap(Role::Button, "The deck is cut").await?;
        page.go("#/job/deck/record").await?;
        page.says("Dowels: back to 0.5000").await?;
        page.long_picture(&format!("deck-record-{name}")).await?;
        page.go("#/job/deck/engine").await?;
        page.unfold("Measured from the deck, and how much may be cut")
            .await?;
        page.long_picture(&format!("deck-engine-{name}")).await?;
        let complaints = page.complaints().await?;
        ensure!(complaints.is_empty(), "{complaints:?}");
    }
    Ok(())
}
