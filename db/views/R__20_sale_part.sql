-- Made anew with all views: ${views}

-- What each thing on a sale earned and cost. What belongs to a sale as a whole (postage, packaging, shipping given back, fee
-- returned) is shared over its things by price, equally where every price is zero; running totals are rounded and
-- their differences taken, so that the shares add up to the cent. Every thing sold has its row, also one that was given
-- for nothing and cost nothing, of which no posting tells; two lines of one supply are one row. A piece that was ordered
-- and never delivered has its row too, marked so: it bears what belongs to the sale as a whole only where all were kept.

drop view if exists sale_part_anew cascade;

-- Everything is gathered in one pass and added up by sale and thing, and not joined from sums of its own: H2 works out a
-- joined sum again for every row. The row of a sale without a thing carries what belongs to the sale as a whole.
create view sale_part_anew as
with amount as (
    select po.document_id as sale_id, po.piece_id, po.supply_id, 1 as listed,
           case when po.account = 'SALES' then -po.amount_minor else 0 end as price_minor,
           case when po.account = 'SHIPPING_CHARGED' then -po.amount_minor else 0 end as shipping_minor,
           case when po.account = 'FEES' then po.amount_minor else 0 end as fee_minor,
           cast(0 as bigint) as postage_minor,
           cast(0 as bigint) as packaging_minor,
           cast(0 as bigint) as refund_minor,
           case when po.account = 'COST_OF_RETAIL' then po.amount_minor else 0 end as cost_minor
    from touched_sale t
    join sale s on s.id = t.sale_id
    join posting po on po.document_id = s.id
    where po.account in ('SALES', 'SHIPPING_CHARGED', 'FEES', 'COST_OF_RETAIL')
      and (po.piece_id is not null or po.supply_id is not null)
    union all
    -- What it was packed in is of the sale as a whole: a supply of the packaging is no thing sold. Cost that comes later, by
    -- a receipt or a count, names the sale as its origin.
    select s.id, cast(null as uuid), cast(null as uuid), 0, 0, 0, 0, 0, p.amount_minor, 0, 0
    from touched_sale t
    join sale s on s.id = t.sale_id
    join posting p on p.document_id = s.id
    where p.account = 'EXPENSE' and p.supply_id is not null and p.origin_id is null
    union all
    select t.sale_id, sp.piece_id, cast(null as uuid), 1, 0, 0, 0, 0, 0, 0, 0
    from touched_sale t
    join sale_piece sp on sp.sale_id = t.sale_id
    union all
    select t.sale_id, sk.piece_id, cast(null as uuid), 2, 0, 0, 0, 0, 0, 0, 0
    from touched_sale t
    join sale_undelivered sk on sk.sale_id = t.sale_id
    union all
    select t.sale_id, cast(null as uuid), sl.supply_id, 1, 0, 0, 0, 0, 0, 0, 0
    from touched_sale t
    join sale_line sl on sl.sale_id = t.sale_id
    where sl.supply_id is not null
    union all
    select s.id, cast(null as uuid), cast(null as uuid), 0, 0, 0,
           case when p.account = 'FEES' then p.amount_minor else 0 end,
           case when p.account = 'POSTAGE' then p.amount_minor else 0 end,
           case when p.account = 'EXPENSE' then p.amount_minor else 0 end,
           case when p.account = 'REFUNDS' then p.amount_minor else 0 end, 0
    from touched_sale t
    join sale s on s.id = t.sale_id
    join posting p on p.origin_id = s.id
    where p.supply_id is not null and p.account = 'EXPENSE'
       or p.piece_id is null and p.supply_id is null and p.account in ('POSTAGE', 'REFUNDS', 'FEES')
    union all
    select s.id, p.piece_id, p.supply_id, 0, 0, 0, 0, 0, 0,
           case when p.account = 'REFUNDS' then p.amount_minor else 0 end,
           case when p.account = 'COST_OF_RETAIL' then p.amount_minor else 0 end
    from touched_sale t
    join sale s on s.id = t.sale_id
    join posting p on p.origin_id = s.id
    where p.account = 'REFUNDS' and (p.piece_id is not null or p.supply_id is not null) or p.account = 'COST_OF_RETAIL'
    union all
    -- Cost that reaches a piece after it was sold, and cost taken back by a return, belong to the last sale before.
    select t.sale_id, p.piece_id, cast(null as uuid), 0, 0, 0, 0, 0, 0, 0, p.amount_minor
    from touched_sale t
    join sale_piece ts on ts.sale_id = t.sale_id
    join posting p on p.piece_id = ts.piece_id
    -- One condition, so that nobody begins with all postings of the account: H2 does so while it knows nothing of its tables yet,
    -- and would hold each of them against every touched sale.
    where case when p.account = 'COST_OF_PIECES'
               then t.sale_id = (select d.id
                                 from sale_piece sp
                                 join document d on d.id = sp.sale_id
                                 where sp.piece_id = p.piece_id and d.doc_date <= p.doc_date
                                 order by d.doc_date desc, d.id desc
                                 fetch first 1 row only)
               else false end
),
part as (
    select sale_id, piece_id, supply_id,
           max(listed) as listed,
           sum(price_minor) as price_minor,
           sum(shipping_minor) as shipping_minor,
           sum(fee_minor) as fee_minor,
           sum(postage_minor) as postage_minor,
           sum(packaging_minor) as packaging_minor,
           sum(refund_minor) as refund_minor,
           sum(cost_minor) as cost_minor
    from amount
    group by sale_id, piece_id, supply_id
),
delivered as (
    select part.*,
           listed = 1 or listed = 2 and min(case when listed > 0 then listed end) over (partition by sale_id) = 2 as bears
    from part
),
weighed as (
    select delivered.*,
           case when piece_id is null and supply_id is null then fee_minor else 0 end as whole_fee_minor,
           case when piece_id is null and supply_id is null then refund_minor else 0 end as whole_refund_minor,
           case
               when not bears then 0
               when sum(case when bears then price_minor else 0 end) over (partition by sale_id) = 0 then 1
               else price_minor
           end as weight,
           coalesce(cast(piece_id as varchar(40)), cast(supply_id as varchar(40)), '') as sort
    from delivered
),
placed as (
    select weighed.*,
           sum(whole_fee_minor) over (partition by sale_id) as fee_of_all,
           sum(whole_refund_minor) over (partition by sale_id) as refund_of_all,
           sum(postage_minor) over (partition by sale_id) as postage_of_all,
           sum(packaging_minor) over (partition by sale_id) as packaging_of_all,
           nullif(cast(sum(weight) over (partition by sale_id) as numeric(30, 4)), 0) as weights,
           cast(sum(weight) over (partition by sale_id order by sort rows unbounded preceding) as numeric(30, 4)) as upto
    from weighed
)
select placed.sale_id,
       placed.piece_id,
       placed.supply_id,
       cast(placed.price_minor as bigint) as price_minor,
       cast(placed.shipping_minor as bigint) as shipping_minor,
       cast(placed.fee_minor + round(fee_of_all * upto / weights, 0)
            - round(fee_of_all * (upto - weight) / weights, 0) as bigint) as fee_minor,
       cast(round(postage_of_all * upto / weights, 0)
            - round(postage_of_all * (upto - weight) / weights, 0) as bigint) as postage_minor,
       cast(round(packaging_of_all * upto / weights, 0)
            - round(packaging_of_all * (upto - weight) / weights, 0) as bigint) as packaging_minor,
       cast(placed.refund_minor + round(refund_of_all * upto / weights, 0)
            - round(refund_of_all * (upto - weight) / weights, 0) as bigint) as refund_minor,
       cast(placed.cost_minor as bigint) as cost_minor,
       listed = 2 as undelivered,
       d.doc_date as sold_on,
       s.channel_id,
       exists (select 1
               from refund_line rl
               join refund r on r.id = rl.refund_id
               where rl.piece_id = placed.piece_id and r.sale_id = placed.sale_id and rl.comes_back) as came_back
from placed
left join sale s on s.id = placed.sale_id
left join document d on d.id = placed.sale_id
where listed > 0;
