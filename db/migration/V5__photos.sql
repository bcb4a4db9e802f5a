-- Photos of pieces and of papers such as receipts. The picture is a file in the data folder, named by what is in it;
-- its row is written only when the file is on the disk. A photo of neither a piece nor a paper waits to be matched: so
-- does one whose piece or paper was removed, because a picture is never lost with a mistaken record.
create table photo (
    id uuid not null,
    piece_id uuid,
    document_id uuid,
    stage varchar(10) not null,
    sort_order integer not null,
    width integer not null,
    height integer not null,
    bytes integer not null,
    sha256 varchar(64) not null,
    taken_on date,
    added_at timestamp with time zone not null,
    added_by varchar(60) not null,
    taken_away_at timestamp with time zone,
    version bigint not null,
    constraint photo_pk primary key (id),
    constraint photo_piece_fk foreign key (piece_id) references piece (id) on delete set null,
    constraint photo_document_fk foreign key (document_id) references document (id) on delete set null,
    constraint photo_of_ck check (piece_id is null or document_id is null),
    constraint photo_stage_ck check (stage in ('BEFORE', 'DURING', 'AFTER', 'RECEIPT')),
    constraint photo_size_ck check (width > 0 and height > 0 and bytes > 0)
);

create index photo_piece_ix on photo (piece_id);
create index photo_document_ix on photo (document_id);
create index photo_sha256_ix on photo (sha256);
