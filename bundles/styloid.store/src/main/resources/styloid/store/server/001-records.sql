-- The layout of the embedded file, in the words of PostgreSQL. Text sorts by code point as it does there.
-- Patients, their evaluations and every entry ever made.
-- Ids are UUIDs, days are ISO dates, times are ISO instants in UTC, constants are lower-case codes, amounts are digits as typed.

CREATE TABLE patient (
  id TEXT COLLATE "C" NOT NULL PRIMARY KEY,
  record_number TEXT COLLATE "C" NOT NULL UNIQUE,
  name TEXT COLLATE "C" NOT NULL,
  birth_date TEXT COLLATE "C",
  sex TEXT COLLATE "C",
  dominance TEXT COLLATE "C",
  involved TEXT COLLATE "C" NOT NULL, -- codes of sides with a blank between
  diagnosis TEXT COLLATE "C" NOT NULL,
  onset TEXT COLLATE "C",
  surgery TEXT COLLATE "C",
  height_cm TEXT COLLATE "C",
  search TEXT COLLATE "C" NOT NULL -- name, record number and birth date without case and accents
);
CREATE INDEX patient_search ON patient (search, id);

CREATE TABLE precaution (
  patient TEXT COLLATE "C" NOT NULL REFERENCES patient (id),
  seq INTEGER NOT NULL,
  kind TEXT COLLATE "C" NOT NULL,
  region TEXT COLLATE "C" NOT NULL,
  side TEXT COLLATE "C" NOT NULL,
  digit TEXT COLLATE "C" NOT NULL,
  from_day TEXT COLLATE "C",
  until_day TEXT COLLATE "C",
  set_by TEXT COLLATE "C" NOT NULL,
  note TEXT COLLATE "C" NOT NULL,
  PRIMARY KEY (patient, seq)
);

CREATE TABLE evaluation (
  id TEXT COLLATE "C" NOT NULL PRIMARY KEY,
  patient TEXT COLLATE "C" NOT NULL REFERENCES patient (id),
  day TEXT COLLATE "C" NOT NULL,
  therapist TEXT COLLATE "C" NOT NULL,
  state TEXT COLLATE "C" NOT NULL CHECK (state IN ('draft', 'signed')),
  stored BIGINT GENERATED ALWAYS AS IDENTITY -- in the order of storing
);
CREATE INDEX evaluation_patient ON evaluation (patient, day, state);

CREATE TABLE evaluation_version (
  evaluation TEXT COLLATE "C" NOT NULL REFERENCES evaluation (id),
  test TEXT COLLATE "C" NOT NULL,
  version TEXT COLLATE "C" NOT NULL,
  PRIMARY KEY (evaluation, test)
);

CREATE TABLE evaluation_choice (
  evaluation TEXT COLLATE "C" NOT NULL REFERENCES evaluation (id),
  key TEXT COLLATE "C" NOT NULL,
  value TEXT COLLATE "C" NOT NULL,
  PRIMARY KEY (evaluation, key)
);

-- Each text once, however many evaluations use it.
CREATE TABLE definition (
  no BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  test TEXT COLLATE "C" NOT NULL,
  version TEXT COLLATE "C" NOT NULL,
  text TEXT COLLATE "C" NOT NULL,
  digest TEXT COLLATE "C" NOT NULL UNIQUE -- SHA-256 over test, version and text
);

CREATE TABLE evaluation_definition (
  evaluation TEXT COLLATE "C" NOT NULL REFERENCES evaluation (id),
  seq INTEGER NOT NULL,
  definition INTEGER NOT NULL REFERENCES definition (no),
  PRIMARY KEY (evaluation, seq)
);

CREATE TABLE entry (
  id TEXT COLLATE "C" NOT NULL UNIQUE,
  evaluation TEXT COLLATE "C" NOT NULL REFERENCES evaluation (id),
  seq INTEGER NOT NULL,
  test TEXT COLLATE "C" NOT NULL,
  item TEXT COLLATE "C" NOT NULL,
  side TEXT COLLATE "C" NOT NULL,
  digit TEXT COLLATE "C" NOT NULL,
  trial INTEGER NOT NULL,
  kind TEXT COLLATE "C" NOT NULL CHECK (kind IN ('quantity', 'choice', 'text', 'absence', 'withdrawn')),
  value TEXT COLLATE "C", -- digits, code of the choice, words or reason; null when withdrawn
  detail TEXT COLLATE "C", -- unit of a quantity, note of an absence
  entered_at TEXT COLLATE "C" NOT NULL,
  entered_by TEXT COLLATE "C" NOT NULL,
  confirmed INTEGER NOT NULL,
  override_reason TEXT COLLATE "C", -- null where nothing was overridden
  PRIMARY KEY (evaluation, seq)
);

CREATE TABLE draft (
  evaluation TEXT COLLATE "C" NOT NULL REFERENCES evaluation (id),
  test TEXT COLLATE "C" NOT NULL,
  item TEXT COLLATE "C" NOT NULL,
  side TEXT COLLATE "C" NOT NULL,
  digit TEXT COLLATE "C" NOT NULL,
  trial INTEGER NOT NULL,
  text TEXT COLLATE "C" NOT NULL,
  PRIMARY KEY (evaluation, test, item, side, digit, trial)
);

CREATE TABLE last_choice (
  key TEXT COLLATE "C" NOT NULL PRIMARY KEY,
  value TEXT COLLATE "C" NOT NULL
);

CREATE FUNCTION stays_as_it_is() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% is append only', TG_TABLE_NAME USING ERRCODE = 'integrity_constraint_violation';
END $$;

CREATE TRIGGER entry_stays_as_it_is BEFORE UPDATE OR DELETE OR TRUNCATE ON entry
  FOR EACH STATEMENT EXECUTE FUNCTION stays_as_it_is();

CREATE TRIGGER definition_stays_as_it_is BEFORE UPDATE OR DELETE OR TRUNCATE ON definition
  FOR EACH STATEMENT EXECUTE FUNCTION stays_as_it_is();
