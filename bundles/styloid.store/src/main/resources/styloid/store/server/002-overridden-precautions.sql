-- The precautions an entry overrode, as they were when it was made.

CREATE TABLE overridden (
  entry TEXT COLLATE "C" NOT NULL REFERENCES entry (id),
  seq INTEGER NOT NULL,
  kind TEXT COLLATE "C" NOT NULL,
  region TEXT COLLATE "C" NOT NULL,
  side TEXT COLLATE "C" NOT NULL,
  digit TEXT COLLATE "C" NOT NULL,
  from_day TEXT COLLATE "C",
  until_day TEXT COLLATE "C",
  set_by TEXT COLLATE "C" NOT NULL,
  note TEXT COLLATE "C" NOT NULL,
  PRIMARY KEY (entry, seq)
);

CREATE TRIGGER overridden_stays_as_it_is BEFORE UPDATE OR DELETE OR TRUNCATE ON overridden
  FOR EACH STATEMENT EXECUTE FUNCTION stays_as_it_is();
