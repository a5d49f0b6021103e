-- The bench book. Quantities are SI, with the unit in the column's name; instants are ISO 8601 in UTC.
-- Nothing is ever deleted: what was undone is marked withdrawn, so that what was typed is kept for ever.
-- Text that may be absent is NULL, never empty, so that an export can tell the two apart.

CREATE TABLE journal (
    id          INTEGER PRIMARY KEY,
    at_utc      TEXT    NOT NULL,
    actor       TEXT    NOT NULL,
    sentence    TEXT    NOT NULL,
    subject     TEXT    NOT NULL,
    item_kind   TEXT    NOT NULL,
    item_id     INTEGER NOT NULL,
    before_json TEXT    CHECK (before_json <> ''),
    after_json  TEXT    NOT NULL,
    undoes      INTEGER REFERENCES journal (id),
    digest      TEXT    NOT NULL
) STRICT;
CREATE INDEX journal_by_item ON journal (item_kind, item_id);
CREATE INDEX journal_by_undone ON journal (undoes) WHERE undoes IS NOT NULL;

CREATE TABLE pack (
    id                      INTEGER PRIMARY KEY,
    tag                     TEXT    NOT NULL,
    chemistry               TEXT    NOT NULL,
    cells_in_series         INTEGER NOT NULL,
    cells_in_parallel       INTEGER NOT NULL,
    rated_capacity_coulombs REAL    NOT NULL,
    charge_rating_amps      REAL,
    discharge_rating_amps   REAL,
    mass_kilograms          REAL,
    connector               TEXT    NOT NULL,
    bought_on               TEXT    CHECK (bought_on <> ''),
    keeper                  TEXT    NOT NULL,
    identity                TEXT    NOT NULL,
    note                    TEXT    NOT NULL,
    retired                 INTEGER NOT NULL CHECK (retired IN (0, 1)),
    retired_reason          TEXT    NOT NULL,
    withdrawn               INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE UNIQUE INDEX pack_by_tag ON pack (tag COLLATE NOCASE) WHERE withdrawn = 0;

-- value_si is in the SI unit of the quantity (volts, kelvins, seconds, fraction, amps).
CREATE TABLE pack_makers_limit (
    pack_id   INTEGER NOT NULL REFERENCES pack (id),
    position  INTEGER NOT NULL,
    chemistry TEXT    NOT NULL,
    quantity  TEXT    NOT NULL,
    value_si  REAL    NOT NULL,
    names_pack INTEGER NOT NULL CHECK (names_pack IN (0, 1)),
    reason    TEXT    NOT NULL,
    PRIMARY KEY (pack_id, position)
) STRICT;

CREATE TABLE craft (
    id              INTEGER PRIMARY KEY,
    name            TEXT    NOT NULL,
    kind            TEXT    NOT NULL,
    cells_in_series INTEGER,
    connector       TEXT    NOT NULL,
    typical_amps    REAL,
    peak_amps       REAL,
    keeper          TEXT    NOT NULL,
    note            TEXT    NOT NULL,
    retired         INTEGER NOT NULL CHECK (retired IN (0, 1)),
    retired_reason  TEXT    NOT NULL,
    withdrawn       INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE UNIQUE INDEX craft_by_name ON craft (name COLLATE NOCASE) WHERE withdrawn = 0;

CREATE TABLE source (
    id             INTEGER PRIMARY KEY,
    name           TEXT    NOT NULL,
    kind           TEXT    NOT NULL,
    max_watts      REAL    NOT NULL,
    energy_joules  REAL,
    note           TEXT    NOT NULL,
    retired        INTEGER NOT NULL CHECK (retired IN (0, 1)),
    retired_reason TEXT    NOT NULL,
    withdrawn      INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE UNIQUE INDEX source_by_name ON source (name COLLATE NOCASE) WHERE withdrawn = 0;

CREATE TABLE charger (
    id             INTEGER PRIMARY KEY,
    name           TEXT    NOT NULL,
    total_watts    REAL,
    source_id      INTEGER REFERENCES source (id),
    note           TEXT    NOT NULL,
    retired        INTEGER NOT NULL CHECK (retired IN (0, 1)),
    retired_reason TEXT    NOT NULL,
    withdrawn      INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE UNIQUE INDEX charger_by_name ON charger (name COLLATE NOCASE) WHERE withdrawn = 0;
CREATE INDEX charger_by_source ON charger (source_id);

CREATE TABLE charger_chemistry (
    charger_id INTEGER NOT NULL REFERENCES charger (id),
    position   INTEGER NOT NULL,
    chemistry  TEXT    NOT NULL,
    PRIMARY KEY (charger_id, position)
) STRICT;

CREATE TABLE charger_port (
    charger_id      INTEGER NOT NULL REFERENCES charger (id),
    position        INTEGER NOT NULL,
    number          INTEGER NOT NULL,
    max_amps        REAL    NOT NULL,
    max_watts       REAL    NOT NULL,
    max_cells       INTEGER NOT NULL,
    bleed_amps      REAL,
    discharge_watts REAL,
    PRIMARY KEY (charger_id, position)
) STRICT;

CREATE TABLE pack_check (
    id                  INTEGER PRIMARY KEY,
    pack_id             INTEGER NOT NULL REFERENCES pack (id),
    taken_at_utc        TEXT    NOT NULL,
    pack_rest_volts     REAL,
    rest_seconds        REAL,
    temperature_kelvins REAL,
    resistance_method   TEXT    NOT NULL,
    swelling            INTEGER NOT NULL CHECK (swelling IN (0, 1)),
    damage              INTEGER NOT NULL CHECK (damage IN (0, 1)),
    smell               INTEGER NOT NULL CHECK (smell IN (0, 1)),
    note                TEXT    NOT NULL,
    typed               TEXT    NOT NULL,
    withdrawn           INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX pack_check_by_pack ON pack_check (pack_id);

-- position is the cell's place on the balance lead, from 1.
CREATE TABLE pack_check_cell (
    pack_check_id   INTEGER NOT NULL REFERENCES pack_check (id),
    position        INTEGER NOT NULL,
    rest_volts      REAL,
    resistance_ohms REAL,
    PRIMARY KEY (pack_check_id, position)
) STRICT;

CREATE TABLE pack_charge (
    id                INTEGER PRIMARY KEY,
    pack_id           INTEGER NOT NULL REFERENCES pack (id),
    ended_at_utc      TEXT    NOT NULL,
    returned_coulombs REAL,
    end_pack_volts    REAL,
    warmest_kelvins   REAL,
    note              TEXT    NOT NULL,
    typed             TEXT    NOT NULL,
    withdrawn         INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX pack_charge_by_pack ON pack_charge (pack_id);

-- craft_id where the craft is registered; craft_name is the name as noted.
CREATE TABLE pack_run (
    id                   INTEGER PRIMARY KEY,
    pack_id              INTEGER NOT NULL REFERENCES pack (id),
    ended_at_utc         TEXT    NOT NULL,
    craft_id             INTEGER REFERENCES craft (id),
    craft_name           TEXT    NOT NULL,
    duration_seconds     REAL    NOT NULL,
    remaining_fraction   REAL,
    remaining_pack_volts REAL,
    warmest_kelvins      REAL,
    note                 TEXT    NOT NULL,
    typed                TEXT    NOT NULL,
    withdrawn            INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX pack_run_by_pack ON pack_run (pack_id);
CREATE INDEX pack_run_by_craft ON pack_run (craft_id);

CREATE TABLE rule_override (
    id        INTEGER PRIMARY KEY,
    chemistry TEXT    NOT NULL,
    quantity  TEXT    NOT NULL,
    value_si  REAL    NOT NULL,
    pack_id   INTEGER REFERENCES pack (id),
    reason    TEXT    NOT NULL,
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE UNIQUE INDEX rule_override_by_place ON rule_override (chemistry, quantity, ifnull(pack_id, 0)) WHERE withdrawn = 0;
CREATE INDEX rule_override_by_pack ON rule_override (pack_id);
