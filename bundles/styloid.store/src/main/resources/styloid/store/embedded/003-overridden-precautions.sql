-- The precautions an entry overrode, as they were when it was made.

CREATE TABLE overridden (
  entry TEXT NOT NULL REFERENCES entry (id),
  seq INTEGER NOT NULL,
  kind TEXT NOT NULL,
  region TEXT NOT NULL,
  side TEXT NOT NULL,
  digit TEXT NOT NULL,
  from_day TEXT,
  until_day TEXT,
  set_by TEXT NOT NULL,
  note TEXT NOT NULL,
  PRIMARY KEY (entry, seq)
) WITHOUT ROWID;

CREATE TRIGGER overridden_stays_as_it_is BEFORE UPDATE ON overridden
BEGIN
  SELECT RAISE (ABORT, 'entries are append only');
END;

CREATE TRIGGER overridden_stays BEFORE DELETE ON overridden
BEGIN
  SELECT RAISE (ABORT, 'entries are append only');
END;
