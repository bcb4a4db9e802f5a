-- What was open when a year was sealed: kept with the seal, so that whoever reads the year knows what it rests on.
create table year_seal_open (
    year_seal_id uuid not null,
    item varchar(20) not null,
    how_many integer not null,
    amount_minor bigint,
    constraint year_seal_open_pk primary key (year_seal_id, item),
    constraint year_seal_open_seal_fk foreign key (year_seal_id) references year_seal (id),
    constraint year_seal_open_how_many_ck check (how_many > 0)
);

-- A seal that was taken off: who did, when and why, and which postings it had stood for. Kept for ever.
create table seal_taken_off (
    id uuid not null,
    tax_year integer not null,
    sealed_at timestamp with time zone not null,
    postings_hash varchar(64) not null,
    calculation_version integer not null,
    taken_off_at timestamp with time zone not null,
    taken_off_by varchar(60) not null,
    reason varchar(2000) not null,
    version bigint default 0 not null,
    constraint seal_taken_off_pk primary key (id)
);
