-- Why an entry was made although a precaution withheld it, and what was chosen last here for each of the clinic's settings.

ALTER TABLE entry ADD COLUMN override_reason TEXT; -- null where nothing was overridden

CREATE TABLE last_choice (
  key TEXT NOT NULL PRIMARY KEY,
  value TEXT NOT NULL
);
