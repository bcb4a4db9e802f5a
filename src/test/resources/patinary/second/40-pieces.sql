-- A use's whole cost so far is shared again each time it changes; the differences reach the pieces.
delete from to_share;
insert into to_share
select u.drain_ord || '/' || u.drain_line || '/' || u.ord, p.part, u.amount, cast(p.weight as numeric(30, 14))
from use_so_far u
join doc d on d.ord = u.drain_ord
join part_of_use p on p.bench_entry_id = d.id and cast(p.line as int) = u.drain_line;

insert into piece_cost
select ord, piece,
       amount - coalesce(lag(amount) over (partition by drain_ord, drain_line, piece order by ord), 0), supply
from (select u.ord, u.drain_ord, u.drain_line, u.supply, s.part as piece, s.amount
      from use_so_far u join shared s on s.grp = u.drain_ord || '/' || u.drain_line || '/' || u.ord
      where s.part not like 'pot %');

-- A use on no piece is waste.
insert into entry (doc, account, category, supply, amount)
select d.id, 'WRITE_OFFS', 'waste', o.supply, o.amount
from outflow o
join doc u on u.ord = o.drain_ord
join doc d on d.ord = o.ord
where u.kind = 'bench_entry'
  and not exists (select 1 from part_of_use p
                  where p.bench_entry_id = u.id and cast(p.line as int) = o.drain_line);

-- Pieces that became part of another: what reaches them later goes on to it.
create table became as
select d.ord, f.piece_id as piece, t.piece_id as other
from regrouping_from f
join regrouping_to t on t.regrouping_id = f.regrouping_id
join doc d on d.id = f.regrouping_id
where f.piece_id <> t.piece_id;

update piece_cost c set piece = (select b.other from became b where b.piece = c.piece and b.ord < c.ord)
where exists (select 1 from became b where b.piece = c.piece and b.ord < c.ord);

insert into piece_cost
select b.ord, b.other, (select sum(c.amount) from piece_cost c where c.piece = b.piece and c.ord < b.ord), null from became b;
insert into piece_cost
select b.ord, b.piece, -(select sum(c.amount) from piece_cost c where c.piece = b.piece and c.ord < b.ord), null from became b;

-- Where a piece's cost lies from which document on.
create table stay as
select d.ord, p.piece_id as piece, 'COST_OF_PIECES' as account, cast(null as varchar) as category
from sale_piece p join doc d on d.id = p.sale_id
union all
select d.ord, l.piece_id, 'PIECES', null
from refund_line l join doc d on d.id = l.refund_id where l.comes_back = 'yes' and l.piece_id is not null
union all
select d.ord, g.piece_id, case when g.reason in ('BROKEN', 'TO_OWNER') then 'WRITE_OFFS' else 'OWN_USE' end, null
from letting_go g join doc d on d.id = g.id
union all
select d.ord, r.piece_id, 'WRITE_OFFS', 'returned'
from supplier_return_piece r join doc d on d.id = r.supplier_return_id;

create view stay_span as
select s.*, lag(account, 1, 'PIECES') over (partition by piece order by ord) as account_before,
       lead(ord, 1, 1000000) over (partition by piece order by ord) as upto
from stay s;

-- Cost arrives where the piece is.
insert into entry (doc, account, category, piece, supply, amount)
select d.id, coalesce(s.account, 'PIECES'), s.category, c.piece, c.supply, c.amount
from piece_cost c
join doc d on d.ord = c.ord
left join stay_span s on s.piece = c.piece and s.ord < c.ord and c.ord <= s.upto;

-- All landed cost moves when the piece does.
insert into entry (doc, account, category, piece, amount)
select d.id, m.account, m.category, m.piece, m.amount
from (
    select s.ord, s.piece, s.account, s.category,
           coalesce((select sum(c.amount) from piece_cost c where c.piece = s.piece and c.ord < s.ord), 0) as amount
    from stay_span s
    union all
    select s.ord, s.piece, s.account_before, null,
           -coalesce((select sum(c.amount) from piece_cost c where c.piece = s.piece and c.ord < s.ord), 0)
    from stay_span s
) m
join doc d on d.ord = m.ord;
