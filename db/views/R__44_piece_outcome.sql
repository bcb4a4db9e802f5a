-- Made anew with all views: ${views}

-- What became of each piece, for the sum of what to pay: one row for each piece that tells something. Left out are pieces
-- that became part of others or went back to where they were bought, as nobody ever could buy them; and pieces of
-- other people, which she did not choose.
-- taken_on: the day on which it was taken into the books from before. let_go_on: the day it went, of a piece that never was on offer.
-- bought_minor: what it cost before the bench. net_minor: what a sold piece left of its sales, off_minor: what went off for it. worked: finished, and all its supplies and
-- minutes are in the books, but for what was done before the day taken_on.

drop view if exists piece_outcome cascade;

-- The days are asked for row by row, of the few pieces that have them: H2 works out a joined sum again for every row, and to ask for
-- them of every piece takes PostgreSQL as long again as all else.
create view piece_outcome as
select f.piece_id,
       p.kind_id,
       p.style_id,
       f.offered_on,
       f.sold_on,
       case when f.piece_id in (select op.piece_id from opening_piece op) then
           (select max(d.doc_date)
            from opening_piece op
            join document d on d.id = op.opening_id
            where op.piece_id = f.piece_id) end as taken_on,
       case when f.offered_on is null and f.sold_on is null then
           (select max(d.doc_date)
            from letting_go lg
            join document d on d.id = lg.id
            where lg.piece_id = f.piece_id) end as let_go_on,
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
