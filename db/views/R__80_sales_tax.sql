-- Made anew with all views: ${views}

-- Each document that bears on sales tax: what was sold or given back, and what it did to the account of sales tax due, from
-- its postings; its place is that of its sale. What a channel passes on never reaches the books and is told for information.
-- A sale is taxed where tax was charged on it. Whether its shipping is taxed too is what its place said on its day.

drop view if exists sales_tax_row cascade;

create view sales_tax_row as
select x.document_id,
       x.doc_date,
       d.kind,
       coalesce(s.id, r.sale_id) as sale_id,
       coalesce(s.tax_place_id, b.tax_place_id, p.tax_place_id) as tax_place_id,
       coalesce(s.buyer, b.buyer, '') as buyer,
       cast(x.price_minor as bigint) as price_minor,
       cast(x.shipping_minor as bigint) as shipping_minor,
       cast(x.due_minor as bigint) as due_minor,
       case when s.tax_passed then s.tax_minor else 0 end as passed_minor,
       coalesce(s.tax_passed, b.tax_passed, false) as passed,
       case when coalesce(s.tax_minor, b.tax_minor, 0) > 0 then true else false end as taxed,
       coalesce((select tr.shipping_taxed
                 from tax_place_rate tr
                 where tr.tax_place_id = coalesce(s.tax_place_id, b.tax_place_id)
                   and tr.valid_from <= coalesce(bd.doc_date, x.doc_date)
                 order by tr.valid_from desc
                 fetch first 1 row only), false) as shipping_taxed
from (select po.document_id,
             po.doc_date,
             -sum(case when po.account = 'SALES' then po.amount_minor
                       when po.account = 'REFUNDS' and (po.category is null or po.category <> 'shipping')
                           then po.amount_minor
                       else 0 end) as price_minor,
             -sum(case when po.account = 'SHIPPING_CHARGED' then po.amount_minor
                       when po.account = 'REFUNDS' and po.category = 'shipping' then po.amount_minor
                       else 0 end) as shipping_minor,
             -sum(case when po.account = 'SALES_TAX_DUE' then po.amount_minor else 0 end) as due_minor
      from posting po
      where po.account in ('SALES', 'SHIPPING_CHARGED', 'REFUNDS', 'SALES_TAX_DUE')
      group by po.document_id, po.doc_date) x
join document d on d.id = x.document_id
left join sale s on s.id = x.document_id
left join refund r on r.id = x.document_id
left join sale b on b.id = r.sale_id
left join document bd on bd.id = r.sale_id
left join sales_tax_paid p on p.id = x.document_id;
