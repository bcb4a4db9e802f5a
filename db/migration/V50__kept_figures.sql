-- Figures that are kept: what was views over all postings until now, filled by the views that work them out anew for whatever a
-- change touched (piece_state_anew for piece_state, and so on) in the transaction of the change. docs/decisions/0020 says why.

-- They take the names of the views that they follow; the views built on those are made anew after the migrations.
drop view if exists sale_part cascade;
drop view if exists offer_state cascade;
drop view if exists piece_state cascade;
drop view if exists piece_figures cascade;

-- Late cost and refunds name the sale they belong to as their origin.
create index posting_origin_ix on posting (origin_id);

-- What a change touches. A transaction fills them, renews what rests on it, and empties them before it ends: each sees its own rows
-- alone, and so there is no key that would make one wait for another.
create table touched_document (
    document_id uuid not null
);

create table touched_sale (
    sale_id uuid not null
);

create table touched_offer (
    offer_id uuid not null
);

create table touched_piece (
    piece_id uuid not null
);

-- Which pieces a document bears on, by its own lines and by its postings, and which sales its postings name: what a document bore on
-- before it was changed is looked up here. A document may be gone before its rows are, so nothing here refers to it.
create table document_piece (
    document_id uuid not null,
    piece_id uuid not null,
    constraint document_piece_pk primary key (document_id, piece_id)
);

create table document_sale (
    document_id uuid not null,
    sale_id uuid not null,
    constraint document_sale_pk primary key (document_id, sale_id)
);

create table sale_part (
    sale_id uuid not null,
    piece_id uuid,
    supply_id uuid,
    price_minor bigint not null,
    shipping_minor bigint not null,
    fee_minor bigint not null,
    postage_minor bigint not null,
    packaging_minor bigint not null,
    refund_minor bigint not null,
    cost_minor bigint not null,
    undelivered boolean not null
);

-- A sale's page and its renewal; the sales of a piece.
create index sale_part_sale_ix on sale_part (sale_id);
create index sale_part_piece_ix on sale_part (piece_id);

-- until_day: the first day on which the offer no longer stood, whatever ended it; nothing while it stands.
create table offer_state (
    offer_id uuid not null,
    started_on date not null,
    state varchar(10) not null,
    ended_on date,
    until_day date,
    first_price_minor bigint,
    price_minor bigint,
    constraint offer_state_pk primary key (offer_id)
);

-- A piece without a document goes with its rows.
create table piece_state (
    piece_id uuid not null,
    state varchar(10) not null,
    since date,
    found_on date,
    offer_id uuid,
    price_minor bigint,
    sale_id uuid,
    constraint piece_state_pk primary key (piece_id),
    constraint piece_state_piece_fk foreign key (piece_id) references piece (id) on delete cascade
);

-- Most lists ask for the pieces in a few of the states: the few on the bench among the many that are sold.
create index piece_state_ix on piece_state (state);

create table piece_figures (
    piece_id uuid not null,
    purchase_minor bigint not null,
    supplies_minor bigint not null,
    regrouped_minor bigint not null,
    landed_minor bigint not null,
    estimated_minor bigint not null,
    in_stock_minor bigint not null,
    cost_minor bigint not null,
    minutes numeric(18, 2) not null,
    sales_minor bigint not null,
    shipping_minor bigint not null,
    refunds_minor bigint not null,
    fees_minor bigint not null,
    postage_minor bigint not null,
    packaging_minor bigint not null,
    profit_minor bigint not null,
    uncosted boolean not null,
    state varchar(10) not null,
    since date,
    found_on date,
    offered_on date,
    sold_on date,
    constraint piece_figures_pk primary key (piece_id),
    constraint piece_figures_piece_fk foreign key (piece_id) references piece (id) on delete cascade
);

-- What a change asks each time: which pieces have a use without a cost, few or none among all.
create index piece_figures_uncosted_ix on piece_figures (uncosted);

-- Which definitions the kept figures were last made of as a whole: the check sum of the views. Where it is another one, or there is
-- none, all are made anew when the program starts.
create table figures_made (
    id integer not null,
    views integer not null,
    constraint figures_made_pk primary key (id),
    constraint figures_made_one_ck check (id = 1)
);
