-- A count of the cash box: how much was there. What was short or over is no fact of the document; the postings say it.

create table till_count (
    id uuid not null,
    place_id uuid not null,
    counted_minor bigint not null,
    constraint till_count_pk primary key (id),
    constraint till_count_document_fk foreign key (id) references document (id),
    constraint till_count_place_fk foreign key (place_id) references money_place (id),
    constraint till_count_counted_ck check (counted_minor >= 0)
);
