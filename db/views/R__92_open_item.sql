-- Made anew with all views: ${views}

-- Postings whose balance tells what tax counts at another time than the books: what buyers owe, what the shop owes, what lies
-- on the bench. By the document that the amount belongs to. What was there on the first day is marked, since it belongs to
-- the years before the books whatever its date.

drop view if exists open_item cascade;

create view open_item as
select p.account, coalesce(p.origin_id, p.document_id) as about_id, p.supply_id, p.doc_date,
       case when d.kind = 'OPENING' then true else false end as on_first_day, p.amount_minor
from posting p
join document d on d.id = p.document_id
where p.account in ('RECEIVABLE', 'PAYABLE', 'BENCH');
