-- Made anew with all views: ${views}

-- What the page of the money of each group needs beside piece_of_style and its like and piece_sold: the supplies in a piece by supply line, and
-- the first price asked for it.

drop view if exists piece_line_cost cascade;

create view piece_line_cost as
select pl.piece_id, sl.name as line, pl.cost_minor
from piece_line pl
join supply_line sl on sl.id = pl.supply_line_id
where pl.cost_minor is not null;

drop view if exists piece_asked_first cascade;

create view piece_asked_first as
select f.piece_id, f.asked_first_minor as price_minor
from piece_figures f
where f.asked_first_minor is not null and f.piece_id not in (select po.piece_id from piece_owner po);
