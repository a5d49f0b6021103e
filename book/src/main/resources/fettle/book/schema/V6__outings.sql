-- Outings: a planned day with everything it is planned from, what was settled and what came of it; and every plan made.

CREATE TABLE outing (
    id                INTEGER PRIMARY KEY,
    name              TEXT    NOT NULL,
    zone              TEXT    NOT NULL CHECK (zone <> ''),
    leave_home_utc    TEXT    NOT NULL,
    arrive_utc        TEXT    NOT NULL,
    pack_up_utc       TEXT    NOT NULL,
    back_home_utc     TEXT    NOT NULL,
    ambient_kelvins   REAL    NOT NULL,
    storage_by_utc    TEXT    NOT NULL,
    note              TEXT    NOT NULL,
    retired           INTEGER NOT NULL CHECK (retired IN (0, 1)),
    retired_reason    TEXT    NOT NULL,
    withdrawn         INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE UNIQUE INDEX outing_by_name ON outing (name COLLATE NOCASE) WHERE withdrawn = 0;

CREATE TABLE outing_attended (
    outing_id INTEGER NOT NULL REFERENCES outing (id),
    position  INTEGER NOT NULL,
    spot      TEXT    NOT NULL,
    from_utc  TEXT    NOT NULL,
    until_utc TEXT    NOT NULL,
    PRIMARY KEY (outing_id, position)
) STRICT;

CREATE TABLE outing_feed (
    outing_id           INTEGER NOT NULL REFERENCES outing (id),
    position            INTEGER NOT NULL,
    spot                TEXT    NOT NULL,
    charger_id          INTEGER NOT NULL REFERENCES charger (id),
    source_id           INTEGER NOT NULL REFERENCES source (id),
    efficiency_fraction REAL    NOT NULL,
    from_utc            TEXT    CHECK (from_utc <> ''),
    until_utc           TEXT    CHECK (until_utc <> ''),
    PRIMARY KEY (outing_id, position)
) STRICT;

CREATE TABLE outing_pack (
    outing_id INTEGER NOT NULL REFERENCES outing (id),
    position  INTEGER NOT NULL,
    pack_id   INTEGER NOT NULL REFERENCES pack (id),
    PRIMARY KEY (outing_id, position)
) STRICT;

CREATE TABLE outing_wish (
    outing_id        INTEGER NOT NULL REFERENCES outing (id),
    position         INTEGER NOT NULL,
    craft_id         INTEGER NOT NULL REFERENCES craft (id),
    count            INTEGER NOT NULL,
    value            INTEGER NOT NULL,
    earliest_utc     TEXT    NOT NULL,
    latest_utc       TEXT    NOT NULL,
    duration_seconds REAL    NOT NULL,
    gap_seconds      REAL    NOT NULL,
    takes_fraction   REAL,
    PRIMARY KEY (outing_id, position)
) STRICT;

CREATE TABLE outing_goal (
    outing_id INTEGER NOT NULL REFERENCES outing (id),
    position  INTEGER NOT NULL,
    goal      TEXT    NOT NULL,
    PRIMARY KEY (outing_id, position)
) STRICT;

-- packs is a list of tags with spaces between them, as they were when it was settled.
CREATE TABLE outing_choice (
    outing_id INTEGER NOT NULL REFERENCES outing (id),
    position  INTEGER NOT NULL,
    kind      TEXT    NOT NULL,
    subject   TEXT    NOT NULL,
    packs     TEXT    NOT NULL,
    at_utc    TEXT    CHECK (at_utc <> ''),
    PRIMARY KEY (outing_id, position)
) STRICT;

CREATE TABLE outing_happened (
    outing_id         INTEGER NOT NULL REFERENCES outing (id),
    position          INTEGER NOT NULL,
    kind              TEXT    NOT NULL,
    subject           TEXT    NOT NULL,
    packs             TEXT    NOT NULL,
    began_utc         TEXT    CHECK (began_utc <> ''),
    ended_utc         TEXT    CHECK (ended_utc <> ''),
    put_back_coulombs REAL,
    PRIMARY KEY (outing_id, position)
) STRICT;

CREATE TABLE outing_plan (
    id             INTEGER PRIMARY KEY,
    outing_id      INTEGER NOT NULL REFERENCES outing (id),
    made_at_utc    TEXT    NOT NULL,
    from_utc       TEXT    NOT NULL,
    search_seconds REAL    NOT NULL,
    withdrawn      INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX outing_plan_by_outing ON outing_plan (outing_id);

CREATE TABLE outing_plan_input (
    outing_plan_id INTEGER NOT NULL REFERENCES outing_plan (id),
    position       INTEGER NOT NULL,
    sentence       TEXT    NOT NULL,
    PRIMARY KEY (outing_plan_id, position)
) STRICT;

CREATE TABLE outing_plan_remark (
    outing_plan_id INTEGER NOT NULL REFERENCES outing_plan (id),
    position       INTEGER NOT NULL,
    sentence       TEXT    NOT NULL,
    PRIMARY KEY (outing_plan_id, position)
) STRICT;

CREATE TABLE outing_plan_charge (
    outing_plan_id INTEGER NOT NULL REFERENCES outing_plan (id),
    position       INTEGER NOT NULL,
    way            TEXT    NOT NULL,
    packs          TEXT    NOT NULL,
    spot           TEXT    NOT NULL,
    port           TEXT    NOT NULL,
    target         TEXT    NOT NULL,
    begins_utc     TEXT    NOT NULL,
    ends_utc       TEXT    NOT NULL,
    from_fraction  REAL    NOT NULL,
    to_fraction    REAL    NOT NULL,
    source         TEXT    NOT NULL,
    source_watts   REAL    NOT NULL,
    source_joules  REAL    NOT NULL,
    PRIMARY KEY (outing_plan_id, position)
) STRICT;

CREATE TABLE outing_plan_run (
    outing_plan_id INTEGER NOT NULL REFERENCES outing_plan (id),
    position       INTEGER NOT NULL,
    run            TEXT    NOT NULL,
    craft          TEXT    NOT NULL,
    packs          TEXT    NOT NULL,
    begins_utc     TEXT    NOT NULL,
    ends_utc       TEXT    NOT NULL,
    cool_until_utc TEXT    NOT NULL,
    PRIMARY KEY (outing_plan_id, position)
) STRICT;

CREATE TABLE outing_plan_goal (
    outing_plan_id INTEGER NOT NULL REFERENCES outing_plan (id),
    position       INTEGER NOT NULL,
    goal           TEXT    NOT NULL,
    came           TEXT    NOT NULL,
    proven         INTEGER NOT NULL CHECK (proven IN (0, 1)),
    gap_fraction   REAL    NOT NULL,
    PRIMARY KEY (outing_plan_id, position)
) STRICT;
