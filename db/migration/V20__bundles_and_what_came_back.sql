-- A bundle: supplies from the retail shelf under one name at one price. One that is sold no more stays for its sales.
create table bundle (
    id uuid not null,
    name varchar(120) not null,
    price_minor bigint not null,
    removed boolean not null,
    version bigint default 0 not null,
    constraint bundle_pk primary key (id),
    constraint bundle_price_ck check (price_minor >= 0)
);

-- So much of a supply, in its base unit, is in one bundle; kept as it was typed too.
create table bundle_part (
    bundle_id uuid not null,
    line integer not null,
    supply_id uuid not null,
    typed varchar(80) not null,
    quantity numeric(30, 14) not null,
    constraint bundle_part_pk primary key (bundle_id, line),
    constraint bundle_part_supply_uk unique (bundle_id, supply_id),
    constraint bundle_part_bundle_fk foreign key (bundle_id) references bundle (id),
    constraint bundle_part_supply_fk foreign key (supply_id) references supply (id),
    constraint bundle_part_quantity_ck check (quantity > 0)
);

-- A line that was sold as a part of a bundle: of which, the how manieth bundle of the sale, and what it was called then.
alter table sale_line add column bundle_id uuid;
alter table sale_line add column bundle_number integer;
alter table sale_line add column bundle_title varchar(120);
alter table sale_line add constraint sale_line_bundle_fk foreign key (bundle_id) references bundle (id);
alter table sale_line add constraint sale_line_bundle_ck
    check ((bundle_id is null) = (bundle_number is null) and (bundle_id is null) = (bundle_title is null)
           and (bundle_id is null or supply_id is not null));
create index sale_line_bundle_ix on sale_line (bundle_id);

-- A supply that was sent back and cannot be sold again: its cost stays an expense. Null as no: refunds from before.
alter table refund_line add column lost boolean;
alter table refund_line add constraint refund_line_lost_ck check (not comes_back or lost is null or not lost);
