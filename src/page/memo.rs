//! A value that follows signals and is worked out once for each change. Leptos
//! compiles its memo anew for every kind of value, a kilobyte each; this one
//! hands it one kind, which holds any.

use leptos::prelude::{Memo as Kept, With, WithUntracked};
use std::any::Any;
use std::marker::PhantomData;
use std::sync::Arc;

/// A value of any kind, and how two of its kind are compared.
#[derive(Clone)]
struct Held {
    value: Arc<dyn Any + Send + Sync>,
    same: fn(&dyn Any, &dyn Any) -> bool,
}

impl PartialEq for Held {
    fn eq(&self, other: &Self) -> bool {
        (self.same)(&*self.value, &*other.value)
    }
}

fn same<T: PartialEq + 'static>(a: &dyn Any, b: &dyn Any) -> bool {
    a.downcast_ref::<T>() == b.downcast_ref::<T>()
}

/// What is worked out from what was there before.
type Work = Box<dyn Fn(Option<&Held>) -> Held + Send + Sync>;

#[inline(never)]
fn kept(work: Work) -> Kept<Held> {
    Kept::new(work)
}

/// The memo.
pub struct Memo<T> {
    kept: Kept<Held>,
    kind: PhantomData<fn() -> T>,
}

impl<T> Clone for Memo<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Memo<T> {}

impl<T: PartialEq + Send + Sync + 'static> Memo<T> {
    /// Works a value out whenever a signal it read has changed; whoever reads
    /// it hears of it where the value is another.
    pub fn new(work: impl Fn(Option<&T>) -> T + Send + Sync + 'static) -> Self {
        let work = move |before: Option<&Held>| Held {
            value: Arc::new(work(before.and_then(|held| held.value.downcast_ref()))),
            same: same::<T>,
        };
        Self {
            kept: kept(Box::new(work)),
            kind: PhantomData,
        }
    }

    /// Looks at the value, and follows it.
    pub fn with<R>(self, look: impl FnOnce(&T) -> R) -> R {
        look(of(&*followed(self.kept)))
    }

    /// Looks at the value as it stands.
    pub fn with_untracked<R>(self, look: impl FnOnce(&T) -> R) -> R {
        look(of(&*as_it_stands(self.kept)))
    }

    /// The value; whoever asks follows it.
    pub fn get(self) -> T
    where
        T: Clone,
    {
        self.with(T::clone)
    }

    /// The value as it stands.
    #[must_use]
    pub fn get_untracked(self) -> T
    where
        T: Clone,
    {
        self.with_untracked(T::clone)
    }
}

#[inline(never)]
fn followed(kept: Kept<Held>) -> Arc<dyn Any + Send + Sync> {
    kept.with(|held| held.value.clone())
}

#[inline(never)]
fn as_it_stands(kept: Kept<Held>) -> Arc<dyn Any + Send + Sync> {
    kept.with_untracked(|held| held.value.clone())
}

/// The value held; `new` put one of this kind there.
fn of<T: 'static>(value: &dyn Any) -> &T {
    match value.downcast_ref() {
        Some(value) => value,
        None => unreachable!(),
    }
}
