-- SPDX-License-Identifier: GPL-3.0-or-later
-- Rules only: the tables are as before.
-- Version 2: an amendment of a signed job carries a signature of its own. Everything else of a signed job stays shut.
DROP TRIGGER signature_signed_insert;
CREATE TRIGGER signature_signed_insert BEFORE INSERT ON signature
WHEN NEW.role <> 'amendment' AND (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;

-- Two questions, each answered by its own index; asked as one, every reading of the job was looked through.
DROP TRIGGER reading_kept_replace;
CREATE TRIGGER reading_kept_replace BEFORE INSERT ON reading
WHEN EXISTS (SELECT 1 FROM reading WHERE job = NEW.job AND sequence = NEW.sequence)
  OR EXISTS (SELECT 1 FROM reading WHERE job = NEW.job AND uuid = NEW.uuid)
BEGIN SELECT RAISE(ABORT, 'kept: a reading is never replaced'); END;
