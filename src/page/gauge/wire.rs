//! A gauge on a wire, where the browser has serial ports (Web Serial): what it sends,
//! line by line, goes the way of what a gauge types. The port is chosen by the person
//! in the browser's own list; nothing is sent to the gauge.

use super::keys::hand_at;
use super::{Because, Caught, NotTaken};
use crate::state::State;
use coldseat_core::ask::{Lines, Wire};
use js_sys::{Array, Function, Object, Promise, Reflect, Uint8Array};
use leptos::prelude::*;
use std::cell::RefCell;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

/// How the wire stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WireStatus {
    /// Not connected.
    Off,
    /// The browser's list is open, or the port is.
    Asking,
    /// What comes is read.
    On,
    /// The port could not be opened: another program has it, or it is gone.
    NotOpened,
    /// It was connected and is gone.
    Lost,
}

/// What the page knows of the wire.
#[derive(Clone, Copy)]
pub struct Wired {
    /// How it stands.
    pub status: RwSignal<WireStatus>,
    /// The lines that came last, the newest last.
    pub lines: RwSignal<Vec<String>>,
    /// Whether lines are only looked at: the pattern is being taught.
    pub teaching: RwSignal<bool>,
}

impl Wired {
    /// Nothing is connected.
    #[must_use]
    pub fn new() -> Self {
        Self {
            status: RwSignal::new(WireStatus::Off),
            lines: RwSignal::new(Vec::new()),
            teaching: RwSignal::new(false),
        }
    }
}

/// Lines that are kept to be looked at.
const LINES_SHOWN: usize = 5;

thread_local! {
    /// What reads from the port, while it is open.
    static READER: RefCell<Option<JsValue>> = const { RefCell::new(None) };
}

/// The browser's serial ports, where it has any.
fn ports() -> Option<JsValue> {
    let ports = Reflect::get(&window().navigator(), &"serial".into()).ok()?;
    ports.is_object().then_some(ports)
}

/// Whether this browser has serial ports at all.
#[must_use]
pub fn has_ports() -> bool {
    ports().is_some()
}

fn call(of: &JsValue, name: &str, with: &[JsValue]) -> Result<JsValue, JsValue> {
    let function: Function = Reflect::get(of, &name.into())?.dyn_into()?;
    function.apply(of, &with.iter().collect::<Array>())
}

async fn wait(of: &JsValue, name: &str, with: &[JsValue]) -> Result<JsValue, JsValue> {
    let answer = call(of, name, with)?;
    JsFuture::from(Promise::resolve(&answer)).await
}

/// How a port is opened.
fn options(wire: &Wire) -> Result<JsValue, JsValue> {
    let (data, stop) = wire.frame.bits();
    let parity = if wire.frame.is_even() { "even" } else { "none" };
    let all = Object::new();
    for (name, value) in [
        ("baudRate", JsValue::from(wire.speed)),
        ("dataBits", data.into()),
        ("stopBits", stop.into()),
        ("parity", parity.into()),
    ] {
        Reflect::set(&all, &name.into(), &value)?;
    }
    Ok(all.into())
}

/// What a port sends, and that it has been closed.
enum Came {
    Bytes(Vec<u8>),
    /// Closed by the person.
    End,
}

async fn read(reader: &JsValue) -> Result<Came, JsValue> {
    let chunk = wait(reader, "read", &[]).await?;
    if Reflect::get(&chunk, &"done".into())?.is_truthy() {
        return Ok(Came::End);
    }
    let bytes = Reflect::get(&chunk, &"value".into())?;
    Ok(Came::Bytes(Uint8Array::new(&bytes).to_vec()))
}

/// Reads until the person closes the port or it is gone. A letter that came garbled
/// ends the stream and not the port: the next stream is read on.
async fn listen(state: State, port: &JsValue) -> WireStatus {
    let mut lines = Lines::default();
    loop {
        let reader = Reflect::get(port, &"readable".into())
            .and_then(|stream| call(&stream, "getReader", &[]));
        let Ok(reader) = reader else {
            state.wire_cut(lines.rest());
            return WireStatus::Lost;
        };
        READER.with(|kept| *kept.borrow_mut() = Some(reader.clone()));
        loop {
            match read(&reader).await {
                Ok(Came::Bytes(bytes)) => {
                    for line in lines.take(&bytes) {
                        state.wire_line(line);
                    }
                }
                Ok(Came::End) => {
                    state.wire_cut(lines.rest());
                    // A reader that is done holds nothing.
                    let _ = call(&reader, "releaseLock", &[]);
                    return WireStatus::Off;
                }
                Err(_) => {
                    state.wire_cut(lines.rest());
                    let _ = call(&reader, "releaseLock", &[]);
                    break;
                }
            }
        }
    }
}

async fn connect(state: State, wire: Wire) -> WireStatus {
    let Some(ports) = ports() else {
        return WireStatus::Off;
    };
    // The list was left without a choice.
    let Ok(port) = wait(&ports, "requestPort", &[]).await else {
        return WireStatus::Off;
    };
    let Ok(options) = options(&wire) else {
        return WireStatus::NotOpened;
    };
    if wait(&port, "open", &[options]).await.is_err() {
        return WireStatus::NotOpened;
    }
    state.gauge.wire.status.set(WireStatus::On);
    let ended = listen(state, &port).await;
    READER.with(|kept| *kept.borrow_mut() = None);
    // What is gone cannot be closed.
    let _ = wait(&port, "close", &[]).await;
    ended
}

impl State {
    /// What is set of the wire.
    fn wire_set(self) -> Wire {
        self.session
            .shop
            .with_untracked(|shop| shop.wire.clone().unwrap_or_default())
    }

    /// Lets the person choose a port and reads from it until it is closed.
    pub fn connect_wire(self) {
        let status = self.gauge.wire.status;
        if matches!(status.get_untracked(), WireStatus::Asking | WireStatus::On) {
            return;
        }
        status.set(WireStatus::Asking);
        let wire = self.wire_set();
        spawn_local(async move {
            let ended = connect(self, wire).await;
            status.set(ended);
        });
    }

    /// Closes the port.
    pub fn disconnect_wire(self) {
        if let Some(reader) = READER.with(|kept| kept.borrow().clone()) {
            spawn_local(async move {
                // Its reading ends with it, and says so there.
                let _ = wait(&reader, "cancel", &[]).await;
            });
        }
    }

    /// A line has come: it is shown, and what it says goes where the hand is.
    fn wire_line(self, line: String) {
        let wired = self.gauge.wire;
        wired.lines.update(|lines| {
            lines.push(line.clone());
            let over = lines.len().saturating_sub(LINES_SHOWN);
            lines.drain(..over);
        });
        if wired.teaching.get_untracked() {
            return;
        }
        let wire = self.wire_set();
        match wire.reading(&line) {
            Ok(text) => {
                self.burst_ended(hand_at(self), text, false);
            }
            Err(why) => {
                self.refuse(line, NotTaken::OfWire(why));
            }
        }
    }

    /// The wire was taken off in mid-line: half a reading is no reading.
    fn wire_cut(self, rest: Option<String>) {
        if let Some(text) = rest.filter(|_| !self.gauge.wire.teaching.get_untracked()) {
            let began = hand_at(self);
            self.catch(Caught {
                text,
                because: Because::CutOff,
                began,
            });
        }
    }
}
