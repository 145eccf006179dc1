//! The cold drop without a job: from a handful of typed numbers to a case. Any
//! ring or pin, any cold, a warmed housing.
//!
//! Assumed: part and bore concentric, the part at the temperature of its cold
//! throughout, the housing a ring: its bore and the wall round it, at one
//! temperature as the part enters. Its own expansion and the thermometer's 3 K
//! stand in the uncertainty of the fit.

use crate::job::model::check::{Checked, Sheet, check};
use crate::job::model::engine::{preset_si, preset_text};
use crate::job::model::entries::Entries;
use crate::job::model::field::Field;
use crate::job::model::field_kind::UnitSystem;
use crate::job::model::part::{Cold, Heat, Part};
use crate::job::model::part_usual::usual_text;
use crate::job::model::place::{Owner, Place};
use crate::job::model::reading::{Lack, Lacks, Missing, Reading};
use crate::job::steps::drop_case::{DropCase, Warmed};
use crate::job::steps::drop_warmth::{at_entry, coolness_m, not_colder, warmth_m};
use crate::job::steps::shrink::ShrinkBy;
use crate::materials::{Material, MaterialId};
use crate::quantity::format::number;
use crate::quantity::report::Fault;
use crate::quantity::{Diameter, Length, Seconds, Temperature};
use crate::thermal::cold_drop::ColdDrop;
use crate::thermal::drop_odds::FROST_MOST;

/// What the cold drop without a job is asked with.
#[derive(Clone, Debug, PartialEq)]
pub struct DropSheet {
    /// Its numbers and choices.
    pub entries: Entries,
    /// Units.
    pub units: UnitSystem,
    /// The part.
    pub sleeve_material: MaterialId,
    /// Its housing.
    pub block_material: MaterialId,
}

/// Water freezes: colder parts carry frost.
const FREEZES_K: f64 = 273.15;

/// Wishes and prices: they make no example a drop.
const WISHES: [Field; 7] = [
    Field::DropHome,
    Field::DropLeast,
    Field::DropPart,
    Field::DropCold,
    Field::DropHeat,
    Field::DropLitrePrice,
    Field::DropIcePrice,
];

impl DropSheet {
    /// For checking its fields.
    #[must_use]
    pub const fn sheet(&self) -> Sheet<'_> {
        Sheet {
            entries: &self.entries,
            units: self.units,
            cylinders: 0,
            job: None,
        }
    }

    /// One of the words of a choice; the first where nothing is chosen.
    fn choice<T: Copy>(&self, field: Field, all: &[T]) -> Result<T, Lack> {
        let place = Place::of_engine(field);
        let chosen = match self.entries.reading(place) {
            Reading::Absent | Reading::NotHere => 0.0,
            Reading::Usable(index) => index,
            Reading::Unusable(unusable) => return Err(Lack::Unusable(unusable)),
        };
        all.get(chosen as usize)
            .copied()
            .ok_or(Lack::Missing(Missing {
                owner: Owner::Block,
                field,
                places: 1,
            }))
    }

    /// What goes in.
    ///
    /// # Errors
    /// A word that is none of a part.
    pub fn part(&self) -> Result<Part, Lack> {
        self.choice(Field::DropPart, Part::ALL)
    }

    /// What makes it cold.
    ///
    /// # Errors
    /// A word that is none of a cold.
    pub fn cold(&self) -> Result<Cold, Lack> {
        self.choice(Field::DropCold, Cold::ALL)
    }

    /// What warms the housing.
    ///
    /// # Errors
    /// A word that is none of a heat.
    pub fn heat(&self) -> Result<Heat, Lack> {
        self.choice(Field::DropHeat, Heat::ALL)
    }

    /// The numbers of the part that it is asked with.
    #[must_use]
    pub fn part_fields(&self) -> Vec<Field> {
        let mut fields = vec![
            Field::DropOd,
            Field::DropWall,
            Field::DropFit,
            Field::DropLength,
        ];
        if matches!(self.part(), Ok(part) if part.is_solid()) {
            fields.retain(|field| *field != Field::DropWall);
        }
        fields
    }

    /// The numbers of the cold and of the way to the bore.
    #[must_use]
    pub fn cold_fields(&self) -> Vec<Field> {
        let way = [
            Field::DropCarry,
            Field::DropHome,
            Field::DropLeast,
            Field::DropRoom,
        ];
        match self.cold() {
            Ok(Cold::Nitrogen) | Err(_) => way.to_vec(),
            Ok(Cold::AsItIs) => way[1..].to_vec(),
            Ok(_) => [&[Field::DropColdAt], &way[..]].concat(),
        }
    }

    /// The numbers of the housing.
    #[must_use]
    pub fn housing_fields(&self) -> Vec<Field> {
        match self.heat() {
            Ok(Heat::AsItIs) | Err(_) => vec![Field::DropBlockWall],
            Ok(_) => vec![
                Field::DropBlockWall,
                Field::DropHeatAt,
                Field::DropHeatMost,
                Field::DropHeatOut,
            ],
        }
    }

    /// Whether a number of it moves its seconds.
    #[must_use]
    pub fn moves_time(&self, field: Field) -> bool {
        let asked = [
            self.part_fields(),
            self.cold_fields(),
            self.housing_fields(),
        ]
        .concat();
        asked.contains(&field) && !WISHES.contains(&field) && field != Field::DropHeatMost
    }

    /// What usually stands in a field, as text: by its part and its cold; empty
    /// where there is nothing usual.
    #[must_use]
    pub fn usual_text(&self, field: Field) -> String {
        if field == Field::DropColdAt {
            let own = match self.cold() {
                Ok(cold) => cold.temperature(),
                Err(_) => None,
            };
            return match own {
                Some(t) => number(t.as_k(), field.unit(self.units)),
                None => String::new(),
            };
        }
        let of_part = match self.part() {
            Ok(part) => usual_text(part, field, self.units),
            Err(_) => return String::new(),
        };
        match of_part {
            Some(text) => text.to_owned(),
            None => preset_text(field, self.units).to_owned(),
        }
    }

    /// The same in SI.
    #[must_use]
    pub fn usual_si(&self, field: Field) -> Option<f64> {
        if field == Field::DropColdAt {
            return match self.cold() {
                Ok(cold) => cold.temperature().map(Temperature::as_k),
                Err(_) => None,
            };
        }
        match field.read(&self.usual_text(field), field.unit(self.units)) {
            Ok(typed) => Some(typed.si),
            Err(_) => None,
        }
    }

    /// A number as it stands in the case: typed and usable, or, where nothing is
    /// typed, usual.
    #[must_use]
    pub fn si(&self, field: Field) -> Option<f64> {
        match self.entries.reading(Place::of_engine(field)) {
            Reading::Usable(si) => Some(si),
            Reading::Absent | Reading::NotHere => self.usual_si(field),
            Reading::Unusable(_) => None,
        }
    }

    /// Whether any number of the drop itself is typed.
    fn is_typed(&self) -> bool {
        self.entries
            .iter()
            .any(|(place, _)| self.moves_time(place.field))
    }

    /// The case, from the numbers typed; a usual value stands only where nothing
    /// is typed, and is told.
    ///
    /// # Errors
    /// What is missing or cannot be used, all of it.
    pub fn case(&self) -> Result<DropCase, Lacks> {
        let mut lacks = Lacks::default();
        let chosen = (
            lacks.take(self.part()),
            lacks.take(self.cold()),
            lacks.take(self.heat()),
        );
        let (Some(part), Some(cold), Some(heat)) = chosen else {
            return Err(lacks);
        };
        let mut hand = Hand::of(self);
        let wall = !part.is_solid();
        let asked = [
            lacks.take(hand.number(Field::DropOd)),
            lacks.take(if wall {
                hand.number(Field::DropWall)
            } else {
                Ok(0.0)
            }),
            lacks.take(hand.number(Field::DropLength)),
            lacks.take(hand.number(Field::DropFit)),
            lacks.take(hand.number(Field::DropBlockWall)),
            lacks.take(match cold {
                Cold::AsItIs => Ok(0.0),
                _ => hand.number(Field::DropCarry),
            }),
            lacks.take(hand.number(Field::DropRoom)),
            lacks.take(hand.number(Field::DropHome)),
            lacks.take(hand.number(Field::DropLeast)),
        ];
        let cold_k = match cold {
            Cold::Nitrogen => lacks.take(Ok(cold.temperature().map(Temperature::as_k))),
            Cold::AsItIs => Some(None),
            _ => lacks.take(hand.number(Field::DropColdAt)).map(Some),
        };
        let warmed = match heat {
            Heat::AsItIs => Some(None),
            _ => warmed(&mut hand, &mut lacks).map(Some),
        };
        let Hand {
            assumed,
            questioned,
            ..
        } = hand;
        let [
            Some(od_m),
            Some(wall_m),
            Some(length_m),
            Some(fit_m),
            Some(block_wall_m),
            Some(carry_s),
            Some(room_k),
            Some(needed_s),
            Some(least_m),
        ] = asked
        else {
            return Err(lacks);
        };
        let (Some(cold_k), Some(warmed)) = (cold_k, warmed) else {
            return Err(lacks);
        };
        let gauges = [Field::GaugeSleeve, Field::GaugeBore].map(|f| preset_si(f, self.units));
        let [Some(u_sleeve_m), Some(u_bore_m)] = gauges else {
            return Err(lacks);
        };
        let room = Temperature::from_k(room_k);
        let bath = match cold_k {
            Some(cold_k) if cold_k < room_k => Temperature::from_k(cold_k),
            Some(_) => return Err(Lacks::from(not_colder())),
            None => room,
        };
        let bore_m = od_m - fit_m;
        let mut drop = ColdDrop {
            sleeve_material: Material::catalogue(self.sleeve_material),
            sleeve_inner: Diameter::from_m(if wall { od_m - 2.0 * wall_m } else { 0.0 }),
            sleeve_outer: Diameter::from_m(od_m),
            sleeve_length: Length::from_m(length_m),
            block_material: Material::catalogue(self.block_material),
            block_bore: Diameter::from_m(bore_m),
            block_outer: Diameter::from_m(bore_m + 2.0 * block_wall_m),
            bath,
            room,
            block: room,
            carry: Seconds::from_s(carry_s),
            air: None,
            lean: 0.0,
            frost: Length::default(),
            insertion: Seconds::default(),
        };
        if let Some((_, out_s)) = warmed {
            drop.block = at_entry(&drop, heat, warmed.map(|(warmed, _)| warmed), out_s)?;
        }
        let u_fit_m = [
            u_sleeve_m,
            u_bore_m,
            warmth_m(&drop),
            coolness_m(&drop, cold),
        ]
        .iter()
        .fold(0.0_f64, |sum, u| sum.hypot(*u));
        Ok(DropCase {
            u_fit: Length::from_m(u_fit_m),
            shrink: ShrinkBy::Table,
            cold_is_odd: false,
            carry_timed: cold == Cold::AsItIs,
            frost_most: if bath.as_k() < FREEZES_K {
                FROST_MOST
            } else {
                Length::default()
            },
            part,
            cold,
            heat,
            warmed: warmed.map(|(warmed, _)| warmed),
            least: Some(Length::from_m(least_m)),
            needed: Seconds::from_s(needed_s),
            example: !self.is_typed(),
            assumed,
            questioned,
            drop,
        })
    }
}

/// Reads the numbers of a sheet and notes which of them are nobody's own.
struct Hand<'a> {
    sheet: &'a DropSheet,
    assumed: Vec<Field>,
    questioned: Vec<Place>,
}

impl<'a> Hand<'a> {
    const fn of(sheet: &'a DropSheet) -> Self {
        Self {
            sheet,
            assumed: Vec::new(),
            questioned: Vec::new(),
        }
    }

    /// A number that may stand as usual.
    fn number(&mut self, field: Field) -> Result<f64, Lack> {
        let missing = Lack::Missing(Missing {
            owner: Owner::Block,
            field,
            places: 1,
        });
        match self.typed(field)? {
            Some(si) => Ok(si),
            None => {
                let usual = self.sheet.usual_si(field).ok_or(missing)?;
                // What the shop needs is its wish; dry ice has its own temperature.
                let own = field == Field::DropColdAt
                    && matches!(self.sheet.cold(), Ok(cold) if !cold.is_read());
                if !WISHES.contains(&field) && !own {
                    self.assumed.push(field);
                }
                Ok(usual)
            }
        }
    }

    /// A number that may be left out.
    fn typed(&mut self, field: Field) -> Result<Option<f64>, Lack> {
        let place = Place::of_engine(field);
        match check(&self.sheet.sheet(), place) {
            Checked::Good(si) => Ok(Some(si)),
            Checked::Questioned(si, _) => {
                self.questioned.push(place);
                Ok(Some(si))
            }
            Checked::Empty | Checked::NotHere => Ok(None),
            Checked::Refused(unusable) => Err(Lack::Unusable(unusable)),
        }
    }
}

/// The warmed housing and the seconds it is out of its heat.
fn warmed(hand: &mut Hand<'_>, lacks: &mut Lacks) -> Option<(Warmed, f64)> {
    let to_k = lacks.take(hand.number(Field::DropHeatAt));
    let most_k = lacks.take(hand.typed(Field::DropHeatMost));
    let out_s = lacks.take(hand.number(Field::DropHeatOut));
    let warmed = Warmed {
        to: Temperature::from_k(to_k?),
        most: most_k?.map(Temperature::from_k),
    };
    Some((warmed, out_s?))
}

/// The field a fault of the calculation is shown at.
#[must_use]
pub fn field_of(fault: &Fault) -> Field {
    match fault.field.as_str() {
        "sleeve.inner_d_m" => Field::DropWall,
        "sleeve.length_m" => Field::DropLength,
        "block.outer_d_m" | "block" => Field::DropBlockWall,
        "block.bore_d_m" => Field::DropFit,
        "carry_s" => Field::DropCarry,
        "bath_k" | "cold_k" => Field::DropColdAt,
        "heat_k" | "block_k" => Field::DropHeatAt,
        "heat_out_s" => Field::DropHeatOut,
        "room_k" => Field::DropRoom,
        _ => Field::DropOd,
    }
}
