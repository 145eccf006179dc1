//! How many taps the usual ways cost, counted over a scripted hand: every touch
//! of a key, a field, a button or an entry of a list is one.

use std::cell::Cell;

use anyhow::{Context, Result, ensure};
use coldseat_browser_tests::{Bench, Name, Page, Role, Setting, Size, containing};
use coldseat_core::job::demo::Demo;
use coldseat_core::job::field::{FIELDS, Measure};
use coldseat_core::job::{Field, Job, Place};

/// A hand that counts.
struct Hand<'a> {
    page: &'a Page,
    taps: Cell<usize>,
}

impl<'a> Hand<'a> {
    const fn on(page: &'a Page) -> Self {
        Self {
            page,
            taps: Cell::new(0),
        }
    }

    async fn tap(&self, role: Role, name: impl Into<Name>) -> Result<()> {
        self.taps.set(self.taps.get() + 1);
        self.page.tap(role, name).await
    }

    /// A field that is scrolled up first, out of the pad's way: no tap.
    async fn field(&self, label: &str) -> Result<()> {
        self.taps.set(self.taps.get() + 1);
        let field = self.page.find(Role::TextBox, containing(label)).await?;
        field.bring_above_the_pad().await?;
        field.tap().await
    }

    /// Keys of the pad, by their faces.
    async fn keys(&self, keys: &str) -> Result<()> {
        for key in keys.chars() {
            let mut face = [0; 4];
            let name = match key {
                '.' => "Decimal point",
                digit => digit.encode_utf8(&mut face),
            };
            self.tap(Role::Button, name).await?;
        }
        Ok(())
    }

    /// On to the next field, and its keys.
    async fn next(&self, keys: &str) -> Result<()> {
        self.tap(Role::Button, "Next").await?;
        self.keys(keys).await
    }

    /// Opening a list and choosing in it.
    async fn choose(&self, label: &str, option: &str) -> Result<()> {
        self.taps.set(self.taps.get() + 2);
        self.page.choose(label, option).await
    }

    fn within(&self, most: usize, what: &str) -> Result<()> {
        let taps = self.taps.take();
        println!("taps\t{what}\t{taps}");
        ensure!(taps <= most, "{what}: {taps} taps, {most} wanted");
        Ok(())
    }
}

#[tokio::test]
async fn a_cold_drop_with_four_numbers_changed() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let hand = Hand::on(page);
    hand.tap(Role::Link, containing("Cold drop How soon"))
        .await?;
    hand.tap(Role::TextBox, containing("Part OD")).await?;
    // The last digits of the number that stands there.
    hand.tap(Role::Button, containing("From the right")).await?;
    hand.keys("513").await?;
    ensure!(page.value(containing("Part OD")).await? == "4.2513");
    hand.next("00").await?;
    ensure!(page.value(containing("Part wall")).await? == "0.1200");
    hand.field("Fit").await?;
    hand.keys("14").await?;
    ensure!(page.value(containing("Fit")).await? == "0.0014");
    hand.field("Carry time").await?;
    hand.keys("9").await?;
    page.says("home within").await?;
    hand.within(15, "Cold drop, four numbers changed")?;
    // With the numbers used last.
    page.go("#/").await?;
    hand.tap(Role::Link, containing("Cold drop How soon"))
        .await?;
    page.says("home within").await?;
    hand.within(2, "Cold drop, the numbers used last")
}

#[tokio::test]
async fn another_part_in_three_taps_with_its_answer_above_the_fold() -> Result<()> {
    let setting = Setting {
        size: Size::Other(360, 740),
        ..Setting::default()
    };
    let bench = Bench::open(setting).await?;
    let page = bench.page();
    let hand = Hand::on(page);
    hand.tap(Role::Link, containing("Cold drop How soon"))
        .await?;
    hand.choose("Part", "Bushing").await?;
    page.says("home within").await?;
    page.says("An example to look at").await?;
    hand.within(3, "Cold drop of another part")?;
    let bottom = "return document.querySelector('.verdict').getBoundingClientRect().bottom";
    let bottom = page.script(bottom, vec![]).await?;
    ensure!(bottom.as_f64().is_some_and(|px| px <= 740.0), "{bottom} px");
    Ok(())
}

#[tokio::test]
async fn an_engine_with_two_of_eight_holes() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let hand = Hand::on(page);
    hand.tap(Role::Link, containing("New job")).await?;
    hand.choose("Cylinders", "8").await?;
    hand.tap(Role::Button, "Begin the job").await?;
    hand.tap(Role::TextBox, containing("Sleeve OD")).await?;
    hand.keys("44413").await?;
    for keys in ["42000", "9.", "46400", "2200", "4.2", "10", "15", "100"] {
        hand.next(keys).await?;
    }
    hand.tap(Role::Button, "Close").await?;
    hand.tap(Role::Button, "No hole").await?;
    for hole in ["Sleeve in cylinder 3", "Sleeve in cylinder 6"] {
        hand.tap(Role::Button, hole).await?;
    }
    hand.tap(Role::Link, "Go to the bench").await?;
    // The first of the two holes is open, and the size to work to is told.
    page.find(Role::Heading, containing("3 \u{b7}")).await?;
    hand.within(55, "an engine, two of eight holes")?;
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/6/bore")).await?;
    // 4.4413 less 0.0013 (rounded half away from zero) and 0.0012 for the hone.
    page.says("bore to (diameter)").await?;
    page.says("4.4389").await?;
    Ok(())
}

#[tokio::test]
async fn receiving_a_sleeve_by_its_last_digits() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let hand = Hand::on(page);
    page.tap(Role::Link, containing("New job")).await?;
    page.choose(containing("Engine"), "Oxbow five, in-line (demo)")
        .await?;
    page.tap(Role::Button, "Begin the job").await?;
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/1/sleeve")).await?;
    let first = page
        .find_all(Role::TextBox, containing("Sleeve OD"))
        .await?;
    let first = first.first().context("a reading")?.name().await?;
    hand.tap(Role::TextBox, containing(&first)).await?;
    hand.tap(Role::Button, containing("From the right")).await?;
    hand.keys("12").await?;
    for keys in ["4", "2", "4", "2", "1"] {
        hand.next(keys).await?;
    }
    // Shop warm, four clocks of the flange.
    let rest = page.script(
        "return [...document.querySelectorAll('[data-place]')].map((i) => i.id)",
        vec![],
    );
    let rest = rest.await?;
    for id in rest.as_array().into_iter().flatten().skip(6) {
        let keys = match id.as_str().unwrap_or_default() {
            id if id.contains("temperature") => "68",
            id if id.contains("fillet") => "300",
            _ => "9",
        };
        hand.next(keys).await?;
    }
    hand.tap(Role::Button, "Next").await?;
    page.says("go").await?;
    hand.within(45, "receiving a sleeve")
}

/// The last digits that make a text out of the one before it; all of its digits where
/// there is none to begin from.
fn last_digits(before: Option<&str>, text: &str) -> String {
    // Small numbers are typed whole: no digit of them is the nominal's.
    let before = before.filter(|b| b.len() == text.len() && !b.starts_with("0.0"));
    let same = before.map_or(0, |before| {
        let pairs = before.chars().zip(text.chars());
        pairs.take_while(|(a, b)| a == b).count()
    });
    let from = same.min(text.len() - 1);
    let rest: String = text
        .chars()
        .skip(from)
        .filter(char::is_ascii_digit)
        .collect();
    match before {
        Some(_) => rest,
        None => rest.trim_start_matches('0').to_owned(),
    }
}

/// The bench's steps of a cylinder and what is read there: the readings of the inch
/// demo's first hole.
const BENCH: [&str; 14] = [
    "sleeve",
    "centre",
    "bore",
    "counterbore-diameter",
    "counterbore",
    "chamfer",
    "fit",
    "clean",
    "chill",
    "drop",
    "hold-down",
    "height",
    "pull",
    "seat",
];

/// What of them a hand passes over: no verdict hangs on it.
const PASSED: [Field; 4] = [
    Field::FlangeOdHere,
    Field::HoneStrokes,
    Field::ColdOd,
    Field::DropOutcome,
];

/// The places of the screen in their order, and what stands there.
async fn on_screen(page: &Page) -> Result<Vec<(String, String)>> {
    let script = "
        return [...document.querySelectorAll('[data-place]')]
            .filter((i) => i.offsetParent).map((i) => [i.id, i.value])";
    let all = page.script(script, vec![]).await?;
    let text = |value: &serde_json::Value| value.as_str().unwrap_or_default().to_owned();
    let all = all.as_array().context("the fields")?;
    Ok(all
        .iter()
        .map(|one| (text(&one[0]), text(&one[1])))
        .collect())
}

/// All places of a step that the demo has a text for, one after the other.
async fn fill(hand: &Hand<'_>, job: &Job) -> Result<()> {
    let page = hand.page;
    let mut before: Option<(Field, String)> = None;
    let mut at = None;
    loop {
        let fields = on_screen(page).await?;
        let wanted = fields.iter().enumerate().find_map(|(nth, (id, value))| {
            let (name, index) = id.strip_prefix("c1-")?.rsplit_once('-')?;
            let field = FIELDS.iter().find(|spec| spec.id == name)?.field;
            let place = Place::of_cylinder(1, field, index.parse().ok()?);
            let text = &job.entries.get(place)?.text;
            let is_left = value.is_empty() && !PASSED.contains(&field);
            is_left.then(|| {
                (
                    nth,
                    field,
                    id.clone(),
                    text.trim_start_matches('-').to_owned(),
                )
            })
        });
        let Some((nth, field, id, text)) = wanted else {
            return Ok(());
        };
        if at.is_some_and(|at| at + 1 == nth) {
            hand.tap(Role::Button, "Next").await?;
        } else {
            hand.taps.set(hand.taps.get() + 1);
            page.tap_field(&id).await?;
        }
        let is_length = field.spec().measure == Measure::Length;
        let stood = before
            .filter(|(same, _)| *same == field)
            .map(|(_, text)| text);
        let keys = match is_length {
            true => last_digits(stood.as_deref(), &text),
            false => text.clone(),
        };
        hand.keys(&keys)
            .await
            .with_context(|| format!("{id}: {keys}"))?;
        let stands = page
            .until(&format!("{text} in {id} by {keys}"), async || {
                let there = on_screen(page).await?;
                let has = there.iter().any(|(at, value)| *at == id && *value == text);
                Ok(has.then_some(()))
            })
            .await;
        if let Err(error) = stands {
            return Err(error.context(format!("{:?}", on_screen(page).await?)));
        }
        at = Some(nth);
        before = Some((field, text));
    }
}

/// From the sleeve's first reading to *seated*, digits counted as taps.
#[tokio::test]
async fn one_cylinder_from_receiving_to_seated() -> Result<()> {
    let bench = Bench::open(Setting::default()).await?;
    let page = bench.page();
    let hand = Hand::on(page);
    page.tap(Role::Link, containing("New job")).await?;
    page.choose(containing("Engine"), "Oxbow five, in-line (demo)")
        .await?;
    page.tap(Role::Button, "Begin the job").await?;
    page.tap(Role::Button, "No hole").await?;
    page.tap(Role::Button, "Sleeve in cylinder 1").await?;
    let job = page.job().await?;
    page.go(&format!("{job}/cylinder/1/sleeve")).await?;
    hand.tap(Role::TextBox, containing("top, across")).await?;
    hand.tap(Role::Button, containing("From the right")).await?;
    let demo = Demo::InchFive.job(1);
    for step in BENCH {
        // On by the link of each step, and the mark where a step has no number.
        for _ in 0..8 {
            let here = page.script("return location.hash", vec![]).await?;
            if here
                .as_str()
                .is_some_and(|here| here.ends_with(&format!("/{step}")))
            {
                break;
            }
            hand.taps.set(hand.taps.get() + 1);
            let on = "document.querySelector('[data-onward]').click()";
            page.script(on, vec![]).await?;
            page.is_drawn().await?;
        }
        let here = page.script("return location.hash", vec![]).await?;
        ensure!(
            here.as_str()
                .is_some_and(|here| here.ends_with(&format!("/{step}"))),
            "{here} for {step}"
        );
        fill(&hand, &demo).await?;
        if step == "clean" {
            // Unfolded, and marked.
            hand.taps.set(hand.taps.get() + 2);
            page.unfold("Done, skipped, note").await?;
            let done = page.find(Role::Button, "Done").await?;
            done.bring_above_the_pad().await?;
            done.tap().await?;
        }
    }
    page.says("seated").await?;
    hand.within(260, "one cylinder, received to seated")
}
