//! Planning the cuts: bore, counterbore, deck, groove, walls and webs, pairs,
//! and what they do to the engine.

pub mod after_deck;
pub mod bore;
pub mod counterbore;
pub mod deck;
pub mod engine;
pub mod estimate;
pub mod finish;
pub mod groove;
pub mod heights;
pub mod ledge;
pub mod pairing;
pub mod web;
