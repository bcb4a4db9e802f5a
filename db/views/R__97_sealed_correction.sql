-- Made anew with all views: ${views}

-- What a document changed about an earlier, sealed year: posted on its own day, because nothing of that year is rewritten. A
-- count settles uses of before its seal; a receipt gives a cost to what was used, or sold, before it; and where the
-- calculation itself is another one by now, the seal posts the difference on the first day after it. What a sale of a
-- sealed year goes on to do, such as a refund or a payment, is its own business of the new year and no correction.
-- Told is where the amount went: what left the bench and the shelf for it is its other side.

drop view if exists sealed_correction cascade;

-- A posting is held against the last seal before its day: whatever lies before an earlier seal lies before that one too.
create view sealed_correction as
with sealed as (
    select s.doc_date as sealed_on,
           coalesce(lead(s.doc_date) over (order by s.doc_date), date '9999-12-31') as until_day
    from year_seal y
    join document s on s.id = y.id
)
select p.document_id, p.line, p.doc_date, d.kind, p.account, coalesce(p.category, '') as category, p.amount_minor,
       coalesce(p.origin_id, p.document_id) as origin_id, coalesce(o.kind, '') as origin_kind, o.doc_date as origin_date,
       coalesce(pc.code || ' ' || pc.title, su.name, '') as what,
       ys.tax_year
from sealed
join posting p on p.doc_date > sealed.sealed_on and p.doc_date <= sealed.until_day
join document d on d.id = p.document_id
left join document o on o.id = p.origin_id
left join year_seal ys on ys.id = p.document_id
left join piece pc on pc.id = p.piece_id
left join supply su on su.id = p.supply_id
where p.account not in ('BENCH', 'SHELF')
  and (d.kind = 'YEAR_SEAL'
       or p.supply_id is not null and o.doc_date <= sealed.sealed_on
          and d.kind in ('RECEIPT', 'SUPPLY_GIFT', 'SUPPLIER_RETURN', 'COUNT', 'BENCH_ENTRY', 'TAKING')
       or p.origin_id is null and p.piece_id is not null
          and p.account in ('COST_OF_PIECES', 'WRITE_OFFS', 'OWN_USE')
          and d.kind in ('RECEIPT', 'SUPPLY_GIFT', 'BENCH_ENTRY')
          and exists (select 1 from posting q
                      where q.piece_id = p.piece_id and q.account = p.account and q.doc_date <= sealed.sealed_on));
