-- Made anew with all views: ${views}

-- What the page "What moves" is made of: stretches on offer, pieces by group, and pieces as sold. Pieces of other people
-- are not hers to learn from: she did not choose them, and a part of their price is not hers.

drop view if exists offer_spell cascade;

-- A piece is on offer from the offer's day until the day before it was withdrawn, or the day it sold or went, whichever
-- was first (offer_state says when). until_day is the first day on which it no longer was, or nothing while it still is.
create view offer_spell as
select op.piece_id, op.offer_id, os.started_on as from_day, os.until_day
from offer_piece op
join offer_state os on os.offer_id = op.offer_id
where not exists (select 1 from piece_owner po where po.piece_id = op.piece_id);

drop view if exists piece_group cascade;

-- Style, kind and material: exactly one row for each piece, without a name where it has none. Line: one row for each supply line
-- that touched it, and one without a name for a piece that none did.
create view piece_group as
select 'style' as grouped_by, p.id as piece_id, coalesce(s.name, '') as name
from piece p left join style s on s.id = p.style_id
where not exists (select 1 from piece_owner po where po.piece_id = p.id)
union all
select 'kind', p.id, coalesce(k.name, '')
from piece p left join object_kind k on k.id = p.kind_id
where not exists (select 1 from piece_owner po where po.piece_id = p.id)
union all
select 'material', p.id, trim(p.material)
from piece p
where not exists (select 1 from piece_owner po where po.piece_id = p.id)
union all
select 'line', pl.piece_id, sl.name
from piece_line pl
join supply_line sl on sl.id = pl.supply_line_id
where pl.worked and not exists (select 1 from piece_owner po where po.piece_id = pl.piece_id)
union all
select 'line', p.id, ''
from piece p
where not exists (select 1 from piece_line pl where pl.piece_id = p.id and pl.worked)
  and not exists (select 1 from piece_owner po where po.piece_id = p.id);

drop view if exists piece_sold cascade;

-- One row for each piece on each sale; came_back where a refund brought it back.
create view piece_sold as
select sp.sale_id, sp.piece_id, sp.sold_on, c.name as channel, sp.came_back,
       sp.price_minor + sp.shipping_minor - sp.refund_minor as net_minor,
       sp.cost_minor,
       sp.price_minor + sp.shipping_minor - sp.refund_minor - sp.fee_minor - sp.postage_minor - sp.packaging_minor
           - sp.cost_minor as profit_minor,
       sp.price_minor, sp.shipping_minor, sp.refund_minor, sp.fee_minor, sp.postage_minor, sp.packaging_minor
from sale_part sp
join channel c on c.id = sp.channel_id
where sp.piece_id is not null and not sp.undelivered
  and not exists (select 1 from piece_owner po where po.piece_id = sp.piece_id);
