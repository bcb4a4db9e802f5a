-- Made anew with all views: ${views}

-- What each document brought in of a supply and how much of it is likely still there, the oldest having gone first: whoever
-- looks for something to use up asks the shelf and not the books, so this holds for both costing methods. With the days
-- that are known of it. A pot that was kept is a lot of its own. All rows are gathered in one pass over the postings.

drop view if exists lot_keeps cascade;

create view lot_keeps as
with moved as (
    select p.document_id, p.supply_id, d.kind, d.doc_date, d.kind_rank,
           sum(case when p.quantity > 0 and d.kind in ('RECEIPT', 'OPENING', 'BENCH_ENTRY', 'SUPPLY_GIFT') then p.quantity else 0 end) as quantity,
           sum(p.quantity) as net
    from posting p
    join document d on d.id = p.document_id
    where p.account in ('BENCH', 'SHELF')
    group by p.document_id, p.supply_id, d.kind, d.doc_date, d.kind_rank
),
ranked as (
    select m.document_id, m.supply_id, m.kind, m.doc_date, m.quantity,
           sum(m.net) over (partition by m.supply_id) as there,
           coalesce(sum(m.quantity) over (
               partition by m.supply_id
               order by m.doc_date desc, m.kind_rank desc, cast(m.document_id as varchar(36)) desc
               rows between unbounded preceding and 1 preceding), 0) as newer
    from moved m
)
select r.document_id, r.supply_id, r.kind, r.doc_date as came_on, r.quantity,
       greatest(0, least(r.quantity, r.there - r.newer)) as left_quantity,
       l.opened_on,
       coalesce(bp.use_by, l.use_by) as use_by,
       sl.days_opened
from ranked r
left join lot_date l on l.document_id = r.document_id and l.supply_id = r.supply_id
left join bench_pot bp on bp.bench_entry_id = r.document_id and bp.kept_as = r.supply_id
left join supply_limit sl on sl.supply_id = r.supply_id
where r.quantity > 0;
