//! The browser's own protocol without a driver between: many commands at once.
//!
//! A driver takes one command, waits for its end and takes the next. A gauge's keys
//! must not wait for each other: on a busy machine they would come as slowly as a
//! hand's.

use std::net::TcpStream;
use std::time::Duration;

use anyhow::{Context, Result, ensure};
use fantoccini::Client;
use serde_json::{Value, json};
use tungstenite::Message;

/// How long the browser may take for one of them.
const PATIENCE: Duration = Duration::from_secs(30);

/// Sends commands together to the tab that is shown, in their order, and waits until
/// all of them are done. Chromium's alone.
pub(crate) async fn at_once(client: &Client, commands: Vec<(&str, Value)>) -> Result<()> {
    let address = client
        .capabilities()
        .and_then(|told| {
            let options = told.get("goog:chromeOptions")?;
            Some(options.get("debuggerAddress")?.as_str()?.to_owned())
        })
        .context("the address of the browser's own protocol")?;
    let tab = String::from(client.window().await?);
    let stream = TcpStream::connect(&address)?;
    stream.set_read_timeout(Some(PATIENCE))?;
    let place = format!("ws://{address}/devtools/page/{tab}");
    let (mut line, _) = tungstenite::client(place, stream)
        .map_err(|why| anyhow::anyhow!("the browser's own protocol at {address}: {why}"))?;
    for (n, (command, parameters)) in commands.iter().enumerate() {
        let asked = json!({ "id": n, "method": command, "params": parameters });
        line.write(Message::text(asked.to_string()))?;
    }
    line.flush()?;
    let mut open = commands.len();
    while open > 0 {
        let Message::Text(told) = line.read()? else {
            continue;
        };
        let told: Value = serde_json::from_str(&told)?;
        // What has no number is news that nobody asked for.
        if told["id"].is_u64() {
            ensure!(told["error"].is_null(), "{told}");
            open -= 1;
        }
    }
    line.close(None)?;
    Ok(())
}
