-- What last year's records gave as stock at the end, typed from them, to be held against the opening stock.
alter table opening add column last_closing_minor bigint;
alter table opening add constraint opening_last_closing_ck check (last_closing_minor >= 0);
