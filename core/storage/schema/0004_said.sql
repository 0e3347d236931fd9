-- SPDX-License-Identifier: GPL-3.0-or-later
-- Version 4: which points were taped or bagged off while another was sprayed; whose echo a person took a point for;
-- a background whose level and swing were read by eye.
ALTER TABLE reading ADD COLUMN shielded BLOB NOT NULL DEFAULT x'' CHECK (length(shielded) % 16 = 0);
ALTER TABLE judgement ADD COLUMN of BLOB NOT NULL DEFAULT x'' CHECK (length(of) % 16 = 0);
ALTER TABLE background_watch ADD COLUMN swing REAL;
