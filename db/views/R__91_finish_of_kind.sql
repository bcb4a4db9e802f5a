-- Made anew with all views: ${views}

-- Which finishes were done on pieces of each kind and style, on how many of them, and what each supply of the finish would be
-- needed for one more and is left on the bench. needed is nothing where the finish goes by area and the kind has none.

drop view if exists finish_of_kind cascade;

create view finish_of_kind as
with done as (
    select be.finish_id, p.kind_id, p.style_id, count(distinct bp.piece_id) as pieces
    from bench_entry be
    join bench_piece bp on bp.bench_entry_id = be.id
    join piece p on p.id = bp.piece_id
    where be.finish_id is not null
    group by be.finish_id, p.kind_id, p.style_id
),
need as (
    select done.finish_id, done.kind_id, done.style_id, done.pieces, fs.supply_id,
           sum(case when fs.per_cm2 is null then fs.quantity
                    else fs.quantity * k.area_cm2 / fs.per_cm2 end) as needed,
           max(case when fs.per_cm2 is not null and k.area_cm2 is null then 1 else 0 end) as no_area
    from done
    join finish_supply fs on fs.finish_id = done.finish_id
    left join object_kind k on k.id = done.kind_id
    group by done.finish_id, done.kind_id, done.style_id, done.pieces, fs.supply_id
),
bench as (
    select p.supply_id, sum(p.quantity) as quantity
    from posting p
    where p.account = 'BENCH'
    group by p.supply_id
)
select need.finish_id, f.name as finish, need.kind_id, need.style_id, need.pieces, need.supply_id, su.name as supply,
       case when need.no_area = 0 then need.needed end as needed,
       coalesce(bench.quantity, 0) as on_bench
from need
join finish f on f.id = need.finish_id
join supply su on su.id = need.supply_id
left join bench on bench.supply_id = need.supply_id
where not f.removed;
