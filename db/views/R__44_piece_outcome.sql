-- Made anew with all views: ${views}

-- What became of each piece, for the sum of what to pay: one row for each piece that tells something. Left out are pieces
-- that became part of others or went back to where they were bought, as nobody ever could buy them; and pieces of
-- other people, which she did not choose.
-- clock_from: its first day on offer (a sale implies an offer); for a piece that was let go before, the day it went, as it
-- had its time and did not sell. Nothing for a piece that is still waiting at the bench, and for one that was on offer
-- before the books began: those like it that sold before are not in the books.
-- bought_minor: what it cost before the bench. net_minor: what a sold piece left of its sales. worked: finished, and all its supplies and minutes are in the books.

drop view if exists piece_outcome cascade;

create view piece_outcome as
with let_go as (
    select lg.piece_id, max(d.doc_date) as on_day
    from letting_go lg
    join document d on d.id = lg.id
    group by lg.piece_id
),
taken_over as (
    select op.piece_id, max(d.doc_date) as on_day
    from opening_piece op
    join document d on d.id = op.opening_id
    group by op.piece_id
)
select p.id as piece_id,
       p.kind_id,
       coalesce(k.name, '') as kind,
       p.style_id,
       coalesce(st.name, '') as style,
       case
           when taken_over.on_day is not null and f.from_day <= taken_over.on_day then null
           else coalesce(f.from_day, let_go.on_day)
       end as clock_from,
       f.sold_on,
       case when f.sold_on is not null
           then f.sales_minor + f.shipping_minor - f.refunds_minor - f.fees_minor - f.postage_minor
               - f.packaging_minor end as net_minor,
       f.supplies_minor,
       f.minutes,
       f.purchase_minor as bought_minor,
       f.state in ('READY', 'OFFERED', 'SOLD') and taken_over.piece_id is null and f.regrouped_minor = 0
           and not f.uncosted as worked
from (select figures.*,
             case when offered_on is not null and (sold_on is null or offered_on <= sold_on) then offered_on
                  else sold_on end as from_day
      from piece_figures figures) f
left join piece p on p.id = f.piece_id
left join object_kind k on k.id = p.kind_id
left join style st on st.id = p.style_id
left join let_go on let_go.piece_id = p.id
left join taken_over on taken_over.piece_id = p.id
where (f.state <> 'GONE' or let_go.piece_id is not null)
  and not exists (select 1 from piece_owner po where po.piece_id = f.piece_id);
