-- Made anew with all views: ${views}

-- What waits, what is ready, what is owed, what is tied up: one row for each thing, under the word of its list. The
-- front page counts and adds these rows, and each of its figures opens them. A supply runs low by what is left of it on
-- bench and shelf together.

drop view if exists bench_and_shelf cascade;

create view bench_and_shelf as
select lower(f.state) as list, '/pieces/' || cast(f.piece_id as varchar(36)) as link, p.code, p.title,
       f.since as on_day, f.in_stock_minor as amount_minor,
       cast(null as numeric(30, 14)) as quantity, cast(null as varchar(10)) as dimension
from piece_figures f
join piece p on p.id = f.piece_id
where f.state in ('FOUND', 'BENCH', 'READY')
union all
select 'no-cost', '/pieces/' || cast(f.piece_id as varchar(36)), p.code, p.title, f.since, null, null, null
from piece_figures f
join piece p on p.id = f.piece_id
where f.purchase_minor + f.regrouped_minor = 0 and f.state not in ('SOLD', 'GONE')
  and f.piece_id not in (select po.piece_id from piece_owner po)
union all
select 'tied-pieces', '/pieces/' || cast(f.piece_id as varchar(36)), p.code, p.title, f.found_on, f.in_stock_minor, null, null
from piece_figures f
join piece p on p.id = f.piece_id
where f.in_stock_minor <> 0
union all
select 'to-post', '/sales/' || cast(sa.id as varchar(36)), sa.order_reference,
       coalesce(nullif((select min(coalesce(sl.bundle_title, sl.title)) from sale_line sl where sl.sale_id = sa.id), ''), sa.buyer), d.doc_date,
       (select -sum(po.amount_minor) from posting po
        where po.document_id = sa.id and po.account in ('SALES', 'SHIPPING_CHARGED')), null, null
from sale sa
join document d on d.id = sa.id
where sa.posted_on is null
  and (not exists (select 1 from sale_undelivered sk where sk.sale_id = sa.id)
       or exists (select 1 from sale_piece sp where sp.sale_id = sa.id)
       or exists (select 1 from sale_line sl where sl.sale_id = sa.id and sl.supply_id is not null))
union all
select case sl.place when 'BENCH' then 'tied-bench' else 'tied-shelf' end, '/supplies/' || cast(su.id as varchar(36)),
       '', su.name, null, sl.cost_minor, sl.quantity, su.dimension
from stock_left sl
join supply su on su.id = sl.supply_id
where sl.cost_minor <> 0
union all
select 'owed-to', case when sa.id is null then '/payments/opening' else '/sales/' || cast(sa.id as varchar(36)) end,
       coalesce(sa.order_reference, ''), coalesce(sa.buyer, ''), d.doc_date, o.amount_minor, null, null
from owed_to_shop o
join document d on d.id = o.sale_id
left join sale sa on sa.id = o.sale_id
union all
select 'owed-by', case when d.kind = 'SALE' then '/arrangements' when r.id is null then '/opening'
                       else '/receipts/' || cast(r.id as varchar(36)) end,
       '', coalesce(s.name, (select min(po.owner) from sale_piece sp join piece_owner po on po.piece_id = sp.piece_id
                             where sp.sale_id = d.id), ''), d.doc_date, o.amount_minor, null, null
from owed_by_shop o
join document d on d.id = o.receipt_id
left join receipt r on r.id = o.receipt_id
left join source s on s.id = r.source_id
union all
select 'low', '/supplies/' || cast(su.id as varchar(36)), '', su.name, null, null, coalesce(sl.quantity, 0), su.dimension
from supply su
left join (select supply_id, sum(quantity) as quantity from stock_left group by supply_id) sl on sl.supply_id = su.id
where su.low_quantity is not null and coalesce(sl.quantity, 0) <= su.low_quantity
union all
select 'uncosted', '/supplies/' || cast(su.id as varchar(36)), '', su.name, min(d.doc_date), null, sum(u.quantity), su.dimension
from uncosted_use u
join supply su on su.id = u.supply_id
join document d on d.id = u.document_id
where not u.through_pot
group by su.id, su.name, su.dimension;

drop view if exists sold_thing cascade;

-- The list of what was sold, whenever it was: the front page reads only its last days, which a view of several lists could not find by
-- their day.
create view sold_thing as
select 'sold' as list, '/sales/' || cast(sp.sale_id as varchar(36)) as link, coalesce(p.code, '') as code,
       coalesce(p.title, su.name) as title, sp.sold_on as on_day,
       sp.price_minor + sp.shipping_minor - sp.refund_minor as amount_minor,
       cast(null as numeric(30, 14)) as quantity, cast(null as varchar(10)) as dimension
from sale_part sp
left join piece p on p.id = sp.piece_id
left join supply su on su.id = sp.supply_id
where not sp.undelivered;
