-- Made anew with all views: ${views}

-- What each taking brought off the retail shelf, at cost, on whatever day its cost came to be known. What was bought for
-- resale without sales tax and is then used by herself may be taxed; own_use_tax is the mark that it may be so.

drop view if exists taking_cost cascade;

create view taking_cost as
select t.id as taking_id, d.doc_date, t.supply_id, s.name as supply, l.name as supply_line, s.dimension, t.quantity, t.own_use_tax,
       coalesce(t.at_once, false) as at_once, d.note,
       cast(coalesce((select -sum(p.amount_minor) from posting p
                      where p.document_id = t.id and p.account = 'SHELF' and p.origin_id is null), 0)
           + coalesce((select -sum(p.amount_minor) from posting p
                       where p.origin_id = t.id and p.account = 'SHELF'), 0) as bigint) as cost_minor
from taking t
join document d on d.id = t.id
join supply s on s.id = t.supply_id
join supply_line l on l.id = s.supply_line_id;
