-- Patients, their evaluations and every entry ever made.
-- Ids are UUIDs, days are ISO dates, times are ISO instants in UTC, constants are lower-case codes, amounts are digits as typed.

PRAGMA application_id = 1398036812; -- "STYL"

CREATE TABLE patient (
  id TEXT NOT NULL PRIMARY KEY,
  record_number TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  birth_date TEXT,
  sex TEXT,
  dominance TEXT,
  involved TEXT NOT NULL, -- codes of sides with a blank between
  diagnosis TEXT NOT NULL,
  onset TEXT,
  surgery TEXT,
  height_cm TEXT,
  search TEXT NOT NULL -- name, record number and birth date without case and accents
);
CREATE INDEX patient_search ON patient (search, id);

CREATE TABLE precaution (
  patient TEXT NOT NULL REFERENCES patient (id),
  seq INTEGER NOT NULL,
  kind TEXT NOT NULL,
  region TEXT NOT NULL,
  side TEXT NOT NULL,
  digit TEXT NOT NULL,
  from_day TEXT,
  until_day TEXT,
  set_by TEXT NOT NULL,
  note TEXT NOT NULL,
  PRIMARY KEY (patient, seq)
);

CREATE TABLE evaluation (
  id TEXT NOT NULL PRIMARY KEY,
  patient TEXT NOT NULL REFERENCES patient (id),
  day TEXT NOT NULL,
  therapist TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('draft', 'signed'))
);
CREATE INDEX evaluation_patient ON evaluation (patient, day, state);

CREATE TABLE evaluation_version (
  evaluation TEXT NOT NULL REFERENCES evaluation (id),
  test TEXT NOT NULL,
  version TEXT NOT NULL,
  PRIMARY KEY (evaluation, test)
);

CREATE TABLE evaluation_choice (
  evaluation TEXT NOT NULL REFERENCES evaluation (id),
  key TEXT NOT NULL,
  value TEXT NOT NULL,
  PRIMARY KEY (evaluation, key)
);

-- Each text once, however many evaluations use it.
CREATE TABLE definition (
  no INTEGER NOT NULL PRIMARY KEY,
  test TEXT NOT NULL,
  version TEXT NOT NULL,
  text TEXT NOT NULL,
  digest TEXT NOT NULL UNIQUE -- SHA-256 over test, version and text
);

CREATE TABLE evaluation_definition (
  evaluation TEXT NOT NULL REFERENCES evaluation (id),
  seq INTEGER NOT NULL,
  definition INTEGER NOT NULL REFERENCES definition (no),
  PRIMARY KEY (evaluation, seq)
);

CREATE TABLE entry (
  id TEXT NOT NULL UNIQUE,
  evaluation TEXT NOT NULL REFERENCES evaluation (id),
  seq INTEGER NOT NULL,
  test TEXT NOT NULL,
  item TEXT NOT NULL,
  side TEXT NOT NULL,
  digit TEXT NOT NULL,
  trial INTEGER NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('quantity', 'choice', 'text', 'absence', 'withdrawn')),
  value TEXT, -- digits, code of the choice, words or reason; null when withdrawn
  detail TEXT, -- unit of a quantity, note of an absence
  entered_at TEXT NOT NULL,
  entered_by TEXT NOT NULL,
  confirmed INTEGER NOT NULL,
  PRIMARY KEY (evaluation, seq)
) WITHOUT ROWID;

CREATE TABLE draft (
  evaluation TEXT NOT NULL REFERENCES evaluation (id),
  test TEXT NOT NULL,
  item TEXT NOT NULL,
  side TEXT NOT NULL,
  digit TEXT NOT NULL,
  trial INTEGER NOT NULL,
  text TEXT NOT NULL,
  PRIMARY KEY (evaluation, test, item, side, digit, trial)
);

CREATE TRIGGER entry_stays_as_it_is BEFORE UPDATE ON entry
BEGIN
  SELECT RAISE (ABORT, 'entries are append only');
END;

CREATE TRIGGER entry_stays BEFORE DELETE ON entry
BEGIN
  SELECT RAISE (ABORT, 'entries are append only');
END;

CREATE TRIGGER definition_stays_as_it_is BEFORE UPDATE ON definition
BEGIN
  SELECT RAISE (ABORT, 'definitions are append only');
END;

CREATE TRIGGER definition_stays BEFORE DELETE ON definition
BEGIN
  SELECT RAISE (ABORT, 'definitions are append only');
END;
