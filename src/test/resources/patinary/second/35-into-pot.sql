-- What the uses that went into a pot cost so far, shared over where they went.
delete from to_share;
insert into to_share
select u.drain_ord || '/' || u.drain_line || '/' || u.ord, p.part, u.amount, cast(p.weight as numeric(30, 14))
from use_so_far u
join doc d on d.ord = u.drain_ord
join part_of_use p on p.bench_entry_id = d.id and cast(p.line as int) = u.drain_line
where exists (select 1 from part_of_use q
              where q.bench_entry_id = d.id and cast(q.line as int) = u.drain_line and q.part like 'pot %');
