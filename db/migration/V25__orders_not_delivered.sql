-- A piece that an order had and never got: it was sold elsewhere before, or the order was cancelled. The order keeps its
-- share of the price; the piece never left the stock for it. A piece of a sale stands here or in sale_piece.
create table sale_undelivered (
    sale_id uuid not null,
    line integer not null,
    piece_id uuid not null,
    weight numeric(30, 14) not null,
    constraint sale_undelivered_pk primary key (sale_id, piece_id),
    constraint sale_undelivered_sale_fk foreign key (sale_id) references sale (id),
    constraint sale_undelivered_piece_fk foreign key (piece_id) references piece (id),
    constraint sale_undelivered_weight_ck check (weight >= 0)
);

create index sale_undelivered_piece_ix on sale_undelivered (piece_id);
