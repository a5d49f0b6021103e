-- What a trace adds to the evidence on its pack, and whether its events were looked into.

ALTER TABLE pack_trace ADD COLUMN acknowledged TEXT CHECK (acknowledged <> '');

-- cell is 0 for the mean cell where cells were not logged.
CREATE TABLE pack_trace_rest (
    pack_trace_id  INTEGER NOT NULL REFERENCES pack_trace (id),
    position       INTEGER NOT NULL,
    cell           INTEGER NOT NULL,
    at_seconds     REAL    NOT NULL,
    rested_seconds REAL    NOT NULL,
    volts          REAL    NOT NULL,
    kelvins        REAL,
    PRIMARY KEY (pack_trace_id, position)
) STRICT;

CREATE TABLE pack_trace_resistance (
    pack_trace_id  INTEGER NOT NULL REFERENCES pack_trace (id),
    position       INTEGER NOT NULL,
    cell           INTEGER NOT NULL,
    ohms_at_25     REAL    NOT NULL,
    deviation_ohms REAL    NOT NULL,
    PRIMARY KEY (pack_trace_id, position)
) STRICT;

-- The logs themselves now stand in files beside the book; before this runs, the program has moved them there.
DROP TABLE trace_file_part;

-- A log of two packs side by side is a trace of each, read by other columns.
DROP INDEX pack_trace_by_file;
CREATE UNIQUE INDEX pack_trace_by_file ON pack_trace (file_sha256, pack_id) WHERE withdrawn = 0;
