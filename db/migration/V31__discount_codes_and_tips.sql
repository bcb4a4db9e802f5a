-- The codes with which buyers get something off: a percentage of the price of all things, or an amount.
create table discount_code (
    id uuid not null,
    code varchar(40) not null,
    percent numeric(9, 4),
    amount_minor bigint,
    valid_from date not null,
    valid_to date,
    note varchar(500) not null,
    version bigint not null,
    constraint discount_code_pk primary key (id),
    constraint discount_code_uk unique (code),
    constraint discount_code_one_ck check ((percent is null) <> (amount_minor is null)),
    constraint discount_code_percent_ck check (percent is null or percent between 0 and 100),
    constraint discount_code_amount_ck check (amount_minor is null or amount_minor >= 0),
    constraint discount_code_days_ck check (valid_to is null or valid_to >= valid_from)
);

-- The code that a sale was made with, as it was called then; empty without one. The tip is what the buyer gave beyond what was
-- asked; nothing where there was none.
alter table sale add column discount_code varchar(40) default '' not null;
alter table sale add column tip_minor bigint;
alter table sale add constraint sale_tip_ck check (tip_minor > 0);
