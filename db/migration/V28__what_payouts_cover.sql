-- What she said a payout covers: which movements of the channel's balance it paid out. The total is kept as it was then, so
-- that a document that is changed or removed later shows. None of it is a fact of the books: taking it back moves no money.
create table payout_cover (
    payout_id uuid not null,
    said_on date not null,
    total_minor bigint not null,
    constraint payout_cover_pk primary key (payout_id),
    constraint payout_cover_payout_fk foreign key (payout_id) references payout (id) on delete cascade
);

create table payout_part (
    payout_id uuid not null,
    document_id uuid not null,
    place_id uuid not null,
    amount_minor bigint not null,
    constraint payout_part_pk primary key (payout_id, document_id),
    constraint payout_part_once_uk unique (document_id, place_id),
    constraint payout_part_cover_fk foreign key (payout_id) references payout_cover (payout_id) on delete cascade,
    constraint payout_part_document_fk foreign key (document_id) references document (id) on delete cascade,
    constraint payout_part_place_fk foreign key (place_id) references money_place (id)
);

-- The gross that a processor or a marketplace reports for a time, as she typed it from its paper.
create table gross_reported (
    id uuid not null,
    place_id uuid not null,
    covers_from date not null,
    covers_to date not null,
    amount_minor bigint not null,
    with_passed_tax boolean not null,
    note varchar(2000) not null,
    version bigint default 0 not null,
    constraint gross_reported_pk primary key (id),
    constraint gross_reported_once_uk unique (place_id, covers_from, covers_to),
    constraint gross_reported_place_fk foreign key (place_id) references money_place (id),
    constraint gross_reported_covers_ck check (covers_from <= covers_to),
    constraint gross_reported_amount_ck check (amount_minor >= 0)
);

-- A sale or payment that the report counts on the other side of the turn of its time.
create table gross_other_side (
    gross_id uuid not null,
    document_id uuid not null,
    constraint gross_other_side_pk primary key (gross_id, document_id),
    constraint gross_other_side_gross_fk foreign key (gross_id) references gross_reported (id) on delete cascade,
    constraint gross_other_side_document_fk foreign key (document_id) references document (id) on delete cascade
);
