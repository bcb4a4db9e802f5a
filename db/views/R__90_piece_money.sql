-- Made anew with all views: ${views}

-- What the page of the money of each group needs beside piece_group and piece_sold: the supplies in a piece by supply line, and
-- the first price asked for it.

drop view if exists piece_line_cost cascade;

-- The same postings that piece_figures counts as supplies, parted by supply line.
create view piece_line_cost as
select p.piece_id, sl.name as line, cast(sum(p.amount_minor) as bigint) as cost_minor
from posting p
join supply su on su.id = p.supply_id
join supply_line sl on sl.id = su.supply_line_id
where p.piece_id is not null and p.account in ('PIECES', 'COST_OF_PIECES', 'WRITE_OFFS', 'OWN_USE')
group by p.piece_id, sl.name;

drop view if exists piece_asked_first cascade;

create view piece_asked_first as
select o.piece_id, o.price_minor
from (select op.piece_id, opr.price_minor,
             row_number() over (partition by op.piece_id order by d.doc_date, d.id, opr.valid_from) as place
      from offer_piece op
      join document d on d.id = op.offer_id
      join offer_price opr on opr.offer_id = op.offer_id) o
where o.place = 1 and not exists (select 1 from piece_owner po where po.piece_id = o.piece_id);
