-- Made anew with all views: ${views}

-- What the pieces waiting for their planned finish will need of each supply, in the supply's base unit. Of a piece that
-- is found or on the bench; a supply that an entry following the finish has used on it is not needed again. A piece whose
-- surface is not known, nor the usual one of its kind, needs nothing that goes by surface.

drop view if exists piece_need cascade;

create view piece_need as
select n.piece_id, n.supply_id, cast(sum(n.quantity) as numeric(30, 14)) as quantity
from (select p.id as piece_id, fs.supply_id,
             case when fs.per_cm2 is null then fs.quantity
                  else cast(fs.quantity * coalesce(p.area_cm2, k.area_cm2) / fs.per_cm2 as numeric(30, 14)) end as quantity
      from piece p
      join piece_state s on s.piece_id = p.id
      join finish_supply fs on fs.finish_id = p.planned_finish_id
      left join object_kind k on k.id = p.kind_id
      where s.state in ('FOUND', 'BENCH')
        and not exists (select 1
                        from bench_piece bp
                        join bench_entry be on be.id = bp.bench_entry_id
                        join bench_use bu on bu.bench_entry_id = be.id
                        where bp.piece_id = p.id and be.finish_id = p.planned_finish_id
                          and bu.supply_id = fs.supply_id)) n
where n.quantity > 0
group by n.piece_id, n.supply_id;
