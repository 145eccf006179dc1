//! The shop's folder as a person sees it: joining and leaving, the other devices,
//! how far things have come.

use crate::browser;
use crate::folder::{OtherDevice, Shop};
use crate::live::live;
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::Place;
use coldseat_markup::view;
use leptos::prelude::*;

/// How far what was typed has come: in this browser, and where this device has
/// joined the shop's folder, there.
pub fn kept_line(state: State) -> String {
    let shop = Shop::here();
    let here = t::keeping(state.storage.keeping.get());
    if shop.joined.with(Option::is_none) {
        return here.to_owned();
    }
    let there = shop
        .standing
        .with(|standing| t::in_folder(standing.as_ref(), time));
    if here.is_empty() {
        there
    } else {
        format!("{here} \u{b7} {there}")
    }
}

/// The time of day.
fn time(at: u64) -> String {
    let date = browser::date(at);
    date.split(' ').next_back().unwrap_or_default().to_owned()
}

/// On which device a reading of the open job was entered, where it was another one.
pub fn entered(state: State, place: Place) -> Option<AnyView> {
    let device = Shop::here().entered_on(state, place)?;
    Some(view! { <p class="quiet">{t::entered_on(&device)}</p> }.into_any())
}

/// What the list says of a job: new from another device, waits to be sent.
pub fn marks(name: &str) -> AnyView {
    let shop = Shop::here();
    let name = name.to_owned();
    live(move || {
        let of = |list: RwSignal<Vec<String>>| list.with(|all| all.contains(&name));
        let mut words = Vec::new();
        if of(shop.news) {
            words.push(t::NEW_FROM_OTHERS.get());
        }
        if of(shop.waiting) {
            words.push(t::TO_BE_SENT.get());
        }
        (!words.is_empty()).then(|| {
            let words = words.join(" \u{b7} ");
            view! { <span class="job-newer">{words}</span> }.into_any()
        })
    })
}

/// The section of Settings.
pub fn folder_settings(state: State) -> AnyView {
    let shop = Shop::here();
    // Another language draws this anew: what is typed stands outside.
    let typed = move || {
        let joined = || shop.joined.get_untracked().unwrap_or_default();
        shop.typed.get_untracked().unwrap_or_else(joined)
    };
    let leaving = RwSignal::new(false);
    let nameless = RwSignal::new(false);
    let field = move || {
        view! {
            <div class="choice">
                <label for="device-name">{t::DEVICE_NAME}</label>
                <input
                    id="device-name"
                    type="text"
                    maxlength="40"
                    autocomplete="off"
                    value=typed()
                    on:input=move |event| shop.typed.set(Some(event_target_value(&event)))
                />
                <p class="quiet">{t::DEVICE_NAME_WHAT}</p>
                {live(move || {
                    let says = nameless.get();
                    says.then(|| view! { <p class="fault" role="alert">{t::DEVICE_NAMELESS}</p> }.into_any())
                })}
            </div>
        }
        .into_any()
    };
    let button = |words: &'static str, act: Box<dyn Fn() + Send>| {
        view! {
            <button type="button" on:click=move |_| act()>
                {words}
            </button>
        }
        .into_any()
    };
    let is_in = crate::memo::Memo::new(move |_| shop.joined.with(Option::is_some));
    let out = move || {
        let join = move || nameless.set(!shop.join(state, &typed()));
        view! { <p class="row">{button(t::JOIN.get(), Box::new(join))}</p> }.into_any()
    };
    let inside = move || {
        let rename = move || nameless.set(!shop.rename(&typed()));
        let leave = move || {
            if leaving.get() {
                let yes = move || {
                    leaving.set(false);
                    shop.leave();
                };
                view! {
                    <p>{t::LEAVE_SURE}</p>
                    <p class="row">
                        {button(t::LEAVE_YES.get(), Box::new(yes))}
                        {button(t::LEAVE_NO.get(), Box::new(move || leaving.set(false)))}
                    </p>
                }
                .into_any()
            } else {
                button(t::LEAVE.get(), Box::new(move || leaving.set(true)))
            }
        };
        let older = move || {
            let was = shop.was_older.get();
            was.then(|| view! { <p role="status">{t::FOLDER_WAS_OLDER}</p> }.into_any())
        };
        view! {
            <p class="row">{button(t::RENAME.get(), Box::new(rename))}</p>
            {live(move || stands(shop))}
            {live(older)}
            <h3>{t::OTHER_DEVICES}</h3>
            {live(move || others(state, shop))}
            {live(leave)}
        }
        .into_any()
    };
    let body = if browser::has_address() {
        let rest = move || if is_in.get() { inside() } else { out() };
        view! {
            {field()}
            {live(rest)}
        }
        .into_any()
    } else {
        view! { <p>{t::FOLDER_ONE_FILE}</p> }.into_any()
    };
    view! {
        <section class="files" aria-labelledby="folder-heading">
            <h2 id="folder-heading">{t::FOLDER}</h2>
            <p class="quiet">{t::FOLDER_WHAT}</p>
            {body}
        </section>
    }
    .into_any()
}

fn stands(shop: Shop) -> AnyView {
    let (line, more) = shop.standing.with(|standing| {
        let line = t::in_folder(standing.as_ref(), time);
        let more = standing.as_ref().map(t::standing_lines);
        (line, more.unwrap_or_default())
    });
    let more: Vec<AnyView> = more
        .into_iter()
        .map(|words| view! { <p>{words}</p> }.into_any())
        .collect();
    view! {
        <p>{line}</p>
        {more}
    }
    .into_any()
}

fn others(state: State, shop: Shop) -> AnyView {
    let all = shop.others.get();
    if all.is_empty() {
        return view! { <p class="quiet">{t::NO_OTHER_DEVICES}</p> }.into_any();
    }
    let lines: Vec<AnyView> = all
        .into_iter()
        .map(|device| other(state, shop, device))
        .collect();
    view! {
        <ul class="preview">{lines}</ul>
        <p class="quiet">{t::STRIKE_WHAT}</p>
    }
    .into_any()
}

fn other(state: State, shop: Shop, device: OtherDevice) -> AnyView {
    let name = if device.name.is_empty() {
        t::UNNAMED.get().to_owned()
    } else {
        device.name
    };
    let mut words = vec![name.clone()];
    if device.at > 0 {
        words.push(t::wrote_last(&browser::date(device.at)));
    }
    if device.is_newer {
        words.push(t::NEWER_DEVICE.get().to_owned());
    }
    let strike = if device.is_struck {
        words.push(t::STRUCK.get().to_owned());
        None
    } else {
        let label = format!("{}: {name}", t::STRIKE);
        Some(view! {
            <button
                type="button"
                class="button-small"
                aria-label=label
                on:click=move |_| shop.strike(state, &device.key)
            >
                {t::STRIKE}
            </button>
        })
    };
    view! {
        <li>
            <span>{words.join(", ")}</span>
            {strike}
        </li>
    }
    .into_any()
}
