-- SPDX-License-Identifier: GPL-3.0-or-later
-- Version 1: the whole record. Never edited once released; changes are a new numbered step.
-- Rates in Pa·m³/s, pressures in Pa, lengths on sheets in mm, other quantities in SI. Times are UTC
-- milliseconds with the offset of the wall clock in minutes beside them. UUIDs are 16-byte blobs.
-- Lists of UUIDs are their bytes one after another; series of numbers are little-endian doubles.

CREATE TABLE object (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    name TEXT NOT NULL CHECK (name <> ''),
    tag TEXT NOT NULL,
    place TEXT NOT NULL,
    note TEXT NOT NULL,
    volume REAL,
    volume_uncertainty REAL NOT NULL,
    point_limit REAL,
    total_limit REAL,
    air_speed REAL,
    pump_blank_off REAL,
    wanted_pressure REAL,
    lowest_decade INTEGER NOT NULL,
    decades INTEGER NOT NULL,
    invented INTEGER NOT NULL,
    created INTEGER NOT NULL,
    created_offset INTEGER NOT NULL
) STRICT;

CREATE TABLE job (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    number INTEGER NOT NULL UNIQUE CHECK (number > 0),
    opened_as INTEGER NOT NULL,
    object INTEGER NOT NULL REFERENCES object (id),
    opened INTEGER NOT NULL,
    opened_offset INTEGER NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('open', 'submitted', 'returned', 'signed')),
    sketch_revision INTEGER NOT NULL,
    last_point_number INTEGER NOT NULL CHECK (last_point_number >= 0)
) STRICT;
CREATE INDEX job_of_object ON job (object, opened);

CREATE TABLE setup (
    job INTEGER PRIMARY KEY REFERENCES job (id),
    purpose TEXT NOT NULL,
    procedure TEXT NOT NULL,
    last_touched TEXT NOT NULL,
    excluded TEXT NOT NULL,
    point_limit REAL,
    total_limit REAL,
    limit_agreed_by TEXT NOT NULL,
    unit TEXT NOT NULL,
    gas_basis TEXT NOT NULL,
    detector TEXT NOT NULL,
    connection TEXT NOT NULL,
    detector_unit TEXT NOT NULL,
    range_top REAL,
    range_bottom REAL,
    zero_on INTEGER NOT NULL,
    detector_speed REAL,
    auxiliary_speed REAL,
    hose_diameter REAL,
    hose_length REAL,
    line_pressure REAL,
    volume REAL,
    helium_share REAL NOT NULL,
    helium_share_uncertainty REAL NOT NULL,
    helium_flow REAL,
    helium_bottle TEXT NOT NULL,
    leak_path REAL NOT NULL,
    response REAL,
    noise_factor REAL NOT NULL,
    room_temperature REAL NOT NULL,
    object_state TEXT NOT NULL,
    dried INTEGER NOT NULL,
    no_check_after_reason TEXT NOT NULL
) STRICT;

CREATE TABLE kind_limit (
    job INTEGER NOT NULL REFERENCES job (id),
    kind TEXT NOT NULL,
    rate REAL NOT NULL,
    PRIMARY KEY (job, kind)
) STRICT, WITHOUT ROWID;

CREATE TABLE instrument (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    what TEXT NOT NULL,
    identity TEXT NOT NULL,
    due INTEGER,
    due_offset INTEGER
) STRICT;
CREATE INDEX instrument_of_job ON instrument (job);

CREATE TABLE caution_tick (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    caution TEXT NOT NULL,
    by TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL
) STRICT;
CREATE INDEX caution_tick_of_job ON caution_tick (job);

CREATE TABLE sheet (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    name TEXT NOT NULL,
    seen_from TEXT NOT NULL,
    width REAL NOT NULL,
    height REAL NOT NULL,
    up_direction REAL NOT NULL,
    seen_from_above INTEGER NOT NULL,
    underlay_picture TEXT,
    underlay_x REAL,
    underlay_y REAL,
    underlay_millimetres_per_pixel REAL,
    underlay_rotation REAL,
    underlay_opacity REAL,
    outlines TEXT NOT NULL,
    UNIQUE (job, uuid)
) STRICT;

CREATE TABLE joint (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    sheet BLOB NOT NULL,
    kind TEXT NOT NULL,
    name TEXT NOT NULL,
    shape TEXT NOT NULL,
    clockwise INTEGER NOT NULL,
    start REAL NOT NULL,
    is_setup INTEGER NOT NULL,
    locked INTEGER NOT NULL,
    group_word TEXT NOT NULL,
    material TEXT NOT NULL,
    thickness REAL,
    required_conditions TEXT NOT NULL,
    UNIQUE (job, uuid),
    FOREIGN KEY (job, sheet) REFERENCES sheet (job, uuid)
) STRICT;
CREATE INDEX joint_on_sheet ON joint (job, sheet);

CREATE TABLE point (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    number INTEGER NOT NULL CHECK (number > 0),
    joint BLOB NOT NULL,
    along REAL NOT NULL,
    place TEXT NOT NULL,
    retired INTEGER NOT NULL,
    UNIQUE (job, uuid),
    UNIQUE (job, number),
    FOREIGN KEY (job, joint) REFERENCES joint (job, uuid)
) STRICT;
CREATE INDEX point_on_joint ON point (job, joint);

CREATE TABLE round (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    number INTEGER NOT NULL CHECK (number > 0),
    kind TEXT NOT NULL,
    title TEXT NOT NULL,
    points BLOB NOT NULL CHECK (length(points) % 16 = 0),
    repair BLOB,
    by TEXT NOT NULL,
    opened INTEGER NOT NULL,
    opened_offset INTEGER NOT NULL,
    closed INTEGER,
    closed_offset INTEGER,
    UNIQUE (job, uuid),
    UNIQUE (job, number),
    FOREIGN KEY (job, repair) REFERENCES repair (job, uuid)
) STRICT;

CREATE TABLE reading (
    job INTEGER NOT NULL REFERENCES job (id),
    sequence INTEGER NOT NULL CHECK (sequence > 0),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    round BLOB NOT NULL,
    point BLOB NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    outcome TEXT NOT NULL,
    condition TEXT NOT NULL,
    condition_detail TEXT NOT NULL,
    background REAL,
    peak REAL,
    entered TEXT NOT NULL,
    dwell REAL,
    delay REAL,
    clean_up REAL,
    gentle INTEGER NOT NULL,
    confirmed INTEGER NOT NULL,
    out_of_turn INTEGER NOT NULL,
    entry TEXT NOT NULL,
    by TEXT NOT NULL,
    reason TEXT NOT NULL,
    remark TEXT NOT NULL,
    corrects BLOB,
    trace TEXT NOT NULL,
    PRIMARY KEY (job, sequence),
    UNIQUE (job, uuid),
    FOREIGN KEY (job, round) REFERENCES round (job, uuid),
    FOREIGN KEY (job, point) REFERENCES point (job, uuid),
    FOREIGN KEY (job, corrects) REFERENCES reading (job, uuid)
) STRICT, WITHOUT ROWID;
CREATE INDEX reading_at_point ON reading (job, point);

CREATE TABLE void_mark (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    reading BLOB NOT NULL,
    reason TEXT NOT NULL,
    by TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    UNIQUE (job, reading),
    FOREIGN KEY (job, reading) REFERENCES reading (job, uuid)
) STRICT;

CREATE TABLE calibration (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    kind TEXT NOT NULL,
    moment TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    leak_serial TEXT NOT NULL,
    leak_certificate TEXT NOT NULL,
    leak_value REAL NOT NULL,
    leak_entered TEXT NOT NULL,
    leak_certificate_date INTEGER NOT NULL,
    leak_certificate_date_offset INTEGER NOT NULL,
    leak_due INTEGER,
    leak_due_offset INTEGER,
    leak_certificate_temperature REAL NOT NULL,
    leak_temperature_coefficient REAL NOT NULL,
    leak_exponential INTEGER NOT NULL,
    leak_loss_per_year REAL NOT NULL,
    leak_uncertainty REAL NOT NULL,
    room_temperature REAL NOT NULL,
    shown REAL NOT NULL,
    background REAL NOT NULL,
    response REAL,
    clean_up REAL,
    place TEXT NOT NULL,
    joints BLOB NOT NULL CHECK (length(joints) % 16 = 0),
    by TEXT NOT NULL,
    note TEXT NOT NULL,
    UNIQUE (job, uuid)
) STRICT;

CREATE TABLE background_watch (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    times BLOB NOT NULL CHECK (length(times) % 8 = 0),
    rates BLOB NOT NULL CHECK (length(rates) = length(times)),
    source TEXT NOT NULL,
    by TEXT NOT NULL,
    UNIQUE (job, uuid)
) STRICT;

CREATE TABLE rise_test (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    moment TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    times BLOB NOT NULL CHECK (length(times) % 8 = 0),
    pressures BLOB NOT NULL CHECK (length(pressures) = length(times)),
    temperatures BLOB NOT NULL CHECK (length(temperatures) IN (0, length(times))),
    base_pressure REAL,
    gauge TEXT NOT NULL,
    source TEXT NOT NULL,
    by TEXT NOT NULL,
    note TEXT NOT NULL,
    UNIQUE (job, uuid)
) STRICT;

CREATE TABLE repair (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    points BLOB NOT NULL CHECK (length(points) % 16 = 0),
    disturbed BLOB NOT NULL CHECK (length(disturbed) % 16 = 0),
    defect TEXT NOT NULL,
    action TEXT NOT NULL,
    material TEXT NOT NULL,
    permanent INTEGER NOT NULL,
    owner TEXT NOT NULL,
    due INTEGER,
    due_offset INTEGER,
    sprayable_from INTEGER,
    sprayable_from_offset INTEGER,
    by TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    note TEXT NOT NULL,
    pictures TEXT NOT NULL,
    made_good_by BLOB,
    makes_good BLOB NOT NULL CHECK (length(makes_good) % 16 = 0),
    UNIQUE (job, uuid)
) STRICT;

CREATE TABLE judgement (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    point BLOB NOT NULL,
    round BLOB NOT NULL,
    finding TEXT NOT NULL,
    verdict TEXT NOT NULL,
    reason TEXT NOT NULL CHECK (reason <> ''),
    by TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    UNIQUE (job, uuid),
    FOREIGN KEY (job, point) REFERENCES point (job, uuid),
    FOREIGN KEY (job, round) REFERENCES round (job, uuid)
) STRICT;
CREATE INDEX judgement_at_point ON judgement (job, point);

CREATE TABLE concession (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    points BLOB NOT NULL CHECK (length(points) % 16 = 0),
    granted_by TEXT NOT NULL,
    until INTEGER,
    until_offset INTEGER,
    reason TEXT NOT NULL,
    by TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    UNIQUE (job, uuid)
) STRICT;

CREATE TABLE review (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    step TEXT NOT NULL,
    by TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    text TEXT NOT NULL,
    point BLOB,
    check_word TEXT NOT NULL,
    digest TEXT NOT NULL,
    UNIQUE (job, uuid),
    FOREIGN KEY (job, point) REFERENCES point (job, uuid)
) STRICT;
CREATE INDEX review_at_point ON review (job, point);

CREATE TABLE signature (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    person BLOB NOT NULL,
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    statement TEXT NOT NULL,
    object TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    digest TEXT NOT NULL,
    public_key TEXT NOT NULL,
    value TEXT NOT NULL,
    UNIQUE (job, uuid)
) STRICT;

CREATE TABLE trace (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    name TEXT NOT NULL CHECK (name <> ''),
    times BLOB NOT NULL CHECK (length(times) % 8 = 0),
    rates BLOB NOT NULL CHECK (length(rates) * 2 = length(times)),
    UNIQUE (job, name)
) STRICT;

CREATE TABLE picture (
    sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64),
    extension TEXT NOT NULL,
    bytes BLOB NOT NULL
) STRICT;

CREATE TABLE person (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    name TEXT NOT NULL CHECK (name <> ''),
    role TEXT NOT NULL,
    qualification TEXT NOT NULL,
    active INTEGER NOT NULL,
    public_key TEXT NOT NULL,
    sealed_key TEXT NOT NULL,
    since INTEGER NOT NULL,
    since_offset INTEGER NOT NULL
) STRICT;

CREATE TABLE setting (
    name TEXT PRIMARY KEY CHECK (name <> ''),
    value TEXT NOT NULL
) STRICT;

-- What lists and searches need of a job, kept beside the record and made anew from it at any time.
CREATE TABLE job_summary (
    job INTEGER PRIMARY KEY REFERENCES job (id),
    points INTEGER NOT NULL,
    readings INTEGER NOT NULL,
    words TEXT NOT NULL
) STRICT;
