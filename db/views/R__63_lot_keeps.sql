-- Made anew with all views: ${views}

-- What each document brought in of a supply and how much of it is likely still there, the oldest having gone first: whoever
-- looks for something to use up asks the shelf and not the books, so this holds for both costing methods. With the days
-- that are known of it. A pot that was kept is a lot of its own.

drop view if exists lot_keeps cascade;

create view lot_keeps as
with came as (
    -- What documents bring is kept; few of the many rows bring anything. The kind is asked of those alone, not of all documents first.
    select ds.document_id, ds.supply_id, d.kind, d.doc_date, d.kind_rank, sum(ds.quantity) as quantity
    from document_stock ds
    join document d on d.id = ds.document_id
    where ds.quantity > 0 and case when ds.quantity > 0 then d.kind in ('RECEIPT', 'OPENING', 'SUPPLY_GIFT') else false end
    group by ds.document_id, ds.supply_id, d.kind, d.doc_date, d.kind_rank
    union all
    -- Of a pot that was kept by the postings: its own entry may have used of it too.
    select p.document_id, p.supply_id, d.kind, d.doc_date, d.kind_rank, sum(p.quantity)
    from bench_pot bp
    join posting p on p.document_id = bp.bench_entry_id and p.supply_id = bp.kept_as
    join document d on d.id = p.document_id
    -- One condition, so that H2 does not begin with all postings of the accounts.
    where case when p.account in ('BENCH', 'SHELF') then p.quantity > 0 else false end
    group by p.document_id, p.supply_id, d.kind, d.doc_date, d.kind_rank
),
ranked as (
    select c.document_id, c.supply_id, c.kind, c.doc_date, c.quantity,
           (select sum(st.quantity) from supply_stock st where st.supply_id = c.supply_id) as there,
           coalesce(sum(c.quantity) over (
               partition by c.supply_id
               order by c.doc_date desc, c.kind_rank desc, cast(c.document_id as varchar(36)) desc
               rows between unbounded preceding and 1 preceding), 0) as newer
    from came c
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
