-- What the till of a source adds, and her own buttons for what it takes off a thing.
alter table source add column tax_percent numeric(9, 4);
alter table source add constraint source_tax_percent_ck check (tax_percent >= 0);

create table quick_percent (
    id uuid not null,
    line integer not null,
    name varchar(60) not null,
    percent numeric(9, 4) not null,
    version bigint default 0 not null,
    constraint quick_percent_pk primary key (id),
    constraint quick_percent_name_uk unique (name),
    constraint quick_percent_percent_ck check (percent > 0)
);
