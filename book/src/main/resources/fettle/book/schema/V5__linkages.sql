-- What joins servo and surface. The holes of arm and horn stand with the surface of that name on the same sheet.

CREATE TABLE set_up_sheet_linkage (
    set_up_sheet_id      INTEGER NOT NULL REFERENCES set_up_sheet (id),
    position             INTEGER NOT NULL,
    surface              TEXT    NOT NULL,
    kind                 TEXT    NOT NULL,
    aft_metres           REAL,
    above_metres         REAL,
    arm_radians          REAL,
    horn_radians         REAL,
    length_metres        REAL,
    diameter_metres      REAL,
    shear_modulus_pascals REAL,
    PRIMARY KEY (set_up_sheet_id, position)
) STRICT;
