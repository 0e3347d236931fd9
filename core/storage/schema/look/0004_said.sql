-- SPDX-License-Identifier: GPL-3.0-or-later
-- An older file that may not be written is looked at through these: what it has no place for is empty.
CREATE TEMP VIEW reading AS SELECT *, x'' AS shielded FROM main.reading;
CREATE TEMP VIEW judgement AS SELECT *, x'' AS of FROM main.judgement;
CREATE TEMP VIEW background_watch AS SELECT *, NULL AS swing FROM main.background_watch;
