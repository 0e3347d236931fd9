-- SPDX-License-Identifier: GPL-3.0-or-later
-- An older file that may not be written is looked at through these: what it has no place for is empty.
CREATE TEMP VIEW measurement_void AS
    SELECT 0 AS id, 0 AS job, x'' AS measurement, '' AS reason, '' AS by, 0 AS at, 0 AS at_offset WHERE 0;
