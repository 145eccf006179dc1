//! Keys that have no character, and keys as a gauge sends them.

use std::time::{Duration, SystemTime, UNIX_EPOCH};

use anyhow::{Context, Result};
use fantoccini::actions::{InputSource, KeyAction, KeyActions};
use serde_json::json;

use crate::devtools::at_once;
use crate::engine::Engine;
use crate::page::Page;

/// A key that has no character.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Key {
    /// Enter.
    Enter,
    /// Tab.
    Tab,
    /// Escape.
    Escape,
    /// Backspace.
    Backspace,
    /// Arrow left.
    Left,
    /// Arrow right.
    Right,
    /// Page up.
    PageUp,
    /// Page down.
    PageDown,
}

impl Key {
    /// The key in WebDriver's notation.
    pub(crate) fn code(self) -> &'static str {
        match self {
            Self::Enter => "\u{E007}",
            Self::Tab => "\u{E004}",
            Self::Escape => "\u{E00C}",
            Self::Backspace => "\u{E003}",
            Self::Left => "\u{E012}",
            Self::Right => "\u{E014}",
            Self::PageUp => "\u{E00E}",
            Self::PageDown => "\u{E00F}",
        }
    }
}

/// Control and A, in what [`Page::gauge`] sends.
pub const SELECT_ALL: char = '\u{1}';

/// A rest between two keys, longer than a gauge's and shorter than a cut, in what
/// [`Page::gauge`] sends.
pub const REST: char = '\u{2}';
const REST_MS: u64 = 60;

/// For a script that knows `count`: so many keys of the pad are pressed, and `times`
/// holds the milliseconds from each to the frame that shows it; what is worked out and
/// drawn is in them. The field is emptied after every fifth digit.
pub const PAD_PRESSES: &str = "
    const keys = [...document.querySelectorAll('.pad button')]
        .filter((b) => /^[0-9]$/.test(b.textContent.trim()));
    if (keys.length !== 10) throw new Error(`${keys.length} digit keys`);
    const painted = () => new Promise((done) => requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = done;
        channel.port2.postMessage(0);
    }));
    const times = [];
    for (let i = 0; i < count; i += 1) {
        const begun = performance.now();
        keys[(i * 7) % 10].click();
        await painted();
        times.push(performance.now() - begun);
        if (i % 5 === 4) {
            const field = document.activeElement;
            field.value = '';
            field.dispatchEvent(new Event('input', { bubbles: true }));
        }
        // A hand is not faster than this; what is stored after the paint is
        // done by then.
        await new Promise((done) => setTimeout(done, 60));
    }
";

impl Page {
    /// Keys wherever the focus is, as a gauge sends them: pressed and let go of one
    /// by one, so many ms apart. `\n` is Enter, `\t` Tab, [`SELECT_ALL`] is that.
    ///
    /// Chromium is told when each key was pressed and gets them together, so that a busy
    /// machine makes no hand of a gauge; the others take the time at which it comes to them.
    pub async fn gauge(&self, keys: &str, gap_ms: u64) -> Result<()> {
        if self.engine == Engine::Chromium {
            return self.timed_keys(keys, gap_ms).await;
        }
        let mut actions = KeyActions::new("gauge".to_owned());
        for letter in keys.chars() {
            if letter == REST {
                let duration = Duration::from_millis(REST_MS);
                actions = actions.then(KeyAction::Pause { duration });
                continue;
            }
            let (hold, value) = match letter {
                '\n' => (None, '\u{E007}'),
                '\t' => (None, '\u{E004}'),
                SELECT_ALL => (Some('\u{E009}'), 'a'),
                letter => (None, letter),
            };
            if let Some(value) = hold {
                actions = actions.then(KeyAction::Down { value });
            }
            actions = actions
                .then(KeyAction::Down { value })
                .then(KeyAction::Up { value });
            if let Some(value) = hold {
                actions = actions.then(KeyAction::Up { value });
            }
            if gap_ms > 1 {
                let duration = Duration::from_millis(gap_ms);
                actions = actions.then(KeyAction::Pause { duration });
            }
        }
        self.client
            .perform_actions(actions)
            .await
            .context("sending keys")
    }

    async fn timed_keys(&self, keys: &str, gap_ms: u64) -> Result<()> {
        let now = SystemTime::now().duration_since(UNIX_EPOCH)?.as_secs_f64();
        let mut after_ms = 0;
        let mut all = Vec::new();
        for letter in keys.chars() {
            if letter == REST {
                after_ms += REST_MS;
                continue;
            }
            // Control is 2 among what is held beside a key.
            let (key, code, text, held) = match letter {
                '\n' => ("Enter".to_owned(), 13, "\r".to_owned(), 0),
                '\t' => ("Tab".to_owned(), 9, String::new(), 0),
                SELECT_ALL => ("a".to_owned(), 65, String::new(), 2),
                letter => (letter.to_string(), 0, letter.to_string(), 0),
            };
            let at = now + 1e-3 * after_ms as f64;
            after_ms += gap_ms;
            let mut down = json!({
                "type": if text.is_empty() { "rawKeyDown" } else { "keyDown" },
                "key": key, "text": text, "unmodifiedText": text, "modifiers": held,
                "windowsVirtualKeyCode": code, "timestamp": at,
            });
            if letter == SELECT_ALL {
                down["commands"] = json!(["selectAll"]);
            }
            all.push(("Input.dispatchKeyEvent", down));
            let up = json!({
                "type": "keyUp", "key": key, "modifiers": held,
                "windowsVirtualKeyCode": code, "timestamp": at,
            });
            all.push(("Input.dispatchKeyEvent", up));
        }
        at_once(&self.client, all).await
    }
}
