//! Sharing by link and code: what a phone's own camera reads, a line to copy,
//! the share sheet where there is one.

use crate::browser;
use crate::live::live;
use crate::parts::fold::is_open;
use crate::share::link::address_of;
use crate::share::qr::qr;
use crate::texts as t;
use coldseat_core::ask::document::Shared;
use coldseat_markup::view;
use leptos::prelude::*;

/// Link and code, behind a button with words; worked out while it is open.
pub fn share(
    words: &'static str,
    id: &'static str,
    what: impl Fn() -> Option<Shared> + Send + Sync + 'static,
) -> AnyView {
    let open = RwSignal::new(false);
    let body = move || {
        open.get().then(|| {
            let address = what().map(|shared| address_of(&shared));
            match address {
                Some(Ok(address)) => sheet(id, &address),
                Some(Err(fault)) => {
                    view! { <p class="fault">{t::link_fault(&fault)}</p> }.into_any()
                }
                None => view! { <p>{t::NOTHING_TO_SHARE}</p> }.into_any(),
            }
        })
    };
    view! {
        <details class="help" prop:open=move || open.get() on:toggle=move |event| open.set(is_open(&event))>
            <summary>{words}</summary>
            {live(body)}
        </details>
    }
    .into_any()
}

fn sheet(id: &'static str, address: &str) -> AnyView {
    // A code must lead somewhere.
    let leads = browser::has_address();
    let code = leads.then(|| qr(address, t::LINK_QR.get())).flatten();
    let without = match (leads, &code) {
        (false, _) => Some(t::NO_LINK_FROM_FILE),
        (true, None) => Some(t::QR_TOO_LONG),
        (true, Some(_)) => None,
    };
    let told = RwSignal::new("");
    let (to_copy, to_share) = (address.to_owned(), address.to_owned());
    let copy = move |_| {
        browser::copy(&to_copy, move |done| {
            told.set(if done {
                t::COPIED.get()
            } else {
                t::COPY_BY_HAND.get()
            });
        });
    };
    let hand_on = (leads && browser::can_share()).then(|| {
        view! {
            <button type="button" on:click=move |_| browser::share_link(&to_share)>
                {t::SHARE_SHEET}
            </button>
        }
    });
    view! {
        {code}
        <p>{without}</p>
        <p class="quiet">{t::LINK_WHAT}</p>
        <div class="choice">
            <label for=id>{if leads { t::LINK } else { t::LINK_TO_PASTE }}</label>
            <input
                id=id
                type="text"
                class="link-line"
                readonly
                prop:value=address.to_owned()
                on:focus=move |_| browser::select_all(id)
            />
        </div>
        <div class="row">
            <button type="button" on:click=copy>
                {t::COPY_LINK}
            </button>
            {hand_on} <span role="status">{move || told.get()}</span>
        </div>
    }
    .into_any()
}
