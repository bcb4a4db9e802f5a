-- Made anew with all views: ${views}

-- What the shop holds for buyers: paid ahead, or promised as credit. One row for each posting, with the buyer as the sale or
-- the payment names them; nobody is named for what was there on the first day. Held is above zero, used below.

drop view if exists buyer_held cascade;

create view buyer_held as
select p.account, coalesce(s.buyer, y.buyer, '') as buyer, p.doc_date, p.document_id, d.kind, s.id as sale_id,
       -p.amount_minor as amount_minor
from posting p
join document d on d.id = p.document_id
left join sale s on s.id = coalesce(p.origin_id, p.document_id)
left join payment y on y.id = p.document_id
where p.account in ('CUSTOMER_DEPOSITS', 'STORE_CREDIT_GIVEN');
