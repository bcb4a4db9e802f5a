-- Where a sale was sent from, as she typed it: some states ask for it. A field and nothing more; no sum rests on it.
alter table sending add column sent_from varchar(200) default '' not null;
