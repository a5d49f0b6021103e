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
-- next
INSERT INTO "charger" VALUES(1,'Bench',NULL,1,'',0,'',0);
-- next
CREATE TABLE charger_chemistry (
    charger_id INTEGER NOT NULL REFERENCES charger (id),
    position   INTEGER NOT NULL,
    chemistry  TEXT    NOT NULL,
    PRIMARY KEY (charger_id, position)
) STRICT;
-- next
INSERT INTO "charger_chemistry" VALUES(1,1,'LIPO');
-- next
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
-- next
INSERT INTO "charger_port" VALUES(1,1,1,20.0,400.0,6,NULL,NULL);
-- next
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
-- next
INSERT INTO "craft" VALUES(1,'Kestrel','GLIDER',4,'',NULL,NULL,'','',0,'',0);
-- next
CREATE TABLE "flyway_schema_history" (
    "installed_rank" INT NOT NULL PRIMARY KEY,
    "version" VARCHAR(50),
    "description" VARCHAR(200) NOT NULL,
    "type" VARCHAR(20) NOT NULL,
    "script" VARCHAR(1000) NOT NULL,
    "checksum" INT,
    "installed_by" VARCHAR(100) NOT NULL,
    "installed_on" TEXT NOT NULL DEFAULT (strftime('%Y-%m-%d %H:%M:%f','now')),
    "execution_time" INT NOT NULL,
    "success" BOOLEAN NOT NULL
);
-- next
INSERT INTO "flyway_schema_history" VALUES(1,'1','bench book','SQL','V1__bench_book.sql',-685567092,'','2026-11-25 18:12:47.085',58,1);
-- next
INSERT INTO "flyway_schema_history" VALUES(2,'2','traces','SQL','V2__traces.sql',1262232173,'','2026-11-25 18:12:47.153',1,1);
-- next
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
-- next
INSERT INTO "journal" VALUES(1,'2026-11-25T18:12:47.692551008Z','root','added pack P07 (LiPo 4S 5000 mAh)','P07','pack',1,NULL,'{"bought_on":null,"cells_in_parallel":1,"cells_in_series":4,"charge_rating_amps":null,"chemistry":"LIPO","connector":"","discharge_rating_amps":null,"identity":"CONFIRMED","keeper":"","mass_kilograms":null,"note":"label, \"gentle\"","rated_capacity_coulombs":18000.0,"retired":0,"retired_reason":"","tag":"P07","withdrawn":0,"pack_makers_limit":[]}',NULL,'2a9897473abdffd372b36e0820f0c8b45163830152c3c4f85a15643f462875aa');
-- next
INSERT INTO "journal" VALUES(2,'2026-11-25T18:12:50.387815591Z','root','added craft Kestrel (glider, 4S)','Kestrel','craft',1,NULL,'{"cells_in_series":4,"connector":"","keeper":"","kind":"GLIDER","name":"Kestrel","note":"","peak_amps":null,"retired":0,"retired_reason":"","typical_amps":null,"withdrawn":0}',NULL,'19cedc853b7260fd9c0778a3b82ed424e6265997d46358f77f8a99bbe04340e3');
-- next
INSERT INTO "journal" VALUES(3,'2026-11-25T18:12:52.284523126Z','root','added source Trolley (field battery, 600 W)','Trolley','source',1,NULL,'{"energy_joules":null,"kind":"FIELD_BATTERY","max_watts":600.0,"name":"Trolley","note":"","retired":0,"retired_reason":"","withdrawn":0}',NULL,'7767a18904fa3bc5659bc284526c5cd7062230ba11213e3d99642c2cca089213');
-- next
INSERT INTO "journal" VALUES(4,'2026-11-25T18:12:55.736740144Z','root','added charger Bench (1 port, LiPo)','Bench','charger',1,NULL,'{"name":"Bench","note":"","retired":0,"retired_reason":"","source_id":1,"total_watts":null,"withdrawn":0,"charger_chemistry":[{"chemistry":"LIPO"}],"charger_port":[{"bleed_amps":null,"discharge_watts":null,"max_amps":20.0,"max_cells":6,"max_watts":400.0,"number":1}]}',NULL,'a534d6e2c406b284ad4ba632a9df75b4b5fbf8e98545468ebe43a7ea8a37aee5');
-- next
INSERT INTO "journal" VALUES(5,'2026-11-25T18:12:58.614312375Z','root','check of P07: 3.840 3.830 3.850 3.840 V, 21 °C, swollen','P07','pack_check',1,NULL,'{"damage":0,"note":"","pack_id":1,"pack_rest_volts":null,"resistance_method":"","rest_seconds":7200.0,"smell":0,"swelling":1,"taken_at_utc":"2026-11-25T18:12:58.602157123Z","temperature_kelvins":294.15,"typed":"P07 3.84 3.83 3.85 3.84 21C rest 2h swollen","withdrawn":0,"pack_check_cell":[{"resistance_ohms":null,"rest_volts":3.84},{"resistance_ohms":null,"rest_volts":3.83},{"resistance_ohms":null,"rest_volts":3.85},{"resistance_ohms":null,"rest_volts":3.84}]}',NULL,'39f1a14c17dce2124ed9a24e2af04a0e55bef05dc014ae0d9242a4197cc6d111');
-- next
INSERT INTO "journal" VALUES(6,'2026-11-25T18:13:00.941968258Z','root','charged P07: 1840 mAh put back, 16.80 V at the end','P07','pack_charge',1,NULL,'{"end_pack_volts":16.8,"ended_at_utc":"2026-11-25T18:13:00.929200256Z","note":"","pack_id":1,"returned_coulombs":6624.0,"typed":"P07 charged 1840 mAh to 16.8V","warmest_kelvins":null,"withdrawn":0}',NULL,'20c126c86874b670f2ca6653159b18f6b3c4425f2ac222b7cffce467ecddc763');
-- next
INSERT INTO "journal" VALUES(7,'2026-11-25T18:13:03.445050847Z','root','ran P07 in Kestrel: 7.5 min, 30 % left','P07','pack_run',1,NULL,'{"craft_id":1,"craft_name":"Kestrel","duration_seconds":450.0,"ended_at_utc":"2026-11-25T18:13:03.435847917Z","note":"","pack_id":1,"remaining_fraction":0.3,"remaining_pack_volts":null,"typed":"P07 ran Kestrel 7.5min left 30%","warmest_kelvins":null,"withdrawn":0}',NULL,'d3b85269797fc3040685739c6298a9e77f41d3c585db342a6fc422b8b6436eb8');
-- next
INSERT INTO "journal" VALUES(8,'2026-11-25T18:13:05.157675936Z','root','changed LiPo longest time kept full to 48 h for P07','P07','rule_override',1,NULL,'{"chemistry":"LIPO","pack_id":1,"quantity":"STORAGE_TIME","reason":"","value_si":172800.0,"withdrawn":0}',NULL,'9d2b578fc37c166d51d853d8b0e1c69af84485ef6411cb04348e1dbb456b7cf8');
-- next
INSERT INTO "journal" VALUES(9,'2026-11-25T18:13:07.474485540Z','root','check of P07: 3.800 3.800 3.800 3.800 V','P07','pack_check',2,NULL,'{"damage":0,"note":"","pack_id":1,"pack_rest_volts":null,"resistance_method":"","rest_seconds":null,"smell":0,"swelling":0,"taken_at_utc":"2026-11-25T18:13:07.467030530Z","temperature_kelvins":null,"typed":"P07 3.80 3.80 3.80 3.80","withdrawn":0,"pack_check_cell":[{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8}]}',NULL,'2ab490fa87eeb78430326b5481a1de897cafc96aecc077ddbc64cf3d9e2406e8');
-- next
INSERT INTO "journal" VALUES(10,'2026-11-25T18:13:09.521914086Z','root','undid #9: check of P07: 3.800 3.800 3.800 3.800 V','P07','pack_check',2,'{"damage":0,"note":"","pack_id":1,"pack_rest_volts":null,"resistance_method":"","rest_seconds":null,"smell":0,"swelling":0,"taken_at_utc":"2026-11-25T18:13:07.467030530Z","temperature_kelvins":null,"typed":"P07 3.80 3.80 3.80 3.80","withdrawn":0,"pack_check_cell":[{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8}]}','{"damage":0,"note":"","pack_id":1,"pack_rest_volts":null,"resistance_method":"","rest_seconds":null,"smell":0,"swelling":0,"taken_at_utc":"2026-11-25T18:13:07.467030530Z","temperature_kelvins":null,"typed":"P07 3.80 3.80 3.80 3.80","withdrawn":1,"pack_check_cell":[{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8}]}',9,'0ff8e7805819b65f47876db0e5064223be23ecdaf86a93409c1980f49893cabd');
-- next
INSERT INTO "journal" VALUES(11,'2026-11-25T18:13:11.700013928Z','root','added trace flight.csv of P07: 1 run, 11 mAh out, 0 events','P07','pack_trace',1,NULL,'{"cells":0,"duration_seconds":4.0,"file_bytes":74,"file_name":"flight.csv","file_sha256":"9f92f52799661558422eba2011db2dbf0f95565169cdf5d2a00c8b6fc6d83895","has_current":1,"mapping":"{\"columns\":[{\"index\":0,\"name\":\"time_s\",\"role\":\"TIME\",\"cell\":0,\"unit\":\"SECOND\",\"sure\":true},{\"index\":1,\"name\":\"volts\",\"role\":\"PACK_VOLTS\",\"cell\":0,\"unit\":\"VOLT\",\"sure\":false},{\"index\":2,\"name\":\"amps\",\"role\":\"AMPS\",\"cell\":0,\"unit\":\"AMPERE\",\"sure\":false}],\"positive\":\"DISCHARGES\"}","note":"","offset_amps":null,"pack_id":1,"remarks":"no temperature was logged: heat and charging in the cold cannot be told.","samples":5,"started_at_utc":null,"typed":"positive discharge","withdrawn":0,"pack_trace_event":[],"pack_trace_segment":[{"counted_seconds":4.0,"from_seconds":0.0,"in_coulombs":0.0,"in_joules":0.0,"kind":"RUN","out_coulombs":41.050000000000004,"out_joules":653.79,"to_seconds":4.0,"unseen_seconds":0.0}]}',NULL,'745771ab5c45a69b70d8bb0fc9a71e7699a0657d6f0074aa06e7f7265f4c346e');
-- next
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
-- next
INSERT INTO "pack" VALUES(1,'P07','LIPO',4,1,18000.0,NULL,NULL,NULL,'',NULL,'','CONFIRMED','label, "gentle"',0,'',0);
-- next
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
-- next
INSERT INTO "pack_charge" VALUES(1,1,'2026-11-25T18:13:00.929200256Z',6624.0,16.8,NULL,'','P07 charged 1840 mAh to 16.8V',0);
-- next
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
-- next
INSERT INTO "pack_check" VALUES(1,1,'2026-11-25T18:12:58.602157123Z',NULL,7200.0,294.15,'',1,0,0,'','P07 3.84 3.83 3.85 3.84 21C rest 2h swollen',0);
-- next
INSERT INTO "pack_check" VALUES(2,1,'2026-11-25T18:13:07.467030530Z',NULL,NULL,NULL,'',0,0,0,'','P07 3.80 3.80 3.80 3.80',1);
-- next
CREATE TABLE pack_check_cell (
    pack_check_id   INTEGER NOT NULL REFERENCES pack_check (id),
    position        INTEGER NOT NULL,
    rest_volts      REAL,
    resistance_ohms REAL,
    PRIMARY KEY (pack_check_id, position)
) STRICT;
-- next
INSERT INTO "pack_check_cell" VALUES(1,1,3.84,NULL);
-- next
INSERT INTO "pack_check_cell" VALUES(1,2,3.83,NULL);
-- next
INSERT INTO "pack_check_cell" VALUES(1,3,3.85,NULL);
-- next
INSERT INTO "pack_check_cell" VALUES(1,4,3.84,NULL);
-- next
INSERT INTO "pack_check_cell" VALUES(2,1,3.8,NULL);
-- next
INSERT INTO "pack_check_cell" VALUES(2,2,3.8,NULL);
-- next
INSERT INTO "pack_check_cell" VALUES(2,3,3.8,NULL);
-- next
INSERT INTO "pack_check_cell" VALUES(2,4,3.8,NULL);
-- next
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
-- next
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
-- next
INSERT INTO "pack_run" VALUES(1,1,'2026-11-25T18:13:03.435847917Z',1,'Kestrel',450.0,0.3,NULL,NULL,'','P07 ran Kestrel 7.5min left 30%',0);
-- next
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
-- next
INSERT INTO "pack_trace" VALUES(1,1,'flight.csv','9f92f52799661558422eba2011db2dbf0f95565169cdf5d2a00c8b6fc6d83895',74,'{"columns":[{"index":0,"name":"time_s","role":"TIME","cell":0,"unit":"SECOND","sure":true},{"index":1,"name":"volts","role":"PACK_VOLTS","cell":0,"unit":"VOLT","sure":false},{"index":2,"name":"amps","role":"AMPS","cell":0,"unit":"AMPERE","sure":false}],"positive":"DISCHARGES"}',5,0,1,NULL,4.0,NULL,'no temperature was logged: heat and charging in the cold cannot be told.','','positive discharge',0);
-- next
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
-- next
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
-- next
INSERT INTO "pack_trace_segment" VALUES(1,1,'RUN',0.0,4.0,4.10500000000000042632e+01,0.0,653.79,0.0,4.0,0.0);
-- next
CREATE TABLE rule_override (
    id        INTEGER PRIMARY KEY,
    chemistry TEXT    NOT NULL,
    quantity  TEXT    NOT NULL,
    value_si  REAL    NOT NULL,
    pack_id   INTEGER REFERENCES pack (id),
    reason    TEXT    NOT NULL,
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
-- next
INSERT INTO "rule_override" VALUES(1,'LIPO','STORAGE_TIME',172800.0,1,'',0);
-- next
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
-- next
INSERT INTO "source" VALUES(1,'Trolley','FIELD_BATTERY',600.0,NULL,'',0,'',0);
-- next
CREATE TABLE trace_file (
    sha256 TEXT    NOT NULL PRIMARY KEY,
    bytes  INTEGER NOT NULL
) STRICT;
-- next
INSERT INTO "trace_file" VALUES('9f92f52799661558422eba2011db2dbf0f95565169cdf5d2a00c8b6fc6d83895',74);
-- next
CREATE TABLE trace_file_part (
    sha256   TEXT    NOT NULL REFERENCES trace_file (sha256),
    position INTEGER NOT NULL,
    packed   TEXT    NOT NULL,
    PRIMARY KEY (sha256, position)
) STRICT;
-- next
INSERT INTO "trace_file_part" VALUES('9f92f52799661558422eba2011db2dbf0f95565169cdf5d2a00c8b6fc6d83895',1,'H4sIAAAAAAAA/yvJzE2NL9Ypy88pKdZJzC0o5jLQMTTTM9Ex0DPkMgQxgYSRngmXkY6hqZ6ljqEJlzGIZQFk6ZlymYBUGAMVG3EBAO1vr1lKAAAA');
-- next
CREATE INDEX "flyway_schema_history_s_idx" ON "flyway_schema_history" ("success");
-- next
CREATE INDEX journal_by_item ON journal (item_kind, item_id);
-- next
CREATE INDEX journal_by_undone ON journal (undoes) WHERE undoes IS NOT NULL;
-- next
CREATE UNIQUE INDEX pack_by_tag ON pack (tag COLLATE NOCASE) WHERE withdrawn = 0;
-- next
CREATE UNIQUE INDEX craft_by_name ON craft (name COLLATE NOCASE) WHERE withdrawn = 0;
-- next
CREATE UNIQUE INDEX source_by_name ON source (name COLLATE NOCASE) WHERE withdrawn = 0;
-- next
CREATE UNIQUE INDEX charger_by_name ON charger (name COLLATE NOCASE) WHERE withdrawn = 0;
-- next
CREATE INDEX charger_by_source ON charger (source_id);
-- next
CREATE INDEX pack_check_by_pack ON pack_check (pack_id);
-- next
CREATE INDEX pack_charge_by_pack ON pack_charge (pack_id);
-- next
CREATE INDEX pack_run_by_pack ON pack_run (pack_id);
-- next
CREATE INDEX pack_run_by_craft ON pack_run (craft_id);
-- next
CREATE UNIQUE INDEX rule_override_by_place ON rule_override (chemistry, quantity, ifnull(pack_id, 0)) WHERE withdrawn = 0;
-- next
CREATE INDEX rule_override_by_pack ON rule_override (pack_id);
-- next
CREATE INDEX pack_trace_by_pack ON pack_trace (pack_id);
-- next
CREATE UNIQUE INDEX pack_trace_by_file ON pack_trace (file_sha256) WHERE withdrawn = 0;
