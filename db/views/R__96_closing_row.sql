-- Made anew with all views: ${views}

-- What may be open when a year is closed, one row for each thing under the word of its item. A row matters to a year that
-- ends on a day D where from_day is empty or not after D, settled_on is empty or after D, and gone_on is empty or not before the
-- year's first day: what a count settles in January was still open in December, and a piece sold long ago is no
-- question of this year any more.

-- When a supply on the bench, or the cash of a place, was counted.
drop view if exists closing_count cascade;

create view closing_count as
select c.supply_id as thing_id, d.doc_date as counted_on
from supply_count c
join document d on d.id = c.id
where c.place = 'BENCH'
union all
select t.place_id, d.doc_date
from till_count t
join document d on d.id = t.id;

drop view if exists closing_row cascade;

-- The first count on or after a use, or a move of cash, settles it; uses,
-- moves and counts of a thing are read backwards in one pass, a day's count after what it counts.
create view closing_row as
select 'NO_COST' as item, p.id as thing_id, '/pieces/' || cast(p.id as varchar(36)) as link, p.code || ' ' || p.title as what,
       f.found_on as from_day, cast(null as date) as settled_on,
       case when f.state in ('SOLD', 'GONE') then f.since end as gone_on, cast(null as bigint) as amount_minor
from piece_figures f
left join piece p on p.id = f.piece_id
where f.purchase_minor + f.regrouped_minor = 0
  and f.piece_id not in (select po.piece_id from piece_owner po)
union all
select 'UNCOSTED', su.id, '/supplies/' || cast(su.id as varchar(36)), su.name, d.doc_date, null, null, null
from uncosted_use u
join supply su on su.id = u.supply_id
join document d on d.id = u.document_id
where not u.through_pot
union all
select e.item, e.thing_id, e.path || cast(e.thing_id as varchar(36)), coalesce(su.name, mp.name), e.on_day, e.settled_on, null, null
from (select x.item, x.path, x.thing_id, x.on_day, x.counts,
             min(case when x.counts = 1 then x.on_day end) over (
                 partition by x.item, x.thing_id order by x.on_day desc, x.counts desc
                 rows between unbounded preceding and current row) as settled_on
      from (select 'BY_EYE' as item, '/supplies/' as path, t.supply_id as thing_id, t.used_on as on_day, 0 as counts
            from bench_taken t
            where t.estimated and not t.of_tool
            union all
            select 'CASH', '/money-places/', p.place_id, p.doc_date, 0
            from posting p
            join document d on d.id = p.document_id
            join money_place m on m.id = p.place_id
            where p.account = 'MONEY' and m.kind = 'CASH' and d.kind <> 'TILL_COUNT'
            union all
            select k.item, k.path, c.thing_id, c.counted_on, 1
            from closing_count c
            cross join (values ('BY_EYE', '/supplies/'), ('CASH', '/money-places/')) k (item, path)) x) e
left join supply su on su.id = e.thing_id
left join money_place mp on mp.id = e.thing_id
where e.counts = 0
union all
select 'OWED_BY', d.id, case when d.kind = 'SALE' then '/arrangements' when r.id is null then '/opening'
                       else '/receipts/' || cast(r.id as varchar(36)) end,
       coalesce(s.name, ''), d.doc_date, null, null, o.amount_minor
from owed_by_shop o
join document d on d.id = o.receipt_id
left join receipt r on r.id = o.receipt_id
left join source s on s.id = r.source_id
union all
select 'OWED_TO', d.id, case when sa.id is null then '/payments/opening' else '/sales/' || cast(sa.id as varchar(36)) end,
       case when sa.id is null then '' else trim(sa.order_reference || ' ' || sa.buyer) end, d.doc_date, null, null, o.amount_minor
from owed_to_shop o
join document d on d.id = o.sale_id
left join sale sa on sa.id = o.sale_id;
