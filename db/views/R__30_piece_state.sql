-- Made anew with all views: ${views}

-- Where each piece stands: found, on the bench, ready, on offer, sold, or gone. Derived from the documents alone; whether its offers
-- stand, from offer_state. It is asked piece by piece: each question finds its few rows by an index.

drop view if exists piece_state_anew cascade;

create view piece_state_anew as
select x.piece_id,
       case
           when x.gone_on is not null then 'GONE'
           when x.times_sold > x.times_back then 'SOLD'
           when x.offer_id is not null then 'OFFERED'
           when x.ready then 'READY'
           when x.worked_on is not null then 'BENCH'
           else 'FOUND'
       end as state,
       case
           when x.gone_on is not null then x.gone_on
           when x.times_sold > x.times_back then x.sold_on
           when x.offer_id is not null then lo.started_on
           when x.worked_on is not null then x.worked_on
           else x.found_on
       end as since,
       x.found_on,
       x.offer_id,
       lo.price_minor,
       case when x.times_sold > x.times_back then
           (select d.id
            from sale_piece sp
            join document d on d.id = sp.sale_id
            where sp.piece_id = x.piece_id
            order by d.doc_date desc, d.id desc
            fetch first 1 row only)
       end as sale_id
from (select p.id as piece_id,
             (select max(g.gone_on) from piece_going g where g.piece_id = p.id) as gone_on,
             (select count(*) from sale_piece sp where sp.piece_id = p.id) as times_sold,
             (select count(*) from refund_line rl where rl.piece_id = p.id and rl.comes_back) as times_back,
             (select max(d.doc_date)
              from sale_piece sp
              join document d on d.id = sp.sale_id
              where sp.piece_id = p.id) as sold_on,
             (select op.offer_id
              from offer_piece op
              join offer_state os on os.offer_id = op.offer_id
              where op.piece_id = p.id and os.until_day is null
              order by os.started_on desc, op.offer_id desc
              fetch first 1 row only) as offer_id,
             (select bp.ready
              from bench_piece bp
              join document d on d.id = bp.bench_entry_id
              where bp.piece_id = p.id
              order by d.doc_date desc, d.id desc
              fetch first 1 row only) as ready,
             (select max(d.doc_date)
              from bench_piece bp
              join document d on d.id = bp.bench_entry_id
              where bp.piece_id = p.id) as worked_on,
             (select min(d.doc_date)
              from (select rp.piece_id, rp.receipt_id as document_id from receipt_piece rp
                    union all
                    select op.piece_id, op.opening_id from opening_piece op
                    union all
                    select rt.piece_id, rt.regrouping_id from regrouping_to rt) f
              join document d on d.id = f.document_id
              where f.piece_id = p.id) as found_on
      from touched_piece t
      join piece p on p.id = t.piece_id
      -- So that each is asked once, and not wherever its answer is used.
      offset 0 rows) x
left join offer_state lo on lo.offer_id = x.offer_id;
