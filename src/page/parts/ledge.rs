//! What would repair a ledge that is not flat: the least cut, and the shim that makes up
//! for it.

use crate::show::length;
use crate::state::State;
use crate::texts as t;
use coldseat_core::ask::{Length, Owner, Standing, StepId, UnitSystem, ledge_repair};
use coldseat_markup::view;
use leptos::prelude::*;

/// The repair; nothing at another step, and where nothing is wrong or something is not
/// known: the step says what.
pub fn repair(state: State, step: StepId, owner: Owner, units: UnitSystem) -> Option<AnyView> {
    let Owner::Cylinder(cylinder) = owner else {
        return None;
    };
    if step != StepId::Counterbore {
        return None;
    }
    let repair = state
        .session
        .open
        .with(|open| ledge_repair(&open.as_ref()?.job, cylinder).ok().flatten())?;
    let of = |l: Length| length(l.as_m(), units);
    let trued = repair.trued;
    let shim = if trued.shim.as_m() > 0.0 {
        let at_hand = match &repair.at_hand {
            Standing::Known(size) => t::nearest_shim(&of(*size)),
            Standing::NotHere => t::NO_SHIM_AT_HAND.get().to_owned(),
            Standing::Missing(missing) => t::missing_of(missing),
            Standing::Unusable(unusable) => t::mend(unusable, units),
            Standing::Refused(fault) => t::fault(fault),
        };
        t::then_shim(&of(trued.shim), &at_hand)
    } else {
        t::NO_SHIM.get().to_owned()
    };
    Some(
        view! {
            <div class="ledge-repair">
                <h3>{t::LEDGE_REPAIR}</h3>
                <p>{t::true_it(&of(trued.depth), &of(trued.cut))}</p>
                <p>{shim}</p>
            </div>
        }
        .into_any(),
    )
}
