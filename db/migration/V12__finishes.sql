-- A finish: the saved way of doing a look. One that was removed stays for the bench entries that followed it.
create table finish (
    id uuid not null,
    name varchar(120) not null,
    note varchar(2000) not null,
    removed boolean not null,
    version bigint not null,
    constraint finish_pk primary key (id)
);

-- What to do, in order. Minutes are of work on one piece; a wait comes after the work and is not work.
create table finish_step (
    finish_id uuid not null,
    line integer not null,
    what varchar(500) not null,
    minutes integer not null,
    wait_from integer,
    wait_to integer,
    wait_words varchar(120) not null,
    cautions varchar(400) not null,
    constraint finish_step_pk primary key (finish_id, line),
    constraint finish_step_finish_fk foreign key (finish_id) references finish (id),
    constraint finish_step_minutes_ck check (minutes >= 0),
    constraint finish_step_wait_ck check (wait_from is null and wait_to is null or wait_from > 0 and wait_to >= wait_from)
);

-- So much of a supply for each per_cm2 of surface; where that is null, for each piece. Kept as it was typed, so that
-- no quantity per square foot is rounded into one per square centimetre.
create table finish_supply (
    finish_id uuid not null,
    line integer not null,
    step integer not null,
    supply_id uuid not null,
    typed varchar(80) not null,
    quantity numeric(30, 14) not null,
    per_cm2 numeric(30, 14),
    constraint finish_supply_pk primary key (finish_id, line),
    constraint finish_supply_step_fk foreign key (finish_id, step) references finish_step (finish_id, line),
    constraint finish_supply_supply_fk foreign key (supply_id) references supply (id),
    constraint finish_supply_quantity_ck check (quantity > 0),
    constraint finish_supply_per_ck check (per_cm2 > 0)
);

alter table bench_entry add column finish_id uuid;
alter table bench_entry add constraint bench_entry_finish_fk foreign key (finish_id) references finish (id);
create index bench_entry_finish_ix on bench_entry (finish_id);

-- What is to be done with a piece, and how its surface was measured: a shape and its measures as typed.
alter table piece add column planned_finish_id uuid;
alter table piece add column shape varchar(20);
alter table piece add column shape_measures varchar(200);
alter table piece add constraint piece_planned_finish_fk foreign key (planned_finish_id) references finish (id);
create index piece_planned_finish_ix on piece (planned_finish_id);

-- The surface a thing of this kind usually has; used for a piece without one of its own.
alter table object_kind add column area_cm2 numeric(30, 14);
alter table object_kind add constraint object_kind_area_ck check (area_cm2 > 0);
