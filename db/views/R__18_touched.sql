-- Made anew with all views: ${views}

-- Which pieces and sales the touched documents bear on. Every table in which a document names a piece stands here; a test walks the
-- schema for one that does not.
-- Each definition of a kept figure takes its rows from the touched ids, in every leaf: a condition from outside does not reach into a
-- sum or a window on H2, and what is not asked for would be added up too.

drop view if exists document_piece_anew cascade;

create view document_piece_anew as
select t.document_id, x.piece_id from touched_document t join receipt_piece x on x.receipt_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join opening_piece x on x.opening_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join supplier_return_piece x on x.supplier_return_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join bench_piece x on x.bench_entry_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join bench_use_piece x on x.bench_entry_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join bench_pot_piece x on x.bench_entry_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join bench_mishap x on x.bench_entry_id = t.document_id
where x.piece_id is not null
union
select t.document_id, x.piece_id from touched_document t join regrouping_from x on x.regrouping_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join regrouping_to x on x.regrouping_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join offer_piece x on x.offer_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join sale_piece x on x.sale_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join sale_undelivered x on x.sale_id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join refund_line x on x.refund_id = t.document_id
where x.piece_id is not null
union
select t.document_id, x.piece_id from touched_document t join letting_go x on x.id = t.document_id
union
select t.document_id, x.piece_id from touched_document t join posting x on x.document_id = t.document_id
where x.piece_id is not null;

drop view if exists document_sale_anew cascade;

create view document_sale_anew as
select distinct t.document_id, s.id as sale_id
from touched_document t
join posting x on x.document_id = t.document_id
join sale s on s.id = x.origin_id;

-- The days on which pieces went without a sale. A piece that a regrouping took in is back where the same or a later one lets it
-- come out again.
drop view if exists piece_going cascade;

create view piece_going as
select lg.piece_id, d.doc_date as gone_on
from letting_go lg
join document d on d.id = lg.id
union all
select sr.piece_id, d.doc_date
from supplier_return_piece sr
join document d on d.id = sr.supplier_return_id
union all
select rf.piece_id, d.doc_date
from regrouping_from rf
join document d on d.id = rf.regrouping_id
where not exists (select 1
                  from regrouping_to rt
                  join document td on td.id = rt.regrouping_id
                  where rt.piece_id = rf.piece_id
                    and (td.doc_date > d.doc_date or td.doc_date = d.doc_date and td.id >= d.id));
