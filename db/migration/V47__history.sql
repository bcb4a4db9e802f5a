-- Who changed what and when. One row for each document, or other thing, that a transaction changed; the rows of one transaction
-- are one act. Rows are added and never changed or deleted, but where a buyer is erased.
create table history (
    id uuid not null,
    act_id uuid not null,
    -- The order within an act, from 1.
    place integer not null,
    changed_at timestamp with time zone not null,
    -- The name under which somebody was signed in; empty for a command.
    who varchar(60) not null,
    came_by varchar(10) not null,
    -- The file that a change came out of; empty otherwise.
    file_name varchar(200) not null,
    -- The table of the shop archive, and the id in it. What was removed is there no more, so this refers to nothing.
    kind varchar(40) not null,
    subject_id uuid not null,
    -- The day of the document, as it is now or was last; null for what has none.
    doc_date date,
    -- The day of a later step, such as a new price; null where the document itself was changed.
    step_on date,
    -- The act that this one took back; null otherwise.
    undoes uuid,
    -- What it was made of, in the columns of the archive, as JSON; null where it was not there.
    content_before text,
    content_after text,
    version bigint default 0 not null,
    constraint history_pk primary key (id),
    constraint history_place_uk unique (act_id, place),
    constraint history_content_ck check (content_before is not null or content_after is not null),
    constraint history_came_by_ck check (came_by in ('FORM', 'PHONE', 'FILE', 'COMMAND', 'UNDO'))
);
create index history_subject_ix on history (subject_id, changed_at);
create index history_changed_at_ix on history (changed_at);
