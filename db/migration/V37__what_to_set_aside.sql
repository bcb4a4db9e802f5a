-- Her own percentages for the estimate of what to set aside in a year. They are hers: no table of tax brackets stands behind them.
create table set_aside_year (
    tax_year integer not null,
    income_percent numeric(9, 4) not null,
    state_percent numeric(9, 4) not null,
    version bigint default 0 not null,
    constraint set_aside_year_pk primary key (tax_year),
    constraint set_aside_year_year_ck check (tax_year between 1900 and 9999),
    constraint set_aside_year_income_ck check (income_percent between 0 and 100),
    constraint set_aside_year_state_ck check (state_percent between 0 and 100)
);

-- What she noted as paid towards the tax of a year. A note: her own tax is no cost of the shop, and what left the shop's money is
-- owner money, recorded as such.
create table tax_payment (
    id uuid not null,
    tax_year integer not null,
    paid_on date not null,
    amount_minor bigint not null,
    note varchar(500) not null,
    version bigint default 0 not null,
    constraint tax_payment_pk primary key (id),
    constraint tax_payment_year_ck check (tax_year between 1900 and 9999),
    constraint tax_payment_amount_ck check (amount_minor > 0)
);
