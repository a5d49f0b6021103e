-- Traces: the file as received, kept by what its bytes are, and what was found in it.

CREATE TABLE trace_file (
    sha256 TEXT    NOT NULL PRIMARY KEY,
    bytes  INTEGER NOT NULL
) STRICT;

-- The file packed with gzip, in pieces, each as base64 so that an archive of text can carry it.
CREATE TABLE trace_file_part (
    sha256   TEXT    NOT NULL REFERENCES trace_file (sha256),
    position INTEGER NOT NULL,
    packed   TEXT    NOT NULL,
    PRIMARY KEY (sha256, position)
) STRICT;

CREATE TABLE pack_trace (
    id               INTEGER PRIMARY KEY,
    pack_id          INTEGER NOT NULL REFERENCES pack (id),
    file_name        TEXT    NOT NULL,
    file_sha256      TEXT    NOT NULL REFERENCES trace_file (sha256),
    file_bytes       INTEGER NOT NULL,
    mapping          TEXT    NOT NULL,
    samples          INTEGER NOT NULL,
    cells            INTEGER NOT NULL,
    has_current      INTEGER NOT NULL CHECK (has_current IN (0, 1)),
    started_at_utc   TEXT    CHECK (started_at_utc <> ''),
    duration_seconds REAL    NOT NULL,
    offset_amps      REAL,
    remarks          TEXT    NOT NULL,
    note             TEXT    NOT NULL,
    typed            TEXT    NOT NULL,
    withdrawn        INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX pack_trace_by_pack ON pack_trace (pack_id);
CREATE UNIQUE INDEX pack_trace_by_file ON pack_trace (file_sha256) WHERE withdrawn = 0;

CREATE TABLE pack_trace_segment (
    pack_trace_id   INTEGER NOT NULL REFERENCES pack_trace (id),
    position        INTEGER NOT NULL,
    kind            TEXT    NOT NULL,
    from_seconds    REAL    NOT NULL,
    to_seconds      REAL    NOT NULL,
    out_coulombs    REAL    NOT NULL,
    in_coulombs     REAL    NOT NULL,
    out_joules      REAL    NOT NULL,
    in_joules       REAL    NOT NULL,
    counted_seconds REAL    NOT NULL,
    unseen_seconds  REAL    NOT NULL,
    PRIMARY KEY (pack_trace_id, position)
) STRICT;

-- cell is 0 for the pack as a whole; worst and limit are in the SI unit of the kind.
CREATE TABLE pack_trace_event (
    pack_trace_id    INTEGER NOT NULL REFERENCES pack_trace (id),
    position         INTEGER NOT NULL,
    kind             TEXT    NOT NULL,
    cell             INTEGER NOT NULL,
    at_seconds       REAL    NOT NULL,
    duration_seconds REAL    NOT NULL,
    worst_si         REAL    NOT NULL,
    limit_si         REAL    NOT NULL,
    PRIMARY KEY (pack_trace_id, position)
) STRICT;
