-- Made anew with all views: ${views}

-- The postings with the names that a person needs beside them, and the part each plays in a year.
--
-- purchase: what a receipt or an opening brought, and what a return took back. It is counted over the stock accounts and the
-- accounts that stock leaves to, because cost that belongs to a piece already sold never lies in stock; the steps that
-- a document makes among these accounts cancel out; what a sale leaves of a piece is what its owner gets. MATERIALS is what came to the bench; all else is GOODS.
-- packed: what sales were packed in. It left the stock and is an expense, so it is no part of the cost of goods.

drop view if exists document_profit_anew cascade;

-- The accounts are those that year_row calls income, expense and cost.
create view document_profit_anew as
select t.document_id, p.doc_date, cast(-sum(p.amount_minor) as bigint) as profit_minor
from touched_document t
join posting p on p.document_id = t.document_id
where p.account in ('SALES', 'SHIPPING_CHARGED', 'REFUNDS', 'OTHER_INCOME',
                    'EXPENSE', 'FEES', 'POSTAGE', 'ROUNDING', 'VEHICLE',
                    'COST_OF_PIECES', 'COST_OF_RETAIL', 'WRITE_OFFS', 'FOUND_AT_COUNT')
group by t.document_id, p.doc_date
having sum(p.amount_minor) <> 0;

drop view if exists year_row cascade;

create view year_row as
select p.document_id, p.line, p.doc_date, d.kind, d.note, p.account, coalesce(p.category, '') as category,
       p.place_id, p.piece_id, p.supply_id, p.party_id, p.origin_id, p.estimated, p.amount_minor, p.quantity,
       mp.name as place, pc.code as piece_code, pc.title as piece_title, su.name as supply, so.name as party,
       case
           when p.account in ('SALES', 'SHIPPING_CHARGED', 'REFUNDS', 'OTHER_INCOME') then 'INCOME'
           when p.account in ('EXPENSE', 'FEES', 'POSTAGE', 'ROUNDING', 'VEHICLE') then 'EXPENSE'
           when p.account in ('COST_OF_PIECES', 'COST_OF_RETAIL', 'WRITE_OFFS', 'FOUND_AT_COUNT') then 'COST'
           when p.account = 'OWN_USE' then 'OWN_USE'
           when p.account in ('PIECES', 'BENCH', 'SHELF') then 'STOCK'
           else 'MONEY'
       end as part,
       case
           when p.account not in ('PIECES', 'BENCH', 'SHELF', 'COST_OF_PIECES', 'COST_OF_RETAIL', 'WRITE_OFFS',
                                  'FOUND_AT_COUNT', 'OWN_USE')
               and not (p.account = 'EXPENSE' and p.supply_id is not null) then null
           when d.kind = 'OPENING' then 'OPENING'
           when d.kind in ('RECEIPT', 'SUPPLY_GIFT') and p.account = 'BENCH' and p.quantity > 0 and p.origin_id is null then 'MATERIALS'
           when d.kind in ('RECEIPT', 'SUPPLIER_RETURN', 'SUPPLY_GIFT') then 'GOODS'
           when d.kind in ('SALE', 'REFUND') and p.piece_id is not null then 'GOODS'
       end as purchase,
       p.account = 'EXPENSE' and p.supply_id is not null as packed
from posting p
join document d on d.id = p.document_id
left join money_place mp on mp.id = p.place_id
left join piece pc on pc.id = p.piece_id
left join supply su on su.id = p.supply_id
left join source so on so.id = p.party_id;
