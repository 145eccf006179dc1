//! Engine and limits of a job: words, geometry, limits, gauges.

use crate::parts::choice::{Choice, Line, materials};
use crate::parts::notice::export_button;
use crate::parts::reading::{Label, Reading};
use crate::parts::share::share;
use crate::screens::job::job_head;
use crate::state::{State, Target};
use crate::texts as t;
use coldseat_core::document::link::Shared;
use coldseat_core::job::engine::profile_of;
use coldseat_core::job::{Field, Job, Place};
use coldseat_core::materials::MaterialId;
use leptos::prelude::*;

/// Sleeve and block.
const GEOMETRY: &[Field] = &[
    Field::NominalOd,
    Field::SleeveId,
    Field::SleeveLength,
    Field::NominalFlange,
    Field::FlangeOd,
    Field::Shim,
    Field::BlockWall,
    Field::JacketFrom,
    Field::JacketTo,
    Field::Pitch,
    Field::HalfWidth,
    Field::HeadClamp,
    Field::StepBelow,
    Field::RoomTemperature,
];

/// Pistons, head and rings: the engine maker's sheet.
const ENGINE: &[Field] = &[
    Field::FinalBore,
    Field::Stroke,
    Field::Compression,
    Field::PistonD,
    Field::PistonLeast,
    Field::Gasket,
    Field::HeadLeast,
    Field::RingHeight,
    Field::RingProud,
    Field::RingGapLow,
    Field::RingGapHigh,
];

/// Bar, hone, ram and rod.
const TOOLS: &[Field] = &[
    Field::Spindle,
    Field::HoneStroke,
    Field::HoneTurns,
    Field::HoneCycles,
    Field::RamBore,
    Field::RamHole,
    Field::RamRated,
    Field::RodD,
    Field::RodPitch,
    Field::RodYield,
    Field::LedgeMost,
    Field::FlangeMost,
];

/// Limits and targets.
const LIMITS: &[Field] = &[
    Field::FitLow,
    Field::FitHigh,
    Field::RoundLook,
    Field::RoundStop,
    Field::BoreForm,
    Field::EntryLeast,
    Field::TargetProud,
    Field::PlannedCut,
    Field::CleanUp,
    Field::Risk,
    Field::GapLimit,
    Field::TiltLimit,
    Field::Confidence,
    Field::ApartMost,
    Field::TestLoss,
    Field::DatumTilt,
    Field::WallCalm,
    Field::WallLook,
    Field::WebCalm,
    Field::WebLook,
    Field::BottomLeast,
    Field::FinishLeast,
    Field::ClearLow,
    Field::ClearHigh,
    Field::OffsetLook,
    Field::HoneLeave,
    Field::FilletSpare,
    Field::GrooveNear,
];

/// Gauges and the hand feed.
pub const GAUGES: &[Field] = &[
    Field::GaugeSleeve,
    Field::GaugeBore,
    Field::GaugeHeight,
    Field::GaugeThickness,
    Field::GaugeDepth,
    Field::FeedSd,
];

/// Readings of an engine, as a group.
pub fn fields(target: Target, title: &'static str, list: &[Field]) -> AnyView {
    let items: Vec<AnyView> = list
        .iter()
        .map(|field| {
            let place = Place::of_engine(*field);
            view! { <Reading target=target place=place label=Label::Full /> }.into_any()
        })
        .collect();
    view! {
        <fieldset class="group">
            <legend>{title}</legend>
            <div class="readings readings-two">{items}</div>
        </fieldset>
    }
    .into_any()
}

/// The screen.
#[component]
pub fn EngineScreen(
    /// Key of the job.
    id: String,
) -> impl IntoView {
    let state = State::here();
    let locked = Signal::derive(move || state.is_read_only(Target::Job));
    let read = move |look: fn(&Job) -> String| {
        Signal::derive(move || {
            state
                .open
                .with(|o| o.as_ref().map(|o| look(&o.job)).unwrap_or_default())
        })
    };
    let write = move |change: fn(&mut Job, String)| {
        Callback::new(move |text: String| state.edit(|job| change(job, text)))
    };
    view! {
        {job_head(state, &id)}
        <h2>{t::ENGINE_AND_LIMITS}</h2>
        <div class="form">
            <Line
                id="job-name"
                locked=locked
                label=t::JOB_NAME
                value=read(|j| j.name.clone())
                change=write(|j, text| j.name = text)
            />
            <Line
                id="job-customer"
                locked=locked
                label=t::CUSTOMER
                value=read(|j| j.customer.clone())
                change=write(|j, text| j.customer = text)
            />
            <Line
                id="job-engine"
                locked=locked
                label=t::ENGINE_NAME
                value=read(|j| j.engine.name.clone())
                change=write(|j, text| j.engine.name = text)
            />
            <Line
                id="job-note"
                locked=locked
                label=t::NOTE
                value=read(|j| j.note.clone())
                change=write(|j, text| j.note = text)
            />
            <Choice
                id="job-sleeve-material"
                locked=locked
                label=t::SLEEVE_MATERIAL
                options=materials()
                value=read(|j| j.engine.sleeve_material.id().to_owned())
                change=write(|j, id| {
                    j.engine.sleeve_material = MaterialId::from_id(&id)
                        .unwrap_or(j.engine.sleeve_material);
                })
            />
            <Choice
                id="job-block-material"
                locked=locked
                label=t::BLOCK_MATERIAL
                options=materials()
                value=read(|j| j.engine.block_material.id().to_owned())
                change=write(|j, id| {
                    j.engine.block_material = MaterialId::from_id(&id)
                        .unwrap_or(j.engine.block_material);
                })
            />
        </div>
        <p class="quiet">{t::ENGINE_FIRST}</p>
        {fields(Target::Job, t::GEOMETRY, GEOMETRY)}
        {fields(Target::Job, t::PISTONS_AND_HEAD, ENGINE)}
        {fields(Target::Job, t::TOOLS, TOOLS)}
        <p class="quiet">{t::LIMITS_WHAT}</p>
        {fields(Target::Job, t::LIMITS, LIMITS)}
        {fields(Target::Job, t::GAUGES, GAUGES)}
        {share(t::SHARE_ENGINE, "link-engine", move || {
            state
                .open
                .with(|o| o.as_ref().map(|o| {
                    Shared::Profile(o.job.engine.clone(), profile_of(&o.job.entries))
                }))
        })}
        <div class="row">{export_button(state)}</div>
    }
}
