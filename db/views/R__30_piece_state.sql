-- Made anew with all views: ${views}

-- Where each piece stands: found, on the bench, ready, on offer, sold, or gone. Derived from the documents alone.

drop view if exists piece_state cascade;

create view piece_state as
with last_sale as (
    select sp.piece_id, max(d.doc_date) as sold_on, count(*) as times
    from sale_piece sp
    join document d on d.id = sp.sale_id
    group by sp.piece_id
),
came_back as (
    select rl.piece_id, count(*) as times
    from refund_line rl
    where rl.comes_back and rl.piece_id is not null
    group by rl.piece_id
),
-- A piece that a regrouping took in is back where the same or a later one lets it come out again.
gone as (
    select g.piece_id, max(d.doc_date) as since
    from (select lg.piece_id, lg.id as document_id from letting_go lg
          union all
          select sr.piece_id, sr.supplier_return_id from supplier_return_piece sr
          union all
          select rf.piece_id, rf.regrouping_id
          from regrouping_from rf
          join document fd on fd.id = rf.regrouping_id
          where not exists (select 1
                            from regrouping_to rt
                            join document td on td.id = rt.regrouping_id
                            where rt.piece_id = rf.piece_id
                              and (td.doc_date > fd.doc_date or td.doc_date = fd.doc_date and td.id >= fd.id))) g
    join document d on d.id = g.document_id
    group by g.piece_id
),
-- A set is one event: an offer is over with the first of its pieces that was sold or went on or after its first day;
-- offer_state and offer_spell go by the same rule.
offer_over as (
    select op.offer_id
    from offer_piece op
    join document d on d.id = op.offer_id
    join last_sale ls on ls.piece_id = op.piece_id
    where ls.sold_on >= d.doc_date
    union
    select op.offer_id
    from offer_piece op
    join document d on d.id = op.offer_id
    join gone g on g.piece_id = op.piece_id
    where g.since >= d.doc_date
),
-- An offer stands until it is withdrawn or over. The later ones are asked for by "not exists": a numbering would be worked
-- out anew for every piece.
live_offer as (
    select op.piece_id, op.offer_id, d.doc_date as since
    from offer_piece op
    join offer o on o.id = op.offer_id
    join document d on d.id = o.id
    where o.ended_on is null
      and not exists (select 1 from offer_over where offer_over.offer_id = op.offer_id)
      and not exists (select 1
                      from offer_piece lp
                      join offer lo on lo.id = lp.offer_id
                      join document ld on ld.id = lp.offer_id
                      where lp.piece_id = op.piece_id and lo.ended_on is null
                        and (ld.doc_date > d.doc_date or ld.doc_date = d.doc_date and ld.id > d.id)
                        and not exists (select 1 from offer_over where offer_over.offer_id = lp.offer_id))
),
last_work as (
    select bp.piece_id, bp.ready, d.doc_date as since
    from bench_piece bp
    join document d on d.id = bp.bench_entry_id
    where not exists (select 1
                      from bench_piece lb
                      join document ld on ld.id = lb.bench_entry_id
                      where lb.piece_id = bp.piece_id
                        and (ld.doc_date > d.doc_date or ld.doc_date = d.doc_date and ld.id > d.id))
),
last_price as (
    select opr.offer_id, opr.price_minor
    from offer_price opr
    where not exists (select 1 from offer_price later where later.offer_id = opr.offer_id and later.valid_from > opr.valid_from)
),
found as (
    select f.piece_id, min(d.doc_date) as since
    from (select rp.piece_id, rp.receipt_id as document_id from receipt_piece rp
          union all
          select op.piece_id, op.opening_id from opening_piece op
          union all
          select rt.piece_id, rt.regrouping_id from regrouping_to rt) f
    join document d on d.id = f.document_id
    group by f.piece_id
)
select p.id as piece_id,
       case
           when gone.piece_id is not null then 'GONE'
           when ls.times > coalesce(cb.times, 0) then 'SOLD'
           when lo.offer_id is not null then 'OFFERED'
           when lw.ready then 'READY'
           when lw.piece_id is not null then 'BENCH'
           else 'FOUND'
       end as state,
       case
           when gone.piece_id is not null then gone.since
           when ls.times > coalesce(cb.times, 0) then ls.sold_on
           when lo.offer_id is not null then lo.since
           when lw.piece_id is not null then lw.since
           else found.since
       end as since,
       found.since as found_on,
       lo.offer_id,
       lp.price_minor,
       case when ls.times > coalesce(cb.times, 0) then
           (select d.id
            from sale_piece sp
            join document d on d.id = sp.sale_id
            where sp.piece_id = p.id
            order by d.doc_date desc, d.id desc
            fetch first 1 row only)
       end as sale_id
from piece p
left join gone on gone.piece_id = p.id
left join last_sale ls on ls.piece_id = p.id
left join came_back cb on cb.piece_id = p.id
left join live_offer lo on lo.piece_id = p.id
left join last_price lp on lp.offer_id = lo.offer_id
left join last_work lw on lw.piece_id = p.id
left join found on found.piece_id = p.id;
