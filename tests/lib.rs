//! Helpers shared by the checks against the outside: the source files, and the
//! ledger that every row of them must appear in.

pub mod lives;
pub mod plain;
pub mod shapes;

use coldseat_core::job::drop::DropSheet;
use coldseat_core::job::{Entries, Entry, Field, Place, UnitSystem};
use coldseat_core::materials::MaterialId;
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

/// The checkout.
#[must_use]
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// All files under a folder whose names end so, what is built aside.
///
/// # Panics
/// Where the folder cannot be read.
#[must_use]
pub fn files(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let entries = fs::read_dir(folder).unwrap_or_else(|e| panic!("{}: {e}", folder.display()));
    for entry in entries.flatten() {
        let path = entry.path();
        if path.is_dir() {
            if !path.ends_with("target") {
                found.extend(files(&path, ending));
            }
        } else if path.to_string_lossy().ends_with(ending) {
            found.push(path);
        }
    }
    found
}

/// How much of what a test draws by chance is drawn: all, or a share of it where
/// `COLDSEAT_SHARE` says so many in a hundred (`cargo xtask test --quick`).
///
/// # Panics
/// Where that is no number.
#[must_use]
pub fn share_of(all: u64) -> u64 {
    let percent =
        std::env::var("COLDSEAT_SHARE").map_or(100, |text| text.parse().expect("a number"));
    (all * percent).div_ceil(100)
}

/// A cold drop without a job, in inches, with these texts typed into it.
#[must_use]
pub fn typed_drop([part, housing]: [MaterialId; 2], typed: &[(Field, &str)]) -> DropSheet {
    let units = UnitSystem::Inch;
    let mut entries = Entries::default();
    for (field, text) in typed {
        let entry = Entry::new(*text, field.unit(units), 1);
        entries.put(Place::of_engine(*field), entry);
    }
    DropSheet {
        entries,
        units,
        sleeve_material: part,
        block_material: housing,
    }
}

/// One published value.
#[derive(Clone, Debug)]
pub struct Row {
    /// Its id in the source file.
    pub id: String,
    /// Everything else of it.
    pub fields: Value,
}

impl Row {
    /// Its value as one number.
    ///
    /// # Panics
    /// Where it is none.
    #[must_use]
    pub fn value(&self) -> f64 {
        self.fields["value"]
            .as_f64()
            .unwrap_or_else(|| panic!("{}: no single number", self.id))
    }

    /// Its value as several numbers.
    ///
    /// # Panics
    /// Where it is none.
    #[must_use]
    pub fn values(&self) -> Vec<f64> {
        let list = self.fields["value"]
            .as_array()
            .unwrap_or_else(|| panic!("{}: no list", self.id));
        list.iter().filter_map(Value::as_f64).collect()
    }

    /// An input by its name.
    ///
    /// # Panics
    /// Where there is none.
    #[must_use]
    pub fn input(&self, name: &str) -> f64 {
        self.fields["inputs"][name]
            .as_f64()
            .unwrap_or_else(|| panic!("{}: no input {name}", self.id))
    }

    /// What follows a prefix of the id, as a number: `Fe.cp.100` -> 100.
    ///
    /// # Panics
    /// Where it is none.
    #[must_use]
    pub fn after(&self, prefix: &str) -> f64 {
        self.id[prefix.len()..]
            .parse()
            .unwrap_or_else(|_| panic!("{}: no number", self.id))
    }

    /// An input that is a text.
    #[must_use]
    pub fn input_text(&self, name: &str) -> &str {
        self.fields["inputs"][name].as_str().unwrap_or("")
    }

    /// The value that was recomputed for a rounded one, or the value.
    #[must_use]
    pub fn recomputed(&self) -> f64 {
        self.fields["recomputed"]
            .as_f64()
            .unwrap_or_else(|| self.value())
    }

    /// Source and how it is known, for messages.
    #[must_use]
    pub fn source(&self) -> String {
        let text = |name: &str| self.fields[name].as_str().unwrap_or("").to_owned();
        let memory = if text("provenance").starts_with("MEMORY") {
            ", from memory"
        } else {
            ""
        };
        format!("{}{memory}", text("source"))
    }

    /// Compares with the row's one number.
    ///
    /// # Panics
    /// Where they differ by more than `tolerance`, absolute.
    #[track_caller]
    pub fn check(&self, got: f64, tolerance: f64) {
        near(&self.id, got, self.value(), tolerance, &self.source());
    }

    /// Compares within the absolute tolerance that the row itself states.
    ///
    /// # Panics
    /// Where they differ by more.
    #[track_caller]
    pub fn check_as_stated(&self, got: f64) {
        let tolerance = self.fields["tolerance"]
            .as_f64()
            .unwrap_or_else(|| panic!("{}: states no tolerance", self.id));
        self.check(got, tolerance);
    }

    /// Compares within a share of the value.
    ///
    /// # Panics
    /// Where they differ by more.
    #[track_caller]
    pub fn check_share(&self, got: f64, share: f64) {
        self.check(got, share * self.value().abs());
    }
}

/// Compares two numbers.
///
/// # Panics
/// Where they differ by more than `tolerance`.
#[track_caller]
pub fn near(what: &str, got: f64, want: f64, tolerance: f64, source: &str) {
    assert!(
        (got - want).abs() <= tolerance,
        "{what}: {got} differs from {want} by more than {tolerance} ({source})"
    );
}

/// All rows of a source, and which have been dealt with.
pub struct Ledger {
    rows: Vec<(Row, usize)>,
}

impl Ledger {
    /// Reads a source file.
    ///
    /// # Panics
    /// Where it is no list of rows.
    #[must_use]
    pub fn read(text: &str) -> Self {
        let list: Vec<Value> = serde_json::from_str(text).expect("a list of rows");
        let rows = list
            .into_iter()
            .map(|fields| {
                let id = fields["id"]
                    .as_str()
                    .unwrap_or_else(|| panic!("a row without id"));
                (
                    Row {
                        id: id.to_owned(),
                        fields: fields.clone(),
                    },
                    0,
                )
            })
            .collect();
        Self { rows }
    }

    /// Keeps the rows whose id begins with one of `prefixes`.
    #[must_use]
    pub fn only(mut self, prefixes: &[&str]) -> Self {
        self.rows
            .retain(|(row, _)| prefixes.iter().any(|p| row.id.starts_with(p)));
        self
    }

    fn matching(&mut self, prefix: &str) -> Vec<Row> {
        let mut found = Vec::new();
        for (row, times) in &mut self.rows {
            if row.id.starts_with(prefix) {
                *times += 1;
                found.push(row.clone());
            }
        }
        assert!(!found.is_empty(), "no row begins with {prefix}");
        found
    }

    /// Runs a check on every row whose id begins with `prefix`.
    pub fn answer(&mut self, prefix: &str, check: impl Fn(&Row)) {
        for row in self.matching(prefix) {
            check(&row);
        }
    }

    /// Leaves out the rows whose id begins with one of `prefixes`.
    pub fn omit(&mut self, reason: &str, prefixes: &[&str]) {
        assert!(!reason.is_empty());
        for prefix in prefixes {
            self.matching(prefix);
        }
    }

    /// Leaves out the rows whose id tells so by another part than its beginning,
    /// before anything is answered.
    pub fn omit_where(&mut self, reason: &str, is_out: impl Fn(&str) -> bool) {
        assert!(!reason.is_empty());
        let before = self.rows.len();
        self.rows.retain(|(row, _)| !is_out(&row.id));
        assert!(self.rows.len() < before, "no row left out: {reason}");
    }

    /// That every row was answered or left out, once.
    ///
    /// # Panics
    /// Where one was not.
    pub fn close(&self) {
        for (row, times) in &self.rows {
            assert_eq!(*times, 1, "{} is dealt with {times} times", row.id);
        }
    }
}
