//! Settings of the shop: units, gauges, limits and rates, the number pad.

use crate::browser;
use crate::live::live;
use crate::memo::Memo;
use crate::parts::choice::{Choice, language_choice};
use crate::parts::folder::folder_settings;
use crate::parts::hand::gauge_settings;
use crate::parts::shims::shims;
use crate::parts::wire::wire_settings;
use crate::parts::words::{OF_SHOP, gauges_checked, lines};
use crate::screens::engine::{fields, gauges};
use crate::texts as t;
use crate::tongue::Tongue;
use crate::words::Decimal;
use crate::{
    session::fresh_drop,
    state::{State, Target},
};
use coldseat_core::ask::{Field, UnitSystem};
use coldseat_markup::view;
use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

/// Limits and rates that a shop keeps from job to job.
const LIMITS: &[Field] = &[
    Field::FitLow,
    Field::FitHigh,
    Field::TargetProud,
    Field::PlannedCut,
    Field::CleanUp,
    Field::Risk,
    Field::GapLimit,
    Field::TiltLimit,
    Field::Confidence,
    Field::CommonHeight,
    Field::CommonThickness,
    Field::CommonDepth,
    Field::PriorHome,
    Field::HomeNeeded,
    Field::HoneRate,
];

/// The licences of what the page is made of, there without a network.
fn notices() -> AnyView {
    let text = RwSignal::new(None::<String>);
    let show = move |_| {
        spawn_local(async move {
            let found = browser::beside("notices", "./notices.txt").await;
            text.set(Some(
                found.unwrap_or_else(|| t::NO_NOTICES.get().to_owned()),
            ));
        });
    };
    let shown = move || match text.get() {
        None => view! {
            <button type="button" on:click=show>
                {t::SHOW_NOTICES}
            </button>
        }
        .into_any(),
        Some(text) => view! { <pre class="notices-text" tabindex="0">{text}</pre> }.into_any(),
    };
    view! {
        <section aria-labelledby="notices-heading">
            <h2 id="notices-heading">{t::NOTICES}</h2>
            <p>{t::NOTICES_WHAT}</p>
            {live(shown)}
        </section>
    }
    .into_any()
}

/// The screen.
#[component]
pub fn SettingsScreen() -> impl IntoView {
    let state = State::here();
    let units = Memo::new(move |_| state.session.shop.with(|s| s.units));
    let options = [UnitSystem::Inch, UnitSystem::Metric]
        .map(|u| (u.id().to_owned(), t::units(u).to_owned()))
        .to_vec();
    let set_decimal = Callback::new(move |sample: String| {
        if let Some(decimal) = Decimal::from_sample(&sample) {
            state.close_pad();
            state.tongue.write(decimal);
        }
    });
    let set_units = Callback::new(move |id: String| {
        if let Some(units) = UnitSystem::from_id(&id) {
            state.close_pad();
            let before = state.session.shop.with_untracked(|shop| shop.units);
            state.session.edit_shop(|shop| shop.units = units);
            // Where nothing was typed into it, the cold drop follows.
            let is_fresh = state
                .session
                .drop_sheet
                .with_untracked(|sheet| *sheet == fresh_drop(before));
            if is_fresh {
                state.session.edit_drop(|drop| *drop = fresh_drop(units));
            }
        }
    });
    let set_pad = Callback::new(move |word: String| {
        let on = word == t::ON.get();
        state.session.edit_shop(|shop| {
            shop.pad = Some(on);
        });
    });
    let set_feedback = Callback::new(move |word: String| {
        let on = word == t::ON.get();
        state.session.edit_shop(|shop| {
            shop.feedback = Some(on);
        });
    });
    let gauges = move || {
        units.get();
        view! {
            {lines(state, Target::Shop, &OF_SHOP)}
            {fields(Target::Shop, t::GAUGES.get(), &gauges())}
            {gauges_checked(state, Target::Shop)}
            {fields(Target::Shop, t::SHOP_LIMITS.get(), LIMITS)}
            {shims(state, Target::Shop)}
        }
        .into_any()
    };
    view! {
        <h1 id="screen-heading" tabindex="-1">
            {t::SETTINGS}
        </h1>
        <p class="quiet">{t::SHOP_WHAT}</p>
        <div class="form">
            {language_choice(state, "shop-language", t::LANGUAGE, Tongue::speak)}
            <p class="quiet">{t::LANGUAGE_WHAT}</p>
            <Choice
                id="shop-decimal"
                label=t::DECIMAL.get()
                options=Decimal::ALL.map(|d| (d.sample().to_owned(), d.sample().to_owned())).to_vec()
                value=Signal::derive(move || state.tongue.decimal.get().sample().to_owned())
                change=set_decimal
            />
            <p class="quiet">{t::DECIMAL_WHAT}</p>
            <Choice
                id="shop-units"
                label=t::UNITS.get()
                options=options
                value=Signal::derive(move || units.get().id().to_owned())
                change=set_units
            />
            <Choice
                id="shop-pad"
                label=t::PAD_SETTING.get()
                options=[t::ON.get(), t::OFF.get()].map(|w| (w.to_owned(), w.to_owned())).to_vec()
                value=Signal::derive(move || {
                    (if state.ui.pad_on.get() { t::ON.get() } else { t::OFF.get() }).to_owned()
                })
                change=set_pad
            />
            <p class="quiet">{t::PAD_SETTING_WHAT}</p>
            <Choice
                id="shop-feedback"
                label=t::FEEDBACK.get()
                options=[t::ON.get(), t::OFF.get()].map(|w| (w.to_owned(), w.to_owned())).to_vec()
                value=Signal::derive(move || {
                    (if state.ui.feedback.get() { t::ON.get() } else { t::OFF.get() }).to_owned()
                })
                change=set_feedback
            />
            <p class="quiet">{t::FEEDBACK_WHAT}</p>
        </div>
        {gauge_settings(state)}
        {wire_settings(state)}
        {folder_settings(state)}
        {live(gauges)}
        <section class="cautions">
            <p>{t::STANDING_WORDS}</p>
        </section>
        {notices()}
    }
    .into_any()
}
