-- Made anew with all views: ${views}

-- Pieces that belong to other people, with what they were worth to the shop so far.
-- purchase_minor is what their owners get; sale_id is the sale that a sold one went with.

drop view if exists piece_of_others cascade;

create view piece_of_others as
select po.piece_id, p.code, p.title, po.arrangement, po.owner, po.since, po.price_minor, po.due_on, po.share_percent,
       po.share_minor, po.note, f.state, f.since as state_since, f.minutes, f.supplies_minor, f.purchase_minor, f.sales_minor,
       f.profit_minor,
       case when f.state = 'SOLD' then
           (select d.id
            from sale_piece sp
            join document d on d.id = sp.sale_id
            where sp.piece_id = po.piece_id
            order by d.doc_date desc, d.id desc
            fetch first 1 row only) end as sale_id
from piece_figures f
left join piece_owner po on po.piece_id = f.piece_id
left join piece p on p.id = f.piece_id
where po.piece_id is not null;
