//! Lists in order. The standard library's sort is compiled anew for every kind
//! of thing in a list, four to six kilobytes each; here it sorts places only,
//! once for all.

use core::cmp::Ordering;

/// The places of `count` things in the order that `compare` gives them; equal
/// ones stay as they stood.
fn places(count: usize, compare: &dyn Fn(usize, usize) -> Ordering) -> Vec<usize> {
    let mut places: Vec<usize> = (0..count).collect();
    places.sort_by(|a, b| compare(*a, *b));
    places
}

/// A list in the order that `compare` gives; equal things stay as they stood.
///
/// ```
/// use coldseat_core::numerics::order::in_order;
/// assert_eq!(in_order(vec![2.5, -1.0, 0.5], f64::total_cmp), [-1.0, 0.5, 2.5]);
/// let by_length = |a: &&str, b: &&str| a.len().cmp(&b.len());
/// assert_eq!(in_order(vec!["ccc", "bb", "a", "aa"], by_length), ["a", "bb", "aa", "ccc"]);
/// ```
#[must_use]
pub fn in_order<T>(list: Vec<T>, compare: impl Fn(&T, &T) -> Ordering) -> Vec<T> {
    let at = |a: usize, b: usize| match (list.get(a), list.get(b)) {
        (Some(a), Some(b)) => compare(a, b),
        _ => Ordering::Equal,
    };
    let places = places(list.len(), &at);
    let mut list: Vec<Option<T>> = list.into_iter().map(Some).collect();
    places
        .into_iter()
        .filter_map(|place| list.get_mut(place)?.take())
        .collect()
}

/// Texts in order, each once.
#[must_use]
pub fn each_once(texts: Vec<String>) -> Vec<String> {
    let mut texts = in_order(texts, String::cmp);
    texts.dedup();
    texts
}
