-- SPDX-License-Identifier: GPL-3.0-or-later
-- An older file that may not be written is looked at through these: what it has no place for is empty.
CREATE TEMP VIEW setup AS SELECT *, '' AS customer, '' AS witness FROM main.setup;
CREATE TEMP VIEW person_entry AS
    SELECT 0 AS id, x'' AS person, '' AS what, '' AS by, 0 AS at, 0 AS at_offset WHERE 0;
