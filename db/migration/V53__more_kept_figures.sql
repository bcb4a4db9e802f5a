-- More of what pages added up each time is kept: docs/decisions/0020. All is made anew at the next start, so that nothing need be filled here.

delete from sale_part;
delete from piece_figures;

-- The day and the channel of the sale, and whether the piece came back from it, so that a list of what was sold reads one table.
alter table sale_part add column sold_on date not null;
alter table sale_part add column channel_id uuid not null;
alter table sale_part add column came_back boolean not null;

-- What sold lately, and the sales of a period.
create index sale_part_sold_ix on sale_part (sold_on);

-- The first price asked for it; and the last day on which money came to lie in it or left it: before a period that starts later, what
-- has none in it at last had none.
alter table piece_figures add column asked_first_minor bigint;
alter table piece_figures add column stocked_until date;

-- The lists of the front page: the few that are found, on the bench and ready among all.
create index piece_figures_state_ix on piece_figures (state);

-- The money that came to lie in a piece, or left it, by day.
create table piece_stock (
    piece_id uuid not null,
    doc_date date not null,
    amount_minor bigint not null,
    constraint piece_stock_pk primary key (piece_id, doc_date)
);

-- The supply lines of a piece: whether a bench entry names it, and what it cost by the postings, nothing where none tells of it.
create table piece_line (
    piece_id uuid not null,
    supply_line_id uuid not null,
    worked boolean not null,
    cost_minor bigint,
    constraint piece_line_pk primary key (piece_id, supply_line_id)
);

-- What a document brought of a supply to a place, or took.
create table document_stock (
    document_id uuid not null,
    supply_id uuid not null,
    place varchar(10) not null,
    quantity numeric(30, 14) not null,
    cost_minor bigint not null,
    constraint document_stock_pk primary key (document_id, supply_id, place)
);

-- A supply's own page.
create index document_stock_supply_ix on document_stock (supply_id);

-- What a document did to the profit of the shop, where it did anything.
create table document_profit (
    document_id uuid not null,
    doc_date date not null,
    profit_minor bigint not null,
    constraint document_profit_pk primary key (document_id)
);

-- The profit of a period.
create index document_profit_day_ix on document_profit (doc_date);

-- What is left of each supply, by place; and the supplies that a change touches.
create table supply_stock (
    supply_id uuid not null,
    place varchar(10) not null,
    quantity numeric(30, 14) not null,
    cost_minor bigint not null,
    constraint supply_stock_pk primary key (supply_id, place)
);

create table touched_supply (
    supply_id uuid not null
);
