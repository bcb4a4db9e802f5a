-- The part of her home that is used for the shop only, for the simplified way of deducting it: how large it is, and in how many
-- months of the year it was used.
create table home_use (
    tax_year integer not null,
    square_feet numeric(9, 2) not null,
    months integer not null,
    note varchar(2000) not null,
    version bigint default 0 not null,
    constraint home_use_pk primary key (tax_year),
    constraint home_use_year_ck check (tax_year between 1900 and 9999),
    constraint home_use_feet_ck check (square_feet > 0),
    constraint home_use_months_ck check (months between 1 and 12)
);
