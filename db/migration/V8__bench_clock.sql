-- The clock on the bench page and what is waited for there. Neither is a document: the bench entry is.

create table bench_timer (
    person_id uuid not null,
    -- Null: the clock is off.
    started_at timestamp with time zone,
    -- Null: paused, or off.
    running_since timestamp with time zone,
    -- Worked before running_since.
    worked_seconds bigint not null,
    -- By the clock of the device that was tapped; the later change wins.
    changed_at timestamp with time zone not null,
    constraint bench_timer_pk primary key (person_id),
    constraint bench_timer_person_fk foreign key (person_id) references person (id) on delete cascade,
    constraint bench_timer_worked_ck check (worked_seconds >= 0),
    constraint bench_timer_running_ck check (running_since is null or started_at is not null)
);

create table bench_timer_piece (
    person_id uuid not null,
    piece_id uuid not null,
    constraint bench_timer_piece_pk primary key (person_id, piece_id),
    constraint bench_timer_piece_timer_fk foreign key (person_id) references bench_timer (person_id) on delete cascade,
    constraint bench_timer_piece_piece_fk foreign key (piece_id) references piece (id) on delete cascade
);

create table bench_wait (
    id uuid not null,
    person_id uuid not null,
    words varchar(120) not null,
    due_at timestamp with time zone not null,
    done boolean not null,
    constraint bench_wait_pk primary key (id),
    constraint bench_wait_person_fk foreign key (person_id) references person (id) on delete cascade
);

create index bench_wait_person_ix on bench_wait (person_id, due_at);
