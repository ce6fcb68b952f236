-- The same logical schema as for SQLite. The chain of digests is the proof; the triggers only keep
-- honest programs from mistakes.
CREATE TABLE ledger_entry (
  sequence       BIGINT PRIMARY KEY CHECK (sequence > 0),
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
  content BYTEA NOT NULL
);

CREATE FUNCTION ledger_entry_follows() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  last_sequence BIGINT := 0;
  last_digest TEXT := 'sha256:0000000000000000000000000000000000000000000000000000000000000000';
BEGIN
  SELECT sequence, digest INTO last_sequence, last_digest
    FROM ledger_entry ORDER BY sequence DESC LIMIT 1;
  IF NOT FOUND THEN
    last_sequence := 0;
    last_digest := 'sha256:0000000000000000000000000000000000000000000000000000000000000000';
  END IF;
  IF NEW.sequence <> last_sequence + 1 OR NEW.previous <> last_digest THEN
    RAISE EXCEPTION 'an entry follows the last one';
  END IF;
  RETURN NEW;
END $$;

CREATE FUNCTION ledger_refuse() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'what stands in a ledger is never changed or deleted';
END $$;

CREATE TRIGGER ledger_entry_follows BEFORE INSERT ON ledger_entry
  FOR EACH ROW EXECUTE FUNCTION ledger_entry_follows();

CREATE TRIGGER ledger_entry_keeps BEFORE UPDATE OR DELETE OR TRUNCATE ON ledger_entry
  FOR EACH STATEMENT EXECUTE FUNCTION ledger_refuse();

CREATE TRIGGER ledger_document_keeps BEFORE UPDATE OR DELETE OR TRUNCATE ON ledger_document
  FOR EACH STATEMENT EXECUTE FUNCTION ledger_refuse();
