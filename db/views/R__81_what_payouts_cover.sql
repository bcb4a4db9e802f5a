-- Made anew with all views: ${views}

-- What each document did to each money place. A payout out of a place is no movement that a payout covers; it is what covers.
drop view if exists place_movement cascade;

create view place_movement as
select p.document_id, p.place_id, p.doc_date, d.kind, d.kind_rank, cast(sum(p.amount_minor) as bigint) as amount_minor
from posting p
join document d on d.id = p.document_id
left join payout o on o.id = p.document_id and o.from_place_id = p.place_id
where p.account = 'MONEY' and o.id is null
group by p.document_id, p.place_id, p.doc_date, d.kind, d.kind_rank
having sum(p.amount_minor) <> 0;

-- What buyers paid into each money place, before the fee that left it at once: by sales, and by payments for sales or ahead.
drop view if exists buyer_money cascade;

create view buyer_money as
select x.document_id, x.place_id, x.doc_date, x.kind,
       coalesce(s.id, y.sale_id) as sale_id,
       c.money_place_id as gathers_at,
       coalesce(s.buyer, y.buyer, '') as buyer,
       cast(x.amount_minor + case when s.fee_place_id = x.place_id
                                  then coalesce((select sum(f.amount_minor) from posting f
                                                 where f.document_id = x.document_id and f.account = 'FEES'), 0)
                                  else 0 end as bigint) as amount_minor
from (select p.document_id, p.place_id, p.doc_date, d.kind, sum(p.amount_minor) as amount_minor
      from posting p
      join document d on d.id = p.document_id
      where p.account = 'MONEY' and d.kind in ('SALE', 'PAYMENT')
      group by p.document_id, p.place_id, p.doc_date, d.kind) x
left join sale s on s.id = x.document_id
left join channel c on c.id = s.channel_id
left join payment y on y.id = x.document_id;

-- What the sales of a channel were with their tips, and what was kept and given back of them, on the day of each; by the money place where the
-- channel's money gathers.
drop view if exists gathered_sale cascade;

create view gathered_sale as
select x.document_id, x.doc_date, x.sale_id, c.money_place_id as place_id,
       cast(x.price_minor as bigint) as price_minor,
       cast(x.shipping_minor as bigint) as shipping_minor,
       cast(x.tax_minor as bigint) as tax_minor,
       cast(x.refund_minor as bigint) as refund_minor,
       cast(x.fee_minor as bigint) as fee_minor,
       case when s.tax_passed and x.document_id = s.id then s.tax_minor else 0 end as passed_minor
from (select po.document_id, po.doc_date, coalesce(po.origin_id, po.document_id) as sale_id,
             -sum(case when po.account in ('SALES', 'OTHER_INCOME') then po.amount_minor else 0 end) as price_minor,
             -sum(case when po.account = 'SHIPPING_CHARGED' then po.amount_minor else 0 end) as shipping_minor,
             -sum(case when po.account = 'SALES_TAX_DUE' and po.origin_id is null then po.amount_minor else 0 end) as tax_minor,
             sum(case when po.account = 'REFUNDS' then po.amount_minor else 0 end) as refund_minor,
             sum(case when po.account = 'FEES' then po.amount_minor else 0 end) as fee_minor
      from posting po
      where po.account in ('SALES', 'SHIPPING_CHARGED', 'SALES_TAX_DUE', 'REFUNDS', 'FEES')
         or po.account = 'OTHER_INCOME' and po.category = 'tip'
      group by po.document_id, po.doc_date, coalesce(po.origin_id, po.document_id)) x
join sale s on s.id = x.sale_id
join channel c on c.id = s.channel_id;
