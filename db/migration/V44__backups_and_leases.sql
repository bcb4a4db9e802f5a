-- Work that the program does by itself is done by one copy of it at a time, however many run on this database.
create table job_lease (
    job varchar(40) not null,
    holder varchar(36) not null,
    free_at timestamp with time zone not null,
    constraint job_lease_pk primary key (job)
);

-- Where backups go and when. No row means the usual: every night, into the data folder. It speaks of this machine's folders,
-- so it is in no shop archive.
create table backup_plan (
    id integer not null,
    by_itself boolean not null,
    folder varchar(500) not null,
    at_hour integer not null,
    keep integer not null,
    warn_after_days integer not null,
    constraint backup_plan_pk primary key (id),
    constraint backup_plan_one_ck check (id = 1),
    constraint backup_plan_hour_ck check (at_hour between 0 and 23),
    constraint backup_plan_keep_ck check (keep between 1 and 60),
    constraint backup_plan_warn_ck check (warn_after_days between 1 and 90)
);

-- What was backed up, taken to a device or rehearsed, and how it went.
create table backup_run (
    id uuid not null,
    what varchar(10) not null,
    started_at timestamp with time zone not null,
    ended_at timestamp with time zone not null,
    good boolean not null,
    file varchar(800) not null,
    bytes bigint,
    changes bigint,
    told varchar(4000) not null,
    constraint backup_run_pk primary key (id),
    constraint backup_run_what_ck check (what in ('BACKUP', 'TAKEN', 'REHEARSAL'))
);
create index backup_run_what_ix on backup_run (what, started_at);
