-- Made anew with all views: ${views}

-- What each count found beside the books, and what was taken by eye; what her eye is worth is reckoned from the two.

-- difference: counted less what the books had thought, in the supply's base unit.
drop view if exists count_outcome cascade;

create view count_outcome as
select c.id as count_id, c.supply_id, c.place, d.doc_date as counted_on, c.quantity, coalesce(c.waste, false) as waste, c.step_quantity,
       coalesce((select sum(p.quantity)
                 from posting p
                 where p.document_id = c.id and case when p.account in ('BENCH', 'SHELF') then 1 else 0 end = 1), 0) as difference
from supply_count c
join document d on d.id = c.id;

-- What the bench and the packing of sales took of a supply, as it was typed. Of a tool that is a number of uses, not a
-- quantity judged by eye.
drop view if exists bench_taken cascade;

create view bench_taken as
select u.supply_id, u.bench_entry_id as document_id, d.doc_date as used_on, u.typed, u.quantity, u.estimated,
       u.tool_uses is not null as of_tool
from bench_use u
join document d on d.id = u.bench_entry_id
union all
select w.supply_id, w.sale_id, d.doc_date, w.typed, w.quantity, w.estimated, false
from sale_wrap w
join document d on d.id = w.sale_id;
