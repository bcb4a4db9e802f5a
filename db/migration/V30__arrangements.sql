-- A piece that belongs to somebody else: work on a buyer's own piece, or a piece that she sells for its owner. It has no
-- cost of its own; supplies used on it are its cost.
create table piece_owner (
    piece_id uuid not null,
    arrangement varchar(10) not null,
    owner varchar(200) not null,
    since date not null,
    price_minor bigint,
    due_on date,
    share_percent numeric(9, 4),
    share_minor bigint,
    note varchar(2000) not null,
    version bigint default 0 not null,
    constraint piece_owner_pk primary key (piece_id),
    constraint piece_owner_piece_fk foreign key (piece_id) references piece (id) on delete cascade,
    constraint piece_owner_arrangement_ck check (arrangement in ('COMMISSION', 'CONSIGNED')),
    constraint piece_owner_price_ck check (price_minor >= 0),
    constraint piece_owner_percent_ck check (share_percent >= 0),
    constraint piece_owner_share_ck check (share_minor >= 0),
    constraint piece_owner_terms_ck check (share_percent is null or share_minor is null)
);

-- What is owed to the owner of a piece once it is sold, and no longer owed where it came back. Null: it is her own.
alter table sale_piece add column owner_minor bigint;
alter table sale_piece add constraint sale_piece_owner_ck check (owner_minor >= 0);
alter table sale_undelivered add column owner_minor bigint;
alter table sale_undelivered add constraint sale_undelivered_owner_ck check (owner_minor >= 0);
alter table refund_line add column owner_minor bigint;
alter table refund_line add constraint refund_line_owner_ck check (owner_minor >= 0);

-- A piece that goes back to its owner leaves with what was used on it.
alter table letting_go drop constraint letting_go_reason_ck;
alter table letting_go add constraint letting_go_reason_ck check (reason in ('BROKEN', 'GIVEN_AWAY', 'KEPT', 'TO_OWNER'));

-- What the payer kept of other income, such as the part of a video page. Null as none: income from before.
alter table other_income add column fee_minor bigint;
alter table other_income add constraint other_income_fee_ck check (fee_minor >= 0);

-- A supply that came free, from its maker for instance: with what it would have cost. Where it was for work done, the value is income
-- and the supply's cost; else both are zero, and the value is kept for whoever asks.
create table supply_gift (
    id uuid not null,
    giver varchar(200) not null,
    supply_id uuid not null,
    quantity numeric(30, 14) not null,
    value_minor bigint not null,
    for_work boolean not null,
    constraint supply_gift_pk primary key (id),
    constraint supply_gift_document_fk foreign key (id) references document (id),
    constraint supply_gift_supply_fk foreign key (supply_id) references supply (id),
    constraint supply_gift_quantity_ck check (quantity > 0),
    constraint supply_gift_value_ck check (value_minor >= 0)
);

-- Channels that are somebody else's shop, where her pieces lie until they are sold.
create table channel_away (
    channel_id uuid not null,
    constraint channel_away_pk primary key (channel_id),
    constraint channel_away_channel_fk foreign key (channel_id) references channel (id) on delete cascade
);
