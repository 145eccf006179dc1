//! One thing on the page, as a person handles it.

use anyhow::{Context, Result};
use fantoccini::Client;
use fantoccini::elements::Element;

use crate::driver::Ask;
use crate::key::Key;
use crate::role::single_spaced;

/// One thing on the page.
#[derive(Debug, Clone)]
pub struct Part {
    pub(crate) element: Element,
    pub(crate) client: Client,
}

impl Part {
    /// Taps it.
    pub async fn tap(&self) -> Result<()> {
        self.element.click().await.context("tapping")
    }

    /// Scrolls it to where nothing covers it, as a person does.
    pub async fn bring_up(&self) -> Result<()> {
        let script = "arguments[0].scrollIntoView({ block: 'center' })";
        let itself = vec![serde_json::to_value(&self.element)?];
        self.client.execute(script, itself).await?;
        Ok(())
    }

    /// Scrolls it to the upper end of the screen, where the pad never is.
    pub async fn bring_above_the_pad(&self) -> Result<()> {
        let script = "arguments[0].scrollIntoView({ block: 'start' })";
        let element = vec![serde_json::to_value(&self.element)?];
        self.client.execute(script, element).await?;
        Ok(())
    }

    /// Replaces what a field holds.
    pub async fn write(&self, text: &str) -> Result<()> {
        self.element.clear().await.context("clearing")?;
        self.element.send_keys(text).await.context("typing")
    }

    /// Types after what a field holds.
    pub async fn type_on(&self, text: &str) -> Result<()> {
        self.element.send_keys(text).await.context("typing")
    }

    /// Presses a key in it.
    pub async fn press(&self, key: Key) -> Result<()> {
        self.element.send_keys(key.code()).await.context("pressing")
    }

    /// What a field holds.
    pub async fn value(&self) -> Result<String> {
        Ok(self.element.prop("value").await?.unwrap_or_default())
    }

    /// Its text as shown, with single spaces.
    pub async fn text(&self) -> Result<String> {
        Ok(single_spaced(&self.element.text().await?))
    }

    /// An attribute, such as `aria-invalid` or `aria-pressed`.
    pub async fn attribute(&self, name: &str) -> Result<Option<String>> {
        Ok(self.element.attr(name).await?)
    }

    /// Whether it can be used.
    pub async fn is_enabled(&self) -> Result<bool> {
        Ok(self.element.is_enabled().await?)
    }

    /// Left, top, width and height in CSS pixels.
    pub async fn rectangle(&self) -> Result<(f64, f64, f64, f64)> {
        Ok(self.element.rectangle().await?)
    }

    /// Its accessible name, as the browser computes it.
    pub async fn name(&self) -> Result<String> {
        self.computed("computedlabel").await
    }

    /// What describes it (`aria-describedby`): the message at a field.
    pub async fn description(&self) -> Result<String> {
        let script = "return (arguments[0].getAttribute('aria-describedby') ?? '').split(' ')
            .map((id) => document.getElementById(id)?.innerText ?? '').join(' ');";
        let value = self
            .client
            .execute(script, vec![serde_json::to_value(&self.element)?])
            .await?;
        Ok(single_spaced(value.as_str().unwrap_or_default()))
    }

    pub(crate) async fn computed(&self, what: &str) -> Result<String> {
        let ask = Ask::element(&self.element.element_id(), what);
        let value = self.client.issue_cmd(ask).await?;
        Ok(value.as_str().unwrap_or_default().to_owned())
    }
}
