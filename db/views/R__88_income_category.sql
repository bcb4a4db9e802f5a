-- Made anew with all views: ${views}

-- All other income by its category: what it came to, and what was kept of it by whoever paid. A supply that came free for
-- work done is income too.

drop view if exists income_category cascade;

create view income_category as
select p.document_id, p.doc_date,
       case when sg.id is not null then 'supplies received' else coalesce(oi.category, p.category, '') end as category,
       case when p.account = 'OTHER_INCOME' then -p.amount_minor else 0 end as gross_minor,
       case when p.account = 'FEES' then p.amount_minor else 0 end as fee_minor
from posting p
left join other_income oi on oi.id = p.document_id
left join supply_gift sg on sg.id = p.document_id
where p.account = 'OTHER_INCOME' or p.account = 'FEES' and oi.id is not null;
