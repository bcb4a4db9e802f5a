-- What there is of a supply at the beginning of some days, so that a change need not follow it from its first move
-- (docs/decisions/0024). Derived like the postings; places is read by the program alone. Each change asks for the last
-- row of its supplies up to a day, which is the key; so many rows of a supply that whole ones are looked for among them.
create table carried_forward (
    supply_id uuid not null,
    begin_date date not null,
    whole boolean not null,
    places varchar(1000000) not null,
    constraint carried_forward_pk primary key (supply_id, begin_date)
);

-- The moves of a supply from there on: the key of the table would find all of its moves since the first.
create index strand_move_date_ix on strand_move (strand_id, doc_date);

-- What is left of a supply is added up anew after each change of it: from the index alone, without its thousands of rows.
drop index document_stock_supply_ix;
create index document_stock_supply_ix on document_stock (supply_id, place, quantity, cost_minor);
