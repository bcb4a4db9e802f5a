-- A place with its own sales tax, in her own words (a town, a county, a state), and what it takes from a day on. Nothing is
-- shipped: the rates are hers to look up. A later rate is a later row, so no sale is ever taxed anew.
create table tax_place (
    id uuid not null,
    name varchar(120) not null,
    version bigint default 0 not null,
    constraint tax_place_pk primary key (id),
    constraint tax_place_name_uk unique (name)
);

create table tax_place_rate (
    tax_place_id uuid not null,
    valid_from date not null,
    percent numeric(9, 4) not null,
    shipping_taxed boolean not null,
    constraint tax_place_rate_pk primary key (tax_place_id, valid_from),
    constraint tax_place_rate_place_fk foreign key (tax_place_id) references tax_place (id) on delete cascade,
    constraint tax_place_rate_percent_ck check (percent >= 0 and percent <= 100)
);

-- Where the sales of a channel are usually taxed: the place of a market stall, for instance.
create table channel_tax_place (
    channel_id uuid not null,
    tax_place_id uuid not null,
    constraint channel_tax_place_pk primary key (channel_id),
    constraint channel_tax_place_channel_fk foreign key (channel_id) references channel (id) on delete cascade,
    constraint channel_tax_place_place_fk foreign key (tax_place_id) references tax_place (id) on delete cascade
);

-- Where a sale is taxed. Null as not said: sales from before, and sales whose place makes no difference to her.
alter table sale add column tax_place_id uuid;
alter table sale add constraint sale_tax_place_fk foreign key (tax_place_id) references tax_place (id);
create index sale_tax_place_ix on sale (tax_place_id);

-- What a payment of sales tax settles: a place, the days that a return is for, and what the state let her keep. Null as not
-- said, and as nothing kept.
alter table sales_tax_paid add column tax_place_id uuid;
alter table sales_tax_paid add column covers_from date;
alter table sales_tax_paid add column covers_to date;
alter table sales_tax_paid add column allowance_minor bigint;
alter table sales_tax_paid add constraint sales_tax_paid_tax_place_fk foreign key (tax_place_id) references tax_place (id);
alter table sales_tax_paid add constraint sales_tax_paid_covers_ck
    check ((covers_from is null) = (covers_to is null) and (covers_from is null or covers_from <= covers_to));
alter table sales_tax_paid add constraint sales_tax_paid_allowance_ck check (allowance_minor > 0);

-- A return that was sent in, whether anything was owed or not.
create table sales_tax_filed (
    tax_place_id uuid not null,
    covers_from date not null,
    covers_to date not null,
    filed_on date not null,
    constraint sales_tax_filed_pk primary key (tax_place_id, covers_from, covers_to),
    constraint sales_tax_filed_place_fk foreign key (tax_place_id) references tax_place (id) on delete cascade,
    constraint sales_tax_filed_covers_ck check (covers_from <= covers_to)
);
