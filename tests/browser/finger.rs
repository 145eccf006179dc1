//! What a finger does beside tapping a part by its name.

use anyhow::{Context, Result};
use fantoccini::Locator;
use serde_json::{Value, json};

use crate::page::Page;
use crate::role::single_spaced;

impl Page {
    /// The buttons of a named region: their names, and where a finger finds them.
    pub async fn keys_of(&self, region: &str) -> Result<Vec<(String, f64, f64)>> {
        let script = "
            return [...document.querySelectorAll('section[aria-label]')]
                .filter((s) => s.getAttribute('aria-label') === arguments[0])
                .flatMap((s) => [...s.querySelectorAll('button')])
                .map((b) => [b, b.getBoundingClientRect()])
                .map(([b, r]) => [b.getAttribute('aria-label') ?? b.innerText,
                    r.left + r.width / 2, r.top + r.height / 2]);
        ";
        let keys = self.script(script, vec![json!(region)]).await?;
        let number = |value: &Value| value.as_f64().context("a number");
        let read = |key: &Value| {
            let name = single_spaced(key[0].as_str().unwrap_or_default());
            Ok((name, number(&key[1])?, number(&key[2])?))
        };
        keys.as_array().into_iter().flatten().map(read).collect()
    }

    /// Touches the screen there, as a finger does.
    pub async fn touch(&self, x: f64, y: f64) -> Result<()> {
        for (kind, points) in [
            ("touchStart", json!([{ "x": x, "y": y }])),
            ("touchEnd", json!([])),
        ] {
            let event = json!({ "type": kind, "touchPoints": points });
            self.devtools("Input.dispatchTouchEvent", event).await?;
        }
        Ok(())
    }

    /// Taps the field with this id, scrolled up first, out of the pad's way.
    pub async fn tap_field(&self, id: &str) -> Result<()> {
        let up = "document.getElementById(arguments[0]).scrollIntoView({ block: 'center' })";
        self.script(up, vec![json!(id)]).await?;
        let field = self.client.find(Locator::Id(id)).await.context("a field")?;
        field.click().await.context("tapping a field")
    }

    /// Opens what stands behind the menu button, where it does.
    pub async fn menu(&self) -> Result<()> {
        let script = "
            const menu = document.querySelector('.bar-menu');
            if (menu?.getAttribute('aria-expanded') === 'false' && menu.offsetParent) menu.click();
            return Boolean(menu);
        ";
        self.until("a menu", async || {
            let there = self.script(script, vec![]).await?;
            Ok((there == json!(true)).then_some(()))
        })
        .await
    }
}
