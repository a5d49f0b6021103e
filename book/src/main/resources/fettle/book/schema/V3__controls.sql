-- Controls: servos by voltage, set-up sheets of a craft, and sweeps of its surfaces as they were read.

CREATE TABLE servo (
    id                       INTEGER PRIMARY KEY,
    name                     TEXT    NOT NULL,
    centre_seconds           REAL    NOT NULL,
    radians_per_pulse_second REAL    NOT NULL,
    half_span_seconds        REAL    NOT NULL,
    fastest_frame_hertz      REAL    NOT NULL,
    dead_band_seconds        REAL    NOT NULL,
    retired                  INTEGER NOT NULL CHECK (retired IN (0, 1)),
    retired_reason           TEXT    NOT NULL,
    withdrawn                INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE UNIQUE INDEX servo_by_name ON servo (name COLLATE NOCASE) WHERE withdrawn = 0;

CREATE TABLE servo_rating (
    servo_id            INTEGER NOT NULL REFERENCES servo (id),
    position            INTEGER NOT NULL,
    volts               REAL    NOT NULL,
    stall_newton_metres REAL    NOT NULL,
    radians_per_second  REAL,
    idle_amps           REAL,
    moving_amps         REAL,
    stall_amps          REAL,
    PRIMARY KEY (servo_id, position)
) STRICT;

CREATE TABLE set_up_sheet (
    id        INTEGER PRIMARY KEY,
    craft_id  INTEGER NOT NULL REFERENCES craft (id),
    dated_on  TEXT    NOT NULL CHECK (dated_on <> ''),
    note      TEXT    NOT NULL,
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX set_up_sheet_by_craft ON set_up_sheet (craft_id);

CREATE TABLE set_up_sheet_surface (
    set_up_sheet_id  INTEGER NOT NULL REFERENCES set_up_sheet (id),
    position         INTEGER NOT NULL,
    surface          TEXT    NOT NULL,
    servo            TEXT    NOT NULL,
    lowest_seconds   REAL    NOT NULL,
    centre_seconds   REAL    NOT NULL,
    highest_seconds  REAL    NOT NULL,
    reversed         INTEGER NOT NULL CHECK (reversed IN (0, 1)),
    chord_metres     REAL    NOT NULL,
    arm_hole_metres  REAL,
    horn_hole_metres REAL,
    idle_amps        REAL,
    largest_amps     REAL,
    PRIMARY KEY (set_up_sheet_id, position)
) STRICT;

-- A rate of the surface of that name on the same sheet.
CREATE TABLE set_up_sheet_rate (
    set_up_sheet_id INTEGER NOT NULL REFERENCES set_up_sheet (id),
    position        INTEGER NOT NULL,
    surface         TEXT    NOT NULL,
    name            TEXT    NOT NULL,
    up_radians      REAL    NOT NULL,
    down_radians    REAL    NOT NULL,
    PRIMARY KEY (set_up_sheet_id, position)
) STRICT;

CREATE TABLE surface_sweep (
    id           INTEGER PRIMARY KEY,
    craft_id     INTEGER NOT NULL REFERENCES craft (id),
    surface      TEXT    NOT NULL,
    taken_at_utc TEXT    NOT NULL,
    file_name    TEXT    NOT NULL,
    idle_amps    REAL,
    stall_amps   REAL,
    withdrawn    INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX surface_sweep_by_craft ON surface_sweep (craft_id);

CREATE TABLE surface_sweep_point (
    surface_sweep_id INTEGER NOT NULL REFERENCES surface_sweep (id),
    position         INTEGER NOT NULL,
    pulse_seconds    REAL    NOT NULL,
    amps             REAL    NOT NULL,
    angle_radians    REAL,
    PRIMARY KEY (surface_sweep_id, position)
) STRICT;
