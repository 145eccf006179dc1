//! A table for paper and phone: on a narrow screen each row is a card with
//! every value under its column's words, so that nothing lies off the edge.

use crate::screens::{Route, View};
use crate::texts as t;
use coldseat_markup::view;
use leptos::prelude::*;

/// A row.
pub struct Line {
    /// What marks it out, for the style.
    pub class: &'static str,
    /// Its head.
    pub head: AnyView,
    /// Its cells, as many as there are columns behind the first.
    pub cells: Vec<AnyView>,
}

/// The table. Its roles are said, as cards are no table to a browser.
pub fn table(
    class: &'static str,
    caption: Option<String>,
    heads: &[String],
    lines: Vec<Line>,
) -> AnyView {
    let columns: Vec<AnyView> = heads
        .iter()
        .map(|words| {
            view! {
                <th scope="col" role="columnheader">
                    {words.clone()}
                </th>
            }
            .into_any()
        })
        .collect();
    let rows: Vec<AnyView> = lines
        .into_iter()
        .map(|line| {
            let cells: Vec<AnyView> = line
                .cells
                .into_iter()
                .zip(heads.iter().skip(1))
                .map(|(cell, words)| {
                    view! {
                        <td role="cell" data-head=words.clone()>
                            {cell}
                        </td>
                    }
                    .into_any()
                })
                .collect();
            view! {
                <tr class=line.class role="row">
                    <th scope="row" role="rowheader">
                        {line.head}
                    </th>
                    {cells}
                </tr>
            }
            .into_any()
        })
        .collect();
    let caption = caption.map(|words| view! { <caption>{words}</caption> });
    view! {
        <table class=class role="table">
            {caption}
            <thead role="rowgroup">
                <tr role="row">{columns}</tr>
            </thead>
            <tbody role="rowgroup">{rows}</tbody>
        </table>
    }
    .into_any()
}

/// A cylinder as the head of its row: leads to its step.
pub fn hole(id: &str, cylinder: u8) -> AnyView {
    let view = View::Cylinder(Some(cylinder), None);
    let address = Route::Job {
        id: id.to_owned(),
        view,
    }
    .address();
    view! {
        <a class="hole" href=address aria-label=format!("{} {cylinder}", t::CYLINDER)>
            {cylinder}
        </a>
    }
    .into_any()
}

/// Plain words as a cell.
pub fn cell(words: String) -> AnyView {
    words.into_any()
}
