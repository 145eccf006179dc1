//! The shop's folder as a server gives it: WebDAV over `fetch`, beside the page.
//! What an answer means is the core's to say.

use coldseat_core::storage::folder::Call;
use coldseat_core::storage::folder::Fault;
use coldseat_core::storage::folder::Reply;
use leptos::prelude::*;
use std::time::Duration;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{AbortController, Headers, RequestCache, RequestInit, Response};

/// Where the folder is: beside the page, so that nothing else has to be allowed.
const FOLDER: &str = "shop/";
/// An answer is not waited for longer.
const PATIENCE: Duration = Duration::from_secs(25);
/// What is asked of each file of a folder.
const WANTED: &str = "<?xml version=\"1.0\" encoding=\"utf-8\"?>\
    <propfind xmlns=\"DAV:\"><prop><getetag/><getcontentlength/><getlastmodified/></prop></propfind>";

/// Carries a call out; with the time that the server told.
pub async fn carry(call: &Call) -> (Reply, Option<u64>) {
    match sent(call).await {
        Some((status, text, at)) => (Reply::of(call, status, text), at),
        None => (Reply::Failed(Fault::Away), None),
    }
}

async fn sent(call: &Call) -> Option<(u16, String, Option<u64>)> {
    let headers = Headers::new().ok()?;
    let init = RequestInit::new();
    let (method, path, body) = match call {
        Call::List(path) => {
            headers.set("depth", "1").ok()?;
            headers.set("content-type", "application/xml").ok()?;
            ("PROPFIND", path, Some(WANTED))
        }
        Call::Get(path) => ("GET", path, None),
        Call::Put(path, text) => {
            headers
                .set("content-type", "text/plain; charset=utf-8")
                .ok()?;
            ("PUT", path, Some(text.as_str()))
        }
        Call::Delete(path) => ("DELETE", path, None),
        Call::MakeFolder(path) => ("MKCOL", path, None),
    };
    init.set_method(method);
    init.set_headers(&headers);
    init.set_cache(RequestCache::NoStore);
    if let Some(body) = body {
        init.set_body(&JsValue::from_str(body));
    }
    let ends = AbortController::new().ok()?;
    init.set_signal(Some(&ends.signal()));
    let timer = set_timeout_with_handle(move || ends.abort(), PATIENCE).ok();
    let answer = window().fetch_with_str_and_init(&format!("{FOLDER}{path}"), &init);
    let read = async {
        let answer: Response = JsFuture::from(answer).await.ok()?.dyn_into().ok()?;
        let told = answer.headers().get("date").ok().flatten();
        let at = told.map(|date| js_sys::Date::parse(&date));
        let at = at
            .filter(|at| at.is_finite() && *at > 0.0)
            .map(|at| at as u64);
        let text = JsFuture::from(answer.text().ok()?)
            .await
            .ok()?
            .as_string()?;
        Some((answer.status(), text, at))
    };
    let read = read.await;
    if let Some(timer) = timer {
        timer.clear();
    }
    read
}
