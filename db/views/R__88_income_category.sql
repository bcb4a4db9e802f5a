-- Made anew with all views: ${views}

-- All other income by its category: what it came to, and what was kept of it by whoever paid. A supply that came free for
-- work done is income too.

drop view if exists income_category cascade;

create view income_category as
select p.document_id, p.doc_date,
       case when sg.id is not null then 'supplies received' else coalesce(oi.category, p.category, '') end as category,
       -p.amount_minor as gross_minor, cast(0 as bigint) as fee_minor
from posting p
left join other_income oi on oi.id = p.document_id
left join supply_gift sg on sg.id = p.document_id
where p.account = 'OTHER_INCOME'
union all
select p.document_id, p.doc_date, oi.category, 0, p.amount_minor
from other_income oi
join posting p on p.document_id = oi.id
where p.account = 'FEES';
