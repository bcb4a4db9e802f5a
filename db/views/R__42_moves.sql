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
select distinct 'line', bup.piece_id, sl.name
from bench_use_piece bup
join bench_use bu on bu.bench_entry_id = bup.bench_entry_id and bu.line = bup.line
join supply su on su.id = bu.supply_id
join supply_line sl on sl.id = su.supply_line_id
where not exists (select 1 from piece_owner po where po.piece_id = bup.piece_id)
union all
select 'line', p.id, ''
from piece p
where not exists (select 1 from bench_use_piece bup where bup.piece_id = p.id)
  and not exists (select 1 from piece_owner po where po.piece_id = p.id);

drop view if exists piece_sold cascade;

-- One row for each piece on each sale; came_back where a refund brought it back.
create view piece_sold as
select sp.sale_id, sp.piece_id, d.doc_date as sold_on, c.name as channel,
       exists (select 1 from refund_line rl join refund r on r.id = rl.refund_id
               where r.sale_id = sp.sale_id and rl.piece_id = sp.piece_id and rl.comes_back) as came_back,
       sp.price_minor + sp.shipping_minor - sp.refund_minor as net_minor,
       sp.cost_minor,
       sp.price_minor + sp.shipping_minor - sp.refund_minor - sp.fee_minor - sp.postage_minor - sp.packaging_minor
           - sp.cost_minor as profit_minor,
       sp.price_minor, sp.shipping_minor, sp.refund_minor, sp.fee_minor, sp.postage_minor, sp.packaging_minor
from sale_part sp
join sale s on s.id = sp.sale_id
join channel c on c.id = s.channel_id
join document d on d.id = s.id
where sp.piece_id is not null and not sp.undelivered
  and not exists (select 1 from piece_owner po where po.piece_id = sp.piece_id);
