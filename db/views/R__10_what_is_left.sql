-- Made anew with all views: ${views}

-- What is left of supplies and of money, and what is owed; all from the postings.
-- Views depend on views of lower numbers: after changing one, change the later files too, so that they are made anew.

-- Every posting by each document that it is about: the one that made it, and the one that it came from where that is
-- another. Asked for with an "or" over both columns instead, H2 goes through all postings.
drop view if exists posting_about cascade;

create view posting_about as
select p.document_id as about_id, p.document_id, p.line, p.doc_date, p.account, p.piece_id, p.supply_id, p.quantity, p.amount_minor
from posting p
union all
select p.origin_id, p.document_id, p.line, p.doc_date, p.account, p.piece_id, p.supply_id, p.quantity, p.amount_minor
from posting p
where p.origin_id is not null and p.origin_id <> p.document_id;

drop view if exists document_stock_anew cascade;

create view document_stock_anew as
select t.document_id, p.supply_id, p.account as place, sum(p.quantity) as quantity, cast(sum(p.amount_minor) as bigint) as cost_minor
from touched_document t
join posting p on p.document_id = t.document_id
where p.account in ('BENCH', 'SHELF')
group by t.document_id, p.supply_id, p.account;

drop view if exists supply_stock_anew cascade;

create view supply_stock_anew as
select t.supply_id, s.place, sum(s.quantity) as quantity, cast(sum(s.cost_minor) as bigint) as cost_minor
from touched_supply t
join document_stock s on s.supply_id = t.supply_id
group by t.supply_id, s.place;

drop view if exists stock_left cascade;

create view stock_left as
select s.supply_id,
       s.place,
       s.quantity,
       s.cost_minor,
       coalesce((select sum(u.quantity)
                 from uncosted_use u
                 where u.supply_id = s.supply_id and u.place = s.place and not u.through_pot), 0) as uncosted_quantity
from supply_stock s;

drop view if exists money_left cascade;

create view money_left as
select p.place_id, cast(sum(p.amount_minor) as bigint) as amount_minor
from posting p
where p.account = 'MONEY'
group by p.place_id;

-- By sale, or by the opening document for what was owed on the first day.
drop view if exists owed_to_shop cascade;

create view owed_to_shop as
select coalesce(p.origin_id, p.document_id) as sale_id, cast(sum(p.amount_minor) as bigint) as amount_minor
from posting p
where p.account = 'RECEIVABLE'
group by coalesce(p.origin_id, p.document_id)
having sum(p.amount_minor) <> 0;

-- By receipt, or by the opening document for what was owed on the first day.
drop view if exists owed_by_shop cascade;

create view owed_by_shop as
select coalesce(p.origin_id, p.document_id) as receipt_id, cast(-sum(p.amount_minor) as bigint) as amount_minor
from posting p
where p.account = 'PAYABLE'
group by coalesce(p.origin_id, p.document_id)
having sum(p.amount_minor) <> 0;
