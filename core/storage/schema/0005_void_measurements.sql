-- SPDX-License-Identifier: GPL-3.0-or-later
-- Version 5: calibrations, background watches and pressure rises that are void, each with its reason.
CREATE TABLE measurement_void (
    id INTEGER PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES job (id),
    measurement BLOB NOT NULL CHECK (length(measurement) = 16),
    reason TEXT NOT NULL,
    by TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL,
    UNIQUE (job, measurement)
) STRICT;

CREATE TRIGGER measurement_void_kept_update BEFORE UPDATE ON measurement_void
BEGIN SELECT RAISE(ABORT, 'kept: a void mark is never changed'); END;
CREATE TRIGGER measurement_void_kept_delete BEFORE DELETE ON measurement_void
BEGIN SELECT RAISE(ABORT, 'kept: a void mark is never removed'); END;
CREATE TRIGGER measurement_void_kept_replace BEFORE INSERT ON measurement_void
WHEN EXISTS (SELECT 1 FROM measurement_void
             WHERE id = NEW.id OR (job = NEW.job AND measurement = NEW.measurement))
BEGIN SELECT RAISE(ABORT, 'kept: a void mark is never replaced'); END;
CREATE TRIGGER measurement_void_signed_insert BEFORE INSERT ON measurement_void
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER measurement_void_known BEFORE INSERT ON measurement_void
WHEN NOT EXISTS (SELECT 1 FROM calibration WHERE job = NEW.job AND uuid = NEW.measurement)
 AND NOT EXISTS (SELECT 1 FROM background_watch WHERE job = NEW.job AND uuid = NEW.measurement)
 AND NOT EXISTS (SELECT 1 FROM rise_test WHERE job = NEW.job AND uuid = NEW.measurement)
BEGIN SELECT RAISE(ABORT, 'kept: a void mark names a measurement of its job'); END;
