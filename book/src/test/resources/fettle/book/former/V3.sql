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
INSERT INTO "flyway_schema_history" VALUES(1,'1','bench book','SQL','V1__bench_book.sql',-685567092,'','2026-11-25 18:09:53.324',8,1);
-- next
INSERT INTO "flyway_schema_history" VALUES(2,'2','traces','SQL','V2__traces.sql',1262232173,'','2026-11-25 18:09:53.389',1,1);
-- next
INSERT INTO "flyway_schema_history" VALUES(3,'3','controls','SQL','V3__controls.sql',272533430,'','2026-11-25 18:09:53.472',1,1);
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
INSERT INTO "journal" VALUES(1,'2026-11-25T18:09:54.007585554Z','root','added pack P07 (LiPo 4S 5000 mAh)','P07','pack',1,NULL,'{"bought_on":null,"cells_in_parallel":1,"cells_in_series":4,"charge_rating_amps":null,"chemistry":"LIPO","connector":"","discharge_rating_amps":null,"identity":"CONFIRMED","keeper":"","mass_kilograms":null,"note":"label, \"gentle\"","rated_capacity_coulombs":18000.0,"retired":0,"retired_reason":"","tag":"P07","withdrawn":0,"pack_makers_limit":[]}',NULL,'1a5e30e45653f7ff08d97f9c3fa460fa744b09c1e22e807e5877660ce1d3e926');
-- next
INSERT INTO "journal" VALUES(2,'2026-11-25T18:10:00.913707479Z','root','added craft Kestrel (glider, 4S)','Kestrel','craft',1,NULL,'{"cells_in_series":4,"connector":"","keeper":"","kind":"GLIDER","name":"Kestrel","note":"","peak_amps":null,"retired":0,"retired_reason":"","typical_amps":null,"withdrawn":0}',NULL,'c5b1454c6ed8558dbdc8bf21ee5dbea892ee9c87d168360c994e1bf8e5467732');
-- next
INSERT INTO "journal" VALUES(3,'2026-11-25T18:10:09.924529066Z','root','added source Trolley (field battery, 600 W)','Trolley','source',1,NULL,'{"energy_joules":null,"kind":"FIELD_BATTERY","max_watts":600.0,"name":"Trolley","note":"","retired":0,"retired_reason":"","withdrawn":0}',NULL,'b4e986e66a4a78b320e4ab2889f4e6297a7aaa2366b08a582d6e61614a369ad2');
-- next
INSERT INTO "journal" VALUES(4,'2026-11-25T18:10:18.840267608Z','root','added charger Bench (1 port, LiPo)','Bench','charger',1,NULL,'{"name":"Bench","note":"","retired":0,"retired_reason":"","source_id":1,"total_watts":null,"withdrawn":0,"charger_chemistry":[{"chemistry":"LIPO"}],"charger_port":[{"bleed_amps":null,"discharge_watts":null,"max_amps":20.0,"max_cells":6,"max_watts":400.0,"number":1}]}',NULL,'3da037017996bbdab2f8aa6e7ea191d060291a0ca708d4856e1fb4d08d831e32');
-- next
INSERT INTO "journal" VALUES(5,'2026-11-25T18:10:35.432241341Z','root','check of P07: 3.840 3.830 3.850 3.840 V, 21 °C, swollen','P07','pack_check',1,NULL,'{"damage":0,"note":"","pack_id":1,"pack_rest_volts":null,"resistance_method":"","rest_seconds":7200.0,"smell":0,"swelling":1,"taken_at_utc":"2026-11-25T18:10:35.404459925Z","temperature_kelvins":294.15,"typed":"P07 3.84 3.83 3.85 3.84 21C rest 2h swollen","withdrawn":0,"pack_check_cell":[{"resistance_ohms":null,"rest_volts":3.84},{"resistance_ohms":null,"rest_volts":3.83},{"resistance_ohms":null,"rest_volts":3.85},{"resistance_ohms":null,"rest_volts":3.84}]}',NULL,'a15b28aff5ae527b6d3ffb635f3dcd2b24c71309d18934c9e33f1325b1c8bf99');
-- next
INSERT INTO "journal" VALUES(6,'2026-11-25T18:10:46.027467842Z','root','charged P07: 1840 mAh put back, 16.80 V at the end','P07','pack_charge',1,NULL,'{"end_pack_volts":16.8,"ended_at_utc":"2026-11-25T18:10:45.941131999Z","note":"","pack_id":1,"returned_coulombs":6624.0,"typed":"P07 charged 1840 mAh to 16.8V","warmest_kelvins":null,"withdrawn":0}',NULL,'7164c8ecc9c653475df69254aaab05bf993371de984ba277a7b11dce9b7ccff0');
-- next
INSERT INTO "journal" VALUES(7,'2026-11-25T18:10:59.271268727Z','root','ran P07 in Kestrel: 7.5 min, 30 % left','P07','pack_run',1,NULL,'{"craft_id":1,"craft_name":"Kestrel","duration_seconds":450.0,"ended_at_utc":"2026-11-25T18:10:59.254021978Z","note":"","pack_id":1,"remaining_fraction":0.3,"remaining_pack_volts":null,"typed":"P07 ran Kestrel 7.5min left 30%","warmest_kelvins":null,"withdrawn":0}',NULL,'56419cb1219cdebacb14b01cdf4eac43b37c2f6fbe077d80b486dac2ccf4e373');
-- next
INSERT INTO "journal" VALUES(8,'2026-11-25T18:11:09.468294953Z','root','changed LiPo longest time kept full to 48 h for P07','P07','rule_override',1,NULL,'{"chemistry":"LIPO","pack_id":1,"quantity":"STORAGE_TIME","reason":"","value_si":172800.0,"withdrawn":0}',NULL,'2ebbc960fdddf042ac894f638085873d89f89721f315dd5215138f92c5d205a4');
-- next
INSERT INTO "journal" VALUES(9,'2026-11-25T18:11:22.184716239Z','root','check of P07: 3.800 3.800 3.800 3.800 V','P07','pack_check',2,NULL,'{"damage":0,"note":"","pack_id":1,"pack_rest_volts":null,"resistance_method":"","rest_seconds":null,"smell":0,"swelling":0,"taken_at_utc":"2026-11-25T18:11:22.074611309Z","temperature_kelvins":null,"typed":"P07 3.80 3.80 3.80 3.80","withdrawn":0,"pack_check_cell":[{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8}]}',NULL,'53d37c87816537a68ca227739f9d20114a75a8979332a43f97fbc1ec0a10bdd7');
-- next
INSERT INTO "journal" VALUES(10,'2026-11-25T18:11:28.602503273Z','root','undid #9: check of P07: 3.800 3.800 3.800 3.800 V','P07','pack_check',2,'{"damage":0,"note":"","pack_id":1,"pack_rest_volts":null,"resistance_method":"","rest_seconds":null,"smell":0,"swelling":0,"taken_at_utc":"2026-11-25T18:11:22.074611309Z","temperature_kelvins":null,"typed":"P07 3.80 3.80 3.80 3.80","withdrawn":0,"pack_check_cell":[{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8}]}','{"damage":0,"note":"","pack_id":1,"pack_rest_volts":null,"resistance_method":"","rest_seconds":null,"smell":0,"swelling":0,"taken_at_utc":"2026-11-25T18:11:22.074611309Z","temperature_kelvins":null,"typed":"P07 3.80 3.80 3.80 3.80","withdrawn":1,"pack_check_cell":[{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8},{"resistance_ohms":null,"rest_volts":3.8}]}',9,'f744ce716786ff5f1feef323a3bd52c1c1952051b9b05e1a745b0a885074e2a9');
-- next
INSERT INTO "journal" VALUES(11,'2026-11-25T18:11:38.135963422Z','root','added trace flight.csv of P07: 1 run, 11 mAh out, 0 events','P07','pack_trace',1,NULL,'{"cells":0,"duration_seconds":4.0,"file_bytes":74,"file_name":"flight.csv","file_sha256":"9f92f52799661558422eba2011db2dbf0f95565169cdf5d2a00c8b6fc6d83895","has_current":1,"mapping":"{\"columns\":[{\"index\":0,\"name\":\"time_s\",\"role\":\"TIME\",\"cell\":0,\"unit\":\"SECOND\",\"sure\":true},{\"index\":1,\"name\":\"volts\",\"role\":\"PACK_VOLTS\",\"cell\":0,\"unit\":\"VOLT\",\"sure\":false},{\"index\":2,\"name\":\"amps\",\"role\":\"AMPS\",\"cell\":0,\"unit\":\"AMPERE\",\"sure\":false}],\"positive\":\"DISCHARGES\"}","note":"","offset_amps":null,"pack_id":1,"remarks":"no temperature was logged: heat and charging in the cold cannot be told.","samples":5,"started_at_utc":null,"typed":"positive discharge","withdrawn":0,"pack_trace_event":[],"pack_trace_segment":[{"counted_seconds":4.0,"from_seconds":0.0,"in_coulombs":0.0,"in_joules":0.0,"kind":"RUN","out_coulombs":41.050000000000004,"out_joules":653.79,"to_seconds":4.0,"unseen_seconds":0.0}]}',NULL,'e6dc49079259f29d87ee93c27c4dde7e63f74914565827d665a88616e240d62c');
-- next
INSERT INTO "journal" VALUES(12,'2026-11-25T18:11:53.737530106Z','root','set up Kestrel: 1 surface','Kestrel','set_up_sheet',1,NULL,'{"craft_id":1,"dated_on":"2026-11-25","note":"","withdrawn":0,"set_up_sheet_rate":[{"down_radians":0.2792526803190927,"name":"high","surface":"left aileron","up_radians":0.3490658503988659},{"down_radians":0.17453292519943295,"name":"low","surface":"left aileron","up_radians":0.20943951023931956}],"set_up_sheet_surface":[{"arm_hole_metres":0.01,"centre_seconds":0.0015,"chord_metres":0.05,"highest_seconds":0.0019,"horn_hole_metres":0.015,"idle_amps":null,"largest_amps":null,"lowest_seconds":0.0010999999999999998,"reversed":0,"servo":"wing","surface":"left aileron"}]}',NULL,'dccdb2b4a15ae7d6e0fdf68a1796e059fb36ff2e0db0fb6d7d5f6447c1a7b673');
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
INSERT INTO "pack_charge" VALUES(1,1,'2026-11-25T18:10:45.941131999Z',6624.0,16.8,NULL,'','P07 charged 1840 mAh to 16.8V',0);
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
INSERT INTO "pack_check" VALUES(1,1,'2026-11-25T18:10:35.404459925Z',NULL,7200.0,294.15,'',1,0,0,'','P07 3.84 3.83 3.85 3.84 21C rest 2h swollen',0);
-- next
INSERT INTO "pack_check" VALUES(2,1,'2026-11-25T18:11:22.074611309Z',NULL,NULL,NULL,'',0,0,0,'','P07 3.80 3.80 3.80 3.80',1);
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
INSERT INTO "pack_run" VALUES(1,1,'2026-11-25T18:10:59.254021978Z',1,'Kestrel',450.0,0.3,NULL,NULL,'','P07 ran Kestrel 7.5min left 30%',0);
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
-- next
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
-- next
CREATE TABLE set_up_sheet (
    id        INTEGER PRIMARY KEY,
    craft_id  INTEGER NOT NULL REFERENCES craft (id),
    dated_on  TEXT    NOT NULL CHECK (dated_on <> ''),
    note      TEXT    NOT NULL,
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1))
) STRICT;
-- next
INSERT INTO "set_up_sheet" VALUES(1,1,'2026-11-25','',0);
-- next
CREATE TABLE set_up_sheet_rate (
    set_up_sheet_id INTEGER NOT NULL REFERENCES set_up_sheet (id),
    position        INTEGER NOT NULL,
    surface         TEXT    NOT NULL,
    name            TEXT    NOT NULL,
    up_radians      REAL    NOT NULL,
    down_radians    REAL    NOT NULL,
    PRIMARY KEY (set_up_sheet_id, position)
) STRICT;
-- next
INSERT INTO "set_up_sheet_rate" VALUES(1,1,'left aileron','high',3.49065850398865895609e-01,2.79252680319092727589e-01);
-- next
INSERT INTO "set_up_sheet_rate" VALUES(1,2,'left aileron','low',2.0943951023931955957e-01,1.74532925199432947804e-01);
-- next
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
-- next
INSERT INTO "set_up_sheet_surface" VALUES(1,1,'left aileron','wing',1.09999999999999984942e-03,0.0015,0.0019,0,0.05,0.01,0.015,NULL,NULL);
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
-- next
CREATE TABLE surface_sweep_point (
    surface_sweep_id INTEGER NOT NULL REFERENCES surface_sweep (id),
    position         INTEGER NOT NULL,
    pulse_seconds    REAL    NOT NULL,
    amps             REAL    NOT NULL,
    angle_radians    REAL,
    PRIMARY KEY (surface_sweep_id, position)
) STRICT;
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
-- next
CREATE UNIQUE INDEX servo_by_name ON servo (name COLLATE NOCASE) WHERE withdrawn = 0;
-- next
CREATE INDEX set_up_sheet_by_craft ON set_up_sheet (craft_id);
-- next
CREATE INDEX surface_sweep_by_craft ON surface_sweep (craft_id);
