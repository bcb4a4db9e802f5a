-- An archive holds no versions: what comes in begins at none. Without this an archive with aims could not be taken in.
alter table aim alter column version set default 0;
