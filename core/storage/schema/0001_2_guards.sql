-- SPDX-License-Identifier: GPL-3.0-or-later
-- Version 1: what the database itself refuses, whoever writes to it.
-- The word before the colon says which rule was broken: "signed" or "kept".

-- 1. What was measured, decided or signed is only ever added.

CREATE TRIGGER reading_kept_update BEFORE UPDATE ON reading
BEGIN SELECT RAISE(ABORT, 'kept: a reading is never changed'); END;
CREATE TRIGGER reading_kept_delete BEFORE DELETE ON reading
BEGIN SELECT RAISE(ABORT, 'kept: a reading is never removed'); END;

CREATE TRIGGER void_mark_kept_update BEFORE UPDATE ON void_mark
BEGIN SELECT RAISE(ABORT, 'kept: a void mark is never changed'); END;
CREATE TRIGGER void_mark_kept_delete BEFORE DELETE ON void_mark
BEGIN SELECT RAISE(ABORT, 'kept: a void mark is never removed'); END;

CREATE TRIGGER calibration_kept_update BEFORE UPDATE ON calibration
BEGIN SELECT RAISE(ABORT, 'kept: a calibration is never changed'); END;
CREATE TRIGGER calibration_kept_delete BEFORE DELETE ON calibration
BEGIN SELECT RAISE(ABORT, 'kept: a calibration is never removed'); END;

CREATE TRIGGER background_watch_kept_update BEFORE UPDATE ON background_watch
BEGIN SELECT RAISE(ABORT, 'kept: a background watch is never changed'); END;
CREATE TRIGGER background_watch_kept_delete BEFORE DELETE ON background_watch
BEGIN SELECT RAISE(ABORT, 'kept: a background watch is never removed'); END;

CREATE TRIGGER rise_test_kept_update BEFORE UPDATE ON rise_test
BEGIN SELECT RAISE(ABORT, 'kept: a pressure-rise test is never changed'); END;
CREATE TRIGGER rise_test_kept_delete BEFORE DELETE ON rise_test
BEGIN SELECT RAISE(ABORT, 'kept: a pressure-rise test is never removed'); END;

CREATE TRIGGER judgement_kept_update BEFORE UPDATE ON judgement
BEGIN SELECT RAISE(ABORT, 'kept: a judgement is never changed'); END;
CREATE TRIGGER judgement_kept_delete BEFORE DELETE ON judgement
BEGIN SELECT RAISE(ABORT, 'kept: a judgement is never removed'); END;

CREATE TRIGGER concession_kept_update BEFORE UPDATE ON concession
BEGIN SELECT RAISE(ABORT, 'kept: a concession is never changed'); END;
CREATE TRIGGER concession_kept_delete BEFORE DELETE ON concession
BEGIN SELECT RAISE(ABORT, 'kept: a concession is never removed'); END;

CREATE TRIGGER review_kept_update BEFORE UPDATE ON review
BEGIN SELECT RAISE(ABORT, 'kept: a review entry is never changed'); END;
CREATE TRIGGER review_kept_delete BEFORE DELETE ON review
BEGIN SELECT RAISE(ABORT, 'kept: a review entry is never removed'); END;

CREATE TRIGGER signature_kept_update BEFORE UPDATE ON signature
BEGIN SELECT RAISE(ABORT, 'kept: a signature is never changed'); END;
CREATE TRIGGER signature_kept_delete BEFORE DELETE ON signature
BEGIN SELECT RAISE(ABORT, 'kept: a signature is never removed'); END;

CREATE TRIGGER trace_kept_update BEFORE UPDATE ON trace
BEGIN SELECT RAISE(ABORT, 'kept: a trace is never changed'); END;
CREATE TRIGGER trace_kept_delete BEFORE DELETE ON trace
BEGIN SELECT RAISE(ABORT, 'kept: a trace is never removed'); END;

CREATE TRIGGER picture_kept_update BEFORE UPDATE ON picture
BEGIN SELECT RAISE(ABORT, 'kept: a picture is never changed'); END;
CREATE TRIGGER picture_kept_delete BEFORE DELETE ON picture
BEGIN SELECT RAISE(ABORT, 'kept: a picture is never removed'); END;

CREATE TRIGGER job_kept_delete BEFORE DELETE ON job
BEGIN SELECT RAISE(ABORT, 'kept: a job is never removed'); END;

CREATE TRIGGER object_kept_delete BEFORE DELETE ON object
BEGIN SELECT RAISE(ABORT, 'kept: an object is never removed'); END;

CREATE TRIGGER person_kept_delete BEFORE DELETE ON person
BEGIN SELECT RAISE(ABORT, 'kept: a person is never removed'); END;

CREATE TRIGGER round_kept_delete BEFORE DELETE ON round
BEGIN SELECT RAISE(ABORT, 'kept: a round is never removed'); END;

CREATE TRIGGER repair_kept_delete BEFORE DELETE ON repair
BEGIN SELECT RAISE(ABORT, 'kept: a repair is never removed'); END;

-- 2. INSERT OR REPLACE removes the row in its way without asking the triggers above, so it is stopped first.

CREATE TRIGGER reading_kept_replace BEFORE INSERT ON reading
WHEN EXISTS (SELECT 1 FROM reading WHERE job = NEW.job AND (sequence = NEW.sequence OR uuid = NEW.uuid))
BEGIN SELECT RAISE(ABORT, 'kept: a reading is never replaced'); END;

CREATE TRIGGER void_mark_kept_replace BEFORE INSERT ON void_mark
WHEN EXISTS (SELECT 1 FROM void_mark WHERE id = NEW.id OR (job = NEW.job AND reading = NEW.reading))
BEGIN SELECT RAISE(ABORT, 'kept: a void mark is never replaced'); END;

CREATE TRIGGER calibration_kept_replace BEFORE INSERT ON calibration
WHEN EXISTS (SELECT 1 FROM calibration WHERE id = NEW.id OR (job = NEW.job AND uuid = NEW.uuid))
BEGIN SELECT RAISE(ABORT, 'kept: a calibration is never replaced'); END;

CREATE TRIGGER background_watch_kept_replace BEFORE INSERT ON background_watch
WHEN EXISTS (SELECT 1 FROM background_watch WHERE id = NEW.id OR (job = NEW.job AND uuid = NEW.uuid))
BEGIN SELECT RAISE(ABORT, 'kept: a background watch is never replaced'); END;

CREATE TRIGGER rise_test_kept_replace BEFORE INSERT ON rise_test
WHEN EXISTS (SELECT 1 FROM rise_test WHERE id = NEW.id OR (job = NEW.job AND uuid = NEW.uuid))
BEGIN SELECT RAISE(ABORT, 'kept: a pressure-rise test is never replaced'); END;

CREATE TRIGGER judgement_kept_replace BEFORE INSERT ON judgement
WHEN EXISTS (SELECT 1 FROM judgement WHERE id = NEW.id OR (job = NEW.job AND uuid = NEW.uuid))
BEGIN SELECT RAISE(ABORT, 'kept: a judgement is never replaced'); END;

CREATE TRIGGER concession_kept_replace BEFORE INSERT ON concession
WHEN EXISTS (SELECT 1 FROM concession WHERE id = NEW.id OR (job = NEW.job AND uuid = NEW.uuid))
BEGIN SELECT RAISE(ABORT, 'kept: a concession is never replaced'); END;

CREATE TRIGGER review_kept_replace BEFORE INSERT ON review
WHEN EXISTS (SELECT 1 FROM review WHERE id = NEW.id OR (job = NEW.job AND uuid = NEW.uuid))
BEGIN SELECT RAISE(ABORT, 'kept: a review entry is never replaced'); END;

CREATE TRIGGER signature_kept_replace BEFORE INSERT ON signature
WHEN EXISTS (SELECT 1 FROM signature WHERE id = NEW.id OR (job = NEW.job AND uuid = NEW.uuid))
BEGIN SELECT RAISE(ABORT, 'kept: a signature is never replaced'); END;

CREATE TRIGGER trace_kept_replace BEFORE INSERT ON trace
WHEN EXISTS (SELECT 1 FROM trace WHERE id = NEW.id OR (job = NEW.job AND name = NEW.name))
BEGIN SELECT RAISE(ABORT, 'kept: a trace is never replaced'); END;

CREATE TRIGGER picture_kept_replace BEFORE INSERT ON picture
WHEN EXISTS (SELECT 1 FROM picture WHERE sha256 = NEW.sha256)
BEGIN SELECT RAISE(ABORT, 'kept: a picture is never replaced'); END;

CREATE TRIGGER job_kept_replace BEFORE INSERT ON job
WHEN EXISTS (SELECT 1 FROM job WHERE id = NEW.id OR uuid = NEW.uuid OR number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'kept: a job is never replaced'); END;

CREATE TRIGGER object_kept_replace BEFORE INSERT ON object
WHEN EXISTS (SELECT 1 FROM object WHERE id = NEW.id OR uuid = NEW.uuid)
BEGIN SELECT RAISE(ABORT, 'kept: an object is never replaced'); END;

CREATE TRIGGER person_kept_replace BEFORE INSERT ON person
WHEN EXISTS (SELECT 1 FROM person WHERE id = NEW.id OR uuid = NEW.uuid)
BEGIN SELECT RAISE(ABORT, 'kept: a person is never replaced'); END;

CREATE TRIGGER round_kept_replace BEFORE INSERT ON round
WHEN EXISTS (SELECT 1 FROM round WHERE id = NEW.id OR (job = NEW.job AND (uuid = NEW.uuid OR number = NEW.number)))
BEGIN SELECT RAISE(ABORT, 'kept: a round is never replaced'); END;

CREATE TRIGGER repair_kept_replace BEFORE INSERT ON repair
WHEN EXISTS (SELECT 1 FROM repair WHERE id = NEW.id OR (job = NEW.job AND uuid = NEW.uuid))
BEGIN SELECT RAISE(ABORT, 'kept: a repair is never replaced'); END;

CREATE TRIGGER instrument_kept_replace BEFORE INSERT ON instrument
WHEN EXISTS (SELECT 1 FROM instrument WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'kept: a row is never replaced'); END;

CREATE TRIGGER caution_tick_kept_replace BEFORE INSERT ON caution_tick
WHEN EXISTS (SELECT 1 FROM caution_tick WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'kept: a row is never replaced'); END;

CREATE TRIGGER sheet_kept_replace BEFORE INSERT ON sheet
WHEN EXISTS (SELECT 1 FROM sheet WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'kept: a row is never replaced'); END;

CREATE TRIGGER joint_kept_replace BEFORE INSERT ON joint
WHEN EXISTS (SELECT 1 FROM joint WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'kept: a row is never replaced'); END;

CREATE TRIGGER point_kept_replace BEFORE INSERT ON point
WHEN EXISTS (SELECT 1 FROM point WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'kept: a row is never replaced'); END;

-- 3. Nothing of a signed job is added, changed or removed, except remarks, answers and amendments, which are
-- review entries that point to it.
CREATE TRIGGER job_signed_update BEFORE UPDATE ON job WHEN OLD.state = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER review_signed_insert BEFORE INSERT ON review
WHEN NEW.step NOT IN ('remark', 'answer', 'amendment') AND (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER reading_signed_insert BEFORE INSERT ON reading
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER void_mark_signed_insert BEFORE INSERT ON void_mark
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER calibration_signed_insert BEFORE INSERT ON calibration
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER background_watch_signed_insert BEFORE INSERT ON background_watch
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER rise_test_signed_insert BEFORE INSERT ON rise_test
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER judgement_signed_insert BEFORE INSERT ON judgement
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER concession_signed_insert BEFORE INSERT ON concession
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER signature_signed_insert BEFORE INSERT ON signature
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER trace_signed_insert BEFORE INSERT ON trace
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER setup_signed_insert BEFORE INSERT ON setup
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER setup_signed_update BEFORE UPDATE ON setup
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed' OR (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER setup_signed_delete BEFORE DELETE ON setup
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER kind_limit_signed_insert BEFORE INSERT ON kind_limit
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER kind_limit_signed_update BEFORE UPDATE ON kind_limit
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed' OR (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER kind_limit_signed_delete BEFORE DELETE ON kind_limit
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER instrument_signed_insert BEFORE INSERT ON instrument
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER instrument_signed_update BEFORE UPDATE ON instrument
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed' OR (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER instrument_signed_delete BEFORE DELETE ON instrument
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER caution_tick_signed_insert BEFORE INSERT ON caution_tick
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER caution_tick_signed_update BEFORE UPDATE ON caution_tick
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed' OR (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER caution_tick_signed_delete BEFORE DELETE ON caution_tick
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER sheet_signed_insert BEFORE INSERT ON sheet
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER sheet_signed_update BEFORE UPDATE ON sheet
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed' OR (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER sheet_signed_delete BEFORE DELETE ON sheet
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER joint_signed_insert BEFORE INSERT ON joint
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER joint_signed_update BEFORE UPDATE ON joint
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed' OR (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER joint_signed_delete BEFORE DELETE ON joint
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER point_signed_insert BEFORE INSERT ON point
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER point_signed_update BEFORE UPDATE ON point
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed' OR (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER point_signed_delete BEFORE DELETE ON point
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER round_signed_insert BEFORE INSERT ON round
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER round_signed_update BEFORE UPDATE ON round
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed' OR (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

CREATE TRIGGER repair_signed_insert BEFORE INSERT ON repair
WHEN (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
CREATE TRIGGER repair_signed_update BEFORE UPDATE ON repair
WHEN (SELECT state FROM job WHERE id = OLD.job) = 'signed' OR (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
