-- The same logical schema as for PostgreSQL. The chain of digests is the proof; the triggers only
-- keep honest programs from mistakes.
CREATE TABLE ledger_entry (
  sequence       INTEGER PRIMARY KEY CHECK (sequence > 0),
  kind           TEXT NOT NULL,
  case_reference TEXT,
  previous       TEXT NOT NULL UNIQUE,
  digest         TEXT NOT NULL UNIQUE,
  body           TEXT NOT NULL
);

CREATE INDEX ledger_entry_kind ON ledger_entry (kind, sequence);
CREATE INDEX ledger_entry_case ON ledger_entry (case_reference, sequence);

-- Content is deflated (RFC 1951); the digest is over the bytes before that.
CREATE TABLE ledger_document (
  digest  TEXT PRIMARY KEY,
  content BLOB NOT NULL
);

CREATE TRIGGER ledger_entry_follows BEFORE INSERT ON ledger_entry
WHEN NEW.sequence <> coalesce((SELECT max(sequence) FROM ledger_entry), 0) + 1
  OR NEW.previous <> coalesce(
    (SELECT digest FROM ledger_entry ORDER BY sequence DESC LIMIT 1),
    'sha256:0000000000000000000000000000000000000000000000000000000000000000')
BEGIN
  SELECT RAISE(ABORT, 'an entry follows the last one');
END;

CREATE TRIGGER ledger_entry_keeps BEFORE UPDATE ON ledger_entry
BEGIN
  SELECT RAISE(ABORT, 'entries of a ledger are never changed');
END;

CREATE TRIGGER ledger_entry_stays BEFORE DELETE ON ledger_entry
BEGIN
  SELECT RAISE(ABORT, 'entries of a ledger are never deleted');
END;

CREATE TRIGGER ledger_document_keeps BEFORE UPDATE ON ledger_document
BEGIN
  SELECT RAISE(ABORT, 'documents of a ledger are never changed');
END;

CREATE TRIGGER ledger_document_stays BEFORE DELETE ON ledger_document
BEGIN
  SELECT RAISE(ABORT, 'documents of a ledger are never deleted');
END;
