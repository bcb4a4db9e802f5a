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
where op.piece_id not in (select po.piece_id from piece_owner po);

drop view if exists piece_group cascade;

-- The groups of all pieces, whoever's they are; whose pieces count is settled where they are offered and sold. Style, kind and material:
-- exactly one row for each piece, without a name where it has none. Line and finish: one row for each supply line that touched it, or finish
-- that was done on it, and one without a name for a piece that none did or that none was. Each is a view of its own: H2 goes through every part of a union, whichever is asked for.
drop view if exists piece_of_style cascade;

create view piece_of_style as
select p.id as piece_id, coalesce(s.name, '') as name
from piece p left join style s on s.id = p.style_id;

drop view if exists piece_of_kind cascade;

create view piece_of_kind as
select p.id as piece_id, coalesce(k.name, '') as name
from piece p left join object_kind k on k.id = p.kind_id;

drop view if exists piece_of_material cascade;

create view piece_of_material as
select p.id as piece_id, trim(p.material) as name
from piece p;

drop view if exists piece_of_line cascade;

create view piece_of_line as
select pl.piece_id, sl.name
from piece_line pl
join supply_line sl on sl.id = pl.supply_line_id
where pl.worked
union all
select p.id, ''
from piece p
where not exists (select 1 from piece_line pl where pl.piece_id = p.id and pl.worked);

drop view if exists piece_of_finish cascade;

create view piece_of_finish as
select distinct bp.piece_id, f.name
from bench_piece bp
join bench_entry be on be.id = bp.bench_entry_id
join finish f on f.id = be.finish_id
union all
select p.id, ''
from piece p
where p.id not in (select bp.piece_id
                   from bench_piece bp
                   join bench_entry be on be.id = bp.bench_entry_id
                   where be.finish_id is not null);

drop view if exists piece_sold cascade;

-- One row for each piece on each sale; came_back where a refund brought it back.
create view piece_sold as
select sp.sale_id, sp.piece_id, sp.sold_on, sp.channel_id, sp.came_back,
       sp.price_minor + sp.shipping_minor - sp.refund_minor as net_minor,
       sp.cost_minor,
       sp.price_minor + sp.shipping_minor - sp.refund_minor - sp.fee_minor - sp.postage_minor - sp.packaging_minor
           - sp.cost_minor as profit_minor,
       sp.price_minor, sp.shipping_minor, sp.refund_minor, sp.fee_minor, sp.postage_minor, sp.packaging_minor
from sale_part sp
where sp.piece_id is not null and not sp.undelivered
  and sp.piece_id not in (select po.piece_id from piece_owner po);
