-- SPDX-License-Identifier: GPL-3.0-or-later
-- Rules only: the tables are as before.
-- Version 2: an amendment of a signed job carries a signature of its own. Everything else of a signed job stays shut.
DROP TRIGGER signature_signed_insert;
CREATE TRIGGER signature_signed_insert BEFORE INSERT ON signature
WHEN NEW.role <> 'amendment' AND (SELECT state FROM job WHERE id = NEW.job) = 'signed'
BEGIN SELECT RAISE(ABORT, 'signed: the job is signed'); END;
