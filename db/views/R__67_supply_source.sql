-- Made anew with all views: ${views}

-- Where a supply was bought last, and what it cost there before anything shared over the receipt. A receipt line's content
-- is what one of its containers holds.

drop view if exists supply_source cascade;

create view supply_source as
select b.supply_id, b.source_id, b.source, b.bought_on, b.price_minor, b.content
from (select l.supply_id, r.source_id, s.name as source, d.doc_date as bought_on, l.price_minor, l.content,
             row_number() over (partition by l.supply_id
                                order by d.doc_date desc, cast(d.id as varchar(36)) desc, l.line) as nth
      from receipt_line l
      join receipt r on r.id = l.receipt_id
      join document d on d.id = r.id
      left join source s on s.id = r.source_id
      where l.supply_id is not null) b
where b.nth = 1;
