-- What there is of a supply to use first: of the many rows by which documents take, the few by which they bring.
create index document_stock_quantity_ix on document_stock (quantity);
