-- A use of a kept pot has no cost, or not all of it, while something in the pot has none. The pot itself is there: only
-- what went into it was not bought yet.
alter table uncosted_use add column through_pot boolean default false not null;
