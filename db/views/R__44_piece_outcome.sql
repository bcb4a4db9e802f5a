-- Made anew with all views: ${views}

-- What became of each piece, for the sum of what to pay: one row for each piece that tells something. Left out are pieces
-- that became part of others or went back to where they were bought, as nobody ever could buy them; and pieces of
-- other people, which she did not choose.
-- bought_minor: what it cost before the bench. net_minor: what a sold piece left of its sales, off_minor: what went off for it. worked: finished, and all its supplies and
-- minutes are in the books, but for what was done before it was taken into them.

drop view if exists piece_outcome cascade;

create view piece_outcome as
select f.piece_id,
       p.kind_id,
       p.style_id,
       f.offered_on,
       f.sold_on,
       case when f.sold_on is not null
           then f.sales_minor + f.shipping_minor - f.refunds_minor - f.fees_minor - f.postage_minor
               - f.packaging_minor end as net_minor,
       f.fees_minor + f.postage_minor + f.packaging_minor as off_minor,
       f.supplies_minor,
       f.minutes,
       f.purchase_minor as bought_minor,
       f.state in ('READY', 'OFFERED', 'SOLD') and f.regrouped_minor = 0 and not f.uncosted as worked
from piece_figures f
join piece p on p.id = f.piece_id
where (f.state <> 'GONE' or f.piece_id in (select lg.piece_id from letting_go lg))
  and f.piece_id not in (select po.piece_id from piece_owner po);

-- The days that few pieces have stand by themselves: to ask for them beside each of many pieces takes a third as long again as all else.

-- The day on which a piece was taken into the books from before.
drop view if exists piece_taken_over cascade;

create view piece_taken_over as
select op.piece_id, max(d.doc_date) as on_day
from opening_piece op
join document d on d.id = op.opening_id
group by op.piece_id;

-- The day a piece went otherwise than by a sale.
drop view if exists piece_let_go cascade;

create view piece_let_go as
select lg.piece_id, max(d.doc_date) as on_day
from letting_go lg
join document d on d.id = lg.id
group by lg.piece_id;
