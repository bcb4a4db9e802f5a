-- The books of this road with their days, in the columns in which the program's are read.
create view own_books as
select d.on_day, d.ord, e.doc, e.account, e.place, e.category, e.piece, e.supply, e.amount, e.quantity, e.origin
from entry e join doc d on d.id = e.doc;

-- The program's own postings, filled from its database.
create table posting (
    doc varchar not null,
    on_day date not null,
    account varchar not null,
    place varchar,
    category varchar,
    piece varchar,
    supply varchar,
    amount bigint not null,
    quantity numeric(30, 14) not null,
    origin varchar
);

create view program_books as
select p.on_day, d.ord, p.doc, p.account, p.place, p.category, p.piece, p.supply, p.amount, p.quantity, p.origin
from posting p join doc d on d.id = p.doc;

-- Everything an account can be of a sale: the document it stands on tells the sale.
create view of_sale as
select id as doc, id as sale from sale
union all select id, sale_id from refund
union all select id, sale_id from postage where sale_id is not null;

-- From which document on a piece's cost belongs to which sale.
create view piece_of_sale as
select p.piece_id as piece, p.sale_id as sale, d.ord as since,
       lead(d.ord, 1, 1000000) over (partition by p.piece_id order by d.ord) as before
from sale_piece p join doc d on d.id = p.sale_id;
