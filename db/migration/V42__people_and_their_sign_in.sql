-- A way in for one person: a code told once, good for a quarter of an hour and for one use. Only a slow hash of it is kept.
create table way_in (
    person_id uuid not null,
    code_hash varchar(200) not null,
    ends_at timestamp with time zone not null,
    wrong integer not null,
    constraint way_in_pk primary key (person_id),
    constraint way_in_of_person foreign key (person_id) references person (id) on delete cascade,
    constraint way_in_wrong_not_negative check (wrong >= 0)
);

-- Failed tries to come in, by account and by address, for all copies of the program together.
create table sign_in_try (
    what varchar(160) not null,
    failures integer not null,
    last_at timestamp with time zone not null,
    until_at timestamp with time zone not null,
    constraint sign_in_try_pk primary key (what),
    constraint sign_in_try_failures_positive check (failures > 0)
);
create index sign_in_try_last on sign_in_try (last_at);
