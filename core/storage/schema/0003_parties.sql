-- SPDX-License-Identifier: GPL-3.0-or-later
-- Version 3: whom a job is done for and who watches it; who added a person or marked one as having left, and when.
ALTER TABLE setup ADD COLUMN customer TEXT NOT NULL DEFAULT '';
ALTER TABLE setup ADD COLUMN witness TEXT NOT NULL DEFAULT '';

CREATE TABLE person_entry (
    id INTEGER PRIMARY KEY,
    person BLOB NOT NULL REFERENCES person (uuid),
    what TEXT NOT NULL CHECK (what <> ''),
    by TEXT NOT NULL,
    at INTEGER NOT NULL,
    at_offset INTEGER NOT NULL
) STRICT;
CREATE INDEX person_entry_of_person ON person_entry (person);

CREATE TRIGGER person_entry_kept_update BEFORE UPDATE ON person_entry
BEGIN SELECT RAISE(ABORT, 'kept: what was done with a person is never changed'); END;
CREATE TRIGGER person_entry_kept_delete BEFORE DELETE ON person_entry
BEGIN SELECT RAISE(ABORT, 'kept: what was done with a person is never removed'); END;
CREATE TRIGGER person_entry_kept_replace BEFORE INSERT ON person_entry
WHEN EXISTS (SELECT 1 FROM person_entry WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'kept: what was done with a person is never replaced'); END;
