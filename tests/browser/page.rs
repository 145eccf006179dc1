//! The page as a person meets it.

use std::fs;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use anyhow::{Context, Result, anyhow, bail, ensure};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use fantoccini::Client;
use fantoccini::elements::Element;
use fantoccini::wd::{PrintConfiguration, PrintSize};
use serde_json::{Value, json};

use crate::driver::Ask;
use crate::engine::Engine;
use crate::key::Key;
use crate::part::Part;
use crate::role::{Name, Role, single_spaced};

/// How long a thing may take to appear.
const PATIENCE: Duration = Duration::from_secs(30);

/// How often it is looked for.
const GLANCE: Duration = Duration::from_millis(40);

/// The candidates that a person can see: likely ones, and the others.
///
/// The guess only settles whom the browser is asked about first; the others are
/// asked about when no likely one has the name. It saves hundreds of questions
/// on a full screen.
const CANDIDATES: &str = "
    const [selector, words] = arguments;
    const seen = [...document.querySelectorAll(selector)]
        .filter((e) => e.checkVisibility({ visibilityProperty: true }));
    const plain = (text) => (text ?? '').replace(/\\s+/g, ' ').trim().toLowerCase();
    const wanted = plain(words);
    const guess = (e) => plain([
        e.getAttribute('aria-label'),
        ...(e.getAttribute('aria-labelledby') ?? '').split(' ')
            .map((id) => document.getElementById(id)?.textContent),
        ...[...(e.labels ?? [])].map((label) => label.textContent),
        e.textContent, e.title, e.alt, e.placeholder, e.value,
    ].join(' '));
    const likely = seen.filter((e) => guess(e).includes(wanted));
    return [likely, seen.filter((e) => !likely.includes(e))];
";

/// What the page must keep for the test before its own scripts run.
const WATCH: &str = "
    window.coldseatComplaints = [];
    document.addEventListener('securitypolicyviolation', (e) => {
        window.coldseatComplaints.push(`content policy: ${e.violatedDirective} ${e.blockedURI}`);
    });
    window.addEventListener('error', (e) => {
        window.coldseatComplaints.push(`error: ${e.message}`);
    });
    window.addEventListener('unhandledrejection', (e) => {
        window.coldseatComplaints.push(`rejection: ${e.reason}`);
    });
";

/// The page in an open browser.
#[derive(Debug, Clone)]
pub struct Page {
    pub(crate) client: Client,
    pub(crate) engine: Engine,
    address: String,
}

impl Page {
    pub(crate) fn new(client: Client, engine: Engine, address: String) -> Self {
        Self {
            client,
            engine,
            address,
        }
    }

    /// Opens a place in the page, `""` for its front, and waits until it stands.
    pub async fn go(&self, place: &str) -> Result<()> {
        if self.engine == Engine::Chromium {
            self.devtools(
                "Page.addScriptToEvaluateOnNewDocument",
                json!({ "source": WATCH }),
            )
            .await?;
        }
        let address = format!("{}{place}", self.address);
        self.client.goto(&address).await.context("opening")?;
        self.stands().await?;
        // Another place in the same page loads nothing.
        self.is_drawn().await
    }

    /// The address of the job that is open.
    pub async fn job(&self) -> Result<String> {
        let address = self.script("return location.hash", vec![]).await?;
        let parts = address.as_str().context("an address")?.split('/').take(3);
        Ok(parts.collect::<Vec<_>>().join("/"))
    }

    /// Waits until a change of address was heard and drawn: two frames on.
    pub async fn is_drawn(&self) -> Result<()> {
        let frames = "await new Promise((drawn) =>
            requestAnimationFrame(() => requestAnimationFrame(drawn)));";
        self.script_awaiting(frames).await?;
        Ok(())
    }

    /// Opens another tab of the browser and turns to it.
    pub async fn open_tab(&self) -> Result<()> {
        let tab = self.client.new_window(true).await.context("a new tab")?;
        self.client.switch_to_window(tab.handle).await?;
        Ok(())
    }

    /// Turns to a tab, counted from 0 as they were opened.
    pub async fn turn_to(&self, which: usize) -> Result<()> {
        let tabs = self.client.windows().await.context("the tabs")?;
        let tab = tabs.into_iter().nth(which).context("a tab")?;
        self.client.switch_to_window(tab).await?;
        Ok(())
    }

    /// Closes the tab that is open, for an empty one in its place.
    pub async fn leave_for_an_empty_tab(&self) -> Result<()> {
        let tab = self.client.new_window(true).await.context("a new tab")?;
        self.client.close_window().await.context("closing a tab")?;
        self.client.switch_to_window(tab.handle).await?;
        Ok(())
    }

    /// Reloads and waits until the page stands.
    pub async fn reload(&self) -> Result<()> {
        if self.engine == Engine::Firefox {
            // Its driver's own command passes the worker by, as Shift does.
            let script = "window.coldseatLeft = true; location.reload();";
            self.script(script, vec![]).await?;
            let loaded = "return window.coldseatLeft === undefined";
            self.until("the page to load anew", async || {
                Ok((self.script(loaded, vec![]).await? == json!(true)).then_some(()))
            })
            .await?;
        } else {
            self.client.refresh().await.context("reloading")?;
        }
        self.stands().await
    }

    /// Waits until the program runs; fails with its words if it cannot.
    pub async fn stands(&self) -> Result<()> {
        // A driver may take the browser's own page of an error for a load.
        let script = "
            if (!document.querySelector('meta[name=\"apple-mobile-web-app-title\"]')) return null;
            const boot = document.getElementById('boot');
            const failed = document.getElementById('boot-failed');
            if (boot && failed && !failed.hidden) return failed.innerText;
            return boot || document.readyState !== 'complete' ? null : '';
        ";
        let said = self
            .until("the page to stand", async || {
                Ok(self
                    .script(script, vec![])
                    .await?
                    .as_str()
                    .map(str::to_owned))
            })
            .await?;
        ensure!(said.is_empty(), "the page does not start: {said}");
        if self.engine != Engine::Chromium {
            // These can be watched only from here on.
            let watch = format!("if (!window.coldseatComplaints) {{ {WATCH} }}");
            self.script(&watch, vec![]).await?;
        }
        Ok(())
    }

    /// Waits for a thing and returns it; more than one of it is an error.
    pub async fn find(&self, role: Role, name: impl Into<Name>) -> Result<Part> {
        let name = name.into();
        let wanted = format!("{role:?} {name:?}");
        let found = self
            .until(&wanted, async || {
                let found = self.matching(role, &name).await?;
                Ok((!found.is_empty()).then_some(found))
            })
            .await?;
        match <[Part; 1]>::try_from(found) {
            Ok([part]) => Ok(part),
            Err(parts) => bail!("{} of {wanted} on the page", parts.len()),
        }
    }

    /// All things of a role and name that are there now, in the page's order.
    pub async fn find_all(&self, role: Role, name: impl Into<Name>) -> Result<Vec<Part>> {
        self.matching(role, &name.into()).await
    }

    /// Waits until a thing is gone.
    pub async fn gone(&self, role: Role, name: impl Into<Name>) -> Result<()> {
        let name = name.into();
        self.until(&format!("{role:?} {name:?} to go"), async || {
            Ok(self.matching(role, &name).await?.is_empty().then_some(()))
        })
        .await
    }

    /// Opens what is folded behind these words. A summary is a button to some
    /// browsers and its own thing to others: it is found by its words alone.
    pub async fn unfold(&self, words: &str) -> Result<()> {
        self.says(words).await?;
        let script = "[...document.querySelectorAll('summary')]
            .find((s) => s.textContent.includes(arguments[0])).click()";
        self.script(script, vec![words.into()]).await?;
        Ok(())
    }

    /// Taps a thing.
    pub async fn tap(&self, role: Role, name: impl Into<Name>) -> Result<()> {
        self.find(role, name).await?.tap().await
    }

    /// Replaces what the field with this label holds.
    pub async fn write(&self, label: impl Into<Name>, text: &str) -> Result<()> {
        self.find(Role::TextBox, label).await?.write(text).await
    }

    /// What the field with this label holds.
    pub async fn value(&self, label: impl Into<Name>) -> Result<String> {
        self.find(Role::TextBox, label).await?.value().await
    }

    /// Chooses an option by its words, in the choice with this label.
    pub async fn choose(&self, label: impl Into<Name>, option: &str) -> Result<()> {
        let choice = self.find(Role::ComboBox, label).await?;
        choice
            .element
            .select_by_label(option)
            .await
            .with_context(|| format!("choosing {option}"))
    }

    /// Sets a slider to a value, as dragging it there would.
    pub async fn slide(&self, label: impl Into<Name>, value: f64) -> Result<()> {
        let slider = self.find(Role::Slider, label).await?;
        let script = "
            arguments[0].value = arguments[1];
            for (const kind of ['input', 'change'])
                arguments[0].dispatchEvent(new Event(kind, { bubbles: true }));
        ";
        let arguments = vec![serde_json::to_value(&slider.element)?, json!(value)];
        self.script(script, arguments).await?;
        Ok(())
    }

    /// Presses a key where the focus is.
    pub async fn press(&self, key: Key) -> Result<()> {
        self.focused().await?.press(key).await
    }

    /// The thing that has the focus.
    pub async fn focused(&self) -> Result<Part> {
        Ok(self.part(self.client.active_element().await?))
    }

    /// Waits until the page shows these words.
    pub async fn says(&self, words: &str) -> Result<()> {
        let words = single_spaced(words);
        let result = self
            .until(&format!("the words `{words}`"), async || {
                Ok(self.text().await?.contains(&words).then_some(()))
            })
            .await;
        match result {
            Ok(()) => Ok(()),
            Err(error) => Err(error.context(format!("the page says: {}", self.text().await?))),
        }
    }

    /// All text that is shown, with single spaces.
    pub async fn text(&self) -> Result<String> {
        let text = self
            .script("return document.body.innerText", vec![])
            .await?;
        Ok(single_spaced(text.as_str().unwrap_or_default()))
    }

    /// Waits until a worker serves this page.
    pub async fn is_kept_offline(&self) -> Result<()> {
        let script = "return navigator.serviceWorker.controller?.state === 'activated'";
        self.until("the worker to take over", async || {
            Ok((self.script(script, vec![]).await? == json!(true)).then_some(()))
        })
        .await
    }

    /// What went wrong since the page was opened: errors, content policy,
    /// console messages of level "severe" (Chromium's). An address that is
    /// loaded anew forgets the first two, the console is read once.
    pub async fn complaints(&self) -> Result<Vec<String>> {
        let kept = self
            .script("return window.coldseatComplaints ?? []", vec![])
            .await?;
        let console = match self.engine {
            Engine::Chromium => self.client.issue_cmd(Ask::console()).await?,
            Engine::Firefox | Engine::WebKit => Value::Null,
        };
        let kept = kept.as_array().cloned().unwrap_or_default();
        let console = console.as_array().cloned().unwrap_or_default();
        Ok(kept
            .iter()
            .map(|entry| entry.as_str().unwrap_or_default().to_owned())
            .chain(
                console
                    .iter()
                    .filter(|entry| entry["level"] == "SEVERE")
                    .map(|entry| entry["message"].as_str().unwrap_or_default().to_owned()),
            )
            .collect())
    }

    /// Fails with what went wrong since the page was opened, if anything did.
    pub async fn is_quiet(&self) -> Result<()> {
        // Asked once: the console tells what it has only once.
        let complaints = self.complaints().await?;
        ensure!(complaints.is_empty(), "{complaints:?}");
        Ok(())
    }

    /// Writes what is on the screen to `NAME.png` among the pictures.
    pub async fn picture(&self, name: &str) -> Result<PathBuf> {
        keep(&format!("{name}.png"), &self.client.screenshot().await?)
    }

    /// Writes the whole page, scrolled-off parts too, to `NAME.png`.
    pub async fn long_picture(&self, name: &str) -> Result<PathBuf> {
        // What sticks to the top of the screen stands at the top of the picture.
        self.script("window.scrollTo(0, 0)", vec![]).await?;
        let parameters = json!({ "format": "png", "captureBeyondViewport": true });
        let answer = self.devtools("Page.captureScreenshot", parameters).await?;
        let data = answer["data"].as_str().context("a picture's data")?;
        keep(&format!("{name}.png"), &STANDARD.decode(data)?)
    }

    /// Writes the printed page to `NAME.pdf` among the pictures.
    pub async fn print(&self, name: &str) -> Result<PathBuf> {
        let pdf = self.client.print(PrintConfiguration::default()).await?;
        keep(&format!("{name}.pdf"), &pdf)
    }

    /// As [`Page::print`], on paper of this width and height in centimetres.
    pub async fn print_on(&self, name: &str, width: f64, height: f64) -> Result<PathBuf> {
        let size = PrintSize { width, height };
        let setting = PrintConfiguration::builder()
            .size(size)
            .build()
            .map_err(|error| anyhow!("{error:?}"))?;
        let pdf = self.client.print(setting).await?;
        keep(&format!("{name}.pdf"), &pdf)
    }

    /// Runs a script with `return`: for what no person can see, such as storage.
    pub async fn script(&self, script: &str, arguments: Vec<Value>) -> Result<Value> {
        self.client
            .execute(script, arguments)
            .await
            .context("running a script")
    }

    /// As [`Page::script`] for a script that awaits.
    pub async fn script_awaiting(&self, script: &str) -> Result<Value> {
        let whole = format!(
            "const done = arguments[arguments.length - 1];
             (async () => {{ {script} }})().then(
                 (value) => done({{ value: value ?? null }}),
                 (error) => done({{ error: String(error) }}));"
        );
        let mut answer = self
            .client
            .execute_async(&whole, vec![])
            .await
            .context("running a script")?;
        if let Some(error) = answer["error"].as_str() {
            bail!("the script failed: {error}");
        }
        Ok(answer["value"].take())
    }

    /// A command of the browser's own protocol.
    pub async fn devtools(&self, command: &str, parameters: Value) -> Result<Value> {
        self.client
            .issue_cmd(Ask::devtools(command, parameters))
            .await
            .with_context(|| command.to_owned())
    }

    /// Waits until `look` finds what it looks for.
    ///
    /// An error while looking is looked at again: the page may be loading or
    /// drawing anew. The last one is told when the patience is at its end.
    pub async fn until<T>(
        &self,
        what: &str,
        look: impl AsyncFn() -> Result<Option<T>>,
    ) -> Result<T> {
        let begun = Instant::now();
        loop {
            let looked = look().await;
            if let Ok(Some(found)) = looked {
                return Ok(found);
            }
            if begun.elapsed() > PATIENCE {
                let told = format!("waited {} s for {what}", PATIENCE.as_secs());
                return match looked {
                    Err(error) => Err(error.context(told)),
                    Ok(_) => Err(anyhow!(told)),
                };
            }
            tokio::time::sleep(GLANCE).await;
        }
    }

    fn part(&self, element: Element) -> Part {
        Part {
            element,
            client: self.client.clone(),
        }
    }

    async fn matching(&self, role: Role, name: &Name) -> Result<Vec<Part>> {
        // The page may redraw between the question and the next: what is gone
        // by then is looked for anew by the caller's waiting.
        let arguments = vec![json!(role.candidates()), json!(name.words())];
        let groups = self.script(CANDIDATES, arguments).await?;
        let mut found = Vec::new();
        for group in groups.as_array().into_iter().flatten() {
            for candidate in group.as_array().into_iter().flatten() {
                let Some(id) = element_id(candidate) else {
                    continue;
                };
                let element = Element::from_element_id(self.client.clone(), id.to_owned().into());
                let part = self.part(element);
                let (Ok(word), Ok(computed)) = (
                    part.computed("computedrole").await,
                    part.computed("computedlabel").await,
                ) else {
                    continue;
                };
                if role.words().contains(&word.as_str()) && name.fits(&computed) {
                    found.push(part);
                }
            }
            if !found.is_empty() {
                break;
            }
        }
        Ok(found)
    }
}

/// The reference in WebDriver's notation of an element.
fn element_id(value: &Value) -> Option<&str> {
    value["element-6066-11e4-a52e-4f735466cecf"].as_str()
}

fn keep(name: &str, bytes: &[u8]) -> Result<PathBuf> {
    let folder = std::env::var_os("COLDSEAT_PICTURES").map_or_else(
        || xtask::layout::target_folder().join("pictures"),
        PathBuf::from,
    );
    fs::create_dir_all(&folder)?;
    let path = folder.join(name);
    fs::write(&path, bytes).with_context(|| format!("{}", path.display()))?;
    Ok(path)
}
