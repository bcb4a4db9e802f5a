-- One turn: each receipt's next charge, shared over its lines. Run until no receipt has a charge left.
update turn set no = no + 1;
delete from to_share;

insert into to_share
select receipt_id, lpad(line, 6, '0'),
       coalesce(amount, half_up(sum(base) over (partition by receipt_id) * percent, 100)), base
from (
    select c.receipt_id, l.line, c.amount, c.percent,
           case c.stage when 3 then l.taxable when 4 then l.landed else l.remaining end as base
    from charge c
    join charge_target t on t.receipt_id = c.receipt_id and t.charge = c.charge
    join landing l on l.receipt_id = t.receipt_id and l.line = t.line
    where c.turn = (select no from turn)
);

create table share_of_turn as
select s.grp as receipt_id, cast(s.part as int) as line, s.amount, c.stage, c.taxed
from shared s
join charge c on c.receipt_id = s.grp and c.turn = (select no from turn);

merge into landing l using share_of_turn s on l.receipt_id = s.receipt_id and l.line = s.line
when matched then update set
    remaining = l.remaining - case when s.stage = 1 then s.amount else 0 end,
    taxable = l.taxable + case when s.stage = 1 then -s.amount when s.stage = 2 and s.taxed = 'yes' then s.amount else 0 end,
    landed = l.landed + case when s.stage in (1, 4) then -s.amount else s.amount end;

drop table share_of_turn;
