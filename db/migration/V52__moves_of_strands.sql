-- What a change needs to know so that it derives anew what it touches and nothing else (docs/decisions/0021).

-- The moves of each supply, piece and counted money place, one row for each of them that a move belongs to. Derived from
-- the documents like the postings; move is read by the program alone.
create table strand_move (
    strand_id uuid not null,
    document_id uuid not null,
    move_no integer not null,
    doc_date date not null,
    kind_rank integer not null,
    move varchar(1000000) not null,
    constraint strand_move_pk primary key (strand_id, document_id, move_no),
    constraint strand_move_document_fk foreign key (document_id) references document (id)
);

-- Which move of its document a posting comes from, and the piece that a cost was for where it landed on another. No key
-- and no index: it is read with the postings of the other piece.
alter table posting add column move_no integer default 0 not null;
alter table posting add column meant_piece_id uuid;
alter table sealed_posting add column move_no integer default 0 not null;
alter table sealed_posting add column meant_piece_id uuid;

-- Uses without a cost are written by supply now, so their lines are counted by supply and place.
alter table uncosted_use drop constraint uncosted_use_pk;
alter table uncosted_use add constraint uncosted_use_pk primary key (document_id, supply_id, place, line);

-- Whether strands and moves of postings are there: not in a shop from before, until its books are derived once more.
alter table books add column strands_kept boolean default false not null;
update books set strands_kept = not exists (select 1 from document);

-- The last sealed day is asked for with every change, the documents of a kind and time by pages.
create index document_kind_ix on document (kind_rank, doc_date);
