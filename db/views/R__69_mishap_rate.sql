-- Made anew with all views: ${views}

-- How often a supply line failed on a surface: distinct pieces of that material on which the line was used, and how many
-- of them had a mishap with it. A mishap's own surface goes before the material of its piece; one without a piece is a
-- thing of its own. Where no piece of that material was ever worked with the line, how many went well is not known.

drop view if exists mishap_rate cascade;

create view mishap_rate as
with tried as (
    select pl.supply_line_id, lower(trim(p.material)) as surface, pl.piece_id as thing, 0 as failed, 1 as worked
    from piece_line pl
    join piece p on p.id = pl.piece_id
    where pl.worked and trim(p.material) <> ''
    union all
    select s.supply_line_id, lower(trim(case when trim(m.surface) <> '' then m.surface else p.material end)),
           coalesce(m.piece_id, m.bench_entry_id), 1, 0
    from bench_mishap m
    join supply s on s.id = m.supply_id
    left join piece p on p.id = m.piece_id
    where trim(m.surface) <> '' or trim(coalesce(p.material, '')) <> ''
),
thing as (
    select supply_line_id, surface, thing, max(failed) as failed, max(worked) as worked
    from tried
    group by supply_line_id, surface, thing
)
select supply_line_id, surface, cast(sum(failed) as bigint) as failed, cast(count(*) as bigint) as tried,
       max(worked) = 1 as known
from thing
group by supply_line_id, surface;
