-- The postings of a sealed year as they were when it was sealed. They, and not what the documents would give today, are the
-- books up to that day; a difference is posted on the first day after it.
create table sealed_posting (
    year_seal_id uuid not null,
    document_id uuid not null,
    line integer not null,
    doc_date date not null,
    account varchar(20) not null,
    place_id uuid,
    category varchar(40),
    piece_id uuid,
    supply_id uuid,
    party_id uuid,
    origin_id uuid,
    estimated boolean not null,
    amount_minor bigint not null,
    quantity numeric(30, 14) not null,
    constraint sealed_posting_pk primary key (document_id, line),
    constraint sealed_posting_seal_fk foreign key (year_seal_id) references year_seal (id),
    constraint sealed_posting_document_fk foreign key (document_id) references document (id)
);

-- Until now no posting of a sealed year could be rewritten: what stands there is what was sealed.
insert into sealed_posting (year_seal_id, document_id, line, doc_date, account, place_id, category, piece_id, supply_id,
    party_id, origin_id, estimated, amount_minor, quantity)
select (select s.id from year_seal s join document d on d.id = s.id
        where d.doc_date >= p.doc_date order by d.doc_date fetch first 1 row only),
       p.document_id, p.line, p.doc_date, p.account, p.place_id, p.category, p.piece_id, p.supply_id,
       p.party_id, p.origin_id, p.estimated, p.amount_minor, p.quantity
from posting p
where p.doc_date <= (select max(d.doc_date) from year_seal s join document d on d.id = s.id);
